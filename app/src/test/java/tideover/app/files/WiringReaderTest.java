package tideover.app.files;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.entry;
import static org.assertj.core.api.Assertions.within;
import static org.junit.jupiter.params.provider.Arguments.arguments;

import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import tideover.engine.answer.Question;
import tideover.engine.why.Basis;
import tideover.engine.why.MarginNote;
import tideover.engine.wiring.Allowances;
import tideover.engine.wiring.Laying;

/** The plan's {@code wiring:} and {@code small parts:}. */
class WiringReaderTest {
    private static final String LINKS = "one length, or two, the shortest and the longest, such as [30 cm, 45 cm]";

    @Test
    void whatIsLeftOutIsAssumedAndTold() {
        Question question = Sample.read(Sample.PLAN);

        assertThat(question.laying()).isEqualTo(Laying.ASSUMED);
        assertThat(question.laying()).isEqualTo(new Laying(8, 0.5, 0.5, 0.5, 1, 8, 0.3, 0.3, 40, 2, Map.of()));
        assertThat(question.notes())
                .contains(
                        assumed("Cable from panels to charge controller", "8 m"),
                        assumed("Cable from charge controller to battery", "0.5 m"),
                        assumed("Cable from battery to inverter", "0.5 m"),
                        assumed("Cable from battery to DC sockets", "0.5 m"),
                        assumed("Cable from charger to battery", "1 m"),
                        assumed("Cord from engine to charger", "8 m"),
                        assumed("Cable between two batteries", "0.3 m"),
                        assumed("Hottest air about the cables", "40 degC"),
                        assumed("Wires with current that lie together", "2"));
    }

    private static MarginNote assumed(String name, String value) {
        return new MarginNote(name, value, Basis.GUESS, PlanFile.DEFAULT);
    }

    @Test
    void everyKeyIsRead() {
        Question question = Sample.read(Sample.PLAN + """
                wiring:
                  panels: 12 m
                  charge controller: 40 cm
                  inverter: 20 in
                  sockets: 900 mm
                  charger: 3 ft
                  engine: 20 ft
                  links: [30 cm, 45 cm]
                  hottest: 113 degF
                  side by side: 6
                  cords: {Lamps: 6 m, Scanner: 10 ft}
                """);
        Laying laying = question.laying();

        assertThat(laying.panelsM()).isEqualTo(12);
        assertThat(laying.controllerM()).isEqualTo(0.4);
        assertThat(laying.inverterM()).isEqualTo(0.508);
        assertThat(laying.socketsM()).isEqualTo(0.9);
        assertThat(laying.chargerM()).isEqualTo(0.9144);
        assertThat(laying.engineM()).isEqualTo(6.096);
        assertThat(laying.linkM()).isEqualTo(0.3);
        assertThat(laying.linkOtherM()).isEqualTo(0.45);
        assertThat(laying.hottestDegC()).isEqualTo(45, within(1e-9));
        assertThat(laying.sideBySide()).isEqualTo(6);
        // in the order of the loads
        assertThat(laying.cordM()).containsExactly(entry("Scanner", 3.048), entry("Lamps", 6.0));
        assertThat(question.cautions()).isEmpty();
        assertThat(question.notes())
                .contains(
                        new MarginNote("Cable from battery to inverter", "20 in", Basis.YOURS, "plan.yaml:35"),
                        new MarginNote("Cable between two batteries", "30 cm, 45 cm", Basis.YOURS, "plan.yaml:39"),
                        new MarginNote("Lamps: cord from the outlet", "6 m", Basis.YOURS, "plan.yaml:42"));
    }

    @Test
    void oneLengthForAllLinks() {
        Laying laying = Sample.read(Sample.PLAN + "wiring: {links: 1 ft}\n").laying();

        assertThat(laying.linkM()).isEqualTo(0.3048);
        assertThat(laying.linkOtherM()).isEqualTo(0.3048);
    }

