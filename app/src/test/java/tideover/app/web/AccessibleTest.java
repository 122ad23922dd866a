package tideover.app.web;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.assertj.core.api.Assertions.assertThat;

import com.deque.html.axecore.playwright.AxeBuilder;
import com.deque.html.axecore.results.Rule;
import com.microsoft.playwright.Browser;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.assertions.LocatorAssertions;
import com.microsoft.playwright.options.ColorScheme;
import java.util.List;
import org.junit.jupiter.api.Test;
import tideover.app.web.Chrome.Window;

/** An accessibility engine (axe) on every page and state: no violation of the rules of WCAG 2.2, levels A and AA. */
class AccessibleTest {
    private static final List<String> RULES = List.of("wcag2a", "wcag2aa", "wcag21a", "wcag21aa", "wcag22aa");
    private static final LocatorAssertions.HasAttributeOptions SOON =
            new LocatorAssertions.HasAttributeOptions().setTimeout(90_000);

    /** One line for each rule that is broken, with where. */
    static List<String> violations(Page page) {
        return new AxeBuilder(page)
                .withTags(RULES).analyze().getViolations().stream()
                        .map(AccessibleTest::words)
                        .toList();
    }

    private static String words(Rule rule) {
        return rule.getId() + ": "
                + rule.getNodes().stream()
                        .map(node -> node.getTarget() + " " + node.getHtml())
                        .limit(4)
                        .toList();
    }

    private static void check(Page page, String name) {
        Chrome.shot(page, name);
        assertThat(violations(page)).as(name).isEmpty();
    }

    /** The engine sees what is wrong. */
    @Test
    void engineFindsAPlantedFault() {
        try (Window window = Window.wide();
                Served served = Served.start()) {
            Page page = window.page();
            page.navigate(served.at("new"));
            assertThat(violations(page)).isEmpty();
            page.evaluate(
                    "() => { document.querySelector('label[for=name]').remove(); document.querySelector('#name').removeAttribute('placeholder'); }");
            assertThat(violations(page)).anyMatch(words -> words.startsWith("label"));
        }
    }

    @Test
    void everyPageAndState() {
        for (ColorScheme scheme : List.of(ColorScheme.LIGHT, ColorScheme.DARK)) {
            String tone = scheme == ColorScheme.DARK ? "dark" : "wide";
            try (Served served = Served.start();
                    Window window = new Window(new Browser.NewContextOptions()
                            .setViewportSize(1280, 900)
                            .setColorScheme(scheme))) {
                Page page = window.page();
                page.navigate(served.at(""));
                check(page, "plans-" + tone);
                page.navigate(served.at("new"));
                check(page, "new-" + tone);
                page.navigate(served.at("plans/1"));
                assertThat(page.locator("#answer")).hasAttribute("data-state", "fresh", SOON);
                check(page, "sheet-" + tone);
                page.locator("#answer details.note summary").first().click();
                page.locator(".load .all summary").first().click();
                check(page, "sheet-open-" + tone);
                page.locator("#at-loads-2-draws").fill("seven");
                page.locator("#at-loads-2-draws").press("Tab");
                assertThat(page.locator("#answer")).hasAttribute("data-state", "held", SOON);
                check(page, "sheet-held-" + tone);
                page.locator("#at-loads-2-draws").fill("300 W");
                page.locator("#at-loads-2-draws").press("Tab");
                assertThat(page.locator("#answer")).hasAttribute("data-state", "working", SOON);
                assertThat(violations(page)).as("working").isEmpty();
                page.navigate(served.at("plans/1/parts"));
                check(page, "parts-" + tone);
                page.navigate(served.at("no-such-page"));
                window.forgive();
                check(page, "trouble-" + tone);
                window.forgive();
            }
        }
    }
}
