package tideover.app.report;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.OptionalLong;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.w3c.dom.Document;
import org.w3c.dom.NodeList;
import tideover.engine.Invented;
import tideover.engine.answer.Advisor;
import tideover.engine.answer.Answer;
import tideover.engine.answer.Options;
import tideover.engine.answer.Progress;
import tideover.engine.answer.ProvenRig;
import tideover.engine.answer.Question;
import tideover.engine.outage.Outage;
import tideover.engine.part.ControllerRating;
import tideover.engine.part.InverterRating;
import tideover.engine.part.Outlet;
import tideover.engine.part.PlainStore;
import tideover.engine.part.ReadyBox;
import tideover.engine.part.SmallPart;
import tideover.engine.rig.Assembly;
import tideover.engine.rig.Chosen;
import tideover.engine.rig.Rig;
import tideover.engine.rig.Route;
import tideover.engine.search.Grammar;
import tideover.engine.search.OfRoute;
import tideover.engine.search.Rated;
import tideover.engine.site.RoomKind;
import tideover.engine.site.WeatherSource;
import tideover.engine.wiring.Allowances;
import tideover.engine.wiring.Price;
import tideover.engine.wiring.WiredRun;
import tideover.engine.wiring.WiringKit;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** How a rig is wired, what that takes and what it costs, in every form of an answer. */
class WiringReportTest {
    private static final String LAMP = "stairwell <b>lamp</b>";
    private static final Answer COUNTED = answer(WiringKit.full(), WiringKit.rig(2, 2));
    private static final Answer ALLOWED = answer(List.of(), WiringKit.rig(1, 2));
    private static final Answer BOX = answer(WiringKit.full(), box());

    private static ProvenRig rig(Answer answer) {
        return Objects.requireNonNull(answer.rig());
    }

    private static String text(Answer answer) {
        return TextAnswer.of(answer, "9.9");
    }

    private static String part(String text, String from, String to) {
        assertThat(text).contains(from, to);
        return text.substring(text.indexOf(from), text.indexOf(to));
    }

