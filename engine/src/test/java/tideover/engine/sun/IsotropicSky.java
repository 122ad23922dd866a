package tideover.engine.sun;

/** Liu &amp; Jordan 1963: a sky evenly bright. The plainest model, a floor for a plane that faces the sun. */
final class IsotropicSky implements SkyModel {
    @Override
    public double skyWm2(double beamWm2, double diffuseWm2, Sight sight, Slope slope) {
        return diffuseWm2 * slope.skyView();
    }
}
