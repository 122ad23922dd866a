package tideover.app.files;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.offset;

import java.util.List;
import java.util.Objects;
import org.junit.jupiter.api.Test;
import tideover.engine.answer.Question;
import tideover.engine.load.Load;
import tideover.engine.load.LockedRotor;
import tideover.engine.load.Nature;
import tideover.engine.load.Start;
import tideover.engine.load.Usual;
import tideover.engine.load.UsualLoads;
import tideover.engine.why.Basis;
import tideover.engine.why.MarginNote;
import tideover.engine.wiring.Allowances;

/** Usual loads in a plan: they fill gaps, say so with range and source, and never take the place of what was written. */
class LikeReaderTest {
    private static final String LAMPS = "draws: 8 W";
    private static final String SCANNER = "draws: 3 W";
    private static final String JOINING = "money:\n  hard-wired loads: 350 USD\n";

    private static Question read(String loadKeys) {
        return Sample.read(Sample.PLAN.replace(LAMPS, loadKeys));
    }

    private static Question readWired(String loadKeys) {
        return Sample.read(Sample.PLAN.replace(LAMPS, loadKeys).replace("money:\n", JOINING));
    }

    private static Load load(Question question) {
        return question.loads().get(1);
    }

    private static Usual usual(String word) {
        return UsualLoads.of(word).orElseThrow();
    }

    private static List<String> problems(String loadKeys) {
        return Sample.problemsWith(LAMPS, loadKeys);
    }

    @Test
    void everyUsualLoadFillsAWholeLoad() {
        for (Usual usual : UsualLoads.all()) {
            Load load = load(readWired("like: " + usual.word()));
            assertThat(load.runningW()).as(usual.word()).isEqualTo(usual.reckonedW());
            assertThat(load.nature())
                    .as(usual.word())
                    .isEqualTo(new Nature(
                                    usual.powerFactor(),
                                    usual.start(usual.reckonedW() / usual.powerFactor()),
                                    usual.needsSine(),
                                    false)
                            .wired(usual.hardWired(), usual.sensesFlame()));
        }
    }

    @Test
    void whatIsFilledIsNotedWithRangeAndSource() {
        Question question = read("like: Sump pump 1/3 HP");
        Usual pump = usual("sump pump, 1/3 hp");
        String source = "plan.yaml:21, like sump pump, 1/3 hp: " + pump.source();
        String ranged = source.replace("hp:", "hp, which draws 332 to 745 W:");

        assertThat(question.notes())
                .contains(
                        new MarginNote("Lamps: draws", "538 W", Basis.FROM_MEMORY, ranged),
                        new MarginNote("Lamps: power factor", "0.65", Basis.FROM_MEMORY, source),
                        new MarginNote("Lamps: wave it needs", "sine", Basis.FROM_MEMORY, source),
                        new MarginNote(
                                "Lamps: start", "3730 VA for 0.5 s, power factor 0.6", Basis.FROM_MEMORY, source));
        assertThat(question.notes())
                .extracting(MarginNote::name)
                .doesNotContain("Lamps: hard-wired", "Lamps: senses flame");
        assertThat(question.cautions())
                .contains("Lamps: 538 W is the usual figure of a sump pump, 1/3 hp; such loads draw 332 to 745 W. "
                        + pump.measure());
        pump.ask().forEach(ask -> assertThat(question.cautions()).contains("Lamps: " + ask));
    }

    @Test
    void whatIsWrittenWins() {
        Question question = read("like: sump pump, 1/3 hp\n    draws: 600 W\n    from: meter\n    power factor: 0.8\n"
                + "    start: {va: 5 kVA}\n    wave: any\n    attended: yes\n    hard-wired: no");

        assertThat(load(question).runningW()).isEqualTo(600);
        assertThat(load(question).nature())
                .isEqualTo(new Nature(
                        0.8, new Start(5000, Start.USUAL_POWER_FACTOR, Start.USUAL_SECONDS, false, ""), false, true));
        assertThat(question.notes())
                .contains(new MarginNote("Lamps: draws", "600 W", Basis.MEASURED, "plan.yaml:22"))
                .noneMatch(note -> note.source().contains("like sump pump"));
        assertThat(question.cautions())
                .noneMatch(caution -> caution.contains("such loads draw"))
                .noneMatch(caution -> caution.contains("write hard-wired: yes"))
                .anyMatch(caution -> caution.contains("blocked or runs dry"));
    }

    @Test
    void eachGapIsFilledByItself() {
        Question question = read("like: sump pump, 1/3 hp\n    start: {va: 5 kVA}");

        assertThat(load(question).runningW()).isEqualTo(538);
        assertThat(load(question).nature().powerFactor()).isEqualTo(0.65);
        assertThat(Objects.requireNonNull(load(question).nature().start()).typedVa())
                .isEqualTo(5000);
        assertThat(question.cautions()).noneMatch(caution -> caution.contains("taken as 1"));
    }

