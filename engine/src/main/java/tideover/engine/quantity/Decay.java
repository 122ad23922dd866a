package tideover.engine.quantity;

/**
 * Exponential decay in pure Java arithmetic, so that digits are the same everywhere. The library's strict {@code expm1} and
 * {@code log} leave Java for every call and cost a walk a third of its time.
 */
public final class Decay {
    /** Up to here the series is used; beyond it nothing is lost by subtracting. */
    private static final double SERIES_TO = 0.5;

    /** One over the factorials of 1 to 14: the last term adds less than a rounding at {@link #SERIES_TO}. */
    private static final double[] TERMS = terms();

    private Decay() {}

    private static double[] terms() {
        double[] terms = new double[14];
        double factorial = 1;
        for (int i = 0; i < terms.length; i++) {
            factorial *= i + 1;
            terms[i] = 1 / factorial;
        }
        return terms;
    }

    /** Share gone after so many time constants, {@code 1 - e^-x}, to a few roundings; {@code x} at least 0. */
    public static double gone(double x) {
        if (x > SERIES_TO) {
            return 1 - StrictMath.exp(-x);
        }
        double sum = 0;
        for (int i = TERMS.length - 1; i >= 0; i--) {
            sum = TERMS[i] - x * sum;
        }
        return x * sum;
    }

    /**
     * Time constants until so much is left, {@code -ln(left)}; {@code left} above 0 and at most 1. Good to 1e-9 of itself:
     * enough for the instant of an event.
     */
    public static double until(double left) {
        if (left < SERIES_TO) {
            return -StrictMath.log(left);
        }
        // ln r = 2 atanh z, z = (r - 1)/(r + 1), |z| at most a third.
        double z = (1 - left) / (1 + left);
        double zz = z * z;
        double sum = 0;
        for (int odd = 17; odd >= 1; odd -= 2) {
            sum = 1.0 / odd + zz * sum;
        }
        return 2 * z * sum;
    }
}
