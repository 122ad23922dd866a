package tideover.app.report;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayInputStream;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Objects;
import java.util.OptionalLong;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import javax.xml.parsers.DocumentBuilderFactory;
import org.junit.jupiter.api.Test;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.NodeList;
import tideover.engine.Invented;
import tideover.engine.answer.Advisor;
import tideover.engine.answer.Answer;
import tideover.engine.answer.Options;
import tideover.engine.answer.Progress;
import tideover.engine.answer.Question;
import tideover.engine.load.DayWindow;
import tideover.engine.load.Load;
import tideover.engine.load.Need;
import tideover.engine.load.SteadyLoad;
import tideover.engine.load.TimedLoad;
import tideover.engine.outage.Outage;
import tideover.engine.proof.Proof;
import tideover.engine.rig.Assembly;
import tideover.engine.rig.Chosen;
import tideover.engine.rig.Rig;
import tideover.engine.search.Grammar;
import tideover.engine.site.RoomKind;
import tideover.engine.site.WeatherSource;
import tideover.engine.why.Basis;
import tideover.engine.why.MarginNote;
import tideover.engine.wiring.Allowances;
import tideover.engine.wiring.Laying;

/** The page is whole, says what was answered, shows its figures in words too, and lets nothing in or out. */
class HtmlReportTest {
    private static final String HOSTILE = "<script>alert(1)</script> & \"more\"";
    private static final Options OPTIONS = new Options(7, 2, 3, 2, 1);

    private static final Answer MET = Advisor.size(question(HOSTILE, 0.5), OPTIONS, Progress.SILENT);
    private static final Answer NOT_MET =
            Advisor.prove(question("Lantern room", 0.9), new Invented(11).rig(150, 0, 8), OPTIONS, Progress.SILENT);
    private static final Answer NOTHING = Advisor.size(cheap(question("Lantern room", 1)), OPTIONS, Progress.SILENT);

    @Test
    void everyPageIsWellFormed() {
        for (Answer answer : answers()) {
            Document page = parsed(HtmlReport.of(answer, "9.9"));
            assertThat(page.getDocumentElement().getTagName()).isEqualTo("html");
            assertThat(page.getElementsByTagName("h1").getLength()).isEqualTo(1);
        }
    }

    @Test
    void theSentenceTheCautionsAndTheInputsAreThere() {
        for (Answer answer : answers()) {
            String text =
                    parsed(HtmlReport.of(answer, "9.9")).getDocumentElement().getTextContent();
            assertThat(text).contains(answer.question().title());
            assertThat(text).contains(Words.sentence(answer));
            assertThat(text).contains(answer.weather());
            answer.cautions().forEach(caution -> assertThat(text).contains(caution));
            answer.notes()
                    .forEach(note -> assertThat(text)
                            .contains(note.name(), note.value(), note.basis().words(), note.source()));
            assertThat(text).contains("Seed 7, 2 weather years").contains("Tideover 9.9");
        }
    }

    @Test
    void whatIsNotMetSaysWhy() {
        String text = parsed(HtmlReport.of(NOT_MET, "9.9")).getDocumentElement().getTextContent();
        assertThat(text).contains("Does not meet the target: 90.0 of 100").contains("It carries ");
        String nothing =
                parsed(HtmlReport.of(NOTHING, "9.9")).getDocumentElement().getTextContent();
        assertThat(nothing).contains("Nothing meets the target").contains("Nearest below the target");
        assertThat(nothing.indexOf("Nearest below the target")).isLessThan(nothing.indexOf("Mind"));
    }

    /** Without an inverter the lamp is fed and the radio, which is essential too, is not. */
    @Test
    void aShareNeverHidesABrokenRule() {
        Invented invented = new Invented(12);
        Rig noInverter = Objects.requireNonNull(Assembly.of(List.of(
                        new Chosen(invented.battery("B", 4000, 1), 1), new Chosen(invented.controller("C", 20, 1), 1)))
                .rig());
        Answer broken = Advisor.prove(heavy(question("Lantern room", 0.5)), noInverter, OPTIONS, Progress.SILENT);
        assertThat(broken.meets()).isFalse();
        assertThat(Words.sentence(broken))
                .contains("breaks a rule (no outlet) and so will not do; what it can feed it carries through ")
                .doesNotContain("misses the target");
    }

    @Test
    void wattsOfLoadsKeepTheirZeros() {
        Answer answer = Advisor.prove(
                heavy(question("Lantern room", 0.5)), new Invented(11).rig(150, 0, 8), OPTIONS, Progress.SILENT);
        List<String> cells = new ArrayList<>();
        NodeList all = parsed(HtmlReport.of(answer, "9.9")).getElementsByTagName("td");
        for (int i = 0; i < all.getLength(); i++) {
            cells.add(all.item(i).getTextContent().strip());
        }
        assertThat(cells).contains("1500 W", "9 W", "14 W").doesNotContain("15 W");
    }

