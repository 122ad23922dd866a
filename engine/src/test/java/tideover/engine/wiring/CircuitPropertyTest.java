package tideover.engine.wiring;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.stream.LongStream;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import tideover.engine.Invented;
import tideover.engine.load.Load;
import tideover.engine.outage.Help;
import tideover.engine.part.Battery;
import tideover.engine.part.BatterySwitch;
import tideover.engine.part.Busbar;
import tideover.engine.part.Cable;
import tideover.engine.part.ChargeController;
import tideover.engine.part.Charger;
import tideover.engine.part.Condition;
import tideover.engine.part.Enclosure;
import tideover.engine.part.Fitting;
import tideover.engine.part.Fuse;
import tideover.engine.part.FuseHolder;
import tideover.engine.part.Housing;
import tideover.engine.part.Inverter;
import tideover.engine.part.Listing;
import tideover.engine.part.Lug;
import tideover.engine.part.Outlet;
import tideover.engine.part.PlainStore;
import tideover.engine.part.ReadyBox;
import tideover.engine.part.SmallPart;
import tideover.engine.part.SocketBoard;
import tideover.engine.part.Store;
import tideover.engine.part.Tool;
import tideover.engine.rig.Chosen;
import tideover.engine.rig.Rig;
import tideover.engine.why.Finding;
import tideover.engine.why.Stated;

/** What must hold of every wired rig, on random rigs, lengths and lists of small parts. */
@SuppressWarnings("NullAway") // what is not there fails the test by itself
class CircuitPropertyTest {
    static LongStream seeds() {
        return LongStream.range(0, 150);
    }

    private static final Housing WITH_LEADS =
            new Housing(null, List.of(), Double.NaN, Double.NaN, Stated.UNKNOWN, Stated.YES);

    /** A rig with what is about it, drawn from a seed. */
    private static final class Case {
        final Invented invented;
        final Rig rig;
        final List<Load> loads;
        final Laying laying;
        final List<SmallPart> stock;

        Case(long seed) {
            invented = new Invented(seed);
            rig = rig();
            loads = loads();
            laying = laying();
            stock = stock();
        }

        private Store store() {
            double ah = invented.between(40, 300);
            return invented.chance(.5)
                    ? invented.ratedStore(ah)
                    : new PlainStore(ah * 12.8, .95, .95, 12.8, ah / 4, ah);
        }

        private Rig rig() {
            List<Chosen> chosen = new ArrayList<>();
            int route = invented.whole(0, 5);
            Store store = store();
            double volts = invented.chance(.3) ? 24 : 12;
            int series = volts == 24 ? 2 : 1;
            Inverter inverter = WiringKit.inverter(invented.between(150, 1800), volts);
            double outletW = invented.between(20, 400);
            SocketBoard board = new SocketBoard(
                    Invented.listing("S", 10_00, 1), List.of(new Outlet(Invented.SOCKET, 3, outletW, 1)));
            if (route == 0) {
                chosen.add(WiringKit.one(new ReadyBox(
                        Invented.listing("R", 500_00, 9),
                        store,
                        WiringKit.controller(20, 100).rating(),
                        inverter.rating(),
                        List.of(new Outlet(Invented.MAINS, 2, 500, 1), new Outlet(Invented.SOCKET, 1, 100, 1)))));
                if (invented.chance(.5)) {
                    chosen.add(WiringKit.one(new Charger(Invented.listing("G", 60_00, 3), 10, 12, 30, .9, Set.of())));
                }
            } else {
                Battery battery = new Battery(Invented.listing("B", 300_00, 12), store, 4, 4);
                chosen.add(new Chosen(battery, series * invented.whole(1, 4)));
                if (route <= 2) {
                    chosen.add(WiringKit.one(new Enclosure(
                            Invented.listing("E", 200_00, 5),
                            volts,
                            WiringKit.controller(invented.between(10, 60), 1).rating(),
                            invented.chance(.8) ? inverter.rating() : null,
                            List.of(new Outlet(Invented.MAINS, 2, 500, 1), new Outlet(Invented.SOCKET, 1, outletW, .9)),
                            invented.chance(.2) ? WITH_LEADS : Housing.UNKNOWN)));
                } else {
                    if (invented.chance(.8)) {
                        chosen.add(WiringKit.one(inverter));
                    }
                    ChargeController controller = WiringKit.controller(invented.between(5, 60), outletW);
                    chosen.add(WiringKit.one(
                            invented.chance(.7)
                                    ? controller
                                    : new ChargeController(controller.listing(), controller.rating(), List.of())));
                }
                if (invented.chance(.3)) {
                    chosen.add(WiringKit.one(board));
                }
                if (invented.chance(.4)) {
                    chosen.add(WiringKit.one(new Charger(
                            Invented.listing("G", 60_00, 3), invented.between(5, 60), 12, 30, .9, Set.of())));
                }
            }
            int panels = invented.whole(0, 5);
            if (panels > 0) {
                String make = invented.chance(.3) ? "" : WiringKit.MAKE;
                double mostFuseA = invented.chance(.3) ? Double.NaN : invented.between(8, 25);
                chosen.add(new Chosen(WiringKit.panel(make, mostFuseA), panels));
            }
            return WiringKit.rig(chosen.toArray(Chosen[]::new));
        }

