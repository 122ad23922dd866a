package tideover.app.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.LinkedHashMap;
import java.util.Map;
import org.junit.jupiter.api.Test;
import tools.jackson.databind.JsonNode;

/** A plan in which every way to get there competes, and a vehicle that is owned costs least. */
class OrchardTest {
    @Test
    void everyWayStandsInOneTable() {
        Ran ran = Ran.quick("size", Ran.examples().resolve("orchard.yaml"), "--format", "json");
        assertThat(ran.status()).isZero();
        JsonNode answer = ran.json();
        Map<String, Integer> cents = new LinkedHashMap<>();
        answer.path("ways")
                .forEach(way -> cents.put(
                        way.path("way").asString(), way.path("total_cents").asInt()));
        assertThat(cents.keySet())
                .containsExactly(
                        "ready_box",
                        "enclosure",
                        "separate_parts",
                        "engine_and_battery",
                        "engine_alone",
                        "vehicle",
                        "cold_alone",
                        "nothing");
        assertThat(cents).containsEntry("vehicle", 11_867).containsEntry("engine_alone", 46_435);
        assertThat(answer.path("answer").asString())
                .startsWith("The least that will do costs 118.67 USD: The orchard's old pickup (owned)")
                .contains("What is told below of a rig is told of that one.");
        assertThat(answer.path("rig").path("id").asString())
                .doesNotContain("gd-1100")
                .doesNotContain("pickup");
        // The rig has no engine, ways beside it have.
        assertThat(answer.path("cautions").toString())
                .containsOnlyOnce("Exhaust kills within minutes")
                .contains("A vehicle idles outdoors only");
    }
}
