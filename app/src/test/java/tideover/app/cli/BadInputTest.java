package tideover.app.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.params.provider.Arguments.arguments;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.zip.GZIPOutputStream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * Wrong input through the whole program: status 2, nothing on standard output, nothing written, and a sentence that
 * names file, line, field, what was found and what was expected. The readers' own tests hold every single sentence.
 */
class BadInputTest {
    @TempDir
    private Path folder;

    private Path plan;
    private Path report;

    @BeforeEach
    void furnish() throws IOException {
        plan = Ran.household(folder);
        report = folder.resolve("report.html");
    }

    static List<Arguments> slips() {
        return List.of(
                // missing and misspelt keys
                arguments("  lasts: 72 h\n", "", "outage: found no \"lasts:\", expected a time, such as 72 h."),
                arguments(
                        "store room:",
                        "store rom:",
                        "found the key \"store rom\", expected the key \"store room\"." + " Write store room:"),
                arguments(
                        "draws: 3 W",
                        "drawz: 3 W",
                        "loads[1]: found the key \"drawz\", expected the key \"draws\"." + " Write draws:"),
                arguments(
                        "runs: steady",
                        "runs: cold boxx",
                        "loads[1].runs: found \"cold boxx\", expected how it runs: steady, at set hours, cold box, sump pump,"
                                + " heating. Write cold box."),
                arguments(
                        "carried: 95 %",
                        "carried: 95 %\n  storm: {snow cleared after: -1 h}",
                        "outage.storm.snow cleared after: found \"-1 h\", expected a time from 0 h to 1440 h."),
                // wrong units
                arguments("draws: 3 W", "draws: 3 Wh", "loads[1].draws: found \"3 Wh\", expected a power in W or kW."),
                arguments("draws: 3 W", "draws: 3", "loads[1].draws: found \"3\", expected a power with its unit."),
                arguments("tilt: 60 deg", "tilt: 60 degF", "panels.tilt: found \"60 degF\", expected an angle"),
                // negative and impossible figures
                arguments("draws: 3 W", "draws: -3 W", "loads[1].draws: found \"-3 W\", expected a power above 0 W"),
                arguments("carried: 95 %", "carried: 400 %", "outage.carried: found \"400 %\", expected a percentage"),
                arguments("dirt: 4 %", "dirt: -4 %", "panels.dirt: found \"-4 %\", expected"),
                arguments("lasts: 72 h", "lasts: 61 d", "outage.lasts: found \"61 d\", expected a time from 1 h to"),
                arguments("at most: 1200 USD", "at most: -1 USD", "money.at most: found \"-1 USD\", expected"),
                // an unknown place
                arguments(
                        "Astoria Regional",
                        "Asotria Regional",
                        "place.station: found \"Asotria Regional Airport OR\","
                                + " expected the name or number of a station in the station table. Near to that: Astoria Regional Airport OR;"),
                arguments("parts: parts.csv", "parts: part.csv", "parts: found no file \"part.csv\", expected"));
    }

    @ParameterizedTest
    @MethodSource("slips")
    void aSlipInThePlanIsNamed(String from, String to, String told) throws IOException {
        String sound = Files.readString(plan);
        assertThat(sound).contains(from);
        Files.writeString(plan, sound.replace(from, to));

        Ran ran = refused(Ran.quick("size", plan, "--report", report));
        assertThat(ran.err()).containsPattern("plan\\.yaml:\\d+ ?").contains(told);
    }

    static List<Arguments> partSlips() {
        return List.of(
                arguments(",599.00,", ",-599.00,", "price: found \"-599.00\", expected"),
                arguments(",960,97,96,", ",960,400,96,", "charge_efficiency_pct: found \"400\", expected"),
                arguments(",960,97,96,", ",-960,97,96,", "usable_wh: found \"-960\", expected"),
                arguments(",100,22.4,", ",100 W,22.4,", "panel_w: found \"100 W\", expected"),
                arguments("box,pw-1000,", "crate,pw-1000,", "kind: found \"crate\", expected"),
                arguments("box,pw-2000-used,", "box,pw-1000,", "id: found \"pw-1000\" a second time, expected"));
    }

