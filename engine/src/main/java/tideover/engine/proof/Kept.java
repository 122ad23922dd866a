package tideover.engine.proof;

import java.util.ArrayList;
import java.util.List;
import tideover.engine.electronics.InverterLoss;
import tideover.engine.load.ColdLoad;
import tideover.engine.load.HeatLoad;
import tideover.engine.load.Load;
import tideover.engine.load.PitLoad;
import tideover.engine.part.InverterRating;
import tideover.engine.quantity.Series;
import tideover.engine.rig.Rig;
import tideover.engine.rig.Sockets;

/**
 * The loads of a rig that switch themselves, with what each asks of its bus. Immutable; every walk takes its own keepers
 * from it.
 *
 * @param loss      of the rig's inverter
 * @param standingW of the inverter while one of them alone keeps it on; 0 where another load does
 */
record Kept(List<One> all, InverterLoss loss, double standingW) {
    /**
     * One of them.
     *
     * @param ac       whether it hangs on the inverter
     * @param busPerPlugW of direct current; 0 elsewhere, or where no outlet fits
     */
    record One(Load load, boolean ac, double busPerPlugW, Maker maker) {
        /** Whether the rig has an outlet for it. */
        boolean isFed() {
            return ac || busPerPlugW > 0;
        }
    }

    /**
     * Makes a keeper that belongs to one thread; one that is not looked into may live on its tape while it gets all it asks
     * for.
     */
    interface Maker {
        Keeper keeper(boolean storm, boolean foreseen, boolean looked);
    }

    private static final InverterLoss NO_INVERTER = new InverterLoss(0, 0, 0);
    static final Kept NONE = new Kept(List.of(), NO_INVERTER, 0);

    static Kept of(Rig rig, List<Load> everyDay, YearsShelf shelf, int stepsPerHour) {
        List<Load> loads = rig.served(everyDay);
        Sockets sockets = Sockets.of(rig, loads);
        List<One> all = new ArrayList<>();
        for (Load load : loads) {
            if (!load.keeps()) {
                continue;
            }
            Sockets.Plugged plugged = sockets.plugged().stream()
                    .filter(one -> one.load() == load)
                    .findFirst()
                    .orElse(new Sockets.Plugged(load, null));
            all.add(new One(
                    load, plugged.throughInverter(rig), plugged.busPerPlugW(), maker(load, shelf, stepsPerHour)));
        }
        InverterRating inverter = rig.inverter();
        boolean leftOnAnyway = sockets.neverSwitchesInverterOff(rig);
        return new Kept(
                all,
                inverter == null ? NO_INVERTER : inverter.loss(),
                inverter == null || leftOnAnyway || all.stream().noneMatch(One::ac) ? 0 : inverter.standingW());
    }

    /** Where nothing gives them power. */
    static Kept without(List<Load> loads, YearsShelf shelf, int stepsPerHour) {
        return new Kept(
                loads.stream()
                        .filter(Load::keeps)
                        .map(load -> new One(load, false, 0, maker(load, shelf, stepsPerHour)))
                        .toList(),
                NO_INVERTER,
                0);
    }

    private static Maker maker(Load load, YearsShelf shelf, int stepsPerHour) {
        if (load instanceof ColdLoad cold) {
            GridLife life = shelf.life(cold, stepsPerHour);
            Series roomDegC = shelf.roomDegC(cold.room());
            return (storm, foreseen, looked) -> {
                Keeper keeper = new ColdKeeper(cold, roomDegC, life, stepsPerHour, foreseen);
                boolean chilled = foreseen && !Double.isNaN(cold.chilledToDegC());
                boolean otherwise = cold.heldBack() || chilled || cold.box().takesIceIn();
                return looked || otherwise ? keeper : new Follower(keeper, life, stepsPerHour);
            };
        }
        if (load instanceof HeatLoad heat) {
            GridLife life = shelf.life(heat, stepsPerHour);
            Series outdoorDegC = shelf.outdoorDegC();
            return (storm, foreseen, looked) -> {
                Keeper keeper = new HomeKeeper(heat, outdoorDegC, life, stepsPerHour);
                return looked ? keeper : new Follower(keeper, life, stepsPerHour);
            };
        }
        return (storm, foreseen, looked) -> new PitKeeper((PitLoad) load, stepsPerHour, storm);
    }

    boolean isEmpty() {
        return all.isEmpty();
    }

    Kept withoutStanding() {
        return new Kept(all, loss.withoutStanding(), 0);
    }

    Keeper[] keepers(boolean storm, boolean foreseen, boolean looked) {
        return all.stream()
                .map(one -> one.maker().keeper(storm, foreseen, looked))
                .toArray(Keeper[]::new);
    }
}
