package tideover.engine.search;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.OptionalLong;
import java.util.Set;
import java.util.stream.IntStream;
import org.jspecify.annotations.Nullable;
import tideover.engine.Invented;
import tideover.engine.battery.Chemistry;
import tideover.engine.cold.BoxKind;
import tideover.engine.electronics.InverterLoss;
import tideover.engine.electronics.Tracking;
import tideover.engine.electronics.Wave;
import tideover.engine.load.ColdLoad;
import tideover.engine.load.DayWindow;
import tideover.engine.load.Load;
import tideover.engine.load.Nature;
import tideover.engine.load.Need;
import tideover.engine.load.Start;
import tideover.engine.load.SteadyLoad;
import tideover.engine.load.Supply;
import tideover.engine.load.TimedLoad;
import tideover.engine.outage.Help;
import tideover.engine.outage.Outage;
import tideover.engine.outage.Rolling;
import tideover.engine.outage.Tending;
import tideover.engine.part.Battery;
import tideover.engine.part.ChargeController;
import tideover.engine.part.Charger;
import tideover.engine.part.ControllerRating;
import tideover.engine.part.Cooler;
import tideover.engine.part.Enclosure;
import tideover.engine.part.Engine;
import tideover.engine.part.Fuel;
import tideover.engine.part.Inverter;
import tideover.engine.part.InverterRating;
import tideover.engine.part.Jug;
import tideover.engine.part.Listing;
import tideover.engine.part.Outlet;
import tideover.engine.part.Panel;
import tideover.engine.part.Part;
import tideover.engine.part.PlainStore;
import tideover.engine.part.RatedStore;
import tideover.engine.part.ReadyBox;
import tideover.engine.part.Selling;
import tideover.engine.part.SmallPart;
import tideover.engine.part.SocketBoard;
import tideover.engine.part.StandIn;
import tideover.engine.part.Store;
import tideover.engine.part.Surge;
import tideover.engine.proof.PlaneWeather;
import tideover.engine.rig.Aids;
import tideover.engine.rig.Chosen;
import tideover.engine.rig.Site;
import tideover.engine.site.RoomKind;
import tideover.engine.site.Weather;
import tideover.engine.sun.PanelSheet;
import tideover.engine.why.Stated;
import tideover.engine.wiring.Allowances;
import tideover.engine.wiring.Bench;
import tideover.engine.wiring.Laying;
import tideover.engine.wiring.Stock;
import tideover.engine.wiring.Terms;
import tideover.engine.wiring.WiringKit;

/**
 * One household's question over a small random parts file, drawn from a seed: a month or two, one weather year or two, a few
 * dozen rigs. Prices go with what a part can do, so that they lie close together, and are round often enough for ties.
 *
 * @param outage its target is drawn by whoever asks, once the shares are known
 */
