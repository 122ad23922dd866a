package tideover.engine.battery;

import tideover.engine.quantity.Require;

/**
 * Air for lead batteries, by EN 50272-2 / IEC 62485-2 section 7 (read in four secondary pages; check the edition in force):
 * {@code Q = .05 n I C / 1000} m3/h and {@code A = 28 Q} cm2; n cells in series, I the gassing current in <em>mA</em> for each
 * Ah, C the rated Ah. It keeps hydrogen below its explosive limit of 4 % in the air of room or enclosure, five times over:
 * .05 is 24 parts of air to one of hydrogen, .42 litres of hydrogen an ampere-hour, and five.
 *
 * <p>Valid for natural ventilation, an opening low and one high on opposite sides (from memory), batteries in order and a
 * charger that keeps to its volts; an overcharged battery gives off far more. Close to the vents no airing helps.
 *
 * <p>The motive-power part of the standard writes the same form with <em>A for each 100 Ah</em> and divides by 100: its
 * figures go through {@link #milliampPerAh} first.
 */
public final class Hydrogen {
    /** m3 of air for each Ah of gassing of one cell. */
    static final double AIR_M3_PER_AH = .05;

    /** Opening for each m3/h of air, cm2. */
    static final double OPENING_CM2_PER_M3H = 28;

    private static final double FARADAY_C_PER_MOL = 96_485.332_12;
    private static final double GAS_J_PER_MOL_K = 8.314_462_618;
    private static final double ATMOSPHERE_PA = 101_325;
    private static final double KELVIN = 273.15;
    private static final double ELECTRONS = 2;
    private static final double COULOMB_PER_AH = 3600;
    private static final double LITRES_PER_M3 = 1000;

    private Hydrogen() {}

    /** Hydrogen that one cell gives off for each Ah of gassing, by Faraday's law, litres at a temperature and 1 atm. */
    public static double litresPerAh(double degC) {
        double moles = COULOMB_PER_AH / (ELECTRONS * FARADAY_C_PER_MOL);
        return LITRES_PER_M3 * moles * GAS_J_PER_MOL_K * (degC + KELVIN) / ATMOSPHERE_PA;
    }

    /** Gassing current while it is kept full, mA for each Ah. */
    public static double floatMilliampPerAh(Chemistry lead) {
        return flooded(lead) ? 5 : 1;
    }

    /** Gassing current while it is charged hard, mA for each Ah. */
    public static double boostMilliampPerAh(Chemistry lead) {
        return flooded(lead) ? 20 : 8;
    }

    /** Of a figure in A for each 100 Ah, as the motive-power part has it. */
    public static double milliampPerAh(double ampPer100Ah) {
        return 10 * ampPer100Ah;
    }

    /**
     * Fresh air that room or enclosure wants, m3/h.
     *
     * @param cells         in series
     * @param milliampPerAh gassing current
     * @param ratedAh       of the bank, rows side by side added up
     */
    public static double airM3PerH(int cells, double milliampPerAh, double ratedAh) {
        Require.within(1, 10_000, "cells", cells);
        Require.above(0, "milliampPerAh", milliampPerAh, "mA/Ah");
        Require.above(0, "ratedAh", ratedAh, "Ah");
        return AIR_M3_PER_AH * cells * milliampPerAh / 1000 * ratedAh;
    }

    /** Free opening for that air to come in, and as much for it to go out, cm2. */
    public static double openingCm2(double airM3PerH) {
        return OPENING_CM2_PER_M3H * airM3PerH;
    }

    private static boolean flooded(Chemistry lead) {
        if (!lead.isLead()) {
            throw new IllegalArgumentException(lead + " is no lead battery");
        }
        return lead == Chemistry.FLOODED_LEAD;
    }
}