    @Test
    void theWholeTextOfWhatIsCounted() {
        assertThat(part(text(COUNTED), "How it is wired", "Energy of")).isEqualTo("""
                How it is wired

                  Wires
                                                                                        may
                                                                  m  lasting  design  carry  loses  loses
                  run  from and to         conductor           each        A       A      A      V      %   mohm
                  ---  ------------------  ------------------  ----  -------  ------  -----  -----  -----  -----
                    1  bars to inverter    2 x 1/0 AWG          0.5    106.4   133.0  150.0  0.043    0.3   1.67
                                           copper, 90 degC
                    2  bars to charge      2 x 10 AWG copper,   0.5     20.0    25.0   30.0  0.081    0.6   7.27
                       controller          90 degC
                    3  battery to bars     2 x 3 AWG copper,    0.3     57.9    72.4   85.0  0.028    0.2   1.96
                       where the           90 degC
                       batteries meet, 2
                       alike
                    4  panels to charge    pair of 6 AWG         10     12.0    18.8   55.0   0.39    2.1   32.2
                       controller          panel leads, 90
                                           degC
                    5  outlet to           cord, 16 AWG           5      0.2     0.2   13.0  0.027    0.0  163.7
                       stairwell
                       <b>lamp</b>
                  Metres are those of each conductor, without slack. Amps: lasting; and as the code designs for
                  it, a quarter more, of panels a quarter twice, of cords none; and what the conductor may carry
                  as it lies (NFPA 70 210.19, 690.8, 310.16; check the edition in force). Volts are lost out and
                  back at the lasting amps. Milliohm out and back, fuse and joints included.

                  Fuses, breakers and switches
                                                  must
                                                 part,
                  run  protection                 V DC   fault, about  can part         parted by hand with
                  ---  ------------------------  -----  -------------  ---------------  ------------------------
                    1  150 A fuse, class T,       14.6        9,100 A  125 V, 20,000 A  invented switch
                       within 18 cm of the plus
                       bar
                    2  25 A fuse, cylinder        14.6        9,100 A  600 V, 30,000 A  the fuse, with all off
                       10x38, within 18 cm of
                       the plus bar
                    3  2 x 80 A fuse, class T,    14.6        4,600 A  125 V, 20,000 A  the fuse, with all off
                       within 18 cm of each
                       battery's plus
                    4  none: the leads bear all   24.3  limits itself                   the plugs, once the
                       that the panels give                                             panels are covered
                  A fuse or breaker sits within 18 cm (7 in) of the plus that it guards: boat practice, from
                  memory; check the edition in force. What it must part is the highest volts there and about
                  what flows when the poles touch (NFPA 70 110.9; check the edition in force). Run 5 has none of
                  its own: its cord is chosen for this load, so nothing else goes on it.

                  One line
                    2 x invented P make one 15.0
                        invented C (run 4, leads 6 AWG)
                            plus and minus bars (run 2, 10 AWG, 25 A fuse)
                                invented I (run 1, 1/0 AWG, 150 A fuse)
                                    stairwell <b>lamp</b> (run 5, cord 16 AWG)
                                2 x invented B (run 3, each 3 AWG, 80 A fuse)

                  - By a licensed electrician where the local code asks for one; the code and the makers'
                    instructions go before these tables.
                  - What carries mains volts, inverter, charger, cords and strips, is listed by a testing
                    laboratory, and so are fuses and breakers, for direct current.
                  - Rings and watches off, tools insulated, eyes covered. The fuse goes in last and comes out
                    first.
                  - Never open the panels' plugs in the sun or under load: cover the panels first.

                Small parts and tools

                  Small parts and tools, prices in USD
                                                                                                price
                  needed  bought  what                                                           each   price
                  ------  ------  ------------------------------------------------------------  -----  ------
                   1.1 m     2 m  invented cable 1/0 AWG (cable 1/0 AWG)                        11.10   22.20
                       2       2  invented T 150 (T 150)                                        18.00   36.00
                       3       3  invented T holder (T holder)                                  25.00   75.00
                       1       1  invented switch (switch)                                      25.00   25.00
                       8       8  invented lug 1/0 AWG (lug 1/0 AWG)                             2.87   22.96
                   1.1 m     2 m  invented cable 10 AWG (cable 10 AWG)                           1.46    2.92
                       2       2  invented cylinder 25 (cylinder 25)                             3.75    7.50
                       1       1  invented cylinder holder (cylinder holder)                     7.00    7.00
                       4       4  invented lug 10 AWG (lug 10 AWG)                               0.46    1.84
                   1.4 m     2 m  invented cable 3 AWG (cable 3 AWG)                             5.74   11.48
                       3       3  invented T 80 (T 80)                                          16.60   49.80
                      12      12  invented lug 3 AWG (lug 3 AWG)                                 1.53   18.36
                       1       1  invented lead make one 6 AWG 10 m (lead make one 6 AWG 10 m)  49.91   49.91
                       1       1  invented fork make one (fork make one)                         9.00    9.00
                       1       1  invented cord 16 AWG 5 m (cord 16 AWG 5 m)                     6.14    6.14
                       2       2  invented bar (bar)                                            18.00   36.00
                      24      24  invented fitting heat shrink (fitting heat shrink)             1.00   24.00
                       4       4  invented fitting terminal cover (fitting terminal cover)       1.10    4.40
                       2       2  invented fitting strap (fitting strap)                         1.20    2.40
                       6       6  invented fitting label (fitting label)                         1.30    7.80
                       1       1  invented fitting board (fitting board)                         1.40    1.40
                       1       1  invented fitting hand truck (fitting hand truck)               1.50    1.50
                       1       1  invented fitting battery meter (fitting battery meter)         1.60    1.60
                                  small parts                                                          424.21
                       1       1  invented tool light crimper (tool light crimper)              10.00   10.00
                       1       1  invented tool heavy crimper (tool heavy crimper)              11.00   11.00
                       1       1  invented tool cable cutter (tool cable cutter)                12.00   12.00
                       1       1  invented tool wire stripper (tool wire stripper)              13.00   13.00
                       1       1  invented tool heat gun (tool heat gun)                        14.00   14.00
                       1       1  invented tool insulated spanner (tool insulated spanner)      15.00   15.00
                       1       1  invented tool torque wrench (tool torque wrench)              16.00   16.00
                       1       1  invented tool multimeter (tool multimeter)                    17.00   17.00
                       1       1  invented tool eye protection (tool eye protection)            18.00   18.00
                                  tools                                                                126.00

                """);
    }

