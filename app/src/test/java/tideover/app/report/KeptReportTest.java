package tideover.app.report;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.offset;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.StringWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.OptionalLong;
import javax.xml.parsers.DocumentBuilderFactory;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.w3c.dom.Document;
import tideover.engine.Invented;
import tideover.engine.answer.Advisor;
import tideover.engine.answer.Answer;
import tideover.engine.answer.Options;
import tideover.engine.answer.Progress;
import tideover.engine.answer.ProvenRig;
import tideover.engine.answer.Question;
import tideover.engine.cold.BoxKind;
import tideover.engine.cold.ColdBox;
import tideover.engine.cold.Compressor;
import tideover.engine.cold.Contents;
import tideover.engine.cold.Food;
import tideover.engine.load.ColdLoad;
import tideover.engine.load.DayWindow;
import tideover.engine.load.Duty;
import tideover.engine.load.HeatLoad;
import tideover.engine.load.Load;
import tideover.engine.load.Nature;
import tideover.engine.load.Need;
import tideover.engine.load.PitLoad;
import tideover.engine.load.SteadyLoad;
import tideover.engine.outage.Outage;
import tideover.engine.outage.Storm;
import tideover.engine.proof.Doubt;
import tideover.engine.proof.Doubts;
import tideover.engine.proof.Ending;
import tideover.engine.proof.Ledger;
import tideover.engine.proof.Lift;
import tideover.engine.proof.Proof;
import tideover.engine.proof.Trace;
import tideover.engine.proof.TraceStep;
import tideover.engine.search.Grammar;
import tideover.engine.site.RoomKind;
import tideover.engine.site.WeatherSource;
import tideover.engine.why.Basis;
import tideover.engine.why.MarginNote;
import tideover.engine.wiring.Allowances;
import tideover.engine.wiring.Laying;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** What is kept, and all that is proven of it, stands in every form of an answer; hostile names stay words. */
class KeptReportTest {
    private static final String HOSTILE = "=<b>\"vault\"</b>,&";
    private static final Options OPTIONS = new Options(7, 2, 3, 2, 1);

    private static final Answer ALL =
            Advisor.prove(question(loads(), storm(), 0.9), new Invented(11).rig(1500, 2, 12), OPTIONS, Progress.SILENT);
    private static final ProvenRig RIG = Objects.requireNonNull(ALL.rig());
    private static final Proof PROOF = RIG.proof();
    private static final String TEXT = flat(TextAnswer.of(ALL, "9.9"));
    private static final String PAGE = HtmlReport.of(ALL, "9.9");
    private static final JsonNode JSON = JsonMapper.shared().readTree(JsonAnswer.of(ALL, "9.9"));

    @Test
    void theAnswerIsWhatItIsMeantToBe() {
        assertThat(PROOF.storm()).isNotNull();
        assertThat(PROOF.habits()).isNotEmpty();
        assertThat(PROOF.bareShare()).isBetween(0.0, 1.0);
        assertThat(PROOF.worst().kept()).hasSize(3);
        assertThat(DoubtWords.moving(RIG.doubts())).isNotEmpty();
    }

    @Test
    void textAndPageTellNeedDutyAndTheWorst() {
        List<KeptFate> fates = KeptFate.of(PROOF.worst());
        for (String form : List.of(TEXT, words(PAGE))) {
            for (KeptFate fate : fates) {
                assertThat(form).contains(fate.words());
            }
            assertThat(form)
                    .contains("never above -1.7 degC; runs only 09:00 to 15:00")
                    .contains("the pit never runs over", "never below 12 degC")
                    .contains("Here: " + HOSTILE);
        }
        assertThat(TEXT).contains("Guessed or usual figures: draws.").contains("Worst storm start: ");
        assertThat(words(PAGE))
                .contains("at most 89 W while it runs", "200 W while it runs", "60 W while it runs")
                .contains("draws: assumed; need: published");
    }

    @Test
    void nothingBoughtTheUnknownAndStormsStandBeforeTheHours() {
        String bare = KeptWords.bare(ALL.question(), PROOF);
        assertThat(bare)
                .startsWith("With nothing bought and the doors shut " + Words.of100(PROOF.bareShare())
                        + " outages are carried.");
        for (String form : List.of(TEXT, words(PAGE))) {
            assertThat(form).contains(bare, DoubtWords.together(RIG.doubts(), true), KeptWords.storm(ALL, PROOF));
            assertThat(form.indexOf(bare)).isLessThan(form.indexOf("Hours carried"));
        }
        assertThat(KeptWords.stormDoes(ALL.question()))
                .isEqualTo(
                        "panels come out after 9 h; cellar: water rises to 700 L/h after 5 h and ebbs within 20 h; it is"
                                + " known a day ahead and " + HOSTILE + " is cooled to -24 degC");
    }