    @ParameterizedTest
    @MethodSource("partSlips")
    void aSlipInThePartsFileIsNamed(String from, String to, String told) throws IOException {
        Path parts = folder.resolve("parts.csv");
        String sound = Files.readString(parts);
        assertThat(sound).contains(from);
        Files.writeString(parts, sound.replace(from, to));

        Ran ran = refused(Ran.quick("size", plan, "--report", report));
        assertThat(ran.err()).containsPattern("parts\\.csv:\\d+ ").contains(told);
    }

    @Test
    void aMisspeltColumnIsNamed() throws IOException {
        Path parts = folder.resolve("parts.csv");
        Files.writeString(parts, Files.readString(parts).replace("usable_wh", "useable_wh"));

        assertThat(refused(Ran.quick("size", plan)).err())
                .contains("parts.csv:1: found the column \"useable_wh\", expected", "usable_wh");
    }

    @Test
    void planAndPartsAreToldTogether() throws IOException {
        Path parts = folder.resolve("parts.csv");
        Files.writeString(parts, Files.readString(parts).replace(",599.00,", ",dear,"));
        Files.writeString(plan, Files.readString(plan).replace("draws: 3 W", "draws: 3"));

        assertThat(refused(Ran.quick("size", plan)).err())
                .startsWith("2 things are wrong:")
                .contains("plan.yaml:", "parts.csv:");
    }

    @ParameterizedTest
    @ValueSource(strings = {"id: pw-2000", "id: teapot", "idd: pw-2000-used", "id: pw-2000-used, count: -1"})
    void aSlipInTheRigIsNamed(String part) throws IOException {
        Path rig = Files.writeString(folder.resolve("mine.yaml"), "rig: Mine\nparts:\n  - {" + part + "}\n");
        Ran ran = refused(Ran.quick("prove", plan, "--rig", rig, "--report", report, "--trace", folder.resolve("t")));

        assertThat(ran.err()).contains("mine.yaml:3 parts[1]", "expected");
    }

    @Test
    void partsThatMakeNoRigAreToldSo() throws IOException {
        Path rig = Files.writeString(
                folder.resolve("mine.yaml"), "rig: Mine\nparts:\n  - {id: on-100}\n  - {id: tw-i150}\n");

        assertThat(refused(Ran.quick("prove", plan, "--rig", rig)).err())
                .contains("mine.yaml", "parts that make one rig");
    }

    @Test
    void tenMegabytesAreRefused() throws IOException {
        byte[] bytes = new byte[10_000_000];
        Arrays.fill(bytes, (byte) '#');
        Path large = Files.write(folder.resolve("large.yaml"), bytes);

        assertThat(refused(Ran.quick("size", large)).err()).contains("large.yaml: found a file of more than 1 MB");
        assertThat(refused(Ran.quick("prove", plan, "--rig", large)).err()).contains("more than 1 MB");
    }

    @Test
    void anAliasBombDoesNotGoOff() throws IOException {
        StringBuilder bomb = new StringBuilder("plan: &a0 [lol, lol]\n");
        for (int level = 1; level < 30; level++) {
            bomb.append("b" + level + ": &a" + level + " [*a" + (level - 1) + ", *a" + (level - 1) + "]\n");
        }
        Path file = Files.writeString(folder.resolve("bomb.yaml"), bomb);

        assertThat(refused(Ran.quick("size", file)).err()).contains("bomb.yaml:1: found an anchor (&), expected");
    }

