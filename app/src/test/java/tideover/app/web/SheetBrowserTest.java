package tideover.app.web;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.assertions.LocatorAssertions;
import com.microsoft.playwright.options.AriaRole;
import com.microsoft.playwright.options.BoundingBox;
import com.microsoft.playwright.options.FilePayload;
import com.microsoft.playwright.options.Media;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.regex.Pattern;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import tideover.app.web.Chrome.Window;

/** What a household does on the sheet, in a real browser. */
class SheetBrowserTest {
    private static final LocatorAssertions.HasAttributeOptions SOON =
            new LocatorAssertions.HasAttributeOptions().setTimeout(90_000);

    private static Served served;

    @BeforeAll
    static void serve() {
        served = Served.start();
    }

    @AfterAll
    static void end() {
        served.close();
    }

    private static void awaitAnswer(Page page) {
        assertThat(page.locator("#answer")).hasAttribute("data-state", "fresh", SOON);
    }

    private static Locator draws(Page page, int number) {
        return page.locator("#at-loads-" + number + "-draws");
    }

    private static void type(Locator field, String text) {
        field.fill(text);
        field.press("Tab");
    }

    /** A plan of one's own in a few answers. */
    private static void begin(Page page, String name) {
        page.navigate(served.at("new"));
        page.getByLabel("What is it called?").fill(name);
        page.getByLabel("Which weather station is near?").fill("Buffalo Niagara Intl Airport NY");
        page.getByRole(AriaRole.BUTTON, new Page.GetByRoleOptions().setName("Make the sheet"))
                .click();
    }

    @Test
    void firstOwnAnswerFromAnEmptyStart() {
        try (Window window = Window.wide()) {
            Page page = window.page();
            page.navigate(served.at(""));
            page.getByRole(AriaRole.LINK, new Page.GetByRoleOptions().setName("New plan"))
                    .click();
            page.getByRole(AriaRole.BUTTON, new Page.GetByRoleOptions().setName("Make the sheet"))
                    .click();
            assertThat(page.getByLabel("What is it called?")).isFocused();
            begin(page, "House on the hill");
            awaitAnswer(page);
            assertThat(page.locator("#answer .sentence")).containsText("The least that will do costs");
            assertThat(page.locator("#placed")).containsText("Buffalo");
            assertThat(page.locator("#carry")).containsText("hours carried");
            assertThat(page.locator("#build")).containsText("One line");
            Chrome.shot(page, "own-plan-wide");
        }
    }

    @Test
    void anEditTellsBoundsAndThenTheNewAnswer() {
        try (Window window = Window.wide()) {
            Page page = window.page();
            page.navigate(served.at(""));
            page.getByRole(AriaRole.BUTTON, new Page.GetByRoleOptions().setName("Begin with the invented example"))
                    .click();
            awaitAnswer(page);
            String before = page.locator("#answer .sentence").innerText();
            page.locator("#at-loads-2-draws").fill("40 W");
            page.locator("#at-loads-2-draws").press("Tab");
            assertThat(page.locator("#answer")).containsText("The rig named before costs");
            // What is typed meanwhile stays, and so does where one is.
            page.locator("#at-loads-2-need").fill("always on, I think");
            awaitAnswer(page);
            assertThat(page.locator("#answer .sentence")).not().hasText(before);
            assertThat(page.locator("#at-loads-2-need")).hasValue("always on, I think");
            assertThat(page.locator("#at-loads-2-need")).isFocused();
            page.locator("#at-loads-2-need").press("Tab");
            assertThat(page.locator("#answer")).hasAttribute("data-state", "held");
            assertThat(page.locator("#t-at-loads-2-need")).containsText("expected");
            assertThat(page.locator("#at-loads-2-need")).hasAttribute("aria-invalid", "true");
            Chrome.shot(page, "held-wide");
            type(page.locator("#at-loads-2-need"), "always on");
            awaitAnswer(page);
        }
    }

    @Test
    void aRigIsPickedFromThePriceStepLine() {
        try (Window window = Window.wide()) {
            Page page = window.page();
            begin(page, "To pick from");
            awaitAnswer(page);
            Locator steps = page.locator("#least figure .wide a.pick");
            assertThat(steps.first()).isVisible();
            steps.last().click();
            page.waitForURL(Pattern.compile(".*\\?rig=.*"));
            awaitAnswer(page);
            assertThat(page.locator("#least")).containsText("The rig looked at");
            assertThat(page.locator("#answer .sentence")).containsText("This rig costs");
            page.goBack();
            awaitAnswer(page);
            assertThat(page.locator("#answer .sentence")).containsText("The least that will do");
        }
    }

