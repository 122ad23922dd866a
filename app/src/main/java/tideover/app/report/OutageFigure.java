package tideover.app.report;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.function.ToDoubleFunction;
import org.jspecify.annotations.Nullable;
import tideover.engine.outage.Outage;
import tideover.engine.part.RatedStore;
import tideover.engine.part.Store;
import tideover.engine.proof.Trace;
import tideover.engine.proof.TraceStep;
import tideover.engine.quantity.ModelYear;

/**
 * One walked outage in two panels on one time axis: the charge of the store, and below it what the sun could give
 * against what the loads want. Where essential loads go short, both panels are hatched. For a battery by its data sheet a
 * third, low panel holds its temperature.
 */
final class OutageFigure {
    private static final double WIDTH = 330;
    private static final double HEIGHT = 286;
    private static final double LEFT = 34;
    private static final double RIGHT = 8;
    private static final double CHARGE_TOP = 36;
    private static final double CHARGE_BOTTOM = 122;
    private static final double POWER_TOP = 168;
    private static final double POWER_BOTTOM = 244;
    private static final double WARMTH_TOP = 274;
    private static final double WARMTH_BOTTOM = 302;
    private static final double BELOW_BOTTOM = HEIGHT - POWER_BOTTOM;
    private static final double DAY_NAME_WIDTH = 38;

    /** Ends of the scale of the battery's temperature, and the least that lies between them, K. */
    private static final double WARMTH_STEP_K = 5;

    /** More points than this are not told apart at the drawing's size: they are drawn as means of a few steps. */
    private static final int MOST_POINTS = 400;

    private final String id;
    private final String name;
    private final Trace trace;
    private final Outage outage;
    private final double lengthHours;
    private final Axis time;
    private final @Nullable RatedStore battery;
    private final double bottom;

    private OutageFigure(String id, String name, Trace trace, Outage outage, Store store) {
        this.id = id;
        this.name = name;
        this.trace = trace;
        this.outage = outage;
        this.lengthHours = trace.steps().size() * trace.stepHours();
        this.time = new Axis(0, lengthHours, LEFT, WIDTH - RIGHT);
        this.battery = store instanceof RatedStore rated ? rated : null;
        this.bottom = battery == null ? POWER_BOTTOM : WARMTH_BOTTOM;
    }

    static Figure of(String id, String name, Trace trace, Outage outage, Store store) {
        OutageFigure figure = new OutageFigure(id, name, trace, outage, store);
        String drawn = figure.drawn();
        return new Figure(drawn, drawn, figure.caption(), figure.table());
    }

    private String drawn() {
        Axis charge = new Axis(0, 100, CHARGE_BOTTOM, CHARGE_TOP);
        double mostW = 1;
        int stride = Math.max(1, (trace.steps().size() + MOST_POINTS - 1) / MOST_POINTS);
        double[] sunW = means(TraceStep::arrayW, stride);
        double[] loadW = means(OutageFigure::wantedW, stride);
        for (int i = 0; i < sunW.length; i++) {
            mostW = Math.max(mostW, Math.max(sunW[i], loadW[i]));
        }
        Axis power = new Axis(0, Axis.roundUp(mostW, 3), POWER_BOTTOM, POWER_TOP);
        Svg svg = Svg.told(id, WIDTH, bottom + BELOW_BOTTOM, name, told()).hatching();
        svg.textFrom("label strong", 0, 11, name);
        svg.textFrom(
                "axisName", 0, 27, battery == null ? "charge, % of usable" : "charge, % of full; dotted: its depth");
        for (double tick : List.of(0.0, 50.0, 100.0)) {
            grid(svg, charge, tick);
        }
        svg.rect("sun", 0, POWER_TOP - 17, 14, 8).line("sunEdge", 0, POWER_TOP - 17, 14, POWER_TOP - 17);
        svg.textFrom("axisName", 19, POWER_TOP - 9, "the sun could give, W");
        svg.line("load", 168, POWER_TOP - 13, 182, POWER_TOP - 13);
        svg.textFrom("axisName", 187, POWER_TOP - 9, "the loads want, W");
        for (double tick : power.ticks(3)) {
            grid(svg, power, tick);
        }
        days(svg);
        shortfalls(svg);
        double[] xs = new double[sunW.length + 1];
        for (int i = 0; i < xs.length; i++) {
            xs[i] = time.of(Math.min(lengthHours, i * stride * trace.stepHours()));
        }
        String sun = Svg.steps(xs, heights(sunW, power));
        svg.path("sun", Svg.closedTo(sun, xs[0], xs[xs.length - 1], POWER_BOTTOM))
                .path("sunEdge", sun);
        svg.path("load", Svg.steps(xs, heights(loadW, power)));
        svg.path("charge", Svg.points(xs, heights(chargePercent(stride), charge)));
        if (battery != null) {
            double depth = charge.of(100 * (1 - battery.depth()));
            svg.line("midnight", LEFT, depth, WIDTH - RIGHT, depth);
            warmth(svg, xs, stride);
        }
        return svg.done();
    }

