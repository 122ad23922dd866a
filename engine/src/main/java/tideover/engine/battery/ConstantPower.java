package tideover.engine.battery;

/**
 * The current of a load or charger of constant watts at the terminals of a battery of open volts V behind a resistance R:
 * discharging {@code P = I (V - I R)}, charging {@code P = I (V + I R)}. In the form 2P/(V + root), which holds for R = 0 too
 * and loses no digits. Elementary; a load above V^2/4R has no solution.
 *
 * <p>Neglected: that a battery's volts sag further in minutes than in the first instant; the two wells and the fall of the
 * open volts carry part of that.
 */
public final class ConstantPower {
    private ConstantPower() {}

    /** A, out of the battery, for watts at its terminals; NaN where it cannot give them. */
    public static double dischargeA(double openV, double ohm, double watts) {
        return 2 * watts / (openV + StrictMath.sqrt(openV * openV - 4 * ohm * watts));
    }

    /** A, into the battery, for watts at its terminals. */
    public static double chargeA(double openV, double ohm, double watts) {
        return 2 * watts / (openV + StrictMath.sqrt(openV * openV + 4 * ohm * watts));
    }

    /** The most that any load can draw, W; infinite without resistance. */
    public static double mostW(double openV, double ohm) {
        return openV * openV / (4 * ohm);
    }
}
