package tideover.engine.proof;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.List;
import java.util.Objects;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import tideover.engine.Invented;
import tideover.engine.battery.Chemistry;
import tideover.engine.cold.BoxKind;
import tideover.engine.cold.ColdBox;
import tideover.engine.cold.Contents;
import tideover.engine.cold.Food;
import tideover.engine.electronics.InverterLoss;
import tideover.engine.electronics.Wave;
import tideover.engine.load.ColdLoad;
import tideover.engine.load.Duty;
import tideover.engine.load.Nature;
import tideover.engine.load.Need;
import tideover.engine.outage.Outage;
import tideover.engine.part.Battery;
import tideover.engine.part.Inverter;
import tideover.engine.part.InverterRating;
import tideover.engine.part.Outlet;
import tideover.engine.part.RatedStore;
import tideover.engine.part.Surge;
import tideover.engine.quantity.ModelYear;
import tideover.engine.quantity.Series;
import tideover.engine.quantity.Workers;
import tideover.engine.rig.Assembly;
import tideover.engine.rig.Chosen;
import tideover.engine.rig.Rig;
import tideover.engine.site.RoomKind;
import tideover.engine.site.Weather;
import tideover.engine.why.Stated;

/**
 * "100 Ah of lead carries a chest freezer for two days", put to the models twice: by the watt-hours at the plug, and by the
 * food; docs/models.md tells the outcome.
 */
class FreezerClaimsTest {
    private static final int HOURS_ASKED = 72;
    private static final double HOURS_OF_FIRST_DAY = 24;
    private static final int STEPS_PER_HOUR = 4;
    private static final double STEP_H = 1.0 / STEPS_PER_HOUR;

    /** So close below the freezing point counts as at it. */
    private static final double HAIR_K = 0.05;

    private static final double LITRES = 198;
    private static final double LABEL_KWH = 198;
    private static final double FOOD_KG = 50;

    /** AGM lead, 100 Ah over 20 h, full, to half depth: 600 Wh in round figures; an inverter of 90 % that draws 5 W itself. */
    private static final double HALF_OF_IT_WH = 100 * 12 * 0.5;

    private static final double INVERTER = 0.9;
    private static final double STANDING_W = 5;

    private static Rig rig() {
        RatedStore store = new RatedStore(
                Chemistry.AGM_LEAD,
                RatedStore.Capacity.of(100, 20),
                12,
                0.005,
                20,
                100,
                new RatedStore.Guard(Surge.UNKNOWN, 10.5, Stated.UNKNOWN),
                RatedStore.Heater.NONE,
                0.5,
                new RatedStore.Worth(1, 1),
                29);
        InverterRating inverter = new InverterRating(
                500,
                InverterLoss.constant(INVERTER, STANDING_W),
                12,
                new Surge(1200, 3),
                new InverterRating.Window(10.5, Double.NaN, Double.NaN),
                Wave.SINE,
                InverterRating.Habits.UNKNOWN);
        return Objects.requireNonNull(Assembly.of(List.of(
                        new Chosen(new Battery(Invented.listing("B", 1, 29), store, 1), 1),
                        new Chosen(
                                new Inverter(
                                        Invented.listing("I", 1, 1),
                                        inverter,
                                        List.of(new Outlet(Invented.MAINS, 2, 500, 1))),
                                1)))
                .rig());
    }

    private static ColdLoad freezer() {
        ColdBox box = ColdBox.ofLabel(
                BoxKind.CHEST_FREEZER, LITRES, LABEL_KWH, null, null, List.of(Contents.of(Food.LEAN_BEEF, FOOD_KG)));
        return new ColdLoad(
                "freezer",
                Invented.MAINS,
                box,
                new Need.Below(Food.LEAN_BEEF.freezingDegC()),
                Duty.AS_IT_NEEDS,
                Double.NaN,
                RoomKind.OUTDOORS,
                Nature.PLAIN);
    }

    private static Trace walk(double roomDegC) {
        double[] air = new double[ModelYear.HOURS];
        Arrays.fill(air, roomDegC);
        double[] none = new double[ModelYear.HOURS];
        Weather weather = new Weather(1, Series.of(none), Series.of(none), Series.of(air), "made for a test");
        PlaneWeather dark = new PlaneWeather(Series.of(none), Series.of(air), 0);
        Outage outage = new Outage(List.of(0), HOURS_ASKED, 0.9, 1, 0, 1);
        Trace trace = new Prover(weather, dark, weather.airDegC(), 12, STEPS_PER_HOUR, 1, Workers.of(1))
                .trace(rig(), List.of(freezer()), outage, 0);
        assertThat(TraceChecker.faults(trace, rig())).isEmpty();
        return trace;
    }

    /** Until its compressor ran for the last time, the battery at half depth. */
    private static double hoursServed(Trace trace) {
        return trace.steps().stream()
                .filter(step -> step.essentialServedW() > 0)
                .mapToDouble(step -> step.hour() + STEP_H)
                .max()
                .orElseThrow();
    }

    private static double hoursUntilAbove(Trace trace, double degC) {
        return trace.steps().stream()
                .filter(step -> step.kept().get(0).kept() > degC)
                .findFirst()
                .orElseThrow()
                .hour();
    }

    /**
     * By the plug it is about one day, in a hot garage less: the sum with round figures and the walk agree within two hours.
     * By the food it is two days and some hours in a mild room, and not in a hot garage; and colder than -12 degC,
     * where food keeps its quality, for a day and a half at best.
     */
    @ParameterizedTest
    @CsvSource({
        "21, 349, 28.3, 30.25, 37.25, 57.00",
        "35, 483, 21.9, 20.00, 25.25, 38.25",
    })
    void twoDaysOfAFreezer(
            double roomDegC, double whPerDay, double plugSumH, double poweredH, double colderH, double frozenH) {
        Trace trace = walk(roomDegC);
        double servedWhPerDay = trace.steps().stream()
                        .filter(step -> step.hour() < HOURS_OF_FIRST_DAY)
                        .mapToDouble(TraceStep::essentialServedW)
                        .sum()
                / STEPS_PER_HOUR;
        assertThat(servedWhPerDay).isCloseTo(whPerDay, within(0.5));
        assertThat(HALF_OF_IT_WH / (servedWhPerDay / HOURS_OF_FIRST_DAY / INVERTER + STANDING_W))
                .isCloseTo(plugSumH, within(0.05))
                .isCloseTo(poweredH, within(2.0));
        assertThat(hoursServed(trace)).isCloseTo(poweredH, within(STEP_H));
        assertThat(hoursUntilAbove(trace, -12)).isCloseTo(colderH, within(STEP_H));
        assertThat(hoursUntilAbove(trace, Food.LEAN_BEEF.freezingDegC() - HAIR_K))
                .isCloseTo(frozenH, within(STEP_H));
    }

    /** The program's word comes sooner where the agencies' hours end before thawing begins: 24 h dark of a half-full freezer. */
    @ParameterizedTest
    @CsvSource({"21, AGENCY_HOURS, 54.0", "35, THAWED, 38.5"})
    void theAgenciesHoursAreNotLengthened(double roomDegC, Ending ending, double hours) {
        Trace trace = walk(roomDegC);
        assertThat(trace.ending()).isEqualTo(ending);
        assertThat(trace.hoursCarried()).isCloseTo(hours, within(STEP_H));
    }
}
