package tideover.app.files;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.function.Supplier;
import java.util.stream.Stream;
import java.util.zip.GZIPOutputStream;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import tideover.engine.part.Part;

/**
 * Files made to break or to stall their reader, each given to every reader. The large ones are made here, not kept; as large as
 * a file may be in the long hunts only.
 */
class HostileFilesTest {
    private static final int MOST = Boolean.getBoolean("tideover.deep") ? 1_000_000 : 100_000;

    private static Map<String, byte[]> files() throws IOException {
        Map<String, String> texts = new LinkedHashMap<>();
        texts.put("aliases that grow", bomb());
        texts.put("a merge key", "base: &b {a: 1}\nplan:\n  <<: *b\n");
        texts.put("a tag", "plan: !!javax.script.ScriptEngineManager [x]\n");
        texts.put("brackets without end", "[".repeat(MOST));
        texts.put("braces without end", "{a: ".repeat(MOST / 4));
        texts.put("dashes without end", "- ".repeat(MOST / 2));
        texts.put("questions without end", "? ".repeat(MOST / 2));
        texts.put("blocks ever further in", stairs());
        texts.put("keys without end", "kind:\n".repeat(MOST / 6));
        texts.put("unknown keys without end", "- " + "  a:\n".repeat(MOST / 6).substring(2));
        texts.put("items without end", "- a\n".repeat(MOST / 4));
        texts.put("items of one key without end", "- a:\n".repeat(MOST / 5));
        texts.put("a key without end", "\"" + "a".repeat(MOST - 10) + "\": x\n");
        texts.put("remarks without end", "#a:b\n".repeat(MOST / 5));
        texts.put("columns without end", "kind,id," + "a,".repeat(MOST / 2 - 10));
        texts.put("a hundred thousand columns", "kind,id" + ",naem".repeat(100_000) + "\n");
        texts.put("rows without end", "kind,id,name\n" + "a,b,c\n".repeat(MOST / 6 - 10));
        texts.put("short rows without end", "kind,id,name\n" + "a\n".repeat(MOST / 2 - 10));
        texts.put("commas", ",".repeat(MOST));
        texts.put("line ends", "\n".repeat(MOST));
        texts.put("a quote that stays open", "kind,id\n\"" + "a,\n".repeat(MOST / 3 - 10));
        texts.put("quotes", "\"".repeat(MOST - 1));
        texts.put("a line without end", "a".repeat(MOST));
        texts.put("digits", "1".repeat(MOST));
        texts.put("marks of byte order", "\uFEFF".repeat(MOST * 3 / 10));
        texts.put("the words of the tables", "NaN,Infinity,1e999,-0,0x1p3,\u0661\u0662,=cmd()\n");
        texts.put("right to left", "plan: \u202Eesuoh\u202C\n\u202Eload\u202C: 1\n");
        texts.put("control characters", "plan: \"a\\a\\x1b[31m\"\nloads: \"1,000 \\x1b[2J\"\noutage: \"1 \\a - 2\"\n");
        Map<String, byte[]> files = new LinkedHashMap<>();
        texts.forEach((name, text) -> files.put(name, text.getBytes(StandardCharsets.UTF_8)));
        files.put("UTF-16", Sample.PLAN.getBytes(StandardCharsets.UTF_16));
        files.put("UTF-32", Sample.PARTS.getBytes(Charset.forName("UTF-32")));
        files.put("Latin", "plan: Caf\u00E9\n".getBytes(StandardCharsets.ISO_8859_1));
        files.put("halves of pairs", new byte[] {(byte) 0xED, (byte) 0xA0, (byte) 0x80, ':', ' ', 'x'});
        files.put("zeros", new byte[MOST]);
        files.put("a zipped table", zipped());
        byte[] year = gzipped(WeatherFileTest.plainYear().getBytes(StandardCharsets.UTF_8));
        files.put("a zipped year", year);
        files.put("half of a zipped year", Arrays.copyOf(year, year.length / 2));
        files.put("nothing", new byte[0]);
        files.put("one byte over", "#".repeat(FileText.MOST_BYTES + 1).getBytes(StandardCharsets.UTF_8));
        return files;
    }

