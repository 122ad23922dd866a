package tideover.app.files;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.params.provider.Arguments.arguments;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import tideover.engine.electronics.ConductorSize;
import tideover.engine.part.BatterySwitch;
import tideover.engine.part.Breaker;
import tideover.engine.part.Busbar;
import tideover.engine.part.Cable;
import tideover.engine.part.Condition;
import tideover.engine.part.Cord;
import tideover.engine.part.Fitting;
import tideover.engine.part.Fuse;
import tideover.engine.part.FuseHolder;
import tideover.engine.part.Listing;
import tideover.engine.part.Lug;
import tideover.engine.part.PanelBranch;
import tideover.engine.part.PanelLead;
import tideover.engine.part.SmallPart;
import tideover.engine.part.Tool;
import tideover.engine.why.Stated;

class SmallPartsFileTest {
    private static final int WIDTH = SmallPartsFile.COLUMNS.size();
    private static final ConductorSize TEN = ConductorSize.named("10 AWG").orElseThrow();
    private static final String KIND =
            "the kind of part: cable, cord, fuse, fuse holder, breaker, switch, lug, panel lead,"
                    + " panel branch, busbar, fitting, tool";
    private static final String SIZE = "the size of the conductor, such as 10 AWG, 1/0 AWG or 6 mm2";
    private static final String USE =
            "what it is for: heat shrink, terminal cover, strap, label, board, hand truck, battery"
                    + " meter, thermometer, carbon monoxide alarm";
    private static final String JOB =
            "what it is for: light crimper, heavy crimper, cable cutter, wire stripper, heat gun,"
                    + " insulated spanner, torque wrench, multimeter, eye protection";

    @Test
    void eachKindIsReadCellByCell() {
        assertThat(SmallSample.read(SmallSample.FILE).smallParts())
                .containsExactly(
                        new Cable(listing("cable", "cable-10", 2), TEN, Cable.Metal.COPPER, 105, 1),
                        new Cable(listing("cable", "reel-10", 3), TEN, Cable.Metal.UNKNOWN, 90, 7.5),
                        new Cord(listing("cord", "cord-10", 4), TEN, 15, 15, 120, "NEMA 5-15"),
                        new Fuse(listing("fuse", "blade-15", 5), "blade", 15, 32, 1000, 5),
                        new FuseHolder(listing("fuse holder", "blade-holder", 6), "blade", 30, 1),
                        new Breaker(listing("breaker", "dc-30", 7), 30, 60, 5000, Stated.YES),
                        new BatterySwitch(listing("switch", "main", 8), 200, 48),
                        new Lug(listing("lug", "lug-10", 9), TEN, 10),
                        new PanelLead(listing("panel lead", "lead-5", 10), "Invented plug", "screws", TEN, 90, 5, 30),
                        new PanelBranch(listing("panel branch", "fork", 11), "Invented plug", 30),
                        new Busbar(listing("busbar", "bar-150", 12), 150),
                        new Fitting(listing("fitting", "shrink", 13), Fitting.Use.HEAT_SHRINK, 20),
                        new Tool(listing("tool", "meter", 14), Tool.Job.MULTIMETER));
        assertThat(SmallSample.read(SmallSample.FILE).cautions()).isEmpty();
    }

    private static Listing listing(String kind, String id, int line) {
        return new Listing(
                id,
                "Invented " + kind,
                2_50,
                "USD",
                LocalDate.of(2026, 2, 3),
                Condition.NEW,
                1000,
                0.1,
                "small-parts.csv:" + line);
    }

    /** The file's words for a kind are the engine's, so that a price list may be held against the file. */
    @Test
    void theKindsAreThoseOfTheEngine() {
        List<String> kinds = SmallSample.read(SmallSample.FILE).smallParts().stream()
                .map(SmallPart::kind)
                .distinct()
                .toList();

        assertThat(kinds).containsExactlyElementsOf(SmallPartsFile.KINDS);
        assertThat(SmallPart.class.getPermittedSubclasses()).hasSize(SmallPartsFile.KINDS.size());
    }

