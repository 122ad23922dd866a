package tideover.engine.sun;

import tideover.engine.quantity.Units;

/**
 * The sun of the Astronomical Almanac's low-precision formulas, as printed by Michalsky 1988 (Solar Energy 40, 227-235):
 * good to 0.01 deg between 1950 and 2050. Gives what the sun position does not, the distance, and the daily figures
 * that need no clock.
 *
 * <p>With d days from noon of 1 January 2000 (universal time), g the mean anomaly, q the mean longitude, l the ecliptic
 * longitude, e the obliquity, all in degrees: {@code g = 357.528 + 0.9856003 d}, {@code q = 280.460 + 0.9856474 d},
 * {@code l = q + 1.915 sin g + 0.020 sin 2g}, {@code sin(declination) = sin e sin l}.
 *
 * @param declinationRad    north positive
 * @param distanceAu        earth to sun, astronomical units
 * @param equationOfTimeMin apparent less mean solar time, minutes
 */
record Almanac(double declinationRad, double distanceAu, double equationOfTimeMin) {

    /** Mean extraterrestrial irradiance at 1 au, W/m2: the one behind the TMY3 files (modern value: 1361, Kopp and Lean 2011). */
    static final double SOLAR_CONSTANT_WM2 = 1367;

    /** Obliquity of the ecliptic held fixed: it moves 0.0004 deg in a year. */
    private static final double OBLIQUITY_DEG = 23.439;

    static Almanac of(double daysSince2000) {
        double anomalyRad = Units.radians(357.528 + 0.9856003 * daysSince2000);
        double meanLongitudeDeg = 280.460 + 0.9856474 * daysSince2000;
        double longitudeRad = Units.radians(
                meanLongitudeDeg + 1.915 * StrictMath.sin(anomalyRad) + 0.020 * StrictMath.sin(2 * anomalyRad));
        double obliquityRad = Units.radians(OBLIQUITY_DEG);
        double declinationRad = StrictMath.asin(StrictMath.sin(obliquityRad) * StrictMath.sin(longitudeRad));
        double ascensionDeg = Units.degrees(StrictMath.atan2(
                StrictMath.cos(obliquityRad) * StrictMath.sin(longitudeRad), StrictMath.cos(longitudeRad)));
        // The difference of two angles on the circle, brought to -180..180; the earth turns a degree in four minutes.
        double aheadDeg = StrictMath.IEEEremainder(meanLongitudeDeg - ascensionDeg, 360);
        return new Almanac(declinationRad, distanceAu(anomalyRad), 4 * aheadDeg);
    }

    /** The distance alone, for the hourly pass. */
    static double distanceAuOn(double daysSince2000) {
        return distanceAu(Units.radians(357.528 + 0.9856003 * daysSince2000));
    }

    private static double distanceAu(double anomalyRad) {
        return 1.00014 - 0.01671 * StrictMath.cos(anomalyRad) - 0.00014 * StrictMath.cos(2 * anomalyRad);
    }

    /** Extraterrestrial irradiance on a plane that faces the sun, W/m2. */
    double normalWm2() {
        return SOLAR_CONSTANT_WM2 / (distanceAu * distanceAu);
    }

    /**
     * Hour angle of geometric sunset, radians: 0 where the sun stays down, pi where it stays up. Centre of the disc, no
     * refraction, so the day comes out some ten minutes short at 40 degrees of latitude.
     */
    double sunsetAngleRad(double latRad) {
        double cosine = -StrictMath.tan(latRad) * StrictMath.tan(declinationRad);
        return StrictMath.acos(Math.max(-1, Math.min(1, cosine)));
    }

    /** Extraterrestrial irradiation of the day on the horizontal, kWh/m2, the declination held through the day. */
    double dayKwhM2(double latRad) {
        double sunset = sunsetAngleRad(latRad);
        double hours = 24 / Math.PI;
        return Math.max(
                0,
                hours
                        * (normalWm2() / Units.KILO)
                        * (StrictMath.cos(latRad) * StrictMath.cos(declinationRad) * StrictMath.sin(sunset)
                                + sunset * StrictMath.sin(latRad) * StrictMath.sin(declinationRad)));
    }
}
