package tideover.engine.sun;

import tideover.engine.quantity.Units;

/**
 * The monthly method of Liu, Jordan and Klein (Klein 1977, Solar Energy 19, 325) with the daily and monthly diffuse
 * fractions of Erbs, Klein &amp; Duffie 1982: a second way to the light on a tilted plane, for plane facing south on the
 * northern half. Days count from 1.
 */
final class MonthlyMethod {
    /** Sunset angle that parts short days from long ones, deg. */
    private static final double SHORT_DAY_DEG = 81.4;

    private MonthlyMethod() {}

    static double dailyDiffuseFraction(double k, double sunsetDeg) {
        if (sunsetDeg <= SHORT_DAY_DEG) {
            return k < .715 ? 1 + k * (-.2727 + k * (2.4495 + k * (-11.9514 + k * 9.3879))) : .143;
        }
        return k < .722 ? 1 + k * (.2832 + k * (-2.5557 + k * .8448)) : .175;
    }

    /** For clearness of .3 to .8. */
    static double monthlyDiffuseFraction(double k, double sunsetDeg) {
        return sunsetDeg <= SHORT_DAY_DEG
                ? 1.391 + k * (-3.560 + k * (4.189 - k * 2.137))
                : 1.311 + k * (-3.022 + k * (3.427 - k * 1.821));
    }

    /** Beam on the tilted plane over beam on the horizontal, for a day, as if there were no air. */
    static double beamFactor(double latDeg, double tiltDeg, Almanac day) {
        double lat = Units.radians(latDeg);
        double turned = Units.radians(latDeg - tiltDeg);
        double sunset = day.sunsetAngleRad(lat);
        double planeSunset = Math.min(sunset, day.sunsetAngleRad(turned));
        return sweep(turned, day.declinationRad(), planeSunset) / sweep(lat, day.declinationRad(), sunset);
    }

    private static double sweep(double lat, double declination, double sunset) {
        return StrictMath.cos(lat) * StrictMath.cos(declination) * StrictMath.sin(sunset)
                + sunset * StrictMath.sin(lat) * StrictMath.sin(declination);
    }

    /** Plane over horizontal, all light, isotropic sky. */
    static double ratio(double beamFactor, double diffuseFraction, double tiltDeg, double albedo) {
        Slope slope = Slope.of(tiltDeg);
        return (1 - diffuseFraction) * beamFactor + diffuseFraction * slope.skyView() + albedo * slope.groundView();
    }
}
