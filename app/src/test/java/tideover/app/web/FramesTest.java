package tideover.app.web;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Map;
import org.junit.jupiter.api.Test;

/** What a reader chooses for all pages. */
class FramesTest {
    @Test
    void unitsAndAnotherCurrencyBesideTheFirst() {
        try (Served served = Served.start()) {
            Spoken spoken = new Spoken(served);
            String token = spoken.token();
            served.pages.example();
            assertThat(spoken.get("/plans/1").body())
                    .contains(" kg")
                    .doesNotContain(" lb)")
                    .doesNotContain(" EUR)");
            assertThat(choose(spoken, token, Frame.BOTH, "1 USD = 0.92 EUR").status())
                    .isEqualTo(303);
            String sheet = spoken.get("/plans/1").body();
            assertThat(sheet).contains(" lb)", " degF)", " EUR)").contains("value=\"72 h\"");
            assertThat(spoken.get("/plans/1/plan.yaml").body()).doesNotContain(" EUR)");
            assertThat(choose(spoken, token, Frame.METRIC, "").status()).isEqualTo(303);
            assertThat(spoken.get("/plans/1").body()).doesNotContain(" lb)").doesNotContain(" EUR)");
        }
    }

    @Test
    void whatIsNoRateChangesNothing() {
        try (Served served = Served.start()) {
            Spoken spoken = new Spoken(served);
            Spoken.Said said = choose(spoken, spoken.token(), Frame.BOTH, "\"><script>alert(1)</script>");
            assertThat(said.status()).isEqualTo(400);
            assertThat(said.body()).contains("1 USD = 0.92 EUR").doesNotContain("<script>alert");
            assertThat(served.store.setting("units")).isEmpty();
            assertThat(choose(spoken, spoken.token(), "furlongs", "").status()).isEqualTo(303);
            assertThat(served.store.setting("units")).isEmpty();
        }
    }

    private static Spoken.Said choose(Spoken spoken, String token, String units, String rate) {
        return spoken.post("/prefs", Map.of(), "token", token, "back", "/", "units", units, "rate", rate);
    }
}
