package tideover.app.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.OutputStream;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import picocli.CommandLine;
import tideover.app.files.ExampleParts;
import tools.jackson.databind.JsonNode;

/** What a person, or a script, meets at the command line: statuses, streams, files, and the same bytes every time. */
class CommandLineTest {
    /** Counts, ordinals and seeds, and the figures of a rule, whose unit stands beside them. */
    private static final Set<String> UNITLESS = Set.of(
            "seed",
            "confirm_seed",
            "weather_years",
            "confirm_weather_years",
            "count",
            "number",
            "run_number",
            "pieces",
            "needed_pieces",
            "bought_packs",
            "bought_count",
            "outages",
            "carried",
            "walked",
            "interval_90_low",
            "interval_90_high",
            "share_gain",
            "rigs_looked_at",
            "rigs_ruled_out_by_demand_bound",
            "rigs_ruled_out_by_array_bound",
            "rigs_ruled_out_by_sort_bound",
            "rigs_ruled_out_by_series_bound",
            "rigs_screened_exactly",
            "rigs_priced",
            "rigs_fallen_to_rules",
            "rigs_not_reached",
            "rigs_walked",
            "rigs_walked_in_vain",
            "rigs_over_budget",
            "net_gain_series",
            "rigs_asked",
            "draws_won",
            "draws_without",
            "changes_tried",
            "value",
            "limit",
            "margin",
            "refills");

    private static final String UNIT =
            "(.*_)?(w|l|l_per_h|dba|wh|wh_per_day|h|hours|minutes|s|years|deg|degc|m|km|kg|v|a|va|ah|ohm|kwh|cents|cents_per_year|cents_per_kwh|ratio|share|pct|kwh_m2_day)"
                    + "|start_hour_of_weather_years";

    @TempDir
    private static Path folder;

    private static Path plan;
    private static Ran sized;
    private static Ran proven;

    @BeforeAll
    static void askOnce() throws IOException {
        plan = Ran.household(folder);
        sized = Ran.quick("size", plan, "--format", "json", "--threads", 1);
        proven = Ran.quick(
                "prove", plan, "--rig", folder.resolve("rig.yaml"), "--format", "json", "--trace", trace("worst"));
    }

    private static Path trace(String name) {
        return folder.resolve("trace-" + name + ".csv");
    }

    @Test
    void anAnswerIsOneDocumentOnStandardOutput() {
        assertThat(sized.status()).isZero();
        assertThat(sized.err()).isEmpty();
        JsonNode answer = sized.json();
        assertThat(answer.path("program").asString()).isEqualTo("tideover");
        assertThat(answer.path("version").asString()).isNotEmpty();
        assertThat(answer.path("seed").asLong()).isEqualTo(1);
        assertThat(answer.path("weather_years").asInt()).isEqualTo(2);
        assertThat(answer.path("weather_source").asString()).contains("Astoria");
        assertThat(answer.path("meets_target").asBoolean()).isTrue();
        JsonNode share = answer.path("rig").path("carried_share");
        assertThat(share.path("share").asDouble()).isBetween(0.95, 1.0);
        assertThat(share.path("interval_90_low").asDouble())
                .isLessThanOrEqualTo(share.path("share").asDouble());
        assertThat(share.path("interval_90_high").asDouble())
                .isGreaterThanOrEqualTo(share.path("share").asDouble());
        assertThat(answer.path("cautions").size()).isPositive();
    }

    /** Every rig that can be put together is rejected by one or more named rules, too dear, or kept. */
    @Test
    void theSearchAccountsForEveryRig() {
        JsonNode search = sized.json().path("search");
        int fallen = search.path("rigs_looked_at").asInt()
                - search.path("rigs_over_budget").asInt()
                - search.path("rigs_that_keep_rules_and_budget").asInt();
        List<Integer> byRule = search.path("rejected_by_rule").properties().stream()
                .map(rule -> rule.getValue().asInt())
                .toList();

        assertThat(fallen).isPositive();
        assertThat(byRule).isNotEmpty().allSatisfy(count -> assertThat(count).isBetween(1, fallen));
        assertThat(byRule.stream().mapToInt(count -> count).sum()).isGreaterThanOrEqualTo(fallen);
    }

