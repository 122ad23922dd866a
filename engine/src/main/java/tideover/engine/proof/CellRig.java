package tideover.engine.proof;

import java.util.function.DoubleUnaryOperator;
import tideover.engine.battery.TwoWells;
import tideover.engine.electronics.Tracking;
import tideover.engine.part.ControllerRating;
import tideover.engine.part.InverterRating;
import tideover.engine.part.RatedStore;
import tideover.engine.quantity.Curve;
import tideover.engine.rig.Rig;
import tideover.engine.why.Stated;

/**
 * A rig flattened for {@link CellWalk}: everything that does not change with the hour. Curves over the filling are laid
 * out as even tables.
 */
final class CellRig {
    /** Steps of a table over the filling. */
    static final int GRID = 512;

    /** A "12 V" battery at rest with these volts or more is let on again where the maker does not tell. Common practice, no source. */
    private static final double AGAIN_PER_12V = 12.5;

    final TwoWells wells;
    final double fullWh;

    /** What the first well holds when full. */
    final double firstWh;

    /** By the filling of the first well. */
    final double[] openV;

    final double[] ohmTimes;

    /** By the filling of the whole. */
    final double[] chargeEff;

    final double dischargeEff;
    final double leadOhm;

    /** Volts at which essential loads go out; 0 for a store without volts of its own. */
    final double offV;

    final double againV;

    /** Content of the whole that is not used. */
    final double depthFloorWh;

    final double controllerMaxA;
    final double controllerEff;
    final boolean held;

    /** Whether it stays off after running flat, until its volts are back. */
    final boolean latches;

    final boolean comesBack;
    final boolean sunRevives;

    private CellRig(
            TwoWells wells,
            double fullWh,
            Curve openV,
            Curve ohmTimes,
            Curve chargeEff,
            double dischargeEff,
            double leadOhm,
            double offV,
            double againV,
            double depthFloorWh,
            double controllerMaxA,
            double controllerEff,
            boolean held,
            boolean latches,
            boolean comesBack,
            boolean sunRevives) {
        this.wells = wells;
        this.fullWh = fullWh;
        this.firstWh = wells.availableShare() * fullWh;
        this.openV = table(openV::at);
        this.ohmTimes = table(ohmTimes::at);
        this.chargeEff = table(chargeEff::at);
        this.dischargeEff = dischargeEff;
        this.leadOhm = leadOhm;
        this.offV = offV;
        this.againV = againV;
        this.depthFloorWh = depthFloorWh;
        this.controllerMaxA = controllerMaxA;
        this.controllerEff = controllerEff;
        this.held = held;
        this.latches = latches;
        this.comesBack = comesBack;
        this.sunRevives = sunRevives;
    }

    /** A plain store: one well, constant volts, constant losses, no cut-off but empty. */
    static CellRig of(RigFigures figures, double busV) {
        return new CellRig(
                TwoWells.ONE_WELL,
                figures.capacityWh(),
                Curve.flat(busV),
                Curve.flat(1),
                Curve.flat(figures.chargeEff()),
                figures.dischargeEff(),
                0,
                0,
                0,
                0,
                figures.controllerMaxW() / busV,
                figures.controllerEff(),
                false,
                false,
                true,
                true);
    }

    /** A battery by its data sheet. */
    static CellRig of(Rig rig, CellBank bank, boolean inverterLeftOn, double controllerMaxA) {
        RatedStore store = bank.store();
        ControllerRating controller = rig.controller();
        InverterRating inverter = rig.inverter();
        double offV = bank.cutOffV();
        double againV = AGAIN_PER_12V * Math.max(1, Math.round(rig.busV() / 12));
        boolean comesBack = true;
        if (inverter != null && inverterLeftOn) {
            offV = Math.max(offV, rig.inverterOffV());
            double toldV = inverter.window().reconnectV();
            againV = Double.isNaN(toldV) ? againV : toldV;
            comesBack = inverter.habits().restartsAfterFlat() == Stated.YES;
        }
        boolean guarded = store.chemistry().isLithium();
        return new CellRig(
                bank.wells(),
                bank.fullWh(),
                bank.openV(),
                bank.traits().ohmTimesByFill(),
                bank.traits().chargeEffByFill(),
                1,
                rig.leadOhm(),
                offV,
                againV,
                bank.fullWh() * (1 - store.depth()),
                controllerMaxA,
                rig.sunEfficiency(),
                controller != null && controller.tracking() == Tracking.AT_STORE_VOLTS,
                true,
                comesBack,
                !guarded || (controller != null && controller.input().startsWithoutBattery() != Stated.NO));
    }

    private static double[] table(DoubleUnaryOperator curve) {
        double[] table = new double[GRID + 2];
        for (int i = 0; i <= GRID; i++) {
            table[i] = curve.applyAsDouble((double) i / GRID);
        }
        table[GRID + 1] = table[GRID];
        return table;
    }

    /** Straight between the points of a table; {@code fill} is held to 0..1. */
    static double at(double[] table, double fill) {
        double place = fill * GRID;
        if (!(place > 0)) {
            return table[0];
        }
        if (place >= GRID) {
            return table[GRID];
        }
        int i = (int) place;
        return table[i] + (place - i) * (table[i + 1] - table[i]);
    }

    /** Filling of the first well at which the open volts reach a value; above 1 where they never do. */
    double fillAt(double volts) {
        int lower = 0;
        int upper = GRID;
        if (volts <= openV[0]) {
            return 0;
        }
        if (volts > openV[GRID]) {
            return 2;
        }
        while (upper - lower > 1) {
            int middle = (lower + upper) >>> 1;
            if (openV[middle] < volts) {
                lower = middle;
            } else {
                upper = middle;
            }
        }
        return (lower + (volts - openV[lower]) / (openV[upper] - openV[lower])) / GRID;
    }
}
