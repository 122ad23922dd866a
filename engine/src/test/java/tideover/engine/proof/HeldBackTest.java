package tideover.engine.proof;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
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
import tideover.engine.load.DayWindow;
import tideover.engine.load.Duty;
import tideover.engine.load.Load;
import tideover.engine.load.Nature;
import tideover.engine.load.Need;
import tideover.engine.load.SteadyLoad;
import tideover.engine.outage.Outage;
import tideover.engine.outage.Rolling;
import tideover.engine.outage.Storm;
import tideover.engine.quantity.Series;
import tideover.engine.quantity.Workers;
import tideover.engine.rig.Assembly;
import tideover.engine.rig.Chosen;
import tideover.engine.rig.Rig;
import tideover.engine.site.Room;
import tideover.engine.site.RoomKind;
import tideover.engine.site.Weather;

/** Boxes that wait for the clock, the sun or the grid, and what waits with them. */
class HeldBackTest {
    private static final int STEPS = 4;
    private static final double STANDING_W = 10;

    private final Weather weather = new Invented(11).weather(1);
    private final Prover prover =
            new Prover(weather, Invented.plane(weather), weather.airDegC(), 12, STEPS, 1, Workers.of(2));

    /** A chest freezer of 200 L, full, 80 W. */
    private static ColdLoad freezer(Duty duty, Need need) {
        ColdBox box = ColdBox.ofWalls(
                BoxKind.CHEST_FREEZER,
                200,
                0.7,
                new Compressor(80, 22),
                null,
                List.of(Contents.of(Food.LEAN_BEEF, 100)));
        return new ColdLoad("freezer", Invented.MAINS, box, need, duty, Double.NaN, RoomKind.INDOORS, Nature.PLAIN);
    }

    private static Rig rig(double usableWh, int panels) {
        Invented invented = new Invented(12);
        List<Chosen> chosen = new ArrayList<>(List.of(
                new Chosen(invented.battery("B", usableWh, 30_000), 1),
                new Chosen(invented.inverter("I", STANDING_W, 9_000), 1),
                new Chosen(invented.controller("C", 30, 4_000), 1)));
        if (panels > 0) {
            chosen.add(new Chosen(Invented.panel("P", 150, 8_000), panels));
        }
        return Objects.requireNonNull(Assembly.of(chosen).rig());
    }

    private static boolean inside(TraceStep step, double fromHour, double toHour) {
        double clock = step.weatherHour() % 24 + step.hour() % 1;
        return clock >= fromHour && clock < toHour;
    }

    @Test
    void chosenHoursDrawNothingOutsideThem() {
        ColdLoad load = freezer(Duty.inHours(List.of(new DayWindow(8, 18))), new Need.Below(-1.7));
        Trace trace = prover.trace(rig(6000, 2), List.of(load), new Outage(List.of(5), 96, 0.9, 1, 0, 1), 24 * 160 + 3);
        double insideWh = 0;
        for (TraceStep step : trace.steps()) {
            double plugW = step.kept().get(0).plugW();
            if (inside(step, 8, 18)) {
                insideWh += plugW / STEPS;
            } else {
                assertThat(plugW).as("hour %.2f", step.hour()).isZero();
            }
        }
        // It has four days' heat to move in sixteen hours, and runs nearly all of them.
        assertThat(insideWh).isBetween(0.5 * 16 * 80, 16 * 80 * 1.2);
    }

    @Test
    void whileSunnyDrawsOnlyWithSunEnough() {
        ColdLoad load = freezer(Duty.WHILE_SUNNY, new Need.Below(-1.7));
        Outage outage = new Outage(List.of(5), 120, 0.9, 1, 30, 1);
        Trace trace = prover.trace(rig(6000, 2), List.of(load), outage, 24 * 160 + 3);
        Series roomDegC = Room.degC(RoomKind.INDOORS, weather);
        Compressor compressor = Objects.requireNonNull(load.box().compressor());
        int ran = 0;
        for (TraceStep step : trace.steps()) {
            double plugW = step.kept().get(0).plugW();
            double asksW = compressor.watts(roomDegC.at(step.weatherHour()));
            if (plugW > 0) {
                ran++;
                assertThat(step.panelsOut()).isTrue();
                assertThat(step.arrayW()).as("hour %.2f", step.hour()).isGreaterThanOrEqualTo(asksW / 2 - 1e-9);
            }
        }
        assertThat(ran).isGreaterThan(STEPS);
        assertThat(prover.trace(rig(6000, 0), List.of(load), outage, 24 * 160 + 3)
                        .ledger()
                        .servedEssentialWh())
                .as("without panels it never runs")
                .isZero();
    }

