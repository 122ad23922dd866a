package tideover.engine.proof;

import java.util.Arrays;
import org.jspecify.annotations.Nullable;
import tideover.engine.battery.BatteryWarmth;
import tideover.engine.battery.CellTraits;
import tideover.engine.battery.FreezingPoint;
import tideover.engine.part.RatedStore;
import tideover.engine.quantity.Series;
import tideover.engine.why.Stated;

/**
 * What the battery's own temperature makes of it, hour by hour. Known before any outage is walked, since the battery
 * follows its room; its own heat is left out. Worked out for one stretch after another, as it is wanted.
 */
final class CellClimate {
    private static final double FREEZING_DEG_C = 0;

    private final Series degC;
    private final Series heaterW;
    private final @Nullable CellBank bank;
    private final double plainChargeA;
    private final double plainDischargeA;
    private final boolean freeCharge;

    private CellClimate(
            Series degC,
            Series heaterW,
            @Nullable CellBank bank,
            double plainChargeA,
            double plainDischargeA,
            boolean freeCharge) {
        this.degC = degC;
        this.heaterW = heaterW;
        this.bank = bank;
        this.plainChargeA = plainChargeA;
        this.plainDischargeA = plainDischargeA;
        this.freeCharge = freeCharge;
    }

    static CellClimate of(CellBank bank, BatteryWarmth warmth) {
        return new CellClimate(warmth.degC(), warmth.heaterW(), bank, 0, 0, false);
    }

    /** A plain store knows no temperature. */
    static CellClimate none(RigFigures figures, double busV, Series roomDegC) {
        return new CellClimate(
                roomDegC,
                Series.constant(roomDegC.length(), 0),
                null,
                figures.maxChargeW() / busV,
                figures.maxDischargeW() / busV,
                false);
    }

    /** As fast as the sun allows, where the temperature lets it charge at all. */
    CellClimate withoutChargeLimit() {
        return new CellClimate(degC, heaterW, bank, plainChargeA, plainDischargeA, true);
    }

    Series degC() {
        return degC;
    }

    /** One stretch, one quantity an array by the hour. */
    static final class Hours {
        double[] degC = {};

        /** Inner resistance, half full. */
        double[] ohm = {};

        /** Most current into it and out of it. */
        double[] chargeA = {};

        double[] dischargeA = {};

        /** Content of the first well that the cold withholds. */
        double[] floorWh = {};

        /** Content of the whole below which the acid freezes. */
        double[] freezeWh = {};

        /** Lost with time. */
        double[] selfW = {};

        double[] heaterW = {};

        /** Volts at which charging is held. */
        double[] absorbV = {};

        /** 1 where charging would harm it. */
        double[] harmed = {};

        void ofLength(int hours) {
            if (degC.length != hours) {
                degC = new double[hours];
                ohm = new double[hours];
                chargeA = new double[hours];
                dischargeA = new double[hours];
                floorWh = new double[hours];
                freezeWh = new double[hours];
                selfW = new double[hours];
                heaterW = new double[hours];
                absorbV = new double[hours];
                harmed = new double[hours];
            }
        }
    }

    /** @param first hour of the weather years, round and round */
    void fill(int first, int length, Hours hours) {
        hours.ofLength(length);
        degC.copyRound(first, hours.degC);
        heaterW.copyRound(first, hours.heaterW);
        if (bank == null) {
            Arrays.fill(hours.chargeA, plainChargeA);
            Arrays.fill(hours.dischargeA, plainDischargeA);
            Arrays.fill(hours.absorbV, Double.MAX_VALUE);
            return;
        }
        RatedStore store = bank.store();
        CellTraits traits = bank.traits();
        int cells = traits.cells(store.nominalV());
        boolean lead = store.chemistry().isLead();
        boolean unlocked = !lead && store.guard().coldLockOut() != Stated.YES;
        double firstWh = bank.wells().availableShare() * bank.fullWh();
        double mostChargeA = freeCharge ? Double.MAX_VALUE : store.maxChargeA();
        for (int hour = 0; hour < length; hour++) {
            double at = hours.degC[hour];
            boolean harm = unlocked && at < FREEZING_DEG_C;
            double chargeShare = harm ? 1 : traits.chargeShareByDegC().at(at);
            hours.harmed[hour] = harm ? 1 : 0;
            hours.ohm[hour] = bank.innerOhm() * traits.ohmTimesByDegC().at(at);
            hours.chargeA[hour] = chargeShare == 0 ? 0 : chargeShare * mostChargeA;
            hours.dischargeA[hour] =
                    store.maxDischargeA() * traits.dischargeShareByDegC().at(at);
            hours.floorWh[hour] = firstWh * (1 - traits.usableByDegC().at(at));
            hours.freezeWh[hour] = lead ? bank.fullWh() * FreezingPoint.fillThatFreezesAt(at) : 0;
            hours.selfW[hour] = bank.fullWh() * traits.selfSharePerHour(at);
            hours.absorbV[hour] = cells * traits.absorbV(at);
        }
    }
}
