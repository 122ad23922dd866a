package tideover.app.files;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.params.provider.Arguments.arguments;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalLong;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import tideover.engine.answer.Question;
import tideover.engine.part.Listing;
import tideover.engine.part.Part;
import tideover.engine.part.Selling;
import tideover.engine.part.Selling.VolumePrice;
import tideover.engine.wiring.Terms;

/** Selling terms of parts, tax and shipping of a plan, and several parts files. */
class SellingReaderTest {
    private static final String TERMS = Sample.PLAN.replace("money:\n", """
            money:
              tax: 8.875 %
              shipping:
                - {seller: Tarnwhistle, each order: 9.00 USD, free from: 75 USD}
                - {seller: Quillbarn, each order: 24 USD}
            """);

    private static String panel(String column, String cell) {
        return Sample.HEADER + Sample.BOX + Sample.bent(Sample.PANEL, column, cell);
    }

    private static Listing listing(Question question, String id) {
        return question.parts().stream()
                .map(Part::listing)
                .filter(listing -> listing.id().equals(id))
                .findFirst()
                .orElseThrow();
    }

    @Test
    void theTermsOfAPartAreRead() {
        String panel = Sample.PANEL;
        for (Map.Entry<String, String> cell : Map.of(
                        "seller", "Tarnwhistle",
                        "source", "the shop's list of May",
                        "prices", "from 4 at 70; from 6 at 65.50;",
                        "shipping_each", "6.25",
                        "taxed", "No")
                .entrySet()) {
            panel = Sample.bent(panel, cell.getKey(), cell.getValue());
        }
        assertThat(listing(Sample.read(Sample.PLAN, Sample.HEADER + panel), "panel-100")
                        .selling())
                .isEqualTo(new Selling(
                        "Tarnwhistle",
                        List.of(new VolumePrice(4, 70_00), new VolumePrice(6, 65_50)),
                        6_25,
                        false,
                        "the shop's list of May"));
        assertThat(listing(Sample.read(Sample.PLAN), "panel-100").selling()).isEqualTo(Selling.PLAIN);
    }

    static Stream<Arguments> wrongCells() {
        String form = "expected volume prices, such as from 4 at 20.00; from 10 at 18.50.";
        return Stream.of(
                arguments("prices", "4 at 70", "found \"4 at 70\", " + form),
                arguments("prices", "from 4 at 70; ; from 6 at 60", "found \"\", " + form),
                arguments(
                        "prices",
                        "from 4 at $70",
                        "found \"from 4 at $70\", " + form.replace("18.50.", "18.50.")
                                + " Write the number alone; the currency has a column of its own."),
                arguments(
                        "prices",
                        "from 4 at 70; from 4 at 60",
                        "found \"from 4 at 60\", expected more pieces than 4, the lesser count first."),
                arguments(
                        "prices",
                        "from 1 at 70",
                        "found \"from 1 at 70\", expected more pieces than 1, the lesser count first."),
                arguments("prices", "from 1001 at 7", "found \"from 1001 at 7\", expected at most 1000 pieces."),
                arguments(
                        "prices",
                        "from 4 at 74",
                        "found \"from 4 at 74\", expected less than the price of fewer pieces, 74.00 USD."),
                arguments("prices", "from 4 at 70.005", "found \"from 4 at 70.005\", " + form),
                arguments("shipping_each", "-1", "found \"-1\", expected an amount of 0 or more."),
                arguments(
                        "shipping_each",
                        "6 USD",
                        "found \"6 USD\", expected an amount in plain digits, such as 249.50. Write the number alone, 6."),
                arguments(
                        "taxed",
                        "maybe",
                        "found \"maybe\", expected whether sales tax is added to its price: yes, no."));
    }

    @ParameterizedTest
    @MethodSource("wrongCells")
    void wrongTermsAreTold(String column, String cell, String told) {
        assertThat(Sample.problemsInParts(panel(column, cell))).containsExactly("parts.csv:3 " + column + ": " + told);
    }