    /** Only what is held back hangs on the inverter: its own draw is booked in those hours and no others. */
    @Test
    void theInverterStandsOffMeanwhile() {
        ColdLoad load = freezer(Duty.inHours(List.of(new DayWindow(8, 18))), new Need.Below(-1.7));
        Outage outage = new Outage(List.of(5), 96, 0.9, 1, 0, 1);
        Rig rig = rig(6000, 2);
        Trace alone = prover.trace(rig, List.of(load), outage, 24 * 160 + 3);
        for (TraceStep step : alone.steps()) {
            assertThat(step.standingW())
                    .as("hour %.2f", step.hour())
                    .isCloseTo(inside(step, 8, 18) ? STANDING_W : 0, within(1e-9));
        }
        Load lamp = new SteadyLoad("lamp", Invented.MAINS, 3, true, new Need.AlwaysOn(), RoomKind.INDOORS);
        Trace both = prover.trace(rig, List.of(load, lamp), outage, 24 * 160 + 3);
        assertThat(both.ending()).isNull();
        assertThat(both.ledger().standingWh()).isCloseTo(96 * STANDING_W, within(1e-6));
        Trace asItNeeds = prover.trace(rig, List.of(load.with(Duty.AS_IT_NEEDS)), outage, 24 * 160 + 3);
        assertThat(asItNeeds.ending()).isNull();
        assertThat(asItNeeds.ledger().standingWh()).isCloseTo(96 * STANDING_W, within(1e-6));
    }

    /** Cold ahead of a storm is there in storm starts and in no others. */
    @Test
    void chilledAheadCountsInStormsAlone() {
        ColdLoad load = freezer(Duty.AS_IT_NEEDS, new Need.Below(-12));
        ColdLoad chilled = load.chilledTo(-26);
        Rig rig = rig(60, 0);
        Outage outage = new Outage(List.of(6), 18, 0.9, 1, 0, 1);
        Outage stormy = new Outage(List.of(6), 18, 0.9, 1, 0, 1, null, List.of(), new Storm(0, true));
        assertThat(prover.share(rig, List.of(chilled), outage)).isEqualTo(prover.share(rig, List.of(load), outage));
        double plain = prover.stormShare(rig, List.of(load), stormy).share();
        double ahead = prover.stormShare(rig, List.of(chilled), stormy).share();
        assertThat(plain).isLessThan(0.5);
        assertThat(ahead).isGreaterThan(0.9);
    }

    /** What is nice to have lives on sun that the store has no room for, boxes and pumps beside it or not. */
    @ParameterizedTest
    @ValueSource(longs = {801, 802, 803, 804, 805, 806})
    void niceLoadsTakeNothingFromEssentials(long seed) {
        Invented invented = new Invented(seed);
        Weather years = invented.weather(1);
        Prover own = new Prover(years, Invented.plane(years), years.airDegC(), 12, STEPS, 1, Workers.of(2));
        Rig rig = invented.chance(0.5)
                ? invented.rig()
                : invented.ratedRig(invented.between(30, 200), invented.whole(0, 3), invented.between(4, 30));
        List<Load> all = new ArrayList<>(invented.keptLoads());
        all.addAll(invented.loads(true, true));
        List<Load> essential = all.stream().filter(Load::essential).toList();
        Outage outage = new Outage(List.of(invented.whole(0, 11)), invented.whole(12, 72), 0.9, 1, 2, 1);
        assertThat(own.share(rig, all, outage))
                .as("seed %d, %s", seed, all)
                .isEqualTo(own.share(rig, essential, outage));
    }

    /** Four hours without the grid, eight with it: the grid runs the box and the rig need not. */
    @Test
    void theRollingGridPowersBoxes() {
        ColdLoad load = freezer(Duty.inHours(List.of(new DayWindow(2, 2.25))), new Need.Below(-12));
        Rig rig = rig(30, 0);
        int hours = 10 * 24;
        Rolling pieces = new Rolling(4, 8);
        Outage rolling = new Outage(List.of(5), hours, 0.9, 1, 0, 1, pieces, List.of());
        Trace trace = prover.trace(rig, List.of(load), rolling, 24 * 160);
        assertThat(trace.ending()).isNull();
        double onGridWh = 0;
        for (TraceStep step : trace.steps()) {
            if (pieces.gridOn(step.hour())) {
                onGridWh += step.kept().get(0).plugW() / STEPS;
            }
        }
        assertThat(onGridWh).isGreaterThan(hours * 80 * 0.1);
        assertThat(trace.ledger().gridServedWh()).isCloseTo(onGridWh, within(1e-6));
        Trace whole = prover.trace(rig, List.of(load), new Outage(List.of(5), hours, 0.9, 1, 0, 1), 24 * 160);
        assertThat(whole.ending()).isEqualTo(Ending.TOO_WARM);
        assertThat(whole.hoursCarried()).isLessThan(48);
    }
}
