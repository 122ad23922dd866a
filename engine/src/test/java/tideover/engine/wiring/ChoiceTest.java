package tideover.engine.wiring;

import static org.assertj.core.api.Assertions.assertThat;
import static tideover.engine.wiring.WiringKit.LAYING;
import static tideover.engine.wiring.WiringKit.full;
import static tideover.engine.wiring.WiringKit.one;
import static tideover.engine.wiring.WiringKit.wire;
import static tideover.engine.wiring.WiringKit.with;
import static tideover.engine.wiring.WiringKit.without;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import tideover.engine.Invented;
import tideover.engine.part.Breaker;
import tideover.engine.part.ChargeController;
import tideover.engine.part.Condition;
import tideover.engine.part.ControllerRating.PanelInput;
import tideover.engine.part.Enclosure;
import tideover.engine.part.Fitting;
import tideover.engine.part.Fuse;
import tideover.engine.part.Lug;
import tideover.engine.part.PanelLead;
import tideover.engine.part.SmallPart;
import tideover.engine.part.Tool;
import tideover.engine.rig.Chosen;
import tideover.engine.rig.Rig;
import tideover.engine.why.Stated;

/** What is chosen where several pieces would do, or where there are too few of one. */
@SuppressWarnings("NullAway") // what is not there fails the test by itself
class ChoiceTest {
    private static final Rig RIG = WiringKit.rig(1, 2);

    /** Two on the shelf where eight are wanted. */
    @Test
    void tooFewLugsDoNotSpoilTheirSize() {
        Lug few = new Lug(WiringKit.listing("few", 0, Condition.OWNED, 2), WiringKit.size("1/0 AWG"), 1);
        assertThat(wire(with(full(), few), LAYING, RIG)).isEqualTo(wire(full(), LAYING, RIG));
    }

    /** A fuse with its switch takes two lugs of 2.87 more than a breaker. */
    @Test
    void lugsOfASwitchCount() {
        double fuseCents = 1800 + 2500 + 2500;
        Breaker dearer = WiringKit.breaker("dearer", 150, 60, Stated.NO, Math.round(fuseCents + 500));
        Breaker tooDear = WiringKit.breaker("too dear", 150, 60, Stated.NO, Math.round(fuseCents + 600));
        assertThat(protection(dearer)).isEqualTo(dearer);
        assertThat(protection(tooDear)).isInstanceOf(Fuse.class);
    }

    private static SmallPart protection(Breaker breaker) {
        List<SmallPart> stock = with(without(full(), part -> part instanceof Breaker), breaker);
        return wire(stock, LAYING, RIG)
                .circuit()
                .of(Run.Kind.INVERTER)
                .protection()
                .device();
    }

    /** Ten of twelve lie on the shelf: for the other two a pack of a hundred is not the cheapest. */
    @Test
    void theRestIsBoughtByWhatIsLeft() {
        Fitting shelf = shrink("shelf", 0, Condition.OWNED, 10, 1);
        Fitting hundred = shrink("hundred", 800, Condition.NEW, WiringKit.PLENTY, 100);
        Fitting piece = shrink("piece", 100, Condition.NEW, WiringKit.PLENTY, 1);
        List<SmallPart> stock = with(
                without(full(), part -> part instanceof Fitting fitting && fitting.use() == Fitting.Use.HEAT_SHRINK),
                shelf,
                hundred,
                piece);
        assertThat(wire(stock, LAYING, RIG).partsList().lines())
                .contains(new PartsList.Line(shelf, 10, 10), new PartsList.Line(piece, 2, 2))
                .noneMatch(line -> line.part().equals(hundred));
    }

    /** One on the shelf where one is wanted is used, without a spare; with a second, that is the spare. */
    @ParameterizedTest
    @ValueSource(ints = {1, 2, 3})
    void ownedFusesNeedNoSpareToBeUsed(int atHand) {
        Fuse shelf = owned(150, atHand);
        PartsList list = wire(with(full(), shelf), LAYING, RIG).partsList();
        int listed = Math.min(2, atHand);
        assertThat(list.lines()).contains(new PartsList.Line(shelf, listed, listed));
        assertThat(list.lines()).noneMatch(line -> line.part().listing().id().equals("T 150"));
    }

    /** Three rows take three; two on the shelf are too few. 106.4 A x 1.25 / 3 are 44.3 A: of 50 A each. */
    @ParameterizedTest
    @ValueSource(ints = {2, 3, 4})
    void everyRowHasAFuseOfOneKind(int atHand) {
        Rig three = WiringKit.rig(new Chosen(WiringKit.battery(), 3), one(WiringKit.inverter(1000, 12)));
        Fuse shelf = owned(50, atHand);
        Build build = wire(with(full(), shelf), LAYING, three);
        WiredRun link = build.circuit().of(Run.Kind.LINK);
        Fuse taken = (Fuse) link.protection().device();
        assertThat(taken.equals(shelf)).isEqualTo(atHand >= 3);
        assertThat(link.needs()).containsEntry(taken, 3.0);
        int listed = atHand == 3 ? 3 : 4;
        assertThat(build.partsList().lines()).contains(new PartsList.Line(taken, listed, listed));
    }

    private static Fuse owned(double ratedA, int atHand) {
        return new Fuse(
                WiringKit.listing("shelf", 0, Condition.OWNED, atHand), WiringKit.CLASS_T, ratedA, 125, 20_000, 1);
    }

