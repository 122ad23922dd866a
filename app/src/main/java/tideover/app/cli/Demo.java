package tideover.app.cli;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.NoSuchFileException;
import tideover.app.files.PlanFile;
import tideover.app.files.StationTable;
import tideover.engine.answer.Question;

/** The invented demo scenario, which travels inside the jar. */
final class Demo {
    private static final String FOLDER = "/tideover/demo/";

    private Demo() {}

    static Question question() {
        try (InputStream plan = open("plan.yaml")) {
            String text = new String(plan.readAllBytes(), StandardCharsets.UTF_8);
            return PlanFile.read("plan.yaml", text, Demo::open, StationTable.load());
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static InputStream open(String name) throws IOException {
        InputStream found = Demo.class.getResourceAsStream(FOLDER + name);
        if (found == null) {
            throw new NoSuchFileException(name);
        }
        return found;
    }
}
