package tideover.app.files;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.offset;

import java.util.List;
import java.util.Objects;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import tideover.engine.answer.Question;
import tideover.engine.load.Load;
import tideover.engine.load.LockedRotor;
import tideover.engine.load.Nature;
import tideover.engine.load.Start;
import tideover.engine.why.Basis;
import tideover.engine.why.MarginNote;

/** A load's power factor, start, wave and attendance: what is read, what is assumed and said so, what is refused. */
class NatureReaderTest {
    private static final String LAMPS = "draws: 8 W";
    private static final String PUMP = "draws: 200 W\n    power factor: 0.8";

    private static Question read(String loadKeys) {
        return Sample.read(Sample.PLAN.replace(LAMPS, loadKeys));
    }

    private static Nature nature(String loadKeys) {
        return read(loadKeys).loads().get(1).nature();
    }

    private static Start start(String block) {
        return Objects.requireNonNull(nature(PUMP + "\n    start: " + block).start());
    }

    private static List<String> problems(String loadKeys) {
        return Sample.problemsWith(LAMPS, loadKeys);
    }

    private static List<String> cautions(String loadKeys) {
        return read(loadKeys).cautions();
    }

    @Test
    void aLoadWithoutAnyOfItIsPlain() {
        assertThat(Sample.read(Sample.PLAN).loads()).extracting(Load::nature).containsOnly(Nature.PLAIN);
    }

    @Test
    void allOfIt() {
        assertThat(nature(PUMP + "\n    wave: sine\n    attended: yes\n    start: {va: 1.2 kVA, lasts: 0.4 s,"
                        + " power factor: 0.5, alone: by a timer}"))
                .isEqualTo(new Nature(0.8, new Start(1200, 0.5, 0.4, false, "by a timer"), true, true));
        assertThat(nature("draws: 8 W\n    wave: any\n    attended: no")).isEqualTo(Nature.PLAIN);
    }

    @Test
    void steadyLoadsHaveItToo() {
        Load scanner = Sample.read(Sample.PLAN.replace("draws: 3 W", "draws: 3 W\n    start: {va: 12 VA}"))
                .loads()
                .get(0);

        assertThat(scanner.nature().start()).isEqualTo(new Start(12, 1, Start.USUAL_SECONDS, false, ""));
    }

    @Test
    void voltAmperesAsTheyStand() {
        assertThat(start("{va: 1200 VA}"))
                .isEqualTo(new Start(1200, Start.USUAL_POWER_FACTOR, Start.USUAL_SECONDS, false, ""));
    }

    /** 800 W at .6 are 1333 VA; 6 times the running 250 VA are more. */
    @Test
    void aLabelsWattsAreALowerBound() {
        Start start = start("{watts: 800 W}");

        assertThat(start.typedVa()).isCloseTo(800 / 0.6, offset(1e-9));
        assertThat(start.lowerBound()).isTrue();
        assertThat(start.va(250)).isEqualTo(1500);
    }

    @Test
    void soIsWhatAPlugMeterSaw() {
        Start start = start("{plug meter: 0.6 kW, power factor: 0.5}");

        assertThat(start.typedVa()).isCloseTo(1200, offset(1e-9));
        assertThat(start.lowerBound()).isTrue();
    }

    @ParameterizedTest
    @CsvSource({"1/4, 0.25", "0.25, 0.25", ".25, 0.25", "1/4 hp, 0.25", "1 1/2, 1.5", "1 1/2 HP, 1.5", "2, 2"})
    void horsepowerAsPeopleWriteIt(String typed, double horsepower) {
        Start start = Objects.requireNonNull(
                nature("draws: 1500 W\n    power factor: 0.8\n    start: {horsepower: " + typed + ", code: l}")
                        .start(),
                "start");

        assertThat(start.typedVa()).isCloseTo(LockedRotor.mostVa("L", horsepower), offset(1e-9));
        assertThat(start.lowerBound()).isFalse();
    }

    @Test
    void whatIsAssumedIsSaidSo() {
        Question question = read(PUMP + "\n    start: {watts: 800 W}");

        assertThat(question.notes())
                .contains(
                        new MarginNote("Lamps: power factor", "0.8", Basis.YOURS, "plan.yaml:22"),
                        new MarginNote("Lamps: watts to start, at least", "800 W", Basis.MAKER, "plan.yaml:23"),
                        new MarginNote("Lamps: power factor of its start", "0.6", Basis.GUESS, PlanFile.DEFAULT),
                        new MarginNote("Lamps: starts within", "0.5 s", Basis.GUESS, PlanFile.DEFAULT),
                        new MarginNote(
                                "Lamps: start reckoned with",
                                "1500 VA",
                                Basis.GUESS,
                                "such watts are a lower bound; at least 6 times the running volt-amperes"));
        assertThat(question.cautions()).isEmpty();
    }

