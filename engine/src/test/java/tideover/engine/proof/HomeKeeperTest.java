package tideover.engine.proof;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import tideover.engine.Invented;
import tideover.engine.load.HeatLoad;
import tideover.engine.load.Nature;
import tideover.engine.load.Need;
import tideover.engine.quantity.ModelYear;
import tideover.engine.quantity.Series;
import tideover.engine.site.RoomKind;

/** A heated home in exponentials against one in small steps of time. */
class HomeKeeperTest {
    private static final int STEPS = 4;

    /** Steps of the dumb one, h. */
    private static final double TICK_H = 1.0 / 720;

    private static HeatLoad heat(HeatLoad.Home home, double limitDegC) {
        return new HeatLoad(
                "boiler", Invented.MAINS, 90, 4, home, new Need.Above(limitDegC), RoomKind.INDOORS, Nature.PLAIN);
    }

    private static HomeKeeper keeper(HeatLoad load, Series outdoorDegC) {
        HomeKeeper keeper = new HomeKeeper(load, outdoorDegC, null, STEPS);
        keeper.onto(new Stretch(0, 24, outdoorDegC.length() - 24));
        keeper.begin(0);
        return keeper;
    }

    private static void step(HomeKeeper keeper, int step, boolean live) {
        keeper.step(step / STEPS, step % (24 * STEPS), (double) step / STEPS, 0, false);
        double left = 1.0 / STEPS;
        while (left > 1e-12) {
            double span = Math.min(left, keeper.untilSwitchH(left, live));
            keeper.pass(span, live);
            left -= span;
        }
    }

    @ParameterizedTest
    @ValueSource(longs = {701, 702, 703, 704, 705, 706, 707, 708, 709, 710, 711, 712})
    void keepsStepWithSmallSteps(long seed) {
        Invented invented = new Invented(seed);
        HeatLoad load = heat(
                new HeatLoad.Home(
                        invented.between(20, 50),
                        invented.between(10, 80),
                        invented.between(15, 21),
                        invented.between(0.5, 2)),
                invented.between(5, 14));
        int hours = 120;
        double[] out = new double[hours];
        double now = invented.between(-15, 12);
        for (int hour = 0; hour < hours; hour++) {
            now += invented.between(-1, 1);
            out[hour] = now;
        }
        int cycle = invented.whole(2, 30);
        HomeKeeper keeper = keeper(load, Series.of(out));
        HeatLoad.Home home = load.home();
        double degC = home.setDegC();
        boolean on = false;
        double dumbHeatedH = 0;
        double dumbLowest = degC;
        double heatedH = 0;
        for (int step = 0; step < hours * STEPS; step++) {
            boolean live = step / STEPS / cycle % 2 == 0;
            keeper.step(step / STEPS, step % (24 * STEPS), (double) step / STEPS, 0, false);
            double left = 1.0 / STEPS;
            while (left > 1e-12) {
                double span = Math.min(left, keeper.untilSwitchH(left, live));
                heatedH += live && keeper.motor() ? span : 0;
                assertThat(keeper.plugW()).isEqualTo(keeper.motor() ? 90 : 4);
                keeper.pass(span, live);
                left -= span;
            }
            for (int tick = 0; tick < 1 / TICK_H / STEPS; tick++) {
                if (live) {
                    on = on ? degC < home.setDegC() + home.bandK() / 2 : degC <= home.setDegC() - home.bandK() / 2;
                }
                double target = out[step / STEPS] + HeatLoad.Home.GAIN_K + (live && on ? home.liftK() : 0);
                degC += (target - degC) / home.tauHours() * TICK_H;
                dumbHeatedH += live && on ? TICK_H : 0;
                dumbLowest = Math.min(dumbLowest, degC);
            }
            // Where both heat or both do not they agree; a thermostat a tick late is off by no more than its band.
            assertThat(keeper.kept())
                    .as("seed %d, step %d, %s", seed, step, load)
                    .isCloseTo(degC, within(home.bandK() + 0.05));
        }
        assertThat(heatedH)
                .as("seed %d, %s", seed, load)
                .isCloseTo(dumbHeatedH, within(0.02 * dumbHeatedH + home.bandK() * home.tauHours() / home.liftK()));
        double limitDegC = load.limit().limitDegC();
        if (Math.abs(dumbLowest - limitDegC) > 0.05) {
            assertThat(keeper.broken())
                    .as("seed %d, lowest %.2f, %s", seed, dumbLowest, load)
                    .isEqualTo(dumbLowest < limitDegC ? Ending.ROOM_COLD : null);
        }
        assertThat(keeper.imbalance()).isCloseTo(0, within(1e-7));
    }