    static Stream<Arguments> slips() {
        return Stream.of(
                arguments(
                        "panels: 12",
                        "panels: found \"12\", expected a length with its unit. Write 12 m. Also possible: cm, mm, km, ft, in, yd."),
                arguments("panels: 300 m", "panels: found \"300 m\", expected a length from 0 m to 200 m."),
                arguments("inverter: -1 m", "inverter: found \"-1 m\", expected a length from 0 m to 200 m."),
                arguments(
                        "engine: 19 ft",
                        "engine: found \"19 ft\", expected at least 6.1 m (20 ft), for an engine runs outdoors so far from"
                                + " doors, windows and vents, exhaust away (US Consumer Product Safety Commission)."),
                arguments("links: [1 m, 2 m, 3 m]", "links: found \"1 m, 2 m, 3 m\", expected " + LINKS + "."),
                arguments("links: [2 m, 1 m]", "links: found \"2 m, 1 m\", expected " + LINKS + "."),
                arguments("links: []", "links: found an empty list, expected " + LINKS + "."),
                arguments(
                        "hottest: 80 degC",
                        "hottest: found \"80 degC\", expected a temperature from -20 degC to 70 degC."),
                arguments(
                        "side by side: 1",
                        "side by side: found \"1\", expected wires with current in them that lie together, a whole number"
                                + " from 2 to 40."),
                arguments(
                        "side by side: 41",
                        "side by side: found \"41\", expected wires with current in them that lie together, a whole number"
                                + " from 2 to 40."),
                arguments(
                        "cords: {Lamps: 6}",
                        "cords.Lamps: found \"6\", expected a length with its unit. Write 6 m. Also possible: cm, mm, km, ft, in, yd."),
                arguments(
                        "cords: {Lampe: 6 m}",
                        "cords: found the key \"Lampe\", expected the key \"Lamps\". Write Lamps:"),
                arguments(
                        "cords: {Kettle: 6 m}",
                        "cords: found the key \"Kettle\", expected one of the keys Scanner, Lamps."),
                arguments("cords: 6 m", "cords: found \"6 m\", expected a block of keys: Scanner, Lamps."),
                arguments("panel: 6 m", ": found the key \"panel\", expected the key \"panels\". Write panels:"));
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("slips")
    void isTold(String line, String problem) {
        String where = "plan.yaml:33 wiring" + (problem.startsWith(":") ? "" : ".");

        assertThat(Sample.problemsIn(Sample.PLAN + "wiring:\n  " + line + "\n")).containsExactly(where + problem);
    }

    @Test
    void farAndHotAreTakenWithACaution() {
        assertThat(Sample.read(Sample.PLAN + "wiring: {inverter: 15 m, hottest: 10 degC}\n")
                        .cautions())
                .containsExactly(
                        "plan.yaml:32 wiring.inverter: 15 m is taken, but is unlikely here (most lie within 0.1 m to 10 m).",
                        "plan.yaml:32 wiring.hottest: 10 degC is taken, but is unlikely here (most lie within 20 degC to 60"
                                + " degC).");
    }

    @Test
    void aFileOfSmallPartsTakesThePlaceOfTheAllowance() {
        Question with = SmallSample.read(SmallSample.FILE);
        Question without = Sample.read(Sample.PLAN);

        assertThat(with.smallParts()).hasSize(13);
        assertThat(with.allowances()).isEqualTo(new Allowances(0, 0, 0));
        assertThat(with.notes())
                .contains(new MarginNote("File of small parts", "small-parts.csv", Basis.YOURS, "plan.yaml:31"))
                .noneMatch(note -> note.name().startsWith("Small parts with"));
        assertThat(without.smallParts()).isEmpty();
        assertThat(without.allowances()).isEqualTo(new Allowances(0, 35_00, 90_00));
    }

    @Test
    void theJoiningOfAHardWiredLoadIsPaidStill() {
        String plan = SmallSample.PLAN.replace("at most: 900 USD", "at most: 900 USD\n  hard-wired loads: 350 USD");

        assertThat(SmallSample.read(plan, SmallSample.FILE).allowances()).isEqualTo(new Allowances(0, 0, 0, 350_00));
    }

    @Test
    void bothAreOneTooMany() {
        assertThat(Sample.problemsIn(Sample.PLAN + "small parts: small-parts.csv\n"))
                .containsExactly(
                        "plan.yaml:27 money.small parts: found an allowance beside the file of small parts in line"
                                + " 32, expected one or the other. Strike out the allowance: the file prices every small part.");
    }

    @Test
    void neitherIsOneTooFew() {
        assertThat(Sample.problemsIn(SmallSample.PLAN.replace("small parts: small-parts.csv\n", "")))
                .containsExactly("plan.yaml:25 money: found no \"small parts:\", expected a block of keys: ready box,"
                        + " enclosure, separate parts.");
    }

    /** Without any money in the plan the parts tell its currency, and the small parts must keep to it. */
    @Test
    void aPlanWithoutMoney() {
        String plan = SmallSample.PLAN.replace("money:\n  at most: 900 USD\n", "");
        Question question = SmallSample.read(plan, SmallSample.FILE);

        assertThat(question.currency()).isEqualTo("USD");
        assertThat(question.budgetCents()).isEmpty();
        assertThat(Sample.problemsOf(() -> SmallSample.read(plan, SmallSample.FILE.replace("USD", "CAD"))))
                .containsExactly(
                        "small-parts.csv:2 currency: found \"CAD\", and 12 more rows in another currency, expected"
                                + " USD, the plan's currency, for every price.");
    }

    @Test
    void damagedSmallPartsKeepNoStandIn() {
        List<String> problems = SmallSample.problemsIn(SmallSample.HEADER + "\"cable,");

        assertThat(problems).singleElement().asString().contains("cells that cannot be told apart");
    }
}