    @Test
    void whatIsNotToldIsUnknown() {
        Fuse fuse = (Fuse) one(SmallSample.bent(SmallSample.bent(SmallSample.FUSE, "dc_v", ""), "interrupting_a", ""));
        Breaker breaker = (Breaker) one(SmallSample.bent(
                SmallSample.bent(SmallSample.bent(SmallSample.BREAKER, "dc_v", ""), "interrupting_a", ""),
                "polarised",
                ""));

        assertThat(fuse.mostDcV()).isNaN();
        assertThat(fuse.interruptingA()).isNaN();
        assertThat(breaker.mostDcV()).isNaN();
        assertThat(breaker.interruptingA()).isNaN();
        assertThat(breaker.polarised()).isEqualTo(Stated.UNKNOWN);
        assertThat(((Breaker) one(SmallSample.bent(SmallSample.BREAKER, "polarised", "no"))).polarised())
                .isEqualTo(Stated.NO);
    }

    @ParameterizedTest
    @CsvSource({"copper, COPPER", "Copper-clad aluminium, COPPER_CLAD_ALUMINIUM", "unknown, UNKNOWN", "'', UNKNOWN"})
    void theMetal(String typed, Cable.Metal metal) {
        assertThat(((Cable) one(SmallSample.bent(SmallSample.CABLE, "metal", typed))).metal())
                .isEqualTo(metal);
    }

    @ParameterizedTest
    @CsvSource({"10 awg, 10 AWG", "1/0 AWG, 1/0 AWG", "6 mm2, 6 mm2", "2.5mm2, 2.5 mm2"})
    void sizesInBothCounts(String typed, String words) {
        assertThat(((Lug) one(SmallSample.bent(SmallSample.LUG, "size", typed))).size())
                .isEqualTo(ConductorSize.named(words).orElseThrow());
    }

    @Test
    void massMayBeLeftEmptyOrOut() {
        assertThat(one(SmallSample.bent(SmallSample.LUG, "mass_kg", ""))
                        .listing()
                        .massKg())
                .isZero();

        String without = """
                kind,id,name,price,currency,priced_on,condition,rated_a,at_hand
                busbar,bar,Invented busbar,12,USD,2026-02-03,used,150,2
                """;
        Listing listing = one(without, "").listing();
        assertThat(listing.massKg()).isZero();
        assertThat(listing.atHand()).isEqualTo(2);
    }

    private static SmallPart one(String row) {
        return one(SmallSample.HEADER, row);
    }

    private static SmallPart one(String header, String row) {
        List<SmallPart> parts = SmallSample.read(header + row).smallParts();
        assertThat(parts).hasSize(1);
        return parts.get(0);
    }

