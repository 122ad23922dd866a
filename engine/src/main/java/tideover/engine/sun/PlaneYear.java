package tideover.engine.sun;

/**
 * A tilted plane through one year of sun geometry: turns what falls on the horizontal into what falls on it. All
 * that needs an angle is worked out beforehand, once for each hour; one year of geometry serves every weather year.
 *
 * <p>Beam by the hour's beam ratio, sky light by a {@link SkyModel} (HDKR unless asked otherwise), ground light as an even
 * glow of {@code albedo * global}. Dirt, shade and
 * snow are not in it: the mount's soiling and shade are taken off by who asks. The horizon itself is open.
 *
 * <p>The beam ratio of an hour is the sum of the cosine of incidence over the sum of the cosine of zenith, both over the
 * instants with the sun up. In the first and last hour of the day the second sum can be close to nothing, and a file's
 * global may hold light from when the sun was down, so the beam on the horizontal is held to what the clearest air would
 * let through ({@link AirMass#clearestBeamShare}); what is above counts as sky light, so no energy is lost on the
 * horizontal. Thus the beam on the plane never passes extraterrestrial normal times that transmittance.
 */
public final class PlaneYear {
    private final PanelMount mount;
    private final Slope slope;
    private final SkyModel sky;
    private final Sight[] sights;
    private final double groundShare;

    PlaneYear(PanelMount mount, SkyModel sky, Sight[] sights) {
        this.mount = mount;
        this.slope = Slope.of(mount.tiltDeg());
        this.sky = sky;
        this.sights = sights;
        this.groundShare = mount.albedo() * slope.groundView();
    }

    /** The mount it was made for. */
    public PanelMount mount() {
        return mount;
    }

    /**
     * Irradiance on the plane from what falls on the horizontal in that hour of the model year, W/m2, before any soiling.
     * Never negative; 0 where {@code ghiWm2} is 0 or less; what is not a number stays so. With the sun down all light counts
     * as sky light.
     *
     * @param ghiWm2     mean global on the horizontal over the hour
     * @param diffuseWm2 the diffuse part of it; held to 0..ghi
     */
    public double planeWm2(int hour, double ghiWm2, double diffuseWm2) {
        if (ghiWm2 <= 0) {
            return 0;
        }
        Sight sight = sights[hour];
        double beamWm2 = Math.min(Math.min(ghiWm2, Math.max(0, ghiWm2 - diffuseWm2)), sight.mostDirectWm2());
        double skyWm2 = sky.skyWm2(beamWm2, ghiWm2 - beamWm2, sight, slope);
        return beamWm2 * sight.beamRatio() + skyWm2 + groundShare * ghiWm2;
    }
}