    @Test
    void whatIsOwnedHasNoTerms() {
        assertThat(Sample.problemsInParts(
                        Sample.HEADER + Sample.PANEL + Sample.bent(Sample.BATTERY, "shipping_each", "4")))
                .containsExactly(
                        "parts.csv:3 shipping_each: found \"4\", expected nothing, for what is owned costs nothing"
                                + " more.");
    }

    @Test
    void taxAndShippingAreRead() {
        Terms terms = Sample.read(TERMS, panel("seller", "Tarnwhistle")).terms();
        assertThat(terms)
                .isEqualTo(new Terms(
                        88_750,
                        Map.of(
                                "Tarnwhistle", new Terms.Order(9_00, OptionalLong.of(75_00)),
                                "Quillbarn", new Terms.Order(24_00, OptionalLong.empty()))));
        assertThat(Sample.read(Sample.PLAN).terms()).isEqualTo(Terms.NONE);
    }

    @Test
    void aSlipInASellersNameIsACaution() {
        assertThat(Sample.read(TERMS, panel("seller", "Tarnwhistel")).cautions())
                .contains(
                        "plan.yaml:28 money.shipping[1].seller: \"Tarnwhistle\" sells none of the parts. Is it"
                                + " \"Tarnwhistel\"?",
                        "plan.yaml:29 money.shipping[2].seller: \"Quillbarn\" sells none of the parts.",
                        "parts.csv:3 seller: nothing is told of what \"Tarnwhistel\" asks for shipping, so nothing is"
                                + " counted. Is it \"Tarnwhistle\"?");
    }

    static Stream<Arguments> wrongTerms() {
        return Stream.of(
                arguments(
                        "8.875 %",
                        "8.87505 %",
                        "plan.yaml:26 money.tax: found \"8.87505 %\", expected at most four digits after the point."),
                arguments(
                        "8.875 %",
                        "8.875",
                        "plan.yaml:26 money.tax: found \"8.875\", expected a percentage with its sign. Write 8.875 %."),
                arguments(
                        "8.875 %",
                        "-1 %", "plan.yaml:26 money.tax: found \"-1 %\", expected a percentage from 0 % to 100 %."),
                arguments(
                        "24 USD",
                        "24 EUR",
                        "plan.yaml:29 money.shipping[2].each order: found \"24 EUR\", expected one currency in the whole plan. The first price is in USD."),
                arguments(
                        "Quillbarn",
                        "Tarnwhistle",
                        "plan.yaml:29 money.shipping[2].seller: found \"Tarnwhistle\" a second time, expected each seller once. The first stands in line 28."),
                arguments(
                        ", each order: 24 USD",
                        "",
                        "plan.yaml:29 money.shipping[2]: found no \"each order:\", expected what shipping an order costs, such as 35 USD."),
                arguments(
                        "free from",
                        "free form",
                        "plan.yaml:28 money.shipping[1]: found the key \"free form\", expected the key \"free from\". Write free from:"));
    }

    @ParameterizedTest
    @MethodSource("wrongTerms")
    void wrongTaxAndShippingAreTold(String from, String to, String sentence) {
        assertThat(TERMS).contains(from);
        assertThat(Sample.problemsIn(TERMS.replace(from, to))).containsExactly(sentence);
    }

    private static Question merged(Map<String, String> files, String names) {
        Map<String, String> all = new HashMap<>(files);
        all.put("parts.csv", Sample.PARTS);
        return PlanFile.read(
                "plan.yaml",
                Sample.PLAN.replace("parts: parts.csv", "parts: " + names),
                Beside.texts(all),
                ExampleTest.STATIONS);
    }

    /** Another way to write the same name would replace every part by itself. */
    @Test
    void aFileNamedTwiceIsRefusedHoweverItIsWritten() {
        assertThat(Sample.problemsOf(() -> merged(Map.of(), "[parts.csv, ./parts.csv]")))
                .singleElement()
                .asString()
                .contains("found \"./parts.csv\" a second time");
    }

