package tideover.engine.rig;

import java.util.Arrays;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import tideover.engine.Invented;
import tideover.engine.battery.Chemistry;
import tideover.engine.electronics.InverterLoss;
import tideover.engine.electronics.Tracking;
import tideover.engine.electronics.Wave;
import tideover.engine.load.DayWindow;
import tideover.engine.load.Load;
import tideover.engine.load.Nature;
import tideover.engine.load.Need;
import tideover.engine.load.Start;
import tideover.engine.load.SteadyLoad;
import tideover.engine.load.Supply;
import tideover.engine.load.TimedLoad;
import tideover.engine.part.Battery;
import tideover.engine.part.ChargeController;
import tideover.engine.part.ControllerRating;
import tideover.engine.part.Inverter;
import tideover.engine.part.InverterRating;
import tideover.engine.part.Outlet;
import tideover.engine.part.Part;
import tideover.engine.part.RatedStore;
import tideover.engine.part.Surge;
import tideover.engine.site.RoomKind;
import tideover.engine.why.Finding;
import tideover.engine.why.Stated;
import tideover.engine.why.Verdict;

/** Parts and loads for the tests of the rules: 12 V, every trait told and good, so that a test spoils the one it is about. */
final class RigKit {
    static final InverterRating.Habits GOOD_HABITS = new InverterRating.Habits(0, Stated.YES, Stated.YES);
    static final InverterRating.Window WINDOW = new InverterRating.Window(10.5, 12.5, 15.5);
    static final RatedStore.Guard STRONG = new RatedStore.Guard(new Surge(300, 10), Double.NaN, Stated.YES);
    static final Set<Chemistry> ALL = Set.of(Chemistry.values());

    private RigKit() {}

    static Rig rig(Part... parts) {
        return Objects.requireNonNull(
                Assembly.of(Arrays.stream(parts).map(p -> new Chosen(p, 1)).toList())
                        .rig());
    }

    /** 1000 W, nine tenths, 6 W standing. */
    static Inverter inverter(Surge surge, InverterRating.Window window, Wave wave, InverterRating.Habits habits) {
        return new Inverter(
                Invented.listing("I", 100, 1),
                new InverterRating(1000, InverterLoss.constant(0.9, 6), 12, surge, window, wave, habits),
                List.of(new Outlet(Invented.MAINS, 4, 1000, 1)));
    }

    static Inverter inverter(Surge surge) {
        return inverter(surge, WINDOW, Wave.SINE, GOOD_HABITS);
    }

    static Inverter inverter() {
        return inverter(new Surge(2500, 10));
    }

    /** 100 Ah, 150 A for hours. */
    static RatedStore store(Chemistry chemistry, double innerOhm, RatedStore.Guard guard) {
        double volts = chemistry == Chemistry.IRON_PHOSPHATE ? 12.8 : chemistry.isLithium() ? 10.95 : 12;
        return new RatedStore(
                chemistry,
                RatedStore.Capacity.of(100, 20),
                volts,
                innerOhm,
                50,
                150,
                guard,
                RatedStore.Heater.NONE,
                0.5,
                RatedStore.Worth.measured(1),
                20);
    }

    static Battery battery(RatedStore store) {
        return new Battery(Invented.listing("B", 100, 20), store, 4, 4);
    }

    static Battery agm() {
        return battery(store(Chemistry.AGM_LEAD, 0.005, STRONG));
    }

    static Battery iron(RatedStore.Guard guard) {
        return battery(store(Chemistry.IRON_PHOSPHATE, 0.006, guard));
    }

    static ChargeController controller(Tracking tracking, ControllerRating.PanelInput input, Set<Chemistry> charges) {
        return new ChargeController(
                Invented.listing("C", 100, 1),
                new ControllerRating(20, 100, 12, 24, 0.95, tracking, input, charges),
                List.of(new Outlet(Invented.SOCKET, 4, 600, 0.8)));
    }

    static ChargeController controller() {
        return controller(Tracking.BEST_POINT, new ControllerRating.PanelInput(4, 40, Stated.YES), ALL);
    }

    /** Power factor of .6 in the first half second. */
    static Start start(double va) {
        return new Start(va, 0.6, 0.5, false, "");
    }

    static Start alone(double va) {
        return new Start(va, 0.6, 0.5, false, "a timer");
    }

    static Load motor(String name, double runningW, Start start) {
        return motor(name, Invented.MAINS, runningW, start, true);
    }

    static Load motor(String name, Supply supply, double runningW, Start start, boolean essential) {
        return new SteadyLoad(
                name,
                supply,
                runningW,
                essential,
                new Need.AlwaysOn(),
                RoomKind.INDOORS,
                new Nature(supply.isAc() ? 0.8 : 1, start, false, false));
    }

    static Load timedMotor(String name, double runningW, Start start, DayWindow... windows) {
        return new TimedLoad(
                name,
                Invented.MAINS,
                runningW,
                true,
                List.of(windows),
                RoomKind.INDOORS,
                new Nature(0.8, start, false, false));
    }

    static Load freeMotor(String name, double runningW, Start start, double hours, DayWindow window) {
        return new SteadyLoad(
                name,
                Invented.MAINS,
                runningW,
                true,
                new Need.HoursInWindow(hours, window),
                RoomKind.INDOORS,
                new Nature(0.8, start, false, false));
    }

    static Load lamp(String name, double watts, boolean essential) {
        return new SteadyLoad(name, Invented.MAINS, watts, essential, new Need.AlwaysOn(), RoomKind.INDOORS);
    }

    static List<Finding> findings(Rig rig, String rule, Load... loads) {
        return RuleBook.findings(rig, List.of(loads), new Site(-10, true)).stream()
                .filter(finding -> finding.rule().equals(rule))
                .toList();
    }

    /** The worst verdict of a rule; empty where it says nothing. Every sentence must render. */
    static Optional<Verdict> verdict(Rig rig, String rule, Load... loads) {
        RuleBook.findings(rig, List.of(loads), new Site(-10, true)).forEach(Finding::sentence);
        return findings(rig, rule, loads).stream().map(Finding::verdict).max(Verdict::compareTo);
    }
}