    @Test
    void whatIsTypedIsNotedWithItsLine() {
        Question question = read(PUMP + "\n    wave: sine\n    attended: yes\n    start:\n      plug meter: 800 W\n"
                + "      lasts: 0.3 s\n      power factor: 0.7\n      alone: by a timer");

        assertThat(question.notes())
                .contains(
                        new MarginNote("Lamps: wave it needs", "sine", Basis.YOURS, "plan.yaml:23"),
                        new MarginNote("Lamps: somebody is by", "yes", Basis.YOURS, "plan.yaml:24"),
                        new MarginNote(
                                "Lamps: watts to start that a plug meter saw, at least",
                                "800 W",
                                Basis.MEASURED,
                                "plan.yaml:26"),
                        new MarginNote("Lamps: starts within", "0.3 s", Basis.YOURS, "plan.yaml:27"),
                        new MarginNote("Lamps: power factor of its start", "0.7", Basis.YOURS, "plan.yaml:28"),
                        new MarginNote(
                                "Lamps: never starts with another motor", "by a timer", Basis.YOURS, "plan.yaml:29"));
    }

    @Test
    void aMotorWithoutAPowerFactorIsACaution() {
        Question question = read("draws: 200 W\n    start: {va: 1200 VA}");

        assertThat(question.cautions())
                .containsExactly(
                        "plan.yaml:22 loads[2].start: no \"power factor:\" beside it, so it is taken as 1; motors run"
                                + " at about 0.5 to 0.8, and then take more volt-amperes than the watts say.");
        assertThat(question.notes())
                .contains(new MarginNote("Lamps: power factor", "1", Basis.GUESS, PlanFile.DEFAULT));
    }

    @Test
    void directCurrentHasNoPowerFactor() {
        String dc = "draws: 3 W";

        assertThat(Sample.problemsWith(dc, "draws: 3 W\n    power factor: 0.8"))
                .containsExactly(
                        "plan.yaml:16 loads[1].power factor: found a power factor for direct current, expected no"
                                + " power factor.");
        assertThat(Sample.problemsWith(dc, "draws: 3 W\n    start: {va: 12 VA, power factor: 0.8}"))
                .containsExactly(
                        "plan.yaml:16 loads[1].start.power factor: found a power factor for direct current, expected"
                                + " no power factor.");
        assertThat(Sample.problemsWith(dc, "draws: 3 W\n    wave: sine"))
                .containsExactly("plan.yaml:16 loads[1].wave: found a wave for direct current, expected no wave.");
        assertThat(Sample.problemsWith(dc, "draws: 3 W\n    start: {horsepower: 1/8, code: A}"))
                .containsExactly("plan.yaml:16 loads[1].start.horsepower: found horsepower and code for direct current,"
                        + " expected va, watts or plug meter.");
    }

