package tideover.engine.proof;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import tideover.engine.Invented;
import tideover.engine.cold.AgencyHours;
import tideover.engine.cold.BoxKind;
import tideover.engine.cold.ColdBox;
import tideover.engine.cold.Compressor;
import tideover.engine.cold.Contents;
import tideover.engine.cold.Defrost;
import tideover.engine.cold.DumbColdBox;
import tideover.engine.cold.Food;
import tideover.engine.load.ColdLoad;
import tideover.engine.load.DayWindow;
import tideover.engine.load.Duty;
import tideover.engine.load.Nature;
import tideover.engine.load.Need;
import tideover.engine.quantity.ModelYear;
import tideover.engine.quantity.Series;
import tideover.engine.site.RoomKind;

/** A cold box as the walk follows it, in steps of a quarter of an hour, against the plain simulator and its own rules. */
class ColdKeeperTest {
    private static final int STEPS = 4;
    private static final double STEP_H = 1.0 / STEPS;

    /** On, off and on again for a day each. */
    private static final int HOURS = 72;

    private static boolean live(int hour) {
        return hour < 24 || hour >= 48;
    }

    /** Warm and cool by turns, another temperature each hour. */
    private static Series room(Invented invented, int hours) {
        double[] degC = new double[hours];
        for (int hour = 0; hour < hours; hour++) {
            degC[hour] = 20 + 5 * StrictMath.sin(2 * Math.PI * (hour - 9) / 24) + invented.between(-2, 2);
        }
        return Series.owning(degC);
    }

    private static ColdKeeper keeper(ColdLoad load, Series room) {
        ColdKeeper keeper = new ColdKeeper(load, room, null, STEPS, false);
        keeper.onto(new Stretch(0, 24, room.length() - 24));
        keeper.begin(0);
        return keeper;
    }

    /** Watt-hours of a step. */
    private static double step(Keeper keeper, int step, boolean live, boolean gridOn) {
        keeper.step(step / STEPS, step % (24 * STEPS), step * STEP_H, 0, gridOn);
        double usedWh = 0;
        double left = STEP_H;
        while (left > 0) {
            double span = Math.min(left, keeper.untilSwitchH(left, live));
            usedWh += live ? keeper.plugW() * span : 0;
            keeper.pass(span, live);
            left -= span;
        }
        return usedWh;
    }

    private static int pass(Keeper keeper, int fromHour, int hours, boolean live) {
        for (int step = fromHour * STEPS; step < (fromHour + hours) * STEPS; step++) {
            step(keeper, step, live, false);
        }
        return fromHour + hours;
    }

    private static ColdLoad load(ColdBox box, Need need) {
        return new ColdLoad(
                "box", Invented.MAINS, box, need, Duty.AS_IT_NEEDS, Double.NaN, RoomKind.INDOORS, Nature.PLAIN);
    }

    private static ColdLoad drawn(long seed) {
        Invented invented = new Invented(seed);
        return invented.coldLoad("box", Invented.MAINS, RoomKind.INDOORS, BoxKind.values()[(int) (seed % 4)])
                .with(Duty.AS_IT_NEEDS);
    }

    /** The plain box heats when its hours are round, the keeper when they are anew. */
    private static DumbColdBox plain(ColdBox box) {
        Defrost defrost = box.defrost();
        return new DumbColdBox(box, box.setDegC(), box.setDegC(), 1)
                .defrostClockAt(defrost == null ? 0 : defrost.everyHours());
    }

    /**
     * How far apart the two ways to follow a box are.
     *
     * @param foodK    at the worst moment
     * @param dayK     food on the mean of the worst day
     * @param useShare of all days
     */
    private record Apart(double foodK, double dayK, double useShare) {
        static Apart of(ColdLoad load, ColdBox changed, Series room) {
            ColdKeeper keeper = keeper(load, room);
            DumbColdBox plain = plain(changed);
            double usedWh = 0;
            double worstK = 0;
            double worstDayK = 0;
            double ofDayK = 0;
            for (int step = 0; step < HOURS * STEPS; step++) {
                int hour = step / STEPS;
                usedWh += step(keeper, step, live(hour), true);
                plain.run(STEP_H, room.at(hour), live(hour));
                double apartK = keeper.kept() - plain.foodDegC();
                worstK = Math.max(worstK, Math.abs(apartK));
                ofDayK += apartK / 24 / STEPS;
                if ((step + 1) % (24 * STEPS) == 0) {
                    worstDayK = Math.max(worstDayK, Math.abs(ofDayK));
                    ofDayK = 0;
                }
            }
            return new Apart(worstK, worstDayK, Math.abs(usedWh / plain.usedWh() - 1));
        }
    }

