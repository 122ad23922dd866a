package tideover.app.files;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.stream.LongStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;
import tideover.engine.why.InputProblems;

class PlanTextTest {
    private static final String PLAN = """
            # A remark at the top.
            plan: House   # its name
            outage:
              months: [nov, dec]   # the dark ones
              lasts: 72 h

            loads:
              # the first
              - name: Router
                draws: 7 W        # label
                need: always on
              - name: Lamp
                draws: 8 W
                need: {hours: 2 h, between: 08:00, and: 20:00}

            parts:
              - a.csv
              - b.csv
            """;

    static Stream<Path> examples() throws IOException {
        List<Path> plans = new ArrayList<>();
        try (Stream<Path> found = Files.walk(Path.of("..", "examples"))) {
            found.filter(file -> file.toString().endsWith(".yaml"))
                    .filter(file -> !file.getFileName().toString().equals("orchard-shelf.yaml"))
                    .sorted()
                    .forEach(plans::add);
        }
        return plans.stream();
    }

    static LongStream seeds() {
        return LongStream.range(0, 60);
    }

    @Test
    void tellsWhatStandsAtAPlace() {
        PlanText text = PlanText.of(PLAN);
        assertThat(text.get("plan")).contains("House");
        assertThat(text.get("outage.months")).contains("nov, dec");
        assertThat(text.get("loads[2].need")).contains("{hours: 2 h, between: 08:00, and: 20:00}");
        assertThat(text.get("loads[2].need.between")).contains("08:00");
        assertThat(text.get("loads[3].draws")).isEmpty();
        assertThat(text.get("no such key")).isEmpty();
        assertThat(text.count("loads")).isEqualTo(2);
        assertThat(text.count("parts")).isEqualTo(2);
        assertThat(text.count("panels")).isZero();
        assertThat(text.line("loads[1].draws")).isEqualTo(10);
    }

    @Test
    void changesAValueAndNothingElse() {
        assertThat(PlanText.of(PLAN).with("loads[1].draws", "9 W").text()).isEqualTo(PLAN.replace("7 W ", "9 W "));
        assertThat(PlanText.of(PLAN).with("outage.months", "jan, feb").text())
                .isEqualTo(PLAN.replace("[nov, dec]", "[jan, feb]"));
        assertThat(PlanText.of(PLAN).with("loads[2].need.hours", "3 h").text())
                .isEqualTo(PLAN.replace("hours: 2 h", "hours: 3 h"));
        assertThat(PlanText.of(PLAN).with("plan", "A: b # c").text()).isEqualTo(PLAN.replace("House", "\"A: b # c\""));
        assertThat(PlanText.of(PLAN).with("outage.carried", "95 %").text())
                .isEqualTo(PLAN.replace("lasts: 72 h\n", "lasts: 72 h\n  carried: 95 %\n"));
        assertThat(PlanText.of(PLAN).with("money.at most", "900 USD").text())
                .isEqualTo(PLAN + "money:\n  at most: 900 USD\n");
        assertThat(PlanText.of(PLAN).with("parts", "[a.csv, c.csv]").get("parts"))
                .contains("a.csv, c.csv");
    }

