package tideover.app.files;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import tideover.engine.answer.Question;
import tideover.engine.site.Stations;

class DraftTest {
    private static final Stations STATIONS = StationTable.load();
    private static final List<String> PARTS =
            List.of("parts/batteries.csv", "parts/inverters.csv", "parts/own-shelf.csv");

    static Stream<LoadTemplates.Template> templates() {
        return LoadTemplates.all().stream();
    }

    private static Draft.Answers answers(Map<String, Integer> loads) {
        return new Draft.Answers(
                "A: house # <b>",
                "Buffalo Niagara Intl Airport NY",
                loads,
                "72",
                List.of("dec", "jan"),
                "95",
                "900",
                "garage");
    }

    /** Every load that can be chosen, twice, reads without a problem beside the demo's parts. */
    @ParameterizedTest
    @MethodSource("templates")
    void everyTemplateMakesAPlan(LoadTemplates.Template template) {
        Draft.Answers answers = answers(Map.of(template.id(), 2));
        assertThat(Draft.problems(answers, STATIONS)).isEmpty();
        String text = Draft.text(answers, STATIONS, PARTS, "small-parts.csv");
        Question question = PlanFile.read("plan.yaml", text, Beside.folder(Path.of("..", "examples")), STATIONS);
        assertThat(question.loads()).hasSize(2);
        assertThat(question.title()).isEqualTo("A: house # <b>");
        assertThat(question.outage().hours()).isEqualTo(72);
        if (template.medical()) {
            assertThat(text).contains("medical:");
            assertThat(question.medical()).isTrue();
        }
    }

    @Test
    void namesAndIdsAreOnesOwn() {
        assertThat(LoadTemplates.all().stream().map(LoadTemplates.Template::id))
                .doesNotHaveDuplicates()
                .hasSizeGreaterThan(20);
        assertThat(LoadTemplates.all().stream().map(LoadTemplates.Template::name))
                .doesNotHaveDuplicates();
    }

    /** Joining a load on the wires of the house is paid for, whether or not there is a limit. */
    @Test
    void joiningIsPaidFor() {
        LoadTemplates.Template wired = LoadTemplates.all().stream()
                .filter(LoadTemplates.Template::hardWired)
                .findFirst()
                .orElseThrow();
        for (String money : List.of("", "900")) {
            Draft.Answers answers = new Draft.Answers(
                    "House",
                    "Buffalo Niagara Intl Airport NY",
                    Map.of(wired.id(), 1),
                    "24 h",
                    List.of("dec"),
                    "95 %",
                    money,
                    "indoors");
            String text = Draft.text(answers, STATIONS, PARTS, "small-parts.csv");
            assertThat(text).contains("  hard-wired loads: " + LoadTemplates.JOINING);
            assertThat(PlanFile.read("plan.yaml", text, Beside.folder(Path.of("..", "examples")), STATIONS)
                            .loads())
                    .hasSize(1);
        }
        assertThat(Draft.text(answers(Map.of("lamp", 1)), STATIONS, PARTS, "small-parts.csv"))
                .doesNotContain("hard-wired");
    }

    /** What was not typed but chosen may come from anywhere too. */
    @Test
    void answersAddNoKeys() {
        Draft.Answers hostile = new Draft.Answers(
                "x".repeat(5000),
                "Buffalo Niagara Intl Airport NY",
                Map.of("lamp", 1),
                "24 h\nloads: []",
                List.of("dec]\nstorm: [", "jan"),
                "95 %",
                "900 EUR",
                "indoors");
        assertThat(Draft.problems(hostile, STATIONS))
                .hasSize(4)
                .anyMatch(sentence -> sentence.contains("shorter name"))
                .anyMatch(sentence -> sentence.startsWith("Months are"))
                .anyMatch(sentence -> sentence.contains("write it as 24 h"))
                .anyMatch(sentence -> sentence.contains("priced in USD"));
    }

    @Test
    void everyMissingAnswerIsAskedFor() {
        Draft.Answers none =
                new Draft.Answers("", "no such place at all", Map.of(), "long", List.of(), "all", "much", "garage");
        assertThat(Draft.problems(none, STATIONS))
                .hasSize(7)
                .anyMatch(sentence -> sentence.startsWith("Give the plan a name"))
                .anyMatch(sentence -> sentence.startsWith("No weather station is called"))
                .anyMatch(sentence -> sentence.contains("write it as 24 h"))
                .anyMatch(sentence -> sentence.contains("900 USD"));
    }
}
