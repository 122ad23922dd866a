package tideover.app.web;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.assertj.core.api.Assertions.assertThat;

import com.deque.html.axecore.playwright.AxeBuilder;
import com.deque.html.axecore.results.Rule;
import com.microsoft.playwright.Browser;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.assertions.LocatorAssertions;
import com.microsoft.playwright.options.AriaRole;
import com.microsoft.playwright.options.ColorScheme;
import java.util.List;
import java.util.regex.Pattern;
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

    private static void press(Page page, String button) {
        page.getByRole(AriaRole.BUTTON, new Page.GetByRoleOptions().setName(button))
                .first()
                .click();
    }

    private static void checkNarrow(Page page, String name) {
        check(page, name);
        Object wider = page.evaluate("() => document.documentElement.scrollWidth > innerWidth");
        assertThat(wider).as(name + " scrolls sideways").isEqualTo(false);
    }

    /** On a telephone: nothing in the list, questions answered wrongly, an open reason, wrong parts, two tabs that differ. */
    @Test
    void byPhoneAndWhenThingsGoWrong() {
        try (Served served = Served.start();
                Window window = Window.phone()) {
            Page page = window.page();
            page.navigate(served.at(""));
            for (int left = page.locator("main > .plans > li").count(); left > 0; left--) {
                press(page, "Delete");
                assertThat(page.locator("main > .plans > li")).hasCount(left - 1);
            }
            checkNarrow(page, "plans-empty-phone");

            page.navigate(served.at("new"));
            checkNarrow(page, "new-phone");
            page.getByLabel("What is it called?").fill("Wrong at first");
            page.getByLabel("Which weather station is near?").fill("Nowhere at all");
            page.getByLabel("How long does the outage last?").fill("soon");
            press(page, "Make the sheet");
            assertThat(page.getByRole(AriaRole.ALERT)).containsText("write it as 24 h");
            assertThat(page.getByLabel("What is it called?")).hasValue("Wrong at first");
            window.forgive();
            checkNarrow(page, "new-problems-phone");
            page.getByLabel("Which weather station is near?").fill("Buffalo Niagara Intl Airport NY");
            page.getByLabel("How long does the outage last?").fill("24 h");
            press(page, "Make the sheet");

            page.waitForURL(Pattern.compile(".*/plans/\\d+"));
            assertThat(page.locator("#answer")).hasAttribute("data-state", "fresh", SOON);
            page.locator(".load .letter summary").first().click();
            assertThat(page.locator(".load .letter details[open] .slip").first())
                    .isVisible();
            checkNarrow(page, "sheet-open-phone");

            Page other = window.page();
            other.navigate(page.url());
            other.locator("#at-loads-1-draws").fill("12 W");
            page.locator("#at-loads-1-draws").fill("9 W");
            page.locator("#at-loads-1-draws").press("Tab");
            assertThat(page.locator("#t-at-loads-1-draws input[name=was]")).hasValue("9 W");
            other.locator("#at-loads-1-draws").press("Tab");
            assertThat(other.locator("#clashes .clash")).isVisible();
            checkNarrow(other, "clash-phone");
            other.close();

            page.navigate(page.url() + "/parts");
            checkNarrow(page, "parts-phone");
            page.getByLabel(Pattern.compile("^Or rows pasted")).fill("kind,id\nbattery,x\n");
            press(page, "Take them in");
            assertThat(page.getByRole(AriaRole.ALERT)).isVisible();
            window.forgive();
            checkNarrow(page, "parts-problems-phone");
        }
    }
}
