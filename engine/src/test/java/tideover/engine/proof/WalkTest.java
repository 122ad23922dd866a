package tideover.engine.proof;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import tideover.engine.Invented;
import tideover.engine.load.Load;
import tideover.engine.outage.Outage;
import tideover.engine.quantity.Series;
import tideover.engine.quantity.Workers;
import tideover.engine.rig.Rig;
import tideover.engine.site.Weather;

/** Properties of the walk over random plans; every failure names its seed. */
class WalkTest {
    private static final double NOON = Invented.PLACE.meanSolarNoonHour();

    @ParameterizedTest
    @ValueSource(longs = {11, 12, 13, 14, 15, 16, 17, 18, 19, 20, 21, 22, 23, 24, 25, 26, 27, 28, 29, 30})
    void energyClosesInEveryOutageOfRandomPlans(long seed) {
        Invented invented = new Invented(seed);
        Weather weather = invented.weather(1);
        Rig rig = invented.rig();
        List<Load> loads = invented.loads(true, true);
        Outage outage = invented.outage(invented.chance(0.5) ? 1 : invented.between(0.1, 0.9));
        Prover prover = prover(weather, 4, 1);
        RigFigures figures = RigFigures.of(rig);
        for (int i = 0; i < 60; i++) {
            int start = invented.whole(0, weather.hours() - 1);
            Trace trace = prover.trace(rig, loads, outage, start);
            assertThat(TraceChecker.faults(trace, rig))
                    .as("seed %d, start %d", seed, start)
                    .isEmpty();
        }
    }

    /** The books are also kept over every start of a plan, and its sums close. */
    @ParameterizedTest
    @ValueSource(longs = {31, 32, 33, 34})
    void energySumsCloseOverAllStarts(long seed) {
        Invented invented = new Invented(seed);
        Weather weather = invented.weather(2);
        Ledger energy = prover(weather, 4, 1)
                .prove(invented.rig(), invented.loads(true, true), invented.outage(0.6))
                .energy();
        double out = energy.servedEssentialWh()
                + energy.servedNiceWh()
                + energy.controllerLossWh()
                + energy.controllerLimitWh()
                + energy.chargeLimitWh()
                + energy.noRoomWh()
                + energy.chargeLossWh()
                + energy.dischargeLossWh()
                + energy.inverterLossWh()
                + energy.outletLossWh()
                + energy.standingWh()
                + energy.endWh()
                - energy.startWh();
        assertThat(out).isCloseTo(energy.inWh(), within(1e-9 * (energy.inWh() + energy.startWh())));
    }

    /** The checker is no rubber stamp: a trace with one figure bent is refused. */
    @Test
    void checkerRefusesABentTrace() {
        Invented invented = new Invented(35);
        Rig rig = invented.rig();
        Trace good =
                prover(invented.weather(1), 4, 1).trace(rig, invented.loads(false, false), invented.outage(1), 8000);
        List<TraceStep> bent = new ArrayList<>(good.steps());
        TraceStep s = bent.get(3);
        bent.set(
                3,
                new TraceStep(
                        s.hour(),
                        s.weatherHour(),
                        s.airDegC(),
                        s.batteryDegC(),
                        s.panelsOut(),
                        s.arrayW(),
                        s.onBusW(),
                        s.helpW(),
                        s.controllerLossW(),
                        s.controllerLimitW(),
                        s.chargeLimitW(),
                        s.noRoomW(),
                        s.essentialServedW() + 0.01,
                        s.essentialUnservedW(),
                        s.niceServedW(),
                        s.inverterLossW(),
                        s.outletLossW(),
                        s.standingW(),
                        s.heaterW(),
                        s.selfW(),
                        s.chargeLossW(),
                        s.dischargeLossW(),
                        s.storedWh(),
                        s.kept()));
        Trace bad = new Trace(
                good.startHour(),
                good.stepHours(),
                good.capacityWh(),
                good.hoursCarried(),
                good.ending(),
                good.ledger(),
                good.kept(),
                bent);
        assertThat(TraceChecker.faults(good, rig)).isEmpty();
        assertThat(TraceChecker.faults(bad, rig)).isNotEmpty();
    }

    /** Short walk and accounting walk agree on the hours, for every start of the asked months. */
    @ParameterizedTest
    @ValueSource(longs = {41, 42, 43, 44, 45, 46, 47, 48})
    void shortWalkAgreesWithAccountingWalk(long seed) {
        Invented invented = new Invented(seed);
        Weather weather = invented.weather(1);
        Rig rig = invented.rig();
        List<Load> loads = invented.loads(true, true);
        Outage outage = invented.outage(1);
        RigFigures figures = RigFigures.of(rig);
        BusDemand demand = BusDemand.of(rig, loads, NOON, 4);
        Stretch stretch = Stretch.of(outage.months(), 1, outage.hours()).get(0);
        PlainWalk walk = new PlainWalk(figures, demand, Invented.sun(Invented.plane(weather)), outage);
        walk.onto(stretch);
        double[] lowShort = {0};
        double[] lowLong = {0};
        for (int start = 0; start < stretch.starts(); start++) {
            double hours = walk.essentialHours(start, outage.hours(), outage.hours(), lowShort);
            assertThat(walk.accountedHours(start, outage.hours(), outage.hours(), lowLong))
                    .as("seed %d, start %d", seed, start)
                    .isCloseTo(hours, within(1e-6));
            assertThat(lowLong[0]).isCloseTo(lowShort[0], within(1e-6));
        }
    }

