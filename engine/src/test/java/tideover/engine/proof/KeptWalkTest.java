package tideover.engine.proof;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import tideover.engine.Invented;
import tideover.engine.cold.BoxKind;
import tideover.engine.cold.ColdBox;
import tideover.engine.cold.Compressor;
import tideover.engine.cold.Contents;
import tideover.engine.cold.Food;
import tideover.engine.load.ColdLoad;
import tideover.engine.load.Duty;
import tideover.engine.load.Load;
import tideover.engine.load.Nature;
import tideover.engine.load.Need;
import tideover.engine.outage.Outage;
import tideover.engine.quantity.Workers;
import tideover.engine.rig.Rig;
import tideover.engine.site.RoomKind;
import tideover.engine.site.Weather;

/** Walks with things that switch themselves: properties on random boxes, pits, homes and rigs. */
class KeptWalkTest {
    private static final double NOON = 12;

    private static Prover prover(Weather weather, int stepsPerHour) {
        return new Prover(weather, Invented.plane(weather), weather.airDegC(), NOON, stepsPerHour, 1, Workers.of(2));
    }

    private static Rig rig(Invented invented) {
        return invented.chance(0.4)
                ? invented.rig()
                : invented.ratedRig(invented.between(30, 200), invented.whole(0, 3), invented.between(4, 30));
    }

    private static List<Load> loads(Invented invented) {
        List<Load> loads = new ArrayList<>(invented.keptLoads());
        if (invented.chance(0.6)) {
            loads.addAll(invented.loads(true, true));
        }
        return loads;
    }

    /** Energy in is energy served, lost by name and stored; what is kept is kept by its own need. */
    @ParameterizedTest
    @ValueSource(longs = {401, 402, 403, 404, 405, 406, 407, 408, 409, 410, 411, 412, 413, 414, 415, 416})
    void energyClosesAndNeedsAreJudgedRight(long seed) {
        Invented invented = new Invented(seed);
        Weather weather = invented.weather(1);
        Rig rig = rig(invented);
        List<Load> loads = loads(invented);
        Outage outage = invented.maybeHelped(invented.outage(invented.chance(0.5) ? 1 : invented.between(0.2, 0.9)));
        Prover prover = prover(weather, 4);
        for (int i = 0; i < 20; i++) {
            int start = invented.whole(0, weather.hours() - 1);
            Trace trace = prover.trace(rig, loads, outage, start);
            assertThat(TraceChecker.faults(trace, rig))
                    .as("seed %d, start %d, %s %s", seed, start, loads, rig.store())
                    .isEmpty();
        }
    }

    /** What came into a box, a pit or a home, less what went out, is what is more in it, with and without power. */
    @ParameterizedTest
    @ValueSource(longs = {421, 422, 423, 424, 425, 426, 427, 428})
    void heatAndWaterClose(long seed) {
        Invented invented = new Invented(seed);
        Weather weather = invented.weather(1);
        YearsShelf shelf = new YearsShelf(weather, Invented.plane(weather), weather.airDegC());
        for (Kept.One one : Kept.without(invented.keptLoads(), shelf, 4).all()) {
            Keeper keeper = one.maker().keeper(invented.chance(0.5), false, true);
            keeper.onto(new Stretch(24 * 30, 24, 240));
            keeper.begin(5);
            for (int step = 0; step < 800; step++) {
                boolean live = step / 40 % 2 == 0;
                keeper.step(5 + step / 4, (20 + step) % 96, step / 4.0, 500, false);
                double left = 0.25;
                while (left > 0) {
                    double span = Math.min(left, keeper.untilSwitchH(left, live));
                    keeper.pass(span, live);
                    left -= span;
                }
                assertThat(keeper.imbalance())
                        .as("seed %d, step %d, %s", seed, step, one.load())
                        .isCloseTo(0, within(1e-7));
            }
        }
    }

    /** Halving the step moves hours and energies little. */
    @ParameterizedTest
    @ValueSource(longs = {431, 432, 433, 434, 435, 436})
    void halvingTheStepMovesLittle(long seed) {
        Invented invented = new Invented(seed);
        Weather weather = invented.weather(2);
        Rig rig = rig(invented);
        List<Load> loads = loads(invented);
        Outage outage = invented.outage(1);
        Proof whole = prover(weather, 4).prove(rig, loads, outage);
        Proof half = prover(weather, 8).prove(rig, loads, outage);
        double allowed = Math.max(0.005, (whole.share().high() - whole.share().low()) / 2);
        assertThat(half.share().share())
                .as("seed %d", seed)
                .isCloseTo(whole.share().share(), within(allowed));
        double servedWh = whole.energy().servedEssentialWh();
        assertThat(half.energy().servedEssentialWh())
                .as("seed %d", seed)
                .isCloseTo(servedWh, within(0.01 * servedWh + 1));
    }

