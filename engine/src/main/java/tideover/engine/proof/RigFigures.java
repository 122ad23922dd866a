package tideover.engine.proof;

import java.util.HashMap;
import java.util.Map;
import tideover.engine.part.ControllerRating;
import tideover.engine.part.PlainStore;
import tideover.engine.part.RatedStore;
import tideover.engine.quantity.Require;
import tideover.engine.rig.Rig;

/**
 * A rig flattened to the figures that the walk through an outage needs. Powers on the bus side unless said.
 *
 * @param capacityWh     usable, counted inside the store
 * @param chargeEff      stored per delivered
 * @param dischargeEff   given per taken out
 * @param maxChargeW     most power into the store's terminals
 * @param maxDischargeW  most power out of them
 * @param arrayRatedW    panels at their rating
 * @param controllerMaxW output current times bus voltage: the limit on the controller's whole output
 * @param controllerEff  controller output per input
 */
public record RigFigures(
        double capacityWh,
        double chargeEff,
        double dischargeEff,
        double maxChargeW,
        double maxDischargeW,
        double arrayRatedW,
        double controllerMaxW,
        double controllerEff) {
    public RigFigures {
        Require.above(0, "capacityWh", capacityWh, "Wh");
        Require.within(0.01, 1, "chargeEff", chargeEff, "");
        Require.within(0.01, 1, "dischargeEff", dischargeEff, "");
        Require.atLeast(0, "arrayRatedW", arrayRatedW, "W");
        Require.atLeast(0, "controllerMaxW", controllerMaxW, "W");
        Require.within(0.01, 1, "controllerEff", controllerEff, "");
    }

    /**
     * The figures of a rig. For a battery known by its data sheet they are those of the best plain store that it could be:
     * every real trait only takes from them, so that what this cannot carry the battery cannot either.
     */
    public static RigFigures of(Rig rig) {
        return new Known().of(rig);
    }

    /** The same of many rigs, each kind of battery made ready once. For one thread. */
    public static final class Known {
        private final Map<RatedStore, CellBank> banks = new HashMap<>();

        public RigFigures of(Rig rig) {
            if (rig.store() instanceof PlainStore plain) {
                return RigFigures.of(rig, plain);
            }
            RatedStore store = (RatedStore) rig.store();
            return atBest(rig, store, banks.computeIfAbsent(store, CellBank::of));
        }
    }

    private static RigFigures of(Rig rig, PlainStore store) {
        ControllerRating controller = rig.controller();
        return new RigFigures(
                store.usableWh(),
                store.chargeEfficiency(),
                store.dischargeEfficiency(),
                store.maxChargeW(),
                store.maxDischargeW(),
                rig.arrayRatedW(),
                controller == null ? 0 : controller.maxOutputW(rig.busV()),
                rig.sunEfficiency());
    }

    private static RigFigures atBest(Rig rig, RatedStore store, CellBank bank) {
        ControllerRating controller = rig.controller();
        return new RigFigures(
                bank.usableWh(),
                bank.traits().chargeEffByFill().most(),
                1,
                store.maxChargeA() * bank.mostChargeV(),
                store.maxDischargeA() * bank.openV().most(),
                rig.arrayRatedW(),
                controller == null ? 0 : controller.maxOutputW(bank.mostChargeV()),
                rig.sunEfficiency());
    }

    /** The same with another store in one pool, and nothing lost on the way in or out. */
    public RigFigures pooledWith(double wh) {
        return new RigFigures(
                capacityWh * dischargeEff + wh,
                1,
                1,
                Double.MAX_VALUE,
                Double.MAX_VALUE,
                arrayRatedW,
                controllerMaxW,
                controllerEff);
    }

    public RigFigures withCapacityWh(double wh) {
        return new RigFigures(
                wh, chargeEff, dischargeEff, maxChargeW, maxDischargeW, arrayRatedW, controllerMaxW, controllerEff);
    }

    public RigFigures withArrayRatedW(double watts) {
        return new RigFigures(
                capacityWh, chargeEff, dischargeEff, maxChargeW, maxDischargeW, watts, controllerMaxW, controllerEff);
    }

    public RigFigures withControllerMaxW(double watts) {
        return new RigFigures(
                capacityWh, chargeEff, dischargeEff, maxChargeW, maxDischargeW, arrayRatedW, watts, controllerEff);
    }

    public RigFigures withMaxChargeW(double watts) {
        return new RigFigures(
                capacityWh, chargeEff, dischargeEff, watts, maxDischargeW, arrayRatedW, controllerMaxW, controllerEff);
    }

    public RigFigures withMaxDischargeW(double watts) {
        return new RigFigures(
                capacityWh, chargeEff, dischargeEff, maxChargeW, watts, arrayRatedW, controllerMaxW, controllerEff);
    }
}
