package tideover.app.cli;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import tideover.app.files.ExampleParts;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** One run of the command line: what it returned and what it said. */
record Ran(int status, String out, String err) {
    /** Two years each: quick, and enough for everything but the figures. */
    private static final List<String> QUICK = List.of("--years", "2", "--confirm-years", "2");

    /** Parts of the example that are enough to meet its plan in several ways. */
    private static final Set<String> FEW_PARTS = Set.of(
            "pw-1000", "pw-2000-used", "cs-dc", "cs-600", "hb-100", "on-100", "on-220-used", "tw-20t", "tw-i150");

    static Ran of(Object... args) {
        StringWriter out = new StringWriter();
        StringWriter err = new StringWriter();
        int status = Tideover.run(
                new PrintWriter(out),
                new PrintWriter(err),
                Stream.of(args).map(String::valueOf).toArray(String[]::new));
        return new Ran(status, out.toString(), err.toString());
    }

    static Ran quick(Object... args) {
        return of(Stream.concat(Stream.of(args), QUICK.stream()).toArray());
    }

    JsonNode json() {
        return JsonMapper.shared().readTree(out);
    }

    static Path examples() {
        return Path.of("..", "examples");
    }

    /** Puts the example plan with a few of its parts into a folder; returns the plan. */
    static Path household(Path folder) throws IOException {
        Files.writeString(folder.resolve("parts.csv"), ExampleParts.joined(examples(), FEW_PARTS::contains));
        Files.copy(examples().resolve("small-parts.csv"), folder.resolve("small-parts.csv"));
        Files.copy(examples().resolve("rig.yaml"), folder.resolve("rig.yaml"));
        String plan = Files.readString(examples().resolve("plan.yaml"));
        return Files.writeString(folder.resolve("plan.yaml"), ExampleParts.planOfOneFile(plan));
    }

    /** The same with one thing in the plan put otherwise. */
    static Path household(Path folder, String from, String to) throws IOException {
        Path plan = household(folder);
        String text = Files.readString(plan);
        if (!text.contains(from)) {
            throw new IllegalArgumentException("the example plan does not hold: " + from);
        }
        return Files.writeString(plan, text.replace(from, to));
    }
}