    /** A walk that knows again where other outages have been finds the same as one that knows nothing. */
    @ParameterizedTest
    @ValueSource(longs = {441, 442, 443, 444, 445, 446, 447, 448, 449, 450, 451, 452})
    void knownPointsChangeNothing(long seed) {
        Invented invented = new Invented(seed);
        Weather weather = invented.weather(1);
        Rig rig = invented.rig();
        List<Load> loads = loads(invented);
        Outage outage = invented.outage(invented.chance(0.5) ? 1 : invented.between(0.2, 0.9));
        YearsShelf shelf = new YearsShelf(weather, Invented.plane(weather), weather.airDegC());
        Setup setup = Setup.of(rig, loads, shelf, NOON, 4, outage);
        int cap = 2 * outage.hours();
        Stretch stretch = new Stretch(24 * invented.whole(0, 300), 24 * 20, cap);
        Walk knowing = setup.walks(cap).get();
        knowing.onto(stretch);
        double[] lowest = {0};
        double[] alone = {0};
        for (int start = stretch.starts() - 1; start >= 0; start--) {
            Walk fresh = setup.walks(cap).get();
            fresh.onto(stretch);
            String which = "seed " + seed + ", start " + start;
            assertThat(knowing.hoursCarried(start, cap, outage.hours(), lowest))
                    .as(which)
                    .isCloseTo(fresh.hoursCarried(start, cap, outage.hours(), alone), within(1e-9));
            assertThat(knowing.ending()).as(which).isEqualTo(fresh.ending());
            assertThat(lowest[0]).as(which).isCloseTo(alone[0], within(1e-9));
        }
    }

    /** The proof is the same, to the last digit, whatever the threads. */
    @ParameterizedTest
    @ValueSource(longs = {441, 443})
    void threadsChangeNothing(long seed) {
        Invented invented = new Invented(seed);
        Weather weather = invented.weather(1);
        Rig rig = rig(invented);
        List<Load> loads = loads(invented);
        Outage outage = invented.maybeHelped(new Outage(
                List.of(invented.whole(0, 11)), invented.whole(12, 36), 0.9, 1, 2, invented.between(0.3, 1)));
        Proof one = proofBy(1, weather, rig, loads, outage);
        for (int threads = 2; threads <= 3; threads++) {
            assertThat(proofBy(threads, weather, rig, loads, outage))
                    .as("seed %d, %d threads", seed, threads)
                    .usingRecursiveComparison()
                    .withEqualsForType((a, b) -> Double.compare(a, b) == 0, Double.class)
                    .isEqualTo(one);
        }
    }

    private static Proof proofBy(int threads, Weather weather, Rig rig, List<Load> loads, Outage outage) {
        return new Prover(weather, Invented.plane(weather), weather.airDegC(), NOON, 4, 1, Workers.of(threads))
                .prove(rig, loads, outage);
    }

    /** Food that stands at its freezing point has begun to thaw: it is broken there, not only once it is warmer. */
    @Test
    void whatBeginsToThawIsNotKept() {
        Invented invented = new Invented(461);
        Weather weather = invented.weather(1);
        YearsShelf shelf = new YearsShelf(weather, Invented.plane(weather), weather.airDegC());
        ColdBox box = ColdBox.ofWalls(
                BoxKind.CHEST_FREEZER,
                200,
                1.8,
                new Compressor(90, 22),
                null,
                List.of(Contents.of(Food.LEAN_BEEF, 100)));
        Load freezer = new ColdLoad(
                "freezer",
                Invented.MAINS,
                box,
                new Need.Below(-1.7),
                Duty.AS_IT_NEEDS,
                Double.NaN,
                RoomKind.INDOORS,
                Nature.PLAIN);
        Keeper keeper =
                Kept.without(List.of(freezer), shelf, 4).all().get(0).maker().keeper(false, false, true);
        keeper.onto(new Stretch(24 * 190, 24, 400));
        keeper.begin(0);
        int step = 0;
        while (keeper.kept() < -1.7) {
            keeper.step(step / 4, step % 96, step / 4.0, 0, false);
            keeper.untilSwitchH(0.25, false);
            keeper.pass(0.25, false);
            step++;
        }
        assertThat(step / 4.0).isLessThan(40);
        assertThat(keeper.kept()).isCloseTo(-1.7, within(1e-9));
        assertThat(keeper.broken()).isEqualTo(Ending.THAWED);
    }
}
