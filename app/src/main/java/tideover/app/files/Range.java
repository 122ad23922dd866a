package tideover.app.files;

import java.util.Locale;

/**
 * What a figure may be. Outside {@code least} to {@code most} it is nonsense and refused; inside, but outside the likely
 * part, it is taken and a caution says so.
 *
 * @param aboveLeast true where {@code least} itself is refused as well
 */
record Range(double least, boolean aboveLeast, double most, double likelyLeast, double likelyMost) {
    static Range from(double least, double most) {
        return new Range(least, false, most, least, most);
    }

    static Range above(double least, double most) {
        return new Range(least, true, most, least, most);
    }

    Range likely(double likelyLeast, double likelyMost) {
        return new Range(least, aboveLeast, most, likelyLeast, likelyMost);
    }

    boolean holds(double value) {
        return value <= most && (aboveLeast ? value > least : value >= least);
    }

    boolean likely(double value) {
        return value >= likelyLeast && value <= likelyMost;
    }

    /** Such as "above 0 W and at most 100000 W". */
    String words(String unit) {
        return (aboveLeast ? "above " : "from ")
                + shown(least, unit)
                + (aboveLeast ? " and at most " : " to ")
                + shown(most, unit);
    }

    /** Such as "0.1 W to 3000 W". */
    String likelyWords(String unit) {
        return shown(likelyLeast, unit) + " to " + shown(likelyMost, unit);
    }

    /** A figure with its unit, in plain digits, at most six of them after the point. */
    static String shown(double value, String unit) {
        String digits = String.format(Locale.ROOT, "%.6f", value).replaceFirst("\\.?0+$", "");
        return unit.isEmpty() ? digits : digits + " " + unit;
    }
}
