package tideover.app.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import tideover.app.files.PartsFile;
import tideover.app.files.PlanFile;
import tideover.app.files.StationTable;
import tideover.engine.part.Part;
import tools.jackson.databind.JsonNode;

/** {@code --chosen}: what was chosen, as a table and as a parts file; and a price with tax and shipping through all reports. */
class ChosenTest {
    @TempDir
    private static Path folder;

    private static Path plan;
    private static Ran text;
    private static List<String> lines;

    @BeforeAll
    static void prove() throws IOException {
        plan = Ran.household(folder, "parts: parts.csv", "parts: [parts.csv, own.yaml]");
        Files.writeString(
                plan,
                Files.readString(plan)
                        .replace(
                                "money:\n",
                                "money:\n  tax: 8.875 %\n  shipping: [{seller: =Tarnwhistle, each order: 9.00 USD}]\n"));
        Files.writeString(folder.resolve("own.yaml"), """
                - kind: panel
                  id: own-100
                  name: "=1+1, \\"quoted\\""
                  price: 61.10 USD
                  priced_on: 2026-02-11
                  condition: new
                  mass_kg: 15 lb
                  panel_w: 0.1 kW
                  open_circuit_v: 22.4
                  power_pct_per_k: -0.36
                  voltage_pct_per_k: -0.28
                  noct_c: 45
                  connector: "@plug"
                  seller: =Tarnwhistle
                  source: the shop's list of May
                  prices: [from 3 at 40.00, from 5 at 39 USD]
                  shipping_each: 0.25 USD
                """);
        Files.writeString(
                folder.resolve("chosen-rig.yaml"),
                "rig: Panels of our own\nparts:\n  - {id: cs-dc}\n  - {id: hb-100, count: 2}\n  - {id: own-100, count: 2}\n");
        text = run("--report", folder.resolve("page.html"));
        lines = Files.readAllLines(folder.resolve("chosen.csv"));
    }

    private static Ran run(Object... more) {
        Object[] args = {
            "prove", plan, "--rig", folder.resolve("chosen-rig.yaml"), "--chosen", folder.resolve("chosen.csv")
        };
        Object[] all = java.util.stream.Stream.concat(
                        java.util.stream.Stream.of(args), java.util.stream.Stream.of(more))
                .toArray();
        return Ran.quick(all);
    }

    private static Part part(List<Part> parts, String id) {
        return parts.stream()
                .filter(part -> part.listing().id().equals(id))
                .findFirst()
                .orElseThrow();
    }

    /** What is read again is what the plan read, but for where it stands. */
    @Test
    void theMainPartsReadAgain() {
        assertThat(text.err()).isEmpty();
        List<Part> again = PartsFile.read(folder.resolve("chosen.csv")).parts();
        List<Part> before = PlanFile.read(plan, StationTable.load()).parts();
        assertThat(again).extracting(one -> one.listing().id()).containsExactlyInAnyOrder("cs-dc", "hb-100", "own-100");
        for (Part one : again) {
            assertThat(words(one)).isEqualTo(words(part(before, one.listing().id())));
        }
    }

    /** All that a part says but for where it stands; a mass in pounds is written in kilograms, to the milligram. */
    private static String words(Part part) {
        return part.toString()
                .replaceAll("source=[^,]*:\\d+", "")
                .replaceAll("massKg=6.8038855\\d*", "massKg=6.8038855");
    }

    @Test
    void noCellIsAFormula() {
        assertThat(lines.get(0))
                .startsWith("kind,id,name,price,currency,priced_on,condition,mass_kg,needed,bought,paid,");
        String panel = lines.stream()
                .filter(line -> line.contains("own-100"))
                .findFirst()
                .orElseThrow();
        assertThat(panel)
                .contains(
                        ",\"\u00A0=1+1, \"\"quoted\"\"\",61.10,",
                        ",\"\u00A0=Tarnwhistle\",",
                        ",\"\u00A0@plug\"",
                        ",-0.36,")
                .contains(",2,3,120.00,")
                .contains("from 3 at 40.00; from 5 at 39.00")
                .contains(",0.25");
        assertThat(lines).noneMatch(line -> line.matches("(.*,)?\"?[=+@].*"));
        assertThat(lines.stream().map(line -> line.split(",", 2)[0]))
                .contains("# fuse", "# tool", "# sum")
                .endsWith("# sum");
    }

    /** Three panels at 40.00 cost less than two at 61.10, which the reports say; every cent of the total is in a row. */
    @Test
    void theRowsAddUpToTheTotal() {
        JsonNode price = run("--format", "json").json().path("rig").path("price");
        List<Integer> columns = List.of(List.of(lines.get(0).split(",")).indexOf("paid"));
        long paid = 0;
        long told = 0;
        for (String line : lines.subList(1, lines.size())) {
            String cell = line.replaceAll("\"[^\"]*(\"\"[^\"]*)*\"", "x").split(",", -1)[columns.get(0)];
            long cents = cell.isEmpty() ? 0 : Long.parseLong(cell.replace(".", ""));
            if (line.contains("in all")) {
                told = cents;
            } else {
                paid += cents;
            }
        }
        assertThat(paid).isEqualTo(told).isEqualTo(price.path("total_cents").asLong());
        assertThat(price.path("shipping_cents").asLong()).isEqualTo(9_00 + 3 * 25);
        long goods = price.path("parts_cents").asLong()
                + price.path("small_parts_cents").asLong()
                + price.path("tools_cents").asLong();
        assertThat(price.path("tax_cents").asLong()).isEqualTo((goods * 8875 + 50_000) / 100_000);
        assertThat(goods
                        + price.path("tax_cents").asLong()
                        + price.path("shipping_cents").asLong())
                .isEqualTo(told);
    }

    @Test
    void everyReportTellsTaxShippingAndWhatIsBoughtMore() throws IOException {
        String page = Files.readString(folder.resolve("page.html"));
        for (String report : List.of(text.out(), page)) {
            assertThat(report.replaceAll("\\s+", " "))
                    .contains("(2 needed, 3 bought)", "sales tax", "9.75 shipping", "list of May", "120.00 USD");
        }
        JsonNode rig = run("--format", "json").json().path("rig");
        JsonNode panel = rig.path("parts").get(2);
        assertThat(panel.path("id").asString()).isEqualTo("own-100");
        assertThat(panel.path("bought_count").asInt()).isEqualTo(3);
        assertThat(panel.path("price_each_cents").asInt()).isEqualTo(40_00);
        assertThat(panel.path("seller").asString()).isEqualTo("=Tarnwhistle");
        assertThat(page).contains("price of =1+1", "list of May, sold by =Tarnwhistle (own.yaml:1)");
    }

    @Test
    void whatIsReadIsNotWrittenOver() {
        Ran ran = Ran.quick("size", plan, "--chosen", plan);
        assertThat(ran.status()).isEqualTo(2);
        assertThat(ran.err()).contains("--chosen", "reads or writes already");
    }

    @Test
    void withoutARigThereIsNoFile(@TempDir Path empty) throws IOException {
        Path poor = Ran.household(empty, "at most: 1200 USD", "at most: 5 USD");
        Ran ran = Ran.quick("size", poor, "--chosen", empty.resolve("none.csv"));
        assertThat(ran.status()).isEqualTo(3);
        assertThat(ran.err()).contains("none.csv is not written");
        assertThat(empty.resolve("none.csv")).doesNotExist();
    }
}
