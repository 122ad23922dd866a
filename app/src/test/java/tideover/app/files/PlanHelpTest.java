package tideover.app.files;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.offset;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import tideover.engine.answer.Question;
import tideover.engine.load.DayWindow;
import tideover.engine.outage.Help;
import tideover.engine.outage.Outage;
import tideover.engine.outage.Rolling;
import tideover.engine.outage.Storm;
import tideover.engine.quantity.Series;
import tideover.engine.sun.PanelMount;
import tideover.engine.why.Basis;
import tideover.engine.why.MarginNote;

/** A grid that comes and goes, help that is brought, shade on the panels, and who sleeps beside the battery. */
class PlanHelpTest {
    private static final String CARRIED = "carried: 95 %";
    private static final String TILT = "tilt: 60 deg";

    private static List<String> helpProblems(String list) {
        return Sample.problemsIn(Sample.PLAN + "help: " + list + "\n");
    }

    private static List<String> shadeProblems(String list) {
        return Sample.problemsWith(TILT, TILT + "\n  shade: " + list);
    }

    private static Question with(String from, String to) {
        return Sample.read(Sample.PLAN.replace(from, to));
    }

    @Test
    void withoutAnyOfItTheGridStaysAway() {
        Question question = Sample.read(Sample.PLAN);

        assertThat(question.outage().rolling()).isNull();
        assertThat(question.outage().help()).isEmpty();
        assertThat(question.mount().shadeByHour()).isSameAs(PanelMount.NO_SHADE);
    }

