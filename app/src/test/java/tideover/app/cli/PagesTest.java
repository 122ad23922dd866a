package tideover.app.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatCode;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** What the pages tell people to type is understood, and what they point at is there. */
class PagesTest {
    private static final Path HOME = Path.of("..");

    /** In backticks, or at the head of an indented block; two spaces part a command from a remark. */
    private static final Pattern COMMAND =
            Pattern.compile("(?m)(?:`|^ {4})(?:\\./)?tideover((?: [^`|\\s]+)*)(?:`|  |$)");

    private static final Pattern LINK = Pattern.compile("\\]\\(([^)#:]+)(?:#[^)]*)?\\)");
    private static final Pattern FILE =
            Pattern.compile("(?<![\\w/.-])(?:docs|examples|benchmarks|engine|app)/[\\w./-]*[\\w/]");
    private static final Pattern MODEL = Pattern.compile("`([A-Z]\\w+)(?:\\.\\w+)?`");

    /** What stands in a page for something that a person fills in. */
    private static final Map<String, String> FILLED_IN = Map.of(
            "PLAN", "plan.yaml",
            "SITE", "Buffalo",
            "TEXT", "astoria",
            "[TEXT]", "astoria",
            "FILE", "a-file",
            "FILE-or-number", "1",
            "LAT,LON", "46.2,-123.9",
            "N", "2",
            "S", "1");

    @Test
    void everyCommandIsUnderstood() throws IOException {
        Set<String> commands = new TreeSet<>();
        for (Path page : pages()) {
            matches(COMMAND, Files.readString(page))
                    .forEach(match -> commands.add(match.group(1).strip()));
        }
        for (String command : commands) {
            String[] args = Arrays.stream(command.split(" "))
                    .filter(word -> !word.isEmpty())
                    .map(word -> FILLED_IN.getOrDefault(word, word))
                    .toArray(String[]::new);
            if (args.length == 1 && Tideover.line().getSubcommands().containsKey(args[0])) {
                continue; // spoken of, not typed
            }
            assertThatCode(() -> Tideover.line().parseArgs(args)).as(command).doesNotThrowAnyException();
        }
        assertThat(commands).contains("", "sites astoria", "prove examples/plan.yaml --rig 155980");
        assertThat(commands).hasSizeGreaterThan(8);
    }

    @Test
    void everyCommandIsTold() throws IOException {
        String readme = Files.readString(HOME.resolve("README.md"));
        for (String command : Tideover.line().getSubcommands().keySet()) {
            assertThat(readme).contains("| `tideover " + command);
        }
    }

    @Test
    void everythingPointedAtIsThere() throws IOException {
        List<String> missing = new ArrayList<>();
        int looked = 0;
        for (Path page : pages()) {
            String text = Files.readString(page);
            for (MatchResult link : matches(LINK, text)) {
                looked++;
                if (!Files.exists(page.resolveSibling(link.group(1)))) {
                    missing.add(page + " -> " + link.group(1));
                }
            }
            for (MatchResult file : matches(FILE, text)) {
                looked++;
                // A link is read from its page's folder, a name in the text from the top.
                if (!Files.exists(HOME.resolve(file.group())) && !Files.exists(page.resolveSibling(file.group()))) {
                    missing.add(page + " -> " + file.group());
                }
            }
        }
        assertThat(missing).isEmpty();
        assertThat(looked).isGreaterThan(15);
    }

    /** Headings of the models page name the classes that hold the model. */
    @Test
    void everyModelNamedInAHeadingIsInTheEngine() throws IOException {
        Set<String> classes;
        try (Stream<Path> files = Files.walk(HOME.resolve("engine").resolve("src"))) {
            classes = files.map(file -> file.getFileName().toString().replace(".java", ""))
                    .collect(Collectors.toSet());
        }
        List<String> named = Files.readAllLines(HOME.resolve("docs").resolve("models.md")).stream()
                .filter(line -> line.startsWith("#"))
                .flatMap(line -> matches(MODEL, line).stream())
                .map(match -> match.group(1))
                .toList();
        assertThat(classes).containsAll(named);
        assertThat(named).hasSizeGreaterThan(20);
    }

    private static List<Path> pages() throws IOException {
        try (Stream<Path> top = Files.list(HOME);
                Stream<Path> docs = Files.walk(HOME.resolve("docs"))) {
            return Stream.concat(top, docs)
                    .filter(file -> file.toString().endsWith(".md"))
                    .sorted()
                    .toList();
        }
    }

    private static List<MatchResult> matches(Pattern pattern, String text) {
        return pattern.matcher(text).results().toList();
    }
}
