package tideover.app.files;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.snakeyaml.engine.v2.api.Load;
import org.snakeyaml.engine.v2.api.LoadSettings;
import org.snakeyaml.engine.v2.schema.FailsafeSchema;
import tideover.engine.why.InputProblems;

/** Changes of a text against the same changes of maps and lists that another reader of the library made of it. */
class PlanTextTreeTest {
    /** Ways to lay a plan out that the examples do not use. */
    private static final List<String> LAYOUTS = List.of(
            Sample.PLAN.replace("\n", "\r\n"),
            Sample.PLAN.replace("\n", "\r"),
            Sample.PLAN.stripTrailing(),
            """
            ---
            # A remark.
            plan: "Quoted: x"  # its name
            outage:
                months:
                - nov   # dark
                - dec
                carried: 95 %

            loads:
            - name: A
              # inside
              draws: 7 W

              need: {hours: 2 h,   # in the middle
              between: 08:00,
            and: 20:00}

            # before B
            - name: B
              about: |
                line one
                # no remark

                line two
              hours:
                - 06:30-08:00
                - 17:00-23:00
            # at the end
            """,
            """
            plan: a plain
              text over
              lines   # remark
            about: 'it''s

              x'
            "odd key": 1
            face: \uD83D\uDE00 x # remark
            after: y
            links: ["0.3 m, 10 mm2", b]
            loads:
              - {name: A, note: "a\\nb", draws: 1 W}
              -   name: B
                  draws: 2 W
            """,
            "{plan: a, outage: {lasts: 2 h, months: [nov, dec]}, loads: [{name: A, draws: 3 W}]}\n");

    private static final Set<String> LISTS = Set.of(
            "months", "hours", "engine hours", "links", "peak sun hours", "mean temperature", "parts", "small parts");

    /** Texts that must come back as they were typed. */
    private static final List<String> TEXTS = List.of(
            "7 W",
            "nov, dec",
            "a: b",
            "x # y",
            "\"q\"",
            "it's",
            "*a",
            "&a",
            "!t",
            "@a",
            "`t`",
            "- i",
            "? k",
            "%p",
            "}",
            "]",
            "<script>alert(1)</script>",
            "yes",
            "~",
            "null",
            "0x10",
            "e:",
            ": b",
            "#",
            "'",
            "\"",
            "\\",
            "a\\nb",
            "\u202Ex",
            "a\u2028b",
            "é\uD83D\uDE00",
            "|",
            ">",
            "---",
            "...",
            "k: [a, b]",
            "=",
            "<<",
            "-",
            "! x",
            "'a' b",
            "\"a\" b",
            "}, x: {y",
            "], z: [",
            "a, x: y",
            "x".repeat(3900),
            "y".repeat(1100) + ": z");

    private static final Map<String, Object> BLOCKS = Map.of(
            "[a, b]",
            List.of("a", "b"),
            "{a: b}",
            Map.of("a", "b"),
            "{a: {b: [c]}}",
            Map.of("a", Map.of("b", List.of("c"))),
            "[\"x, y\", z]",
            List.of("x, y", "z"),
            "{\"a\": \"b\\nc: d\"}",
            Map.of("a", "b\nc: d"),
            "{a: b, a: c}",
            "{a: b, a: c}",
            "{a: *b}",
            "{a: *b}",
            "{a: b",
            "{a: b",
            "[x, y",
            "[x, y",
            "{a: b} c",
            "{a: b} c");

    static Stream<String> plans() throws IOException {
        List<String> plans = new ArrayList<>(LAYOUTS);
        try (Stream<Path> found = Files.walk(Path.of("..", "examples"))) {
            for (Path file : found.filter(one -> one.toString().endsWith(".yaml"))
                    .sorted()
                    .toList()) {
                String text = Files.readString(file);
                if (text.contains("\nloads:\n")) {
                    plans.add(text);
                }
            }
        }
        return plans.stream();
    }

    private static Object load(String text) {
        return new Load(LoadSettings.builder().setSchema(new FailsafeSchema()).build()).loadFromString(text);
    }

    private static void paths(Object tree, String at, List<String> out) {
        if (tree instanceof Map<?, ?> map) {
            map.forEach((key, value) -> {
                String path = at.isEmpty() ? "" + key : at + "." + key;
                out.add(path);
                paths(value, path, out);
            });
        } else if (tree instanceof List<?> list) {
            for (int item = 1; item <= list.size(); item++) {
                out.add(at + "[" + item + "]");
                paths(list.get(item - 1), at + "[" + item + "]", out);
            }
        }
    }

    private static List<String> steps(String path) {
        return new ArrayList<>(Arrays.asList(path.replace("[", ".[").split("\\.")));
    }

    private static @Nullable Object at(Object tree, List<String> steps) {
        Object now = tree;
        for (String step : steps) {
            now = step.startsWith("[")
                    ? ((List<?>) Objects.requireNonNull(now))
                            .get(Integer.parseInt(step.substring(1, step.length() - 1)) - 1)
                    : ((Map<?, ?>) Objects.requireNonNull(now)).get(step);
        }
        return now;
    }

    /** A tree with another value at a place, or without it. */
    private static Object edited(String text, List<String> steps, @Nullable Object value) {
        Object tree = load(text);
        Object parent = Objects.requireNonNull(at(tree, steps.subList(0, steps.size() - 1)));
        String last = steps.get(steps.size() - 1);
        if (last.startsWith("[")) {
            @SuppressWarnings("unchecked")
            List<Object> list = (List<Object>) parent;
            int item = Integer.parseInt(last.substring(1, last.length() - 1)) - 1;
            if (value == null) {
                list.remove(item);
            } else {
                list.set(item, value);
            }
        } else {
            @SuppressWarnings("unchecked")
            Map<String, Object> map = (Map<String, Object>) parent;
            if (value == null) {
                map.remove(last);
            } else {
                map.put(last, value);
            }
        }
        return tree;
    }