    /** A share of all starts must never hide what storms make of it. */
    @Test
    void theSentenceTellsStorms() {
        assertThat(Words.sentence(ALL))
                .contains("; on storm starts "
                        + Words.of100(
                                Objects.requireNonNull(PROOF.storm()).share().share()) + ": ");
        assertThat(KeptWords.tried(ALL.question())).isEqualTo("on storm starts");
        assertThat(KeptWords.tried(question(List.of(freezer("chest", 0)), null, 0.9)))
                .isEqualTo("on the confirming years");
    }

    @Test
    void whatCostsNothingSaysWhatItGainsOrLoses() {
        assertThat(KeptWords.gain(new Lift("a", "b", 0.031, 4.21))).isEqualTo("gains 3.1 of 100 and 4.2 h on average");
        assertThat(KeptWords.gain(new Lift("a", "b", -0.02, -1))).isEqualTo("loses 2.0 of 100 and 1.0 h on average");
        assertThat(KeptWords.gain(new Lift("a", "b", 0.01, -1))).isEqualTo("gains 1.0 of 100, loses 1.0 h on average");
        assertThat(KeptWords.gain(new Lift("a", "b", 0, 0.2))).isEqualTo("gains 0.2 h on average");
        assertThat(KeptWords.gain(new Lift("a", "b", 0.0001, -0.01))).isEqualTo("changes nothing");
        for (Lift habit : PROOF.habits()) {
            String told = KeptWords.habit(habit) + ": " + KeptWords.gain(habit) + ".";
            assertThat(TEXT).contains(told);
        }
        assertThat(KeptWords.habit(new Lift("x: y: hours", "run it", 0, 0))).isEqualTo("x: y: run it");
    }

    @Test
    void whatIsNotKnownIsRankedAndWhatMovesNothingIsOneLine() {
        Doubt mass = new Doubt("box: mass", Doubt.Kind.FOOD, "box", 0.6, 1.25, "weigh it");
        Doubt still = new Doubt("panels: dirt", Doubt.Kind.SUN, "", 0.9, 1, "wash them");
        Doubts doubts = new Doubts(
                0.801,
                0.9712,
                List.of(new Doubts.Effect(mass, 0.85, 0.9501, 3), new Doubts.Effect(still, 0.9, 0.9, 0)));
        assertThat(DoubtWords.together(doubts, false))
                .startsWith("With everything that is not known: between 80.1 and 97.2 of 100. ");
        assertThat(DoubtWords.rows(doubts, true))
                .containsExactly("box: mass, 0.6 to 1.25 times: 85.0 to 95.0 of 100. Measure: weigh it.");
        assertThat(DoubtWords.rows(doubts, false))
                .containsExactly("box: mass, 0.6 to 1.25 times: 3.0 h on average. Measure: weigh it.");
        assertThat(DoubtWords.rest(doubts)).isEqualTo("These move nothing here: panels: dirt.");
        assertThat(DoubtWords.rows(new Doubts(0, 1, Collections.nCopies(9, new Doubts.Effect(mass, 0, 1, 3))), true))
                .hasSize(DoubtWords.MOST_ROWS);
        assertThat(TEXT).contains(DoubtWords.rows(RIG.doubts(), true).get(0));
    }

    @Test
    void whereNothingNeedBeBoughtItIsSaid() {
        Question easy = question(List.of(freezer("chest", 0)), null, 0.9);
        ProvenRig rig =
                Objects.requireNonNull(Advisor.prove(easy, new Invented(11).rig(1500, 2, 12), OPTIONS, Progress.SILENT)
                        .rig());
        assertThat(rig.proof().bareShare()).isEqualTo(1);
        assertThat(KeptWords.bare(easy, rig.proof()))
                .isEqualTo(
                        "With nothing bought and the doors shut 100 of 100 outages are carried. That meets the target:"
                                + " nothing need be bought. Put a thermometer in the box, and read below what is said of food.");
        assertThat(KeptWords.bare(question(List.of(freezer("chest", 3)), null, 0.9), rig.proof()))
                .startsWith("With nothing bought and the doors opened no more than the plan says 100 of 100");
        Question strict = question(List.of(freezer("chest", 0)), storm(), 0);
        assertThat(KeptWords.bare(strict, PROOF))
                .endsWith("That meets the target but for storms, which were not tried without power.");
    }

