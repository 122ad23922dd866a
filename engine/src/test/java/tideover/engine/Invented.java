package tideover.engine;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.stream.IntStream;
import tideover.engine.battery.Chemistry;
import tideover.engine.cold.BoxKind;
import tideover.engine.cold.ColdBox;
import tideover.engine.cold.Compressor;
import tideover.engine.cold.Contents;
import tideover.engine.cold.Defrost;
import tideover.engine.cold.Food;
import tideover.engine.electronics.Tracking;
import tideover.engine.load.ColdLoad;
import tideover.engine.load.DayWindow;
import tideover.engine.load.Duty;
import tideover.engine.load.HeatLoad;
import tideover.engine.load.Load;
import tideover.engine.load.Nature;
import tideover.engine.load.Need;
import tideover.engine.load.PitLoad;
import tideover.engine.load.SteadyLoad;
import tideover.engine.load.Supply;
import tideover.engine.load.TimedLoad;
import tideover.engine.outage.Help;
import tideover.engine.outage.Outage;
import tideover.engine.outage.Rolling;
import tideover.engine.part.Battery;
import tideover.engine.part.ChargeController;
import tideover.engine.part.Condition;
import tideover.engine.part.ControllerRating;
import tideover.engine.part.Engine;
import tideover.engine.part.Fuel;
import tideover.engine.part.Inverter;
import tideover.engine.part.InverterRating;
import tideover.engine.part.Listing;
import tideover.engine.part.Outlet;
import tideover.engine.part.Panel;
import tideover.engine.part.Part;
import tideover.engine.part.PlainStore;
import tideover.engine.part.RatedStore;
import tideover.engine.part.Surge;
import tideover.engine.proof.ArraySun;
import tideover.engine.proof.PlaneWeather;
import tideover.engine.quantity.ModelYear;
import tideover.engine.quantity.RandomStream;
import tideover.engine.quantity.Series;
import tideover.engine.rig.Assembly;
import tideover.engine.rig.Chosen;
import tideover.engine.rig.Rig;
import tideover.engine.site.Place;
import tideover.engine.site.RoomKind;
import tideover.engine.site.Weather;
import tideover.engine.sun.DiffuseFraction;
import tideover.engine.sun.PanelMount;
import tideover.engine.sun.SunYear;
import tideover.engine.why.Stated;

/** Invented weather, loads and rigs for tests, drawn from a seed. */
public final class Invented {
    public static final Supply MAINS = Supply.ac(120, 60, "NEMA 5-15");
    public static final Supply SOCKET = Supply.dc(12, "car socket");
    public static final PanelMount MOUNT = new PanelMount(60, 180, 0.03, 0.2);
    public static final Place PLACE = new Place("Invented Quay", 47.5, -122.0, 20, -8);
    public static final SunYear SUN = SunYear.at(PLACE.latDeg(), PLACE.lonDeg(), PLACE.zoneH());

    private final RandomStream random;

    public Invented(long seed) {
        random = RandomStream.of(seed, 0, RandomStream.Purpose.TEST);
    }

    public double between(double least, double most) {
        return least + (most - least) * random.nextUniform();
    }

    public int whole(int least, int most) {
        return least + random.nextIndex(most - least + 1);
    }

    public boolean chance(double share) {
        return random.nextUniform() < share;
    }

    /** Days of random clearness with hours of random shares of it: dark spells, bright days, no physics beyond the sun. */
    public Weather weather(int years) {
        double[] ghi = new double[years * ModelYear.HOURS];
        double[] diffuse = new double[ghi.length];
        double[] air = new double[ghi.length];
        double memory = 0;
        for (int day = 0; day < years * ModelYear.DAYS; day++) {
            memory = 0.5 * memory + between(-1, 1);
            double clearness = Math.max(0.04, Math.min(0.75, 0.4 + 0.3 * memory));
            double meanDegC = 8 - 10 * Math.cos(2 * Math.PI * (day % 365 - 20) / 365) + between(-5, 5);
            for (int h = day * 24; h < day * 24 + 24; h++) {
                double k = clearness * between(0.6, 1.4);
                ghi[h] = k * SUN.horizontalWm2(h % ModelYear.HOURS);
                diffuse[h] = ghi[h] * DiffuseFraction.hourly(k);
                air[h] = meanDegC;
            }
        }
        return new Weather(years, Series.owning(ghi), Series.owning(diffuse), Series.owning(air), "invented");
    }

