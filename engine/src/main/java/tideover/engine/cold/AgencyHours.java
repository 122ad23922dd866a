package tideover.engine.cold;

/**
 * How long food keeps without power and with the door shut: USDA Food Safety and Inspection Service, FDA and CDC. A discard
 * rule, no forecast of a temperature. A model may shorten these hours, never lengthen them: past them only a thermometer
 * in the warmest food, or ice crystals in it, count.
 */
public final class AgencyHours {
    public static final double REFRIGERATOR_H = 4;
    public static final double FULL_FREEZER_H = 48;
    public static final double HALF_FULL_FREEZER_H = 24;

    /** 40 degF. */
    public static final double LIMIT_DEG_C = 40.0 / 9;

    private AgencyHours() {}

    /**
     * For a box, infinite where the agencies say nothing. Less than half full they say nothing: then the half-full
     * hours shrink with the filling.
     */
    public static double of(ColdBox box) {
        if (box.kind() == BoxKind.REFRIGERATOR) {
            return REFRIGERATOR_H;
        }
        if (!box.kind().freezes()) {
            return Double.POSITIVE_INFINITY;
        }
        double fill = box.fill();
        return fill >= 1 ? FULL_FREEZER_H : HALF_FULL_FREEZER_H * Math.min(1, fill / 0.5);
    }
}
