package tideover.engine.proof;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import tideover.engine.Invented;
import tideover.engine.load.Nature;
import tideover.engine.load.PitLoad;
import tideover.engine.outage.Outage;
import tideover.engine.quantity.Workers;
import tideover.engine.site.RoomKind;
import tideover.engine.site.Weather;

/** A pit in straight lines against one in litres, second by second. */
class PitKeeperTest {
    private static final int STEPS = 4;
    private static final int HOURS = 36;
    private static final double SECOND_H = 1.0 / 3600;

    private static PitLoad pump(PitLoad.Pit pit, PitLoad.Inflow inflow, double pumpedLPerH) {
        return new PitLoad("pump", Invented.MAINS, 200, pit, inflow, pumpedLPerH, RoomKind.INDOORS, Nature.PLAIN);
    }

    private static PitLoad random(Invented invented) {
        double usual = invented.between(0, 60);
        return pump(
                new PitLoad.Pit(invented.between(10, 40), invented.between(80, 900)),
                new PitLoad.Inflow(
                        usual, usual + invented.between(0, 600), invented.whole(0, 10), invented.whole(1, 30)),
                invented.between(usual + 50, 3000));
    }

    /** Whether there is power, by the hour of the outage: some hours with, some without. */
    private static boolean live(int hour, int cycle) {
        return hour / cycle % 2 == 0;
    }

    /** What a pit has come to. */
    private static final class Dumb {
        double litres;
        double pumpedL;
        double floodedAtHour = Double.NaN;
        private boolean on = true;

        void second(PitLoad load, double hour, boolean storm, boolean live) {
            double outL = live && on ? load.pumpedLPerH() * SECOND_H : 0;
            litres += load.inflow().lPerH(hour, storm) * SECOND_H - outL;
            pumpedL += outL;
            if (litres <= 0) {
                on = false;
            } else if (litres >= load.pit().onL()) {
                on = true;
            }
            if (litres > load.pit().brimL()) {
                floodedAtHour = Double.isNaN(floodedAtHour) ? hour : floodedAtHour;
                litres = load.pit().brimL();
            }
        }
    }

    @ParameterizedTest
    @ValueSource(
            longs = {601, 602, 603, 604, 605, 606, 607, 608, 609, 610, 611, 612, 613, 614, 615, 616, 617, 618, 619, 620
            })
    void keepsStepWithSeconds(long seed) {
        Invented invented = new Invented(seed);
        PitLoad load = random(invented);
        boolean storm = invented.chance(0.6);
        int cycle = invented.whole(1, 8);
        PitKeeper keeper = new PitKeeper(load, STEPS, storm);
        keeper.begin(0);
        Dumb dumb = new Dumb();
        dumb.litres = load.pit().onL();
        double pumpedL = 0;
        double drawnWh = 0;
        double floodedAtHour = Double.NaN;
        for (int step = 0; step < HOURS * STEPS; step++) {
            double from = (double) step / STEPS;
            boolean live = live(step / STEPS, cycle);
            keeper.step(0, step % (24 * STEPS), from, 0, false);
            double left = 1.0 / STEPS;
            while (left > 1e-12) {
                double span = Math.min(left, keeper.untilSwitchH(left, live));
                drawnWh += live ? keeper.plugW() * span : 0;
                pumpedL += live && keeper.motor() ? load.pumpedLPerH() * span : 0;
                keeper.pass(span, live);
                left -= span;
            }
            for (int second = 0; second < 3600 / STEPS; second++) {
                dumb.second(load, from + (second + 0.5) * SECOND_H, storm, live);
            }
            boolean flooded = keeper.broken() == Ending.FLOODED;
            floodedAtHour = flooded && Double.isNaN(floodedAtHour) ? from : floodedAtHour;
        }
        String as = "seed " + seed + ", " + load;
        // A float that switches some seconds earlier or later moves the level by one filling; of all that was pumped it
        // is little.
        double fillingL = load.pit().onL() + 2 * load.pumpedLPerH() * SECOND_H;
        assertThat(pumpedL).as(as).isCloseTo(dumb.pumpedL, within(fillingL + 0.005 * dumb.pumpedL));
        assertThat(drawnWh).as(as).isCloseTo(pumpedL * load.runningW() / load.pumpedLPerH(), within(1e-6));
        assertThat(keeper.imbalance()).as(as).isCloseTo(0, within(1e-7));
        if (Double.isNaN(dumb.floodedAtHour)) {
            assertThat(floodedAtHour).as(as).isNaN();
        } else {
            assertThat(floodedAtHour).as(as).isCloseTo(dumb.floodedAtHour, within(1.5 / STEPS));
        }
    }

