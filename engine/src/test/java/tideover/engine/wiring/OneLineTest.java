package tideover.engine.wiring;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import tideover.engine.Invented;
import tideover.engine.load.Load;
import tideover.engine.part.Charger;
import tideover.engine.part.Enclosure;
import tideover.engine.part.Housing;
import tideover.engine.part.Outlet;
import tideover.engine.part.ReadyBox;
import tideover.engine.rig.Rig;
import tideover.engine.rig.Route;
import tideover.engine.why.Stated;

/** What needs no cable of the household's own is in the drawing all the same. */
class OneLineTest {
    private static final Load LAMP = WiringKit.lamp("lamp", 20);
    private static final Charger CHARGER = new Charger(Invented.listing("G", 60_00, 3), 10, 12, 15, .9, Set.of());

    private static List<String> edges(Build build) {
        return OneLine.of(build, List.of(LAMP)).edges().stream()
                .map(edge -> edge.from() + (edge.run() == null ? " - " : " = ") + edge.to())
                .toList();
    }

    @Test
    void aChargerFeedsABoxByItsOwnPlug() {
        Rig rig = WiringKit.rig(
                WiringKit.one(new ReadyBox(
                        Invented.listing("R", 500_00, 9),
                        WiringKit.store(Double.NaN),
                        WiringKit.controller(20, 100).rating(),
                        WiringKit.inverter(500, 12).rating(),
                        List.of(new Outlet(Invented.MAINS, 2, 500, 1)))),
                WiringKit.one(CHARGER));
        Build build = WiringKit.wire(WiringKit.full(), WiringKit.LAYING, rig, LAMP);
        assertThat(edges(build)).containsExactly("charger - box", "box - load-1");
    }

    @Test
    void aRowOfBatteriesMeetsTheBars() {
        Rig rig = WiringKit.rig(
                new tideover.engine.rig.Chosen(WiringKit.battery(), 2), WiringKit.one(WiringKit.inverter(1000, 24)));
        Build build = WiringKit.wire(WiringKit.full(), WiringKit.LAYING, rig, LAMP);
        assertThat(edges(build))
                .containsExactlyInAnyOrder(
                        "battery-1 = battery-1", "battery-1 = bars", "bars = inverter", "inverter - load-1");
    }

    /** It brings cable and fuse; how long they are nobody tells, so the proof takes what is usual. */
    @Test
    void anEnclosureThatBringsItsLeads() {
        Housing housing = new Housing(null, List.of(), Double.NaN, Double.NaN, Stated.UNKNOWN, Stated.YES);
        Rig rig = WiringKit.rig(
                WiringKit.one(WiringKit.battery()),
                WiringKit.one(new Enclosure(
                        Invented.listing("E", 200_00, 5),
                        12,
                        WiringKit.controller(20, 1).rating(),
                        WiringKit.inverter(500, 12).rating(),
                        List.of(new Outlet(Invented.MAINS, 2, 500, 1)),
                        housing)),
                new tideover.engine.rig.Chosen(WiringKit.panel(WiringKit.MAKE, 15), 1));
        Build build = WiringKit.wire(WiringKit.full(), WiringKit.LAYING, rig, LAMP);
        assertThat(build.circuit().of(Run.Kind.MAIN)).isNull();
        assertThat(edges(build))
                .containsExactlyInAnyOrder("panels = enclosure", "battery-1 - enclosure", "enclosure - load-1");
        assertThat(build.rig().leadOhm()).isEqualTo(Route.ENCLOSURE.guessedLeadOhm());
    }
}
