package tideover.engine.battery;

import tideover.engine.quantity.Curve;

/**
 * When the acid of a lead battery freezes: its gravity by state of charge (a maker's support page), and the freezing point
 * of sulphuric acid by gravity (from memory), straight between the points, which errs by some 2 K to the cold side.
 *
 * <p>The same maker's page lets an empty battery (gravity 1.120) freeze at -23 degC only; the acid itself freezes at about
 * -11, and another maker says "just below 0": so the acid's curve is used, and a margin of some kelvin wanted. One that was
 * emptied below its cut-off is thinner still and freezes sooner. First ice is slush; a frozen one is finished and must not
 * be charged. Valid for flooded batteries at 1.265 full; gel and AGM hold somewhat stronger acid.
 */
public final class FreezingPoint {
    private static final Curve GRAVITY_BY_FILL = Curve.of(0, 1.120, .25, 1.155, .50, 1.190, .75, 1.225, 1, 1.265);

    private static final Curve DEG_C_BELOW_ZERO_BY_GRAVITY =
            Curve.of(1.100, 7, 1.120, 11, 1.150, 15, 1.200, 27, 1.265, 57);

    private FreezingPoint() {}

    static double gravity(double fill) {
        return GRAVITY_BY_FILL.at(fill);
    }

    static double degCOfGravity(double gravity) {
        return -DEG_C_BELOW_ZERO_BY_GRAVITY.at(gravity);
    }

    /** degC at which it begins to freeze, by state of charge 0..1. */
    public static double degC(double fill) {
        return degCOfGravity(gravity(fill));
    }

    /**
     * State of charge at and below which it freezes at a temperature: 0 where an empty one just holds or better, 1 where
     * even a full one freezes. Between the two, inverse of {@link #degC}.
     */
    public static double fillThatFreezesAt(double degC) {
        double gravity = DEG_C_BELOW_ZERO_BY_GRAVITY.whereRisesTo(-degC);
        return Math.min(1, GRAVITY_BY_FILL.whereRisesTo(Math.min(gravity, gravity(1))));
    }
}
