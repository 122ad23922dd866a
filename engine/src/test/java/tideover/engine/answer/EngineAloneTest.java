package tideover.engine.answer;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalLong;
import org.junit.jupiter.api.Test;
import tideover.engine.Invented;
import tideover.engine.load.ColdLoad;
import tideover.engine.load.DayWindow;
import tideover.engine.load.Load;
import tideover.engine.load.Medical;
import tideover.engine.load.Nature;
import tideover.engine.load.Need;
import tideover.engine.load.Start;
import tideover.engine.load.SteadyLoad;
import tideover.engine.load.Supply;
import tideover.engine.load.TimedLoad;
import tideover.engine.outage.Outage;
import tideover.engine.outage.Tending;
import tideover.engine.part.Engine;
import tideover.engine.part.Fuel;
import tideover.engine.part.Inverter;
import tideover.engine.part.InverterRating;
import tideover.engine.part.Outlet;
import tideover.engine.part.Part;
import tideover.engine.part.Surge;
import tideover.engine.search.Grammar;
import tideover.engine.site.RoomKind;
import tideover.engine.site.WeatherSource;
import tideover.engine.why.Stated;
import tideover.engine.wiring.Allowances;
import tideover.engine.wiring.Laying;

/** An engine without a battery: 1000 W, .28, .45 and .72 L/h, a tank of 2.6 L; and an idling truck. */
class EngineAloneTest {
    private static final Options OPTIONS = new Options(1, 1, 1, 4, 2);
    private static final DayWindow EVENING = new DayWindow(18, 23);

    private static Engine engine(Surge surge, Stated startsItself) {
        return new Engine(
                Invented.listing("E", 20_000, 14),
                false,
                1000,
                surge,
                List.of(new Outlet(Invented.MAINS, 2, 1000, 1)),
                new Fuel(Fuel.Kind.PETROL, 2.6, 105, 6),
                new Engine.Burn(.28, .45, .72),
                new Engine.Habits(58, 60, startsItself, 100, 1800));
    }

    private static Engine engine() {
        return engine(Surge.UNKNOWN, Stated.NO);
    }

    private static Engine truck() {
        return new Engine(
                Invented.listing("V", 0, 1),
                true,
                240,
                Surge.UNKNOWN,
                List.of(new Outlet(Invented.SOCKET, 2, 240, 1)),
                new Fuel(Fuel.Kind.PETROL, 40, 105, 6),
                Engine.Burn.atIdle(1.2),
                Engine.Habits.UNKNOWN);
    }

    private static Inverter inverter(double inputV) {
        return new Inverter(
                Invented.listing("I", 4_400, 1),
                new InverterRating(300, .9, 6, inputV),
                List.of(new Outlet(Invented.MAINS, 1, 300, 1)));
    }

    private static Load lamp(double watts) {
        return new TimedLoad("lamp", Invented.MAINS, watts, true, List.of(EVENING), RoomKind.INDOORS);
    }

    private static Load always(double watts, Nature nature) {
        return new SteadyLoad("pump", Invented.MAINS, watts, true, new Need.AlwaysOn(), RoomKind.INDOORS, nature);
    }

    private static EngineAlone judged(List<Load> loads, int hours, double storedL, Part... parts) {
        Question question = new Question(
                "test",
                "",
                Invented.PLACE,
                new WeatherSource.Imported(new Invented(3).weather(1)),
                -12,
                Invented.MOUNT,
                false,
                RoomKind.SHED,
                false,
                loads,
                new Outage(List.of(0), hours, .9, 1, 0, 1).with(new Tending(Tending.USUAL.engineHours(), storedL)),
                OptionalLong.empty(),
                "USD",
                new Allowances(0, 0, 0),
                new Grammar(1, 1),
                List.of(parts),
                List.of(),
                Laying.ASSUMED,
                List.of(),
                List.of(),
                List.of());
        return Advisor.enginesAlone(question, OPTIONS, Progress.SILENT);
    }

    private static Way only(EngineAlone judged) {
        assertThat(judged.refused()).isEmpty();
        assertThat(judged.ways()).hasSize(1);
        return judged.ways().get(0);
    }

    /**
     * 100 W for fifteen hours of three days, a tenth of its rating: .28 + .17 / 5 = .314 L/h, 4.71 L, 4.95 at 1.05 a litre; 1.5 kWh. As
     * much fuel bought anew twice a year and a service of 18: 27.89.
     */
    @Test
    void anEveningsLampAsWorkedByHand() {
        Way way = only(judged(List.of(lamp(100)), 72, 20, engine()));
        assertThat(way.kind()).isEqualTo(Way.Kind.ENGINE_ALONE);
        assertThat(way.share()).isEqualTo(1);
        assertThat(way.meets()).isTrue();
        assertThat(way.price().totalCents()).isEqualTo(20_495);
        Way.Figures figures = way.figures();
        assertThat(figures.fuelL()).isCloseTo(4.71, within(1e-9));
        assertThat(figures.centsPerUsableKWh()).isCloseTo(20_495 / 1.5, within(1e-6));
        assertThat(figures.standbyCentsPerYear()).isCloseTo(2 * 4.71 * 105 + 1800, within(1e-6));
        assertThat(figures.gapSeconds()).isEqualTo(360);
        assertThat(figures.noiseDbA()).isEqualTo(58);
        assertThat(figures.fumes()).isTrue();
        assertThat(figures.acts()).containsExactly(Way.Act.START_ENGINE, Way.Act.PLUG_OVER, Way.Act.REFUEL);
    }

    /** 500 W are half of its rating: .45 L/h, 32.4 L in three days. */
    @Test
    void fuelHasToLast() {
        List<Load> loads = List.of(always(500, Nature.PLAIN));
        assertThat(judged(loads, 72, 29.7, engine()).refused()).containsOnlyKeys("engine-fuel");
        assertThat(only(judged(loads, 72, 29.8, engine())).meets()).isTrue();
    }

