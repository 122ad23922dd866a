package tideover.app.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Path;
import java.util.Collections;
import org.junit.jupiter.api.Test;

/** Places and rigs that {@code tideover places} must refuse with a sentence, and a short run. */
class PlacesCommandTest {
    private static final String PLAN = Path.of("..", "examples", "plan.yaml").toString();

    private final StringWriter out = new StringWriter();
    private final StringWriter err = new StringWriter();

    private int run(String... args) {
        return Tideover.run(new PrintWriter(out, true), new PrintWriter(err, true), args);
    }

    @Test
    void unknownAndRepeatedPlacesAreToldAtOnce() {
        assertThat(run(
                        "places",
                        PLAN,
                        "--rig=1",
                        "--at",
                        "Nowhere-at-all ZZ; Key West Intl Airport FL; key west intl airport fl"))
                .isEqualTo(2);
        assertThat(err.toString()).contains("2 things are wrong", "Nowhere-at-all ZZ", "twice");
        assertThat(out.toString()).isEmpty();
    }

    @Test
    void thirteenPlacesAreTooMany() {
        assertThat(run("places", PLAN, "--rig=1", "--at", String.join(";", Collections.nCopies(13, "Ambler AK"))))
                .isEqualTo(2);
        assertThat(err.toString()).contains("found 13 places, expected at most 12");
    }

    @Test
    void missingFilesAreNamed() {
        assertThat(run("places", "no-such-plan.yaml", "--rig=1")).isEqualTo(2);
        assertThat(err.toString()).contains("no-such-plan.yaml");
        assertThat(run("places", PLAN, "--rig=no-such-rig.yaml", "--at", "Ambler AK"))
                .isEqualTo(2);
        assertThat(err.toString()).contains("no-such-rig.yaml");
    }
}