    /**
     * A few switchings on, the two are at other points of a run or a pause: that is all that keeps the food apart, and a spell
     * without power keeps what it found.
     */
    @ParameterizedTest
    @ValueSource(longs = {501, 502, 503, 504, 505, 506, 507, 508})
    void followsThePlainBox(long seed) {
        ColdLoad load = drawn(seed);
        Apart apart = Apart.of(load, load.box(), room(new Invented(seed), HOURS));
        assertThat(apart.useShare()).as("%s", load).isLessThan(.01);
        assertThat(apart.dayK()).as("%s", load).isLessThan(.25);
        assertThat(apart.foodK()).as("%s", load).isLessThan(load.box().bandK() / 10);
    }

    /**
     * Where nothing switches, a dark day and the way back, they are together at every step: most within .04 K. A quarter of an
     * hour is a coarse step for what follows the air fast.
     */
    @ParameterizedTest
    @ValueSource(longs = {501, 502, 503, 504, 505, 506, 507, 508})
    void followsThePlainBoxThroughTheDarkAndBack(long seed) {
        ColdLoad load = drawn(seed);
        Series room = room(new Invented(seed), HOURS);
        ColdKeeper keeper = keeper(load, room);
        DumbColdBox plain = plain(load.box());
        for (int step = 0; step < HOURS * STEPS && plain.switchedOff() == 0; step++) {
            int hour = step / STEPS;
            step(keeper, step, hour >= 24, true);
            plain.run(STEP_H, room.at(hour), hour >= 24);
            assertThat(keeper.kept()).as("hour %d %s", hour, load).isCloseTo(plain.foodDegC(), within(.12));
        }
        assertThat(plain.usedWh()).isPositive();
    }

    @ParameterizedTest
    @ValueSource(longs = {501, 502, 503, 504, 505, 506, 507, 508})
    void wallsThreeInAHundredWorseAreCaught(long seed) {
        ColdLoad load = drawn(seed);
        Apart apart = Apart.of(load, load.box().withWallsTimes(1.03), room(new Invented(seed), HOURS));
        assertThat(apart.useShare()).as("%s", load).isGreaterThan(.01);
    }

    private static ColdBox freezer(double wallWPerK) {
        return ColdBox.ofWalls(
                BoxKind.CHEST_FREEZER,
                200,
                wallWPerK,
                new Compressor(90, 22),
                null,
                List.of(Contents.of(Food.LEAN_BEEF, 100)));
    }

    /** After a dark day it runs until the air is at the thermostat's lower point, not a moment less. */
    @Test
    void recoveryRunsFlatOut() {
        ColdBox box = freezer(.8);
        ColdKeeper keeper = keeper(load(box, new Need.Below(-1.7)), Series.constant(400, 22));
        int hour = pass(keeper, 0, 24, true);
        hour = pass(keeper, hour, 24, false);
        double runningW = new Compressor(90, 22).watts(22);
        double offDegC = box.setDegC() - box.bandK() / 2;
        double hours = 0;
        int step = hour * STEPS;
        double left = 0;
        while (true) {
            if (left <= 0) {
                keeper.step(step / STEPS, step % (24 * STEPS), step * STEP_H, 0, false);
                step++;
                left = STEP_H;
            }
            double span = Math.min(left, keeper.untilSwitchH(left, true));
            if (keeper.plugW() == 0) {
                break;
            }
            assertThat(keeper.plugW()).isEqualTo(runningW);
            keeper.pass(span, true);
            hours += span;
            left -= span;
            assertThat(hours).isLessThan(300);
        }
        assertThat(hours).isGreaterThan(4);
        assertThat(keeper.air()).isCloseTo(offDegC, within(1e-6));
    }

    /** Where its life on the grid says it is, it would have come to from its setting in a year, and comes to from hour to hour. */
    @ParameterizedTest
    @CsvSource({"511, CHEST_FREEZER", "512, REFRIGERATOR"})
    void lifeOnTheGridIsARunFromAYearAgo(long seed, BoxKind kind) {
        Invented invented = new Invented(seed);
        ColdLoad load =
                invented.coldLoad("box", Invented.MAINS, RoomKind.INDOORS, kind).with(Duty.AS_IT_NEEDS);
        Series room = room(invented, ModelYear.HOURS);
        GridLife life = GridLife.of(lived -> new ColdKeeper(load, room, lived, STEPS, false), room.length(), STEPS);
        int start = 24 * 100;
        ColdKeeper lives = new ColdKeeper(load, room, life, STEPS, false);
        lives.onto(new Stretch(start, 24, 240));

        ColdKeeper yearAgo = new ColdKeeper(load, room, null, STEPS, false);
        yearAgo.onto(new Stretch(start, ModelYear.HOURS, 240));
        yearAgo.begin(0);
        for (int hour = 0; hour < ModelYear.HOURS; hour++) {
            grid(yearAgo, hour);
        }
        lives.begin(0);
        assertThat(yearAgo.kept()).isCloseTo(lives.kept(), within(.1));

        for (int hour = 0; hour < 50; hour++) {
            grid(lives, hour);
        }
        ColdKeeper later = new ColdKeeper(load, room, life, STEPS, false);
        later.onto(new Stretch(start, 24, 240));
        later.begin(50);
        assertThat(later.kept()).isEqualTo(lives.kept());
        assertThat(later.air()).isEqualTo(lives.air());
    }

