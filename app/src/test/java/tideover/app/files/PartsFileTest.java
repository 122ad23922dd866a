package tideover.app.files;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.params.provider.Arguments.arguments;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import tideover.engine.load.Supply;
import tideover.engine.part.Battery;
import tideover.engine.part.ChargeController;
import tideover.engine.part.Condition;
import tideover.engine.part.ControllerRating;
import tideover.engine.part.Enclosure;
import tideover.engine.part.Inverter;
import tideover.engine.part.InverterRating;
import tideover.engine.part.Listing;
import tideover.engine.part.Outlet;
import tideover.engine.part.Panel;
import tideover.engine.part.Part;
import tideover.engine.part.PlainStore;
import tideover.engine.part.ReadyBox;
import tideover.engine.part.SocketBoard;

class PartsFileTest {
    private static final int WIDTH = PartsFile.COLUMNS.size();
    private static final String OUTLETS_EXPECTED =
            "outlets, such as 2x 120 V AC 60 Hz NEMA 5-15 600 W; 1x 5 V DC USB-A 30 W 90 %";
    private static final String ENCLOSURE = Sample.row(Map.ofEntries(
            Map.entry("kind", "enclosure"),
            Map.entry("id", "case-300"),
            Map.entry("name", "Invented case"),
            Map.entry("price", "129"),
            Map.entry("currency", "USD"),
            Map.entry("priced_on", "2026-01-20"),
            Map.entry("condition", "new"),
            Map.entry("mass_kg", "4.8"),
            Map.entry("nominal_v", "12.8"),
            Map.entry("rated_w", "300"),
            Map.entry("inverter_efficiency_pct", "88"),
            Map.entry("standing_w", "5"),
            Map.entry("outlets", "2x 5 V DC USB-A 24 W 90 %")));
    private static final String CONTROLLER = Sample.row(Map.ofEntries(
            Map.entry("kind", "controller"),
            Map.entry("id", "ctl-20"),
            Map.entry("name", "Invented controller"),
            Map.entry("price", "79"),
            Map.entry("currency", "USD"),
            Map.entry("priced_on", "2026-01-20"),
            Map.entry("condition", "new"),
            Map.entry("mass_kg", "0.9"),
            Map.entry("max_output_a", "20"),
            Map.entry("max_input_v", "100"),
            Map.entry("least_bus_v", "12"),
            Map.entry("most_bus_v", "25.6"),
            Map.entry("controller_efficiency_pct", "96")));
    private static final String INVERTER = Sample.row(Map.ofEntries(
            Map.entry("kind", "inverter"),
            Map.entry("id", "inv-300"),
            Map.entry("name", "Invented inverter"),
            Map.entry("price", "44"),
            Map.entry("currency", "USD"),
            Map.entry("priced_on", "2026-01-20"),
            Map.entry("condition", "new"),
            Map.entry("mass_kg", "0.9"),
            Map.entry("rated_w", "300"),
            Map.entry("inverter_efficiency_pct", "88"),
            Map.entry("standing_w", "5"),
            Map.entry("inverter_input_v", "12"),
            Map.entry("outlets", "2x 120 V AC 60 Hz NEMA 5-15 300 W")));
    private static final String SOCKETS = Sample.row(Map.ofEntries(
            Map.entry("kind", "sockets"),
            Map.entry("id", "board-2"),
            Map.entry("name", "Invented board of sockets"),
            Map.entry("price", "17"),
            Map.entry("currency", "USD"),
            Map.entry("priced_on", "2026-01-20"),
            Map.entry("condition", "new"),
            Map.entry("mass_kg", "0.3"),
            Map.entry("outlets", "2x 12 V DC car socket 180 W; 2x 5 V DC USB-A 30 W 88 %")));
    private static final String ALL =
            Sample.HEADER + Sample.BOX + Sample.PANEL + Sample.BATTERY + ENCLOSURE + CONTROLLER + INVERTER + SOCKETS;