    public static PlaneWeather plane(Weather weather) {
        return PlaneWeather.of(weather, SUN, MOUNT, false);
    }

    /** What an everyday panel gives for each rated watt, hour by hour. */
    public static Series sun(PlaneWeather plane) {
        return new ArraySun(panel("P", 100, 0).sheet(), 45, Double.NaN).wattsPerRatedW(plane);
    }

    /** From two to six loads, the first one essential and always on. */
    public List<Load> loads(boolean someFree, boolean someNice) {
        List<Load> loads = new ArrayList<>();
        int count = whole(2, 6);
        for (int i = 0; i < count; i++) {
            Supply supply = chance(0.5) ? MAINS : SOCKET;
            double watts = between(2, 40);
            boolean essential = i == 0 || !someNice || chance(0.6);
            String name = "load " + i;
            double from = whole(0, 95) / 4.0;
            double to = 1 + whole(0, 92) / 4.0;
            DayWindow window = new DayWindow(from, to == from ? 24 : to);
            if (someFree && i > 0 && chance(0.5)) {
                double hours = between(0.2, 0.9) * window.lengthHours();
                loads.add(new SteadyLoad(
                        name, supply, watts, essential, new Need.HoursInWindow(hours, window), RoomKind.INDOORS));
            } else if (i > 0 && chance(0.5)) {
                loads.add(new TimedLoad(name, supply, watts, essential, List.of(window), RoomKind.INDOORS));
            } else {
                loads.add(new SteadyLoad(name, supply, watts, essential, new Need.AlwaysOn(), RoomKind.INDOORS));
            }
        }
        return loads;
    }

    /** One to three loads that switch themselves, of any kind; names are told apart by their number. */
    public List<Load> keptLoads() {
        List<Load> loads = new ArrayList<>();
        int count = whole(1, 3);
        for (int i = 0; i < count; i++) {
            loads.add(keptLoad("kept " + i));
        }
        return loads;
    }

    /** One that switches itself, of any kind. */
    public Load keptLoad(String name) {
        Supply supply = chance(0.7) ? MAINS : SOCKET;
        RoomKind room = RoomKind.values()[whole(0, 2)];
        return switch (whole(0, 4)) {
            case 0 ->
                new PitLoad(
                        name,
                        supply,
                        between(50, 300),
                        new PitLoad.Pit(between(10, 40), between(60, 300)),
                        new PitLoad.Inflow(between(0, 60), between(60, 900), between(0, 10), between(1, 30)),
                        between(1000, 6000),
                        room,
                        Nature.PLAIN);
            case 1 ->
                new HeatLoad(
                        name,
                        supply,
                        between(40, 120),
                        between(0, 6),
                        new HeatLoad.Home(between(20, 50), between(10, 80), between(15, 21), between(0.5, 2)),
                        new Need.Above(between(5, 14)),
                        room,
                        Nature.PLAIN);
            default -> coldLoad(name, supply, room, BoxKind.values()[whole(0, 3)]);
        };
    }

