package tideover.app.files;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.junit.jupiter.params.provider.Arguments.arguments;

import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import tideover.engine.answer.Question;
import tideover.engine.part.Battery;
import tideover.engine.part.Fuse;
import tideover.engine.part.Listing;
import tideover.engine.part.Panel;
import tideover.engine.part.Part;
import tideover.engine.part.SmallPart;
import tideover.engine.part.SocketBoard;

/** The same parts as a list in YAML, good and bad. */
class PartsInYamlTest {
    private static final String PANEL = """
            - kind: panel
              id: panel-100
              name: Invented panel
              price: 74
              currency: USD
              priced_on: 2026-02-11
              condition: used
              mass_kg: 6.3
              at_hand: 6
              panel_w: 100
              open_circuit_v: 22.4
              power_pct_per_k: -0.36
              voltage_pct_per_k: -0.28
              noct_c: 45
            """;
    private static final String BATTERY = """
            - kind: battery
              id: batt-50
              name: Invented battery
              price: 124.50 USD
              priced_on: 2026-02-11
              condition: new
              mass_kg: 13 lb
              usable_wh: 0.6 kWh
              charge_efficiency_pct: 98 %
              discharge_efficiency_pct: 97
              nominal_v: 12.8 V
              max_charge_a: 25 A
              max_discharge_a: 50
            """;

    private static Question read(String parts) {
        return PlanFile.read(
                "plan.yaml",
                Sample.PLAN.replace("parts: parts.csv", "parts: parts.yaml"),
                Beside.texts(Map.of("parts.yaml", parts)),
                ExampleTest.STATIONS);
    }

    private static List<String> problemsIn(String parts) {
        return Sample.problemsOf(() -> read(parts));
    }

    @Test
    void aPartIsTheSameInEitherForm() {
        Panel fromList = (Panel) read(PANEL).parts().get(0);
        Panel fromTable = (Panel) Sample.read(Sample.PLAN).parts().get(1);
        assertThat(fromList.sheet()).isEqualTo(fromTable.sheet());
        assertThat(fromList.listing())
                .usingRecursiveComparison()
                .ignoringFields("source")
                .isEqualTo(fromTable.listing());
        assertThat(fromList.listing().source()).isEqualTo("parts.yaml:1");
    }

    @Test
    void aFigureMayCarryItsUnitAndAPriceItsCurrency() {
        Battery battery = (Battery) read(BATTERY).parts().get(0);
        assertThat(battery.listing().priceCents()).isEqualTo(124_50);
        assertThat(battery.listing().currency()).isEqualTo("USD");
        assertThat(battery.listing().massKg()).isCloseTo(13 * 0.45359237, within(1e-9));
        assertThat(battery.store().nominalV()).isEqualTo(12.8);
        assertThat(read(BATTERY.replace("0.6 kWh", "600")).parts().get(0))
                .isEqualTo(read(BATTERY).parts().get(0));
    }

    @Test
    void whatHoldsSeveralThingsMayBeAList() {
        String board = """
                - kind: sockets
                  id: board
                  name: Invented board
                  price: 19
                  currency: USD
                  priced_on: 2026-02-11
                  condition: new
                  mass_kg: 300 g
                  outlets:
                    - 2x 12 V DC car socket 120 W
                    - 2x 5 V DC USB-A 24 W 90 %
                  prices: [from 2 at 18 USD, from 5 at 16.50]
                """;
        List<Part> parts = read(board + PANEL).parts();
        assertThat(((SocketBoard) parts.get(0)).outlets()).hasSize(2);
        assertThat(parts.get(0).listing().costCents(4)).isEqualTo(72_00);
        assertThat(parts.get(0).listing().eachCents(5)).isEqualTo(16_50);
        assertThat(parts.get(1).listing().source()).isEqualTo("parts.yaml:13");
    }

    @Test
    void smallPartsMayBeAListToo() {
        String fuse = """
                - {kind: fuse, id: f-15, name: Invented fuse, price: 2.50 USD, priced_on: 2026-02-03, condition: new,
                   format: blade, rated_a: 15 A, dc_v: 32 V, interrupting_a: 1000, pack: 5, seller: Tarnwhistle}
                """;
        Question question = PlanFile.read(
                "plan.yaml",
                SmallSample.PLAN.replace(SmallSample.NAME, "small.YML"),
                Beside.texts(Map.of("parts.csv", Sample.PARTS, "small.YML", fuse)),
                ExampleTest.STATIONS);
        SmallPart part = question.smallParts().get(0);
        assertThat(part).isInstanceOf(Fuse.class);
        assertThat(part.perPrice()).isEqualTo(5);
        assertThat(part.listing().selling().seller()).isEqualTo("Tarnwhistle");
    }

