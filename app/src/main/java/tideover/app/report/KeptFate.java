package tideover.app.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import tideover.engine.load.ColdLoad;
import tideover.engine.load.Load;
import tideover.engine.load.Need;
import tideover.engine.load.PitLoad;
import tideover.engine.proof.Trace;
import tideover.engine.proof.TraceStep;

/**
 * How something that keeps a temperature or a level fared in one walked outage, on past its failing.
 *
 * @param least       of what it keeps, degC or litres
 * @param most        likewise
 * @param stretchDarkH longest stretch without power, or held back by its owner
 * @param allDarkH    all such hours
 * @param keptH       hours until its need was no longer kept; NaN where it was to the end
 * @param byAgencies  whether it was not, though inside its temperatures: the agencies' hours were over
 */
record KeptFate(
        Load load, double least, double most, double stretchDarkH, double allDarkH, double keptH, boolean byAgencies) {
    private static final double INSTANT_H = 1e-6;

    static List<KeptFate> of(Trace trace) {
        List<KeptFate> fates = new ArrayList<>();
        for (int number = 0; number < trace.kept().size(); number++) {
            fates.add(of(trace, number));
        }
        return fates;
    }

    private static KeptFate of(Trace trace, int number) {
        double least = Double.POSITIVE_INFINITY;
        double most = Double.NEGATIVE_INFINITY;
        double stretch = 0;
        double longest = 0;
        double all = 0;
        double kept = Double.NaN;
        double above = 0;
        boolean byAgencies = false;
        Load load = trace.kept().get(number);
        for (TraceStep step : trace.steps()) {
            TraceStep.KeptStep one = step.kept().get(number);
            least = Math.min(least, one.kept());
            most = Math.max(most, one.kept());
            boolean dark = one.darkH() >= trace.stepHours() - INSTANT_H;
            // A step that is dark in part ends a stretch, or begins one.
            longest = Math.max(longest, stretch + one.darkH());
            stretch = dark ? stretch + one.darkH() : one.darkH();
            all += one.darkH();
            above += load.need() instanceof Need.HoursAbove limit && one.kept() > limit.limitDegC()
                    ? trace.stepHours()
                    : 0;
            if (!one.whole() && Double.isNaN(kept)) {
                // The first to fail is known to the instant, the others to the step.
                boolean first = trace.hoursCarried() >= step.hour() - INSTANT_H
                        && trace.hoursCarried() <= step.hour() + trace.stepHours() + INSTANT_H;
                kept = first ? trace.hoursCarried() : step.hour();
                byAgencies = load instanceof ColdLoad cold && insideLimits(cold, one.kept(), above);
            }
        }
        return new KeptFate(load, least, most, longest, all, kept, byAgencies);
    }

    private static boolean insideLimits(ColdLoad load, double degC, double hoursAbove) {
        if (load.need() instanceof Need.Below below) {
            return degC <= below.limitDegC() && degC < load.box().food().food().freezingDegC();
        }
        return load.need() instanceof Need.HoursAbove above && hoursAbove <= above.hours();
    }

    boolean isKept() {
        return Double.isNaN(keptH);
    }

    /** Such as "contents -9.3 degC at the warmest; 31.0 h without power at a stretch; kept to the end". */
    String words() {
        return extreme() + "; " + dark() + "; " + end();
    }

    String end() {
        return isKept()
                ? "kept to the end"
                : "not kept from " + cut(keptH) + " h on"
                        + (byAgencies ? ", for it was without power longer than the agencies allow" : "");
    }

    private String extreme() {
        if (load instanceof PitLoad pit) {
            double brimL = pit.pit().brimL();
            return most >= brimL - 0.05
                    ? String.format(Locale.ROOT, "water to the brim, %.0f L", brimL)
                    : String.format(Locale.ROOT, "water up to %.0f of %.0f L", Math.ceil(most), Math.floor(brimL));
        }
        if (load.need() instanceof Need.Band) {
            return "contents " + tenths(least) + " to " + tenths(most) + " degC";
        }
        return load instanceof ColdLoad
                ? "contents " + tenths(most) + " degC at the warmest"
                : "the home " + tenths(least) + " degC at the coldest";
    }

    private String dark() {
        if (allDarkH < INSTANT_H) {
            return "never without power";
        }
        String held = load.heldBack() ? "without power or held back" : "without power";
        return upCut(stretchDarkH) + " h " + held + " at a stretch"
                + (allDarkH > stretchDarkH + INSTANT_H ? ", " + upCut(allDarkH) + " h in all" : "");
    }

    static String tenths(double value) {
        String words = String.format(Locale.ROOT, "%.1f", value);
        return "-0.0".equals(words) ? "0.0" : words;
    }

    /** What is promised is cut off. */
    static String cut(double hours) {
        return String.format(Locale.ROOT, "%.1f", Math.floor(hours * 10 + 1e-9) / 10);
    }

    /** What is owned up to is taken up. */
    private static String upCut(double hours) {
        return String.format(Locale.ROOT, "%.1f", Math.ceil(hours * 10 - 1e-9) / 10);
    }
}