    /** A cold box with contents of random mass; now and then with ice, a defrost heater, a door that is opened, or chosen hours. */
    public ColdLoad coldLoad(String name, Supply supply, RoomKind room, BoxKind kind) {
        double litres = between(40, 350);
        double watts = between(40, 140);
        double food = between(0.1, 0.9) * Contents.FULL_KG_PER_L * litres;
        boolean ice = kind.freezes() && chance(0.3);
        List<Contents> contents = new ArrayList<>(List.of(Contents.of(Food.LEAN_BEEF, food)));
        if (ice) {
            contents.add(Contents.of(Food.WATER, between(1, 10)));
        }
        double most = 0.5 * watts * Compressor.movedPerW(32.2, kind.usualDegC()) / (32.2 - kind.usualDegC());
        ColdBox box = ColdBox.ofWalls(
                        kind,
                        litres,
                        Math.min(most, between(0.4, 1.5)),
                        new Compressor(watts, 22),
                        chance(0.3) ? new Defrost(between(200, 500), between(5, 25), between(6, 24)) : null,
                        contents)
                .withOpenings(chance(0.5) ? between(1, 12) : 0);
        Need need = kind.freezes()
                ? new Need.Below(chance(0.5) ? -12 : -1.7)
                : kind == BoxKind.MEDICINE_FRIDGE ? new Need.Band(2, 8) : new Need.HoursAbove(40.0 / 9, 4);
        Duty duty = kind.freezes() && chance(0.4)
                ? chance(0.5) ? Duty.WHILE_SUNNY : Duty.inHours(List.of(new DayWindow(9, 15)))
                : Duty.AS_IT_NEEDS;
        return new ColdLoad(name, supply, box, need, duty, chance(0.3) ? -24 : Double.NaN, room, Nature.PLAIN);
    }

    public Outage outage(double keepBack) {
        int first = whole(0, 11);
        int last = whole(first, Math.min(11, first + 2));
        return new Outage(
                IntStream.rangeClosed(first, last).boxed().toList(),
                whole(6, 96),
                0.9,
                between(0.4, 1),
                whole(0, 8),
                keepBack);
    }

    /** The outage in pieces, or with an engine or another battery, more often than not. */
    public Outage maybeHelped(Outage outage) {
        List<Help> help = new ArrayList<>();
        if (chance(0.3)) {
            double from = whole(0, 20);
            help.add(new Help.Engine(List.of(new DayWindow(from, from + between(0.5, 3))), between(60, 800)));
        }
        if (chance(0.3)) {
            help.add(new Help.Handover(whole(1, outage.hours()), between(50, 600), between(10, 100)));
        }
        Rolling rolling = chance(0.4) ? new Rolling(whole(1, 12), whole(1, 6)) : null;
        return new Outage(
                outage.months(),
                outage.hours(),
                outage.targetShare(),
                outage.chargeAtStart(),
                outage.panelsOutAfterHours(),
                outage.keepBack(),
                rolling,
                help);
    }

    public Rig rig() {
        return rig(between(200, 4000), whole(0, 4), between(4, 40));
    }

    /** A rig of separate parts that carries AC and DC and fails no rule for small loads. */
    public Rig rig(double usableWh, int panels, double controllerA) {
        List<Chosen> chosen = new ArrayList<>(List.of(
                new Chosen(battery("B", usableWh, 30_000), 1),
                new Chosen(inverter("I", between(0, 12), 9_000), 1),
                new Chosen(controller("C", controllerA, 4_000), 1)));
        if (panels > 0) {
            chosen.add(new Chosen(panel("P", between(50, 200), 8_000), panels));
        }
        Rig rig = Assembly.of(chosen).rig();
        if (rig == null) {
            throw new IllegalStateException("no rig");
        }
        return rig;
    }

    /** A battery by its data sheet, any chemistry, with or without what a sheet may leave out. */
    public RatedStore ratedStore(double ratedAh) {
        Chemistry chemistry = Chemistry.values()[whole(0, Chemistry.values().length - 1)];
        double nominalV = chemistry == Chemistry.IRON_PHOSPHATE ? 12.8 : chemistry.isLithium() ? 14.6 : 12;
        return new RatedStore(
                chemistry,
                chance(0.5)
                        ? RatedStore.Capacity.of(ratedAh, 20)
                        : new RatedStore.Capacity(ratedAh, 20, ratedAh * between(0.75, 0.98), 5),
                nominalV,
                chance(0.5) ? Double.NaN : between(0.2, 1.2) / ratedAh,
                between(0.1, 0.6) * ratedAh,
                between(0.5, 2) * ratedAh,
                new RatedStore.Guard(Surge.UNKNOWN, Double.NaN, Stated.values()[whole(0, Stated.values().length - 1)]),
                chance(0.3) ? new RatedStore.Heater(between(10, 40), between(0, 8)) : RatedStore.Heater.NONE,
                between(0.4, 1),
                new RatedStore.Worth(between(0.6, 0.95), 1),
                between(3, 30));
    }

