package tideover.app.cli;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import tools.jackson.databind.JsonNode;

/**
 * The demo's answer to the last outage. These are our own digits, not the world's: a change here is looked at by a
 * person, who finds the reason before moving a number.
 */
class DemoPinnedTest {
    @Test
    void theDemoAnswersAsBefore() {
        Ran ran = Ran.of("--format", "json");
        assertThat(ran.status()).isZero();
        JsonNode rig = ran.json().path("rig");
        assertThat(rig.path("id").asString()).isEqualTo("cs-dc+2xhb-100+tw-i150+on-50");
        assertThat(rig.path("price").path("parts_cents").asLong()).isEqualTo(56_000);
        assertThat(rig.path("price").path("small_parts_cents").asLong()).isEqualTo(21_310);
        assertThat(rig.path("price").path("tools_cents").asLong()).isEqualTo(6_400);
        assertThat(rig.path("price").path("total_cents").asLong()).isEqualTo(83_710);
        assertThat(rig.path("carried_share").path("outages").asInt()).isEqualTo(66_240);
        assertThat(rig.path("carried_share").path("carried").asInt()).isEqualTo(63_256);
        assertThat(rig.path("carried_share_confirmed").path("carried").asInt()).isEqualTo(211_427);
        assertThat(rig.path("carried_share_darkest_days").path("carried").asInt())
                .isEqualTo(2_674);
    }
}
