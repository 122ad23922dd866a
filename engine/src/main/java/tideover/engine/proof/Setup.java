package tideover.engine.proof;

import java.util.List;
import java.util.function.Function;
import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;
import tideover.engine.battery.BatteryWarmth;
import tideover.engine.electronics.Tracking;
import tideover.engine.load.Load;
import tideover.engine.outage.Outage;
import tideover.engine.part.Battery;
import tideover.engine.part.ControllerRating;
import tideover.engine.part.RatedStore;
import tideover.engine.quantity.Series;
import tideover.engine.rig.Aids;
import tideover.engine.rig.Chosen;
import tideover.engine.rig.Rig;
import tideover.engine.rig.Sockets;

/**
 * All that walks of one rig share, made once: flattened figures, demand, sun and the battery's climate. Immutable; every
 * thread takes its own {@link Walk} from it.
 *
 * @param figures        of the rig; of the best plain store it could be where it is a battery by its data sheet
 * @param inverterLeftOn whether an essential load keeps the inverter on
 * @param cells          null for a plain store
 * @param kept           the loads that switch themselves
 * @param storm          whether it is a storm that takes the grid
 * @param foreseen       whether it was known the day before, so that boxes were cooled down
 */
record Setup(
        Rig rig,
        RigFigures figures,
        BusDemand demand,
        boolean inverterLeftOn,
        Series sunPerRatedW,
        Series roomDegC,
        Outage outage,
        @Nullable Cells cells,
        Kept kept,
        boolean storm,
        boolean foreseen) {
    /**
     * What a battery by its data sheet needs beside the figures.
     *
     * @param held       null where the controller seeks the panels' best point
     * @param starts     null where nothing has to be started by the clock
     * @param keptStarts of what switches itself
     * @param controllerMaxA what its controller gives at most
     */
    record Cells(
            CellBank bank,
            BatteryWarmth warmth,
            CellClimate climate,
            @Nullable HeldArray held,
            @Nullable StartFloors starts,
            @Nullable StartFloors keptStarts,
            double controllerMaxA) {
        Cells with(CellBank changed) {
            return new Cells(
                    changed, warmth, CellClimate.of(changed, warmth), held, starts, keptStarts, controllerMaxA);
        }

        /** Held at one temperature, at nobody's cost. */
        Cells at(double allDegC) {
            int hours = warmth.degC().length();
            BatteryWarmth steady = new BatteryWarmth(Series.constant(hours, allDegC), Series.constant(hours, 0));
            return new Cells(bank, steady, CellClimate.of(bank, steady), held, starts, keptStarts, controllerMaxA);
        }

        Cells with(CellClimate changed) {
            return new Cells(bank, warmth, changed, held, starts, keptStarts, controllerMaxA);
        }

        Cells with(@Nullable HeldArray changed) {
            return new Cells(bank, warmth, climate, changed, starts, keptStarts, controllerMaxA);
        }

        Cells withoutStarts() {
            return new Cells(bank, warmth, climate, held, null, null, controllerMaxA);
        }

        Cells withControllerMaxA(double amps) {
            return new Cells(bank, warmth, climate, held, starts, keptStarts, amps);
        }
    }

    /** @param noonHour clock hour of solar noon */
    static Setup of(Rig rig, List<Load> everyDay, YearsShelf shelf, double noonHour, int stepsPerHour, Outage outage) {
        List<Load> loads = rig.served(everyDay);
        BusDemand demand = BusDemand.of(rig, loads, noonHour, stepsPerHour);
        return new Setup(
                rig,
                RigFigures.of(rig),
                demand,
                Sockets.of(rig, loads).leavesInverterOn(rig),
                shelf.wattsPerRatedW(rig),
                shelf.roomDegC(),
                outage,
                rig.store() instanceof RatedStore store
                        ? cells(rig, store, loads, shelf, noonHour, stepsPerHour)
                        : null,
                Kept.of(rig, loads, shelf, stepsPerHour),
                false,
                false);
    }

    private static Cells cells(
            Rig rig, RatedStore store, List<Load> loads, YearsShelf shelf, double noonHour, int stepsPerHour) {
        CellBank bank = CellBank.of(store);
        BatteryWarmth warmth = shelf.warmth(store, batteries(rig));
        ControllerRating controller = rig.controller();
        HeldArray held = null;
        if (rig.panel() != null && controller != null && controller.tracking() == Tracking.AT_STORE_VOLTS) {
            held = shelf.held(
                    rig.panel(),
                    rig.panelsInSeries(),
                    rig.panelStrings(),
                    bank.openV().least() * 0.9,
                    bank.mostChargeV());
        }
        Function<Boolean, @Nullable StartFloors> floors = switched -> StartFloors.of(
                rig, bank.wells().availableShare() * bank.fullWh(), loads, noonHour, stepsPerHour, switched);
        return new Cells(
                bank,
                warmth,
                CellClimate.of(bank, warmth),
                held,
                floors.apply(false),
                floors.apply(true),
                controller == null ? 0 : controller.maxOutputA());
    }

    private static int batteries(Rig rig) {
        int count = 0;
        for (Chosen chosen : rig.chosen()) {
            count += chosen.part() instanceof Battery ? chosen.count() : 0;
        }
        return Math.max(1, count);
    }

    /** How long all that stands in for a load goes on doing so, h; what needs it is not kept beyond. */
    double standInHours() {
        return Aids.lastHours(rig.chosen());
    }

    /**
     * Gives every thread a walk of its own; what they share is made here, once.
     *
     * @param capHours the longest that they will be asked to follow
     */
    Supplier<Walk> walks(int capHours) {
        return walks(capHours, false);
    }

    /** @param looked whether what switches itself is looked into on the way */
    Supplier<Walk> walks(int capHours, boolean looked) {
        if (cells == null && !rig.isHelped(outage) && kept.isEmpty()) {
            return () -> new PlainWalk(figures, demand, sunPerRatedW, outage);
        }
        Relief relief = Relief.of(rig, outage, demand.stepsPerHour(), capHours * demand.stepsPerHour());
        boolean niceWanted = demand.hasNice();
        CellClimate climate = cells == null ? CellClimate.none(figures, rig.busV(), roomDegC) : cells.climate();
        CellRig flat = cells == null
                ? CellRig.of(figures, rig.busV())
                : CellRig.of(rig, cells.bank(), inverterLeftOn, cells.controllerMaxA());
        HeldArray held = cells == null ? null : cells.held();
        StartFloors starts = cells == null ? null : cells.starts();
        StartFloors keptStarts = cells == null ? null : cells.keptStarts();
        return () -> new CellWalk(
                new CellFlows(demand, sunPerRatedW, figures.arrayRatedW(), climate, held),
                flat,
                starts,
                keptStarts,
                relief,
                outage,
                niceWanted,
                kept,
                storm,
                foreseen,
                looked);
    }

    Setup with(RigFigures changed) {
        return new Setup(
                rig, changed, demand, inverterLeftOn, sunPerRatedW, roomDegC, outage, cells, kept, storm, foreseen);
    }

    Setup with(Outage changed) {
        return new Setup(
                rig, figures, demand, inverterLeftOn, sunPerRatedW, roomDegC, changed, cells, kept, storm, foreseen);
    }

    Setup with(BusDemand changed) {
        return new Setup(
                rig, figures, changed, inverterLeftOn, sunPerRatedW, roomDegC, outage, cells, kept, storm, foreseen);
    }

    Setup with(Cells changed) {
        return new Setup(
                rig, figures, demand, inverterLeftOn, sunPerRatedW, roomDegC, outage, changed, kept, storm, foreseen);
    }

    Setup with(Kept changed) {
        return new Setup(
                rig, figures, demand, inverterLeftOn, sunPerRatedW, roomDegC, outage, cells, changed, storm, foreseen);
    }

    /** With so many times the sun. */
    Setup withSun(double times) {
        Cells sunny = cells;
        if (sunny != null && sunny.held() != null) {
            sunny = sunny.with(sunny.held().times(times));
        }
        return new Setup(
                rig,
                figures,
                demand,
                inverterLeftOn,
                sunPerRatedW.times(times),
                roomDegC,
                outage,
                sunny,
                kept,
                storm,
                foreseen);
    }

    /** The same in a storm; foreseen where the plan says so. */
    Setup inStorm() {
        return inStorm(outage.storm() != null && outage.storm().forecast());
    }

    Setup inStorm(boolean knownAhead) {
        return new Setup(
                rig,
                figures,
                demand,
                inverterLeftOn,
                sunPerRatedW,
                roomDegC,
                outage.inStorm(),
                cells,
                kept,
                true,
                knownAhead);
    }
}