    private static boolean isWholeItem(@Nullable Object held) {
        return held instanceof Map
                || (held instanceof List<?> list && list.stream().anyMatch(Map.class::isInstance));
    }

    @ParameterizedTest
    @MethodSource("plans")
    void aChangedValueIsAllThatChanges(String plan) {
        PlanText text = PlanText.of(plan);
        Object tree = load(text.text());
        List<String> paths = new ArrayList<>();
        paths(tree, "", paths);
        paths.removeIf(path -> isWholeItem(at(tree, steps(path))));
        paths.addAll(List.of("brand new", "loads[1].brand new"));
        if (text.get("outage").isPresent()) {
            paths.add("outage.brand new");
        }
        Map<String, Object> values = new LinkedHashMap<>();
        TEXTS.forEach(typed -> values.put(typed, typed));
        values.putAll(BLOCKS);
        List<String> typed = new ArrayList<>(values.keySet());
        Random random = new Random(plan.length());
        for (int turn = 0; turn < 120; turn++) {
            String path = paths.get(random.nextInt(paths.size()));
            String value = typed.get(random.nextInt(typed.size()));
            List<String> steps = steps(path);
            Object held = at(tree, steps);
            String key = steps.get(steps.size() - 1);
            if (key.startsWith("[") && BLOCKS.containsKey(value)) {
                continue; // an item is one text
            }
            Object expected = values.get(value);
            if (expected instanceof String one
                    && one.contains(",")
                    && !BLOCKS.containsKey(value)
                    && (LISTS.contains(key) || held instanceof List)) {
                expected = Arrays.stream(one.split(",")).map(String::strip).toList();
            }
            PlanText changed = text.with(path, value);
            String told = path + " <" + value + ">";
            assertThat(load(changed.text())).as(told).isEqualTo(edited(text.text(), steps, expected));
            assertThat(changed.with(path, value).text()).as(told).isEqualTo(changed.text());
            if (expected instanceof String one) {
                assertThat(changed.get(path)).as(told).contains(one);
            }
            if (held instanceof String one && !one.contains("\n")) {
                assertThat(linesChanged(text.text(), changed.text())).as(told).isLessThanOrEqualTo(3);
            }
        }
    }

    /** Lines of the longer text between what both begin and what both end with. */
    private static int linesChanged(String before, String after) {
        List<String> one = before.lines().toList();
        List<String> other = after.lines().toList();
        int least = Math.min(one.size(), other.size());
        int head = 0;
        while (head < least && one.get(head).equals(other.get(head))) {
            head++;
        }
        int tail = 0;
        while (tail < least - head && one.get(one.size() - 1 - tail).equals(other.get(other.size() - 1 - tail))) {
            tail++;
        }
        return Math.max(one.size(), other.size()) - head - tail;
    }

    @ParameterizedTest
    @MethodSource("plans")
    void whatIsShownCanBeTypedAgain(String plan) {
        PlanText text = PlanText.of(plan);
        List<String> paths = new ArrayList<>();
        Object tree = load(text.text());
        paths(tree, "", paths);
        for (String path : paths) {
            if (isWholeItem(at(tree, steps(path)))) {
                continue;
            }
            Optional<String> shown = text.get(path);
            assertThat(shown).as(path).isPresent();
            assertThat(shown.get()).as(path).doesNotContain("\n");
            assertThat(text.with(path, shown.get()).get(path)).as(path).isEqualTo(shown);
        }
    }

    @ParameterizedTest
    @MethodSource("plans")
    void whatIsTakenAwayIsAllThatGoes(String plan) {
        PlanText text = PlanText.of(plan);
        List<String> paths = new ArrayList<>();
        Object tree = load(text.text());
        paths(tree, "", paths);
        int taken = 0;
        for (String path : paths) {
            List<String> steps = steps(path);
            PlanText without;
            try {
                without = text.without(path);
            } catch (InputProblems refused) {
                // The last item of a list, the last key of a plan.
                Object parent = Objects.requireNonNull(at(tree, steps.subList(0, steps.size() - 1)));
                int beside = parent instanceof List<?> list ? list.size() : ((Map<?, ?>) parent).size();
                assertThat(beside).as(path).isEqualTo(1);
                continue;
            }
            taken++;
            List<Object> right = new ArrayList<>();
            right.add(edited(text.text(), steps, null));
            if (!steps.get(steps.size() - 1).startsWith("[")) {
                right.add(edited(text.text(), steps, "")); // the first key of an item stands on the item's own line
            }
            while (steps.size() > 1
                    && at(tree, steps.subList(0, steps.size() - 1)) instanceof Map<?, ?> map
                    && map.size() == 1) {
                steps.remove(steps.size() - 1); // a block goes with its last key
                right.add(edited(text.text(), steps, null));
            }
            assertThat(right).as(path).contains(load(without.text()));
        }
        assertThat(taken).isGreaterThan(3);
    }

    @ParameterizedTest
    @MethodSource("plans")
    void anAddedItemIsAllThatComes(String plan) {
        PlanText text = PlanText.of(plan);
        if (plan.startsWith("{")) {
            return; // a list between brackets takes no block
        }
        PlanText added = text.adding("loads", "name: More\nneed: {a: b}\n");
        Object expected = load(text.text());
        @SuppressWarnings("unchecked")
        List<Object> loads = (List<Object>) Objects.requireNonNull(((Map<?, ?>) expected).get("loads"));
        loads.add(Map.of("name", "More", "need", Map.of("a", "b")));
        assertThat(load(added.text())).isEqualTo(expected);
    }
}
