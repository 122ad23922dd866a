package tideover.engine.sun;

import tideover.engine.quantity.Units;

/**
 * How the sun stands to a plane, at one instant or over one hour (then the sums over the hour's instants).
 *
 * @param normalWm2    extraterrestrial irradiance facing the sun
 * @param outsideWm2   extraterrestrial irradiance on the horizontal; over an hour its mean, the dark part counted as 0
 * @param cosZenith    cosine of the zenith angle, over an hour its mean while the sun is up
 * @param beamRatio    beam on the plane for each watt of beam on the horizontal
 * @param airMass       at the mean zenith, relative
 * @param mostDirectWm2 the most that beam, on the horizontal, can be through clean air
 */
record Sight(
        double normalWm2, double outsideWm2, double cosZenith, double beamRatio, double airMass, double mostDirectWm2) {

    /** The sun below the horizon. */
    static final Sight DOWN = new Sight(0, 0, 0, 0, 0, 0);

    /** One instant; an incidence beyond the plane's edge counts as none. */
    static Sight at(double normalWm2, double cosZenith, double cosIncidence) {
        return over(normalWm2, 1, cosZenith, Math.max(0, cosIncidence));
    }

    /**
     * A span of which the sun is up for a share.
     *
     * @param litShare     share of the span with the sun up, above 0
     * @param cosZenith    mean while up
     * @param cosIncidence mean of the non-negative cosine of incidence while up
     */
    static Sight over(double normalWm2, double litShare, double cosZenith, double cosIncidence) {
        double outsideWm2 = normalWm2 * litShare * cosZenith;
        double zenithDeg = Units.degrees(StrictMath.acos(Math.min(1, cosZenith)));
        double airMass = AirMass.at(zenithDeg);
        double most = outsideWm2 * AirMass.clearestBeamShare(airMass);
        return new Sight(normalWm2, outsideWm2, cosZenith, cosIncidence / cosZenith, airMass, most);
    }
}
