package tideover.app.report;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.offset;

import java.io.ByteArrayInputStream;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.OptionalLong;
import javax.xml.parsers.DocumentBuilderFactory;
import org.junit.jupiter.api.Test;
import tideover.engine.Invented;
import tideover.engine.answer.Advisor;
import tideover.engine.answer.Answer;
import tideover.engine.answer.MedicalNote;
import tideover.engine.answer.Options;
import tideover.engine.answer.Progress;
import tideover.engine.answer.Question;
import tideover.engine.answer.WorstCase;
import tideover.engine.load.Load;
import tideover.engine.load.Medical;
import tideover.engine.load.Nature;
import tideover.engine.load.Need;
import tideover.engine.load.SteadyLoad;
import tideover.engine.outage.Outage;
import tideover.engine.rig.Rig;
import tideover.engine.search.Grammar;
import tideover.engine.site.RoomKind;
import tideover.engine.site.WeatherSource;
import tideover.engine.why.Basis;
import tideover.engine.why.MarginNote;
import tideover.engine.wiring.Allowances;
import tideover.engine.wiring.Laying;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** Where somebody's health hangs on a load no form of an answer calls anything met, and each says the worst and the second plan. */
class MedicalReportTest {
    private static final Options OPTIONS = new Options(7, 2, 3, 2, 1);
    private static final Medical GOOD =
            new Medical(900, "bell <on> its own cell", "Aunt Vela", true, "hand pump beside the bed");
    private static final Medical BARE = new Medical(60, "", "Aunt Vela", false, "");

    private static final Answer FOUND = Advisor.size(question(GOOD, 9, 20), OPTIONS, Progress.SILENT);
    private static final Answer ENDED = Advisor.prove(question(GOOD, 25, 48), rig(), OPTIONS, Progress.SILENT);
    private static final Answer BROKEN = Advisor.prove(question(BARE, 9, 20), rig(), OPTIONS, Progress.SILENT);
    private static final Answer NOTHING = Advisor.size(question(BARE, 9, 20), OPTIONS, Progress.SILENT);

    @Test
    void theFourAnswersAreWhatTheyAreMeantToBe() {
        assertThat(FOUND.rig()).isNotNull();
        assertThat(FOUND.meets()).isTrue();
        assertThat(Objects.requireNonNull(FOUND.rig()).proof().share().share()).isEqualTo(1);
        assertThat(ENDED.meets()).isFalse();
        assertThat(Objects.requireNonNull(ENDED.rig()).proof().share().share())
                .as("most are carried, which is not good enough")
                .isBetween(0.05, 0.999);
        assertThat(BROKEN.meets()).isFalse();
        assertThat(NOTHING.rig()).isNull();
    }

    @Test
    void noFormSaysMetOrSoManyOfAHundredInItsSummary() {
        for (Answer answer : answers()) {
            assertThat(Words.sentence(answer))
                    .doesNotContain("of 100")
                    .doesNotContainIgnoringCase(" meets")
                    .contains("health", "breather");
            String text = TextAnswer.of(answer, "9.9");
            assertThat(text).doesNotContain("Meets the target", "will do costs");
            assertThat(HtmlReport.of(answer, "9.9")).doesNotContain("Meets the target", "will do costs");
        }
    }

    @Test
    void textAndPageTellTheArrangementAndTheWorstBeforeAnythingElseOfTheRig() {
        for (Answer answer : List.of(FOUND, ENDED)) {
            MedicalNote note = Objects.requireNonNull(answer.rig()).medical().get(0);
            for (String form : List.of(flat(TextAnswer.of(answer, "9.9")), flat(page(answer)))) {
                assertThat(form)
                        .contains("Someone's health hangs on: breather")
                        .contains(
                                note.verdict(),
                                MedicalNote.MIND,
                                GOOD.alarm(),
                                "Aunt Vela, always there and able to",
                                GOOD.secondPlan(),
                                "about 5 min each time the grid fails",
                                "15 min without it");
                assertThat(form.indexOf("Someone's health hangs on")).isLessThan(form.indexOf("Hours carried"));
            }
        }
        assertThat(Words.sentence(FOUND)).contains("no rig replaces the second plan", "which is no promise");
    }

