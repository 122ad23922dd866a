package tideover.engine.sun;

import tideover.engine.quantity.Units;

/** How much air the sun's beam comes through, and how little of it that can take. */
final class AirMass {
    /**
     * Linke turbidity of the clearest air that the cap on the beam allows: very clean cold air has about 2 (common
     * practice, no source), ordinary clear days 3 to 5.
     */
    private static final double CLEAREST_LINKE = 2;

    private AirMass() {}

    /**
     * Relative air mass by Kasten &amp; Young 1989 (Applied Optics 28, 4735), at sea level, zenith 0..90 deg; it stays finite
     * at the horizon, about 38. The paper means the refracted zenith; given the true one it comes out a few per cent
     * high below 5 deg of sun. Not reduced for height.
     */
    static double at(double zenithDeg) {
        double cosZenith = StrictMath.cos(Units.radians(zenithDeg));
        return 1 / (cosZenith + 0.50572 * StrictMath.pow(96.07995 - zenithDeg, -1.6364));
    }

    /**
     * The share of the extraterrestrial beam that the clearest air lets through, {@code exp(-0.8662 TL m dR(m))} with
     * the optical thickness dR of clean dry air by Kasten 1996, as Rigollier, Bauer &amp; Wald 2000 give it (Solar Energy
     * 68, 33); coefficients from memory. An upper bound on what weather may hold, never an estimate of it.
     */
    static double clearestBeamShare(double airMass) {
        double m = airMass;
        double thickness = m <= 20
                ? 1 / (6.6296 + m * (1.7513 + m * (-0.1202 + m * (0.0065 - m * 0.00013))))
                : 1 / (10.4 + 0.718 * m);
        return StrictMath.exp(-0.8662 * CLEAREST_LINKE * m * thickness);
    }
}