    /** The battery's own temperature in a low panel of its own. */
    private void warmth(Svg svg, double[] xs, int stride) {
        double[] degC = means(TraceStep::batteryDegC, stride);
        double from = WARMTH_STEP_K * Math.floor(Arrays.stream(degC).min().orElse(0) / WARMTH_STEP_K);
        double most = WARMTH_STEP_K * Math.ceil(Arrays.stream(degC).max().orElse(0) / WARMTH_STEP_K);
        double to = Math.max(most, from + WARMTH_STEP_K);
        Axis axis = new Axis(from, to, WARMTH_BOTTOM, WARMTH_TOP);
        svg.textFrom("axisName", 0, WARMTH_TOP - 9, "the battery's temperature, \u00b0C");
        for (double tick : List.of(from, to)) {
            svg.line(tick == from ? "axis" : "grid", LEFT, axis.of(tick), WIDTH - RIGHT, axis.of(tick));
            svg.textUpTo("tick", LEFT - 5, axis.of(tick) + 4, BatteryWords.degrees(tick));
        }
        if (from < 0 && to > 0) {
            svg.line("midnight", LEFT, axis.of(0), WIDTH - RIGHT, axis.of(0));
        }
        svg.path("warmth", Svg.steps(xs, heights(degC, axis)));
    }

    private static void heightsInto(double[] values, Axis axis) {
        for (int i = 0; i < values.length; i++) {
            values[i] = axis.of(values[i]);
        }
    }

    private static double[] heights(double[] values, Axis axis) {
        double[] heights = values.clone();
        heightsInto(heights, axis);
        return heights;
    }

    private static void grid(Svg svg, Axis axis, double tick) {
        svg.line(tick == 0 ? "axis" : "grid", LEFT, axis.of(tick), WIDTH - RIGHT, axis.of(tick));
        svg.textUpTo("tick", LEFT - 5, axis.of(tick) + 4, String.format(Locale.ROOT, "%.0f", tick));
    }

    /** Hours since the start along the bottom; midnights as dotted lines with the days' names between them. */
    private void days(Svg svg) {
        List<Double> ticks = time.hourTicks(6);
        for (double tick : ticks) {
            svg.line("axis", time.of(tick), bottom, time.of(tick), bottom + 4);
            svg.textAround("tick", time.of(tick), bottom + 16, String.format(Locale.ROOT, "%.0f", tick));
        }
        svg.textAround(
                "axisName",
                (time.at() + time.until()) / 2,
                bottom + 32,
                "hours since the start at " + String.format(Locale.ROOT, "%02d:00", trace.startHour() % 24));
        int days = (int) Math.ceil((trace.startHour() % 24 + lengthHours) / 24);
        for (int day = 0; day < days; day++) {
            double midnight = day * 24.0 - trace.startHour() % 24;
            double from = time.of(Math.max(0, midnight));
            double to = time.of(Math.min(lengthHours, midnight + 24));
            if (midnight > 0 && days <= 10) {
                svg.line("midnight", from, CHARGE_TOP, from, CHARGE_BOTTOM);
                svg.line("midnight", from, POWER_TOP, from, POWER_BOTTOM);
            }
            if (to - from >= DAY_NAME_WIDTH) {
                int dayOfYear = (trace.startHour() / 24 + day) % ModelYear.DAYS;
                svg.textAround("tick", (from + to) / 2, CHARGE_BOTTOM + 13, ModelYear.dayName(dayOfYear));
            }
        }
    }

    private void shortfalls(Svg svg) {
        for (Gap gap : gaps()) {
            double from = time.of(gap.fromHour());
            double width = Math.max(1.5, time.of(gap.toHour()) - from);
            svg.hatched(from, CHARGE_TOP, width, CHARGE_BOTTOM - CHARGE_TOP);
            svg.hatched(from, POWER_TOP, width, POWER_BOTTOM - POWER_TOP);
        }
        if (!carried()) {
            double at = time.of(trace.hoursCarried());
            svg.line("fell", at, CHARGE_TOP - 4, at, CHARGE_BOTTOM).line("fell", at, POWER_TOP, at, POWER_BOTTOM);
            String words = String.format(Locale.ROOT, "short from %.1f h", cut(trace.hoursCarried()));
            svg.textUpTo("label strong", WIDTH - RIGHT, 11, words);
        }
    }

    /** Hours in which essential loads wanted more than they got. */
    private record Gap(double fromHour, double toHour) {}

    private List<Gap> gaps() {
        List<Gap> gaps = new ArrayList<>();
        double from = Double.NaN;
        for (TraceStep step : trace.steps()) {
            boolean isShort = step.essentialUnservedW() > 1e-6;
            if (isShort && Double.isNaN(from)) {
                from = step.hour();
            } else if (!isShort && !Double.isNaN(from)) {
                gaps.add(new Gap(from, step.hour()));
                from = Double.NaN;
            }
        }
        if (!Double.isNaN(from)) {
            gaps.add(new Gap(from, lengthHours));
        }
        return gaps;
    }