    @Test
    void aLaterFileReplacesWholeParts() {
        String own = Sample.HEADER
                + Sample.bent(Sample.bent(Sample.PANEL, "price", "60"), "at_hand", "")
                + Sample.bent(Sample.BATTERY, "id", "batt-51");
        Question question = merged(Map.of("own.csv", own), "[parts.csv, own.csv]");
        assertThat(question.parts())
                .extracting(part -> part.listing().id() + " " + part.listing().source())
                .containsExactly(
                        "box-1 parts.csv:2", "panel-100 own.csv:2", "batt-50 parts.csv:4", "batt-51 own.csv:3");
        assertThat(listing(question, "panel-100").priceCents()).isEqualTo(60_00);
        // Nothing of the earlier row is carried over: it said 6.
        assertThat(listing(question, "panel-100").atHand()).isEqualTo(1);
        assertThat(question.notes())
                .filteredOn(note -> note.name().equals("Parts replaced by a later file"))
                .singleElement()
                .satisfies(note -> {
                    assertThat(note.value()).isEqualTo("panel-100 (parts.csv:3 by own.csv:2)");
                    assertThat(note.source()).isEqualTo("plan.yaml:31");
                });
        assertThat(question.notes())
                .filteredOn(note -> note.name().equals("Parts file"))
                .hasSize(2);
        assertThat(listing(merged(Map.of("own.csv", own), "[own.csv, parts.csv]"), "panel-100")
                        .priceCents())
                .isEqualTo(74_00);
    }

    @Test
    void everyFileOfSeveralTellsItsOwnErrors() {
        String own = Sample.HEADER + Sample.bent(Sample.PANEL, "panel_w", "x") + Sample.BATTERY + Sample.BATTERY;
        assertThat(Sample.problemsOf(() -> merged(Map.of("own.csv", own), "[own.csv, gone.csv, parts.csv, own.csv]")))
                .containsExactly(
                        "own.csv:2 panel_w: found \"x\", expected rated watts, above 0 W and at most 2000 W.",
                        "own.csv:4 id: found \"batt-50\" a second time, expected an id of its own for each part. The first"
                                + " stands at own.csv:3.",
                        "plan.yaml:31 parts[2]: found no file \"gone.csv\", expected a parts file. Check the name and the"
                                + " folder.",
                        "plan.yaml:31 parts[4]: found \"own.csv\" a second time, expected each file once. The first stands"
                                + " in line 31.");
    }

    @Test
    void allFilesAreInOneCurrency() {
        String own = Sample.HEADER + Sample.bent(Sample.PANEL, "currency", "EUR");
        assertThat(Sample.problemsOf(() -> merged(Map.of("own.csv", own), "[parts.csv, own.csv]")))
                .containsExactly(
                        "own.csv:2 currency: found \"EUR\", expected USD, the plan's currency, for every price.");
    }

    @Test
    void smallPartsMayStandInSeveralFilesToo() {
        String own = SmallSample.HEADER + SmallSample.bent(SmallSample.TOOL, "price", "0.50");
        Question question = PlanFile.read(
                "plan.yaml",
                SmallSample.PLAN.replace(SmallSample.NAME, "[" + SmallSample.NAME + ", own.csv]"),
                Beside.texts(Map.of("parts.csv", Sample.PARTS, SmallSample.NAME, SmallSample.FILE, "own.csv", own)),
                ExampleTest.STATIONS);
        assertThat(question.smallParts()).hasSize(13);
        assertThat(question.smallParts().get(12).listing().priceCents()).isEqualTo(50);
        assertThat(question.smallParts().get(12).listing().source()).isEqualTo("own.csv:2");
    }

    /** An id is one thing only: what joins panels is no panel. */
    @Test
    void anIdOfAPartIsNoIdOfASmallPart() {
        String own = SmallSample.HEADER + SmallSample.bent(SmallSample.TOOL, "id", "batt-50");
        assertThat(SmallSample.problemsIn(own))
                .containsExactly(
                        SmallSample.NAME + ":2 id: found \"batt-50\" a second time, expected an id of its own for"
                                + " each part. The first stands at parts.csv:4.");
    }
}
