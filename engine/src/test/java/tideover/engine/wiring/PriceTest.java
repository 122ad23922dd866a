package tideover.engine.wiring;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import tideover.engine.Invented;
import tideover.engine.load.Load;
import tideover.engine.load.Nature;
import tideover.engine.load.Need;
import tideover.engine.load.SteadyLoad;
import tideover.engine.load.Supply;
import tideover.engine.rig.Rig;
import tideover.engine.site.RoomKind;

/** What a rig costs: parts, small parts, and the joining of what hangs on the wires of the house. */
class PriceTest {
    /** Battery 300, inverter 90, controller 40, two panels of 80 each. */
    private static final Rig RIG = new Invented(1).rig(1000, 2, 20);

    private static final Allowances ALLOWANCES = new Allowances(1_00, 10_00, 100_00, 350_00);

    private static Load load(Supply supply, boolean essential, boolean hardWired) {
        return new SteadyLoad(
                "pump",
                supply,
                100,
                essential,
                new Need.AlwaysOn(),
                RoomKind.INDOORS,
                Nature.PLAIN.wired(hardWired, false));
    }

    private static Price price(Load... loads) {
        List<Load> all = List.of(loads);
        Bench bench = new Bench(Stock.of(List.of(), false), Laying.ASSUMED, all, List.of(), -10);
        return Price.of(bench.wire(RIG), all, ALLOWANCES, Terms.NONE);
    }

    @Test
    void loadsOnPlugsCostNothingMore() {
        Price price = price(load(Invented.MAINS, true, false));
        assertThat(price).isEqualTo(new Price(590_00, 100_00, 0, 0));
        assertThat(price.totalCents()).isEqualTo(690_00);
    }

    @Test
    void eachHardWiredLoadCostsItsJoining() {
        Load pump = load(Invented.MAINS, true, true);
        assertThat(price(pump, load(Invented.SOCKET, true, false)).totalCents()).isEqualTo(1040_00);
        assertThat(price(pump, pump, load(Invented.MAINS, false, true)).hardWiredCents())
                .isEqualTo(1050_00);
    }

    /** The rig has no such outlet, so nobody joins the load to it. */
    @Test
    void whatTheRigDoesNotServeIsNotPaidFor() {
        assertThat(price(load(Supply.ac(230, 50, "inlet"), false, true)).hardWiredCents())
                .isZero();
    }
}
