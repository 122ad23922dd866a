package tideover.engine.sun;

/**
 * How sky light falls on a tilted plane. Every model returns the diffuse light itself for a flat plane, and none
 * includes the beam or the light that the ground throws back.
 */
interface SkyModel {
    /**
     * Sky light on the plane, W/m2.
     *
     * @param beamWm2    on the horizontal, 0 or more
     * @param diffuseWm2 on the horizontal, 0 or more, not both 0
     */
    double skyWm2(double beamWm2, double diffuseWm2, Sight sight, Slope slope);
}