    @Test
    void exactlyOneWayToSayAStart() {
        String expected = ", expected exactly one of va, watts (a label's), plug meter, or horsepower with code.";

        assertThat(problems(PUMP + "\n    start: {lasts: 1 s}"))
                .containsExactly("plan.yaml:23 loads[2].start: found none of them" + expected);
        assertThat(problems(PUMP + "\n    start: {va: 1200 VA, plug meter: 600 W}"))
                .containsExactly("plan.yaml:23 loads[2].start: found va and plug meter" + expected);
        assertThat(problems(PUMP + "\n    start: {plug metre: 600 W}"))
                .containsExactly(
                        "plan.yaml:23 loads[2].start: found the key \"plug metre\", expected the key \"plug meter\". Write plug"
                                + " meter:");
        assertThat(problems(PUMP + "\n    start: 1200 VA"))
                .containsExactly(
                        "plan.yaml:23 loads[2].start: found \"1200 VA\", expected a block of keys: va, watts, plug"
                                + " meter, horsepower, code, lasts, power factor, alone.");
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "va: 1200 | va: found \"1200\", expected volt-amperes with its unit. Write 1200 VA. Also possible: kVA.",
                "va: 1200 W | va: found \"1200 W\", expected volt-amperes in VA or kVA.",
                "va: -5 VA | va: found \"-5 VA\", expected volt-amperes above 0 VA and at most 500000 VA.",
                "va: 240 VA | va: found \"240 VA\", expected no less than it takes when running, 250 VA.",
                "watts: 150 W | watts: found \"150 W\", expected no less than it takes when running, 200 W.",
                "plug meter: 600 VA | plug meter: found \"600 VA\", expected a power in W or kW.",
                "'va: 1200 VA, lasts: 0.4' | lasts: found \"0.4\", expected a moment with its unit. Write 0.4 s. Also possible: min.",
                "'va: 1200 VA, lasts: 5 min' | lasts: found \"5 min\", expected a moment above 0 s and at most 60 s.",
                "'va: 1200 VA, power factor: 1.2' | power factor: found \"1.2\", expected a power factor from 0.1 to 1.",
                "'va: 1200 VA, alone:  \" \"' | alone: found an empty text, expected by what it is kept from starting with another motor, in a few words.",
                "'va: 1200 VA, code: K' | code: found a code letter without horsepower, expected both, from the motor's plate.",
                "'horsepower: 1/4, code: O' | code: found \"O\", expected the code letter on the motor's plate, A to V without I, O and Q.",
                "'horsepower: 1/4, code: KL' | code: found \"KL\", expected the code letter on the motor's plate, A to V without I, O and Q.",
                "'horsepower: 0/4, code: K' | horsepower: found \"0/4\", expected horsepower, such as 1/4 or 0.5, above 0 and at most 50.",
                "'horsepower: 1/0, code: K' | horsepower: found \"1/0\", expected horsepower, such as 1/4 or 0.5, above 0 and at most 50.",
                "'horsepower: 190 W, code: K' | horsepower: found \"190 W\", expected horsepower, such as 1/4 or 0.5, above 0 and at most 50.",
            })
    void nonsenseInAStart(String keys, String told) {
        assertThat(problems(PUMP + "\n    start: {" + keys + "}"))
                .containsExactly("plan.yaml:23 loads[2].start." + told);
    }

    @Test
    void horsepowerNeedsItsCode() {
        assertThat(problems(PUMP + "\n    start: {horsepower: 1/4}"))
                .containsExactly(
                        "plan.yaml:23 loads[2].start: found no \"code:\", expected the code letter on the motor's"
                                + " plate, A to V.");
    }

    @Test
    void nonsenseBesideAStart() {
        assertThat(problems("draws: 8 W\n    power factor: 0"))
                .containsExactly(
                        "plan.yaml:22 loads[2].power factor: found \"0\", expected a power factor from 0.1 to 1.");
        assertThat(problems("draws: 8 W\n    power factor: 70 %"))
                .containsExactly(
                        "plan.yaml:22 loads[2].power factor: found \"70 %\", expected a power factor, a number. Write"
                                + " the number alone, 70.");
        assertThat(problems("draws: 8 W\n    wave: square"))
                .containsExactly(
                        "plan.yaml:22 loads[2].wave: found \"square\", expected the wave it needs: sine, any.");
        assertThat(problems("draws: 8 W\n    attended: often"))
                .containsExactly(
                        "plan.yaml:22 loads[2].attended: found \"often\", expected whether somebody is by who sees that"
                                + " it stopped and starts it again: yes, no.");
    }

    @Test
    void theUnlikelyIsTakenWithACaution() {
        assertThat(cautions(PUMP + "\n    start: {va: 4000 VA}"))
                .containsExactly(
                        "plan.yaml:23 loads[2].start.va: 4000 VA to start is taken, but is unlikely beside 250 VA"
                                + " running (most start with 5 to 8 times as much).");
        assertThat(cautions(PUMP + "\n    start: {va: 300 VA}"))
                .containsExactly(
                        "plan.yaml:23 loads[2].start.va: 300 VA to start is taken, but only motors of variable speed"
                                + " start so softly beside 250 VA running.");
        assertThat(cautions(PUMP + "\n    start: {va: 1200 VA, lasts: 20 s}"))
                .containsExactly(
                        "plan.yaml:23 loads[2].start.lasts: 20 s is taken, but is unlikely here (most lie within 0.05 s"
                                + " to 5 s).");
        assertThat(cautions("draws: 8 W\n    power factor: 0.2"))
                .containsExactly(
                        "plan.yaml:22 loads[2].power factor: 0.2 is taken, but is unlikely here (most lie within 0.4 to"
                                + " 1).");
    }
}
