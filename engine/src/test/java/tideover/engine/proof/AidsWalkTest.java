package tideover.engine.proof;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import tideover.engine.Invented;
import tideover.engine.cold.AgencyHours;
import tideover.engine.cold.BoxKind;
import tideover.engine.cold.ColdBox;
import tideover.engine.cold.Contents;
import tideover.engine.cold.Food;
import tideover.engine.load.ColdLoad;
import tideover.engine.load.Duty;
import tideover.engine.load.Load;
import tideover.engine.load.Nature;
import tideover.engine.load.Need;
import tideover.engine.load.SteadyLoad;
import tideover.engine.outage.Outage;
import tideover.engine.part.Cooler;
import tideover.engine.part.Jug;
import tideover.engine.part.StandIn;
import tideover.engine.quantity.ModelYear;
import tideover.engine.quantity.Series;
import tideover.engine.quantity.Workers;
import tideover.engine.rig.Aids;
import tideover.engine.rig.Chosen;
import tideover.engine.rig.Rig;
import tideover.engine.site.RoomKind;
import tideover.engine.site.Weather;

/** What jugs, coolers and stand-ins do in a walk, by itself and beside a rig. */
class AidsWalkTest {
    private static final double ROOM_DEG_C = 20;

    private static Prover prover() {
        double[] air = new double[ModelYear.HOURS];
        Arrays.fill(air, ROOM_DEG_C);
        double[] none = new double[ModelYear.HOURS];
        Weather weather = new Weather(1, Series.of(none), Series.of(none), Series.of(air), "made for a test");
        PlaneWeather dark = new PlaneWeather(Series.of(none), Series.of(air), 0);
        return new Prover(weather, dark, weather.airDegC(), 12, 4, 1, Workers.of(1));
    }

    private static Outage outage(int hours) {
        return new Outage(List.of(0), hours, 0.9, 1, 0, 1);
    }

    private static ColdLoad cold(BoxKind kind, double litres, double wallWPerK, double foodKg, Need need) {
        ColdBox box = ColdBox.ofWalls(
                kind,
                litres,
                wallWPerK,
                tideover.engine.cold.Compressor.usual(kind, litres),
                null,
                List.of(Contents.of(Food.LEAN_BEEF, foodKg)));
        return new ColdLoad(
                "Box", Invented.MAINS, box, need, Duty.AS_IT_NEEDS, Double.NaN, RoomKind.OUTDOORS, Nature.PLAIN);
    }

    private static final Need FROZEN = new Need.Below(-1.7);
    private static final Need FRESH = new Need.HoursAbove(AgencyHours.LIMIT_DEG_C, 4);

    /**
     * A cooler of 0.5 W/K in a room of 20 degC, 9 kg of ice from -18 degC: to melt it takes 9 (18 * 2.1 + 334) / 3.6 = 929.5 Wh. No more
     * than 0.5 * 20 W can come in while its air is at 0 degC or above, so that it lasts 92 h at least less what ice and food take from each other:
     * 8 kg of food give 8 * 3.52 * 4 / 3.6 = 31 Wh on their way from 4 to 0 degC. No less than 0.5 * (20 - 4.4) W comes in until the
     * food is too warm, and with it 9 * 4.19 * 4.4 / 3.6 = 46 Wh of melt water: it ends by (929.5 + 46) / 7.8 = 125 h and the 4 h that are allowed.
     */
    @Test
    void iceInACoolerLastsAsReckonedByHand() {
        List<Chosen> aids = List.of(new Chosen(new Cooler(Invented.listing("C", 1, 4), "refrigerator", 45, 0.5, 9), 1));
        List<Load> loads = List.of(cold(BoxKind.REFRIGERATOR, 150, 1, 8, FRESH));
        Trace trace = prover().trace(Rig.nothing(aids), loads, outage(160), 0);
        assertThat(trace.hoursCarried()).isBetween((929.5 - 31) / 10, (929.5 + 46) / 7.8 + 4);
        assertThat(trace.ending()).isEqualTo(Ending.TOO_WARM);
        // what stays in the refrigerator ends with the agencies' hours
        assertThat(prover().trace(Rig.nothing(List.of()), loads, outage(160), 0).hoursCarried())
                .isCloseTo(4, within(0.3));
    }