    private boolean carried() {
        return trace.hoursCarried() >= outage.hours() - 1e-9;
    }

    private static double wantedW(TraceStep step) {
        return step.essentialServedW() + step.essentialUnservedW() + step.niceServedW();
    }

    private double[] means(ToDoubleFunction<TraceStep> watts, int stride) {
        List<TraceStep> steps = trace.steps();
        double[] means = new double[(steps.size() + stride - 1) / stride];
        for (int i = 0; i < means.length; i++) {
            int end = Math.min(steps.size(), (i + 1) * stride);
            for (int s = i * stride; s < end; s++) {
                means[i] += watts.applyAsDouble(steps.get(s)) / (end - i * stride);
            }
        }
        return means;
    }

    /** At the start and at the end of each group of steps. */
    private double[] chargePercent(int stride) {
        List<TraceStep> steps = trace.steps();
        double[] percent = new double[(steps.size() + stride - 1) / stride + 1];
        percent[0] = 100 * trace.ledger().startWh() / trace.capacityWh();
        for (int i = 1; i < percent.length; i++) {
            percent[i] = 100 * steps.get(Math.min(steps.size(), i * stride) - 1).storedWh() / trace.capacityWh();
        }
        for (int i = 0; i < percent.length; i++) {
            percent[i] = Math.max(0, Math.min(100, percent[i]));
        }
        return percent;
    }

    private String caption() {
        return name + ": began " + Words.moment(trace.startHour()) + "; " + outcome() + ".";
    }

    private String outcome() {
        double lowest = 100;
        for (double percent : chargePercent(1)) {
            lowest = Math.min(lowest, percent);
        }
        String store =
                String.format(Locale.ROOT, "the store falls to %.0f %%%s", lowest, battery == null ? "" : " of full");
        if (carried()) {
            return "carried to the end, " + store;
        }
        double unservedWh = trace.ledger().unservedEssentialWh();
        if (unservedWh < 0.5) {
            return String.format(
                    Locale.ROOT,
                    "a need is no longer kept after %.1f h%s; %s",
                    cut(trace.hoursCarried()),
                    Words.because(trace),
                    store);
        }
        return String.format(
                Locale.ROOT,
                "essential loads fall short after %.1f h%s and miss %.0f Wh of %.0f Wh; %s",
                cut(trace.hoursCarried()),
                trace.ending() == null ? "" : Words.because(trace) + ",",
                unservedWh,
                unservedWh + trace.ledger().servedEssentialWh(),
                store);
    }

    private String told() {
        double most = 0;
        for (double watts : means(TraceStep::arrayW, 1)) {
            most = Math.max(most, watts);
        }
        return String.format(
                Locale.ROOT,
                "Began %s and lasts %d h. %s. The sun could give at most %.0f W and %.0f Wh in all.",
                Words.moment(trace.startHour()),
                outage.hours(),
                outcome(),
                most,
                trace.ledger().inWh());
    }

    /** Hours are cut off, not rounded up: nothing is promised that was not carried. */
    private static double cut(double hours) {
        return Math.floor(hours * 10 + 1e-9) / 10;
    }

    /** One row an hour: means of the powers, the charge at the hour's end. */
    private Table table() {
        Table.Builder table = Table.titled(
                        name + ", hour by hour; powers and temperatures are means, charge at the hour's end")
                .figures("hour")
                .words("clock")
                .figures(battery == null ? "charge, %" : "charge, % of full")
                .figures(battery == null ? "room, \u00b0C" : "battery, \u00b0C")
                .figures("sun could give, W")
                .figures("loads want, W")
                .figures("essential short, W");
        int stride = Math.max(1, (int) Math.round(1 / trace.stepHours()));
        double[] percent = chargePercent(stride);
        double[] sunW = means(TraceStep::arrayW, stride);
        double[] loadW = means(OutageFigure::wantedW, stride);
        double[] degC = means(TraceStep::batteryDegC, stride);
        double[] shortW = means(TraceStep::essentialUnservedW, stride);
        for (int i = 0; i < sunW.length; i++) {
            table.row(
                    String.format(Locale.ROOT, "%.0f", i * stride * trace.stepHours()),
                    String.format(
                            Locale.ROOT,
                            "%02d:00",
                            trace.steps().get(i * stride).weatherHour() % 24),
                    String.format(Locale.ROOT, "%.0f", percent[i + 1]),
                    BatteryWords.degrees(Math.rint(degC[i])),
                    String.format(Locale.ROOT, "%.0f", sunW[i]),
                    String.format(Locale.ROOT, "%.1f", loadW[i]),
                    shortW[i] > 1e-6 ? String.format(Locale.ROOT, "%.1f", shortW[i]) : "0");
        }
        return table.done();
    }
}
