package tideover.app.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Plans that {@code tideover compare} must refuse with a sentence. */
class CompareCommandTest {
    private static final Path EXAMPLES = Path.of("..", "examples");

    private final StringWriter out = new StringWriter();
    private final StringWriter err = new StringWriter();

    private int run(String... args) {
        return Tideover.run(new PrintWriter(out, true), new PrintWriter(err, true), args);
    }

    @Test
    void aMissingPlanIsNamed() {
        assertThat(run("compare", EXAMPLES.resolve("jugs.yaml").toString(), "no-such-plan.yaml"))
                .isEqualTo(2);
        assertThat(err.toString()).contains("no-such-plan.yaml");
        assertThat(out.toString()).isEmpty();
    }

    @Test
    void unlikeCurrenciesAreRefused(@TempDir Path folder) throws IOException {
        try (Stream<Path> files = Files.list(EXAMPLES)) {
            for (Path file : files.filter(Files::isRegularFile).toList()) {
                String text = Files.readString(file).replace("USD", "EUR");
                Files.writeString(folder.resolve(file.getFileName().toString()), text);
            }
        }
        assertThat(run(
                        "compare",
                        EXAMPLES.resolve("jugs.yaml").toString(),
                        folder.resolve("jugs.yaml").toString()))
                .isEqualTo(2);
        assertThat(err.toString()).contains("found prices in EUR", "USD");
        assertThat(out.toString()).isEmpty();
    }
}