    /** Steps of half an hour: 1 dark, 1 half dark, 2 with power, 3 dark; the need is broken in the last. */
    @Test
    void aFateIsToldFromTheSteps() {
        double[] darkH = {0.5, 0.25, 0, 0, 0.5, 0.5, 0.5};
        double[] degC = {-17, -16.5, -16.8, -17, -12, -9, -8.04};
        ColdLoad load = freezer("chest", 0);
        List<TraceStep> steps = new ArrayList<>();
        for (int i = 0; i < darkH.length; i++) {
            steps.add(step(i * 0.5, new TraceStep.KeptStep(degC[i], degC[i], 0, darkH[i], i < 6)));
        }
        Trace trace = new Trace(0, 0.5, 100, 3, Ending.AGENCY_HOURS, new Ledger(), List.of(load), steps);
        assertThat(KeptFate.of(trace).get(0).words())
                .isEqualTo(
                        "contents -8.0 degC at the warmest; 1.5 h without power at a stretch, 2.3 h in all; not kept from"
                                + " 3.0 h on, for it was without power longer than the agencies allow");
        Trace warm = new Trace(
                0,
                0.5,
                100,
                3,
                Ending.THAWED,
                new Ledger(),
                List.of(load.with(Duty.WHILE_SUNNY)),
                List.of(step(0, new TraceStep.KeptStep(-1.0, 2, 0, 0.5, false))));
        assertThat(KeptFate.of(warm).get(0).words())
                .isEqualTo(
                        "contents -1.0 degC at the warmest; 0.5 h without power or held back at a stretch; not kept from 0.0"
                                + " h on");
    }

    private static TraceStep step(double hour, TraceStep.KeptStep kept) {
        return new TraceStep(hour, 0, 0, 0, true, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, List.of(kept));
    }

    @Test
    void thePageIsWellFormedAndHostileNamesStayWords() {
        Document page = parsed(PAGE);
        assertThat(PAGE).doesNotContain("<b>");
        assertThat(page.getDocumentElement().getTextContent()).contains(HOSTILE);
        assertThat(found(PAGE, "role=\"img\""))
                .as("tide line wide and narrow, then three outages and what is kept in each")
                .isEqualTo(2 + 3 + 3);
    }

    @Test
    void theDocumentHoldsAllOfIt() {
        JsonNode rig = JSON.path("rig");
        assertThat(rig.path("nothing_bought_share").asDouble()).isEqualTo(PROOF.bareShare(), offset(1e-9));
        assertThat(rig.path("for_nothing").size()).isEqualTo(PROOF.habits().size());
        assertThat(rig.path("not_known").path("low_share").asDouble())
                .isEqualTo(RIG.doubts().low(), offset(1e-9));
        assertThat(rig.path("not_known").path("measure_first").size())
                .isEqualTo(RIG.doubts().ranked().size());
        assertThat(rig.path("carried_share_storm_starts").path("share").asDouble())
                .isEqualTo(Objects.requireNonNull(PROOF.storm()).share().share(), offset(1e-9));
        JsonNode kept = rig.path("worst_storm_outage").path("kept");
        assertThat(kept.size()).isEqualTo(3);
        assertThat(kept.path(0).path("air_degc").size())
                .isEqualTo(PROOF.storm().worst().steps().size());
        assertThat(kept.path(1).path("water_l").isArray()).isTrue();
        JsonNode load = JSON.path("question").path("loads").path(0);
        assertThat(load.path("duty").asString()).isEqualTo("only 09:00 to 15:00");
        assertThat(load.path("agencies_allow_h").asDouble()).isEqualTo(24);
        assertThat(JSON.path("question")
                        .path("outage")
                        .path("storm")
                        .path("panels_stowed_h")
                        .asInt())
                .isEqualTo(9);
    }

    @Test
    void theTraceFileHoldsWhatIsKept() throws IOException {
        Trace trace = PROOF.worst();
        StringWriter out = new StringWriter();
        TraceCsv.write(trace, out);
        List<String> lines = out.toString().lines().toList();
        List<String> head = List.of(lines.get(0).split(","));
        assertThat(head.subList(TraceCsv.columns().size(), head.size()))
                .containsExactly(
                        "b_vault_b_c",
                        "b_vault_b_air_c",
                        "b_vault_b_w",
                        "b_vault_b_without_power_h",
                        "b_vault_b_kept",
                        "cellar_l",
                        "cellar_w",
                        "cellar_without_power_h",
                        "cellar_kept",
                        "stove_c",
                        "stove_w",
                        "stove_without_power_h",
                        "stove_kept");
        assertThat(lines).hasSize(1 + trace.steps().size());
        String[] last = lines.get(lines.size() - 1).split(",");
        TraceStep.KeptStep step =
                trace.steps().get(trace.steps().size() - 1).kept().get(1);
        assertThat(last[head.indexOf("cellar_l")]).isEqualTo(String.format(Locale.ROOT, "%.3f", step.kept()));
        assertThat(last[head.indexOf("cellar_kept")]).isEqualTo(step.whole() ? "yes" : "no");
        String told = Files.readString(Path.of("..", "docs", "trace-file.md"));
        for (String end : List.of("_c", "_l", "_air_c", "_w", "_without_power_h", "_kept")) {
            assertThat(told).contains("| `" + end + "` |");
        }
    }