    @Test
    void eachKindIsReadCellByCell() {
        List<Part> parts = read(ALL);
        Outlet sockets = new Outlet(Supply.ac(120, 60, "NEMA 5-15"), 2, 450, 1);
        Outlet car = new Outlet(Supply.dc(12, "car socket"), 1, 120, 1);

        assertThat(parts)
                .containsExactly(
                        new ReadyBox(
                                new Listing(
                                        "box-1",
                                        "Invented box",
                                        19_950,
                                        "USD",
                                        LocalDate.of(2026, 2, 11),
                                        Condition.NEW,
                                        1000,
                                        4.2,
                                        "parts.csv:2"),
                                new PlainStore(500, 0.97, 0.96, 12.8, 14, 45),
                                new ControllerRating(12, 30, 12.8, 12.8, 0.93),
                                new InverterRating(450, 0.88, 7.5, 12.8),
                                List.of(sockets, car)),
                        new Panel(
                                new Listing(
                                        "panel-100",
                                        "Invented panel",
                                        7_400,
                                        "USD",
                                        LocalDate.of(2026, 2, 11),
                                        Condition.USED,
                                        6,
                                        6.3,
                                        "parts.csv:3"),
                                100,
                                22.4,
                                -0.36 / 100,
                                -0.28 / 100,
                                45),
                        new Battery(
                                new Listing(
                                        "batt-50",
                                        "Invented battery",
                                        0,
                                        "USD",
                                        LocalDate.of(2026, 2, 11),
                                        Condition.OWNED,
                                        1,
                                        5.9,
                                        "parts.csv:4"),
                                new PlainStore(600, 0.98, 0.97, 12.8, 25, 50),
                                4),
                        new Enclosure(
                                listing("case-300", "Invented case", 12_900, 4.8, 5),
                                12.8,
                                null,
                                new InverterRating(300, 0.88, 5, 12.8),
                                List.of(new Outlet(Supply.dc(5, "USB-A"), 2, 24, 0.9))),
                        new ChargeController(
                                listing("ctl-20", "Invented controller", 7_900, 0.9, 6),
                                new ControllerRating(20, 100, 12, 25.6, 0.96),
                                List.of()),
                        new Inverter(
                                listing("inv-300", "Invented inverter", 4_400, 0.9, 7),
                                new InverterRating(300, 0.88, 5, 12),
                                List.of(new Outlet(Supply.ac(120, 60, "NEMA 5-15"), 2, 300, 1))),
                        new SocketBoard(
                                listing("board-2", "Invented board of sockets", 1_700, 0.3, 8),
                                List.of(
                                        new Outlet(Supply.dc(12, "car socket"), 2, 180, 1),
                                        new Outlet(Supply.dc(5, "USB-A"), 2, 30, 0.88))));
    }

    /** Engine and vehicle are one record; jug, cooler and stand-in are aids. */
    @Test
    void everyKindOfPartCanBeTyped() {
        assertThat(Part.class.getPermittedSubclasses()).hasSize(PartsFile.KINDS.size() - 3);
        assertThat(read(ALL)).extracting(Part::kind).allMatch(PartsFile.KINDS::contains);
    }

    private static Listing listing(String id, String name, long cents, double kg, int line) {
        LocalDate day = LocalDate.of(2026, 1, 20);
        return new Listing(id, name, cents, "USD", day, Condition.NEW, 1000, kg, "parts.csv:" + line);
    }