    @Test
    void binaryFilesAreNamed() throws IOException {
        ByteArrayOutputStream packed = new ByteArrayOutputStream();
        try (GZIPOutputStream out = new GZIPOutputStream(packed)) {
            out.write(Files.readAllBytes(plan));
        }
        byte[] bytes = Arrays.copyOf(packed.toByteArray(), packed.size() + 1); // a zero at the end
        Path file = Files.write(folder.resolve("packed.yaml"), bytes);

        assertThat(refused(Ran.quick("size", file)).err())
                .contains("packed.yaml: found a binary file, expected a plan");
        assertThat(refused(Ran.quick("prove", plan, "--rig", file)).err()).contains("packed.yaml: found a binary file");
        Files.write(folder.resolve("parts.csv"), bytes);
        assertThat(refused(Ran.quick("size", plan)).err()).contains("parts.csv: found a binary file, expected");
    }

    @Test
    void anotherAlphabetIsNamed() throws IOException {
        Files.writeString(
                plan, Files.readString(plan).replace("Router", "Caf\u00e9 router"), Charset.forName("windows-1252"));

        assertThat(refused(Ran.quick("size", plan)).err())
                .contains("plan.yaml: found text that is not UTF-8", "Save it again, encoded UTF-8.");
    }

    /** What other machines' editors write is the same plan. */
    @Test
    void lineEndsAndAByteOrderMarkAreNoFault() throws IOException {
        Ran sound = Ran.quick("size", plan);
        Files.writeString(plan, "\ufeff" + Files.readString(plan).replace("\n", "\r\n"), StandardCharsets.UTF_8);

        assertThat(Ran.quick("size", plan)).isEqualTo(sound);
    }

    @Test
    void aPlanThatIsNotThereOrNoFile() {
        assertThat(refused(Ran.quick("size", folder)).err()).contains("which is not a plain file, expected a plan");
        assertThat(refused(Ran.quick("size", folder.resolve("none.yaml"))).err())
                .contains("none.yaml: found no file \"none.yaml\", expected a plan");
        assertThat(refused(Ran.quick("prove", plan, "--rig", "none.yaml")).err())
                .contains("none.yaml: found no file \"none.yaml\", expected a rig file");
    }

    @Test
    void aWeatherFileCutShortOrAbsurd() throws IOException {
        String head = "# latitude_deg: 46.2\n# longitude_deg: -123.8\n# zone_h: -8\ntime,ghi_w_m2,air_c\n";
        Path weather = folder.resolve("w.csv");
        Files.writeString(
                plan, Files.readString(plan).replace("station: Astoria Regional Airport OR", "hourly file: w.csv"));

        Files.writeString(weather, head + "2019-01-01T00:00,0,5\n2019-01-01T01:00,0,5\n");
        assertThat(refused(Ran.quick("size", plan)).err()).contains("w.csv: found", "2019", "expected");
        Files.writeString(weather, head + "2019-01-01T00:00,99999,5\n2019-01-01T01:00,0,-300\n");
        assertThat(refused(Ran.quick("size", plan)).err())
                .contains("w.csv:5: found \"99999\", expected", "w.csv:6: found \"-300\", expected");
        Files.delete(weather);
        assertThat(refused(Ran.quick("size", plan)).err()).contains("hourly file: found no file \"w.csv\", expected");
    }

    private Ran refused(Ran ran) {
        assertThat(ran.status()).as(ran.err()).isEqualTo(2);
        assertThat(ran.out()).isEmpty();
        assertThat(ran.err()).contains("wrong:").doesNotContain("Exception", "\tat ", "null");
        assertThat(report).doesNotExist();
        return ran;
    }

    /** "plac" is as near to "plan" as to "place": the one that is missing is meant. */
    @Test
    void theMissingKeyIsOfferedBeforeOneThatStandsThere(@TempDir Path folder) throws IOException {
        Path plan = Files.writeString(folder.resolve("plan.yaml"), "plan: x\nplac: {}\n");
        assertThat(Ran.quick("size", plan).err()).contains("Write place:").doesNotContain("found no \"place:\"");
    }
}
