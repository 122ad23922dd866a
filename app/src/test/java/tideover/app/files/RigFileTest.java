package tideover.app.files;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import tideover.engine.part.Part;
import tideover.engine.rig.Chosen;

class RigFileTest {
    private static final List<Part> PARTS = Sample.read(Sample.PLAN).parts();
    private static final String RIG = """
            rig: Box and two panels
            parts:
              - id: box-1
              - {id: panel-100, count: 2}
            """;

    @Test
    void partsAreFoundByTheirIds() {
        RigFile.RigRequest rig = RigFile.read("rig.yaml", RIG, PARTS);

        assertThat(rig.name()).isEqualTo("Box and two panels");
        assertThat(rig.chosen()).containsExactly(new Chosen(PARTS.get(0), 1), new Chosen(PARTS.get(1), 2));
    }

    @Test
    void aRigOnDisk(@TempDir Path folder) throws IOException {
        Path file = folder.resolve("rig.yaml");
        Files.writeString(file, RIG);

        assertThat(RigFile.read(file, PARTS)).isEqualTo(RigFile.read("rig.yaml", RIG, PARTS));
    }

    @Test
    void everySlipIsToldAtOnce() {
        String rig = """
                rigg: x
                parts:
                  - {id: box1}
                  - {id: panel-100, count: two}
                  - {id: panel-100}
                  - {count: 3}
                  - {id: teapot}
                """;

        assertThat(problems(rig))
                .containsExactly(
                        "rig.yaml:1: found the key \"rigg\", expected the key \"rig\". Write rig:",
                        "rig.yaml:3 parts[1].id: found \"box1\", expected the id of a part in the plan's parts file. Write box-1.",
                        "rig.yaml:4 parts[2].count: found \"two\", expected how many, a whole number from 1 to 20.",
                        "rig.yaml:5 parts[3].id: found \"panel-100\" a second time, expected each part once, with its count. The"
                                + " first stands in line 4.",
                        "rig.yaml:6 parts[4]: found no \"id:\", expected the id of a part.",
                        "rig.yaml:7 parts[5].id: found \"teapot\", expected the id of a part in the plan's parts file.");
    }

    @Test
    void noPartsAtAll() {
        assertThat(problems("rig: x\n"))
                .containsExactly(
                        "rig.yaml:1: found no \"parts:\", expected a list of parts, such as - {id: lamp-box, count: 1}.");
        assertThat(problems("rig: x\nparts: []\n"))
                .containsExactly(
                        "rig.yaml:2 parts: found an empty list, expected a list of parts, such as - {id: lamp-box,"
                                + " count: 1}.");
    }

    private static List<String> problems(String rig) {
        return Sample.problemsOf(() -> RigFile.read("rig.yaml", rig, PARTS));
    }
}
