package tideover.engine.rig;

/**
 * How much more than at 25 degC a silicon panel's open volts may be in the cold, where its maker gives no coefficient: NFPA
 * 70 table 690.7(A), crystalline and multicrystalline silicon; check the edition in force. The factors 1.02, 1.18 and 1.21 with
 * their bands were found printed; the others are from memory.
 *
 * <p>The table is of whole degrees; what lies between two bands takes the colder one. Warmer than its first band: 1. Colder
 * than its last, -40 degC, the last factor stands, though the volts go on rising: the maker's coefficient covers that.
 */
final class ColdTable {
    /** Coldest whole degree of each band. */
    private static final int[] DOWN_TO_DEG_C = {20, 15, 10, 5, 0, -5, -10, -15, -20, -25, -30, -35, -40};

    private static final double[] FACTOR = {1.02, 1.04, 1.06, 1.08, 1.10, 1.12, 1.14, 1.16, 1.18, 1.20, 1.21, 1.23, 1.25
    };

    private static final double WARMEST_DEG_C = 25;

    private ColdTable() {}

    static double factor(double degC) {
        if (degC >= WARMEST_DEG_C) {
            return 1;
        }
        for (int band = 0; band < FACTOR.length; band++) {
            if (Math.floor(degC) >= DOWN_TO_DEG_C[band]) {
                return FACTOR[band];
            }
        }
        return FACTOR[FACTOR.length - 1];
    }
}