    @Test
    void aRigThatMissesTheTargetIsShownWithStatusThree() {
        assertThat(proven.status()).isEqualTo(3);
        assertThat(proven.err()).isEmpty();
        JsonNode answer = proven.json();
        assertThat(answer.path("meets_target").asBoolean(true)).isFalse();
        assertThat(answer.path("rig").path("carried_share").path("share").asDouble())
                .isBetween(0.01, 0.9499);
        assertThat(answer.path("answer").asString()).contains("misses the target");
    }

    /** Four roof panels carry every outage, and would burn a controller made for 28 V: that is said first. */
    @Test
    void aRigThatBreaksARuleIsCalledUnfit() throws IOException {
        Path rig = Files.writeString(
                folder.resolve("unfit.yaml"),
                "rig: Unfit\nparts:\n  - {id: cs-dc}\n  - {id: hb-100, count: 2}\n  - {id: tw-i150}\n"
                        + "  - {id: on-220-used, count: 2}\n");
        Ran ran = Ran.quick("prove", plan, "--rig", rig, "--format", "json");

        assertThat(ran.status()).isEqualTo(3);
        assertThat(ran.json().path("meets_target").asBoolean(true)).isFalse();
        assertThat(ran.json().path("rig").path("carried_share").path("share").asDouble())
                .isEqualTo(1);
        assertThat(ran.json().path("answer").asString()).contains("breaks a rule (panel voltage) and so will not do");
        assertThat(ran.json().path("cautions").toString()).contains("28");
    }

    @Test
    void whereNothingMeetsTheNearestMissesAreStillPrinted(@TempDir Path empty) throws IOException {
        Path cheap = Ran.household(empty, "at most: 1200 USD", "at most: 650 USD");
        Ran ran = Ran.quick("size", cheap);

        assertThat(ran.status()).isEqualTo(3);
        assertThat(ran.err()).isEmpty();
        assertThat(ran.out()).contains("Nothing on the parts list carries 95.0 of 100", "Nearest below the target");
    }

    @Test
    void everyNumberCarriesItsUnit() {
        Set<String> bare = new TreeSet<>();
        for (Ran ran : List.of(sized, proven, Ran.of("sites", "--near", "46,-124", "--format", "json"))) {
            collectBare("", ran.json(), bare);
        }

        assertThat(bare).isEmpty();
    }

    private static void collectBare(String name, JsonNode node, Set<String> bare) {
        if (node.isNumber() && !UNITLESS.contains(name) && !name.matches(UNIT)) {
            bare.add(name);
        }
        node.properties().forEach(one -> {
            if (!"rejected_by_rule".equals(one.getKey())) { // keyed by rule, and counts
                collectBare(one.getKey(), one.getValue(), bare);
            }
        });
        if (node.isArray()) {
            node.forEach(one -> collectBare(name, one, bare));
        }
    }

    @Test
    void oneSeedGivesTheSameBytesOnAnyNumberOfThreads() {
        Ran again = Ran.quick("size", plan, "--format", "json", "--threads", 2);
        assertThat(again.out()).isEqualTo(sized.out());
        assertThat(Ran.quick("size", plan, "--threads", 2)).isEqualTo(Ran.quick("size", plan, "--threads", 1));
    }

    @Test
    void anotherSeedGivesOtherWeather() {
        Ran other = Ran.quick("size", plan, "--format", "json", "--seed", 2);
        assertThat(other.json().path("seed").asLong()).isEqualTo(2);
        assertThat(other.json().path("rig").path("worst_outage"))
                .isNotEqualTo(sized.json().path("rig").path("worst_outage"));
    }

    /** The number that the list prints leads back to the same rig, with the same share. */
    @Test
    void aNumberOfTheListIsARig() {
        JsonNode first = sized.json().path("price_share_front").path(0);
        Ran ran = Ran.quick("prove", plan, "--rig", first.path("number").asInt(), "--format", "json");

        assertThat(ran.json().path("rig").path("id")).isEqualTo(first.path("id"));
        assertThat(ran.json().path("rig").path("price").path("total_cents")).isEqualTo(first.path("total_cents"));
        assertThat(ran.json().path("rig").path("carried_share").path("share")).isEqualTo(first.path("share"));
    }

