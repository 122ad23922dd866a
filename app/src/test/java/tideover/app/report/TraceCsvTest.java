package tideover.app.report;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;

class TraceCsvTest {
    /** Every column has its row in the page, in the file's order, and the page has no other. */
    @Test
    void everyColumnIsTold() throws IOException {
        List<String> told = new ArrayList<>();
        for (String line : Files.readAllLines(Path.of("..", "docs", "trace-file.md"))) {
            if (line.startsWith("| `") && !line.startsWith("| `_")) {
                Matcher name = Pattern.compile("`([a-z_]+)`").matcher(line.split("\\|")[1]);
                while (name.find()) {
                    told.add(name.group(1));
                }
            }
        }
        assertThat(told).isEqualTo(TraceCsv.columns());
    }
}