    @Test
    void theWholeTextOfStandardSizes() {
        assertThat(part(text(ALLOWED), "  Fuses, breakers", "Energy of")).isEqualTo("""
                  Fuses, breakers and switches
                                                 must
                                                part,
                  run  protection                V DC   fault, about  can part          parted by hand with
                  ---  -----------------------  -----  -------------  ----------------  ------------------------
                    1  150 A fuse, for direct    14.6        4,600 A  buy one that can  none chosen: a switch
                       current, within 18 cm                                            for 133 A and 15 V DC
                       of the battery's plus
                    2  25 A fuse, for direct     14.6        4,600 A  buy one that can  the fuse, with all off
                       current, within 18 cm
                       of the battery's plus
                    3  none: the leads bear      24.3  limits itself                    the plugs, once the
                       all that the panels                                              panels are covered
                       give
                  A fuse or breaker sits within 18 cm (7 in) of the plus that it guards: boat practice, from
                  memory; check the edition in force. What it must part is the highest volts there and about
                  what flows when the poles touch (NFPA 70 110.9; check the edition in force). Run 4 has none of
                  its own: its cord is chosen for this load, so nothing else goes on it.

                  One line
                    2 x invented P make one 15.0
                        invented C (run 3, leads 6 AWG)
                            invented B (run 2, 10 AWG, 25 A fuse)
                                invented I (run 1, 1/0 AWG, 150 A fuse)
                                    stairwell <b>lamp</b> (run 4, cord 18 AWG)

                  - By a licensed electrician where the local code asks for one; the code and the makers'
                    instructions go before these tables.
                  - What carries mains volts, inverter, charger, cords and strips, is listed by a testing
                    laboratory, and so are fuses and breakers, for direct current.
                  - Rings and watches off, tools insulated, eyes covered. The fuse goes in last and comes out
                    first.
                  - Never open the panels' plugs in the sun or under load: cover the panels first.

                Small parts and tools

                  Small parts by standard sizes
                  needed  what
                  ------  ---------------------------------
                   1.1 m  copper cable 1/0 AWG
                       2  fuse of 150 A, for direct current
                       2  fuse holder
                       6  lug 1/0 AWG
                   1.1 m  copper cable 10 AWG
                       2  fuse of 25 A, for direct current
                       4  lug 10 AWG
                       1  panel lead 6 AWG, 10 m
                       1  panel branch
                       1  cord 18 AWG, 5 m
                  Needed too: 1 x battery meter, 1 x board, 1 x cable cutter, 1 x eye protection, 1 x hand
                  truck, 1 x heat gun, 10 x heat shrink, 1 x heavy crimper, 1 x insulated spanner, 5 x label, 1
                  x light crimper, 1 x multimeter, 1 x strap, 2 x terminal cover, 1 x torque wrench, 1 x wire
                  stripper. They have no price here: the plan's allowance stands for them.

                """);
    }

    @Test
    void aBoxIsItsMakers() {
        assertThat(part(text(BOX), "How it is wired", "Energy of")).isEqualTo("""
                How it is wired
                  Inside a ready-made box everything is wired and protected by its maker: nothing in there is
                  opened or changed.

                  Wires
                                                                                        may
                                                                  m  lasting  design  carry  loses  loses
                  run  from and to         conductor           each        A       A      A      V      %   mohm
                  ---  ------------------  ------------------  ----  -------  ------  -----  -----  -----  -----
                    1  panels to charge    pair of 12 AWG        10      3.6     5.6   20.0   0.46    2.6  129.9
                       controller          panel leads, 90
                                           degC
                    2  outlet to           cord, 16 AWG           5      0.2     0.2   13.0  0.027    0.0  163.7
                       stairwell
                       <b>lamp</b>
                  Metres are those of each conductor, without slack. Amps: lasting; and as the code designs for
                  it, a quarter more, of panels a quarter twice, of cords none; and what the conductor may carry
                  as it lies (NFPA 70 210.19, 690.8, 310.16; check the edition in force). Volts are lost out and
                  back at the lasting amps. Milliohm out and back, fuse and joints included.

                  Fuses, breakers and switches
                                                     must
                                                    part,
                  run  protection                    V DC   fault, about  can part  parted by hand with
                  ---  ---------------------------  -----  -------------  --------  ----------------------------
                    1  none: the leads bear all      24.3  limits itself            the plugs, once the panels
                       that the panels give                                         are covered
                  Run 2 has none of its own: its cord is chosen for this load, so nothing else goes on it.

                  One line
                    1 x invented P
                        invented box (run 1, leads 12 AWG)
                            stairwell <b>lamp</b> (run 2, cord 16 AWG)

                  - Never open the panels' plugs in the sun or under load: cover the panels first.

                Small parts and tools

                  Small parts and tools, prices in USD
                                                                                                  price
                  needed  bought  what                                                             each  price
                  ------  ------  --------------------------------------------------------------  -----  -----
                       1       1  invented lead make one 12 AWG 10 m (lead make one 12 AWG 10 m)  19.93  19.93
                       1       1  invented cord 16 AWG 5 m (cord 16 AWG 5 m)                       6.14   6.14
                                  small parts                                                            26.07
                       1       1  invented tool wire stripper (tool wire stripper)                13.00  13.00
                       1       1  invented tool multimeter (tool multimeter)                      17.00  17.00
                                  tools                                                                  30.00

                """);
    }

