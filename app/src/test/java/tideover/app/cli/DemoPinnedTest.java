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
        assertThat(rig.path("id").asString()).isEqualTo("cs-dc+2xhb-100-used+tw-i150+3xon-100-used");
        assertThat(rig.path("price").path("total_cents").asLong()).isEqualTo(51_300);
        assertThat(rig.path("carried_share").path("outages").asInt()).isEqualTo(66_240);
        assertThat(rig.path("carried_share").path("carried").asInt()).isEqualTo(63_521);
        assertThat(rig.path("carried_share_confirmed").path("carried").asInt()).isEqualTo(212_374);
        assertThat(rig.path("carried_share_darkest_days").path("carried").asInt())
                .isEqualTo(2_718);
    }
}