    @ParameterizedTest
    @ValueSource(strings = {"0", "99999", "99999999999999"})
    void aNumberBeyondTheListIsRefused(String number) {
        Ran ran = Ran.quick("prove", plan, "--rig", number);
        refused(ran, "--rig: found " + number + ", expected a number from 1 to ");
    }

    /** An independent sum of the printed columns: what came in was served, lost or stored. */
    @ParameterizedTest
    @ValueSource(strings = {"worst", "median", "1-12-24T18", "2-12-31T23"})
    void aTraceAddsUp(String outage) throws IOException {
        Path file = trace(outage);
        if (!"worst".equals(outage)) {
            Ran ran =
                    Ran.quick("prove", plan, "--rig", folder.resolve("rig.yaml"), "--trace", file, "--outage", outage);
            assertThat(ran.status()).isEqualTo(3);
        }
        List<String> lines = Files.readAllLines(file);
        List<String> names = List.of(lines.get(0).split(","));
        assertThat(lines).hasSize(1 + 72 * 4);
        double inWh = 0;
        double outWh = 0;
        for (String line : lines.subList(1, lines.size())) {
            String[] cells = line.split(",");
            inWh += cell(cells, names, "panels_could_give_w") / 4;
            for (String flow : List.of(
                    "controller_loss_w",
                    "controller_current_limit_w",
                    "store_charge_limit_w",
                    "no_room_in_store_w",
                    "essential_served_w",
                    "nice_to_have_served_w",
                    "inverter_loss_w",
                    "outlet_loss_w",
                    "inverter_standing_w",
                    "charge_loss_w",
                    "discharge_loss_w")) {
                outWh += cell(cells, names, flow) / 4;
            }
        }
        // 75 % of the 1800 Wh of the rig's box, as the plan says
        double storedWh = cell(lines.get(lines.size() - 1).split(","), names, "stored_wh") - 0.75 * 1800;
        assertThat(Math.abs(inWh - outWh - storedWh)).isLessThan(1e-6 * (inWh + outWh));
        if (outage.startsWith("1-")) {
            assertThat(lines.get(1)).startsWith("0.0000,1,12,24,18,");
        }
    }

    private static double cell(String[] cells, List<String> names, String name) {
        return Double.parseDouble(cells[names.indexOf(name)]);
    }

    @ParameterizedTest
    @ValueSource(strings = {"darkest", "0-12-24T18", "3-12-24T18", "1-2-29T0", "1-13-1T0", "1-1-1T24", "1-1-1", ""})
    void anOutageThatIsNoneIsRefusedBeforeAnythingIsWritten(String outage) {
        Path file = folder.resolve("never.csv");
        Ran ran = Ran.quick("prove", plan, "--rig", folder.resolve("rig.yaml"), "--trace", file, "--outage", outage);

        refused(ran, "--outage: found " + outage);
        assertThat(file).doesNotExist();
    }

    @Test
    void anOutageWithoutAFileForItIsRefused() {
        refused(Ran.quick("prove", plan, "--rig", 1, "--outage", "median"), "--outage goes with --trace FILE");
    }

    @Test
    void aReportIsAPage() throws IOException {
        Path page = folder.resolve("report.html");
        Files.writeString(page, "an older one");
        Ran ran = Ran.quick("size", plan, "--report", page, "--format", "json");

        assertThat(ran.out()).isEqualTo(sized.out());
        assertThat(Files.readString(page))
                .startsWith("<!DOCTYPE html>")
                .contains("</html>")
                .contains("Net-loft above a boatshed");
    }

