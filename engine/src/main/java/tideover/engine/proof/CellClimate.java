package tideover.engine.proof;

import tideover.engine.battery.BatteryWarmth;
import tideover.engine.battery.CellTraits;
import tideover.engine.battery.FreezingPoint;
import tideover.engine.part.RatedStore;
import tideover.engine.quantity.Series;
import tideover.engine.why.Stated;

/**
 * What the battery's own temperature makes of it, hour by hour. Known before any outage is walked, since the battery
 * follows its room; its own heat is left out. Hours as in {@link BatteryWarmth}.
 *
 * @param degC        of the battery
 * @param ohm         inner resistance, half full
 * @param chargeA     most current into it
 * @param dischargeA  most current out of it
 * @param floorWh     content of the first well that the cold withholds
 * @param freezeWh    content of the whole below which the acid freezes
 * @param selfW       lost with time
 * @param heaterW     drawn by its heater
 * @param absorbV     volts at which charging is held
 * @param harmed      1 where charging would harm it, else 0
 */
record CellClimate(
        Series degC,
        Series ohm,
        Series chargeA,
        Series dischargeA,
        Series floorWh,
        Series freezeWh,
        Series selfW,
        Series heaterW,
        Series absorbV,
        Series harmed) {
    private static final double FREEZING_DEG_C = 0;

    static CellClimate of(CellBank bank, BatteryWarmth warmth) {
        RatedStore store = bank.store();
        CellTraits traits = bank.traits();
        int cells = traits.cells(store.nominalV());
        int hours = warmth.degC().length();
        boolean lead = store.chemistry().isLead();
        boolean unlocked = !lead && store.guard().coldLockOut() != Stated.YES;
        double firstWh = bank.wells().availableShare() * bank.fullWh();
        double[] ohm = new double[hours];
        double[] chargeA = new double[hours];
        double[] dischargeA = new double[hours];
        double[] floorWh = new double[hours];
        double[] freezeWh = new double[hours];
        double[] selfW = new double[hours];
        double[] absorbV = new double[hours];
        double[] harmed = new double[hours];
        for (int hour = 0; hour < hours; hour++) {
            double degC = warmth.degC().at(hour);
            ohm[hour] = bank.innerOhm() * traits.ohmTimesByDegC().at(degC);
            boolean harm = unlocked && degC < FREEZING_DEG_C;
            harmed[hour] = harm ? 1 : 0;
            chargeA[hour] =
                    store.maxChargeA() * (harm ? 1 : traits.chargeShareByDegC().at(degC));
            dischargeA[hour] =
                    store.maxDischargeA() * traits.dischargeShareByDegC().at(degC);
            floorWh[hour] = firstWh * (1 - traits.usableByDegC().at(degC));
            freezeWh[hour] = lead ? bank.fullWh() * FreezingPoint.fillThatFreezesAt(degC) : 0;
            selfW[hour] = bank.fullWh() * traits.selfSharePerHour(degC);
            absorbV[hour] = cells * traits.absorbV(degC);
        }
        return new CellClimate(
                warmth.degC(),
                Series.owning(ohm),
                Series.owning(chargeA),
                Series.owning(dischargeA),
                Series.owning(floorWh),
                Series.owning(freezeWh),
                Series.owning(selfW),
                warmth.heaterW(),
                Series.owning(absorbV),
                Series.owning(harmed));
    }

    /** As fast as the sun allows, where the temperature lets it charge at all. */
    CellClimate withoutChargeLimit() {
        return new CellClimate(
                degC, ohm, chargeA.times(1e6), dischargeA, floorWh, freezeWh, selfW, heaterW, absorbV, harmed);
    }

    /** A plain store knows no temperature. */
    static CellClimate none(RigFigures figures, double busV, Series roomDegC) {
        int hours = roomDegC.length();
        Series nothing = Series.constant(hours, 0);
        return new CellClimate(
                roomDegC,
                nothing,
                Series.constant(hours, figures.maxChargeW() / busV),
                Series.constant(hours, figures.maxDischargeW() / busV),
                nothing,
                nothing,
                nothing,
                nothing,
                Series.constant(hours, Double.MAX_VALUE),
                nothing);
    }
}
