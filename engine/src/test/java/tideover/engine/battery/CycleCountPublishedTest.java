package tideover.engine.battery;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.entry;

import java.util.Map;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;
import tideover.engine.battery.CycleCount.Cycle;

class CycleCountPublishedTest {
    private static Map<Double, Double> byRange(double... history) {
        Map<Double, Double> counts = new TreeMap<>();
        for (Cycle cycle : CycleCount.of(history)) {
            counts.merge(cycle.range(), cycle.count(), Double::sum);
        }
        return counts;
    }

    /** ASTM E1049-85, section 5.4.4, the standard's own example (its table from memory). */
    @Test
    void standardsExample() {
        assertThat(byRange(-2, 1, -3, 5, -1, 3, -4, 4, -2))
                .containsExactly(entry(3.0, .5), entry(4.0, 1.5), entry(6.0, .5), entry(8.0, 1.0), entry(9.0, .5));
    }

    /** A history of charge, worked by hand: whole 20, 50, 20, half 70 twice. */
    @Test
    void historyOfCharge() {
        assertThat(CycleCount.of(100, 60, 80, 40, 90, 30, 70, 50, 100))
                .containsExactlyInAnyOrder(
                        new Cycle(20, 1), new Cycle(50, 1), new Cycle(20, 1), new Cycle(70, .5), new Cycle(70, .5));
    }

    /** What does not turn is not counted, and a point on the way is none. */
    @Test
    void pointsOnTheWayDoNotMatter() {
        assertThat(byRange(100, 80, 70, 60, 60, 65, 80, 75, 40, 90, 30, 50, 70, 50, 99, 100))
                .isEqualTo(byRange(100, 60, 80, 40, 90, 30, 70, 50, 100));
        assertThat(CycleCount.of()).isEmpty();
        assertThat(CycleCount.of(5)).isEmpty();
        assertThat(CycleCount.of(5, 5, 5)).isEmpty();
        assertThat(CycleCount.of(1, 2, 3)).containsExactly(new Cycle(2, .5));
    }

    /** Every way down and up is in exactly one swing: ranges times twice the count add up to the way travelled. */
    @Test
    void theWayTravelledIsCountedOnce() {
        double[] history = new double[500];
        double travelled = 0;
        for (int i = 0; i < history.length; i++) {
            history[i] = Math.floorMod(i * 7919L, 101);
            travelled += i > 0 ? Math.abs(history[i] - history[i - 1]) : 0;
        }
        double counted = CycleCount.of(history).stream()
                .mapToDouble(cycle -> 2 * cycle.count() * cycle.range())
                .sum();
        assertThat(counted).isEqualTo(travelled);
    }
}
