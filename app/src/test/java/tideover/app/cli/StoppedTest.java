package tideover.app.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** A real process, stopped as Ctrl-C stops it. */
@Timeout(value = 2, unit = TimeUnit.MINUTES)
class StoppedTest {
    private static final Path STATUS = Path.of("/proc/self/status");

    private record Ended(int status, String out, long afterMs) {}

    /** Where this process was started with the signal ignored, as shells start what is in the background, its children ignore it too. */
    @BeforeEach
    void theSignalArrives() throws IOException {
        assumeTrue(Files.isReadable(STATUS), "no Linux");
        String ignored = Files.readAllLines(STATUS).stream()
                .filter(line -> line.startsWith("SigIgn:"))
                .map(line -> line.substring(7).strip())
                .findFirst()
                .orElse("0");
        assumeTrue((Long.parseUnsignedLong(ignored, 16) & 2) == 0, "the signal is ignored");
    }

    @Test
    void aFrontBegunIsTold() throws IOException, InterruptedException {
        Ended ended = stopOnce("front", "size", Ran.examples().resolve("plan.yaml"));
        assertThat(ended.status()).isEqualTo(Failures.STOPPED).isEqualTo(130);
        assertThat(ended.out())
                .startsWith("Stopped before the answer was out. It was at: ")
                .contains("The least that will do, confirmed on 100 other years and not yet proven in full:")
                .contains("Price against share so far")
                .doesNotContain("The least that will do costs");
    }

    @Test
    void aWinnerIsToldAsOneDocument() throws IOException, InterruptedException {
        Ended ended = stopOnce(
                "\rbeside it", "size", Ran.examples().resolve("plan.yaml"), "--format", "json", "--confirm-years", 2);
        assertThat(ended.status()).isEqualTo(130);
        JsonNode known = JsonMapper.shared().readTree(ended.out());
        assertThat(known.get("stopped_before_the_answer").asBoolean()).isTrue();
        assertThat(known.get("stage").asString()).isEqualTo("beside it");
        JsonNode winner = known.get("confirmed");
        assertThat(winner.get("share").asDouble()).isGreaterThanOrEqualTo(0.95);
        assertThat(known.get("price_share_front").size()).isGreaterThan(2);
    }

    @Test
    void beforeAnythingIsKnownThatIsSaid() throws IOException, InterruptedException {
        Ended ended = stopOnce("weather", "size", Ran.examples().resolve("plan.yaml"), "--years", 1000);
        assertThat(ended.status()).isEqualTo(130);
        assertThat(ended.out()).contains("Stopped before the answer was out.").contains("No rig judged so far");
    }

    @Test
    void whatTheAnswerCostsAtLeastIsTold() throws IOException, InterruptedException {
        Ended ended = stopOnce("\rscreening    =", "size", Ran.examples().resolve("plan.yaml"), "--confirm-years", 900);
        assertThat(ended.status()).isEqualTo(130);
        assertThat(ended.out())
                .containsPattern("Every rig cheaper than [0-9.,]+ USD has been judged|The least that will do");
    }

    /** Starts the program, waits for words on its terminal, and stops it. */
    private static Ended stopOnce(String said, Object... args) throws IOException, InterruptedException {
        Path java = Path.of(System.getProperty("java.home"), "bin", "java");
        List<String> command = new ArrayList<>(
                List.of(java.toString(), "-cp", System.getProperty("java.class.path"), Tideover.class.getName()));
        Stream.of(args).map(String::valueOf).forEach(command::add);
        ProcessBuilder builder = new ProcessBuilder(command);
        builder.environment().put("TIDEOVER_TERMINAL", "1");
        Path out = Files.createTempFile("stopped", ".out");
        builder.redirectOutput(out.toFile());
        Process process = builder.start();
        try (BufferedReader err =
                new BufferedReader(new InputStreamReader(process.getErrorStream(), StandardCharsets.UTF_8))) {
            StringBuilder seen = new StringBuilder();
            while (seen.indexOf(said) < 0) {
                int one = err.read();
                assertThat(one).as("it ended first: " + seen).isNotNegative();
                seen.append((char) one);
            }
            long from = System.nanoTime();
            new ProcessBuilder("kill", "-INT", String.valueOf(process.pid()))
                    .start()
                    .waitFor();
            int status = process.waitFor();
            long afterMs = (System.nanoTime() - from) / 1_000_000;
            System.getLogger("stopped").log(System.Logger.Level.INFO, "{0}: {1} ms", said.strip(), afterMs);
            return new Ended(status, Files.readString(out), afterMs);
        } finally {
            process.destroyForcibly();
            Files.deleteIfExists(out);
        }
    }
}