record SmallCase(
        long seed,
        Weather weather,
        PlaneWeather plane,
        int stepsPerHour,
        List<Load> loads,
        Outage outage,
        List<Part> parts,
        Grammar grammar,
        List<SmallPart> smallParts,
        Allowances allowances,
        Terms terms,
        OptionalLong budgetCents) {
    static final double NOON = Invented.PLACE.meanSolarNoonHour();
    static final double COLD_DEG_C = -10;

    /** Steps of the outages from the same hour of the day, of one day of each asked month. */
    private static final int MOST_STEPS = 250;

    Site site() {
        return new Site(
                COLD_DEG_C,
                false,
                RoomKind.INDOORS,
                null,
                outage.help().stream().anyMatch(help -> help instanceof Help.Engine),
                outage);
    }

    /** A new one: what a bench remembers it does not share. */
    Bench bench() {
        return new Bench(stock(), Laying.ASSUMED, loads, outage, COLD_DEG_C);
    }

    Stock stock() {
        return Stock.of(smallParts, false);
    }

    SmallCase withTarget(double share) {
        return new SmallCase(
                seed,
                weather,
                plane,
                stepsPerHour,
                loads,
                outage.withTarget(share),
                parts,
                grammar,
                smallParts,
                allowances,
                terms,
                budgetCents);
    }

    static SmallCase of(long seed) {
        return new Drawn(seed, false, false).whole();
    }

    /** One year, one month, a day and a half at most. */
    static SmallCase quick(long seed) {
        return new Drawn(seed, true, false).whole();
    }

    /** The same; nothing is taxed, shipped or cheaper by the dozen, and there are neither engines nor aids. */
    static SmallCase plain(long seed) {
        return new Drawn(seed, true, true).whole();
    }

    /** Draws, one after another. */
    private static final class Drawn {
        private final long seed;
        private final Invented invented;
        private final boolean quick;

        /** Draws of their own, so that all else stays what it is without them. */
        private final Invented more;

        private final boolean sold;
        private final boolean engines;
        private final boolean aids;

        /** Prices are multiples of this. */
        private final long stepCents;

        private double wantedWh;
        private int hours;
        private boolean direct;
        private boolean alternating;

        Drawn(long seed, boolean quick, boolean plain) {
            this.quick = quick;
            this.more = new Invented(seed + 3_000_000);
            // Seldom both: pairs and sets multiply.
            int kind = more.whole(0, 9);
            this.sold = !plain && more.chance(0.5);
            this.engines = !plain && (kind <= 4);
            this.aids = !plain && (kind >= 4 && kind != 5);
            this.seed = seed;
            this.invented = new Invented(seed);
            this.stepCents = new long[] {1, 100, 1000, 5000}[invented.whole(0, 3)];
        }

        SmallCase whole() {
            Weather weather = invented.weather(invented.chance(0.3) && !quick ? 2 : 1);
            List<Load> loads = loads();
            Outage outage = outage();
            hours = outage.hours();
            wantedWh = 1.2
                    * outage.hours()
                    / 24
                    * loads.stream().mapToDouble(Load::wantedWhPerDay).sum();
            boolean counted = invented.chance(0.3);
            Allowances allowances = counted
                    ? new Allowances(0, 0, 0)
                    : new Allowances(
                            invented.whole(0, 20) * 100, invented.whole(0, 40) * 100, invented.whole(0, 60) * 100);
            int steps = stepsPerHour(weather.years() * outage.months().size() * outage.hours());
            List<Part> parts = parts(outage);
            Grammar grammar = new Grammar(invented.whole(1, 2), invented.whole(1, 2), outage.isHelped())
                    .withMostJugs(more.whole(1, 2));
            if (engines) {
                engines(parts);
            }
            if (aids) {
                aids(parts, loads);
            }
            List<List<Chosen>> sets = Aids.sets(parts, loads, grammar.mostJugs(), outage.hours()).stream()
                    .filter(set -> leavesWork(set, loads))
                    .toList();
            return new SmallCase(
                    seed,
                    weather,
                    Invented.plane(weather),
                    steps,
                    loads,
                    outage,
                    parts,
                    grammar.withAids(sets),
                    counted ? WiringKit.full() : List.of(),
                    allowances,
                    terms(),
                    invented.chance(0.15) ? OptionalLong.of(invented.whole(200, 900) * 100L) : OptionalLong.empty());
        }

        private static boolean leavesWork(List<Chosen> set, List<Load> loads) {
            return Aids.served(set, loads).stream().anyMatch(load -> load.essential() && load.plugged());
        }

        /** Short ones where an outage has few of them to be walked from every start. */
        private int stepsPerHour(int hours) {
            int drawn = new int[] {1, 1, 2, 4}[invented.whole(0, 3)];
            return Math.min(drawn, quick ? 1 : Math.max(1, MOST_STEPS / hours));
        }

        // Loads.

        private Supply supply() {
            boolean ac = invented.chance(0.5);
            alternating |= ac;
            direct |= !ac;
            return ac ? Invented.MAINS : Invented.SOCKET;
        }

        private List<Load> loads() {
            List<Load> loads = new ArrayList<>();
            boolean keeps = invented.chance(0.45);
            if (keeps) {
                loads.add(keptLoad("kept"));
            }
            boolean timed = invented.chance(0.4);
            if (!(keeps || timed) || invented.chance(0.5)) {
                loads.add(new SteadyLoad(
                        "steady", supply(), invented.between(3, 35), true, new Need.AlwaysOn(), RoomKind.INDOORS));
            }
            if (timed) {
                loads.add(new TimedLoad(
                        "timed",
                        supply(),
                        invented.between(5, 60),
                        true,
                        List.of(window(invented.whole(1, 8))),
                        RoomKind.INDOORS));
            }
            if (invented.chance(0.35)) {
                loads.add(motor("motor"));
            }
            if (invented.chance(0.2)) {
                DayWindow window = window(invented.whole(3, 12));
                loads.add(new SteadyLoad(
                        "free hours",
                        supply(),
                        invented.between(5, 40),
                        true,
                        new Need.HoursInWindow(invented.between(0.3, 0.9) * window.lengthHours(), window),
                        RoomKind.INDOORS));
            }
            if (invented.chance(0.25)) {
                loads.add(new TimedLoad(
                        "nice", supply(), invented.between(5, 60), false, List.of(window(6)), RoomKind.INDOORS));
            }
            return loads;
        }

        private DayWindow window(int hours) {
            int from = invented.whole(0, 23);
            int to = (from + hours) % 24;
            return new DayWindow(from, to == 0 ? 24 : to);
        }

        private Load motor(String name) {
            alternating = true;
            double watts = invented.between(30, 200);
            Nature nature = new Nature(0.8, start(watts), invented.chance(0.3), true);
            return invented.chance(0.5)
                    ? new TimedLoad(
                            name,
                            Invented.MAINS,
                            watts,
                            true,
                            List.of(window(invented.whole(1, 3))),
                            RoomKind.INDOORS,
                            nature)
                    : new SteadyLoad(
                            name, Invented.MAINS, watts / 4, true, new Need.AlwaysOn(), RoomKind.INDOORS, nature);
        }

        private Start start(double watts) {
            return new Start(watts * invented.between(2, 7), 0.6, 0.5, false, invented.chance(0.3) ? "a timer" : "");
        }

        /** A motor runs in it more often than not. */
        private Load keptLoad(String name) {
            Load load = invented.keptLoad(name);
            alternating |= load.supply().isAc();
            direct |= !load.supply().isAc();
            if (load instanceof ColdLoad cold && cold.supply().isAc() && invented.chance(0.6)) {
                return new ColdLoad(
                        name,
                        cold.supply(),
                        cold.box(),
                        cold.need(),
                        cold.duty(),
                        cold.chilledToDegC(),
                        cold.room(),
                        new Nature(0.8, start(invented.between(60, 150)), false, true));
            }
            return load;
        }

        // The question.

        private Outage outage() {
            int first = invented.whole(0, 11);
            int second = invented.chance(0.3) && !quick ? invented.whole(0, 11) : first;
            List<Help> help = new ArrayList<>();
            if (invented.chance(0.3)) {
                int from = invented.whole(0, 20);
                help.add(new Help.Engine(
                        List.of(new DayWindow(from, from + invented.between(0.5, 3))), invented.between(100, 800)));
            }
            if (invented.chance(0.1)) {
                help.add(
                        new Help.Handover(invented.whole(0, 24), invented.between(50, 400), invented.between(10, 100)));
            }
            Rolling rolling = invented.chance(0.15) ? new Rolling(invented.whole(4, 30), invented.whole(1, 6)) : null;
            return new Outage(
                            IntStream.of(first, second)
                                    .distinct()
                                    .sorted()
                                    .boxed()
                                    .toList(),
                            invented.whole(12, quick ? 36 : 72),
                            0.9,
                            invented.chance(0.4) ? 1 : invented.between(0.5, 1),
                            invented.whole(0, invented.chance(0.3) ? 24 : 6),
                            invented.chance(0.7) ? 1 : invented.between(0.2, 0.9),
                            rolling,
                            help)
                    .with(tending());
        }

        private Tending tending() {
            int from = more.whole(0, 12);
            return engines && more.chance(0.6)
                    ? new Tending(
                            List.of(new DayWindow(from, from + more.between(1, 8)), new DayWindow(21, 23)),
                            more.between(0, 15))
                    : Tending.USUAL;
        }

        // Parts.

        private List<Part> parts(Outage outage) {
            List<Part> parts = new ArrayList<>();
            int batteries = invented.whole(2, 3);
            for (int i = 0; i < batteries; i++) {
                Store store = store();
                parts.add(new Battery(
                        listing("B" + i, 3 + store.usableWh() * invented.between(0.28, 0.4), store.usableWh() / 80),
                        store,
                        4,
                        4));
            }
            if (invented.chance(0.4)) {
                parts.add(rival((Battery) parts.get(0)));
            }
            if (invented.chance(0.5)) {
                parts.add(box("X"));
            }
            if (invented.chance(0.4)) {
                parts.add(enclosure("E"));
            }
            int panels = invented.whole(1, 2);
            for (int i = 0; i < panels; i++) {
                double ratedW = Math.max(30, Math.min(300, wantedWh / hours * 24 / invented.between(1, 6)));
                parts.add(new Panel(
                        listing("P" + i, 10 + ratedW * invented.between(0.4, 0.7), ratedW / 12),
                        PanelSheet.of(ratedW, 22, 1.1 * ratedW / 18, 18, 36, 0.0005, -0.003, -0.004),
                        45,
                        new Panel.Tail("make one", 30)));
            }
            int controllers = invented.whole(1, 2);
            for (int i = 0; i < controllers; i++) {
                double amps = invented.between(5, 30);
                parts.add(new ChargeController(
                        listing("C" + i, 8 + amps * invented.between(1, 2), 1),
                        controller(amps),
                        invented.chance(0.8)
                                ? List.of(new Outlet(Invented.SOCKET, 4, 600, invented.between(0.9, 1)))
                                : List.of()));
            }
            int inverters = alternating ? invented.whole(1, 2) : invented.whole(0, 1);
            for (int i = 0; i < inverters; i++) {
                InverterRating rating = inverter();
                parts.add(new Inverter(
                        listing("I" + i, 20 + rating.ratedW() * invented.between(0.04, 0.08), 2),
                        rating,
                        List.of(new Outlet(Invented.MAINS, 4, rating.ratedW(), 1))));
            }
            if (direct && invented.chance(0.4)) {
                parts.add(new SocketBoard(
                        listing("D", invented.between(8, 30), 0.3),
                        List.of(new Outlet(Invented.SOCKET, 4, 300, invented.between(0.85, 1)))));
            }
            if (outage.isHelped()) {
                double amps = invented.between(4, 40);
                parts.add(new Charger(listing("M", 15 + 2 * amps, 2), amps, 12, 14.6, 0.88, Set.of()));
            }
            return parts;
        }

        /** Of the same price: the same under another name, or of another mass, or of nearly the same size. */
        private Battery rival(Battery one) {
            Listing listing = one.listing();
            int way = invented.whole(0, 2);
            double sizes = way == 0 ? invented.between(0.93, 1.07) : 1;
            Store store = one.store() instanceof RatedStore rated
                    ? rated.times(sizes)
                    : ((PlainStore) one.store()).times(sizes);
            return new Battery(
                    new Listing(
                            invented.chance(0.5) ? "A" : "Z",
                            listing.name(),
                            listing.priceCents(),
                            listing.currency(),
                            listing.pricedOn(),
                            listing.condition(),
                            listing.atHand(),
                            way == 1 ? listing.massKg() * invented.between(0.9, 1.1) : listing.massKg(),
                            listing.source(),
                            listing.selling()),
                    store,
                    one.mostInParallel(),
                    one.mostInSeries());
        }

        /** Whole steps of the price. */
        private Listing listing(String id, double price, double kg) {
            long cents = Math.max(1, Math.round(price * 100 / stepCents)) * stepCents;
            return sold(Invented.listing(id, cents, invented.chance(0.5) ? Math.rint(kg) : kg));
        }

        /** On terms of its own, where anything is. */
        private Listing sold(Listing listing) {
            if (!sold || more.chance(0.2)) {
                return listing;
            }
            List<Selling.VolumePrice> breaks = new ArrayList<>();
            if (more.chance(0.4)) {
                long each = steps(listing.priceCents() * more.between(0.75, 0.98));
                if (each < listing.priceCents()) {
                    breaks.add(new Selling.VolumePrice(2, each));
                    // Now and then three for less than two.
                    long ofThree = steps(each * more.between(0.5, 0.9));
                    if (more.chance(0.4) && ofThree < each) {
                        breaks.add(new Selling.VolumePrice(3, ofThree));
                    }
                }
            }
            return listing.with(new Selling(
                    List.of("", "North", "South").get(more.whole(0, 2)),
                    breaks,
                    more.chance(0.3) ? more.whole(1, 12) * 100L : 0,
                    more.chance(0.8),
                    ""));
        }

        private long steps(double cents) {
            return Math.round(cents / stepCents) * stepCents;
        }

        private Terms terms() {
            if (!sold) {
                return Terms.NONE;
            }
            Terms.Order north = new Terms.Order(more.whole(1, 30) * 100L, OptionalLong.empty());
            Terms.Order south = new Terms.Order(more.whole(1, 60) * 100L, OptionalLong.of(more.whole(20, 400) * 100L));
            return new Terms(new int[] {0, 62_500, 88_753}[more.whole(0, 2)], Map.of("North", north, "South", south));
        }

        /** Without draws of the other stream. */
        private Listing moreOf(String id, double price, double kg) {
            return sold(Invented.listing(id, Math.max(1, Math.round(price * 100 / stepCents)) * stepCents, kg));
        }

        // What belongs to engines, and what helps without power.

        private void engines(List<Part> parts) {
            boolean engine = more.chance(0.6);
            if (engine) {
                double watts = more.between(200, 1200);
                parts.add(engine(false, watts, new Outlet(Invented.MAINS, 2, watts, 1), more.between(20, 150)));
                if (parts.stream().noneMatch(Charger.class::isInstance)) {
                    parts.add(charger("M", more.between(5, 35), more.chance(0.5) ? Invented.MAINS : null));
                }
            }
            if (!engine || more.chance(0.2)) {
                double watts = more.between(80, 300);
                parts.add(engine(true, watts, new Outlet(Invented.SOCKET, 2, 2 * watts, 1), more.between(1, 20)));
                parts.add(charger("K", more.between(3, 0.8 * watts / 15), Invented.SOCKET));
            }
        }

        private Charger charger(String id, double amps, @Nullable Supply fedBy) {
            return new Charger(moreOf(id, 10 + amps, 2), amps, 12, 14.6, more.between(0.8, 0.95), Set.of(), fedBy);
        }

        private Engine engine(boolean vehicle, double watts, Outlet outlet, double price) {
            double litres = more.between(0.1, 0.25) * watts / 1000;
            return new Engine(
                    moreOf(vehicle ? "V" : "G", price, 15),
                    vehicle,
                    watts,
                    vehicle || more.chance(0.5) ? Surge.UNKNOWN : new Surge(1.3 * watts, 5),
                    List.of(outlet),
                    new Fuel(Fuel.Kind.PETROL, more.between(1, 6), more.between(80, 250), 6),
                    vehicle
                            ? Engine.Burn.atIdle(more.between(0.8, 1.5))
                            : new Engine.Burn(litres + 0.1, 2 * litres + 0.1, 3 * litres + 0.1),
                    Engine.Habits.UNKNOWN);
        }

        private void aids(List<Part> parts, List<Load> loads) {
            int number = 0;
            for (Load load : loads) {
                if (load instanceof ColdLoad cold) {
                    if (more.chance(0.8)) {
                        String forLoad = more.chance(0.5)
                                ? cold.name()
                                : cold.box().kind().words();
                        parts.add(new Jug(moreOf("J", more.between(2, 12), 2), forLoad, more.between(1, 8)));
                    }
                    if (cold.box().kind() == BoxKind.REFRIGERATOR) {
                        parts.add(new Cooler(
                                moreOf("Q", more.between(15, 60), 4),
                                cold.name(),
                                cold.box().litres() * more.between(0.6, 1.2),
                                more.between(0.4, 1),
                                more.between(2, 15)));
                    }
                } else if (!load.keeps() && number < 2 && more.chance(0.5)) {
                    parts.add(new StandIn(
                            moreOf("S" + number++, more.between(3, 60), 1), load.name(), more.between(8, 90)));
                }
            }
        }

        private Store store() {
            // From a sixth of what the loads want to half as much again: that is where shares differ.
            double wh = Math.max(60, Math.min(4000, wantedWh * invented.between(0.15, 1.5)));
            return invented.chance(0.4)
                    ? new PlainStore(
                            wh,
                            invented.between(0.85, 1),
                            invented.between(0.85, 1),
                            12.8,
                            invented.between(5, 60),
                            200)
                    : invented.ratedStore(wh / 12 / 0.6);
        }

        private ControllerRating controller(double amps) {
            Tracking tracking = Tracking.values()[invented.whole(0, Tracking.values().length - 1)];
            return new ControllerRating(
                    amps,
                    100,
                    12,
                    24,
                    invented.between(0.9, 1),
                    tracking,
                    invented.chance(0.3)
                            ? ControllerRating.PanelInput.UNKNOWN
                            : new ControllerRating.PanelInput(2, 60, Stated.YES, ControllerRating.PanelInput.BARE_ENDS),
                    invented.chance(0.5) ? Set.of() : EnumSet.allOf(Chemistry.class));
        }

        private InverterRating inverter() {
            double ratedW = invented.between(250, 1500);
            return new InverterRating(
                    ratedW,
                    InverterLoss.constant(invented.between(0.8, 0.95), invented.between(0, 12)),
                    12,
                    invented.chance(0.2) ? Surge.UNKNOWN : new Surge(ratedW * invented.between(1.5, 3), 5),
                    invented.chance(0.3)
                            ? InverterRating.Window.UNKNOWN
                            : new InverterRating.Window(invented.between(10, 11), 12.4, 15.8),
                    invented.chance(0.8) ? Wave.SINE : Wave.MODIFIED,
                    new InverterRating.Habits(0, Stated.YES, invented.chance(0.8) ? Stated.YES : Stated.UNKNOWN));
        }

        private List<Outlet> outlets(@Nullable InverterRating inverter) {
            List<Outlet> outlets =
                    new ArrayList<>(List.of(new Outlet(Invented.SOCKET, 4, 400, invented.between(0.9, 1))));
            if (inverter != null) {
                outlets.add(new Outlet(Invented.MAINS, 4, inverter.ratedW(), 1));
            }
            return outlets;
        }

        private ReadyBox box(String id) {
            Store store = store();
            ControllerRating controller = invented.chance(0.8) ? controller(invented.between(5, 30)) : null;
            InverterRating inverter = invented.chance(0.8) ? inverter() : null;
            double price = 40 + store.usableWh() * invented.between(0.3, 0.6);
            return new ReadyBox(
                    listing(id, price, store.usableWh() / 70),
                    store,
                    controller,
                    inverter,
                    outlets(inverter),
                    invented.chance(0.5) ? invented.between(60, 400) : 0,
                    Stated.UNKNOWN);
        }

        private Enclosure enclosure(String id) {
            ControllerRating controller = invented.chance(0.6) ? controller(invented.between(5, 30)) : null;
            InverterRating inverter = invented.chance(0.6) ? inverter() : null;
            return new Enclosure(
                    listing(id, invented.between(30, 160), 5), 12, controller, inverter, outlets(inverter));
        }
    }
}
