package tideover.engine.sun;

import tideover.engine.quantity.Units;

/**
 * What the tilt alone decides.
 *
 * @param skyView     share of the sky the plane sees, (1 + cos tilt) / 2
 * @param groundView  share of its view that is ground, (1 - cos tilt) / 2
 * @param sinTilt     sine of the tilt
 * @param sinHalfCubed third power of the sine of half the tilt
 */
record Slope(double skyView, double groundView, double sinTilt, double sinHalfCubed) {
    static Slope of(double tiltDeg) {
        double tiltRad = Units.radians(tiltDeg);
        double half = StrictMath.sin(tiltRad / 2);
        double cosTilt = StrictMath.cos(tiltRad);
        return new Slope((1 + cosTilt) / 2, (1 - cosTilt) / 2, StrictMath.sin(tiltRad), half * half * half);
    }
}