    @Test
    void twoTabsLoseNothing() {
        try (Window window = Window.wide()) {
            Page one = window.page();
            begin(one, "Two tabs");
            Page other = window.page();
            other.navigate(one.url());
            // Both have the first line before them; the other is still being typed in when the first is kept.
            draws(other, 1).fill("12 W");
            type(draws(one, 1), "9 W");
            assertThat(one.locator("#t-at-loads-1-draws input[name=was]")).hasValue("9 W");
            type(draws(one, 2), "10 W");
            draws(other, 1).press("Tab");
            assertThat(other.locator("#clashes")).containsText("9 W");
            assertThat(other.locator("#clashes")).containsText("12 W");
            Chrome.shot(other, "clash-wide");
            // The other line came over by itself.
            assertThat(draws(other, 2)).hasValue("10 W");
            other.getByRole(AriaRole.BUTTON, new Page.GetByRoleOptions().setName("Keep what I typed"))
                    .click();
            assertThat(draws(other, 1)).hasValue("12 W");
            assertThat(draws(one, 1)).hasValue("12 W", new LocatorAssertions.HasValueOptions().setTimeout(15_000));
        }
    }

    @Test
    void weatherAndPartsComeInAsFiles() {
        try (Window window = Window.wide()) {
            Page page = window.page();
            begin(page, "With files");
            page.getByLabel(Pattern.compile("^Own hourly weather"))
                    .setInputFiles(new FilePayload("my weather.csv", "text/csv", Spoken.weather()));
            page.getByRole(AriaRole.BUTTON, new Page.GetByRoleOptions().setName("Use this weather"))
                    .click();
            assertThat(page.locator("#at-place-hourly-file")).hasValue("my-weather.csv");
            awaitAnswer(page);
            page.getByRole(
                            AriaRole.LINK,
                            new Page.GetByRoleOptions().setName("Parts").setExact(true))
                    .click();
            assertThat(page.getByRole(AriaRole.STATUS).first()).containsText("181 of 181 parts");
            page.getByLabel(Pattern.compile("^Or rows pasted"))
                    .fill(
                            "kind\tid\tname\tprice\tcurrency\tpriced_on\tcondition\tmass_kg\tusable_wh\tcharge_efficiency_pct\t"
                                    + "discharge_efficiency_pct\tnominal_v\tmax_charge_a\tmax_discharge_a\n"
                                    + "battery\tours-1\tOur <b>own</b>\t10.00\tUSD\t2026-01-01\tused\t5\t500\t95\t95\t12.8\t20\t50\n");
            page.getByRole(AriaRole.BUTTON, new Page.GetByRoleOptions().setName("Take them in"))
                    .click();
            assertThat(page.getByRole(AriaRole.STATUS).first()).containsText("182 of 182 parts");
            page.getByLabel("Words in it").fill("ours-1");
            page.getByLabel("Words in it").press("Enter");
            assertThat(page.locator("tbody tr")).hasCount(1);
            assertThat(page.locator("tbody tr")).containsText("Our <b>own</b>");
            page.getByRole(AriaRole.BUTTON, new Page.GetByRoleOptions().setName(Pattern.compile("^is owned")))
                    .click();
            assertThat(page.locator("tbody tr")).containsText("0.00 USD");
            page.getByLabel(Pattern.compile("^A file of parts"))
                    .setInputFiles(new FilePayload(
                            "wrong.csv", "text/csv", "kind,id\nbattery,x\n".getBytes(StandardCharsets.UTF_8)));
            window.forgive();
            page.getByRole(AriaRole.BUTTON, new Page.GetByRoleOptions().setName("Take them in"))
                    .click();
            assertThat(page.getByRole(AriaRole.ALERT)).containsText("wrong.csv");
            window.forgive();
            Chrome.shot(page, "parts-trouble-wide");
        }
    }

