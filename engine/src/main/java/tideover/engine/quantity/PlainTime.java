package tideover.engine.quantity;

import java.util.Locale;

/** Spans of time as people say them. */
public final class PlainTime {
    private static final double MINUTE_S = 60;
    private static final double HOUR_S = 3600;

    private PlainTime() {}

    /**
     * Such as "0.02 s", "90 s", "5 min", "2.5 h": in the greatest unit of which there are two or more, or a whole number of them.
     * At most one digit after the point from a minute on, two below.
     */
    public static String words(double seconds) {
        if (seconds >= 2 * HOUR_S || seconds == HOUR_S) {
            return tenths(seconds / HOUR_S, "h");
        }
        if (seconds >= 2 * MINUTE_S || seconds == MINUTE_S) {
            return tenths(seconds / MINUTE_S, "min");
        }
        if (seconds > 0 && seconds < 0.005) {
            return "less than 0.01 s";
        }
        return String.format(Locale.ROOT, "%.2f", seconds).replaceFirst("\\.?0+$", "") + " s";
    }

    private static String tenths(double value, String unit) {
        return String.format(Locale.ROOT, "%.1f", value).replaceFirst("\\.0$", "") + " " + unit;
    }
}