    @Test
    void hostileWordsStayWords() {
        String page = HtmlReport.of(MET, "9.9");
        assertThat(page)
                .doesNotContain("<script")
                .contains("&lt;script&gt;alert(1)")
                .doesNotContain("javascript:");
        assertThat(parsed(page).getElementsByTagName("h1").item(0).getTextContent())
                .isEqualTo(HOSTILE);
        assertThat(parsed(page).getElementsByTagName("script").getLength()).isZero();
    }

    @Test
    void nothingIsFetched() {
        for (Answer answer : answers()) {
            String page = HtmlReport.of(answer, "9.9").replace("xmlns=\"http://www.w3.org/2000/svg\"", "");
            assertThat(page)
                    .doesNotContain("http:", "https:", "//www", "@import", "<link", "<img", "<iframe", "src=", "href=");
            Matcher url = Pattern.compile("url\\(([^)]*)\\)").matcher(page);
            while (url.find()) {
                assertThat(url.group(1)).startsWith("#");
            }
        }
    }

    @Test
    void everyFigureIsToldInWordsAndHasItsTable() {
        Document page = parsed(HtmlReport.of(MET, "9.9"));
        NodeList drawings = page.getElementsByTagName("svg");
        Set<String> titles = new HashSet<>();
        for (int i = 0; i < drawings.getLength(); i++) {
            Element svg = (Element) drawings.item(i);
            if ("true".equals(svg.getAttribute("aria-hidden"))) {
                continue;
            }
            assertThat(svg.getAttribute("role")).isEqualTo("img");
            titles.add(svg.getElementsByTagName("title").item(0).getTextContent());
            assertThat(svg.getElementsByTagName("desc").item(0).getTextContent())
                    .matches("(?s).*\\d.*");
        }
        assertThat(titles).contains("Tide line", "Worst outage", "Median outage", "Price against share");
        NodeList figures = page.getElementsByTagName("figure");
        for (int i = 0; i < figures.getLength(); i++) {
            assertThat(((Element) figures.item(i)).getElementsByTagName("table").getLength())
                    .isEqualTo(1);
        }
    }

    @Test
    void noIdIsUsedTwiceAndEveryReferenceFindsItsOwn() {
        for (Answer answer : answers()) {
            String page = HtmlReport.of(answer, "9.9");
            List<String> ids = found(page, " id=\"([^\"]*)\"");
            assertThat(ids).doesNotHaveDuplicates();
            for (String labelled : found(page, "aria-labelledby=\"([^\"]*)\"")) {
                assertThat(ids).contains(labelled.split(" "));
            }
            assertThat(ids).containsAll(found(page, "url\\(#([^)]*)\\)"));
        }
    }

    @Test
    void noFigureIsBrokenAndNoneIsCalledForEver() {
        for (Answer answer : answers()) {
            String page = HtmlReport.of(answer, "9.9");
            assertThat(page)
                    .doesNotContain("NaN", "Infinity", "null", "for ever", "-0 ")
                    .doesNotContainPattern("[0-9]E-?[0-9]"); // ABYC E-11 is no exponent
        }
    }

    /** WCAG 2.1, success criterion 1.4.3: 4.5 to 1 for text, by its definition of relative luminance. */
    @Test
    void everyTextColourStandsOutFromThePaperInLightDarkAndPrint() {
        String page = HtmlReport.of(MET, "9.9");
        List<String> papers = found(page, "--paper: (#\\w+)");
        List<String> styles = found(page, ":root \\{([^}]*--paper[^}]*)\\}");
        assertThat(styles).hasSize(3).hasSameSizeAs(papers);
        for (int i = 0; i < styles.size(); i++) {
            for (String name : List.of("ink", "soft", "tide")) {
                String colour = found(styles.get(i), "--" + name + ": (#\\w+)").get(0);
                assertThat(contrast(colour, papers.get(i)))
                        .as(name + " " + colour + " on " + papers.get(i))
                        .isGreaterThan(4.5);
            }
        }
    }

    private static double contrast(String one, String other) {
        double a = luminance(one);
        double b = luminance(other);
        return (Math.max(a, b) + 0.05) / (Math.min(a, b) + 0.05);
    }

    private static double luminance(String colour) {
        String hex = colour.length() == 4 ? colour.substring(1).replaceAll("(.)", "$1$1") : colour.substring(1);
        double[] weights = {0.2126, 0.7152, 0.0722};
        double sum = 0;
        for (int i = 0; i < 3; i++) {
            double c = Integer.parseInt(hex.substring(2 * i, 2 * i + 2), 16) / 255.0;
            sum += weights[i] * (c <= 0.03928 ? c / 12.92 : Math.pow((c + 0.055) / 1.055, 2.4));
        }
        return sum;
    }

