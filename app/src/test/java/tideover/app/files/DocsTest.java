package tideover.app.files;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import tideover.engine.part.Cable;
import tideover.engine.part.Fitting;
import tideover.engine.part.Part;
import tideover.engine.part.Tool;

/** What the docs show reads, and what can be written the docs tell. */
class DocsTest {
    private static final Pattern BLOCK = Pattern.compile("```(\\w+)\\n(.*?)```", Pattern.DOTALL);
    private static final Pattern TOP_KEY = Pattern.compile("(?m)^([a-z][a-z ]*):");

    @Test
    void everySnippetOfThePlanPageReads() throws IOException {
        List<Part> parts = Sample.read(Sample.PLAN).parts();
        List<String> snippets = blocks("plan-file.md", "yaml");
        for (String snippet : snippets) {
            List<String> problems = snippet.startsWith("rig:")
                    ? Sample.problemsOf(() -> RigFile.read("rig.yaml", snippet, parts))
                    : Sample.problemsIn(snippet.startsWith("plan:") ? snippet : inSample(snippet));
            if (snippet.contains("hourly file:")) {
                assertThat(problems).singleElement().asString().contains("no file \"my-weather.csv\"");
            } else {
                assertThat(problems).as(snippet).isEmpty();
            }
        }
        assertThat(snippets).hasSizeGreaterThan(10);
    }

    @Test
    void everySnippetOfThePartsPageReads() throws IOException {
        List<String> snippets = blocks("parts-file.md", "csv");
        for (String snippet : snippets) {
            if (isOfSmallParts(snippet)) {
                assertThat(SmallSample.problemsIn(snippet)).as(snippet).isEmpty();
                assertThat(SmallSample.read(snippet).cautions()).as(snippet).isEmpty();
                continue;
            }
            assertThat(Sample.problemsInParts(snippet)).as(snippet).isEmpty();
            assertThat(Sample.read(Sample.PLAN, snippet).cautions())
                    .as(snippet)
                    .noneMatch(caution -> caution.startsWith("parts.csv"));
        }
        assertThat(snippets).hasSize(11).filteredOn(DocsTest::isOfSmallParts).hasSize(1);
    }

    @Test
    void theListOfPartsReads() throws IOException {
        String snippet = blocks("parts-file.md", "yaml").get(0);
        String plan = Sample.PLAN.replace("parts: parts.csv", "parts: [parts.csv, own.yaml]");
        Map<String, String> files = Map.of("parts.csv", Sample.PARTS, "own.yaml", snippet);
        assertThat(PlanFile.read("plan.yaml", plan, Beside.texts(files), ExampleTest.STATIONS)
                        .parts())
                .hasSize(5);
    }

    private static boolean isOfSmallParts(String snippet) {
        return snippet.lines().findFirst().orElseThrow().contains(",size,");
    }

    /** The two hours shown are read, and are too few for a year. */
    @Test
    void theWeatherSnippetIsOfTheFormThatIsRead() throws IOException {
        String snippet = blocks("plan-file.md", "csv").get(0);
        Map<String, String> files = Map.of("parts.csv", Sample.PARTS, "my-weather.csv", snippet);
        String plan = Sample.PLAN.replace("station: Astoria Regional Airport OR", "hourly file: my-weather.csv");

        assertThat(Sample.problemsOf(() -> PlanFile.read("plan.yaml", plan, Beside.texts(files), ExampleTest.STATIONS)))
                .containsExactly(
                        "my-weather.csv: found year 2019 of 2 hours, from 1 jan 2019 00:00 to 1 jan 2019 01:00,"
                                + " expected whole calendar years of 8760 hours. The file may be cut short.");
    }

    @Test
    void everyColumnIsTold() throws IOException {
        String page = page("parts-file.md");
        for (String column : PartsFile.COLUMNS) {
            assertThat(page).as(column).contains("`" + column + "`");
        }
        for (String column : SmallPartsFile.COLUMNS) {
            assertThat(page).as(column).contains("`" + column + "`");
        }
        Stream.of(
                        SmallPartsFile.KINDS.stream(),
                        Stream.of(Cable.Metal.values()).map(Cable.Metal::words),
                        Stream.of(Fitting.Use.values()).map(Fitting.Use::words),
                        Stream.of(Tool.Job.values()).map(Tool.Job::words))
                .forEach(
                        words -> words.forEach(word -> assertThat(page).as(word).contains("`" + word + "`")));
        PartsFile.KINDS.forEach(kind -> assertThat(page).contains("| `" + kind + "` |"));
    }

