package tideover.engine.search;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.List;
import java.util.OptionalLong;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import tideover.engine.Invented;
import tideover.engine.load.Load;
import tideover.engine.outage.Outage;
import tideover.engine.part.Part;
import tideover.engine.proof.PlaneWeather;
import tideover.engine.proof.Prover;
import tideover.engine.quantity.Workers;
import tideover.engine.site.Weather;
import tideover.engine.wiring.Allowances;

/** The screening against a plain loop over starts, and against the full walk. */
class DrawdownTest {
    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12, 13, 14, 15, 16, 17, 18, 19, 20})
    void equalsAPlainLoopOnRandomSeries(long seed) {
        Invented invented = new Invented(seed);
        int stepsPerSpan = invented.whole(1, 4);
        int starts = invented.whole(1, 400);
        int length = invented.whole(1, 100);
        int dark = invented.whole(0, 12);
        double charge = invented.between(0.3, 1);
        int firstStep = invented.whole(0, 7);
        int steps = firstStep + (starts + length) * stepsPerSpan;
        double[] sunny = new double[steps];
        double[] gloom = new double[steps];
        for (int i = 0; i < steps; i++) {
            sunny[i] = invented.between(-10, 10);
            gloom[i] = invented.between(-10, 0);
        }
        double[] fast = Drawdown.neededWh(gloom, sunny, firstStep, starts, stepsPerSpan, dark, length, charge);
        for (int start = 0; start < starts; start++) {
            double slow = smallestStoreWh(
                    gloom, sunny, firstStep + start * stepsPerSpan, dark * stepsPerSpan, length * stepsPerSpan, charge);
            assertThat(fast[start]).as("seed %d, start %d", seed, start).isCloseTo(slow, within(1e-6));
        }
    }

    /** By halving: the smallest store that a plain walk does not empty. Knows nothing of drawdowns. */
    private static double smallestStoreWh(
            double[] gloom, double[] sunny, int first, int darkSteps, int steps, double charge) {
        double fails = 0;
        double holds = 1e5;
        if (plainWalkHolds(gloom, sunny, first, darkSteps, steps, charge, 0)) {
            return 0;
        }
        for (int i = 0; i < 60; i++) {
            double middle = (fails + holds) / 2;
            if (plainWalkHolds(gloom, sunny, first, darkSteps, steps, charge, middle)) {
                holds = middle;
            } else {
                fails = middle;
            }
        }
        return holds;
    }

    private static boolean plainWalkHolds(
            double[] gloom, double[] sunny, int first, int darkSteps, int steps, double charge, double capacityWh) {
        double wh = charge * capacityWh;
        for (int i = 0; i < steps; i++) {
            wh = Math.min(capacityWh, wh + (i < darkSteps ? gloom[first + i] : sunny[first + i]));
            if (wh < 0) {
                return false;
            }
        }
        return true;
    }

    /** Every rig of a random shelf: the screened share is the share of the full walk. */
    @ParameterizedTest
    @ValueSource(longs = {101, 102, 103, 104})
    void screenedShareIsTheWalkedShare(long seed) {
        Invented invented = new Invented(seed);
        Weather weather = invented.weather(2);
        PlaneWeather plane = Invented.plane(weather);
        List<Load> loads = invented.loads(true, true);
        Outage outage = invented.outage(1);
        List<Part> parts = invented.parts();
        Shortlist list = new Search(plane, 2, 4, Workers.of(1))
                .shortlist(
                        parts,
                        new Grammar(2, 2),
                        loads,
                        -10,
                        outage,
                        new Allowances(0, 0, 0),
                        OptionalLong.empty(),
                        share -> {});
        Prover prover = new Prover(weather, plane, 4, 1, Workers.of(1));
        assertThat(list.ranked()).isNotEmpty();
        int compared = 0;
        for (Rated rated : concat(list.front(), list.misses(20), list.meeting())) {
            assertThat(prover.share(rated.rig(), loads, outage).share())
                    .as("seed %d, %s", seed, rated.rig().id())
                    .isEqualTo(rated.share());
            if (++compared == 60) {
                break;
            }
        }
    }

    /** Cheapest by screening against a dumb search that walks every rig of the shelf. */
    @ParameterizedTest
    @ValueSource(longs = {201, 202, 203})
    void cheapestEqualsBruteForce(long seed) {
        Invented invented = new Invented(seed);
        Weather weather = invented.weather(1);
        PlaneWeather plane = Invented.plane(weather);
        List<Load> loads = invented.loads(false, false);
        Outage outage = invented.outage(1);
        Allowances none = new Allowances(0, 0, 0);
        List<Part> parts = invented.parts().subList(0, 10);
        Grammar grammar = new Grammar(1, 2);
        Shortlist list = new Search(plane, 1, 4, Workers.of(1))
                .shortlist(parts, grammar, loads, -10, outage, none, OptionalLong.empty(), share -> {});
        Prover prover = new Prover(weather, plane, 4, 1, Workers.of(1));
        long cheapest = Candidates.of(parts, grammar, loads, -10, none, OptionalLong.empty()).kept().stream()
                .filter(one -> prover.share(one.rig(), loads, outage).share() >= outage.targetShare())
                .mapToLong(one -> one.price().totalCents())
                .min()
                .orElse(-1);
        assertThat(list.meeting().isEmpty() ? -1 : list.meeting().get(0).price().totalCents())
                .as("seed %d", seed)
                .isEqualTo(cheapest);
    }

    /** A step that asks more than the store can give at once is carried by no store, in exactly the windows over it. */
    @ParameterizedTest
    @ValueSource(ints = {0, 1, 2, 3, 4, 5, 6})
    void stepBeyondTheStoreNeedsAnInfiniteOne(int dark) {
        Invented invented = new Invented(71);
        double[] gain = new double[60];
        Arrays.setAll(gain, i -> invented.between(-10, 10));
        gain[23] = Double.NEGATIVE_INFINITY;
        gain[25] = Double.NEGATIVE_INFINITY;
        double[] needed = Drawdown.neededWh(gain, gain, 1, 40, 1, dark, 6, 0.8);
        for (int start = 0; start < needed.length; start++) {
            boolean over = start + 1 <= 25 && start + 6 >= 23;
            if (over) {
                assertThat(needed[start]).as("start %d", start).isEqualTo(Double.POSITIVE_INFINITY);
            } else {
                assertThat(needed[start]).as("start %d", start).isLessThan(100);
            }
        }
    }

    @Test
    void windowOfOneSpanIsTheSpan() {
        double[] gain = {1, -3, 2, -1};
        double[] needed = Drawdown.neededWh(gain, gain, 0, 4, 1, 0, 1, 0.5);
        assertThat(needed).containsExactly(0, 6, 0, 2);
    }

    @SafeVarargs
    private static List<Rated> concat(List<Rated>... lists) {
        return Arrays.stream(lists).flatMap(List::stream).distinct().toList();
    }
}
