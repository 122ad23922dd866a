package tideover.engine.sun;

import tideover.engine.quantity.Units;

/**
 * How a day's irradiation is spread over its hours on the average: Collares-Pereira &amp; Rabl 1979 (Solar Energy 22, 155) for
 * the global, Liu &amp; Jordan 1960 (Solar Energy 4(3), 1) for the diffuse part, whose shape is the extraterrestrial one.
 * With w the hour angle and s the sunset angle, {@code rd = pi/24 (cos w - cos s)/(sin s - s cos s)} and
 * {@code rt = (a + b cos w) rd}. Fitted to long-term means of days of 8 to 16 h; a single cloudy day looks different.
 *
 * <p>Over a day rd sums to 1 but rt only to 0.992..1.007, so whoever spreads a day must bring the sum to 1, as
 * {@link SunYear#hourShare} does.
 *
 * @param sunsetRad hour angle of sunset, 0..pi
 */
record DayShape(double sunsetRad, double a, double b) {

    /** The minus before .4767 is right although prints differ: it meets the worked example of Duffie &amp; Beckman. */
    static DayShape of(double sunsetRad) {
        double past = sunsetRad - Units.radians(60);
        return new DayShape(sunsetRad, .409 + .5016 * StrictMath.sin(past), .6609 - .4767 * StrictMath.sin(past));
    }

    /** Share of the day's diffuse irradiation in the hour about an hour angle. */
    double diffuseShare(double hourAngleRad) {
        double above = StrictMath.cos(hourAngleRad) - StrictMath.cos(sunsetRad);
        return Math.max(0, Math.PI / 24 * above / (StrictMath.sin(sunsetRad) - sunsetRad * StrictMath.cos(sunsetRad)));
    }

    /** Share of the day's global irradiation in the hour about an hour angle, as printed: not brought to a sum of 1. */
    double globalShare(double hourAngleRad) {
        return fullness(hourAngleRad) * diffuseShare(hourAngleRad);
    }

    /**
     * How much more, or less, of the day comes in that hour than its extraterrestrial light would say. An hour whose middle lies
     * past sunset counts as at sunset: its light came before.
     */
    double fullness(double hourAngleRad) {
        return Math.max(0, a + b * Math.max(StrictMath.cos(hourAngleRad), StrictMath.cos(sunsetRad)));
    }
}
