package tideover.engine.part;

import tideover.engine.quantity.Require;

/**
 * More than the rating, for a moment.
 *
 * @param most    volt-amperes or amperes, as the holder says; NaN where the maker tells none
 * @param seconds for how long; NaN where not told
 */
public record Surge(double most, double seconds) {
    public static final Surge UNKNOWN = new Surge(Double.NaN, Double.NaN);

    public Surge {
        if (!Double.isNaN(most)) {
            Require.above(0, "most", most, "");
        }
        if (!Double.isNaN(seconds)) {
            Require.above(0, "seconds", seconds, "s");
        }
    }

    public boolean known() {
        return !Double.isNaN(most);
    }
}
