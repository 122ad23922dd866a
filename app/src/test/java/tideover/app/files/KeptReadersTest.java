package tideover.app.files;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatNoException;
import static org.assertj.core.api.Assertions.offset;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import tideover.engine.answer.Question;
import tideover.engine.load.ColdLoad;
import tideover.engine.load.HeatLoad;
import tideover.engine.load.Load;
import tideover.engine.load.Medical;
import tideover.engine.load.Nature;
import tideover.engine.load.Need;
import tideover.engine.load.PitLoad;
import tideover.engine.load.Supply;
import tideover.engine.site.RoomKind;
import tideover.engine.why.Basis;
import tideover.engine.why.MarginNote;

/** Sump pumps, heated homes, and what is arranged around medical loads: records, assumptions, refusals. */
class KeptReadersTest {
    private static final Supply WALL = Supply.ac(120, 60, "NEMA 5-15");
    private static final String ALWAYS = "need: always on";

    @Test
    void aSumpPump() {
        assertThat(Kept.only(Kept.PUMP))
                .isEqualTo(new PitLoad(
                        "Sump",
                        WALL,
                        400,
                        new PitLoad.Pit(30, 90),
                        new PitLoad.Inflow(20, 900, 8, 30),
                        6000,
                        RoomKind.INDOORS,
                        Nature.PLAIN));
        assertThat(Kept.read(Kept.PUMP).cautions()).isEmpty();
    }

    @Test
    void aPumpAndItsPitInOtherUnits() {
        PitLoad load = (PitLoad) Kept.only(Kept.PUMP
                .replace("6000 L/h", "1600 gal/h")
                .replace(Kept.PIT, "pit: {runs at: 8 gal, brim: 24 gal}")
                .replace(Kept.INFLOW, "inflow: {usual: 0 L/h}"));

        assertThat(load.pumpedLPerH()).isCloseTo(6056.659, offset(1e-3));
        assertThat(load.pit().onL()).isCloseTo(30.283, offset(1e-3));
        assertThat(load.pit().brimL()).isCloseTo(90.850, offset(1e-3));
        assertThat(load.inflow()).isEqualTo(new PitLoad.Inflow(0, 0, 0, 1));
        assertThat(load.inflow().swells()).isFalse();
    }

    /** 45 cm across are 1.590 L for each centimetre. */
    @Test
    void aPitByItsHeights() {
        PitLoad load =
                (PitLoad) Kept.only(Kept.PUMP.replace(Kept.PIT, "pit: {across: 45 cm, runs at: 20 cm, brim: 0.55 m}"));

        assertThat(load.pit().onL()).isCloseTo(31.809, offset(1e-3));
        assertThat(load.pit().brimL()).isCloseTo(87.474, offset(1e-3));
    }

    @Test
    void waterMayBeARange() {
        String load = Kept.PUMP
                .replace("usual: 20 L/h", "usual: 15-25 L/h")
                .replace("draws: 400 W", "draws: 400 W\n    from: meter");

        assertThat(((PitLoad) Kept.only(load)).inflow().usualLPerH()).isEqualTo(20);
        assertThat(Kept.spreads(load))
                .containsExactly(
                        new Spread("Sump", Spread.Figure.DRAWS, 0.97, 1.03, Spread.Known.METER),
                        new Spread("Sump", Spread.Figure.INFLOW, 0.75, 1.25, Spread.Known.GUESS));
        assertThat(Kept.spreads(load.replace("900 L/h", "450-1350 L/h")))
                .contains(new Spread("Sump", Spread.Figure.INFLOW, 0.5, 1.5, Spread.Known.GUESS));
    }