        private List<Load> loads() {
            List<Load> all = new ArrayList<>(List.of(WiringKit.lamp("lamp", invented.between(5, 60))));
            if (invented.chance(.5)) {
                double watts = invented.between(50, 300);
                all.add(WiringKit.motor("motor", Invented.MAINS, watts, invented.between(1, 8) * watts));
            }
            if (invented.chance(.4)) {
                all.add(WiringKit.motor("pump", Invented.SOCKET, 30, invented.between(30, 120)));
            }
            return all;
        }

        private Laying laying() {
            double linkM = invented.between(.1, .6);
            Map<String, Double> cords = new LinkedHashMap<>();
            if (invented.chance(.6)) {
                cords.put("lamp", invented.between(1, 20));
                cords.put("motor", invented.between(1, 20));
            }
            return new Laying(
                    invented.between(1, 12),
                    invented.between(.2, 3),
                    invented.between(.2, 3),
                    invented.between(.2, 3),
                    invented.between(.2, 3),
                    8,
                    linkM,
                    linkM,
                    invented.between(20, 55),
                    invented.whole(2, 7),
                    invented.chance(.2),
                    cords);
        }

        /** Some pieces are lacking, prices are off by half, some come in packs, some are few. */
        private List<SmallPart> stock() {
            List<SmallPart> all = new ArrayList<>();
            for (SmallPart part : WiringKit.full()) {
                if (invented.chance(.9)) {
                    long cents = Math.round(part.listing().priceCents() * invented.between(.5, 1.5));
                    int atHand = invented.chance(.1) ? invented.whole(1, 6) : WiringKit.PLENTY;
                    boolean owned = atHand < WiringKit.PLENTY && invented.chance(.7);
                    all.add(again(
                            part,
                            part.listing().id(),
                            owned ? 0 : cents,
                            owned ? Condition.OWNED : Condition.NEW,
                            atHand,
                            invented.chance(.3) ? invented.whole(2, 10) : 1));
                }
            }
            return all;
        }

        List<Help> help() {
            return invented.chance(.5)
                    ? List.of(new Help.Engine(List.of(new tideover.engine.load.DayWindow(8, 10)), 800))
                    : List.of();
        }

        Bench bench(Laying lies, List<SmallPart> has) {
            return new Bench(new Stock(has, true), lies, loads, List.of(), WiringKit.COLD_DEG_C);
        }

        Build wire() {
            return bench(laying, stock).wire(rig);
        }

        List<String> faults(Build build) {
            return CircuitChecker.faults(build, loads, laying, WiringKit.COLD_DEG_C);
        }

        /** Without any end of what there is. */
        List<SmallPart> endless() {
            return stock.stream()
                    .filter(part -> part.listing().atHand() == WiringKit.PLENTY)
                    .toList();
        }
    }

    /** The same thing at another price; of what is sold by the piece or the metre in packs of so many. */
    private static SmallPart again(SmallPart part, String id, long cents, Condition condition, int atHand, int pack) {
        Listing listing = WiringKit.listing(id, cents * pack, condition, atHand);
        if (part instanceof Cable one) {
            return new Cable(listing, one.size(), one.metal(), one.insulationDegC(), pack);
        } else if (part instanceof Lug one) {
            return new Lug(listing, one.size(), pack);
        } else if (part instanceof Fuse one) {
            return new Fuse(listing, one.format(), one.ratedA(), one.mostDcV(), one.interruptingA(), pack);
        } else if (part instanceof FuseHolder one) {
            return new FuseHolder(listing, one.format(), one.mostA(), pack);
        } else if (part instanceof Fitting one) {
            return new Fitting(listing, one.use(), pack);
        }
        return pack == 1 && cents == part.listing().priceCents() && atHand == WiringKit.PLENTY
                ? part
                : single(part, id, cents, condition, atHand);
    }