    @Test
    void aNoSaysWhy() {
        int failed =
                WorstCase.failed(Objects.requireNonNull(ENDED.rig()).proof().share());
        assertThat(Words.sentence(ENDED)).startsWith("No: ").endsWith("The second plan is the plan.");
        assertThat(Words.sentence(BROKEN)).startsWith("No: ").contains("first arrange what is missing");
        assertThat(Words.sentence(NOTHING)).startsWith("No: ").contains("first arrange what is missing");
        for (String form : List.of(flat(TextAnswer.of(ENDED, "9.9")), flat(page(ENDED)))) {
            assertThat(form).contains(String.format(Locale.ROOT, "it did not last through %,d.", failed));
        }
        for (Answer answer : List.of(BROKEN, NOTHING)) {
            for (String form : List.of(flat(TextAnswer.of(answer, "9.9")), flat(page(answer)))) {
                assertThat(form)
                        .contains("Nothing is named that tells when breather has stopped")
                        .contains("No second plan is named for breather")
                        .contains("is not always there and able to");
            }
        }
    }

    @Test
    void jsonCallsNothingMet() {
        for (Answer answer : answers()) {
            JsonNode root = JsonMapper.builder().build().readTree(JsonAnswer.of(answer, "9.9"));
            assertThat(root.path("meets_target").isNull()).isTrue();
            assertThat(root.path("nothing_walked_failed").asBoolean()).isEqualTo(answer.meets());
            assertThat(root.path("asked_of_rigs_share").asDouble()).isEqualTo(1);
            assertThat(root.path("question").path("outage").path("target_share").asDouble())
                    .isEqualTo(0.5);
            assertThat(root.path("medical_loads").size()).isEqualTo(1);
            assertThat(root.path("why_not").isEmpty()).isEqualTo(answer.meets());
        }
        JsonNode load = JsonMapper.builder()
                .build()
                .readTree(JsonAnswer.of(ENDED, "9.9"))
                .path("medical_loads")
                .path(0);
        assertThat(load.path("person_bridges_s").asDouble()).isEqualTo(900);
        assertThat(load.path("without_power_s").asDouble()).isEqualTo(300);
        assertThat(load.path("worst_found").path("shortest_h").asDouble())
                .isEqualTo(Objects.requireNonNull(ENDED.rig()).proof().worstHours(), offset(1e-8));
        assertThat(load.path("worst_found").path("confirming_years").isNull()).isTrue();
        JsonNode never = JsonMapper.builder()
                .build()
                .readTree(JsonAnswer.of(BROKEN, "9.9"))
                .path("medical_loads")
                .path(0);
        assertThat(never.path("without_power_s").isNull()).isTrue();
    }

    /** The page is XHTML; what a person typed stays words. */
    private static String page(Answer answer) {
        try {
            return DocumentBuilderFactory.newInstance()
                    .newDocumentBuilder()
                    .parse(new ByteArrayInputStream(HtmlReport.of(answer, "9.9").getBytes(StandardCharsets.UTF_8)))
                    .getElementsByTagName("body")
                    .item(0)
                    .getTextContent();
        } catch (Exception e) {
            throw new AssertionError("not well-formed: " + e.getMessage(), e);
        }
    }

    private static String flat(String text) {
        return text.replaceAll("\\s+", " ");
    }

    static List<Answer> answers() {
        return List.of(FOUND, ENDED, BROKEN, NOTHING);
    }

    private static Rig rig() {
        return new Invented(11).rig(1500, 2, 12);
    }

    private static Question question(Medical medical, double watts, int hours) {
        List<Load> loads = new ArrayList<>(List.of(
                new SteadyLoad(
                        "breather",
                        Invented.MAINS,
                        watts,
                        true,
                        new Need.AlwaysOn(),
                        RoomKind.INDOORS,
                        Nature.PLAIN.with(medical)),
                new SteadyLoad("lamp", Invented.SOCKET, 4, true, new Need.AlwaysOn(), RoomKind.INDOORS)));
        return new Question(
                "Lantern room",
                "Invented.",
                Invented.PLACE,
                new WeatherSource.Imported(new Invented(3).weather(2)),
                -12,
                Invented.MOUNT,
                false,
                RoomKind.SHED,
                false,
                loads,
                new Outage(List.of(0, 11), hours, 0.5, 0.9, 3, 1),
                OptionalLong.empty(),
                "USD",
                new Allowances(0, 3_500, 9_000),
                new Grammar(2, 2),
                new Invented(5).parts(),
                List.of(),
                Laying.ASSUMED,
                List.of(),
                List.of(new MarginNote("draw", "9 W", Basis.GUESS, "plan")),
                List.of());
    }
}