    @Test
    void theGridMayComeAndGo() {
        Question question = with(CARRIED, CARRIED + "\n  rolling: {off: 4 h, on: 2 h}");

        assertThat(question.outage())
                .isEqualTo(new Outage(List.of(0, 10, 11), 72, 0.95, 0.85, 3, 1, new Rolling(4, 2), List.of()));
        assertThat(question.notes())
                .contains(new MarginNote("Grid comes and goes", "4 h without, 2 h with", Basis.YOURS, "plan.yaml:9"));
        assertThat(question.cautions()).isEmpty();
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "{off: 4 h} | : found no \"on:\", expected a time, such as 72 h.",
                "{off: 0 h, on: 2 h} | .off: found \"0 h\", expected a time from 1 h to 1440 h.",
                "{off: 4 h, on: 90 min} | .on: found \"90 min\", expected whole hours. Write 2 h.",
                "{off: 4 h, on: 2} | .on: found \"2\", expected a time with its unit. Write 2 h. Also possible: min, s, d.",
                "daily | : found \"daily\", expected a block of keys: off, on."
            })
    void nonsenseInRolling(String typed, String told) {
        assertThat(Sample.problemsWith(CARRIED, CARRIED + "\n  rolling: " + typed))
                .containsExactly("plan.yaml:9 outage.rolling" + told);
    }

    @Test
    void aGridThatComesBackTooLateIsACaution() {
        assertThat(with(CARRIED, CARRIED + "\n  rolling: {off: 72 h, on: 2 h}").cautions())
                .containsExactly(
                        "plan.yaml:9 outage.rolling.off: 72 h is taken, but is unlikely here (most lie within 1 h to 48 h).",
                        "plan.yaml:9 outage.rolling: the grid comes back only after the outage is over; it never helps.");
    }

    /** The later of both hours counts. */
    @Test
    void aStormKeepsThePanelsIn() {
        Question question = with(
                CARRIED, CARRIED + "\n  storm: {panels stowed until: 12 h, snow cleared after: 1 d, forecast: yes}");

        assertThat(question.outage().storm()).isEqualTo(new Storm(24, true));
        assertThat(question.notes())
                .contains(
                        new MarginNote("Storm: panels are stowed until", "12 h", Basis.YOURS, "plan.yaml:9"),
                        new MarginNote("Storm: snow is cleared after", "1 d", Basis.YOURS, "plan.yaml:9"),
                        new MarginNote("Storm is known a day ahead", "yes", Basis.YOURS, "plan.yaml:9"));
        assertThat(question.cautions()).isEmpty();
    }

    @Test
    void whatAStormIsNotSaidToDoItDoesNot() {
        Question question = with(CARRIED, CARRIED + "\n  storm: {panels stowed until: 12 h}");

        assertThat(question.outage().storm()).isEqualTo(new Storm(12, false));
        assertThat(question.notes())
                .contains(
                        new MarginNote(
                                "Storm: snow is cleared after",
                                "no longer than without a storm",
                                Basis.GUESS,
                                PlanFile.DEFAULT),
                        new MarginNote("Storm is known a day ahead", "no", Basis.GUESS, PlanFile.DEFAULT));
        assertThat(Sample.read(Sample.PLAN).outage().storm()).isNull();
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "{panels stowed until: -2 h} | .panels stowed until: found \"-2 h\", expected a time from 0 h to 1440 h.",
                "{snow cleared after: 90 min} | .snow cleared after: found \"90 min\", expected whole hours. Write 2 h.",
                "{forecast: perhaps} | .forecast: found \"perhaps\", expected whether a storm is known a day ahead: yes, no.",
                "heavy | : found \"heavy\", expected a block of keys: panels stowed until, snow cleared after, forecast."
            })
    void nonsenseInAStorm(String typed, String told) {
        assertThat(Sample.problemsWith(CARRIED, CARRIED + "\n  storm: " + typed))
                .containsExactly("plan.yaml:9 outage.storm" + told);
    }

    @Test
    void aStormThatOutlastsTheOutageIsACaution() {
        assertThat(with(CARRIED, CARRIED + "\n  storm: {snow cleared after: 72 h}")
                        .cautions())
                .containsExactly(
                        "plan.yaml:9 outage.storm: in a storm the panels are out only after the outage is over; they never help"
                                + " then.");
    }

    @Test
    void anEngineAndABatteryMayHelp() {
        Question question = Sample.read(Sample.PLAN + """
                help:
                  - engine: {hours: [08:00-10:00, 20:00-21:00], gives: 1 kW}
                  - battery: {after: 1 d, brings: 0.5 kWh, at most: 100 W}
                  - battery: {after: 48 h, brings: 500 Wh, at most: 100 W}
                """);

        assertThat(question.outage().help())
                .containsExactly(
                        new Help.Engine(List.of(new DayWindow(8, 10), new DayWindow(20, 21)), 1000),
                        new Help.Handover(24, 500, 100),
                        new Help.Handover(48, 500, 100));
        assertThat(question.notes())
                .contains(
                        new MarginNote("Engine runs", "08:00-10:00, 20:00-21:00", Basis.YOURS, "plan.yaml:33"),
                        new MarginNote("Engine gives", "1 kW", Basis.YOURS, "plan.yaml:33"),
                        new MarginNote("Battery that is brought gives", "0.5 kWh", Basis.YOURS, "plan.yaml:34"));
        assertThat(question.cautions()).isEmpty();
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "[{}] | [1]: found neither of them, expected exactly one of engine, battery.",
                "[{engine: {hours: 08:00-10:00, gives: 1 kW}, battery: {after: 1 h, brings: 500 Wh, at most: 9 W}}] | [1]: found engine and battery, expected exactly one of engine, battery.",
                "[{engin: {}}] | [1]: found the key \"engin\", expected the key \"engine\". Write engine:",
                "[{engine: {hours: 08:00-10:00}}] | [1].engine: found no \"gives:\", expected a power, such as 120 W.",
                "[{engine: {gives: 1 kW}}] | [1].engine: found no \"hours:\", expected stretches of the day, such as [06:30-08:00, 17:00-23:00].",
                "[{engine: {hours: [8-10], gives: 1 kW}}] | [1].engine.hours[1]: found \"8-10\", expected a stretch of the day, such as 18:00-23:00. The whole day is 00:00-24:00.",
                "[{engine: {hours: [08:00-10:00], gives: -1 W}}] | [1].engine.gives: found \"-1 W\", expected a power above 0 W and at most 100000 W.",
                "[{engine: {hours: [08:00-10:00, 09:00-11:00], gives: 1 kW}}] | [1].engine.hours[2]: found \"09:00-11:00\", expected stretches that do not overlap. It overlaps 08:00-10:00.",
                "[{battery: {brings: 500 Wh, at most: 9 W}}] | [1].battery: found no \"after:\", expected a time, such as 72 h.",
                "[{battery: {after: 1 h, brings: 500 W, at most: 9 W}}] | [1].battery.brings: found \"500 W\", expected an energy in Wh or kWh or kJ or MJ.",
                "[{battery: {after: 1 h, brings: 500 Wh}}] | [1].battery: found no \"at most:\", expected a power, such as 120 W.",
                "[{battery: {after: 1 h, brings: 0 Wh, at most: 9 W}}] | [1].battery.brings: found \"0 Wh\", expected an energy above 0 Wh and at most 1000000 Wh.",
                "[{battery: {after: 30 min, brings: 500 Wh, at most: 9 W}}] | [1].battery.after: found \"30 min\", expected whole hours. Write 1 h.",
                "[] | : found an empty list, expected a list of help, each an engine or a battery that is brought.",
                "an engine | : found \"an engine\", expected a block of keys: engine, battery.",
            })
    void nonsenseInHelp(String list, String told) {
        assertThat(helpProblems(list)).containsExactly("plan.yaml:32 help" + told);
    }

    @Test
    void oneEngineWithAllItsHours() {
        String engine = "\n  - engine: {hours: [08:00-10:00], gives: 1 kW}";

        assertThat(helpProblems(engine + engine))
                .containsExactly(
                        "plan.yaml:34 help[2]: found a second engine, expected one engine with all its hours. The first"
                                + " stands in line 33.");
    }

    @Test
    void helpThatIsUnlikelyIsTakenWithACaution() {
        assertThat(Sample.read(Sample.PLAN + "help: [{battery: {after: 72 h, brings: 50 kWh, at most: 9 kW}},"
                                + " {engine: {hours: 08:00-10:00, gives: 50 W}}]\n")
                        .cautions())
                .containsExactly(
                        "plan.yaml:32 help[1].battery.brings: 50 kWh is taken, but is unlikely here (most lie within 20 Wh to 5000"
                                + " Wh).",
                        "plan.yaml:32 help[1].battery.at most: 9 kW is taken, but is unlikely here (most lie within 5 W to 3000 W).",
                        "plan.yaml:32 help[1].battery.after: the battery is brought only after the outage is over; it never helps.",
                        "plan.yaml:32 help[2].engine.gives: 50 W is taken, but is unlikely here (most lie within 200 W to 8000 W).");
    }

    @Test
    void shadeIsSpreadOverItsHours() {
        Question question =
                with(TILT, TILT + "\n  shade: [{hours: 07:00-08:30, lost: 60 %}, {hours: 22:00-02:00, lost: 100 %}]");
        Series shade = question.mount().shadeByHour();
        double[] expected = new double[24];
        expected[7] = 0.6;
        expected[8] = 0.3;
        expected[22] = 1;
        expected[23] = 1;
        expected[0] = 1;
        expected[1] = 1;

        for (int hour = 0; hour < 24; hour++) {
            assertThat(shade.at(hour)).as("hour %d", hour).isCloseTo(expected[hour], offset(1e-12));
        }
        assertThat(question.notes())
                .contains(new MarginNote(
                        "Light lost to shade", "07:00-08:30 60 %, 22:00-02:00 100 %", Basis.YOURS, "plan.yaml:11"));
        assertThat(question.cautions()).isEmpty();
    }

    /** Twenty-four stretches that meet within the hours do not add up to more than all light. */
    @Test
    void shadeMayTakeAllLightOfADay() {
        StringBuilder list = new StringBuilder();
        for (int hour = 0; hour < 24; hour++) {
            list.append(String.format("%n    - {hours: %02d:20-%02d:20, lost: 100 %%}", hour, (hour + 1) % 24));
        }
        Series shade = with(TILT, TILT + "\n  shade:" + list).mount().shadeByHour();

        for (int hour = 0; hour < 24; hour++) {
            assertThat(shade.at(hour)).isCloseTo(1, offset(1e-12)).isLessThanOrEqualTo(1);
        }
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "[{hours: 07:00-09:00}] | [1]: found no \"lost:\", expected a percentage, such as 85 %.",
                "[{lost: 60 %}] | [1]: found no \"hours:\", expected a stretch of the day, such as 18:00-23:00.",
                "[{hours: 07:00-09:00, lost: 0.6}] | [1].lost: found \"0.6\", expected a percentage with its sign. Write 60 %.",
                "[{hours: 07:00-09:00, lost: 160 %}] | [1].lost: found \"160 %\", expected a percentage above 0 % and at most 100 %.",
                "[{hours: morning, lost: 60 %}] | [1].hours: found \"morning\", expected a stretch of the day, such as 18:00-23:00. The whole day is 00:00-24:00.",
                "[{hours: 07:00-09:00, lost: 60 %}, {hours: 08:00-10:00, lost: 50 %}] | [2].hours: found \"08:00-10:00\", expected stretches that do not overlap. It overlaps 07:00-09:00.",
                "[{hours: 07:00-09:00, lots: 60 %}] | [1]: found the key \"lots\", expected the key \"lost\". Write lost:",
                "60 % | : found \"60 %\", expected a block of keys: hours, lost.",
            })
    void nonsenseInShade(String list, String told) {
        assertThat(shadeProblems(list)).containsExactly("plan.yaml:11 panels.shade" + told);
    }

    @Test
    void aTraceOfShadeIsACaution() {
        assertThat(with(TILT, TILT + "\n  shade: [{hours: 07:00-09:00, lost: 1 %}]")
                        .cautions())
                .containsExactly(
                        "plan.yaml:11 panels.shade[1].lost: 1 % is taken, but is unlikely here (most lie within 5 % to"
                                + " 100 %).");
    }

    @ParameterizedTest
    @CsvSource({"indoors, '', true", "garage, '', false", "indoors, no, false", "garage, yes, true", "shed, no, false"})
    void whoSleepsBesideTheBattery(String room, String typed, boolean sleptIn) {
        String line = typed.isEmpty() ? "" : "\nsomeone sleeps there: " + typed;
        Question question = with("store room: garage", "store room: " + room + line);

        assertThat(question.sleptIn()).isEqualTo(sleptIn);
        assertThat(question.notes())
                .filteredOn(note -> note.name().equals("Somebody sleeps where the store stands"))
                .singleElement()
                .satisfies(note -> {
                    assertThat(note.value()).isEqualTo(sleptIn ? "yes" : "no");
                    assertThat(note.basis()).isEqualTo(typed.isEmpty() ? Basis.GUESS : Basis.YOURS);
                });
        assertThat(question.cautions()).isEmpty();
    }

    @Test
    void nonsenseAndUnlikelyOfSleeping() {
        assertThat(Sample.problemsWith("store room: garage", "store room: garage\nsomeone sleeps there: never"))
                .containsExactly(
                        "plan.yaml:12 someone sleeps there: found \"never\", expected whether somebody sleeps where the"
                                + " store stands: yes, no.");
        assertThat(with("store room: garage", "store room: outdoors\nsomeone sleeps there: yes")
                        .cautions())
                .containsExactly("plan.yaml:12 someone sleeps there: yes is taken, but is unlikely outdoors.");
    }
}