    private static SmallPart single(SmallPart part, String id, long cents, Condition condition, int atHand) {
        Listing listing = WiringKit.listing(id, cents, condition, atHand);
        if (part instanceof tideover.engine.part.Cord one) {
            return new tideover.engine.part.Cord(
                    listing, one.size(), one.lengthM(), one.ratedA(), one.volts(), one.plug());
        } else if (part instanceof tideover.engine.part.Breaker one) {
            return new tideover.engine.part.Breaker(
                    listing, one.ratedA(), one.mostDcV(), one.interruptingA(), one.polarised());
        } else if (part instanceof tideover.engine.part.Tool one) {
            return new tideover.engine.part.Tool(listing, one.job());
        } else if (part instanceof tideover.engine.part.PanelLead one) {
            return new tideover.engine.part.PanelLead(
                    listing,
                    one.connector(),
                    one.farEnd(),
                    one.size(),
                    one.insulationDegC(),
                    one.lengthM(),
                    one.ratedA());
        }
        return part;
    }

    /** Of a run by its share of what is bought; infinite where there is none. */
    private static double cents(@Nullable WiredRun wired) {
        if (wired == null) {
            return Double.POSITIVE_INFINITY;
        }
        double cents = 0;
        for (Map.Entry<SmallPart, Double> need : wired.needs().entrySet()) {
            cents += need.getValue()
                    * need.getKey().listing().priceCents()
                    / need.getKey().perPrice();
        }
        return cents;
    }

    /**
     * Of all runs but one: leads of panels are chosen by their loss first.
     */
    private static double cents(Build build) {
        if (build.circuit().findings().stream().anyMatch(CircuitPropertyTest::lacks)) {
            return Double.POSITIVE_INFINITY;
        }
        return build.circuit().runs().stream()
                .filter(wired -> wired.run().kind() != Run.Kind.PANELS)
                .mapToDouble(CircuitPropertyTest::cents)
                .sum();
    }

    private static boolean lacks(Finding finding) {
        return finding.rule().startsWith("no-") && !finding.sentence().startsWith(Run.Kind.PANELS.from() + " to ");
    }

    /** What little is lost on costs no less in the harder case. */
    private static void panelsNoDearer(Build easier, Build harder) {
        WiredRun hard = harder.circuit().of(Run.Kind.PANELS);
        if (hard != null && hard.dropShare() <= WireRules.MOST_DROP_SHARE) {
            WiredRun easy = Objects.requireNonNull(easier.circuit().of(Run.Kind.PANELS));
            assertThat(easy.dropShare()).isLessThanOrEqualTo(WireRules.MOST_DROP_SHARE);
            assertThat(cents(easy)).isLessThanOrEqualTo(atMost(cents(hard)));
        }
    }

