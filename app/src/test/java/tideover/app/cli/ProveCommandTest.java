package tideover.app.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class ProveCommandTest {
    /** Its inverter empties the battery by night, when nothing is wanted; the pump misses it hours later. */
    @Test
    void provesARigThatBreaksRules(@TempDir Path folder) throws IOException {
        for (String name :
                new String[] {"sump-parts.csv", "orchard-shop.csv", "orchard-shelf.yaml", "small-parts.csv"}) {
            Files.copy(Ran.examples().resolve(name), folder.resolve(name));
        }
        String sump = Files.readString(Ran.examples().resolve("sump.yaml"));
        Path plan = Files.writeString(
                folder.resolve("plan.yaml"),
                sump.replace("parts: sump-parts.csv", "parts: [sump-parts.csv, orchard-shop.csv, orchard-shelf.yaml]"));
        Ran ran = Ran.quick("prove", plan, "--rig", "om-100-used+tractor-inverter");
        assertThat(ran.status()).isIn(0, 3);
        assertThat(ran.err()).doesNotContain("Exception");
        assertThat(ran.out()).contains("Router wants 12 V DC");
    }
}