    static Stream<Arguments> slips() {
        return Stream.of(
                slip(
                        SmallSample.CABLE,
                        "kind",
                        "cabel",
                        "2 kind: found \"cabel\", expected " + KIND + ". Write cable."),
                slip(
                        SmallSample.HOLDER,
                        "kind",
                        "fuseholder",
                        "6 kind: found \"fuseholder\", expected " + KIND + ". Write fuse holder."),
                slip(SmallSample.CABLE, "kind", "rope", "2 kind: found \"rope\", expected " + KIND + "."),
                slip(SmallSample.CABLE, "kind", "", "2 kind: found an empty cell, expected " + KIND + "."),
                slip(
                        SmallSample.CABLE,
                        "id",
                        "reel-10",
                        "3 id: found \"reel-10\" a second time, expected an id of its own for each part. The first stands at"
                                + " small-parts.csv:2."),
                slip(
                        SmallSample.CABLE,
                        "id",
                        "batt-50",
                        "2 id: found \"batt-50\" a second time, expected an id of its own for each part. The first stands at"
                                + " parts.csv:4."),
                slip(
                        SmallSample.CABLE,
                        "currency",
                        "EUR",
                        "2 currency: found \"EUR\", expected USD, the plan's currency, for every price."),
                slip(
                        SmallSample.CABLE,
                        "mass_kg",
                        "-1",
                        "2 mass_kg: found \"-1\", expected the mass, from 0 kg to 10000 kg."),
                slip(SmallSample.CABLE, "size", "", "2 size: found an empty cell, expected " + SIZE + "."),
                slip(SmallSample.CABLE, "size", "10", "2 size: found \"10\", expected " + SIZE + ". Write 10 AWG."),
                slip(SmallSample.LUG, "size", "#4", "9 size: found \"#4\", expected " + SIZE + ". Write 4 AWG."),
                slip(SmallSample.LUG, "size", "AWG 4", "9 size: found \"AWG 4\", expected " + SIZE + ". Write 4 AWG."),
                slip(SmallSample.CORD, "size", "6 mm", "4 size: found \"6 mm\", expected " + SIZE + ". Write 6 mm2."),
                slip(SmallSample.LEAD, "size", "11 AWG", "10 size: found \"11 AWG\", expected " + SIZE + "."),
                slip(
                        SmallSample.CABLE,
                        "metal",
                        "cooper",
                        "2 metal: found \"cooper\", expected what its strands are of: copper, copper-clad aluminium, unknown."
                                + " Write copper."),
                slip(
                        SmallSample.CABLE,
                        "metal",
                        "CCA",
                        "2 metal: found \"CCA\", expected what its strands are of: copper, copper-clad aluminium, unknown."),
                slip(
                        SmallSample.CABLE,
                        "insulation_c",
                        "",
                        "2 insulation_c: found an empty cell, expected what its insulation is rated for, from 40 degC to 250"
                                + " degC."),
                slip(
                        SmallSample.CABLE,
                        "insulation_c",
                        "300",
                        "2 insulation_c: found \"300\", expected what its insulation is rated for, from 40 degC to 250 degC."),
                slip(
                        SmallSample.CABLE,
                        "pack",
                        "0",
                        "2 pack: found \"0\", expected metres that the price buys, above 0 m and at most 1000 m."),
                slip(
                        SmallSample.CABLE,
                        "rated_a",
                        "30",
                        "2 rated_a: found \"30\", expected an empty cell: this column is not for a part of kind cable."),
                slip(
                        SmallSample.CORD,
                        "length_m",
                        "25 ft",
                        "4 length_m: found \"25 ft\", expected its length, above 0 m and at most 500 m. Write the number alone, 25."),
                slip(
                        SmallSample.CORD,
                        "rated_a",
                        "",
                        "4 rated_a: found an empty cell, expected what it carries for hours, above 0 A and at most 100000 A."),
                slip(
                        SmallSample.CORD,
                        "volts",
                        "-120",
                        "4 volts: found \"-120\", expected the volts it is made for, above 0 V and at most 10000 V."),
                slip(
                        SmallSample.CORD,
                        "plug",
                        "",
                        "4 plug: found an empty cell, expected its plug in words, such as NEMA 5-15."),
                slip(
                        SmallSample.FUSE,
                        "format",
                        "",
                        "5 format: found an empty cell, expected the format in words, such as blade, the same for a fuse and its"
                                + " holder."),
                slip(
                        SmallSample.FUSE,
                        "rated_a",
                        "0",
                        "5 rated_a: found \"0\", expected its rating, above 0 A and at most 100000 A."),
                slip(
                        SmallSample.FUSE,
                        "dc_v",
                        "32 V",
                        "5 dc_v: found \"32 V\", expected direct volts that it can part, above 0 V and at most 10000 V. Write the"
                                + " number alone, 32."),
                slip(
                        SmallSample.FUSE,
                        "interrupting_a",
                        "\"1,000\"",
                        "5 interrupting_a: found \"1,000\", expected the fault current that it can part at dc_v, above 0 A and at"
                                + " most 1000000 A. Write thousands without a separator: 1000."),
                slip(
                        SmallSample.FUSE,
                        "pack",
                        "2.5",
                        "5 pack: found \"2.5\", expected pieces that the price buys, a whole number from 1 to 1000."),
                slip(
                        SmallSample.FUSE,
                        "polarised",
                        "no",
                        "5 polarised: found \"no\", expected an empty cell: this column is not for a part of kind fuse."),
                slip(
                        SmallSample.HOLDER,
                        "rated_a",
                        "",
                        "6 rated_a: found an empty cell, expected what it carries for hours, above 0 A and at most 100000 A."),
                slip(
                        SmallSample.BREAKER,
                        "polarised",
                        "maybe",
                        "7 polarised: found \"maybe\", expected whether direct current may pass one way only: yes, no, unknown."),
                slip(
                        SmallSample.SWITCH,
                        "dc_v",
                        "",
                        "8 dc_v: found an empty cell, expected direct volts that it can part, above 0 V and at most 10000 V."),
                slip(
                        SmallSample.LUG,
                        "pack",
                        "1001",
                        "9 pack: found \"1001\", expected pieces that the price buys, a whole number from 1 to 1000."),
                slip(
                        SmallSample.LEAD,
                        "connector",
                        "",
                        "10 connector: found an empty cell, expected the make of its plugs, in the words of the panels."),
                slip(
                        SmallSample.LEAD,
                        "length_m",
                        "",
                        "10 length_m: found an empty cell, expected its length, above 0 m and at most 500 m."),
                slip(
                        SmallSample.BRANCH,
                        "rated_a",
                        "thirty",
                        "11 rated_a: found \"thirty\", expected what its joined side carries, above 0 A and at most 100000 A."),
                slip(
                        SmallSample.BUSBAR,
                        "rated_a",
                        "",
                        "12 rated_a: found an empty cell, expected what it carries for hours, above 0 A and at most 100000 A."),
                slip(
                        SmallSample.FITTING,
                        "use",
                        "heatshrink",
                        "13 use: found \"heatshrink\", expected " + USE + ". Write heat shrink."),
                slip(SmallSample.FITTING, "use", "", "13 use: found an empty cell, expected " + USE + "."),
                slip(
                        SmallSample.FITTING,
                        "job",
                        "multimeter",
                        "13 job: found \"multimeter\", expected an empty cell: this column is not for a part of kind fitting."),
                slip(
                        SmallSample.TOOL,
                        "job",
                        "multi-metre",
                        "14 job: found \"multi-metre\", expected " + JOB + ". Write multimeter."),
                slip(SmallSample.TOOL, "job", "", "14 job: found an empty cell, expected " + JOB + "."));
    }