    static Stream<Arguments> slips() {
        return Stream.of(
                slip(
                        Sample.BOX,
                        "kind",
                        "bx",
                        "2 kind: found \"bx\", expected the kind of part: box, enclosure, battery, panel, controller, inverter, charger, sockets, engine, vehicle, jug, cooler, stand-in. Write box."),
                slip(
                        Sample.BOX,
                        "kind",
                        "teapot",
                        "2 kind: found \"teapot\", expected the kind of part: box, enclosure, battery, panel, controller, inverter, charger, sockets, engine, vehicle, jug, cooler, stand-in."),
                slip(
                        Sample.BOX,
                        "kind",
                        "",
                        "2 kind: found an empty cell, expected the kind of part: box, enclosure, battery, panel, controller, inverter, charger, sockets, engine, vehicle, jug, cooler, stand-in."),
                slip(
                        Sample.BOX,
                        "id",
                        "a b",
                        "2 id: found \"a b\", expected letters, digits, point, hyphen and underscore only."),
                slip(
                        Sample.BOX,
                        "id",
                        "panel-100",
                        "3 id: found \"panel-100\" a second time, expected an id of its own for each part. The first stands at parts.csv:2."),
                slip(Sample.BOX, "name", "", "2 name: found an empty cell, expected what the part is called."),
                slip(
                        Sample.BOX,
                        "name",
                        "a,b",
                        "2: found a row of " + (WIDTH + 1) + " cells, expected " + WIDTH
                                + " cells, as the header has. A text with a comma inside needs quotes around it."),
                slip(
                        Sample.BOX,
                        "price",
                        "\"1,200\"",
                        "2 price: found \"1,200\", expected an amount in plain digits, such as 249.50. Write thousands without a separator: 1200."),
                slip(
                        Sample.BOX,
                        "price",
                        "\"12,50\"",
                        "2 price: found \"12,50\", expected an amount in plain digits, such as 249.50. Write a point, not a comma: 12.50."),
                slip(Sample.BOX, "price", "-5", "2 price: found \"-5\", expected an amount of 0 or more."),
                slip(
                        Sample.BOX,
                        "price",
                        "5.555",
                        "2 price: found \"5.555\", expected whole cents, at most two digits after the point."),
                slip(
                        Sample.BOX,
                        "price",
                        "$5",
                        "2 price: found \"$5\", expected an amount in plain digits, such as 249.50. Write the number alone; the currency has a column of its own."),
                slip(
                        Sample.BOX,
                        "price",
                        "1e999",
                        "2 price: found \"1e999\", expected an amount in plain digits, such as 249.50. Write the number out in plain digits."),
                slip(
                        Sample.BOX,
                        "price",
                        "999999999",
                        "2 price: found \"999999999\", expected an amount of at most ten million."),
                slip(Sample.BOX, "price", "", "2 price: found an empty cell, expected the price, such as 249.50."),
                slip(
                        Sample.BATTERY,
                        "price",
                        "5",
                        "4 price: found \"5\", expected 0, for what is owned costs nothing more."),
                slip(
                        Sample.BOX,
                        "currency",
                        "EUR",
                        "2 currency: found \"EUR\", expected USD, the plan's currency, for every price."),
                slip(
                        Sample.BOX,
                        "currency",
                        "dollars",
                        "2 currency: found \"dollars\", expected a currency in three letters, such as USD."),
                slip(
                        Sample.BOX,
                        "priced_on",
                        "11/02/2026",
                        "2 priced_on: found \"11/02/2026\", expected the day the price was read, such as 2026-03-14. Year, month and day with two digits each."),
                slip(
                        Sample.BOX,
                        "priced_on",
                        "2026-02-30",
                        "2 priced_on: found \"2026-02-30\", expected the day the price was read, such as 2026-03-14. Year, month and day with two digits each."),
                slip(
                        Sample.BOX,
                        "condition",
                        "nwe",
                        "2 condition: found \"nwe\", expected how it comes: new, used, owned. Write new."),
                slip(
                        Sample.BOX,
                        "mass_kg",
                        "4 kg",
                        "2 mass_kg: found \"4 kg\", expected the mass, from 0 kg to 10000 kg. Write the number alone, 4."),
                slip(
                        Sample.BOX,
                        "usable_wh",
                        "",
                        "2 usable_wh: found an empty cell, expected what it stores between empty and full, above 0 Wh and at most 10000000 Wh."),
                slip(
                        Sample.BOX,
                        "usable_wh",
                        "-1",
                        "2 usable_wh: found \"-1\", expected what it stores between empty and full, above 0 Wh and at most 10000000 Wh."),
                slip(
                        Sample.BOX,
                        "usable_wh",
                        "NaN",
                        "2 usable_wh: found \"NaN\", expected what it stores between empty and full, above 0 Wh and at most 10000000 Wh."),
                slip(
                        Sample.BOX,
                        "usable_wh",
                        "1e999",
                        "2 usable_wh: found \"1e999\", expected what it stores between empty and full, above 0 Wh and at most 10000000 Wh. Write the number out in plain digits."),
                slip(
                        Sample.BOX,
                        "charge_efficiency_pct",
                        "400",
                        "2 charge_efficiency_pct: found \"400\", expected stored per delivered, from 10 % to 100 %."),
                slip(
                        Sample.BOX,
                        "charge_efficiency_pct",
                        "0.97",
                        "2 charge_efficiency_pct: found \"0.97\", expected stored per delivered, from 10 % to 100 %. Write 97 for 97 %."),
                slip(
                        Sample.BOX,
                        "panel_w",
                        "100",
                        "2 panel_w: found \"100\", expected an empty cell: this column is not for a part of kind box."),
                slip(
                        Sample.BOX,
                        "max_input_v",
                        "",
                        "2 max_input_v: found an empty cell, expected panel volts above which it is damaged, above 0 V and at most 2000 V."),
                slip(Sample.BOX, "least_bus_v", "24", "2 most_bus_v: found 12.8 V, expected at least 24 V."),
                slip(
                        Sample.PANEL,
                        "power_pct_per_k",
                        "0.36",
                        "3 power_pct_per_k: found \"0.36\", expected change of power per kelvin, from -2 %/K to 0 %/K. What falls is negative: write -0.36."),
                slip(
                        Sample.PANEL,
                        "noct_c",
                        "",
                        "3 noct_c: found an empty cell, expected cell temperature in its standard sun, from 20 degC to 90 degC."),
                slip(
                        Sample.BATTERY,
                        "most_in_parallel",
                        "1.5",
                        "4 most_in_parallel: found \"1.5\", expected how many may be side by side, a whole number from 1 to 100."),
                slip(
                        Sample.BATTERY,
                        "most_in_parallel",
                        "0",
                        "4 most_in_parallel: found \"0\", expected how many may be side by side, a whole number from 1 to 100."),
                slip(
                        Sample.BATTERY,
                        "outlets",
                        "1x 12 V DC car socket 5 W",
                        "4 outlets: found \"1x 12 V DC car socket 5 W\", expected an empty cell: this column is not for a part of kind battery."),
                slip(Sample.BOX, "outlets", "", "2 outlets: found an empty cell, expected " + OUTLETS_EXPECTED + "."),
                slip(
                        Sample.BOX,
                        "outlets",
                        "2x 120 V AC NEMA 450 W",
                        "2 outlets: found \"2x 120 V AC NEMA 450 W\", expected " + OUTLETS_EXPECTED
                                + ". Write the frequency after AC, such as 60 Hz."),
                slip(
                        Sample.BOX,
                        "outlets",
                        "120 V AC 60 Hz NEMA 450 W",
                        "2 outlets: found \"120 V AC 60 Hz NEMA 450 W\", expected " + OUTLETS_EXPECTED
                                + ". Begin with how many there are, such as 2x."),
                slip(
                        Sample.BOX,
                        "outlets",
                        "2x 120 V AC 60 Hz NEMA",
                        "2 outlets: found \"2x 120 V AC 60 Hz NEMA\", expected " + OUTLETS_EXPECTED
                                + ". End with the watts they give together."),
                slip(
                        Sample.BOX,
                        "outlets",
                        "2x 120 V AC 60 Hz NEMA 450 W 90 %",
                        "2 outlets: found \"2x 120 V AC 60 Hz NEMA 450 W 90 %\", expected no percentage for AC: the inverter's own efficiency counts."),
                slip(
                        Sample.BOX,
                        "outlets",
                        "1x 5 V DC USB-A 30 W 400 %",
                        "2 outlets: found \"1x 5 V DC USB-A 30 W 400 %\", expected an efficiency from 10 % to 100 %."),
                slip(
                        Sample.BOX,
                        "outlets",
                        "0x 5 V DC USB-A 30 W 90 %",
                        "2 outlets: found \"0x 5 V DC USB-A 30 W 90 %\", expected 1 to 100 of one kind."),
                slip(
                        Sample.BOX,
                        "outlets",
                        "1x 5 V DC USB-A 0 W 90 %",
                        "2 outlets: found \"1x 5 V DC USB-A 0 W 90 %\", expected watts above 0 and at most 100000."),
                slip(
                        Sample.BOX,
                        "outlets",
                        "1x 5 V DC USB-A 30 W",
                        "2 outlets: found the outlet 5 V DC, USB-A with no efficiency, expected the efficiency of its converter, for its volts are not the battery's. Write it after the watts, such as 90 %."),
                slip(
                        Sample.BOX,
                        "at_hand",
                        "none",
                        "2 at_hand: found \"none\", expected how many can be had, a whole number from 1 to 1000."),
                slip(
                        ENCLOSURE,
                        "nominal_v",
                        "",
                        "5 nominal_v: found an empty cell, expected the battery's volts, above 0 V and at most 1000 V."),
                slip(
                        CONTROLLER,
                        "outlets",
                        "1x 120 V AC 60 Hz NEMA 5-15 9 W",
                        "6 outlets: found the outlet 120 V AC 60 Hz, NEMA 5-15, expected direct current only, for this controller has no inverter."),
                slip(
                        CONTROLLER,
                        "most_bus_v",
                        "",
                        "6 most_bus_v: found an empty cell, expected the highest battery volts it serves, above 0 V and at most 1000 V."),
                slip(
                        INVERTER,
                        "outlets",
                        "1x 12 V DC car socket 9 W",
                        "7 outlets: found the outlet 12 V DC, car socket, expected alternating current only from an inverter."),
                slip(INVERTER, "outlets", "", "7 outlets: found an empty cell, expected " + OUTLETS_EXPECTED + "."),
                slip(
                        INVERTER,
                        "max_charge_a",
                        "5",
                        "7 max_charge_a: found \"5\", expected an empty cell: this column is not for a part of kind inverter."),
                slip(SOCKETS, "outlets", "", "8 outlets: found an empty cell, expected " + OUTLETS_EXPECTED + "."),
                slip(
                        SOCKETS,
                        "outlets",
                        "2x 120 V AC 60 Hz NEMA 5-15 300 W",
                        "8 outlets: found the outlet 120 V AC 60 Hz, NEMA 5-15, expected direct current only, for a board of sockets has no inverter."),
                slip(
                        SOCKETS,
                        "outlets",
                        "2x 5 V DC USB-A 30 W",
                        "8 outlets: found the outlet 5 V DC, USB-A with no efficiency, expected the efficiency of its converter, for its volts are not the battery's. Write it after the watts, such as 90 %."),
                slip(
                        SOCKETS,
                        "nominal_v",
                        "12",
                        "8 nominal_v: found \"12\", expected an empty cell: this column is not for a part of kind sockets."));
    }