    @Test
    void aPumpMayBeAUsualOne() {
        PitLoad load = (PitLoad) Kept.only(Kept.PUMP.replace("draws: 400 W", "like: sump pump, 1/3 hp"));

        assertThat(load.runningW()).isGreaterThan(300);
        assertThat(load.nature().start()).isNotNull();
        assertThat(Kept.spreads(Kept.PUMP.replace("draws: 400 W", "like: sump pump, 1/3 hp"))
                        .get(0))
                .satisfies(spread -> {
                    assertThat(spread.figure()).isEqualTo(Spread.Figure.DRAWS);
                    assertThat(spread.leastTimes()).isLessThan(1);
                    assertThat(spread.mostTimes()).isGreaterThan(1);
                });
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "usual: 20 L/h | usual: 7000 L/h | 19 loads[1].inflow.usual: found \"7000 L/h\", expected less than the pump lifts, 6000 L/h. Such a pit runs over with power as without.",
                "usual: 20 L/h | usual: 20-6000 L/h | 19 loads[1].inflow.usual: found \"20-6000 L/h\", expected less than the pump lifts, 6000 L/h. Such a pit runs over with power as without.",
                "usual: 20 L/h | usual: -20 L/h | 19 loads[1].inflow.usual: found \"-20 L/h\", expected a flow from 0 L/h to 1000000 L/h.",
                "usual: 20 L/h | usual: 20 L | 19 loads[1].inflow.usual: found \"20 L\", expected a flow in L/h or L/min or gal/h or gal/min.",
                "storm peak: 900 | storm peak: 9 | 19 loads[1].inflow.storm peak: found \"9 L/h\", expected no less than usual, 20 L/h.",
                "', ebbs within: 30 h' | '' | 19 loads[1].inflow: found no \"ebbs within:\", expected a time, such as 72 h.",
                "brim: 90 L | brim: 30 L | 18 loads[1].pit.brim: found \"30 L\", expected more than the 30 L at which the float switches on. Both count from where the float switches off.",
                "brim: 90 L | brim: 90 cm | 18 loads[1].pit.brim: found \"90 cm\", expected a volume in L or gal or ft3.",
                "runs at: 30 L | runs at: 0 L | 18 loads[1].pit.runs at: found \"0 L\", expected a volume above 0 L and at most 1000000 L.",
                "pumps: 6000 L/h | pumps: 0 L/h | 17 loads[1].pumps: found \"0 L/h\", expected a flow above 0 L/h and at most 1000000 L/h.",
                "pumps: 6000 L/h | pumps: 6000 | 17 loads[1].pumps: found \"6000\", expected a flow with its unit. Write 6000 L/h. Also possible: L/min, gal/h, gal/min.",
            })
    void nonsenseInAPit(String from, String to, String told) {
        assertThat(Kept.problems(Kept.PUMP, from, to)).containsExactly("plan.yaml:" + told);
    }

    @Test
    void aStormsHoursWithoutAPeak() {
        assertThat(Kept.problems(Kept.PUMP, "storm peak: 900 L/h, ", ""))
                .containsExactly(
                        "plan.yaml:19 loads[1].inflow.peak after: found \"8 h\" without a storm's peak, expected \"storm"
                                + " peak:\" beside it.",
                        "plan.yaml:19 loads[1].inflow.ebbs within: found \"30 h\" without a storm's peak, expected \"storm"
                                + " peak:\" beside it.");
    }

    @Test
    void aPeakThatThePumpCannotLiftIsACaution() {
        assertThat(Kept.read(Kept.PUMP.replace("900 L/h", "6500 L/h")).cautions())
                .containsExactly(
                        "plan.yaml:19 loads[1].inflow.storm peak: 6500 L/h is more than the pump lifts, 6000 L/h: while it lasts"
                                + " the pit fills with power as without.");
    }

    /** 19 degC inside on a day of -26 degC, 3 K of that from people, sun and cooking. */
    @Test
    void aHeatedHome() {
        assertThat(Kept.only(Kept.BOILER + "    senses flame: yes\n"))
                .isEqualTo(new HeatLoad(
                        "Boiler",
                        WALL,
                        80,
                        4,
                        new HeatLoad.Home(42, 40, 19, 1),
                        new Need.Above(12),
                        RoomKind.INDOORS,
                        Nature.PLAIN.wired(false, true)));
    }

    @Test
    void whatAHomeLeavesOutIsAssumedAndSaidSo() {
        Question question =
                Kept.read(Kept.BOILER.replace("    standby: 4 W\n", "").replace(", cools with: 40 h", ""));
        HeatLoad load = (HeatLoad) question.loads().get(0);

        assertThat(load.standbyW()).isEqualTo(5);
        assertThat(load.home().tauHours()).isEqualTo(48);
        assertThat(question.notes())
                .contains(
                        new MarginNote("Boiler: standby", "5 W", Basis.GUESS, PlanFile.DEFAULT),
                        new MarginNote("Boiler: home cools with", "48 h", Basis.COMMON_PRACTICE, PlanFile.DEFAULT));
        assertThat(question.cautions()).isEmpty();
    }

    @Test
    void howSlowlyAHomeCoolsMayBeARange() {
        String load = Kept.BOILER.replace("cools with: 40 h", "cools with: 30-50 h");

        assertThat(((HeatLoad) Kept.only(load)).home().tauHours()).isEqualTo(40);
        assertThat(Kept.spreads(load))
                .contains(new Spread("Boiler", Spread.Figure.WALLS, 40.0 / 50, 40.0 / 30, Spread.Known.GUESS));
        assertThat(Kept.spreads(Kept.BOILER))
                .contains(new Spread("Boiler", Spread.Figure.WALLS, 0.6, 1.5, Spread.Known.GUESS));
    }

    /** However wide a range or odd a home: what may be off by so much is still such a thing. */
    @Test
    void noRangeLeavesWhatThereCanBe() {
        String usual = "usual: 20 L/h";
        for (String load : List.of(
                Kept.PUMP.replace(usual, "usual: 0-20 L/h").replace("400 W", "1-2000 W"),
                Kept.PUMP.replace(usual, "usual: 0-5999 L/h").replace("storm peak: 900", "storm peak: 5000"),
                Kept.BOILER.replace("40 h", "500 h"),
                Kept.BOILER.replace("40 h", "1 h"),
                Kept.BOILER.replace("40 h", "1-500 h"),
                Kept.BOILER.replace("-26 degC", "11 degC"),
                Kept.BOILER.replace("-26 degC", "-80 degC").replace("19 degC", "23 degC"),
                Kept.FREEZER.replace("60 kg", "0.001-190 kg"),
                Kept.COOLER.replace("50 L", "1 L").replace("5 kg", "1 g").replace("10 kg", "1 g"))) {
            Question question = Kept.read(load);
            Load one = question.loads().get(0);

            assertThat(question.doubts()).hasSameSizeAs(Kept.spreads(load)).isNotEmpty();
            for (Spread spread : Kept.spreads(load)) {
                assertThat(spread.leastTimes()).as(load).isPositive().isLessThanOrEqualTo(1);
                assertThat(spread.mostTimes()).as(load).isBetween(1.0, 20.0);
                assertThatNoException().as(load).isThrownBy(() -> {
                    changed(one, spread.figure(), spread.leastTimes());
                    changed(one, spread.figure(), spread.mostTimes());
                });
            }
        }
    }

    private static Load changed(Load load, Spread.Figure figure, double times) {
        if (figure == Spread.Figure.DRAWS) {
            return load.drawing(times);
        }
        if (load instanceof PitLoad pit) {
            return pit.with(pit.inflow().times(times));
        }
        if (load instanceof HeatLoad heat) {
            return heat.with(heat.home().leakier(times));
        }
        ColdLoad cold = (ColdLoad) load;
        return cold.with(
                figure == Spread.Figure.FOOD
                        ? cold.box().withFoodTimes(times)
                        : cold.box().withWallsTimes(times));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "above: 12 degC | above: 20 degC | 19 loads[1].need.above: found \"20 degC\", expected below 18.5 degC, where the thermostat switches the heat on.",
                "above: 12 degC | above: 12 | 19 loads[1].need.above: found \"12\", expected a temperature with its unit. Write 12 degC. Also possible: degF, K.",
                "{above: 12 degC} | always on | 19 loads[1].need: found \"always on\", expected a temperature to stay above, such as {above: 12 degC}.",
                "-26 degC | 18 degC | 18 loads[1].home.just holds at: found \"18 degC\", expected an outdoor temperature from -84 degC to 11 degC. It is the coldest day on which the heat, never stopping, just keeps the home at 19 degC.",
                "'just holds at: -26 degC, ' | '' | 18 loads[1].home: found no \"just holds at:\", expected a temperature, such as -5 degC.",
                "cools with: 40 h | cools with: 0 h | 18 loads[1].home.cools with: found \"0 h\", expected a time from 1 h to 500 h.",
                "set to: 19 degC | set to: 66 degC | 18 loads[1].home.set to: found \"66 degC\", expected a temperature from 5 degC to 30 degC.",
                "standby: 4 W | standby: 90 W | 16 loads[1].standby: found \"90 W\", expected no more than it draws, 80 W.",
            })
    void nonsenseInAHome(String from, String to, String told) {
        assertThat(Kept.problems(Kept.BOILER, from, to)).containsExactly("plan.yaml:" + told);
    }

    @Test
    void whatIsKeptIsAlwaysEssential() {
        for (String load : List.of(Kept.PUMP, Kept.BOILER, Kept.FREEZER)) {
            assertThat(Kept.only(load).essential()).isTrue();
            assertThat(Kept.problems(load + "    essential: no\n"))
                    .singleElement()
                    .asString()
                    .endsWith(
                            "loads[1].essential: found \"no\" for what keeps a temperature or a level, expected no such"
                                    + " line: such a load is always essential. Leave it out; what is not needed is left unplugged.");
        }
    }

    @Test
    void keysOfAnotherKindAreRefused() {
        assertThat(Kept.problems(Kept.PUMP + "    need: always on\n"))
                .containsExactly(
                        "plan.yaml:20 loads[1]: found the key \"need\", expected one of the keys name, runs, like, draws, from,"
                                + " pumps, pit, inflow, supply, essential, room, power factor, start, wave, attended, hard-wired,"
                                + " senses flame, medical.");
        assertThat(Sample.problemsWith(ALWAYS, ALWAYS + "\n    pit: {runs at: 30 L, brim: 90 L}"))
                .singleElement()
                .asString()
                .startsWith("plan.yaml:19 loads[1]: found the key \"pit\", expected one of the keys name,");
    }

    /** Nothing is told of keys that a kind would need while the kind is not known. */
    @Test
    void aKindThatIsNotKnownIsAllThatIsToldOfIt() {
        assertThat(Kept.problems(Kept.PUMP.replace("    runs: sump pump\n", "").replace("400 W", "-4 W")))
                .containsExactly(
                        "plan.yaml:13 loads[1]: found no \"runs:\", expected how it runs: steady, at set hours, cold box, sump"
                                + " pump, heating.",
                        "plan.yaml:14 loads[1].draws: found \"-4 W\", expected a power above 0 W and at most 100000 W.");
    }

    @Test
    void plainLoadsHaveRangesToo() {
        String load = """
                  - name: Radio
                    runs: steady
                    draws: 3-6 W
                    from: label
                    supply: 12 V DC, car socket
                    essential: yes
                    need: always on
                """;

        assertThat(Kept.only(load).runningW()).isEqualTo(4.5);
        assertThat(Kept.spreads(load).get(0).leastTimes()).isCloseTo(2.0 / 3, offset(1e-12));
        assertThat(Kept.spreads(load.replace("3-6 W", "3 W")))
                .containsExactly(new Spread("Radio", Spread.Figure.DRAWS, 0.6, 1.05, Spread.Known.LABEL));
        assertThat(Kept.spreads(load.replace("3-6 W", "3 W").replace("    from: label\n", "")))
                .containsExactly(new Spread("Radio", Spread.Figure.DRAWS, 0.6, 1.5, Spread.Known.GUESS));
    }

    private static Question medical(String block) {
        return Sample.read(Sample.PLAN.replace(ALWAYS, ALWAYS + "\n    medical: " + block));
    }

    @Test
    void whatIsArrangedAroundAMedicalLoad() {
        Question question = medical(
                "{can be without: 30 s, alarm: its own, who acts: her son, able: yes, second plan: two bottles}");

        assertThat(question.loads().get(0).nature().medical())
                .isEqualTo(new Medical(30, "its own", "her son", true, "two bottles"));
        assertThat(question.loads().get(1).nature().medical()).isNull();
        assertThat(question.notes())
                .contains(new MarginNote("Scanner: medical, alarm", "its own", Basis.YOURS, "plan.yaml:19"));
        assertThat(question.cautions()).isEmpty();
    }

    @Test
    void whatIsNotArrangedIsNotAssumed() {
        Question question = medical("{alarm: its own}");

        assertThat(question.loads().get(0).nature().medical()).isEqualTo(new Medical(0, "its own", "", false, ""));
        assertThat(question.notes())
                .contains(
                        new MarginNote("Scanner: medical, can be without", "0 s", Basis.GUESS, "not said in the plan"),
                        new MarginNote("Scanner: medical, able", "no", Basis.GUESS, "not said in the plan"),
                        new MarginNote("Scanner: medical, second plan", "none", Basis.GUESS, "not said in the plan"));
        assertThat(question.cautions())
                .containsExactly(
                        "plan.yaml:19 loads[1].medical: somebody's health hangs on it, and the plan does not say: can be without,"
                                + " who acts, able, second plan. What is not said counts as not arranged. Settle it with the care"
                                + " team and the device's maker before relying on any rig.");
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "{can be without: 30} | .can be without: found \"30\", expected a time with its unit. Write 30 s. Also possible: min, h, d.",
                "{can be without: -1 s} | .can be without: found \"-1 s\", expected a time from 0 s to 5184000 s.",
                "{able: may be} | .able: found \"may be\", expected whether that person is always there and able to act: yes, no.",
                "{alarm: [a]} | .alarm: found a list, expected what tells that it has stopped, in a few words.",
                "yes | : found \"yes\", expected a block of keys: can be without, alarm, who acts, able, second plan.",
            })
    void nonsenseInWhatIsArranged(String block, String told) {
        assertThat(Sample.problemsWith(ALWAYS, ALWAYS + "\n    medical: " + block))
                .containsExactly("plan.yaml:19 loads[1].medical" + told);
    }

    @Test
    void whatHealthHangsOnIsEssential() {
        assertThat(Sample.problemsWith(
                        "essential: no", "essential: no\n    medical: {can be without: 1 h, alarm: a bell}"))
                .containsExactly(
                        "plan.yaml:23 loads[2].essential: found \"no\" for what somebody's health hangs on, expected essential:"
                                + " yes. Or remove \"medical:\".");
    }
}
