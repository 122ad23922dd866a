package tideover.engine.sun;

/** Hay &amp; Davies 1980: HDKR without the bright horizon. */
final class HayDaviesSky implements SkyModel {
    @Override
    public double skyWm2(double beamWm2, double diffuseWm2, Sight sight, Slope slope) {
        double through = beamWm2 / sight.outsideWm2();
        return diffuseWm2 * (through * sight.beamRatio() + (1 - through) * slope.skyView());
    }
}