    @Test
    void takesAwayAndAdds() {
        assertThat(PlanText.of(PLAN).without("outage.lasts").text()).isEqualTo(PLAN.replace("  lasts: 72 h\n", ""));
        PlanText one = PlanText.of(PLAN).without("loads[1]");
        assertThat(one.count("loads")).isEqualTo(1);
        assertThat(one.get("loads[1].name")).contains("Lamp");
        assertThat(one.text()).contains("# the first");
        assertThatThrownBy(() -> one.without("loads[1]")).isInstanceOf(InputProblems.class);
        PlanText three = PlanText.of(PLAN).adding("loads", "name: Fan\ndraws: 30 W\n");
        assertThat(three.get("loads[3].draws")).contains("30 W");
        assertThat(three.text()).startsWith(PLAN.substring(0, PLAN.indexOf("\nparts:")));
        assertThat(PlanText.of("plan: x\n").adding("loads", "name: Fan\n").get("loads[1].name"))
                .contains("Fan");
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "a: b",
                "x # y",
                "\"quoted\"",
                "it's",
                "*alias",
                "&anchor",
                "!tag",
                "@at",
                "`tick`",
                "- item",
                "? key",
                "%percent",
                "{",
                "[",
                "}",
                "{a: b",
                "[x, y",
                "<script>alert(1)</script>",
                "yes",
                "~",
                "null",
                "0x10",
                "ends with:",
                ": begins",
                "#",
                "'",
                "\"",
                "\\",
                "\u202Ertl",
                "é\uD83D\uDE00",
                ",",
                "a, b",
                "|",
                ">",
                "---",
                "...",
                "key: [a, b]"
            })
    void hostileValuesComeBackAsTyped(String value) {
        for (String path :
                List.of("plan", "about", "loads[1].name", "loads[2].need.hours", "outage.lasts", "place.name")) {
            PlanText text = PlanText.of(PLAN).with(path, value);
            String back = text.get(path).orElseThrow();
            assertThat(back.replaceAll("[\\[\\]{} ]", "")).isEqualTo(value.replaceAll("[\\[\\]{} ]", ""));
            assertThat(text.with(path, value).text()).isEqualTo(text.text());
            assertThat(text.count("loads")).isEqualTo(2);
            assertThat(text.get("loads[1].draws")).contains("7 W");
        }
    }

    @Test
    void breaksAndUnseenLettersAreNoWayOut() {
        PlanText text = PlanText.of(PLAN).with("plan", "a\nloads: []\r\nx\u0000\tb\u0007");
        assertThat(text.get("plan")).contains("a loads: [] x b");
        assertThat(text.count("loads")).isEqualTo(2);
        assertThatThrownBy(() -> PlanText.of(PLAN).with("about", "x".repeat(5000)))
                .isInstanceOf(InputProblems.class);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "",
                ".",
                "a..b",
                "a.",
                "[1]",
                "loads[0].x.",
                "loads[x]",
                "a[1",
                "a]b",
                "loads[99999].x",
                "outage[0]",
                "loads[0].draws"
            })
    void placesThatAreNoneAreRefused(String path) {
        assertThatThrownBy(() -> PlanText.of(PLAN).with(path, "x")).isInstanceOf(InputProblems.class);
    }

    @Test
    void whatIsNoPlanIsRefused() {
        for (String text : List.of("", "- a\n- b\n", "just text", "a: [b\n", "a: *b\n", "a: &b c\n")) {
            assertThatThrownBy(() -> PlanText.of(text)).as(text).isInstanceOf(InputProblems.class);
        }
    }

    /** Whatever is changed, taken away or added: the change itself is checked by the class against a plain tree; here the remarks. */
    @ParameterizedTest
    @MethodSource("examples")
    void remarksAndAllOtherLinesStay(Path plan) throws IOException {
        String whole = Files.readString(plan);
        PlanText text = PlanText.of(whole);
        List<String> paths = new ArrayList<>();
        for (int number = 1; number <= text.count("loads"); number++) {
            for (String key : List.of("name", "draws", "supply", "essential", "need", "room", "power factor")) {
                paths.add("loads[" + number + "]." + key);
            }
        }
        paths.addAll(List.of(
                "plan",
                "about",
                "place.station",
                "outage.months",
                "outage.lasts",
                "panels.tilt",
                "money.at most",
                "store room"));
        long remarks =
                whole.lines().filter(line -> line.strip().startsWith("#")).count();
        for (String path : paths) {
            PlanText changed = text.with(path, "something else");
            assertThat(changed.text()
                            .lines()
                            .filter(line -> line.strip().startsWith("#"))
                            .count())
                    .as(path)
                    .isEqualTo(remarks);
            assertThat(changed.get(path)).contains("something else");
            List<String> left = new ArrayList<>(changed.text().lines().toList());
            left.removeAll(whole.lines().toList());
            assertThat(left).as(path).hasSizeLessThanOrEqualTo(2);
            PlanText without = text.without(path);
            assertThat(without.get(path).orElse("")).as(path).isEmpty();
        }
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void manyChangesInARowStayReadable(long seed) throws IOException {
        Random random = new Random(seed);
        PlanText text = PlanText.of(Files.readString(Path.of("..", "examples", "plan.yaml")));
        String[] values = {
            "7 W", "a: b", "{hours: 1 h, between: 08:00, and: 12:00}", "x # y", "nov, dec", "", "'", "[a, b]", "é"
        };
        String[] keys = {"name", "draws", "need", "hours", "supply", "start", "room"};
        for (int turn = 0; turn < 40; turn++) {
            int loads = text.count("loads");
            String path = "loads[" + (1 + random.nextInt(loads)) + "]." + keys[random.nextInt(keys.length)];
            String value = values[random.nextInt(values.length)];
            switch (random.nextInt(5)) {
                case 0 -> text = text.without(path);
                case 1 -> text = text.adding("loads", "name: More " + turn + "\nneed: {a: b}\n");
                case 2 -> text = loads > 1 ? text.without("loads[" + (1 + random.nextInt(loads)) + "]") : text;
                default -> text = text.with(path, value);
            }
            assertThat(PlanText.of(text.text()).text()).isEqualTo(text.text());
        }
    }
}
