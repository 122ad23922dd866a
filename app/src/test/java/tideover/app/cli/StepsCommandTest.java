package tideover.app.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;

/** Sums and files that {@code tideover steps} must refuse with a sentence, before any work. */
class StepsCommandTest {
    private static final String PLAN = Path.of("..", "examples", "plan.yaml").toString();

    private final StringWriter out = new StringWriter();
    private final StringWriter err = new StringWriter();

    private int run(String... args) {
        return Tideover.run(new PrintWriter(out, true), new PrintWriter(err, true), args);
    }

    @Test
    void bothWrongSumsAreToldAtOnce() {
        assertThat(run("steps", PLAN, "--now=-5 USD", "--later", "400 EUR")).isEqualTo(2);
        assertThat(err.toString())
                .contains(
                        "2 things are wrong", "--now: found -5 USD", "--later: found 400 EUR", "plan's currency, USD");
        assertThat(out.toString()).isEmpty();
    }

    @Test
    void aSumThatIsNoSumIsRefused() {
        assertThat(run("steps", PLAN, "--now", "much", "--later", "0.001")).isEqualTo(2);
        assertThat(err.toString()).contains("--now: found much", "--later: found 0.001");
    }

    @Test
    void bothSumsAreAsked() {
        assertThat(run("steps", PLAN, "--now", "400 USD")).isEqualTo(2);
        assertThat(err.toString()).contains("--later");
    }

    @Test
    void aMissingPlanIsNamed() {
        assertThat(run("steps", "no-such-plan.yaml", "--now", "1 USD", "--later", "1 USD"))
                .isEqualTo(2);
        assertThat(err.toString()).contains("no-such-plan.yaml");
    }
}
