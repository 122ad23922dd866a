package tideover.app.store;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.sql.DriverManager;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A process killed at any moment of a storm of changes loses at most the one in flight. */
class StormTest {
    private static final int KILLS = Boolean.getBoolean("tideover.deep") ? 200 : 20;
    private static final int LONGEST_MS = 250;

    @Test
    void killedAtAnyMomentItOpensAgain(@TempDir Path folder) throws Exception {
        Path file = folder.resolve("plans.db");
        Random random = new Random(1);
        int kept = 0;
        int changes = 0;
        for (int turn = 0; turn < KILLS; turn++) {
            int before = kept;
            kept = Math.max(kept, storm(file, random.nextInt(LONGEST_MS)));
            changes += kept - before;
            try (var connection = DriverManager.getConnection("jdbc:sqlite:" + file);
                    var statement = connection.createStatement();
                    var result = statement.executeQuery("pragma integrity_check")) {
                assertThat(result.getString(1)).isEqualTo("ok");
            }
            try (Store store = Store.open(file)) {
                List<PlanLine> plans = store.plans();
                int found = plans.isEmpty()
                        ? 0
                        : Integer.parseInt(store.plan(plans.get(0).id())
                                .orElseThrow()
                                .text()
                                .substring("change ".length()));
                // What was said to be kept is there; perhaps also one more, which was kept and not yet said.
                assertThat(found).isBetween(kept, kept + 1);
                kept = found;
            }
        }
        assertThat(changes).as("changes in all").isGreaterThan(KILLS);
    }

    /** The last change that was said to be kept before the kill; the clock runs from the first on. */
    private static int storm(Path file, int ms) throws IOException, InterruptedException {
        Process process = new ProcessBuilder(
                        Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                        "-XX:TieredStopAtLevel=1",
                        "-cp",
                        System.getProperty("java.class.path"),
                        Storm.class.getName(),
                        file.toString(),
                        "1000000")
                .redirectErrorStream(true)
                .start();
        int last = 0;
        try (BufferedReader said =
                new BufferedReader(new InputStreamReader(process.getInputStream(), StandardCharsets.UTF_8))) {
            Thread killer = new Thread(() -> {
                try {
                    Thread.sleep(ms);
                } catch (InterruptedException e) {
                    Thread.currentThread().interrupt();
                }
                process.destroyForcibly();
            });
            String line = said.readLine();
            killer.start();
            try {
                while (line != null) {
                    if (line.matches("kept \\d+")) {
                        last = Integer.parseInt(line.substring("kept ".length()));
                    }
                    line = said.readLine();
                }
            } catch (IOException e) {
                // Torn off in the middle of a word.
            }
            killer.join();
        }
        process.waitFor();
        return last;
    }
}