    static Stream<String> names() throws IOException {
        return files().keySet().stream();
    }

    @ParameterizedTest
    @MethodSource("names")
    void noReaderBreaksOrStalls(String name) throws IOException {
        byte[] file = Objects.requireNonNull(files().get(name));
        List<Part> known = Sample.read(Sample.PLAN).parts();

        assertThat(read(() -> plan(file))).as("as a plan").isEmpty();
        for (String parts : List.of("parts.csv", "parts.yaml")) {
            assertThat(read(() -> PartsCsvFuzzTest.read(parts, file)))
                    .as("as " + parts)
                    .isEmpty();
        }
        assertThat(read(() -> small(file))).as("as small parts").isEmpty();
        assertThat(read(() -> RigFile.read("rig.yaml", new String(file, StandardCharsets.UTF_8), known)))
                .as("as a rig")
                .isEmpty();
        Optional<WeatherFile.Content> weather = read(() -> WeatherFuzzTest.read(file));
        assertThat(weather.isPresent()).as("as weather").isEqualTo(name.equals("a zipped year"));
    }

    /** Values that are hard on the patterns which figures are held against, in each value of a plan and each cell of a table. */
    static Stream<String> values() {
        return Stream.of(
                "1" + " ".repeat(MOST * 9 / 10) + "x",
                "1" + " ".repeat(MOST * 3 / 10) + "x\\nx",
                "1".repeat(MOST / 2) + "\\nx",
                "1-" + "1-".repeat(MOST * 3 / 10) + "\\nx",
                "1,000" + ",000".repeat(MOST / 5),
                "2x " + "1 W ".repeat(MOST / 5) + "\\nx",
                "a ".repeat(MOST * 4 / 10) + "N",
                "1, ".repeat(MOST * 3 / 10) + "\\nx",
                "\u00D7".repeat(MOST * 4 / 10),
                "9".repeat(31),
                "1e999",
                "NaN",
                "-Infinity",
                "\u0661 W");
    }

    @ParameterizedTest
    @MethodSource("values")
    void noValueOfAPlanStallsIt(String value) {
        for (String from : List.of(
                "72 h",
                "3 W",
                "[17:00-23:00]",
                "120 V AC 60 Hz, NEMA 5-15",
                "900 USD",
                "Astoria Regional Airport OR",
                "[nov, dec, jan]",
                "parts.csv")) {
            byte[] plan = Sample.PLAN.replace(from, "\"" + value + "\"").getBytes(StandardCharsets.UTF_8);
            if (plan.length <= FileText.MOST_BYTES) {
                assertThat(read(() -> plan(plan))).as(from).isEmpty();
            }
        }
    }

    @ParameterizedTest
    @MethodSource("values")
    void noCellOfATableStallsIt(String value) {
        String typed = value.replace("\\n", "\n");
        for (String column : List.of("outlets", "price", "priced_on", "usable_wh", "prices", "kind")) {
            byte[] parts = (Sample.HEADER + Sample.bent(Sample.BOX, column, "\"" + typed + "\""))
                    .getBytes(StandardCharsets.UTF_8);
            if (parts.length <= FileText.MOST_BYTES) {
                assertThat(read(() -> PartsCsvFuzzTest.read("parts.csv", parts)))
                        .as(column)
                        .isEmpty();
            }
        }
    }

    @Test
    void weatherOfRemarksOrOfWrongRowsEndsSoon() {
        String place = "# latitude_deg: 40\n# longitude_deg: -75\n# zone_h: -5\n";
        String header = "time,ghi_w_m2,air_c\n";
        for (String line : List.of("#platitude: 1\n", "a\n", "2019-13-01T00:00,1,1\n", "2019-01-01T00:00,9999,x\n")) {
            byte[] file = (place + header + line.repeat(20 * MOST / line.length())).getBytes(StandardCharsets.UTF_8);

            assertThat(read(() -> WeatherFuzzTest.read(file))).as(line).isEmpty();
        }
    }

