package tideover.engine.sun;

import tideover.engine.quantity.Units;

/**
 * Perez, Ineichen, Seals, Michalsky &amp; Stewart 1990 (Solar Energy 44, 271): sky light in three parts, from around the sun,
 * from the dome and from the horizon, weighted by a table fitted to thirteen sites. The second model: results rest on
 * {@link HdkrSky}, and a test compares the two over a year.
 *
 * <p>{@code Id [(1 - F1) (1 + cos b)/2 + F1 a/c + F2 sin b]}, a = cosine of incidence, not below 0; c = cosine of zenith,
 * not below cos 85 deg; F1 and F2 linear in the brightness {@code Id m / In0} and the zenith angle, with coefficients by
 * the clearness {@code e = ((Id + In)/Id + k z^3) / (1 + k z^3)}, k = 1.041 with z in radians. Even under a sky without
 * beam it keeps a part around the sun. Good for hourly means; below 5 deg of sun the floor on c holds.
 */
final class PerezSky implements SkyModel {
    private static final double CLEARNESS_ZENITH_FACTOR = 1.041;
    private static final double LEAST_COS_ZENITH = StrictMath.cos(Units.radians(85));

    /** Upper edges of the clearness bins 1 to 7; bin 8 has none. */
    private static final double[] EDGES = {1.065, 1.230, 1.500, 1.950, 2.800, 4.500, 6.200};

    /** Table 6, all sites composite, in seven digits as public source code carries it (the journal prints three). */
    private static final double[][] F11_F12_F13_F21_F22_F23 = {
        {-.0083117, .5877285, -.0620636, -.0596012, .0721249, -.0220216},
        {.1299457, .6825954, -.1513752, -.0189325, .0659650, -.0288748},
        {.3296958, .4868735, -.2210958, .0554140, -.0639588, -.0260542},
        {.5682053, .1874525, -.2951290, .1088631, -.1519229, -.0139754},
        {.8730280, -.3920403, -.3616149, .2255647, -.4620442, .0012448},
        {1.1326077, -1.2367284, -.4118494, .2877813, -.8230357, .0558651},
        {1.0601591, -1.5999137, -.3589221, .2642124, -1.1272340, .1310694},
        {.6777470, -.3272588, -.2504286, .1561313, -1.3765031, .2506212},
    };

    /** The three figures the sky is read by, and the two weights that come of them. */
    record Reading(double clearness, double brightness, double aroundSun, double atHorizon) {}

    @Override
    public double skyWm2(double beamWm2, double diffuseWm2, Sight sight, Slope slope) {
        if (!(diffuseWm2 > 0) || !(sight.cosZenith() > 0)) {
            return diffuseWm2 * slope.skyView();
        }
        Reading reading = read(beamWm2, diffuseWm2, sight);
        double cosIncidence = sight.beamRatio() * sight.cosZenith();
        double sky = (1 - reading.aroundSun) * slope.skyView()
                + reading.aroundSun * cosIncidence / Math.max(LEAST_COS_ZENITH, sight.cosZenith())
                + reading.atHorizon * slope.sinTilt();
        return Math.max(0, diffuseWm2 * sky);
    }

    static Reading read(double beamWm2, double diffuseWm2, Sight sight) {
        double zenithRad = StrictMath.acos(Math.min(1, sight.cosZenith()));
        double bend = CLEARNESS_ZENITH_FACTOR * zenithRad * zenithRad * zenithRad;
        double beamNormalWm2 = sight.normalWm2() * beamWm2 / sight.outsideWm2();
        double clearness = ((diffuseWm2 + beamNormalWm2) / diffuseWm2 + bend) / (1 + bend);
        double brightness = diffuseWm2 * sight.airMass() / sight.normalWm2();
        double[] f = F11_F12_F13_F21_F22_F23[bin(clearness)];
        return new Reading(
                clearness,
                brightness,
                Math.max(0, f[0] + f[1] * brightness + f[2] * zenithRad),
                f[3] + f[4] * brightness + f[5] * zenithRad);
    }

    private static int bin(double clearness) {
        int bin = 0;
        while (bin < EDGES.length && clearness >= EDGES[bin]) {
            bin++;
        }
        return bin;
    }
}