    private static Arguments slip(String row, String column, String cell, String problem) {
        return arguments(column, cell, row, "parts.csv:" + problem);
    }

    @ParameterizedTest(name = "{0} = {1}")
    @MethodSource("slips")
    void isTold(String column, String cell, String row, String problem) {
        String parts = ALL.replace(row, Sample.bent(row, column, cell));

        assertThat(Sample.problemsInParts(parts)).containsExactly(problem);
    }

    @Test
    void anOutletForMainsWithoutAnInverter() {
        String row = Sample.BOX;
        for (String column : InverterColumns.ALL) {
            row = Sample.bent(row, column, "");
        }

        assertThat(Sample.problemsInParts(ALL.replace(Sample.BOX, row)))
                .containsExactly(
                        "parts.csv:2 outlets: found the outlet 120 V AC 60 Hz, NEMA 5-15, expected direct current"
                                + " only, for this box has no inverter. Fill the inverter's columns.");
    }

    @Test
    void aMisspeltColumnIsToldOnceAndItsCellsAreStillRead() {
        String parts = ALL.replace("usable_wh", "useable_wh").replace(",97,96,", ",400,96,");

        assertThat(Sample.problemsInParts(parts))
                .containsExactly(
                        "parts.csv:1: found the column \"useable_wh\", expected the column \"usable_wh\". Write usable_wh.",
                        "parts.csv:2 charge_efficiency_pct: found \"400\", expected stored per delivered, from 10 % to 100 %.");
    }

