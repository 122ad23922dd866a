package tideover.app.report;

import java.util.Locale;
import tideover.engine.answer.JudgedStart;
import tideover.engine.part.PlainStore;
import tideover.engine.part.Store;
import tideover.engine.rig.StartVerdict.Link;

/** What a rig says to the start of a motor, in words. */
final class StartWords {
    private StartWords() {}

    /** Such as "well pump: 1,300 VA for 0.4 s, what else may run counted; weakest link: ...; fails below ...". */
    static String of(JudgedStart start, Store store) {
        String asked = start.event().surgeVa() > 0
                ? String.format(Locale.ROOT, "%,.0f VA", start.event().surgeVa())
                : String.format(Locale.ROOT, "%,.0f W", start.event().dcW());
        return String.format(
                        Locale.ROOT,
                        "%s: %s for %s s%s; ",
                        start.event().words(),
                        asked,
                        figure(start.event().seconds()),
                        start.event().beside().isEmpty() ? "" : ", what else may run counted")
                + start.weakest().map(StartWords::weakest).orElse("no link of the chain is known")
                + "; " + charge(start, store);
    }

    private static String weakest(Link link) {
        if (!link.told() && "s".equals(link.unit())) {
            return "weakest link: " + link.kind().words() + ", which nobody tells";
        }
        return String.format(
                Locale.ROOT,
                "weakest link: %s, %s of %s %s%s",
                link.kind().words(),
                figure(link.value()),
                figure(link.limit()),
                link.unit(),
                link.told() ? "" : " (its lasting figure: no surge is told)");
    }

    private static String charge(JudgedStart start, Store store) {
        double warm = start.fillNeededWarm();
        double cold = start.fillNeededCold();
        if (Double.isInfinite(warm) && Double.isInfinite(cold)) {
            return "it fails at any charge";
        }
        if (store instanceof PlainStore) {
            return "how far the volts fall cannot be told of a store known by its label alone";
        }
        if (warm == 0 && cold == 0) {
            return "holds at any charge, at 25 and at 0 degC";
        }
        return "fails " + below(warm) + " at 25 degC, " + below(cold) + " at 0 degC";
    }

    private static String below(double fill) {
        if (fill == 0) {
            return "at no charge";
        }
        return Double.isInfinite(fill)
                ? "at any charge"
                : String.format(Locale.ROOT, "below %.0f %% of charge", Math.ceil(100 * fill));
    }

    private static String figure(double value) {
        return String.format(Locale.ROOT, value < 10 ? "%.1f" : "%,.0f", value);
    }
}
