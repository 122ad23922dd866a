package tideover.engine.sun;

/** Haurwitz 1945 (Journal of Meteorology 2, 154): global on the horizontal under a cloudless sky, from the sun's height alone. */
final class ClearDay {
    private ClearDay() {}

    /**
     * In W/m2.
     *
     * @param haze 0.057 or 0.059: both circulate (from memory)
     */
    static double haurwitzWm2(double cosZenith, double haze) {
        return 1098 * cosZenith * StrictMath.exp(-haze / cosZenith);
    }
}