    @Test
    void noLineOfWiringIsLongerThanATerminal() {
        for (Answer answer : List.of(COUNTED, ALLOWED, BOX)) {
            for (String line : part(text(answer), "The rig", "Energy of").split("\n")) {
                assertThat(line.length()).as(line).isLessThanOrEqualTo(TextAnswer.WIDTH);
            }
        }
    }

    /** The lines of small parts and tools add up to the price, and the price's parts to the whole. */
    @Test
    void thePriceIsWhatItsLinesAddUpTo() {
        for (Answer answer : List.of(COUNTED, ALLOWED, BOX)) {
            JsonNode rig = json(answer);
            JsonNode price = rig.path("price");
            long parts = 0;
            for (JsonNode part : rig.path("parts")) {
                parts += part.path("count").asLong()
                        * part.path("price_each_cents").asLong();
            }
            long small = 0;
            long tools = 0;
            for (JsonNode line : rig.path("wiring").path("small_parts")) {
                long cents = line.path("price_cents").asLong();
                assertThat(cents)
                        .isEqualTo(line.path("bought_packs").asLong()
                                * line.path("price_each_cents").asLong());
                small += line.path("tool").asBoolean() ? 0 : cents;
                tools += line.path("tool").asBoolean() ? cents : 0;
            }
            boolean counted = rig.path("wiring").path("small_parts_counted").asBoolean();
            assertThat(counted).isEqualTo(answer != ALLOWED);
            assertThat(price.has("small_parts_allowance_cents")).isEqualTo(!counted);
            assertThat(price.has("small_parts_cents")).isEqualTo(counted);
            assertThat(price.has("tools_cents")).isEqualTo(counted);
            if (counted) {
                assertThat(price.path("small_parts_cents").asLong()).isEqualTo(small);
                assertThat(price.path("tools_cents").asLong()).isEqualTo(tools);
            } else {
                assertThat(small + tools).isZero();
                small = price.path("small_parts_allowance_cents").asLong();
                assertThat(small).isEqualTo(90_00);
            }
            assertThat(price.path("parts_cents").asLong()).isEqualTo(parts);
            assertThat(price.path("total_cents").asLong()).isEqualTo(parts + small + tools);
        }
        assertThat(PriceWords.split(rig(COUNTED), "USD"))
                .isEqualTo(String.format(
                        Locale.ROOT,
                        "%s in all: %s main parts, %s small parts, %s tools.",
                        Words.money(rig(COUNTED).price().totalCents(), "USD"),
                        "890.00 USD",
                        PriceWords.bare(rig(COUNTED).price().smallPartsCents()),
                        PriceWords.bare(rig(COUNTED).price().toolsCents())));
    }

    @Test
    void theDocumentHoldsEveryRunAsItWasChosen() {
        for (Answer answer : List.of(COUNTED, ALLOWED, BOX)) {
            List<WiredRun> runs = rig(answer).build().circuit().runs();
            JsonNode told = json(answer).path("wiring").path("runs");
            assertThat(told.size()).isEqualTo(runs.size());
            for (int i = 0; i < runs.size(); i++) {
                WiredRun wired = runs.get(i);
                JsonNode one = told.path(i);
                assertThat(one.path("number").asInt()).isEqualTo(i + 1);
                assertThat(one.path("one_way_m").asDouble())
                        .isEqualTo(wired.run().oneWayM());
                assertThat(one.path("lasting_a").asDouble())
                        .isCloseTo(wired.run().amps().lasting(), within(1e-6));
                assertThat(one.path("design_a").asDouble())
                        .isCloseTo(wired.run().amps().design(), within(1e-6));
                assertThat(one.path("allowed_a").asDouble()).isCloseTo(wired.allowedA(), within(1e-6));
                assertThat(one.path("drop_v").asDouble()).isCloseTo(wired.dropV(), within(1e-9));
                assertThat(one.path("drop_pct").asDouble())
                        .isCloseTo(100 * wired.dropV() / wired.run().systemV(), within(1e-7));
                assertThat(one.path("ohm").asDouble()).isCloseTo(wired.ohm(), within(1e-9));
                assertThat(one.path("conductor").path("id").asString())
                        .isEqualTo(wired.conductor().listing().id());
                assertThat(one.path("protection").isNull()).isEqualTo(wired.protection() == null);
                assertThat(one.path("parting").isNull()).isEqualTo(wired.parting() == null);
            }
        }
    }

