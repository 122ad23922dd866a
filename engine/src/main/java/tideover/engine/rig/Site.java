package tideover.engine.rig;

/**
 * What the rules ask of the place where a rig will stand.
 *
 * @param lowestDegC lowest outdoor temperature to design for; NaN where unknown, then the coldest band of NFPA 70 table
 *     690.7(A) stands in
 * @param sleptIn    whether people sleep in the room or home where the store stands
 */
public record Site(double lowestDegC, boolean sleptIn) {
    private static final double COLD_WHERE_UNKNOWN_DEG_C = -40;

    /** The cold that panels must stand. */
    public double coldDegC() {
        return Double.isNaN(lowestDegC) ? COLD_WHERE_UNKNOWN_DEG_C : lowestDegC;
    }
}