    @Test
    void aColumnThatNobodyKnows() {
        assertThat(Sample.problemsInParts(ALL.replace("remark", "colour")))
                .containsExactly("parts.csv:1: found the column \"colour\", expected a column that a parts file has;"
                        + " docs/parts-file.md lists them.");
    }

    @Test
    void aColumnTwice() {
        assertThat(Sample.problemsInParts(ALL.replace("remark", "name")))
                .containsExactly("parts.csv:1: found the column \"name\" twice, expected each column once.");
    }

    @Test
    void aColumnThatEveryPartNeedsIsMissing() {
        assertThat(Sample.problemsInParts(
                        "kind,id,name,price,currency,priced_on,condition\nbox,a,b,1,USD,2026-01-01,new\n"))
                .startsWith("parts.csv:1: found no column \"mass_kg\", expected a header with"
                        + " kind,id,name,price,currency,priced_on,condition,mass_kg.")
                .noneMatch(problem -> problem.contains("mass_kg: found an empty cell"));
    }

    @Test
    void noHeader() {
        assertThat(Sample.problemsInParts(Sample.BOX))
                .containsExactly(
                        "parts.csv:1: found no header, expected the names of the columns in the first row, such as"
                                + " kind,id,name,price,currency,priced_on,condition,mass_kg.");
    }

    @Test
    void aHeaderAndNothingElse() {
        assertThat(Sample.problemsInParts(Sample.HEADER))
                .containsExactly("parts.csv: found no part, expected a header and at least one part.");
    }

    @Test
    void semicolonsInsteadOfCommas() {
        assertThat(Sample.problemsInParts(ALL.replace(',', ';')))
                .containsExactly(
                        "parts.csv:1: found a header without commas, expected comma-separated values. Save the table"
                                + " with commas between cells.");
    }

