package tideover.engine.battery;

import tideover.engine.quantity.Curve;
import tideover.engine.quantity.Require;

/**
 * How a cell of a chemistry usually behaves, for what a data sheet does not say; a maker's own figure is better. Every
 * figure is of one cell, new. Sources stand beside the figures below; most are common practice.
 *
 * @param cellV                 nominal volts
 * @param openVByFill           rested open-circuit volts by state of charge 0..1, rising
 * @param usableByDegC          share of the capacity that can be had, by the battery's temperature; 1 from 25 degC up
 * @param ohmTimesByDegC        inner resistance against that at 25 degC
 * @param ohmTimesByFill        inner resistance against that half full
 * @param ohmAh                 inner resistance times rated Ah, half full at 25 degC, with the links and any electronics
 * @param leastOhmAh            the low end of what is met with; for short-circuit currents take less still
 * @param mostOhmAh             the high end
 * @param chargeEffByFill       charge kept per charge put in (ampere-hours, not energy), by state of charge, while current flows freely
 * @param absorbV               volts at which charging is held until the current falls, at 25 degC
 * @param floatV                volts at which a full one is kept, at 25 degC
 * @param chargeVPerK           change of both with the battery's temperature, V/K
 * @param cutOffV               volts at which discharge has to end
 * @param chargeShareByDegC     allowed share of the maker's charging current; for lithium as its electronics should hold it
 * @param dischargeShareByDegC  allowed share of the maker's discharge current
 * @param selfShareByMonth      of the rated capacity lost in 30 days at 20 degC with nothing connected
 * @param selfTimesPer10K       how that grows with each 10 K
 * @param fallback              the two wells, where a data sheet gives no second rating
 * @param depthUsual            depth of discharge that people plan with so that it lasts: a choice, not a limit
 */
