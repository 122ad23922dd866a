package tideover.app.files;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import tideover.engine.answer.Advisor;
import tideover.engine.answer.Question;
import tideover.engine.part.Part;
import tideover.engine.rig.Assembly;

/** The situations of docs/situations.md read, and their small shelf suffices. No runs in full. */
class SituationsTest {
    private static final String NO_RIG_IS_RIGHT = "oxygen-budget.yaml";
    private static final String RIG = "lead-rig.yaml";

    private static Path folder() {
        return ExampleTest.folder().resolve("situations");
    }

    static List<String> plans() {
        return files().filter(name -> !name.equals(RIG)).toList();
    }

    private static Stream<String> files() {
        try (Stream<Path> files = Files.list(folder())) {
            return files
                    .map(file -> file.getFileName().toString())
                    .filter(name -> name.endsWith(".yaml"))
                    .sorted()
                    .toList()
                    .stream();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static Question read(String plan) {
        return PlanFile.read(folder().resolve(plan), ExampleTest.STATIONS);
    }

    @ParameterizedTest
    @MethodSource("plans")
    void readsAndIsInvented(String plan) throws IOException {
        Question question = read(plan);

        assertThat(question.about()).startsWith("Invented.");
        assertThat(question.parts()).hasSizeBetween(10, 14);
        assertThat(Files.readString(folder().resolve(plan))).startsWith("# Invented");
    }

    /** Of the oxygen every rig must fall, to what is not arranged; of the others some rig keeps every rule and the budget. */
    @ParameterizedTest
    @MethodSource("plans")
    void partsSufficeForCandidates(String plan) {
        int left = Advisor.candidates(read(plan)).kept().size();

        if (plan.equals(NO_RIG_IS_RIGHT)) {
            assertThat(left).isZero();
        } else {
            assertThat(left).isPositive();
        }
    }

    @Test
    void theRigOfLeadIsMadeOfTheShelf() {
        List<Part> parts = read("freezer-lead.yaml").parts();
        RigFile.RigRequest rig = RigFile.read(folder().resolve(RIG), parts);

        assertThat(Assembly.of(rig.chosen()).faults()).isEmpty();
    }

    /** Each stands on the page with its command. */
    @ParameterizedTest
    @MethodSource("plans")
    void thePageTellsIt(String plan) throws IOException {
        Path page = ExampleTest.folder().resolveSibling("docs").resolve("situations.md");

        assertThat(Files.readString(page)).contains("examples/situations/" + plan);
    }
}
