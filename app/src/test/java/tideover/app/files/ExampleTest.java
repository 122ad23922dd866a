package tideover.app.files;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import tideover.engine.answer.Question;
import tideover.engine.load.Load;
import tideover.engine.part.Part;
import tideover.engine.rig.Assembly;
import tideover.engine.site.Stations;

/** The scenario that comes with the program reads without a problem. */
class ExampleTest {
    static final Stations STATIONS = StationTable.load();

    @Test
    void theExamplePlanReads() {
        Question question = PlanFile.read(folder().resolve("plan.yaml"), STATIONS);

        assertThat(question.parts()).hasSizeBetween(35, 60);
        assertThat(question.about()).startsWith("Invented.");
        double whPerDay = question.loads().stream()
                .filter(Load::essential)
                .mapToDouble(Load::wantedWhPerDay)
                .sum();
        assertThat(whPerDay).isBetween(400.0, 900.0);
        assertThat(question.cautions()).isEmpty();
    }

    @Test
    void theExampleRigIsMadeOfItsParts() {
        List<Part> parts =
                PlanFile.read(folder().resolve("plan.yaml"), STATIONS).parts();
        RigFile.RigRequest rig = RigFile.read(folder().resolve("rig.yaml"), parts);

        assertThat(Assembly.of(rig.chosen()).faults()).isEmpty();
    }

    /** Tests run in the module's folder, the examples lie beside it. */
    static Path folder() {
        Path beside = Path.of("..", "examples");
        return Files.isDirectory(beside) ? beside : Path.of("examples");
    }
}