    /** A rounding of the sum. */
    private static double atMost(double cents) {
        return cents + 1e-6;
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void theCheckerFindsNothing(long seed) {
        Case one = new Case(seed);
        Build build = new Bench(new Stock(one.stock, true), one.laying, one.loads, one.help(), WiringKit.COLD_DEG_C)
                .wire(one.rig);
        assertThat(one.faults(build)).as(one.rig.words()).isEmpty();
        Build bare = new Bench(Stock.standard(seed % 2 == 0), one.laying, one.loads, List.of(), WiringKit.COLD_DEG_C)
                .wire(one.rig);
        assertThat(one.faults(bare)).as(one.rig.words()).isEmpty();
    }

    /** Else the checker would find nothing because there is nothing. */
    @Test
    void mostRigsCanBeWired() {
        Map<Run.Kind, Integer> seen = new java.util.EnumMap<>(Run.Kind.class);
        int doubled = 0;
        int complete = 0;
        for (long seed : seeds().toArray()) {
            Build build = new Case(seed).wire();
            for (WiredRun wired : build.circuit().runs()) {
                seen.merge(wired.run().kind(), 1, Integer::sum);
                doubled += wired.conductor() instanceof Cable && wired.pieces() == 2 ? 1 : 0;
            }
            complete += Double.isInfinite(cents(build)) ? 0 : 1;
        }
        assertThat(complete).isGreaterThan(50);
        assertThat(doubled).isPositive();
        assertThat(seen.keySet())
                .containsExactlyInAnyOrder(java.util.Arrays.stream(Run.Kind.values())
                        .filter(kind -> kind != Run.Kind.ENGINE)
                        .toArray(Run.Kind[]::new));
    }

    /** By its share of what is bought: a longer one may well need a pack less, or a tool less. */
    @ParameterizedTest
    @MethodSource("seeds")
    void longerCablesNeverCostLess(long seed) {
        Case one = new Case(seed);
        double times = one.invented.between(1, 2);
        Laying is = one.laying;
        Laying longer = new Laying(
                is.panelsM() * times,
                is.controllerM() * times,
                is.inverterM() * times,
                is.socketsM() * times,
                is.chargerM() * times,
                is.engineM() * times,
                is.linkM() * times,
                is.linkOtherM() * times,
                is.hottestDegC(),
                is.sideBySide(),
                is.leadsOnRoof(),
                is.cordM());
        Build near = one.bench(is, one.endless()).wire(one.rig);
        Build far = one.bench(longer, one.endless()).wire(one.rig);
        assertThat(cents(near)).isLessThanOrEqualTo(atMost(cents(far)));
        panelsNoDearer(near, far);
        for (WiredRun wired : near.circuit().runs()) {
            WiredRun other = far.circuit().of(wired.run().kind());
            boolean alike = other != null
                    && other.conductor().equals(wired.conductor())
                    && Objects.equals(other.protection(), wired.protection())
                    && other.run().what().equals(wired.run().what())
                    && Objects.equals(other.parting(), wired.parting());
            if (alike && wired.pieces() == other.pieces()) {
                assertThat(wired.ohm()).isLessThanOrEqualTo(other.ohm());
            }
        }
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void aHotterPlaceNeverBearsMore(long seed) {
        Case one = new Case(seed);
        Laying is = one.laying;
        Laying hotter = new Laying(
                is.panelsM(),
                is.controllerM(),
                is.inverterM(),
                is.socketsM(),
                is.chargerM(),
                is.engineM(),
                is.linkM(),
                is.linkOtherM(),
                is.hottestDegC() + one.invented.between(0, 15),
                is.sideBySide() + one.invented.whole(0, 5),
                is.leadsOnRoof(),
                is.cordM());
        Build cool = one.bench(is, one.endless()).wire(one.rig);
        Build hot = one.bench(hotter, one.endless()).wire(one.rig);
        assertThat(cents(cool)).isLessThanOrEqualTo(atMost(cents(hot)));
        panelsNoDearer(cool, hot);
        for (WiredRun wired : hot.circuit().runs()) {
            WiredRun other = cool.circuit().of(wired.run().kind());
            if (other != null && other.conductor().equals(wired.conductor()) && other.pieces() == wired.pieces()) {
                assertThat(wired.allowedA()).isLessThanOrEqualTo(other.allowedA());
            }
        }
    }

    /** A switch is not among them: where one can be had the rig gets it. */
    @ParameterizedTest
    @MethodSource("seeds")
    void moreToChooseFromNeverCostsMore(long seed) {
        Case one = new Case(seed);
        List<SmallPart> few = new ArrayList<>();
        for (SmallPart part : one.endless()) {
            if (part instanceof BatterySwitch || one.invented.chance(.9)) {
                few.add(part);
            }
        }
        Build less = one.bench(one.laying, few).wire(one.rig);
        Build more = one.bench(one.laying, one.endless()).wire(one.rig);
        for (WiredRun wired : less.circuit().runs()) {
            if (wired.run().kind() == Run.Kind.PANELS) {
                panelsNoDearer(more, less);
            } else if (one.rig.storesInSeries() == 1 || !ofRow(wired)) {
                WiredRun other = more.circuit().runs().stream()
                        .filter(able -> able.run().equals(wired.run()))
                        .findFirst()
                        .orElse(null);
                assertThat(cents(other)).as(wired.run().words()).isLessThanOrEqualTo(atMost(cents(wired)));
            }
        }
        // A row's fuse and the cables behind it are one choice.
        if (one.rig.storesInSeries() > 1) {
            assertThat(rowCents(more)).isLessThanOrEqualTo(atMost(rowCents(less)));
        }
    }

    private static double rowCents(Build build) {
        return cents(build.circuit().of(Run.Kind.LINK)) + cents(build.circuit().of(Run.Kind.SERIES));
    }

    private static boolean ofRow(WiredRun wired) {
        return wired.run().kind() == Run.Kind.LINK || wired.run().kind() == Run.Kind.SERIES;
    }

    /** Some pieces of what is bought anyway lie on the shelf: too few, or enough. */
    @ParameterizedTest
    @MethodSource("seeds")
    void whatIsOwnedNeverRaisesThePrice(long seed) {
        Case one = new Case(seed);
        Build bought = one.bench(one.laying, one.endless()).wire(one.rig);
        List<SmallPart> with = new ArrayList<>(one.endless());
        for (PartsList.Line line : bought.partsList().lines()) {
            if (one.invented.chance(.4)) {
                SmallPart part = line.part();
                String id = "owned " + part.listing().id();
                int atHand = one.invented.whole(1, 12);
                SmallPart owned = again(part, id, 0, Condition.OWNED, atHand, 1);
                if (owned.listing().id().equals(id)) {
                    with.add(owned);
                }
            }
        }
        Build owned = one.bench(one.laying, with).wire(one.rig);
        assertThat(one.faults(owned)).isEmpty();
        Allowances none = new Allowances(0, 0, 0);
        assertThat(cents(owned)).isLessThanOrEqualTo(atMost(cents(bought)));
        panelsNoDearer(owned, bought);
        assertThat(Price.of(owned, one.loads, none, Terms.NONE).totalCents())
                .isLessThanOrEqualTo(
                        Price.of(bought, one.loads, none, Terms.NONE).totalCents());
        for (PartsList.Line line : owned.partsList().lines()) {
            assertThat(line.owned() && line.cents() > 0).isFalse();
        }
    }

    /** A bench remembers; what it has wired before changes nothing. */
    @ParameterizedTest
    @MethodSource("seeds")
    void orderOfWiringChangesNothing(long seed) {
        Case one = new Case(seed);
        Build alone = one.wire();
        Bench bench = one.bench(one.laying, one.stock);
        for (long other = seed + 1; other < seed + 4; other++) {
            bench.wire(new Case(other).rig);
        }
        assertThat(bench.wire(one.rig)).isEqualTo(alone);
        assertThat(bench.wire(one.rig)).isEqualTo(alone);
    }

    /** The checker bites: whatever is spoiled is seen. */
    @Test
    void theCheckerSeesWhatIsSpoiled() {
        Load lamp = WiringKit.lamp("lamp", 20);
        Rig rig = WiringKit.rig(2, 3);
        Laying laying = new Laying(2, .5, .5, .5, 1, 8, .3, .3, 40, 2, Map.of("lamp", 5.0));
        Build good = WiringKit.wire(WiringKit.full(), laying, rig, lamp);
        assertThat(WiringKit.failing(good)).isEmpty();
        assertThat(check(good, lamp, laying)).isEmpty();
        for (Run.Kind kind : List.of(Run.Kind.INVERTER, Run.Kind.CONTROLLER, Run.Kind.LINK)) {
            WiredRun is = Objects.requireNonNull(good.circuit().of(kind));
            Cable thin = WiringKit.cable("thin", "14 AWG", Cable.Metal.COPPER, 1);
            assertThat(check(spoiled(good, is, thin, is.protection(), is.needs()), lamp, laying))
                    .as("a thinner wire")
                    .anyMatch(fault -> fault.contains("A protect a wire for"));
            Protection large = new Protection(
                    WiringKit.fuse("large", WiringKit.STRIP, 300, 58, 20_000, 1),
                    new FuseHolder(WiringKit.listing("H", 1), WiringKit.STRIP, 300, 1));
            assertThat(check(spoiled(good, is, is.conductor(), large, is.needs()), lamp, laying))
                    .as("a larger fuse")
                    .anyMatch(fault -> fault.contains("A protect a wire for"));
            Protection small = new Protection(
                    WiringKit.fuse("small", WiringKit.STRIP, 10, 10, 100, 1),
                    new FuseHolder(WiringKit.listing("H", 1), WiringKit.STRIP, 5, 1));
            assertThat(check(spoiled(good, is, is.conductor(), small, is.needs()), lamp, laying))
                    .as("a small fuse of few volts in a weak holder")
                    .anyMatch(fault -> fault.contains("A lasting"))
                    .anyMatch(fault -> fault.contains("not parted"))
                    .anyMatch(fault -> fault.contains("not interrupted"))
                    .anyMatch(fault -> fault.contains("holder"));
            assertThat(check(spoiled(good, is, is.conductor(), null, is.needs()), lamp, laying))
                    .anyMatch(fault -> fault.contains("no protection"));
            for (SmallPart part : is.needs().keySet()) {
                Map<SmallPart, Double> needs = new LinkedHashMap<>(is.needs());
                needs.computeIfPresent(part, (same, pieces) -> pieces - 1);
                assertThat(check(spoiled(good, is, is.conductor(), is.protection(), needs), lamp, laying))
                        .as("a piece of %s is missing", part.listing().id())
                        .hasSizeGreaterThan(part instanceof BatterySwitch ? 0 : 1);
            }
        }
        WiredRun panels = Objects.requireNonNull(good.circuit().of(Run.Kind.PANELS));
        assertThat(check(
                        spoiled(
                                good,
                                panels,
                                WiringKit.lead("L", WiringKit.OTHER_MAKE, "screws", "18 AWG", 1, 1),
                                null,
                                Map.of()),
                        lamp,
                        laying))
                .anyMatch(fault -> fault.contains("too short"))
                .anyMatch(fault -> fault.contains("hot"))
                .anyMatch(fault -> fault.contains("two makes"))
                .anyMatch(fault -> fault.contains("forks"));
        WiredRun cord = Objects.requireNonNull(good.circuit().of(Run.Kind.CORD));
        assertThat(check(
                        spoiled(good, cord, WiringKit.cord("weak", "18 AWG", 4, .1, 1), null, cord.needs()),
                        lamp,
                        laying))
                .anyMatch(fault -> fault.contains("too short"))
                .anyMatch(fault -> fault.contains(" A"));
        assertThat(check(new Build(rig, good.circuit(), good.partsList(), true), lamp, laying))
                .as("the resistance that was guessed")
                .anyMatch(fault -> fault.contains("ohm"));
        assertThat(check(
                        new Build(
                                good.rig().wired(new Rig.Leads(good.rig().leadOhm(), 0)),
                                good.circuit(),
                                good.partsList(),
                                true),
                        lamp,
                        laying))
                .as("a loss on the leads that the proof forgets")
                .anyMatch(fault -> fault.contains("the proof counts"));
        List<WiredRun> less = new ArrayList<>(good.circuit().runs());
        less.remove(0);
        Circuit shorter =
                new Circuit(less, good.circuit().findings(), good.circuit().leads());
        assertThat(check(new Build(good.rig(), shorter, good.partsList(), true), lamp, laying))
                .anyMatch(fault -> fault.contains("nothing lies at"))
                .anyMatch(fault -> fault.contains("nothing leads to"));
    }

    /** What is listed without its spare, its wrench or its bars. */
    @Test
    void theCheckerSeesWhatIsNotListed() {
        Load lamp = WiringKit.lamp("lamp", 20);
        Build good = WiringKit.wire(WiringKit.full(), Laying.ASSUMED, WiringKit.rig(2, 3), lamp);
        assertThat(check(good, lamp, Laying.ASSUMED)).isEmpty();
        int spoiled = 0;
        for (PartsList.Line line : good.partsList().lines()) {
            boolean wrench = line.part() instanceof Tool tool && tool.job() == Tool.Job.TORQUE_WRENCH;
            if (line.part() instanceof Fuse || line.part() instanceof Busbar || wrench) {
                List<PartsList.Line> lines = new ArrayList<>(good.partsList().lines());
                lines.remove(line);
                if (line.needed() > 1) {
                    lines.add(PartsList.Line.of(line.part(), line.needed() - 1));
                }
                PartsList list = new PartsList(lines, good.partsList().missing());
                assertThat(check(new Build(good.rig(), good.circuit(), list, true), lamp, Laying.ASSUMED))
                        .as("one %s less", line.part().listing().id())
                        .isNotEmpty();
                spoiled++;
            }
        }
        assertThat(spoiled).isGreaterThanOrEqualTo(5);
    }

    /** Cables within a row below their row's fuse, a switch that is not told of, and a start that nothing outlasts. */
    @Test
    void theCheckerSeesAWeakRowAndAWeakStart() {
        Load pump = WiringKit.motor("pump", Invented.MAINS, 400, 3000);
        Rig row = WiringKit.rig(
                new Chosen(WiringKit.battery(), 4),
                WiringKit.one(WiringKit.inverter(1000, 24)),
                WiringKit.one(WiringKit.controller(20, 120)));
        Build good = WiringKit.wire(WiringKit.full(), Laying.ASSUMED, row, pump);
        assertThat(check(good, pump, Laying.ASSUMED)).isEmpty();
        WiredRun series = Objects.requireNonNull(good.circuit().of(Run.Kind.SERIES));
        WiredRun link = Objects.requireNonNull(good.circuit().of(Run.Kind.LINK));
        double rowA = Objects.requireNonNull(link.protection()).ratedA();
        Cable thin = WiringKit.cable("thin", "10 AWG", Cable.Metal.COPPER, 1);
        assertThat(series.run().amps().design()).isLessThanOrEqualTo(rowA);
        assertThat(check(spoiled(good, series, thin, null, series.needs()), pump, Laying.ASSUMED))
                .anyMatch(fault -> fault.startsWith(series.run().words()) && fault.contains("A protect a wire for"));
        assertThat(check(
                        spoiled(good, series, series.conductor(), link.protection(), series.needs()),
                        pump,
                        Laying.ASSUMED))
                .anyMatch(fault -> fault.contains("a second fuse in the row"));
        List<WiredRun> less = new ArrayList<>(good.circuit().runs());
        less.remove(link);
        Circuit loose =
                new Circuit(less, good.circuit().findings(), good.circuit().leads());
        assertThat(check(new Build(good.rig(), loose, good.partsList(), true), pump, Laying.ASSUMED))
                .anyMatch(fault -> fault.contains("no fuse protects the row"))
                .anyMatch(fault -> fault.contains("bars"));
        WiredRun inverter = Objects.requireNonNull(good.circuit().of(Run.Kind.INVERTER));
        double startA = inverter.run().amps().moment();
        Protection brief = new Protection(
                WiringKit.fuse("brief", WiringKit.CLASS_T, .49 * startA, 125, 20_000, 1),
                new FuseHolder(WiringKit.listing("H", 1), WiringKit.CLASS_T, 400, 1));
        for (Run.Kind kind : List.of(Run.Kind.INVERTER, Run.Kind.CONTROLLER)) {
            WiredRun is = Objects.requireNonNull(good.circuit().of(kind));
            assertThat(check(spoiled(good, is, is.conductor(), brief, is.needs()), pump, Laying.ASSUMED))
                    .anyMatch(fault -> fault.contains("protect a start of"));
        }
        WiredRun untold = new WiredRun(
                inverter.run(),
                inverter.conductor(),
                inverter.size(),
                inverter.pieces(),
                inverter.allowedA(),
                inverter.protection(),
                inverter.parting(),
                inverter.dropV(),
                inverter.sagV(),
                inverter.ohm(),
                inverter.needs(),
                inverter.findings().stream()
                        .filter(finding -> !finding.rule().equals("battery-switch"))
                        .toList());
        List<WiredRun> runs = new ArrayList<>(good.circuit().runs());
        runs.set(runs.indexOf(inverter), untold);
        Circuit silent =
                new Circuit(runs, good.circuit().findings(), good.circuit().leads());
        assertThat(check(new Build(good.rig(), silent, good.partsList(), true), pump, Laying.ASSUMED))
                .anyMatch(fault -> fault.contains("told of its switch"));
    }

    private static List<String> check(Build build, Load load, Laying laying) {
        return CircuitChecker.faults(build, List.of(load), laying, WiringKit.COLD_DEG_C);
    }

    private static Build spoiled(
            Build good,
            WiredRun is,
            SmallPart conductor,
            @Nullable Protection protection,
            Map<SmallPart, Double> needs) {
        WiredRun bad = new WiredRun(
                is.run(),
                conductor,
                conductor instanceof Cable cable ? cable.size() : is.size(),
                is.pieces(),
                is.allowedA(),
                protection,
                is.parting(),
                is.dropV(),
                is.sagV(),
                is.ohm(),
                needs,
                is.findings());
        List<WiredRun> runs = new ArrayList<>(good.circuit().runs());
        runs.set(runs.indexOf(is), bad);
        Circuit circuit =
                new Circuit(runs, good.circuit().findings(), good.circuit().leads());
        return new Build(good.rig(), circuit, good.partsList(), good.counted());
    }
}
