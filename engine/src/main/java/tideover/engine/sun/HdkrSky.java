package tideover.engine.sun;

/**
 * Hay, Davies, Klucher and Reindl (HDKR), as in Duffie &amp; Beckman, section 2.16, after Reindl, Beckman &amp; Duffie 1990
 * (Solar Energy 45, 9): a part of the sky light comes from around the sun, in the measure that the beam gets through;
 * the rest comes evenly from the dome, with a brighter horizon when the sky is clear.
 *
 * <p>{@code Id [A Rb + (1 - A) (1 + cos b)/2 (1 + f sin^3(b/2))]}, with A = beam over extraterrestrial, both on the
 * horizontal; f = root of beam over global; Rb the beam ratio; b the tilt. Meant for hourly means, any tilt to 90 deg.
 *
 * <p>The part around the sun and the beam together are held to {@link Sight#mostDirectWm2}: in an hour in which the sun
 * barely rises, Rb can pass a hundred and would turn twilight into noon.
 */
final class HdkrSky implements SkyModel {
    @Override
    public double skyWm2(double beamWm2, double diffuseWm2, Sight sight, Slope slope) {
        double fromSun = 0;
        double horizon = 0;
        if (beamWm2 > 0 && sight.outsideWm2() > 0) {
            double through = beamWm2 / sight.outsideWm2();
            fromSun = Math.min(diffuseWm2 * through, Math.max(0, sight.mostDirectWm2() - beamWm2));
            horizon = StrictMath.sqrt(beamWm2 / (beamWm2 + diffuseWm2)) * slope.sinHalfCubed();
        }
        return fromSun * sight.beamRatio() + (diffuseWm2 - fromSun) * slope.skyView() * (1 + horizon);
    }
}