    /** A standard size parts what it must, and nobody has said how much more. */
    @Test
    void aStandardFuseClaimsNothing() {
        JsonNode fuse = json(ALLOWED).path("wiring").path("runs").path(0).path("protection");
        assertThat(fuse.path("rated_a").asDouble()).isPositive();
        assertThat(fuse.path("most_dc_v").isNull()).isTrue();
        assertThat(fuse.path("interrupting_a").isNull()).isTrue();
        JsonNode counted = json(COUNTED).path("wiring").path("runs").path(0).path("protection");
        assertThat(counted.path("most_dc_v").asDouble()).isEqualTo(125);
        assertThat(counted.path("interrupting_a").asDouble()).isEqualTo(20_000);
    }

    /** Each node of the graph stands once in the tree, alike batteries counted; each run of an edge is named. */
    @Test
    void theOneLineTellsEveryNodeOnceAndEveryRun() {
        for (Answer answer : List.of(COUNTED, ALLOWED, BOX)) {
            JsonNode graph = json(answer).path("wiring").path("one_line");
            Set<String> ids = new HashSet<>();
            graph.path("nodes").forEach(node -> ids.add(node.path("id").asString()));
            String tree = part(part(text(answer), "How it is wired", "Energy of"), "  One line", "\n  - ")
                    .replaceAll("\\s+", " ");
            for (JsonNode edge : graph.path("edges")) {
                assertThat(ids)
                        .contains(edge.path("from").asString(), edge.path("to").asString());
                if (!edge.path("run_number").isNull()) {
                    assertThat(tree).contains("run " + edge.path("run_number").asInt());
                }
            }
            List<String> told = new ArrayList<>();
            tell(section(answer).oneLine(), told);
            int nodes = 0;
            for (String words : told) {
                Matcher alike = Pattern.compile("^([0-9]+) x invented B").matcher(words);
                nodes += alike.find() ? Integer.parseInt(alike.group(1)) : 1;
            }
            assertThat(nodes).isEqualTo(ids.size());
        }
    }

    private static void tell(List<Page.Branch> branches, List<String> told) {
        branches.forEach(branch -> {
            told.add(branch.words());
            tell(branch.branches(), told);
        });
    }

    private static Page.Wired section(Answer answer) {
        return WiredSection.of(rig(answer), answer.question().loads(), "USD");
    }

    /** Text and page show the same tables, cell by cell. */
    @Test
    void thePageShowsTheSameTables() {
        for (Answer answer : List.of(COUNTED, ALLOWED, BOX)) {
            String page = HtmlReport.of(answer, "9.9");
            Document read = HtmlReportTest.parsed(page);
            NodeList all = read.getElementsByTagName("td");
            Set<String> cells = new HashSet<>();
            for (int i = 0; i < all.getLength(); i++) {
                cells.add(all.item(i).getTextContent());
            }
            Page.Wired wired = section(answer);
            for (Table table : new Table[] {wired.wires(), wired.protections(), wired.smallParts()}) {
                if (table == null) {
                    continue;
                }
                for (Table.Row row : table.rows()) {
                    assertThat(cells).containsAll(row.cells());
                }
            }
            String text = read.getDocumentElement().getTextContent();
            assertThat(text).contains(wired.mind());
            assertThat(text)
                    .contains(wired.inside(), wired.wiresNote(), wired.protectionsNote(), wired.smallPartsNote());
            assertThat(page).doesNotContain("<b>");
        }
    }