    private static void grid(Keeper keeper, int hour) {
        for (int i = 0; i < STEPS; i++) {
            GridLife.powered(keeper, hour, hour % 24 * STEPS + i, STEP_H);
        }
    }

    /** So well kept that only the agencies' hours can end it: two dark spells count as one unless it was cold between. */
    @Test
    void aFreezersHoursCountAnewOnceItIsCold() {
        ColdLoad load = load(freezer(.25), new Need.Below(-1.7));
        assertThat(load.agencyHours()).isEqualTo(AgencyHours.FULL_FREEZER_H);

        ColdKeeper hardly = keeper(load, Series.constant(400, 22));
        int hour = pass(hardly, 0, 40, false);
        hour = pass(hardly, hour, 1, true);
        assertThat(hardly.kept())
                .isGreaterThan(load.box().setDegC() + load.box().bandK() / 2);
        hour = pass(hardly, hour, 8, false);
        assertThat(hardly.broken()).isNull();
        pass(hardly, hour, 1, false);
        assertThat(hardly.broken()).isEqualTo(Ending.AGENCY_HOURS);

        ColdKeeper cold = keeper(load, Series.constant(400, 22));
        hour = pass(cold, 0, 40, false);
        hour = pass(cold, hour, 60, true);
        assertThat(cold.kept()).isLessThan(load.box().setDegC() + load.box().bandK() / 2);
        hour = pass(cold, hour, 48, false);
        assertThat(cold.broken()).isNull();
        pass(cold, hour, 1, false);
        assertThat(cold.broken()).isEqualTo(Ending.AGENCY_HOURS);
    }

    /** However cold a refrigerator became in between, its dark hours add up. */
    @Test
    void aRefrigeratorsHoursNeverCountAnew() {
        ColdBox box = ColdBox.ofWalls(
                BoxKind.REFRIGERATOR, 300, .1, new Compressor(90, 22), null, List.of(Contents.of(Food.WATER, 40)));
        ColdKeeper keeper =
                keeper(load(box, new Need.HoursAbove(AgencyHours.LIMIT_DEG_C, 4)), Series.constant(200, 22));
        int hour = pass(keeper, 0, 3, false);
        hour = pass(keeper, hour, 48, true);
        hour = pass(keeper, hour, 1, false);
        assertThat(keeper.broken()).isNull();
        pass(keeper, hour, 1, false);
        assertThat(keeper.kept()).isLessThan(AgencyHours.LIMIT_DEG_C);
        assertThat(keeper.broken()).isEqualTo(Ending.AGENCY_HOURS);
    }

    /** In an outage it draws in its own hours alone; on the grid nobody holds it back. */
    @Test
    void dutyHoursAreKept() {
        ColdLoad load = load(freezer(.8), new Need.Below(-1.7)).with(Duty.inHours(List.of(new DayWindow(9, 15))));
        ColdKeeper held = keeper(load, Series.constant(200, 22));
        ColdKeeper free = keeper(load, Series.constant(200, 22));
        double insideWh = 0;
        double freeOutsideWh = 0;
        for (int step = 0; step < 96 * STEPS; step++) {
            double hourOfDay = step * STEP_H % 24;
            double wh = step(held, step, true, false);
            double freeWh = step(free, step, true, true);
            if (hourOfDay >= 9 && hourOfDay < 15) {
                insideWh += wh;
            } else {
                assertThat(wh).isZero();
                freeOutsideWh += freeWh;
            }
        }
        assertThat(insideWh).isPositive();
        assertThat(freeOutsideWh).isPositive();
    }

    /** By the sun: half of what it draws is enough, a hair less is not. */
    @Test
    void byTheSunItWaitsForHalfItsDraw() {
        ColdLoad load = load(freezer(.8), new Need.Below(-1.7)).with(Duty.WHILE_SUNNY);
        ColdKeeper keeper = keeper(load, Series.constant(48, 22));
        keeper.step(0, 0, 0, 45, false);
        assertThat(keeper.allowed()).isTrue();
        keeper.step(0, 0, 0, 44.9, false);
        assertThat(keeper.allowed()).isFalse();
        keeper.step(0, 0, 0, 0, true);
        assertThat(keeper.allowed()).isTrue();
    }

    @Test
    void onlyAStormFindsItChilled() {
        ColdLoad load = load(freezer(.8), new Need.Below(-1.7)).chilledTo(-24);
        for (boolean storm : new boolean[] {false, true}) {
            ColdKeeper keeper = new ColdKeeper(load, Series.constant(48, 22), null, STEPS, storm);
            keeper.onto(new Stretch(0, 24, 24));
            keeper.begin(0);
            double degC = storm ? -24 : load.box().setDegC();
            assertThat(keeper.kept()).isCloseTo(degC, within(1e-9));
            assertThat(keeper.air()).isEqualTo(degC);
        }
    }
}