    private static Arguments slip(String row, String column, String cell, String problem) {
        return arguments(column, cell, row, "small-parts.csv:" + problem);
    }

    @ParameterizedTest(name = "{0} = {1}")
    @MethodSource("slips")
    void isTold(String column, String cell, String row, String problem) {
        String file = SmallSample.FILE.replace(row, SmallSample.bent(row, column, cell));

        assertThat(SmallSample.problemsIn(file)).containsExactly(problem);
    }

    /** Of both files and of the plan itself, and every cell of a row. */
    @Test
    void everythingWrongIsToldAtOnce() {
        String small = SmallSample.FILE.replace(
                SmallSample.LEAD, SmallSample.bent(SmallSample.bent(SmallSample.LEAD, "size", "x"), "length_m", "0"));
        String parts = Sample.PARTS.replace(Sample.PANEL, Sample.bent(Sample.PANEL, "panel_w", "-1"));
        String plan = SmallSample.PLAN.replace("draws: 3 W", "draws: 3");

        assertThat(Sample.problemsOf(() -> PlanFile.read(
                        "plan.yaml",
                        plan,
                        Beside.texts(Map.of("parts.csv", parts, SmallSample.NAME, small)),
                        ExampleTest.STATIONS)))
                .hasSize(4)
                .anyMatch(problem -> problem.startsWith("plan.yaml:15 loads[1].draws"))
                .anyMatch(problem -> problem.startsWith("parts.csv:3 panel_w"))
                .anyMatch(problem -> problem.startsWith("small-parts.csv:10 size"))
                .anyMatch(problem -> problem.startsWith("small-parts.csv:10 length_m"));
    }

    @Test
    void noHeader() {
        assertThat(SmallSample.problemsIn(SmallSample.CABLE))
                .containsExactly(
                        "small-parts.csv:1: found no header, expected the names of the columns in the first row,"
                                + " such as kind,id,name,price,currency,priced_on,condition.");
    }

