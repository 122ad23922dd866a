package tideover.engine.proof;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Objects;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import tideover.engine.Invented;
import tideover.engine.load.ColdLoad;
import tideover.engine.load.HeatLoad;
import tideover.engine.load.Load;
import tideover.engine.load.PitLoad;
import tideover.engine.outage.Outage;
import tideover.engine.part.InverterRating;
import tideover.engine.quantity.Workers;
import tideover.engine.rig.Rig;
import tideover.engine.site.Weather;

/** The unknown let go through its range. */
class DoubtsTest {
    private static Prover prover(Weather weather, int threads) {
        return new Prover(weather, Invented.plane(weather), weather.airDegC(), 12, 4, 5, Workers.of(threads));
    }

    private static Doubt general(Doubt.Kind kind, double leastTimes, double mostTimes) {
        return new Doubt(kind.name(), kind, "", leastTimes, mostTimes, "look");
    }

    /** All doubts that a random plan could have. */
    private static List<Doubt> doubts(List<Load> loads, double least, double most) {
        List<Doubt> doubts = new ArrayList<>();
        for (Load load : loads) {
            doubts.add(Doubt.of(Doubt.Kind.DRAWS, load, least, most));
            if (load instanceof ColdLoad) {
                doubts.add(Doubt.of(Doubt.Kind.FOOD, load, least, most));
            }
            if (load instanceof ColdLoad || load instanceof HeatLoad) {
                doubts.add(Doubt.of(Doubt.Kind.WALLS, load, least, most));
            }
            if (load instanceof PitLoad) {
                doubts.add(Doubt.of(Doubt.Kind.INFLOW, load, least, most));
            }
        }
        for (Doubt.Kind kind : List.of(Doubt.Kind.CAPACITY, Doubt.Kind.SUN, Doubt.Kind.STANDING)) {
            doubts.add(general(kind, least, most));
        }
        return doubts;
    }

    /** A random rig with loads of both sorts, by a short outage in one month. */
    private static final class Case {
        final Weather weather;
        final Rig rig;
        final List<Load> loads;
        final Outage outage;

        Case(long seed, boolean kept) {
            Invented invented = new Invented(seed);
            weather = invented.weather(1);
            rig = invented.rig(invented.between(200, 1200), 2, 20);
            loads = new ArrayList<>(invented.loads(true, false));
            if (kept) {
                loads.addAll(invented.keptLoads());
            }
            outage = new Outage(List.of(invented.whole(0, 11)), invented.whole(12, 36), 0.9, 1, 0, 1);
        }

        CarriedShare share() {
            return prover(weather, 2).share(rig, loads, outage);
        }

        Doubts doubts(List<Doubt> all) {
            return doubts(all, 2);
        }

        Doubts doubts(List<Doubt> all, int threads) {
            return prover(weather, threads).doubts(rig, loads, outage, share(), all);
        }
    }

    @ParameterizedTest
    @ValueSource(longs = {1001})
    void threadsChangeNothingAndTheSpreadHoldsTheShare(long seed) {
        Case one = new Case(seed, true);
        CarriedShare share = one.share();
        Doubts doubts = one.doubts(doubts(one.loads, 0.7, 1.4));
        assertThat(one.doubts(doubts(one.loads, 0.7, 1.4), 1)).isEqualTo(doubts);
        assertThat(doubts.low()).isBetween(0.0, share.low());
        assertThat(doubts.high()).isBetween(share.high(), 1.0);
        assertThat(doubts.ranked()).hasSize(doubts(one.loads, 1, 1).size());
        assertThat(doubts.ranked())
                .isSortedAccordingTo((a, b) -> a.width() != b.width()
                        ? Double.compare(b.width(), a.width())
                        : Double.compare(b.hoursBetween(), a.hoursBetween()));
    }

    /** Where nothing is in doubt nothing moves: the case of figures times 1 is the case itself. */
    @ParameterizedTest
    @ValueSource(longs = {1011, 1013})
    void timesOneIsTheBase(long seed) {
        Case one = new Case(seed, true);
        CarriedShare share = one.share();
        Doubts doubts = one.doubts(doubts(one.loads, 1, 1));
        for (Doubts.Effect effect : doubts.ranked()) {
            assertThat(effect.shareAtLeast())
                    .as("seed %d, %s", seed, effect.doubt())
                    .isCloseTo(share.share(), within(1e-12));
            assertThat(effect.shareAtMost()).isCloseTo(share.share(), within(1e-12));
            assertThat(effect.hoursBetween()).isZero();
        }
        assertThat(doubts.low()).isCloseTo(share.low(), within(1e-12));
        assertThat(doubts.high()).isCloseTo(share.high(), within(1e-12));
    }