    /**
     * Two rows of two, 33.3 A each: 50 A on 6 AWG, with terminals of 60 degC. Two of 100 A on the shelf save 32.00 and ask for
     * 1 AWG, 5.82 dearer a metre and 1.455 a lug: for the links 1.32 m and 12 lugs, 25.14; within the rows .66 m and 4 lugs, 9.66.
     */
    @Test
    void aRowsFuseIsChosenWithItsCables() {
        Rig rows = WiringKit.rig(new Chosen(WiringKit.battery(), 4), one(WiringKit.inverter(1000, 24)));
        Circuit circuit =
                wire(with(full(), owned(100, WiringKit.PLENTY)), LAYING, rows).circuit();
        assertThat(circuit.of(Run.Kind.LINK).protection().ratedA()).isEqualTo(50);
        assertThat(circuit.of(Run.Kind.LINK).size().words()).isEqualTo("6 AWG");
        assertThat(circuit.of(Run.Kind.SERIES).size().words()).isEqualTo("6 AWG");
    }

    /** Runs that share a kind of fuse share its spare. */
    @Test
    void oneSpareForEachKind() {
        Rig twice = WiringKit.rig(
                one(WiringKit.battery()),
                one(WiringKit.controller(20, 120)),
                one(new tideover.engine.part.Charger(
                        Invented.listing("G", 100, 1), 20, 12, 15, .9, java.util.Set.of())));
        Build build = wire(full(), LAYING, twice);
        assertThat(build.circuit().of(Run.Kind.CONTROLLER).protection())
                .isEqualTo(build.circuit().of(Run.Kind.CHARGER).protection());
        assertThat(build.partsList().lines())
                .filteredOn(line -> line.part() instanceof Fuse)
                .singleElement()
                .satisfies(line -> assertThat(line.needed()).isEqualTo(3));
    }

    /** 10 AWG is pressed by hand, 8 AWG is not. */
    @Test
    void heavyLugsWantAHeavyCrimperAndATorqueWrench() {
        assertThat(jobs(20)).contains(Tool.Job.LIGHT_CRIMPER).doesNotContain(Tool.Job.TORQUE_WRENCH);
        assertThat(jobs(30)).contains(Tool.Job.HEAVY_CRIMPER, Tool.Job.TORQUE_WRENCH);
    }

    private static List<Tool.Job> jobs(double controllerA) {
        Rig rig = WiringKit.rig(one(WiringKit.battery()), one(WiringKit.controller(controllerA, 1)));
        return wire(full(), LAYING, rig).partsList().lines().stream()
                .filter(PartsList.Line::isTool)
                .map(line -> ((Tool) line.part()).job())
                .toList();
    }

    private static Fitting shrink(String id, long cents, Condition condition, int atHand, int pieces) {
        return new Fitting(WiringKit.listing(id, cents, condition, atHand), Fitting.Use.HEAT_SHRINK, pieces);
    }

    /** An inverter's 106.4 A and the 1280 W / 12.8 V = 100 A of a controller's outlets flow out of two rows together. */
    @Test
    void linksBearWhatTheControllersOutletsDraw() {
        ChargeController controller = WiringKit.controller(20, 1280);
        Rig rig = WiringKit.rig(new Chosen(WiringKit.battery(), 2), one(WiringKit.inverter(1000, 12)), one(controller));
        assertThat(wire(full(), LAYING, rig)
                        .circuit()
                        .of(Run.Kind.LINK)
                        .run()
                        .amps()
                        .lasting())
                .isBetween(103.19, 103.20);
    }

    /** 60 A of an enclosure's controller and 40 A of a charger flow into two rows together. */
    @Test
    void linksBearAllThatCharges() {
        Enclosure enclosure = new Enclosure(
                Invented.listing("E", 100, 1), 12, WiringKit.controller(60, 1).rating(), null, List.of());
        tideover.engine.part.Charger charger =
                new tideover.engine.part.Charger(Invented.listing("G", 100, 1), 40, 12, 15, .9, java.util.Set.of());
        Rig rig = WiringKit.rig(new Chosen(WiringKit.battery(), 2), one(enclosure), one(charger));
        assertThat(wire(full(), LAYING, rig)
                        .circuit()
                        .of(Run.Kind.LINK)
                        .run()
                        .amps()
                        .lasting())
                .isEqualTo(50);
    }

    /** Bare ends cannot be plugged into another lead; plugs of one make can. */
    @Test
    void panelLeadsReachOrAreJoined() {
        PanelLead bare = WiringKit.lead("bare", WiringKit.MAKE, PanelInput.BARE_ENDS, "4 AWG", 4, 1);
        assertThat(wire(with(full(), bare), LAYING, RIG)
                        .circuit()
                        .of(Run.Kind.PANELS)
                        .conductor())
                .isNotEqualTo(bare);
        PanelLead plugs = WiringKit.lead("plugs", WiringKit.MAKE, WiringKit.MAKE, "4 AWG", 4, 1);
        Rig untold = WiringKit.rig(
                one(WiringKit.battery()),
                one(new ChargeController(
                        Invented.listing("C", 100, 1),
                        new tideover.engine.part.ControllerRating(20, 100, 12, 24, .95),
                        List.of())),
                new Chosen(WiringKit.panel(WiringKit.MAKE, 15), 2));
        WiredRun wired = wire(with(full(), plugs), LAYING, untold).circuit().of(Run.Kind.PANELS);
        assertThat(wired.conductor()).isEqualTo(plugs);
        assertThat(wired.pieces()).isEqualTo(2);
    }

    /** Of the bare standard sizes, which cost nothing, one piece that reaches is taken before several that are joined. */
    @Test
    void oneLeadRatherThanTwo() {
        for (boolean metric : new boolean[] {false, true}) {
            Bench bench = new Bench(Stock.of(List.of(), metric), LAYING, List.of(), List.of(), -10);
            assertThat(bench.wire(RIG).circuit().of(Run.Kind.PANELS).pieces()).isEqualTo(1);
        }
    }
}