    @Test
    void everyTraceColumnHasItsOwnName() {
        List<Load> same = List.of(freezer("A 2", 0), freezer("a", 0), freezer("a!", 0), freezer("\u6c37", 0));
        Trace trace = Advisor.trace(question(same, null, 0.9), new Invented(11).rig(1500, 2, 12), 30, OPTIONS);
        assertThat(TraceCsv.columns(trace)).doesNotHaveDuplicates().contains("a_2_c", "a_c", "a_3_c", "kept_c");
    }

    private static Storm storm() {
        return new Storm(9, true);
    }

    private static List<Load> loads() {
        return List.of(
                freezer(HOSTILE, 0)
                        .with(Duty.inHours(List.of(new DayWindow(9, 15))))
                        .chilledTo(-24),
                new PitLoad(
                        "cellar",
                        Invented.MAINS,
                        200,
                        new PitLoad.Pit(30, 90),
                        new PitLoad.Inflow(20, 700, 5, 20),
                        3000,
                        RoomKind.INDOORS,
                        Nature.PLAIN),
                new HeatLoad(
                        "stove",
                        Invented.MAINS,
                        60,
                        3,
                        new HeatLoad.Home(40, 30, 19, 1),
                        new Need.Above(12),
                        RoomKind.INDOORS,
                        Nature.PLAIN),
                new SteadyLoad("lamp", Invented.SOCKET, 4, false, new Need.AlwaysOn(), RoomKind.INDOORS));
    }

    /** Half full by weight. */
    private static ColdLoad freezer(String name, double openings) {
        ColdBox box = ColdBox.ofWalls(
                        BoxKind.CHEST_FREEZER,
                        200,
                        0.7,
                        new Compressor(75, 20),
                        null,
                        List.of(Contents.of(Food.LEAN_BEEF, 50)))
                .withOpenings(openings);
        return new ColdLoad(
                name,
                Invented.MAINS,
                box,
                new Need.Below(-1.7),
                Duty.AS_IT_NEEDS,
                Double.NaN,
                RoomKind.SHED,
                Nature.PLAIN);
    }

    private static Question question(List<Load> loads, @Nullable Storm storm, double target) {
        return new Question(
                "Lantern room",
                "Invented.",
                Invented.PLACE,
                new WeatherSource.Imported(new Invented(3).weather(2)),
                -12,
                Invented.MOUNT,
                false,
                RoomKind.SHED,
                false,
                loads,
                new Outage(List.of(0, 11), storm == null ? 20 : 48, target, 0.9, 3, 1, null, List.of(), storm),
                OptionalLong.empty(),
                "USD",
                new Allowances(0, 3_500, 9_000),
                new Grammar(2, 2),
                new Invented(5).parts(),
                List.of(),
                Laying.ASSUMED,
                loads.size() < 3 ? List.of() : List.of(Doubt.of(Doubt.Kind.DRAWS, loads.get(2), 0.5, 2)),
                List.of(
                        new MarginNote(HOSTILE + ": draws", "75 W", Basis.GUESS, "plan"),
                        new MarginNote(HOSTILE + ": need", "frozen", Basis.PUBLISHED, "ASHRAE")),
                List.of());
    }

    private static int found(String text, String words) {
        return new ArrayList<>(List.of(text.split(words, -1))).size() - 1;
    }

    private static String words(String page) {
        return flat(parsed(page).getElementsByTagName("body").item(0).getTextContent());
    }

    private static Document parsed(String page) {
        try {
            return DocumentBuilderFactory.newInstance()
                    .newDocumentBuilder()
                    .parse(new ByteArrayInputStream(page.getBytes(StandardCharsets.UTF_8)));
        } catch (Exception e) {
            throw new AssertionError("not well-formed: " + e.getMessage(), e);
        }
    }

    private static String flat(String text) {
        return text.replaceAll("\\s+", " ");
    }
}