    /** Of a plain store and loads by the clock: more draw never carries more, more store and more sun never less. */
    @ParameterizedTest
    @ValueSource(longs = {1021, 1022, 1023, 1024})
    void widerRangesDoNoLess(long seed) {
        Case one = new Case(seed, false);
        Doubts narrow = one.doubts(doubts(one.loads, 0.9, 1.1));
        Doubts wide = one.doubts(doubts(one.loads, 0.6, 1.6));
        for (Doubts.Effect effect : narrow.ranked()) {
            Doubts.Effect wider = wide.ranked().stream()
                    .filter(other -> other.doubt().what().equals(effect.doubt().what()))
                    .findFirst()
                    .orElseThrow();
            String as = "seed " + seed + ", " + effect.doubt().what();
            boolean takes =
                    effect.doubt().kind() == Doubt.Kind.DRAWS || effect.doubt().kind() == Doubt.Kind.STANDING;
            double best = takes ? effect.shareAtLeast() : effect.shareAtMost();
            double worst = takes ? effect.shareAtMost() : effect.shareAtLeast();
            assertThat(best).as(as).isGreaterThanOrEqualTo(worst);
            assertThat(takes ? wider.shareAtLeast() : wider.shareAtMost())
                    .as(as)
                    .isGreaterThanOrEqualTo(best);
            assertThat(takes ? wider.shareAtMost() : wider.shareAtLeast())
                    .as(as)
                    .isLessThanOrEqualTo(worst);
            assertThat(wider.width()).as(as).isGreaterThanOrEqualTo(effect.width());
            assertThat(wider.hoursBetween()).as(as).isGreaterThanOrEqualTo(effect.hoursBetween());
        }
    }

    /** Some of the seeds above have to have an effect to rank at all. */
    @Test
    void someDoubtsDoSomething() {
        Case one = new Case(1021, false);
        Doubts wide = one.doubts(doubts(one.loads, 0.6, 1.6));
        assertThat(wide.ranked().get(0).hoursBetween()).isPositive();
        assertThat(wide.high() - wide.low())
                .isGreaterThan(one.share().high() - one.share().low());
    }

    @Test
    void whatTheRigHasNotIsLeftOut() {
        Case one = new Case(1031, false);
        Rig dark = new Invented(1032).rig(900, 0, 20);
        List<Doubt> all = List.of(
                general(Doubt.Kind.SUN, 0.9, 1.1),
                general(Doubt.Kind.STANDING, 0.9, 1.1),
                general(Doubt.Kind.CAPACITY, 0.9, 1.1));
        InverterRating inverter = Objects.requireNonNull(dark.inverter());
        Rig still = dark.with(inverter.with(inverter.loss().withoutStanding()));
        Doubts doubts = prover(one.weather, 2).doubts(still, one.loads, one.outage, one.share(), all);
        assertThat(doubts.ranked()).extracting(effect -> effect.doubt().kind()).containsExactly(Doubt.Kind.CAPACITY);
        InverterRating own = Objects.requireNonNull(one.rig.inverter());
        assertThat(one.doubts(all).ranked()).hasSize(own.standingW() > 0 ? 3 : 2);
    }

    /** Every twenty-fourth of each range is met once, half of them below the figure as taken. */
    @Test
    void everyStratumIsMetOnce() {
        List<Doubt> all = List.of(
                general(Doubt.Kind.SUN, 0.5, 1.2),
                general(Doubt.Kind.CAPACITY, 0.9, 3),
                general(Doubt.Kind.STANDING, 0.7, 1.5));
        double[][] times = Doubts.draws(all, 77);
        int[] each = IntStream.range(0, Doubts.DRAWS).toArray();
        int[][] orders = new int[all.size()][];
        for (int d = 0; d < all.size(); d++) {
            Doubt doubt = all.get(d);
            int[] strata = new int[Doubts.DRAWS];
            for (int draw = 0; draw < strata.length; draw++) {
                double one = times[draw][d];
                assertThat(one).isBetween(doubt.leastTimes(), doubt.mostTimes());
                double place = one < 1
                        ? (one - doubt.leastTimes()) / (1 - doubt.leastTimes()) / 2
                        : 0.5 + (one - 1) / (doubt.mostTimes() - 1) / 2;
                strata[draw] = (int) (place * Doubts.DRAWS);
            }
            orders[d] = strata.clone();
            Arrays.sort(strata);
            assertThat(strata).containsExactly(each);
        }
        assertThat(orders[0]).isNotEqualTo(orders[1]);
        assertThat(Doubts.draws(all, 77)).isDeepEqualTo(times);
        assertThat(Doubts.draws(all, 78)[0]).isNotEqualTo(times[0]);
    }
}