    static Stream<Arguments> wrong() {
        return Stream.of(
                arguments(
                        "panel_w: 100",
                        "panl_w: 100",
                        "parts.yaml:10 [1]: found the key \"panl_w\", expected the key \"panel_w\". Write panel_w:"),
                arguments(
                        "panel_w: 100",
                        "panel_w: 100\n  zzzzzzzzz: 4",
                        "parts.yaml:11 [1]: found the key \"zzzzzzzzz\", expected a key that a parts file has;"
                                + " docs/parts-file.md lists them."),
                arguments(
                        "panel_w: 100",
                        "panel_w: 100 V",
                        "parts.yaml:10 panel_w: found \"100 V\", expected rated watts, above 0 W and at most 2000 W."
                                + " Write the number alone, 100."),
                arguments(
                        "  panel_w: 100\n",
                        "",
                        "parts.yaml:1 panel_w: found no \"panel_w:\", expected rated watts, above 0 W and at most"
                                + " 2000 W."),
                arguments(
                        "panel_w: 100",
                        "panel_w: {a: 1}",
                        "parts.yaml:10 [1].panel_w: found a block of keys, expected a text, a figure or a list of texts."
                                + " Begin each item with \"- \"."),
                arguments(
                        "panel_w: 100",
                        "panel_w: 100\n  chemistry: agm",
                        "parts.yaml:11 chemistry: found \"agm\", expected no such key: it is not for a part of kind panel."),
                arguments(
                        "mass_kg: 6.3",
                        "mass_kg: 6.3\n  mass_kg: 7",
                        "parts.yaml:9 [1].mass_kg: found \"mass_kg\" a second time, expected each key once. The first"
                                + " stands in line 8."),
                arguments(
                        "price: 74\n",
                        "price: 74 EUR\n",
                        "parts.yaml:4 price: found \"74 EUR\", expected the currency of its own part, USD."),
                arguments(
                        "price: 74\n  currency: USD\n",
                        "price: 74 EUR\n",
                        "parts.yaml:1 currency: found \"EUR\", expected USD, the plan's currency, for every price."));
    }

    @ParameterizedTest
    @MethodSource("wrong")
    void whatIsWrongIsToldWithItsLine(String from, String to, String sentence) {
        assertThat(PANEL).contains(from);
        assertThat(problemsIn(PANEL.replace(from, to))).containsExactly(sentence);
    }

    @Test
    void twoOfAnIdAreTold() {
        assertThat(problemsIn(PANEL + BATTERY.replace("batt-50", "panel-100")))
                .containsExactly(
                        "parts.yaml:16 id: found \"panel-100\" a second time, expected an id of its own for each"
                                + " part. The first stands at parts.yaml:1.");
    }

    @Test
    void somethingElseThanPartsIsTold() {
        assertThat(problemsIn("- panel\n- battery\n"))
                .hasSize(2)
                .allMatch(one -> one.contains("expected a part, such as"));
        assertThat(problemsIn("kind: panel\nid: x\n"))
                .containsExactly(
                        "parts.yaml:1: found a block of keys, expected a list of parts, such as - kind: battery,"
                                + " and under it id, name, price and the other keys. Begin each item with \"- \".");
        assertThat(problemsIn("[]\n")).hasSize(1);
        assertThat(problemsIn("- kind: panel\n   id: x\n"))
                .singleElement()
                .asString()
                .contains("does not fit here");
    }

    /** What is written again as a table reads as the same part. */
    @Test
    void whatWasTypedIsKeptInTheFormOfATable() {
        Reading reading = new Reading();
        String plan = Sample.PLAN.replace("parts: parts.csv", "parts: parts.yaml");
        Listing listing = PlanFile.read(
                        reading, "plan.yaml", plan, Beside.texts(Map.of("parts.yaml", BATTERY)), ExampleTest.STATIONS)
                .parts()
                .get(0)
                .listing();
        assertThat(reading.typedById().get(listing.id()))
                .containsEntry("mass_kg", "5.89670081")
                .containsEntry("usable_wh", "600")
                .containsEntry("charge_efficiency_pct", "98")
                .doesNotContainKey("panel_w");
    }
}
