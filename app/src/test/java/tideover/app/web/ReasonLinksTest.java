package tideover.app.web;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;

/** What a number came from is a click away. */
class ReasonLinksTest {
    @Test
    void everyLinkWithinTheSheetLeadsToAPlaceInIt() {
        try (Served served = Served.start()) {
            served.pages.example();
            String sheet = new Spoken(served).get("/plans/1").body();
            List<String> links = found(sheet, "href=\"#([^\"]+)\"");
            assertThat(links).contains("at-outage-lasts", "parts-and-prices", "small-parts", "loads-head");
            assertThat(found(sheet, " id=\"([^\"]+)\"")).containsAll(links).doesNotHaveDuplicates();
        }
    }

    private static List<String> found(String text, String pattern) {
        return Pattern.compile(pattern)
                .matcher(text)
                .results()
                .map((MatchResult one) -> one.group(1))
                .toList();
    }
}