    @Test
    void placesForFilesAreLookedAtBeforeTheWork(@TempDir Path empty) throws IOException {
        Path nowhere = empty.resolve("not there").resolve("a.html");
        refused(
                Ran.quick("size", plan, "--report", nowhere),
                "--report: found " + nowhere + ", expected a file in a folder");
        refused(Ran.quick("size", plan, "--report", empty), "--report: found " + empty + ", a folder, expected");
        refused(Ran.quick("prove", plan, "--rig", 1, "--trace", nowhere), "--trace: found " + nowhere);
        refused(Ran.of("weather", "Astoria Regional Airport OR", "--out", nowhere), "--out: found " + nowhere);
        refused(Ran.quick("size", plan, "--report", plan), "--report: found " + plan + ", which this run reads");
        Path twice = empty.resolve("twice");
        refused(
                Ran.quick("prove", plan, "--rig", 1, "--trace", twice, "--report", twice),
                "--trace: found " + twice + ", which this run reads or writes already");
        Path locked = Files.writeString(empty.resolve("locked.html"), "keep me");
        if (locked.toFile().setReadOnly() && !Files.isWritable(locked)) { // the all-powerful user may write anything
            refused(Ran.quick("size", plan, "--report", locked), "--report: found " + locked + ", which may not be");
        }
        assertThat(Files.readString(plan)).startsWith("# A made-up household");
        assertThat(empty).isDirectoryContaining("glob:**/locked.html");
        try (Stream<Path> left = Files.list(empty)) {
            assertThat(left).hasSize(1);
        }
    }

    @Test
    void aFileBehindALinkIsWrittenAndTheLinkStays(@TempDir Path empty) throws IOException {
        Path real = Files.writeString(empty.resolve("real.csv"), "old");
        Path link = Files.createSymbolicLink(empty.resolve("link.csv"), real);
        assertThat(Ran.of("weather", "Astoria Regional Airport OR", "--out", link)
                        .status())
                .isZero();

        assertThat(link).isSymbolicLink();
        assertThat(Files.readString(real)).startsWith("# ");
        try (Stream<Path> left = Files.list(empty)) {
            assertThat(left).hasSize(2);
        }
    }

