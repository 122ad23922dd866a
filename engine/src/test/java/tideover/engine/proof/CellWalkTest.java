package tideover.engine.proof;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Set;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import tideover.engine.Invented;
import tideover.engine.load.DayWindow;
import tideover.engine.load.Load;
import tideover.engine.outage.Help;
import tideover.engine.outage.Outage;
import tideover.engine.outage.Tending;
import tideover.engine.part.Charger;
import tideover.engine.part.Engine;
import tideover.engine.part.RatedStore;
import tideover.engine.quantity.Series;
import tideover.engine.quantity.Workers;
import tideover.engine.rig.Assembly;
import tideover.engine.rig.Chosen;
import tideover.engine.rig.Rig;
import tideover.engine.site.Weather;

/** The walk with every model on: against the plain walk, and by what must hold for any battery. */
class CellWalkTest {
    private static final double NOON = 12.2;
    private static final int LONGEST_H = 400;

    /** Two models of one thing: a plain store through the walk with every model is the plain walk. */
    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8})
    void aPlainStoreWalksAsInThePlainWalk(long seed) {
        Invented invented = new Invented(seed);
        Weather weather = invented.weather(1);
        Rig rig = invented.rig(invented.between(300, 2000), invented.whole(0, 3), invented.between(3, 20));
        List<Load> loads = invented.loads(true, true);
        Outage outage = invented.outage(invented.chance(0.5) ? 1 : invented.between(0.2, 0.9));
        RigFigures figures = RigFigures.of(rig);
        if (invented.chance(0.3)) {
            figures = figures.withMaxDischargeW(invented.between(20, 80));
        }
        BusDemand demand = BusDemand.of(rig, loads, NOON, 4);
        Series sun = Invented.sun(Invented.plane(weather));
        PlainWalk plain = new PlainWalk(figures, demand, sun, outage);
        CellFlows flows = new CellFlows(
                demand, sun, figures.arrayRatedW(), CellClimate.none(figures, rig.busV(), weather.airDegC()), null);
        CellWalk cell = new CellWalk(
                flows,
                CellRig.of(figures, rig.busV()),
                null,
                null,
                null,
                outage,
                demand.hasNice(),
                Kept.NONE,
                false,
                false,
                true);
        Stretch stretch = Stretch.of(outage.months(), 1, outage.hours()).get(0);
        plain.onto(stretch);
        cell.onto(stretch);
        double[] lowPlain = {0};
        double[] lowCell = {0};
        for (int start = 0; start < stretch.starts(); start += 5) {
            String which = "seed " + seed + ", start " + start;
            double hours = plain.hoursCarried(start, outage.hours(), outage.hours(), lowPlain);
            assertThat(cell.hoursCarried(start, outage.hours(), outage.hours(), lowCell))
                    .as(which)
                    .isCloseTo(hours, within(1e-6));
            assertThat(lowCell[0]).as(which).isCloseTo(lowPlain[0], within(1e-4));
            Ledger one = new Ledger();
            Ledger two = new Ledger();
            plain.account(start, outage.hours(), one, null);
            cell.account(start, outage.hours(), two, null);
            double tolerance = 1e-7 * (1 + one.inWh() + figures.capacityWh());
            assertThat(two.inWh()).as(which).isCloseTo(one.inWh(), within(tolerance));
            assertThat(two.controllerLimitWh()).as(which).isCloseTo(one.controllerLimitWh(), within(tolerance));
            assertThat(two.chargeLimitWh()).as(which).isCloseTo(one.chargeLimitWh(), within(tolerance));
            assertThat(two.noRoomWh()).as(which).isCloseTo(one.noRoomWh(), within(tolerance));
            assertThat(two.chargeLossWh()).as(which).isCloseTo(one.chargeLossWh(), within(tolerance));
            assertThat(two.dischargeLossWh()).as(which).isCloseTo(one.dischargeLossWh(), within(tolerance));
            assertThat(two.servedEssentialWh()).as(which).isCloseTo(one.servedEssentialWh(), within(tolerance));
            assertThat(two.servedNiceWh()).as(which).isCloseTo(one.servedNiceWh(), within(tolerance));
            assertThat(two.endWh()).as(which).isCloseTo(one.endWh(), within(tolerance));
        }
    }

    /** Any battery, any controller, any loads: the independent checker finds nothing. */
    @ParameterizedTest
    @ValueSource(longs = {11, 12, 13, 14, 15, 16, 17, 18, 19, 20, 21, 22, 23, 24})
    void energyClosesAndNoLimitIsPassed(long seed) {
        Invented invented = new Invented(seed);
        Weather weather = invented.weather(1);
        Rig rig = invented.ratedRig(invented.between(30, 200), invented.whole(0, 4), invented.between(4, 30));
        List<Load> loads = invented.loads(true, true);
        Outage outage = invented.outage(invented.chance(0.5) ? 1 : invented.between(0.2, 0.9));
        Prover prover = prover(weather, 4);
        for (int i = 0; i < 60; i++) {
            int start = invented.whole(0, weather.hours() - 1);
            Trace trace = prover.trace(rig, loads, outage, start);
            assertThat(TraceChecker.faults(trace, rig))
                    .as("seed %d, start %d, %s", seed, start, rig.store())
                    .isEmpty();
        }
    }

    /** The same with an engine, another battery, a grid that comes and goes; on plain stores too. */
    @ParameterizedTest
    @ValueSource(longs = {31, 32, 33, 34, 35, 36, 37, 38, 39, 40})
    void energyClosesWithHelp(long seed) {
        Invented invented = new Invented(seed);
        Weather weather = invented.weather(1);
        Rig rig = charged(
                invented.chance(0.3)
                        ? invented.rig()
                        : invented.ratedRig(invented.between(30, 200), 2, invented.between(4, 30)));
        List<Load> loads = invented.loads(true, true);
        Outage outage = invented.maybeHelped(invented.outage(invented.chance(0.5) ? 1 : invented.between(0.2, 0.9)));
        Prover prover = prover(weather, 4);
        for (int i = 0; i < 40; i++) {
            int start = invented.whole(0, weather.hours() - 1);
            Trace trace = prover.trace(rig, loads, outage, start);
            assertThat(TraceChecker.faults(trace, rig))
                    .as("seed %d, start %d, %s", seed, start, outage)
                    .isEmpty();
        }
    }

    /** The same with an engine of the rig's own; in the asked hours it does what a borrowed one alike would do. */
    @ParameterizedTest
    @ValueSource(longs = {131, 132, 133, 134, 135, 136, 137, 138})
    void energyClosesWithAnEngineOfItsOwn(long seed) {
        Invented invented = new Invented(seed);
        Weather weather = invented.weather(1);
        Rig bare = charged(
                invented.chance(0.3)
                        ? invented.rig()
                        : invented.ratedRig(invented.between(30, 200), 2, invented.between(4, 30)));
        Engine engine = invented.engine("E", 20_000);
        List<Chosen> chosen = new ArrayList<>(bare.chosen());
        chosen.add(new Chosen(engine, 1));
        Rig own = Objects.requireNonNull(Assembly.of(chosen).rig());
        List<Load> loads = invented.loads(true, true);
        double from = invented.whole(0, 20);
        List<DayWindow> hours = List.of(new DayWindow(from, from + invented.between(0.5, 3)));
        Outage asked = invented.outage(1);
        Outage tended = asked.with(new Tending(hours, 20));
        Outage borrowed = new Outage(
                asked.months(),
                asked.hours(),
                asked.targetShare(),
                asked.chargeAtStart(),
                asked.panelsOutAfterHours(),
                asked.keepBack(),
                null,
                List.of(new Help.Engine(hours, engine.ratedW())));
        Prover prover = prover(weather, 4);
        for (int i = 0; i < 40; i++) {
            int start = invented.whole(0, weather.hours() - 1);
            Trace trace = prover.trace(own, loads, tended, start);
            assertThat(TraceChecker.faults(trace, own))
                    .as("seed %d, start %d, %s", seed, start, tended)
                    .isEmpty();
            assertThat(trace.steps())
                    .as("seed %d, start %d, %s", seed, start, tended)
                    .isEqualTo(prover.trace(bare, loads, borrowed, start).steps());
        }
    }

    /** A second, dumb walker in small steps of the differential equations finds the same hours. */
    @ParameterizedTest
    @ValueSource(longs = {51, 52, 53, 54, 55, 56, 57, 58, 59, 60, 61, 62, 63, 64, 65, 66})
    void agreesWithTheDumbWalkerInSecondsSteps(long seed) {
        Invented invented = new Invented(seed);
        Weather weather = invented.weather(1);
        Rig rig = invented.ratedRig(invented.between(20, 80), invented.whole(0, 3), invented.between(4, 30));
        List<Load> loads = invented.loads(false, false);
        Outage outage = invented.outage(1);
        Setup setup = Setup.of(
                rig, loads, new YearsShelf(weather, Invented.plane(weather), weather.airDegC()), NOON, 60, outage);
        int cap = 2 * outage.hours();
        Walk walk = setup.walks(cap).get();
        double[] lowest = {0};
        for (int i = 0; i < 6; i++) {
            int midnight = 24 * invented.whole(0, 360);
            int start = invented.whole(0, 23);
            walk.onto(new Stretch(midnight, 24, cap));
            double hours = walk.hoursCarried(start, cap, cap, lowest);
            double dumb = new DumbBattery(setup).hoursCarried(midnight + start, cap);
            assertThat(hours)
                    .as("seed %d, start %d, %s", seed, midnight + start, rig.store())
                    .isCloseTo(dumb, within(0.02 + 0.005 * dumb));
        }
    }

    /** Halving the step: energies within 1 %, shares within the larger of half their interval and half a point. */
    @ParameterizedTest
    @ValueSource(longs = {71, 72, 73, 74})
    void halvingTheStepMovesLittle(long seed) {
        Invented invented = new Invented(seed);
        Weather weather = invented.weather(4);
        Rig rig = invented.ratedRig(invented.between(40, 120), 2, 20);
        List<Load> loads = invented.loads(true, false);
        Outage outage = invented.outage(1);
        Proof whole = prover(weather, 4).prove(rig, loads, outage);
        Proof half = prover(weather, 8).prove(rig, loads, outage);
        double allowed = Math.max(0.005, (whole.share().high() - whole.share().low()) / 2);
        assertThat(half.share().share())
                .as("seed %d", seed)
                .isCloseTo(whole.share().share(), within(allowed));
        double servedWh = whole.energy().servedEssentialWh();
        assertThat(half.energy().servedEssentialWh()).isCloseTo(servedWh, within(0.01 * servedWh));
    }

    /** Where theory allows it: with no sun a fuller, larger or warmer battery never carries less. */
    @ParameterizedTest
    @ValueSource(longs = {81, 82, 83, 84, 85, 86, 87, 88})
    void withoutSunMoreNeverCarriesLess(long seed) {
        Invented invented = new Invented(seed);
        Weather weather = invented.weather(1);
        Rig rig = invented.ratedRig(invented.between(20, 80), 0, 10);
        List<Load> loads = invented.loads(true, false);
        Outage outage = invented.outage(1);
        Setup base = Setup.of(
                rig, loads, new YearsShelf(weather, Invented.plane(weather), weather.airDegC()), NOON, 4, outage);
        Setup.Cells cells = Objects.requireNonNull(base.cells()).at(invented.between(-8, 15));
        RatedStore store = cells.bank().store();
        double hours = meanHours(base.with(cells));
        String which = "seed " + seed + ", " + store;
        assertThat(meanHours(base.with(cells).with(outage.fullAtStart())))
                .as(which)
                .isGreaterThanOrEqualTo(hours);
        assertThat(meanHours(base.with(cells.with(CellBank.of(store.times(1.3))))))
                .as(which)
                .isGreaterThanOrEqualTo(hours);
        // Warmth quickens self-discharge, and may cost what that takes in the longest walk, no more.
        double self = store.chemistry().traits().selfSharePerHour(20) * LONGEST_H / store.depth();
        assertThat(meanHours(base.with(cells.at(20)))).as(which).isGreaterThanOrEqualTo(hours * (1 - self));
        assertThat(meanHours(base.with(BusDemand.withoutStanding(rig, loads, NOON, 4))
                        .with(cells)))
                .as(which)
                .isGreaterThanOrEqualTo(hours);
    }

    private static double meanHours(Setup setup) {
        int cap = LONGEST_H;
        Walk walk = setup.walks(cap).get();
        walk.onto(new Stretch(0, 24, cap));
        double[] lowest = {0};
        double sum = 0;
        for (int start = 0; start < 24; start++) {
            sum += walk.hoursCarried(start, cap, cap, lowest);
        }
        return sum;
    }

    private static Rig charged(Rig rig) {
        List<Chosen> chosen = new ArrayList<>(rig.chosen());
        chosen.add(new Chosen(new Charger(Invented.listing("M", 1, 1), 10, 12, 14.6, 0.88, Set.of()), 1));
        return Objects.requireNonNull(Assembly.of(chosen).rig());
    }

    private static Prover prover(Weather weather, int stepsPerHour) {
        return new Prover(weather, Invented.plane(weather), weather.airDegC(), NOON, stepsPerHour, 7, Workers.of(1));
    }
}