    /** Over all seeds some pits run over and some do not, so that both halves above are looked at. */
    @Test
    void someSeedsFloodAndSomeDoNot() {
        int flooded = 0;
        for (long seed = 601; seed <= 620; seed++) {
            Invented invented = new Invented(seed);
            PitLoad load = random(invented);
            boolean storm = invented.chance(0.6);
            int cycle = invented.whole(1, 8);
            Dumb dumb = new Dumb();
            dumb.litres = load.pit().onL();
            for (int second = 0; second < HOURS * 3600; second++) {
                dumb.second(load, (second + 0.5) * SECOND_H, storm, live(second / 3600, cycle));
            }
            flooded += Double.isNaN(dumb.floodedAtHour) ? 0 : 1;
        }
        assertThat(flooded).isBetween(3, 17);
    }

    /** 20 L stand in it and 10 L/h come in: the brim at 60 L is reached after 4 h, whatever the float wants. */
    @Test
    void withoutPowerItRunsOverAtTheBrim() {
        PitLoad load = pump(new PitLoad.Pit(20, 60), new PitLoad.Inflow(10, 10, 0, 1), 1000);
        assertThat(floodedAtHour(load, false, false)).isCloseTo(4, within(0.25 + 1e-9));
    }

    /** Rises of 300 L/h against a pump of 200 L/h: 40 L of room are gone 24 min after the peak is there at once. */
    @Test
    void aPumpTooWeakForTheStormFloods() {
        PitLoad load = pump(new PitLoad.Pit(20, 60), new PitLoad.Inflow(10, 300, 0, 1e6), 200);
        assertThat(floodedAtHour(load, true, true)).isCloseTo(0.4, within(0.25));
        assertThat(floodedAtHour(load, false, true)).isNaN();
    }

    private static double floodedAtHour(PitLoad load, boolean storm, boolean live) {
        PitKeeper keeper = new PitKeeper(load, STEPS, storm);
        keeper.begin(0);
        for (int step = 0; step < 20 * STEPS; step++) {
            keeper.step(0, 0, (double) step / STEPS, 0, false);
            double left = 1.0 / STEPS;
            while (left > 1e-12) {
                double span = Math.min(left, keeper.untilSwitchH(left, live));
                keeper.pass(span, live);
                left -= span;
            }
            if (keeper.broken() != null) {
                return (step + 1.0) / STEPS;
            }
        }
        return Double.NaN;
    }

    /** It begins with the float just up, and wants to start its motor; so too after the grid was long there. */
    @Test
    void beginsWithTheFloatUp() {
        PitLoad load = pump(new PitLoad.Pit(20, 60), new PitLoad.Inflow(10, 10, 0, 1), 1000);
        PitKeeper keeper = new PitKeeper(load, STEPS, false);
        keeper.begin(7);
        assertThat(keeper.kept()).isEqualTo(20);
        assertThat(keeper.motor()).isTrue();
        assertThat(keeper.starting()).isTrue();
        assertThat(keeper.plugW()).isEqualTo(200);
        keeper.step(0, 0, 0, 0, false);
        keeper.untilSwitchH(0.01, true);
        keeper.pass(0.01, true);
        assertThat(keeper.starting()).isFalse();
        keeper.untilSwitchH(0.01, false);
        keeper.pass(0.01, false);
        assertThat(keeper.starting()).as("after a gap in power it starts again").isTrue();
    }

    /** In the walk: what its plug takes is the litres times what each costs. */
    @Test
    void energyOfAWalkIsThatOfTheLitres() {
        Weather weather = new Invented(4).weather(1);
        PitLoad load = pump(new PitLoad.Pit(20, 60), new PitLoad.Inflow(50, 50, 0, 1), 1000);
        Prover prover = new Prover(weather, Invented.plane(weather), weather.airDegC(), 12, STEPS, 1, Workers.of(1));
        Trace trace = prover.trace(
                new Invented(4).rig(5000, 0, 10), List.of(load), new Outage(List.of(0), 48, 0.9, 1, 0, 1), 100);
        assertThat(trace.ending()).isNull();
        double leftL = trace.steps().get(trace.steps().size() - 1).kept().get(0).kept();
        double litres = 20 + 48 * 50 - leftL;
        assertThat(trace.ledger().servedEssentialWh()).isCloseTo(litres * 200 / 1000, within(1e-6));
    }
}
