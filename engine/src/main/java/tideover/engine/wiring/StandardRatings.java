package tideover.engine.wiring;

import tideover.engine.quantity.Require;

/**
 * The sizes in which fuses and breakers are made: NFPA 70 240.6(A); 100 to 400 A found printed, the others from memory.
 * Check the edition in force. Fuses for vehicles and boats come in other steps too (5, 7.5 A; common practice),
 * and so do small breakers: what a maker sells goes before the list.
 */
public final class StandardRatings {
    /** 1, 3, 6, 10 and 601 are for fuses only. */
    private static final double[] AMPS = {
        1, 3, 6, 10, 15, 20, 25, 30, 35, 40, 45, 50, 60, 70, 80, 90, 100, 110, 125, 150, 175, 200, 225, 250, 300, 350,
        400, 450, 500, 600, 601
    };

    /** So that a rounding error in the last digit does not ask for the next size. */
    private static final double ROUNDING = 1e-9;

    private StandardRatings() {}

    /** The next size up, or the same; NaN above the list. */
    public static double atLeastA(double amps) {
        Require.within(0, Double.POSITIVE_INFINITY, "amps", amps, "A");
        for (double rating : AMPS) {
            if (rating >= amps * (1 - ROUNDING)) {
                return rating;
            }
        }
        return Double.NaN;
    }

    public static boolean isStandard(double amps) {
        for (double rating : AMPS) {
            if (rating == amps) {
                return true;
            }
        }
        return false;
    }
}