    @Test
    void aQuoteThatIsNeverClosed() {
        assertThat(Sample.problemsInParts(ALL + "\"box,"))
                .containsExactly(
                        "parts.csv: found cells that cannot be told apart (Unclosed quoted field at end of input"
                                + " (record starting at line 9)), expected comma-separated values. Look for a quote (\") that is opened"
                                + " and not closed.");
    }

    @Test
    void aRowCutShort() {
        assertThat(Sample.problemsInParts(ALL + "box,b\n"))
                .containsExactly("parts.csv:9: found a row of 2 cells, expected " + WIDTH
                        + " cells, as the header has. A text with a" + " comma inside needs quotes around it.");
    }

    @Test
    void anotherCurrencyInManyRowsIsOneProblem() {
        assertThat(Sample.problemsInParts(ALL.replace("USD", "CAD")))
                .containsExactly(
                        "parts.csv:2 currency: found \"CAD\", and 6 more rows in another currency, expected USD, the"
                                + " plan's currency, for every price.");
    }

    @Test
    void everythingWrongInARowIsTold() {
        String row =
                Sample.bent(Sample.bent(Sample.bent(Sample.PANEL, "price", "x"), "panel_w", "-1"), "noct_c", "45 C");

        assertThat(Sample.problemsInParts(ALL.replace(Sample.PANEL, row)))
                .containsExactly(
                        "parts.csv:3 price: found \"x\", expected an amount in plain digits, such as 249.50.",
                        "parts.csv:3 panel_w: found \"-1\", expected rated watts, above 0 W and at most 2000 W.",
                        "parts.csv:3 noct_c: found \"45 C\", expected cell temperature in its standard sun, from 20 degC to 90"
                                + " degC. Write the number alone, 45.");
    }

    @Test
    void theUnlikelyIsTakenWithACaution() {
        String parts =
                ALL.replace(Sample.BOX, Sample.bent(Sample.bent(Sample.BOX, "usable_wh", "100000"), "mass_kg", "0"));

        assertThat(Sample.read(Sample.PLAN, parts).cautions())
                .containsExactly(
                        "parts.csv:2 mass_kg: 0 kg is taken, but is unlikely (most lie within 0.05 kg to 100 kg).",
                        "parts.csv:2 usable_wh: 100000 Wh is taken, but is unlikely (most lie within 20 Wh to 20000 Wh).");
    }

    @Test
    void nothingForSomethingThatIsNotOwnedIsACaution() {
        String parts = ALL.replace(Sample.BOX, Sample.bent(Sample.BOX, "price", "0.00"));

        assertThat(Sample.read(Sample.PLAN, parts).cautions())
                .containsExactly("parts.csv:2 price: a price of 0 for a part that is not owned.");
    }

    /** What spreadsheets leave behind: a byte order mark, other line ends, quotes, line breaks in cells, blank rows. */
    @Test
    void whatSpreadsheetsWriteIsTaken() {
        String parts = ("\uFEFF# a remark\n" + ALL)
                        .replace("Invented box", "\"Invented \nbox\"")
                        .replace("Invented panel", "\"Invented \"\"panel\"\"\"")
                        .replace("\n", "\r\n")
                + ",".repeat(WIDTH - 1) + "\r\n\r\n";
        List<Part> read = read(parts);

        assertThat(read).hasSize(7);
        assertThat(read.get(0).listing().name()).isEqualTo("Invented box");
        assertThat(read.get(0).listing().source()).isEqualTo("parts.csv:3");
        assertThat(read.get(1).listing().name()).isEqualTo("Invented \"panel\"");
        assertThat(read.get(1).listing().source()).isEqualTo("parts.csv:5");
    }

    @Test
    void centsAreExact() {
        String parts = ALL.replace("199.50", "8999999.99");

        assertThat(read(parts).get(0).listing().priceCents()).isEqualTo(899_999_999);
    }

    @Test
    void aFileMayBeReadByItself(@TempDir Path folder) throws IOException {
        Path file = folder.resolve("parts.csv");
        Files.writeString(file, ALL.replace("USD", "CAD"));
        PartsFile.Content content = PartsFile.read(file);

        assertThat(content.parts()).hasSize(7);
        assertThat(content.currency()).isEqualTo("CAD");
        assertThat(content.cautions()).isEmpty();
    }

    private static List<Part> read(String parts) {
        return Sample.read(Sample.PLAN, parts).parts();
    }
}