    @Test
    void bothSidesOfTheEnergyTableAddUpToTheSame() {
        Proof proof = Objects.requireNonNull(MET.rig()).proof();
        Table table = EnergyTable.of(proof.energy(), proof.share().outages());
        double in = 0;
        double out = 0;
        boolean comes = true;
        for (Table.Row row : table.rows()) {
            double wh = Double.parseDouble(row.cells().get(1).replace(",", "").replace("<1", "0.25"));
            if ("side".equals(row.style())) {
                comes = row.cells().get(0).startsWith("Comes");
            } else if (comes) {
                in += wh;
            } else {
                out += wh;
            }
        }
        assertThat(in).isPositive();
        assertThat(out)
                .isCloseTo(
                        in,
                        org.assertj.core.data.Offset.offset(0.5 * table.rows().size()));
    }

    private static List<Answer> answers() {
        assertThat(MET.meets()).isTrue();
        assertThat(NOT_MET.meets()).isFalse();
        assertThat(NOTHING.rig()).isNull();
        return List.of(MET, NOT_MET, NOTHING);
    }

    private static List<String> found(String text, String pattern) {
        List<String> all = new ArrayList<>();
        Matcher matcher = Pattern.compile(pattern).matcher(text);
        while (matcher.find()) {
            all.add(matcher.group(1));
        }
        return all;
    }

    static Document parsed(String page) {
        try {
            return DocumentBuilderFactory.newInstance()
                    .newDocumentBuilder()
                    .parse(new ByteArrayInputStream(page.getBytes(StandardCharsets.UTF_8)));
        } catch (Exception e) {
            throw new AssertionError("not well-formed: " + e.getMessage(), e);
        }
    }

    private static Question question(String title, double target) {
        List<Load> loads = List.of(
                new SteadyLoad(
                        "harbour lamp " + HOSTILE, Invented.SOCKET, 9, true, new Need.AlwaysOn(), RoomKind.INDOORS),
                new TimedLoad(
                        "kettle radio", Invented.MAINS, 14, true, List.of(new DayWindow(18, 23)), RoomKind.INDOORS),
                new SteadyLoad(
                        "fan",
                        Invented.SOCKET,
                        6,
                        false,
                        new Need.HoursInWindow(2, new DayWindow(8, 20)),
                        RoomKind.INDOORS));
        return new Question(
                title,
                "Invented. " + HOSTILE,
                Invented.PLACE,
                new WeatherSource.Imported(new Invented(3).weather(2)),
                -12,
                Invented.MOUNT,
                false,
                RoomKind.SHED,
                false,
                loads,
                new Outage(List.of(0, 11), 48, target, 0.9, 3, 1),
                OptionalLong.empty(),
                "USD",
                new Allowances(0, 3_500, 9_000),
                new Grammar(2, 2),
                new Invented(5).parts(),
                List.of(),
                Laying.ASSUMED,
                List.of(),
                List.of(new MarginNote("draw " + HOSTILE, "9 W", Basis.GUESS, "plan " + HOSTILE)),
                List.of("mind " + HOSTILE));
    }

    /** With a load more that has two zeros in its watts. */
    private static Question heavy(Question q) {
        List<Load> loads = new ArrayList<>(q.loads());
        loads.add(new SteadyLoad(
                "heater",
                Invented.MAINS,
                1500,
                false,
                new Need.HoursInWindow(1, new DayWindow(8, 20)),
                RoomKind.INDOORS));
        return new Question(
                q.title(),
                q.about(),
                q.place(),
                q.weather(),
                q.lowestDegC(),
                q.mount(),
                q.snow(),
                q.batteryRoom(),
                q.sleptIn(),
                loads,
                q.outage(),
                q.budgetCents(),
                q.currency(),
                q.allowances(),
                q.grammar(),
                q.parts(),
                q.smallParts(),
                q.laying(),
                List.of(),
                q.notes(),
                q.cautions());
    }

    private static Question cheap(Question q) {
        return new Question(
                q.title(),
                q.about(),
                q.place(),
                q.weather(),
                q.lowestDegC(),
                q.mount(),
                q.snow(),
                q.batteryRoom(),
                q.sleptIn(),
                q.loads(),
                new Outage(List.of(0, 11), 200, 1, 0.5, 3, 1),
                OptionalLong.of(100_000),
                q.currency(),
                q.allowances(),
                new Grammar(1, 1),
                q.parts(),
                q.smallParts(),
                q.laying(),
                List.of(),
                q.notes(),
                q.cautions());
    }
}
