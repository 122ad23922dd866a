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
import tideover.engine.rig.Chosen;
import tideover.engine.rig.Rig;
import tideover.engine.why.Stated;

/** What is chosen where several pieces would do, or where there are too few of one. */
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
        double fuseCents = 2 * 1800 + 2500 + 2500;
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