    /** A key that nobody knows makes the reader list those it knows; each must stand in a table of the page. */
    @Test
    void everyKeyIsTold() throws IOException {
        String page = page("plan-file.md");
        String near = "near: {latitude: 46 deg, longitude: -123.9 deg}";
        String figures = "figures: {latitude: 46 deg, longitude: -123.9 deg}";
        String station = "station: Astoria Regional Airport OR";
        List<String> plans = List.of(
                Sample.PLAN + "zzzzzz: 1\n",
                Sample.PLAN.replace("place:\n", "place:\n  zzzzzz: 1\n"),
                Sample.PLAN.replace(station, near.replace("}", ", zzzzzz: 1}")),
                Sample.PLAN.replace(station, figures.replace("}", ", zzzzzz: 1}")),
                Sample.PLAN.replace("outage:\n", "outage:\n  zzzzzz: 1\n"),
                Sample.PLAN.replace("outage:\n", "outage:\n  rolling: {zzzzzz: 1}\n"),
                Sample.PLAN + "help: [{zzzzzz: 1}]\n",
                Sample.PLAN + "help: [{engine: {zzzzzz: 1}}]\n",
                Sample.PLAN + "help: [{battery: {zzzzzz: 1}}]\n",
                Sample.PLAN.replace("panels:\n", "panels:\n  zzzzzz: 1\n"),
                Sample.PLAN.replace("panels:\n", "panels:\n  shade: [{zzzzzz: 1}]\n"),
                Sample.PLAN.replace("  - name: Scanner\n", "  - name: Scanner\n    start: {zzzzzz: 1}\n"),
                Sample.PLAN.replace("  - name: Scanner\n", "  - name: Scanner\n    zzzzzz: 1\n"),
                Sample.PLAN.replace("always on", "{zzzzzz: 1}"),
                Sample.PLAN.replace("outage:\n", "outage:\n  storm: {zzzzzz: 1}\n"),
                Sample.PLAN.replace("always on", "always on\n    medical: {zzzzzz: 1}"),
                kept("zzzzzz: 1", Kept.FREEZER),
                kept(Kept.CONTENTS, "contents: {zzzzzz: 1}", Kept.FREEZER),
                kept("meter: {zzzzzz: 1}", Kept.FREEZER),
                kept("defrost: {zzzzzz: 1}", Kept.FREEZER),
                kept("need: {zzzzzz: 1}", Kept.FREEZER),
                kept("duty: {zzzzzz: 1}", Kept.FREEZER),
                kept("before a storm: {zzzzzz: 1}", Kept.FREEZER),
                kept("zzzzzz: 1", Kept.PUMP),
                kept(Kept.PIT, "pit: {zzzzzz: 1}", Kept.PUMP),
                kept(Kept.INFLOW, "inflow: {zzzzzz: 1}", Kept.PUMP),
                kept("zzzzzz: 1", Kept.BOILER),
                kept(Kept.HOME, "home: {zzzzzz: 1}", Kept.BOILER),
                kept(Kept.ABOVE, "need: {zzzzzz: 1}", Kept.BOILER),
                Sample.PLAN.replace("money:\n", "money:\n  zzzzzz: 1\n"),
                Sample.PLAN.replace("money:\n", "money:\n  shipping: [{zzzzzz: 1}]\n"),
                Sample.PLAN.replace("small parts: {", "small parts: {zzzzzz: 1, "),
                Sample.PLAN.replace("look at:\n", "look at:\n  zzzzzz: 1\n"),
                Sample.PLAN + "wiring: {zzzzzz: 1}\n");
        for (String plan : plans) {
            String told = Sample.problemsIn(plan).stream()
                    .filter(problem -> problem.contains("found the key \"zzzzzz\""))
                    .findFirst()
                    .orElseThrow();
            String keys =
                    told.substring(told.indexOf("one of the keys ") + "one of the keys ".length(), told.length() - 1);
            for (String key : keys.split(", ")) {
                assertThat(page).as(key).contains("`" + key + "`");
            }
        }
    }

    private static String kept(String key, String load) {
        return Kept.plan(load + "    " + key + "\n");
    }

    private static String kept(String from, String to, String load) {
        return Kept.plan(load.replace(from, to));
    }

    /** The sample plan with the snippet's sections in the place of its own. */
    private static String inSample(String snippet) {
        Map<String, String> sections = sections(Sample.PLAN);
        sections.putAll(sections(snippet));
        return String.join("", sections.values());
    }

    private static Map<String, String> sections(String plan) {
        Map<String, String> sections = new LinkedHashMap<>();
        Matcher key = TOP_KEY.matcher(plan);
        List<Integer> starts = new ArrayList<>();
        while (key.find()) {
            starts.add(key.start());
        }
        for (int i = 0; i < starts.size(); i++) {
            int end = i + 1 < starts.size() ? starts.get(i + 1) : plan.length();
            String section = plan.substring(starts.get(i), end);
            sections.put(section.substring(0, section.indexOf(':')), section);
        }
        return sections;
    }

    private static List<String> blocks(String page, String language) throws IOException {
        List<String> blocks = new ArrayList<>();
        Matcher block = BLOCK.matcher(page(page));
        while (block.find()) {
            if (block.group(1).equals(language)) {
                blocks.add(block.group(2));
            }
        }
        return blocks;
    }

    private static String page(String name) throws IOException {
        Path docs = ExampleTest.folder().resolveSibling("docs");
        return Files.readString(docs.resolve(name));
    }
}