    @Test
    void columnsOfThePartsFileAreNotItsOwn() {
        assertThat(SmallSample.problemsIn(SmallSample.FILE.replaceFirst("remark", "panel_w")))
                .containsExactly(
                        "small-parts.csv:1: found the column \"panel_w\", expected a column that a file of small"
                                + " parts has; docs/parts-file.md lists them.");
        assertThat(SmallSample.problemsIn(SmallSample.FILE.replaceFirst("length_m", "lenght_m")))
                .containsExactly("small-parts.csv:1: found the column \"lenght_m\", expected the column \"length_m\"."
                        + " Write length_m.");
    }

    @Test
    void aHeaderAndNothingElse() {
        assertThat(SmallSample.problemsIn(SmallSample.HEADER))
                .containsExactly("small-parts.csv: found no part, expected a header and at least one part.");
    }

    @Test
    void anEmptyFileOrNone() {
        assertThat(SmallSample.problemsIn(" "))
                .containsExactly("small-parts.csv: found an empty file, expected a file of small parts.");
        assertThat(Sample.problemsOf(() ->
                        SmallSample.read(SmallSample.PLAN.replace(SmallSample.NAME, "cables.csv"), SmallSample.FILE)))
                .containsExactly(
                        "plan.yaml:31 small parts: found no file \"cables.csv\", expected a file of small parts."
                                + " Check the name and the folder.");
    }

    @Test
    void aRowCutShort() {
        assertThat(SmallSample.problemsIn(SmallSample.FILE + "lug,l\n"))
                .containsExactly("small-parts.csv:15: found a row of 2 cells, expected " + WIDTH
                        + " cells, as the header has. A text with a comma inside needs quotes around it.");
    }

    @Test
    void tooManyRowsAndTooLargeAFile() {
        List<String> rows = new ArrayList<>();
        for (int i = 0; i < 2001; i++) {
            rows.add(SmallSample.bent(SmallSample.LUG, "id", "lug-" + i));
        }
        String most = SmallSample.HEADER + String.join("", rows.subList(0, 2000));

        assertThat(SmallSample.read(most).smallParts()).hasSize(2000);
        assertThat(SmallSample.problemsIn(most + rows.get(2000)))
                .containsExactly("small-parts.csv: found more than 2000 parts, expected at most 2000.");
        assertThat(SmallSample.problemsIn(SmallSample.FILE + "# ".repeat(500_000)))
                .containsExactly(
                        "small-parts.csv: found a file of more than 1 MB, expected a file of small parts of at most"
                                + " 1 MB.");
    }

    @Test
    void theUnlikelyIsTakenWithACaution() {
        String file = SmallSample.FILE
                .replace(SmallSample.CABLE, SmallSample.bent(SmallSample.CABLE, "insulation_c", "45"))
                .replace(SmallSample.BUSBAR, SmallSample.bent(SmallSample.BUSBAR, "rated_a", "6000"));

        assertThat(SmallSample.read(file).cautions())
                .containsExactly(
                        "small-parts.csv:2 insulation_c: 45 degC is taken, but is unlikely (most lie within 60 degC to 150"
                                + " degC).",
                        "small-parts.csv:12 rated_a: 6000 A is taken, but is unlikely (most lie within 0.5 A to 600 A).");
    }

    @Test
    void aFuseThatNoHolderTakesIsACaution() {
        String slip = SmallSample.FILE.replace(SmallSample.FUSE, SmallSample.bent(SmallSample.FUSE, "format", "blad"));
        String other =
                SmallSample.FILE.replace(SmallSample.FUSE, SmallSample.bent(SmallSample.FUSE, "format", "class T"));

        assertThat(SmallSample.read(slip).cautions())
                .containsExactly("small-parts.csv:5 format: no fuse holder in the file takes the format \"blad\". Is it"
                        + " \"blade\"?");
        assertThat(SmallSample.read(other).cautions())
                .containsExactly("small-parts.csv:5 format: no fuse holder in the file takes the format \"class T\".");
    }
}
