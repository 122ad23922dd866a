package tideover.engine.proof;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import tideover.engine.Invented;
import tideover.engine.load.Load;
import tideover.engine.outage.Outage;
import tideover.engine.quantity.Series;
import tideover.engine.quantity.Workers;
import tideover.engine.rig.Rig;
import tideover.engine.site.Weather;

/** The walk with every model on: against the plain walk, and by what must hold for any battery. */
class CellWalkTest {
    private static final double NOON = 12.2;

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
        CellWalk cell = new CellWalk(flows, CellRig.of(figures, rig.busV()), null, null, outage, demand.hasNice());
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

    private static Prover prover(Weather weather, int stepsPerHour) {
        return new Prover(weather, Invented.plane(weather), weather.airDegC(), NOON, stepsPerHour, 7, Workers.of(1));
    }
}