    @Test
    void weatherMayBeginWithTheMarkOfItsEncoding() {
        byte[] file = ("\uFEFF" + WeatherFileTest.plainYear()).getBytes(StandardCharsets.UTF_8);

        assertThat(read(() -> WeatherFuzzTest.read(file))).isPresent();
    }

    /** Only what was named by a person is read from anywhere; what a plan names is read from the plan's folder. */
    @Test
    void noNameLeadsOutOfThePlansFolder(@TempDir Path outer) throws IOException {
        Path folder = Files.createDirectories(outer.resolve("plans"));
        Path secret = Files.writeString(outer.resolve("secret.csv"), Sample.PARTS);
        Files.createDirectories(folder.resolve("sub"));
        Files.writeString(folder.resolve("sub/parts.csv"), Sample.PARTS);
        Files.createSymbolicLink(folder.resolve("link.csv"), secret);
        Files.createSymbolicLink(folder.resolve("up"), outer);
        Files.createSymbolicLink(folder.resolve("inside.csv"), Path.of("sub", "parts.csv"));
        for (String name : List.of(
                "../secret.csv",
                "sub/../../secret.csv",
                secret.toString(),
                "link.csv",
                "up/secret.csv",
                "/etc/hostname",
                "../none.csv")) {
            Path plan = Files.writeString(
                    folder.resolve("plan.yaml"), Sample.PLAN.replace("parts: parts.csv", "parts: " + name));

            assertThat(Sample.problemsOf(() -> PlanFile.read(plan, ExampleTest.STATIONS)))
                    .as(name)
                    .hasSize(1)
                    .first()
                    .asString()
                    .contains("which is outside the plan's folder");
        }
        for (String name : List.of("sub/parts.csv", "./sub/../sub/parts.csv", "inside.csv")) {
            Path plan = Files.writeString(
                    folder.resolve("plan.yaml"), Sample.PLAN.replace("parts: parts.csv", "parts: " + name));

            assertThat(PlanFile.read(plan, ExampleTest.STATIONS).parts())
                    .as(name)
                    .hasSize(3);
        }
        assertThat(PartsFile.read(folder.resolve("link.csv")).parts()).hasSize(3);
    }

    private static <T> Optional<T> read(Supplier<T> reading) {
        return Promise.once(reading);
    }

    private static Object plan(byte[] file) {
        return PlanFuzzTest.read(file);
    }

    private static Object small(byte[] file) {
        Reading reading = new Reading();
        List<?> parts = SmallPartsFile.TABLE.read(
                reading,
                any -> new ByteArrayInputStream(file),
                SmallSample.NAME,
                SmallSample.NAME,
                null,
                new HashMap<>());
        reading.throwIfWrong();
        return parts;
    }

    private static String bomb() {
        StringBuilder text = new StringBuilder("a0: &a0 [x, x, x, x, x, x, x, x, x, x]\n");
        for (int i = 1; i < 12; i++) {
            text.append("a").append(i).append(": &a").append(i).append(" [");
            text.append(("*a" + (i - 1) + ", ").repeat(9))
                    .append("*a")
                    .append(i - 1)
                    .append("]\n");
        }
        return text.toString();
    }

    private static String stairs() {
        StringBuilder text = new StringBuilder();
        for (int deep = 0; deep < 1400; deep++) {
            text.append(" ".repeat(deep)).append("a:\n");
        }
        return text.toString();
    }

    private static byte[] gzipped(byte[] plain) throws IOException {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        try (GZIPOutputStream out = new GZIPOutputStream(bytes)) {
            out.write(plain);
        }
        return bytes.toByteArray();
    }

    private static byte[] zipped() throws IOException {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        try (ZipOutputStream out = new ZipOutputStream(bytes)) {
            out.putNextEntry(new ZipEntry("../parts.csv"));
            out.write(Sample.PARTS.getBytes(StandardCharsets.UTF_8));
        }
        return bytes.toByteArray();
    }
}