    /**
     * 30 kg of frozen food and 40 kg of jugs at -18 degC behind 0.6 W/K: until -1.7 degC food takes 30 * 2.09 * 16.3 / 3.6 = 284 Wh, the
     * jugs 40 * 2.1 * 16.3 / 3.6 = 380 Wh more; the air lags a little. Between 0.6 * 38 and 0.6 * 21.7 W come in.
     */
    @Test
    void jugsInAFreezerAddTheirSensibleHeatAndNoMelting() {
        List<Load> loads = List.of(cold(BoxKind.CHEST_FREEZER, 140, 0.6, 30, FROZEN));
        double bare = hours(List.of(), loads);
        double iced = hours(jugs(40), loads);
        assertThat(bare).isBetween(284 / (0.6 * 41), 284 / (0.6 * 21.7) + 3);
        assertThat(iced).isBetween((284 + 380) / (0.6 * 41), (284 + 380) / (0.6 * 21.7) + 3);
        assertThat(iced).isGreaterThan(1.7 * bare);
    }

    private static List<Chosen> jugs(int count) {
        return count == 0 ? List.of() : List.of(new Chosen(new Jug(Invented.listing("J", 1, 1), "Box", 1), count));
    }

    private static double hours(List<Chosen> aids, List<Load> loads) {
        return prover().trace(Rig.nothing(aids), loads, outage(72), 0).hoursCarried();
    }

    @ParameterizedTest
    @ValueSource(doubles = {10, 30, 60})
    void moreJugsAreNeverWorse(double foodKg) {
        List<Load> loads = List.of(cold(BoxKind.UPRIGHT_FREEZER, 180, 0.5, foodKg, FROZEN));
        double before = 0;
        for (int count = 0; count <= 30; count += 5) {
            double now = hours(jugs(count), loads);
            assertThat(now).as("%d jugs beside %s kg", count, foodKg).isGreaterThanOrEqualTo(before);
            before = now;
        }
        assertThat(before).isGreaterThan(hours(List.of(), loads));
    }

    /** Beside a rig a stand-in does what striking the load out of the plan would do, until it is used up. */
    @ParameterizedTest
    @ValueSource(booleans = {true, false})
    void standInIsAsIfTheLoadWereNotThere(boolean bySheet) {
        Invented invented = new Invented(5);
        Rig rig = bySheet ? invented.ratedRig(100, 2, 20) : invented.rig();
        Load lamp = new SteadyLoad("Lamp", Invented.SOCKET, 6, true, new Need.AlwaysOn(), RoomKind.INDOORS);
        Load radio = new SteadyLoad("Radio", Invented.SOCKET, 4, true, new Need.AlwaysOn(), RoomKind.INDOORS);
        StandIn lantern = new StandIn(Invented.listing("L", 1, 1), "Lamp", 60);
        List<Chosen> chosen = new java.util.ArrayList<>(List.of(new Chosen(lantern, 1)));
        chosen.addAll(rig.chosen());
        Rig aided = java.util.Objects.requireNonNull(
                        tideover.engine.rig.Assembly.of(chosen).rig())
                .wired(rig.leads());
        Trace struck = prover().trace(rig, List.of(radio), outage(48), 100);
        assertThat(prover().trace(aided, List.of(lamp, radio), outage(48), 100).steps())
                .isEqualTo(struck.steps());
        assertThat(prover().share(aided, List.of(lamp, radio), outage(48)).share())
                .isEqualTo(prover().share(rig, List.of(radio), outage(48)).share());
        assertThat(prover().share(aided, List.of(lamp, radio), outage(61)).share())
                .isZero();
        assertThat(prover().shareFrom(0.01, aided, List.of(lamp, radio), outage(61)))
                .isEmpty();
    }

    /** One bound for all sets must not be harder than that of any. */
    @Test
    void theEasiestBoundIsNoHarderThanAny() {
        List<Load> loads = List.of(cold(BoxKind.REFRIGERATOR, 150, 1, 8, FRESH));
        List<Chosen> cooled = List.of(new Chosen(new Cooler(Invented.listing("C", 1, 4), "Box", 45, 0.5, 9), 1));
        KeptBound bare = prover().keptBound(loads, outage(48));
        KeptBound moved = prover().keptBound(Aids.served(cooled, loads), outage(48));
        KeptBound easiest = KeptBound.easiest(List.of(bare, moved));
        assertThat(easiest.storeWh()).isEqualTo(Math.max(bare.storeWh(), moved.storeWh()));
        for (int hour = 0; hour < ModelYear.HOURS; hour += 100) {
            assertThat(easiest.needW().at(hour))
                    .isEqualTo(Math.min(bare.needW().at(hour), moved.needW().at(hour)));
        }
    }
}