    /** Halving the step: energies within 0.5 %, shares within the larger of half their interval and 0.3 points. */
    @ParameterizedTest
    @ValueSource(longs = {51, 52, 53, 54, 55, 56})
    void halvingTheStepMovesLittle(long seed) {
        Invented invented = new Invented(seed);
        Weather weather = invented.weather(6);
        Rig rig = invented.rig(invented.between(500, 1500), 2, 20);
        List<Load> loads = invented.loads(true, false);
        Outage outage = invented.outage(1);
        Proof whole = prover(weather, 4, 1).prove(rig, loads, outage);
        Proof half = prover(weather, 8, 1).prove(rig, loads, outage);
        double allowed = Math.max(0.003, (whole.share().high() - whole.share().low()) / 2);
        assertThat(half.share().share())
                .as("seed %d", seed)
                .isCloseTo(whole.share().share(), within(allowed));
        assertThat(half.energy().servedEssentialWh())
                .isCloseTo(
                        whole.energy().servedEssentialWh(),
                        within(0.005 * whole.energy().servedEssentialWh()));
        assertThat(half.energy().inWh())
                .isCloseTo(whole.energy().inWh(), within(0.005 * whole.energy().inWh() + 1e-9));
    }

    /** With a plain store, whose loads all follow the clock, more store, panel or sun, or a fuller start, never lowers the share. */
    @ParameterizedTest
    @ValueSource(longs = {61, 62, 63, 64, 65, 66, 67, 68, 69, 70})
    void moreNeverCarriesLess(long seed) {
        Invented invented = new Invented(seed);
        Weather weather = invented.weather(3);
        List<Load> loads = invented.loads(true, true);
        Outage outage = invented.outage(invented.chance(0.5) ? 1 : invented.between(0.2, 0.9));
        RigFigures rig = RigFigures.of(invented.rig(invented.between(300, 1500), 2, 12));
        BusDemand demand = BusDemand.of(invented.rig(1000, 1, 10), loads, NOON, 4);
        Series sun = Invented.sun(Invented.plane(weather));
        int base = carried(weather, rig, demand, sun, outage);
        double more = invented.between(1.001, 1.6);
        double[] brighter = sun.toArray();
        for (int i = 0; i < brighter.length; i++) {
            brighter[i] *= more;
        }
        assertThat(carried(weather, rig.withCapacityWh(rig.capacityWh() * more), demand, sun, outage))
                .as("store, seed %d", seed)
                .isGreaterThanOrEqualTo(base);
        assertThat(carried(weather, rig.withArrayRatedW(rig.arrayRatedW() * more), demand, sun, outage))
                .as("panel, seed %d", seed)
                .isGreaterThanOrEqualTo(base);
        assertThat(carried(weather, rig, demand, Series.owning(brighter), outage))
                .as("sun, seed %d", seed)
                .isGreaterThanOrEqualTo(base);
        assertThat(carried(weather, rig.withControllerMaxW(rig.controllerMaxW() * more), demand, sun, outage))
                .as("controller, seed %d", seed)
                .isGreaterThanOrEqualTo(base);
        Outage fuller =
                new Outage(outage.months(), outage.hours(), 0.9, 1, outage.panelsOutAfterHours(), outage.keepBack());
        assertThat(carried(weather, rig, demand, sun, fuller))
                .as("start, seed %d", seed)
                .isGreaterThanOrEqualTo(base);
    }

    private static int carried(Weather weather, RigFigures rig, BusDemand demand, Series sun, Outage outage) {
        int carried = 0;
        double[] lowest = {0};
        for (Stretch stretch : Stretch.of(outage.months(), weather.years(), outage.hours())) {
            PlainWalk walk = new PlainWalk(rig, demand, sun, outage);
            walk.onto(stretch);
            for (int start = 0; start < stretch.starts(); start++) {
                carried += walk.accountedHours(start, outage.hours(), outage.hours(), lowest) >= outage.hours() ? 1 : 0;
            }
        }
        return carried;
    }

    /** Nice-to-have loads that live on what the store cannot take never cost an essential one. */
    @ParameterizedTest
    @ValueSource(longs = {81, 82, 83, 84})
    void niceLoadsCostNothingAtFullKeepBack(long seed) {
        Invented invented = new Invented(seed);
        Weather weather = invented.weather(2);
        Rig rig = invented.rig(800, 2, 20);
        List<Load> all = invented.loads(false, true);
        // The inverter's own draw is the essential loads' affair only where one of them wants AC.
        List<Load> essential = all.stream().filter(Load::essential).toList();
        Outage outage = invented.outage(1);
        Prover prover = prover(weather, 4, 1);
        assertThat(prover.share(rig, all, outage)).isEqualTo(prover.share(rig, essential, outage));
    }

    @Test
    void threadsChangeNothing() {
        Invented invented = new Invented(91);
        Weather weather = invented.weather(3);
        Rig rig = invented.rig();
        List<Load> loads = invented.loads(true, true);
        Outage outage = invented.outage(0.7);
        Proof one = prover(weather, 4, 1).prove(rig, loads, outage);
        Proof two = prover(weather, 4, 2).prove(rig, loads, outage);
        assertThat(two.share()).isEqualTo(one.share());
        assertThat(two.hoursCarried()).isEqualTo(one.hoursCarried());
        assertThat(two.tideLine()).isEqualTo(one.tideLine());
        assertThat(two.lifts()).isEqualTo(one.lifts());
        assertThat(two.energy().inWh()).isEqualTo(one.energy().inWh());
        assertThat(two.worst().steps()).isEqualTo(one.worst().steps());
    }

    private static Prover prover(Weather weather, int stepsPerHour, int threads) {
        return new Prover(
                weather, Invented.plane(weather), weather.airDegC(), NOON, stepsPerHour, 7, Workers.of(threads));
    }
}
