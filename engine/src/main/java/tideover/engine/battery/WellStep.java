package tideover.engine.battery;

/**
 * One exact step of {@link TwoWells}, as factors: {@code y1' = kept y1 + fed y0 + drawn I}, {@code y2' = y0 - I t - y1'},
 * I positive out of the battery. Linear, so that a step may be worked out once and used for all currents.
 *
 * @param kept  of what was in the first well
 * @param fed   of what was in both
 * @param drawn of the current, h; negative
 * @param hours length of the step, h
 */
public record WellStep(double kept, double fed, double drawn, double hours) {
    /** Content of the first well after the step; below 0 the battery was empty before its end. */
    public double available(double available, double all, double current) {
        return kept * available + fed * all + drawn * current;
    }

    /** Content of both wells after the step: charge is conserved. */
    public double all(double all, double current) {
        return all - current * hours;
    }

    /** The current that brings the first well to a content by the end of the step; positive out. */
    public double currentFor(double availableAfter, double available, double all) {
        return (availableAfter - kept * available - fed * all) / drawn;
    }
}