    /** 1300 W at .65 are 2000 VA, where the usual 538 W are 828: the start grows as much. */
    @Test
    void aBiggerMotorStartsHarder() {
        Question question = read("like: sump pump, 1/3 hp\n    draws: 1300 W");
        double usualVa = LockedRotor.mostVa("M", 1.0 / 3);

        assertThat(Objects.requireNonNull(load(question).nature().start()).va(2000))
                .isCloseTo(usualVa * 1300 / 538, offset(1e-6));
        assertThat(question.cautions())
                .contains("plan.yaml:22 loads[2].draws: 1300 W is taken, but is unusual of a sump pump, 1/3 hp, 332 to"
                        + " 745 W.");
    }

    @Test
    void whereHealthHangsOnItTheMostIsTaken() {
        Question question = read("like: sleep-therapy device, no heat");

        assertThat(load(question).runningW()).isEqualTo(60);
        assertThat(question.cautions())
                .anyMatch(caution -> caution.startsWith(
                                "Lamps: 60 W is the most of a sleep-therapy device, no heat; such loads draw 5 to 60 W.")
                        && caution.contains("Ask for a meter reading"))
                .anyMatch(caution -> caution.contains("care team decide"));
    }

    @Test
    void onDirectCurrentOnlyTheWattsAreTaken() {
        Question question = Sample.read(Sample.PLAN.replace(SCANNER, "like: router"));

        assertThat(question.loads().get(0).runningW()).isEqualTo(10);
        assertThat(question.loads().get(0).nature()).isEqualTo(Nature.PLAIN);
        assertThat(Sample.problemsWith(SCANNER, "like: fan"))
                .containsExactly(
                        "plan.yaml:15 loads[1].like: found a motor for alternating current, on direct current,"
                                + " expected AC under \"supply:\", or a load of its own. Write draws and start instead of like.");
        assertThat(Sample.problemsWith(SCANNER, "draws: 3 W\n    hard-wired: yes"))
                .containsExactly("plan.yaml:16 loads[1].hard-wired: found yes for direct current, expected no: only"
                        + " circuits of the house are meant.");
    }

    @Test
    void aWordThatNobodyKnowsGetsSuggestions() {
        String expected = ", expected a usual load, as \"tideover loads\" lists them.";

        assertThat(problems("like: roter"))
                .containsExactly("plan.yaml:21 loads[2].like: found \"roter\"" + expected + " Write router.");
        assertThat(problems("like: sump pump"))
                .containsExactly("plan.yaml:21 loads[2].like: found \"sump pump\"" + expected
                        + " Write one of: sump pump, 1/4 hp; sump pump, 1/3 hp; sump pump, 1/2 hp.");
        assertThat(problems("like: chandelier"))
                .containsExactly("plan.yaml:21 loads[2].like: found \"chandelier\"" + expected);
        assertThat(problems("like: [router]")).containsExactly("plan.yaml:21 loads[2].like: found a list" + expected);
        assertThat(problems("like: router\n    from: meter"))
                .containsExactly(
                        "plan.yaml:22 loads[2].from: found where a figure is from, without the figure, expected"
                                + " \"draws:\" beside it.");
    }

    @Test
    void aHardWiredLoadNeedsThePriceOfItsJoining() {
        assertThat(problems("draws: 300 W\n    hard-wired: yes"))
                .containsExactly("plan.yaml:26 money: found no \"hard-wired loads:\", expected what joining each"
                        + " hard-wired load costs, listed inlet or transfer device and electrician, such as 35 USD.");
        assertThat(problems("like: well pump, 1 hp")).singleElement().asString().contains("hard-wired loads");
        assertThat(problems("like: well pump, 1 hp\n    hard-wired: no")).isEmpty();

        Question question = readWired("draws: 300 W\n    hard-wired: yes\n    senses flame: yes");
        assertThat(question.allowances()).isEqualTo(new Allowances(0, 35_00, 90_00, 350_00));
        assertThat(load(question).nature()).isEqualTo(Nature.PLAIN.wired(true, true));
        assertThat(question.notes())
                .contains(
                        new MarginNote("Lamps: hard-wired", "yes", Basis.YOURS, "plan.yaml:22"),
                        new MarginNote("Lamps: senses flame", "yes", Basis.YOURS, "plan.yaml:23"),
                        new MarginNote("Joining each hard-wired load", "350.00 USD", Basis.YOURS, "plan.yaml:28"));
    }
}