public record CellTraits(
        double cellV,
        Curve openVByFill,
        Curve usableByDegC,
        Curve ohmTimesByDegC,
        Curve ohmTimesByFill,
        double ohmAh,
        double leastOhmAh,
        double mostOhmAh,
        Curve chargeEffByFill,
        double absorbV,
        double floatV,
        double chargeVPerK,
        double cutOffV,
        Curve chargeShareByDegC,
        Curve dischargeShareByDegC,
        double selfShareByMonth,
        double selfTimesPer10K,
        TwoWells fallback,
        double depthUsual) {

    /** Tables of 12 V batteries are of six cells. */
    private static final double LEAD_CELLS = 6;

    /** Temperature at which volts, ohms and capacities are stated. */
    private static final double RATED_DEG_C = 25;

    private static final double SELF_DEG_C = 20;
    private static final double MONTH_H = 30 * 24;

    /**
     * A 12 V battery at rest, 26.7 degC, by charge: a maker's support page. Two other published tables differ by up to .09 V
     * below three quarters, a tenth of the charge: see {@link RestVoltage}. Gel and AGM rest up to .2 V higher (from memory).
     */
    static final Curve LEAD_12V_BY_FILL = Curve.of(0, 11.89, .25, 12.06, .50, 12.24, .75, 12.45, 1, 12.65);

    /**
     * Reciprocals of the size multipliers of IEEE 485, table 1 (values from memory; base and range read in a technical note):
     * 1.52 at -3.9 degC to 1.00 at 25. Not above 1: warmth ages. Below the table on at the steepest slope in it, .0148 a
     * kelvin, which gives .42 at -20 where makers' curves for slow discharges show more; flat below -40, where ice is the
     * worry. The multipliers are for discharges of some hours; a slow one loses less (from memory).
     */
    private static final Curve LEAD_USABLE = Curve.of(
            -40,
            1 / 1.52 - 36.1 * .0148,
            -3.9,
            1 / 1.52,
            -1.1,
            1 / 1.43,
            1.7,
            1 / 1.35,
            4.4,
            1 / 1.30,
            7.2,
            1 / 1.25,
            10,
            1 / 1.19,
            12.8,
            1 / 1.15,
            15.6,
            1 / 1.11,
            18.3,
            1 / 1.08,
            21.1,
            1 / 1.04,
            RATED_DEG_C,
            1);

    /** Common practice, no source. */
    private static final Curve LEAD_OHM_BY_DEG_C =
            Curve.of(-30, 2.6, -20, 2.0, -10, 1.65, 0, 1.4, 10, 1.2, RATED_DEG_C, 1);

    /** The acid thins as it empties. Common practice, no source. */
    private static final Curve LEAD_OHM_BY_FILL = Curve.of(0, 2.0, .2, 1.4, .5, 1, 1, .8);

    /**
     * Flooded: Stevens &amp; Corey 1996 (25th IEEE PVSC; figures from memory): 91 % of what was put in from empty to .84 was
     * kept, 55 % from .79 to .84, less than half above. Flat, then falling, so that kept over put in comes out as theirs.
     */
    private static final Curve FLOODED_EFFICIENCY = Curve.of(0, .97, .72, .97, .79, .62, .84, .485, 1, .40);

    /** Gel and AGM make most of their gas water again: makers ask for 1.05 to 1.15 times the charge drawn (from memory). */
    private static final Curve SEALED_EFFICIENCY = Curve.of(0, .97, .8, .96, .9, .88, 1, .72);

    /** From memory. */
    private static final Curve LEAD_CHARGE_SHARE = Curve.of(-20.1, 0, -20, 1, 50, 1, 50.1, 0);

    /**
     * Ours: about the battery that the checks of the capacity equation use; its 5 h capacity is .79 of the 20 h one, between
     * flooded and gel by {@link Peukert}.
     */
    private static final TwoWells LEAD_WELLS = new TwoWells(.30, 1.2);

    /**
     * No charging at or below freezing (plating; several engineering notes), slowly up to 10 degC (common practice, no
     * source), none above 45 degC (from memory; some makers say 55).
     */
    private static final Curve LITHIUM_CHARGE_SHARE = Curve.of(0, 0, .1, .1, 10, 1, 45, 1, 45.1, 0);

    /** From memory. */
    private static final Curve LITHIUM_DISCHARGE_SHARE = Curve.of(-20.1, 0, -20, 1, 60, 1, 60.1, 0);

    private static final Curve LITHIUM_EFFICIENCY = Curve.flat(.99);

    /** Charge 14.4 to 14.8 V, float 13.5 to 13.8 V, -18 to -30 mV/K on 12 V (from memory): the middles. Gel 14.1 to 14.4 V. */
    private static final CellTraits FLOODED = lead(14.6, .133, .08, .20, FLOODED_EFFICIENCY, .05);

    /** 12 V, 100 Ah: 7 milliohm. Ohms and self-discharge of all lead: common practice, no source. */
    private static final CellTraits GEL = lead(14.25, .117, .07, .15, SEALED_EFFICIENCY, .02);

    /** 12 V, 100 Ah: 5 milliohm. */
    private static final CellTraits AGM = lead(14.6, .083, .05, .12, SEALED_EFFICIENCY, .02);

    /**
     * Volts 2.5 to 3.65, nominal 3.2; curves from memory: the flat middle tells nothing about the charge. Cold and ohms:
     * common practice, no source. 12.8 V, 100 Ah with electronics: 10 to 20 milliohm.
     */
    private static final CellTraits IRON = new CellTraits(
            3.2,
            Curve.of(
                    0, 2.50, .02, 2.85, .05, 3.05, .10, 3.19, .20, 3.25, .30, 3.28, .40, 3.295, .50, 3.305, .60, 3.315,
                    .70, 3.325, .80, 3.332, .90, 3.338, .95, 3.345, 1, 3.40),
            Curve.of(-20, .55, -10, .72, 0, .86, 10, .94, RATED_DEG_C, 1),
            Curve.of(-20, 4.0, -10, 2.6, 0, 1.8, 10, 1.35, RATED_DEG_C, 1),
            Curve.of(0, 1.5, .1, 1.15, .5, 1),
            .375,
            .25,
            .50,
            LITHIUM_EFFICIENCY,
            3.65,
            3.40,
            0,
            2.5,
            LITHIUM_CHARGE_SHARE,
            LITHIUM_DISCHARGE_SHARE,
            .03,
            1,
            TwoWells.ONE_WELL,
            .8);

    /** Mixed-oxide cells, 3.0 to 4.2 V. All from memory or common practice, no source. */
    private static final CellTraits OTHER = new CellTraits(
            3.65,
            Curve.of(
                    0, 3.00, .05, 3.35, .10, 3.50, .20, 3.58, .30, 3.62, .40, 3.66, .50, 3.71, .60, 3.79, .70, 3.88,
                    .80, 3.98, .90, 4.08, 1, 4.20),
            Curve.of(-20, .65, -10, .80, 0, .90, 10, .96, RATED_DEG_C, 1),
            Curve.of(-20, 3.2, -10, 2.2, 0, 1.6, 10, 1.25, RATED_DEG_C, 1),
            Curve.of(0, 1.5, .1, 1.15, .5, 1),
            .25,
            .12,
            .40,
            LITHIUM_EFFICIENCY,
            4.20,
            4.10,
            0,
            3.0,
            LITHIUM_CHARGE_SHARE,
            LITHIUM_DISCHARGE_SHARE,
            .03,
            1,
            TwoWells.ONE_WELL,
            .8);

    private static CellTraits lead(
            double absorb12V, double ohmAh, double leastOhmAh, double mostOhmAh, Curve efficiency, double selfByMonth) {
        return new CellTraits(
                2.0,
                LEAD_12V_BY_FILL.times(1 / LEAD_CELLS),
                LEAD_USABLE,
                LEAD_OHM_BY_DEG_C,
                LEAD_OHM_BY_FILL,
                ohmAh,
                leastOhmAh,
                mostOhmAh,
                efficiency,
                absorb12V / LEAD_CELLS,
                13.65 / LEAD_CELLS,
                -.024 / LEAD_CELLS,
                1.75,
                LEAD_CHARGE_SHARE,
                Curve.flat(1),
                selfByMonth,
                2,
                LEAD_WELLS,
                .5);
    }

    static CellTraits of(Chemistry chemistry) {
        return switch (chemistry) {
            case FLOODED_LEAD -> FLOODED;
            case GEL_LEAD -> GEL;
            case AGM_LEAD -> AGM;
            case IRON_PHOSPHATE -> IRON;
            case OTHER_LITHIUM -> OTHER;
        };
    }

    /** Cells one after another in a battery of so many nominal volts: 12 V of lead 6, 12.8 V of iron phosphate 4. */
    public int cells(double nominalV) {
        Require.atLeast(cellV / 2, "nominalV", nominalV, "V");
        return (int) Math.round(nominalV / cellV);
    }

    /** Inner resistance of a whole battery, half full at 25 degC, where its data sheet gives none, ohm. */
    public double innerOhm(double nominalV, double ratedAh) {
        Require.above(0, "ratedAh", ratedAh, "Ah");
        return cells(nominalV) * ohmAh / ratedAh;
    }

    /** Float volts of a cell at a battery temperature. */
    public double floatV(double degC) {
        return floatV + chargeVPerK * (degC - RATED_DEG_C);
    }

    /** Absorption volts of a cell at a battery temperature. */
    public double absorbV(double degC) {
        return absorbV + chargeVPerK * (degC - RATED_DEG_C);
    }

    /** Share of the rated capacity lost in an hour with nothing connected, the same however full. */
    public double selfSharePerHour(double degC) {
        return selfShareByMonth / MONTH_H * StrictMath.pow(selfTimesPer10K, (degC - SELF_DEG_C) / 10);
    }
}
