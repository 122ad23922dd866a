package tideover.engine.proof;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Objects;
import org.junit.jupiter.api.Test;
import tideover.engine.Invented;
import tideover.engine.load.DayWindow;
import tideover.engine.load.Load;
import tideover.engine.load.Need;
import tideover.engine.load.SteadyLoad;
import tideover.engine.load.Supply;
import tideover.engine.load.TimedLoad;
import tideover.engine.rig.Assembly;
import tideover.engine.rig.Chosen;
import tideover.engine.rig.Rig;
import tideover.engine.site.RoomKind;

/** The inverter's own draw: once, whoever keeps it on. */
class BusDemandTest {
    private static final double STANDING_W = 8;

    @Test
    void niceLoadsShareTheInvertersOwnDraw() {
        List<Load> loads = List.of(
                steady(Invented.SOCKET, true),
                steady(Invented.MAINS, false),
                evening(false),
                steady(Invented.MAINS, false));
        BusDemand demand = BusDemand.of(rig(), loads, 12, 4);
        for (int step = 0; step < demand.stepsPerDay(); step++) {
            assertThat(demand.nice(step).standingW()).as("step %d", step).isCloseTo(STANDING_W, within(1e-12));
            assertThat(demand.essential(step).standingW()).isZero();
        }
    }

    @Test
    void niceLoadsDrawItOnlyWhileTheyRun() {
        BusDemand demand = BusDemand.of(rig(), List.of(steady(Invented.SOCKET, true), evening(false)), 12, 4);
        assertThat(demand.nice(18 * 4).standingW()).isCloseTo(STANDING_W, within(1e-12));
        assertThat(demand.nice(17 * 4).standingW()).isZero();
    }

    @Test
    void whatAnEssentialLoadKeepsOnCostsNiceOnesNothing() {
        List<Load> loads = List.of(steady(Invented.MAINS, true), steady(Invented.MAINS, false));
        BusDemand demand = BusDemand.of(rig(), loads, 12, 4);
        assertThat(demand.essential(0).standingW()).isEqualTo(STANDING_W);
        assertThat(demand.nice(0).standingW()).isZero();
    }

    @Test
    void withoutOwnDrawNobodyPaysIt() {
        List<Load> loads = List.of(steady(Invented.MAINS, true), steady(Invented.MAINS, false));
        BusDemand demand = BusDemand.withoutStanding(rig(), loads, 12, 4);
        assertThat(demand.essential(0).standingW()).isZero();
        assertThat(demand.nice(0).standingW()).isZero();
    }

    private static Load steady(Supply supply, boolean essential) {
        return new SteadyLoad("steady", supply, 20, essential, new Need.AlwaysOn(), RoomKind.INDOORS);
    }

    private static Load evening(boolean essential) {
        return new TimedLoad(
                "evening", Invented.MAINS, 30, essential, List.of(new DayWindow(18, 20)), RoomKind.INDOORS);
    }

    private static Rig rig() {
        Invented invented = new Invented(5);
        return Objects.requireNonNull(Assembly.of(List.of(
                        new Chosen(invented.battery("B", 1000, 1), 1),
                        new Chosen(invented.inverter("I", STANDING_W, 1), 1),
                        new Chosen(invented.controller("C", 20, 1), 1)))
                .rig());
    }
}