    @Test
    void ourOwnFaultIsCalledOurs() {
        StringWriter err = new StringWriter();
        CommandLine line = new CommandLine(new CompletionCommand());
        line.setErr(new PrintWriter(err));
        int status = Failures.ofWork(new IllegalStateException("broken books"), line, line.parseArgs());

        assertThat(status).isEqualTo(1);
        assertThat(err.toString()).startsWith("This is our fault, not yours").contains("broken books");
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "--years 0",
                "--years 1001",
                "--years two",
                "--confirm-years 0",
                "--threads 0",
                "--threads 65",
                "--step 7",
                "--step 0",
                "--step 90",
                "--seed abc",
                "--seed 99999999999999999999",
                "--format xml",
                "--nonsense",
                "--years",
                "another.yaml"
            })
    void optionsAreChecked(String options) {
        List<Object> args = new ArrayList<>(List.of("size", plan));
        args.addAll(List.of(options.split(" ")));
        Ran ran = Ran.of(args.toArray());

        refused(ran, options.split(" ")[0]);
        assertThat(ran.err()).contains("See: tideover size --help").doesNotContain("long", "int ", "java");
    }

    @Test
    void aMisspeltCommandGetsSuggestions() {
        refused(Ran.of("sise"), "size");
    }

    @Test
    void helpOfEveryCommandNamesEveryOption() {
        List<CommandLine> all = new ArrayList<>(Tideover.line().getSubcommands().values());
        assertThat(all).hasSizeGreaterThanOrEqualTo(5);
        for (CommandLine command : all) {
            Ran ran = Ran.of(command.getCommandName(), "--help");
            assertThat(ran.status()).isZero();
            assertThat(ran.err()).isEmpty();
            command.getCommandSpec()
                    .options()
                    .forEach(option ->
                            assertThat(ran.out()).as(command.getCommandName()).contains(option.longestName()));
            assertThat(ran.out()).as(command.getCommandName()).doesNotContain("${");
        }
        Ran whole = Ran.of("--help");
        assertThat(whole.status()).isZero();
        all.forEach(command -> assertThat(whole.out()).contains(command.getCommandName()));
        assertThat(whole.out()).contains("Exit status: 0 done, 1 our fault, 2 the input is wrong, 3 nothing meets");
    }

    /** An answer that nobody got is not done. */
    @Test
    void aFullDiskBehindStandardOutputIsTold() {
        PrintWriter full = new PrintWriter(new OutputStream() {
            @Override
            public void write(int one) throws IOException {
                throw new IOException("No space left on device");
            }
        });
        StringWriter err = new StringWriter();

        assertThat(Tideover.run(full, new PrintWriter(err), "sites", "astoria")).isEqualTo(2);
        assertThat(err.toString()).startsWith("Standard output could not take all of it");
    }

    @Test
    void panelsThatComeTooLateAreACaution(@TempDir Path empty) throws IOException {
        Ran ran = Ran.quick("size", Ran.household(empty, "out after: 3 h", "out after: 72 h"));

        assertThat(ran.out().replaceAll("\\s+", " "))
                .contains("The panels are out after 72 h of an outage of 72 h: they give nothing while it lasts.");
    }

    /** A row mistyped into a later file must not pass unseen. */
    @Test
    void theTextTellsWhatALaterFileReplaces(@TempDir Path two) throws IOException {
        Path plan = Ran.household(two, "parts: parts.csv", "parts: [parts.csv, own.csv]");
        Files.writeString(two.resolve("own.csv"), ExampleParts.joined(Ran.examples(), "on-100"::equals));
        String told = Ran.quick("size", plan).out().replaceAll("\\s+", " ");

        assertThat(told)
                .containsPattern("Parts replaced by a later file - on-100 \\(parts.csv:\\d+ by own.csv:2\\) Weather ");
    }

    /** Without money nothing is left to list: no heading stands over nothing. */
    @Test
    void aBudgetOfNothing(@TempDir Path empty) throws IOException {
        Ran ran = Ran.quick("size", Ran.household(empty, "at most: 1200 USD", "at most: 0 USD"));

        assertThat(ran.status()).isEqualTo(3);
        assertThat(ran.out())
                .contains(
                        "The cheapest rig that keeps every rule costs ",
                        "cost more than the budget",
                        "0 of them were followed in full")
                .doesNotContain("Price against share", "Nearest below", " 0 could not");
    }

    @Test
    void theVersionIsPrinted() {
        assertThat(Ran.of("--version").out()).startsWith("Tideover ");
    }

    @Test
    void theCompletionScriptIsGoodBash() throws IOException, InterruptedException {
        Ran ran = Ran.of("completion");
        assertThat(ran.status()).isZero();
        assertThat(ran.out()).contains("--confirm-years", "prove");
        Process bash =
                new ProcessBuilder("bash", "-n").redirectErrorStream(true).start();
        try (var in = bash.outputWriter()) {
            in.write(ran.out());
        }
        assertThat(new String(bash.getInputStream().readAllBytes())).isEmpty();
        assertThat(bash.waitFor(10, TimeUnit.SECONDS)).isTrue();
        assertThat(bash.exitValue()).isZero();
    }

    @Test
    void progressIsForTerminalsAlone() {
        assertThat(System.getenv("TIDEOVER_TERMINAL")).isNull();
        StringWriter err = new StringWriter();
        try (ProgressLine line = new ProgressLine(new PrintWriter(err), false, "USD")) {
            line.at("screening", 0.5);
        }
        assertThat(err.toString()).isEmpty();
    }

    @Test
    void onATerminalProgressStaysOnOneLineAndIsWiped() {
        StringWriter err = new StringWriter();
        try (ProgressLine line = new ProgressLine(new PrintWriter(err), true, "USD")) {
            line.at("screening", 0.5);
            line.at("screening", 0.5);
            line.at("proving", 2);
        }
        assertThat(err.toString()).doesNotContain("\n").endsWith(" \r");
        assertThat(err.toString().split("screening", -1)).hasSize(2);
    }

    private static void refused(Ran ran, String start) {
        assertThat(ran.status()).as(ran.err()).isEqualTo(2);
        assertThat(ran.out()).isEmpty();
        assertThat(ran.err()).contains(start).doesNotContain("Exception", "\tat ");
    }
}