    /** Both switching points are met exactly, and nothing beyond them. */
    @Test
    void holdsItsTemperatureOnTheGrid() {
        HeatLoad load = heat(new HeatLoad.Home(40, 50, 20, 1), 10);
        GridLife life = GridLife.of(
                one -> new HomeKeeper(load, Series.constant(ModelYear.HOURS, -5), one, STEPS), ModelYear.HOURS, STEPS);
        HomeKeeper keeper = new HomeKeeper(load, Series.constant(ModelYear.HOURS, -5), life, STEPS);
        keeper.onto(new Stretch(24 * 10, 24, 24));
        double lowest = 99;
        double highest = -99;
        for (int hour = 0; hour < 48; hour++) {
            keeper.begin(hour);
            lowest = Math.min(lowest, keeper.kept());
            highest = Math.max(highest, keeper.kept());
        }
        assertThat(lowest).isGreaterThanOrEqualTo(19.5 - 1e-9);
        assertThat(highest).isLessThanOrEqualTo(20.5 + 1e-9);
        assertThat(highest - lowest).as("it moves in its band").isGreaterThan(0.5);
        keeper.begin(0);
        double heatedH = 0;
        for (int step = 0; step < 48 * STEPS; step++) {
            keeper.step(step / STEPS, step % 96, step / 4.0, 0, true);
            double left = 0.25;
            while (left > 1e-12) {
                double span = Math.min(left, keeper.untilSwitchH(left, true));
                heatedH += keeper.motor() ? span : 0;
                keeper.pass(span, true);
                left -= span;
            }
        }
        // 22 K of 40 K are wanted.
        assertThat(heatedH).isCloseTo(48 * 22 / 40.0, within(50 * 1 / 40.0));
    }

    /** After one time constant 63.2 % of the way to the outdoor temperature and its gain is gone. */
    @Test
    void coolsWithItsTimeConstant() {
        HomeKeeper keeper = keeper(heat(new HeatLoad.Home(40, 30, 20, 1), 5), Series.constant(200, -13));
        for (int step = 0; step < 30 * STEPS; step++) {
            step(keeper, step, false);
        }
        assertThat(keeper.kept()).isCloseTo(-10 + 30 * StrictMath.exp(-1), within(1e-9));
    }

    /** From 20 degC toward -10 with 30 h: at 5 degC after 30 ln 2 h. */
    @Test
    void theLimitIsJudged() {
        HomeKeeper keeper = keeper(heat(new HeatLoad.Home(40, 30, 20, 1), 5), Series.constant(200, -13));
        int step = 0;
        while (keeper.broken() == null) {
            step(keeper, step++, false);
        }
        assertThat(keeper.broken()).isEqualTo(Ending.ROOM_COLD);
        assertThat((double) step / STEPS).isCloseTo(30 * StrictMath.log(2), within(0.25));
        assertThat(keeper.uneasy()).isTrue();
        for (int warm = 0; warm < 100; warm++) {
            step(keeper, step++, true);
        }
        assertThat(keeper.uneasy()).isFalse();
        assertThat(keeper.broken()).as("warm again is not unbroken").isEqualTo(Ending.ROOM_COLD);
    }
}
