package tideover.engine.proof;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

/**
 * Reservoir sizing by sequent peak against worked examples. A full reservoir at the start, so the charge at the start
 * is 1; a record is repeated where the method asks for two passes.
 */
class ReservoirPublishedTest {
    /** Loucks &amp; van Beek, Water Resource Systems Planning and Management, yield example (inflows from memory): 7.5. */
    @Test
    void textbookSequenceOverTwoPasses() {
        double[] net = less(new double[] {1, 3, 3, 5, 8, 6, 7, 2, 1}, 3.5);
        assertThat(capacity(twice(net))).isCloseTo(7.5, within(1e-12));
        assertThat(capacity(net)).as("one pass is too short").isCloseTo(4.0, within(1e-12));
    }

    /** A library guide's five-year record: inflow 12 8 6 15 10 against 10 a year needs 6. */
    @Test
    void fiveYearRecord() {
        assertThat(capacity(less(new double[] {12, 8, 6, 15, 10}, 10))).isCloseTo(6, within(1e-12));
    }

    /** A week of sun in kWh against 1.3 a day, worked by hand: drawdown 2.5; repeated, still 2.5. */
    @Test
    void weekOfSunByHand() {
        double[] net = less(new double[] {2.4, 1.1, 0.4, 0.3, 0.9, 2.0, 2.6}, 1.3);
        assertThat(capacity(net)).isCloseTo(2.5, within(1e-12));
        assertThat(capacity(twice(net))).isCloseTo(2.5, within(1e-12));
    }

    /** The same with 90 % on the way in and 95 % on the way out: 2.6316. */
    @Test
    void weekOfSunWithLosses() {
        double[] net = less(new double[] {2.4, 1.1, 0.4, 0.3, 0.9, 2.0, 2.6}, 1.3);
        for (int i = 0; i < net.length; i++) {
            net[i] = net[i] > 0 ? net[i] * 0.90 : net[i] / 0.95;
        }
        assertThat(capacity(net)).isCloseTo(2.6316, within(5e-5));
    }

    /** Mean inflow below demand: each pass adds the shortfall, and no finite store serves for ever. */
    @Test
    void shortfallGrowsWithEveryPass() {
        double[] net = less(new double[] {1, 0.5, 0.2}, 1);
        double once = capacity(net);
        assertThat(capacity(twice(net)) - once).isCloseTo(1.3, within(1e-12));
        assertThat(capacity(twice(twice(net))) - capacity(twice(net))).isCloseTo(2.6, within(1e-12));
    }

    /** A store of exactly the capacity, starting full, never fails; one per cent less fails. */
    @Test
    void exactlyTheCapacityHolds() {
        double[] net = less(new double[] {2.4, 1.1, 0.4, 0.3, 0.9, 2.0, 2.6}, 1.3);
        double capacity = capacity(net);
        assertThat(holds(net, capacity + 1e-12)).isTrue();
        assertThat(holds(net, capacity * 0.99)).isFalse();
    }

    private static boolean holds(double[] net, double capacity) {
        double stored = capacity;
        for (double gain : net) {
            stored = Math.min(capacity, stored + gain);
            if (stored < 0) {
                return false;
            }
        }
        return true;
    }

    private static double capacity(double[] net) {
        return Drawdown.neededWh(net, net, 1, 1, 0, net.length, 1)[0];
    }

    private static double[] less(double[] inflow, double demand) {
        double[] net = inflow.clone();
        for (int i = 0; i < net.length; i++) {
            net[i] -= demand;
        }
        return net;
    }

    private static double[] twice(double[] net) {
        double[] both = new double[net.length * 2];
        System.arraycopy(net, 0, both, 0, net.length);
        System.arraycopy(net, 0, both, net.length, net.length);
        return both;
    }
}
