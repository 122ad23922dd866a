package tideover.engine.proof;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Set;
import tideover.engine.Invented;
import tideover.engine.battery.Chemistry;
import tideover.engine.cold.BoxKind;
import tideover.engine.cold.ColdBox;
import tideover.engine.cold.Compressor;
import tideover.engine.cold.Contents;
import tideover.engine.cold.Food;
import tideover.engine.electronics.InverterLoss;
import tideover.engine.electronics.Tracking;
import tideover.engine.electronics.Wave;
import tideover.engine.load.ColdLoad;
import tideover.engine.load.Duty;
import tideover.engine.load.Load;
import tideover.engine.load.Nature;
import tideover.engine.load.Need;
import tideover.engine.load.Start;
import tideover.engine.load.SteadyLoad;
import tideover.engine.outage.Outage;
import tideover.engine.part.Battery;
import tideover.engine.part.ChargeController;
import tideover.engine.part.Condition;
import tideover.engine.part.ControllerRating;
import tideover.engine.part.Inverter;
import tideover.engine.part.InverterRating;
import tideover.engine.part.Listing;
import tideover.engine.part.Outlet;
import tideover.engine.part.RatedStore;
import tideover.engine.part.Surge;
import tideover.engine.rig.Assembly;
import tideover.engine.rig.Chosen;
import tideover.engine.rig.Rig;
import tideover.engine.site.RoomKind;
import tideover.engine.site.Weather;
import tideover.engine.why.Stated;

/** One rig on which every model is at work: an AGM bank in the cold, a held array, a motor, a nice-to-have load. */
final class ReferenceRig {
    private static final int STEPS_PER_HOUR = 4;

    private ReferenceRig() {}

    static Walk walk(int hours, int darkHours, double chargeAtStart) {
        return walk(loads(), hours, darkHours, chargeAtStart);
    }

    /** The same with a chest freezer in the pump's place. */
    static Walk walkWithFreezer(int hours, int darkHours, double chargeAtStart) {
        ColdBox box = ColdBox.ofWalls(
                BoxKind.CHEST_FREEZER,
                198,
                0.59,
                new Compressor(90, 22),
                null,
                List.of(Contents.of(Food.LEAN_BEEF, 60)));
        List<Load> loads = new ArrayList<>(loads());
        loads.set(
                0,
                new ColdLoad(
                        "freezer",
                        Invented.MAINS,
                        box,
                        new Need.Below(-12),
                        Duty.AS_IT_NEEDS,
                        Double.NaN,
                        RoomKind.INDOORS,
                        ((SteadyLoad) loads.get(0)).nature()));
        return walk(loads, hours, darkHours, chargeAtStart);
    }

    private static Walk walk(List<Load> loads, int hours, int darkHours, double chargeAtStart) {
        Weather weather = new Invented(1).weather(1);
        Outage outage = new Outage(List.of(0), hours, 0.9, chargeAtStart, darkHours, 0.8);
        return Setup.of(
                        rig(),
                        loads,
                        new YearsShelf(weather, Invented.plane(weather), weather.airDegC()),
                        12,
                        STEPS_PER_HOUR,
                        outage)
                .walks(hours)
                .get();
    }

    private static List<Load> loads() {
        Nature motor = new Nature(0.8, new Start(300, 0.6, 0.4, false, ""), false, false);
        return List.of(
                new SteadyLoad("pump", Invented.MAINS, 25, true, new Need.AlwaysOn(), RoomKind.INDOORS, motor),
                new SteadyLoad("router", Invented.SOCKET, 8, true, new Need.AlwaysOn(), RoomKind.INDOORS),
                new SteadyLoad("radio", Invented.SOCKET, 10, false, new Need.AlwaysOn(), RoomKind.INDOORS));
    }

    private static Rig rig() {
        RatedStore store = new RatedStore(
                Chemistry.AGM_LEAD,
                new RatedStore.Capacity(110, 20, 95, 5),
                12,
                0.005,
                25,
                100,
                RatedStore.Guard.UNKNOWN,
                new RatedStore.Heater(20, 2),
                0.8,
                new RatedStore.Worth(0.95, 1),
                30);
        ControllerRating controller = new ControllerRating(
                20, 30, 12, 24, 0.99, Tracking.AT_STORE_VOLTS, ControllerRating.PanelInput.UNKNOWN, Set.of());
        InverterRating inverter = new InverterRating(
                600,
                InverterLoss.through(600, 5, 0.5, 0.9, 0.86),
                12,
                new Surge(1200, 2),
                new InverterRating.Window(10.5, 12.3, 16),
                Wave.SINE,
                new InverterRating.Habits(0, Stated.YES, Stated.YES));
        return Objects.requireNonNull(Assembly.of(List.of(
                        new Chosen(new Battery(listing("B"), store, 4), 4),
                        new Chosen(
                                new Inverter(listing("I"), inverter, List.of(new Outlet(Invented.MAINS, 2, 600, 1))),
                                1),
                        new Chosen(
                                new ChargeController(
                                        listing("C"), controller, List.of(new Outlet(Invented.SOCKET, 2, 200, 1))),
                                1),
                        new Chosen(Invented.panel("P", 100, 1), 3)))
                .rig());
    }

    private static Listing listing(String id) {
        return new Listing(id, id, 1, "USD", LocalDate.of(2026, 1, 1), Condition.NEW, 10, 10, "benchmark");
    }
}
