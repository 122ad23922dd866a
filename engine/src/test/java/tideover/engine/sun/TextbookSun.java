package tideover.engine.sun;

import tideover.engine.quantity.Units;

/**
 * The sun as textbooks draw it (Duffie &amp; Beckman, Solar Engineering of Thermal Processes, chapter 1): one declination for
 * the day, hour angles in solar time, azimuth from south with west positive. Only the tests need it, to feed worked examples
 * to the program's own formulas. Days count from 1.
 */
final class TextbookSun {
    private TextbookSun() {}

    /** Cooper 1969. */
    static double cooperDeclinationDeg(int n) {
        return 23.45 * StrictMath.sin(Units.radians(360.0 * (284 + n) / 365));
    }

    /** Spencer 1971. */
    static double spencerDeclinationDeg(int n) {
        double b = dayAngleRad(n);
        return Units.degrees(0.006918
                - 0.399912 * StrictMath.cos(b)
                + 0.070257 * StrictMath.sin(b)
                - 0.006758 * StrictMath.cos(2 * b)
                + 0.000907 * StrictMath.sin(2 * b)
                - 0.002697 * StrictMath.cos(3 * b)
                + 0.00148 * StrictMath.sin(3 * b));
    }

    /** Spencer 1971, the 229.2 minute form. */
    static double spencerEquationOfTimeMin(int n) {
        double b = dayAngleRad(n);
        return 229.2
                * (0.000075
                        + 0.001868 * StrictMath.cos(b)
                        - 0.032077 * StrictMath.sin(b)
                        - 0.014615 * StrictMath.cos(2 * b)
                        - 0.04089 * StrictMath.sin(2 * b));
    }

    /** Spencer 1971: square of mean over true distance. */
    static double spencerOrbitFactor(int n) {
        double b = dayAngleRad(n);
        return 1.000110
                + 0.034221 * StrictMath.cos(b)
                + 0.001280 * StrictMath.sin(b)
                + 0.000719 * StrictMath.cos(2 * b)
                + 0.000077 * StrictMath.sin(2 * b);
    }

    static double orbitFactor(int n) {
        return 1 + 0.033 * StrictMath.cos(Units.radians(360.0 * n / 365));
    }

    private static double dayAngleRad(int n) {
        return Units.radians((n - 1) * 360.0 / 365);
    }

    /** The day in the program's own record, so that its formulas work on the textbook's sun. */
    static Almanac day(int n) {
        return almanac(cooperDeclinationDeg(n), orbitFactor(n));
    }

    static Almanac almanac(double declinationDeg, double orbitFactor) {
        return new Almanac(Units.radians(declinationDeg), 1 / StrictMath.sqrt(orbitFactor), 0);
    }

    static double cosZenith(double latDeg, double declinationDeg, double hourAngleDeg) {
        double lat = Units.radians(latDeg);
        double declination = Units.radians(declinationDeg);
        return StrictMath.cos(lat) * StrictMath.cos(declination) * StrictMath.cos(Units.radians(hourAngleDeg))
                + StrictMath.sin(lat) * StrictMath.sin(declination);
    }

    static double zenithDeg(double latDeg, double declinationDeg, double hourAngleDeg) {
        return Units.degrees(StrictMath.acos(cosZenith(latDeg, declinationDeg, hourAngleDeg)));
    }

    static double azimuthFromSouthDeg(double latDeg, double declinationDeg, double hourAngleDeg) {
        double zenith = Units.radians(zenithDeg(latDeg, declinationDeg, hourAngleDeg));
        double lat = Units.radians(latDeg);
        double cosine = (StrictMath.cos(zenith) * StrictMath.sin(lat) - StrictMath.sin(Units.radians(declinationDeg)))
                / (StrictMath.sin(zenith) * StrictMath.cos(lat));
        return Math.signum(hourAngleDeg) * Units.degrees(StrictMath.acos(cosine));
    }

    /** Extraterrestrial irradiation on the horizontal between two hour angles, MJ/m2 (equation 1.10.4). */
    static double spanMjM2(double latDeg, Almanac day, double fromDeg, double toDeg) {
        double lat = Units.radians(latDeg);
        double declination = day.declinationRad();
        return 12
                * 3600
                / Math.PI
                * day.normalWm2()
                * (StrictMath.cos(lat)
                                * StrictMath.cos(declination)
                                * (StrictMath.sin(Units.radians(toDeg)) - StrictMath.sin(Units.radians(fromDeg)))
                        + Units.radians(toDeg - fromDeg) * StrictMath.sin(lat) * StrictMath.sin(declination))
                / 1e6;
    }
}
