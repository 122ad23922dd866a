package tideover.engine.sun;

import tideover.engine.quantity.Require;

/** Share of the light on the horizontal that comes from the sky rather than straight from the sun. */
public final class DiffuseFraction {
    private DiffuseFraction() {}

    /**
     * Hourly fraction by Erbs, Klein &amp; Duffie 1982 (Solar Energy 28, 293) from the hourly clearness index (global over
     * extraterrestrial, both on the horizontal); fitted to four US stations and one Australian. Coefficients from memory;
     * both joins close to 3e-4 and one printed example is met.
     *
     * @param clearness finite and at least 0: with the sun down there is none to give, and all light is diffuse
     */
    public static double hourly(double clearness) {
        double k = Require.atLeast(0, "clearness", clearness, "");
        if (k <= 0.22) {
            return 1 - 0.09 * k;
        }
        if (k <= 0.80) {
            return 0.9511 + k * (-0.1604 + k * (4.388 + k * (-16.638 + k * 12.336)));
        }
        return 0.165;
    }
}