    @Test
    void theWaysOfBuildingStandSideBySide() {
        Question question = COUNTED.question();
        Rig rig = WiringKit.rig(1, 1);
        Table met = RouteTable.of(
                question, List.of(new OfRoute(new Rated(7, rig, new Price(100_00, 20_00, 3_00, 0), .95), true)));
        assertThat(met.rows())
                .extracting(row -> row.cells().get(0))
                .containsExactly(Route.READY_BOX.words(), Route.ENCLOSURE.words(), Route.SEPARATE_PARTS.words());
        assertThat(met.rows().get(2).cells())
                .containsExactly("separate parts", "7", "100.00", "20.00", "3.00", "123.00", "95.0", rig.words());
        assertThat(met.rows().get(0).cells().get(7)).startsWith("none was found");
        Table missed = RouteTable.of(
                ALLOWED.question(),
                List.of(new OfRoute(new Rated(7, rig, new Price(100_00, 20_00, 0, 350_00), .5), false)));
        assertThat(missed.rows().get(2).cells())
                .containsExactly(
                        "separate parts",
                        "7",
                        "100.00",
                        "20.00",
                        "350.00",
                        "470.00",
                        "50.0",
                        rig.words() + "; nearest found, misses the target");
    }

    @Test
    void aTableOfTextBreaksWordsAndNotFigures() {
        Table table = Table.titled("t")
                .figures("amps lasting")
                .words("what it is")
                .words("short")
                .row("12,000.5", "one two three four five", "x")
                .done();
        assertThat(TextTable.of(table, 30))
                .containsExactly(
                        "    amps",
                        " lasting  what it is     short",
                        "--------  -------------  -----",
                        "12,000.5  one two three  x",
                        "          four five");
        assertThat(TextTable.bare(table, 25))
                .containsExactly("12,000.5  one two   x", "          three", "          four", "          five");
    }

    @Test
    void figuresKeepDigitsThatCount() {
        Map<Double, String> small = Map.of(0.0004, "0.000", 0.0713, "0.071", 3.456, "3.46", 81.44, "81.4");
        small.forEach((figure, words) -> assertThat(WireSchedule.small(figure)).isEqualTo(words));
        assertThat(WireSchedule.about(4533.3)).isEqualTo("4,600");
        assertThat(WireSchedule.about(22_000)).isEqualTo("22,000");
        assertThat(WireSchedule.about(98)).isEqualTo("98");
    }

    @Test
    void everyRuleOfTheseHasWords() {
        for (String rule : List.of(
                "wire-metal",
                "wire-ampacity",
                "wire-drop",
                "wire-sag",
                "protection-rating",
                "breaker-dc",
                "fuse-volts",
                "interrupting",
                "breaker-polarity",
                "battery-switch",
                "mated-connectors",
                "plug-amps",
                "string-fuse",
                "panel-switch",
                "cord-amps",
                "links-alike",
                "no-protection",
                "no-cable",
                "no-string-fuse",
                "no-panel-branch",
                "no-panel-lead",
                "no-cord",
                "not-priced",
                "grounding",
                "fits-inside",
                "fits-terminals",
                "fits-mass",
                "ventilation",
                "flooded-slept-in",
                "room-warmth",
                "car-socket-hours",
                "engine-outdoors")) {
            assertThat(Words.rule(rule)).as(rule).contains(" ").doesNotContain(rule);
        }
    }

    private static JsonNode json(Answer answer) {
        return JsonMapper.shared().readTree(JsonAnswer.of(answer, "9.9")).path("rig");
    }

    private static Rig box() {
        ReadyBox box = new ReadyBox(
                Invented.listing("box", 400_00, 9),
                new PlainStore(800, .95, .95, 12.8, 20, 60),
                new ControllerRating(12, 60, 12, 24, .95),
                new InverterRating(600, .88, 6, 12),
                List.of(new Outlet(Invented.MAINS, 2, 600, 1)));
        return Objects.requireNonNull(Assembly.of(
                        List.of(new Chosen(box, 1), new Chosen(Invented.panel("P", 60, 80_00), 1)))
                .rig());
    }

    private static Answer answer(List<SmallPart> smallParts, Rig rig) {
        return Advisor.prove(question(smallParts), rig, new Options(7, 2, 3, 2, 1), Progress.SILENT);
    }

    private static Question question(List<SmallPart> smallParts) {
        return new Question(
                "Stairwell",
                "Invented.",
                Invented.PLACE,
                new WeatherSource.Imported(new Invented(3).weather(2)),
                -10,
                Invented.MOUNT,
                false,
                RoomKind.SHED,
                false,
                List.of(WiringKit.lamp(LAMP, 20)),
                new Outage(List.of(0, 11), 48, 0.9, 0.9, 3, 1),
                OptionalLong.empty(),
                "USD",
                new Allowances(0, 3_500, 9_000),
                new Grammar(2, 2),
                new Invented(5).parts(),
                smallParts,
                WiringKit.corded(LAMP, 4),
                List.of(),
                List.of(),
                List.of());
    }
}