    @Test
    void phoneKeyboardPrintAndNoScript() {
        try (Window phone = Window.phone()) {
            Page page = phone.page();
            begin(page, "By phone");
            awaitAnswer(page);
            Object wider = page.evaluate("() => document.documentElement.scrollWidth > innerWidth");
            assertThat(wider).isEqualTo(false);
            Chrome.shot(page, "sheet-phone");
            page.navigate(served.at(""));
            Chrome.shot(page, "plans-phone");
        }
        try (Window window = Window.wide()) {
            Page page = window.page();
            page.navigate(served.at("new"));
            // From the first key on, by keys alone.
            page.locator("#name").focus();
            page.keyboard().type("By keys");
            page.keyboard().press("Tab");
            page.keyboard().type("Buffalo Niagara Intl Airport NY");
            page.keyboard().press("Escape");
            page.keyboard().press("Enter");
            page.waitForURL(Pattern.compile(".*/plans/\\d+"));
            draws(page, 1).focus();
            page.keyboard().press("Control+A");
            page.keyboard().type("11 W");
            page.keyboard().press("Enter");
            assertThat(page.locator("#t-at-loads-1-draws input[name=was]")).hasValue("11 W");
            String outline =
                    String.valueOf(page.evaluate("() => getComputedStyle(document.activeElement).outlineStyle"));
            assertThat(outline).isEqualTo("solid");
            awaitAnswer(page);
            page.emulateMedia(new Page.EmulateMediaOptions().setMedia(Media.PRINT));
            assertThat(page.locator(".head")).isHidden();
            page.pdf(new Page.PdfOptions().setPath(Path.of("target", "shots", "sheet.pdf")));
        }
        try (Window window = Window.withoutScript()) {
            Page page = window.page();
            begin(page, "Without script");
            draws(page, 1).fill("9 W");
            draws(page, 1).press("Enter");
            assertThat(draws(page, 1)).hasValue("9 W");
        }
    }

    /** In the lines of the loads: beside it, and not under it. */
    @Test
    void aReasonsLetterStandsBesideItsValue() {
        try (Window window = Window.wide();
                Window phone = Window.phone()) {
            Page page = window.page();
            begin(page, "With letters");
            type(draws(page, 1), "9 W");
            assertThat(page.locator("#t-at-loads-1-draws input[name=was]")).hasValue("9 W");
            awaitAnswer(page);
            // It comes with the answer, without the page being loaded anew, and tells of what is typed now.
            Locator letter = page.locator("#n-at-loads-1-draws summary");
            letter.click();
            assertThat(page.locator("#n-at-loads-1-draws .slip")).containsText("9 W");
            letter.click();
            Page narrow = phone.page();
            narrow.navigate(page.url());
            awaitAnswer(narrow);
            for (Page seen : List.of(page, narrow)) {
                Locator letters = seen.locator(".load > .fields .letter summary");
                assertThat(letters.count()).isPositive();
                for (Locator one : letters.all()) {
                    BoundingBox mark = one.boundingBox();
                    BoundingBox value =
                            one.locator("xpath=ancestor::form//*[@name='now']").boundingBox();
                    assertThat(mark.x).isGreaterThanOrEqualTo(value.x + value.width - 1);
                    assertThat(mark.y).isLessThan(value.y + value.height / 2);
                }
            }
        }
    }

    /** From key to key: each stop shows where one is, and an edit leads on to the next field of its line. */
    @Test
    void everyStopOfTheTabKeyIsSeen() {
        try (Window window = Window.wide()) {
            Page page = window.page();
            page.navigate(served.at("new"));
            Set<String> stops = new LinkedHashSet<>();
            boolean made = false;
            for (int step = 0; step < 80 && !made; step++) {
                page.keyboard().press("Tab");
                String stop = String.valueOf(
                        page.evaluate("() => { const at = document.activeElement, look = getComputedStyle(at);"
                                + " return [at.name || at.textContent.trim(), at.value, look.outlineStyle,"
                                + " parseFloat(look.outlineWidth) >= 2].join('|'); }"));
                assertThat(stop).endsWith("|solid|true");
                stops.add(stop.replaceAll("\\|.*", ""));
                made = stop.startsWith("Make the sheet");
            }
            assertThat(made).isTrue();
            assertThat(stops)
                    .containsSubsequence("name", "station", "hours", "months", "carried", "money", "room")
                    .contains("Make the sheet");

            begin(page, "Stop by stop");
            draws(page, 1).fill("11 W");
            draws(page, 1).press("Tab");
            assertThat(page.locator("#t-at-loads-1-draws input[name=was]")).hasValue("11 W");
            Object line = page.evaluate("() => document.activeElement.closest('.load')?.id");
            assertThat(line).isEqualTo("at-loads-1-");
            Object before = page.evaluate(
                    "() => !!(document.getElementById('at-loads-1-draws').compareDocumentPosition(document.activeElement)"
                            + " & Node.DOCUMENT_POSITION_FOLLOWING)");
            assertThat(before).isEqualTo(true);
        }
    }

    @Test
    void withoutScriptAWrongValueComesBackWithWhatIsWrong() {
        try (Window window = Window.withoutScript()) {
            Page page = window.page();
            begin(page, "Wrong without script");
            draws(page, 1).fill("seven");
            draws(page, 1).press("Enter");
            assertThat(draws(page, 1)).hasValue("seven");
            assertThat(draws(page, 1)).hasAttribute("aria-invalid", "true");
            assertThat(page.locator("#t-at-loads-1-draws")).containsText("expected");
        }
    }
}