    /**
     * A tank without cans lasts 8.28 h. Of 36 h from 10:00 to 19:00 at the latest, nine or ten are in the evenings; from the other fourteen
     * hours of the day on, eight or fewer.
     */
    @Test
    void fuelThatLastsFromSomeHoursOnlyIsNoAnswer() {
        Way way = only(judged(List.of(lamp(100)), 36, 0, engine()));
        assertThat(way.share()).isCloseTo(14 / 24.0, within(1e-9));
        assertThat(way.meets()).isFalse();
    }

    @Test
    void outletsWattsAndStartsAreJudged() {
        Nature motor = new Nature(1, new Start(1200, .6, .5, false, ""), false, false);
        assertThat(judged(List.of(always(100, motor)), 24, 20, engine()).refused())
                .containsKey("start-surge");
        assertThat(only(judged(List.of(always(100, motor)), 24, 20, engine(new Surge(1300, 5), Stated.NO)))
                        .meets())
                .isTrue();
        assertThat(judged(List.of(always(1100, Nature.PLAIN)), 12, 20, engine()).refused())
                .containsKeys("inverter-load", "outlet-load");
        Load european = new SteadyLoad(
                "pump", Supply.ac(120, 50, "NEMA 5-15"), 10, true, new Need.AlwaysOn(), RoomKind.INDOORS);
        assertThat(judged(List.of(european), 24, 20, engine()).refused()).containsKey("no-outlet");
        Load direct = new SteadyLoad("radio", Invented.SOCKET, 10, true, new Need.AlwaysOn(), RoomKind.INDOORS);
        assertThat(judged(List.of(direct), 24, 20, engine()).refused()).containsKey("no-outlet");
    }

    /** Somebody takes five minutes to plug over and the engine one to bear load; to be filled it cools for fifteen. */
    @Test
    void whatHealthHangsOnWaitsNoLongerThanThePersonCan() {
        assertThat(medical(359, true, 12, Stated.NO).refused()).containsOnlyKeys("medical-gap");
        assertThat(only(medical(360, true, 8, Stated.NO)).meets()).isTrue();
        assertThat(medical(360, true, 12, Stated.NO).refused()).containsOnlyKeys("medical-gap");
        assertThat(only(medical(900, true, 12, Stated.NO)).meets()).isTrue();
        assertThat(medical(900, false, 8, Stated.NO).refused()).containsKeys("medical-nobody", "medical-engine");
        Way itself = only(medical(60, true, 8, Stated.YES));
        assertThat(itself.figures().gapSeconds()).isEqualTo(60);
        assertThat(itself.figures().acts()).isEmpty();
        assertThat(medical(59, true, 8, Stated.YES).refused()).containsOnlyKeys("medical-gap");
    }

    private static EngineAlone medical(double bridgeSeconds, boolean able, int hours, Stated startsItself) {
        Nature nature = Nature.PLAIN.with(new Medical(bridgeSeconds, "beeps", "a neighbour", able, "the clinic"));
        return judged(List.of(always(60, nature)), hours, 20, engine(Surge.UNKNOWN, startsItself));
    }

    /** 190 W through an inverter of nine tenths and 6 W are 217 W of 240 W; 215 W would be 245 W. */
    @Test
    void aTruckIdlesThroughAnInverter() {
        Way way = only(judged(List.of(lamp(190)), 72, 0, truck(), inverter(12)));
        assertThat(way.kind()).isEqualTo(Way.Kind.VEHICLE);
        assertThat(way.meets()).isTrue();
        assertThat(way.figures().fuelL()).isCloseTo(15 * 1.2, within(1e-9));
        assertThat(way.figures().standbyCentsPerYear()).isZero();
        assertThat(way.figures().noiseDbA()).isNaN();
        assertThat(way.price().totalCents()).isEqualTo(4_400 + 1_890);
        assertThat(judged(List.of(lamp(215)), 72, 0, truck(), inverter(12)).refused())
                .containsOnlyKeys("store-current");
        assertThat(judged(List.of(lamp(190)), 72, 0, truck(), inverter(24)).refused())
                .containsKey("bus-voltage");
    }

    @Test
    void whatKillsIsSaid() {
        EngineAlone trucks = judged(List.of(lamp(190)), 72, 0, truck(), inverter(12));
        assertThat(trucks.cautions())
                .anyMatch(caution -> caution.contains("never in a garage"))
                .anyMatch(caution -> caution.contains("wall outlet"))
                .anyMatch(caution -> caution.startsWith("A vehicle idles outdoors only"));
        assertThat(judged(List.of(lamp(100)), 72, 20, engine()).cautions())
                .anyMatch(caution -> caution.contains("cold, outdoors"))
                .noneMatch(caution -> caution.startsWith("A vehicle"));
        assertThat(judged(List.of(lamp(100)), 72, 20).cautions()).isEmpty();
    }

    /** What switches itself is walked through the weather, and the engine runs all the time. */
    @Test
    void coldBoxesAreWalked() {
        List<Load> cold = new ArrayList<>();
        for (long seed = 1; cold.isEmpty(); seed++) {
            new Invented(seed)
                    .keptLoads().stream()
                            .filter(load -> load instanceof ColdLoad && load.plugged() && !load.heldBack())
                            .filter(load -> load.supply().isAc())
                            .findFirst()
                            .ifPresent(cold::add);
        }
        Way way = only(judged(cold, 24, 60, engine()));
        assertThat(way.figures().fuelL()).isBetween(24 * .28, 24 * .45);
        assertThat(way.share()).isGreaterThan(.9);
    }
}