    /** As {@link #rig}, on a battery by its data sheet. */
    public Rig ratedRig(double ratedAh, int panels, double controllerA) {
        Battery battery = new Battery(listing("B", 30_000, 12), ratedStore(ratedAh), 4);
        ControllerRating controller = new ControllerRating(
                controllerA,
                100,
                12,
                24,
                between(0.9, 1),
                chance(0.5) ? Tracking.AT_STORE_VOLTS : Tracking.BEST_POINT,
                ControllerRating.PanelInput.UNKNOWN,
                Set.of());
        List<Chosen> chosen = new ArrayList<>(List.of(
                new Chosen(battery, 1),
                new Chosen(inverter("I", between(0, 12), 9_000), 1),
                new Chosen(
                        new ChargeController(
                                listing("C", 4_000, 1),
                                controller,
                                List.of(new Outlet(SOCKET, 3, 600, between(0.9, 1)))),
                        1)));
        if (panels > 0) {
            chosen.add(new Chosen(panel("P", between(50, 200), 8_000), panels));
        }
        Rig rig = Assembly.of(chosen).rig();
        if (rig == null) {
            throw new IllegalStateException("no rig");
        }
        return rig;
    }

    public Battery battery(String id, double usableWh, long cents) {
        PlainStore store = new PlainStore(usableWh, between(0.85, 1), between(0.85, 1), 12.8, between(5, 60), 200);
        return new Battery(listing(id, cents, 9), store, 4);
    }

    public Inverter inverter(String id, double standingW, long cents) {
        return new Inverter(
                listing(id, cents, 2),
                new InverterRating(1000, between(0.8, 0.95), standingW, 12),
                List.of(new Outlet(MAINS, 2, 1000, 1)));
    }

    public ChargeController controller(String id, double amps, long cents) {
        return new ChargeController(
                listing(id, cents, 1),
                new ControllerRating(amps, 100, 12, 24, between(0.9, 1)),
                List.of(new Outlet(SOCKET, 3, 600, between(0.9, 1))));
    }

    /** Of a kilowatt, more or less, for the mains; starts by hand. */
    public Engine engine(String id, long cents) {
        double fullLPerH = between(0.6, 1.2);
        return new Engine(
                listing(id, cents, 15),
                false,
                between(600, 1400),
                Surge.UNKNOWN,
                List.of(new Outlet(MAINS, 2, 1400, 1)),
                new Fuel(Fuel.Kind.PETROL, between(2, 6), between(80, 200), 6),
                new Engine.Burn(between(0.2, 0.3), between(0.35, 0.5), fullLPerH),
                Engine.Habits.UNKNOWN);
    }

    public static Panel panel(String id, double ratedW, long cents) {
        return new Panel(listing(id, cents, 7), ratedW, 22, -0.004, -0.003, 45);
    }

    public static Listing listing(String id, long cents, double kg) {
        return new Listing(
                id, "invented " + id, cents, "USD", LocalDate.of(2026, 1, 1), Condition.NEW, 1000, kg, "test");
    }

    /** A small parts shelf: boxes are left to other tests. */
    public List<Part> parts() {
        List<Part> parts = new ArrayList<>();
        for (int i = 0; i < 4; i++) {
            parts.add(battery("B" + i, between(200, 2500), whole(50, 600) * 100L));
            parts.add(panel("P" + i, between(40, 220), whole(30, 250) * 100L));
        }
        for (int i = 0; i < 3; i++) {
            parts.add(inverter("I" + i, between(0, 12), whole(40, 200) * 100L));
            parts.add(controller("C" + i, between(3, 30), whole(10, 120) * 100L));
        }
        return parts;
    }
}
