package tideover.app.files;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.fail;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.HexFormat;
import java.util.List;
import java.util.Random;
import java.util.Set;
import java.util.zip.GZIPOutputStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import tideover.engine.answer.Question;
import tideover.engine.part.Part;
import tideover.engine.why.InputProblems;
import tideover.engine.why.Problem;

/**
 * Damaged files: bytes flipped, struck out, doubled, cut off, chunks moved. Whatever comes of it, it is a question or a
 * list of problems, and no other failure. The seed is fixed; give another by {@code -Dtideover.test.seed}.
 */
class MutationTest {
    private static final long SEED = Long.getLong("tideover.test.seed", 20_260_101);
    private static final int ROUNDS = 800;
    private static final String RIG = """
            rig: Box and two panels
            parts:
              - id: pw-500
              - {id: on-100, count: 2}
            """;
    /** What damage is likely to turn one sound thing into another unsound one. */
    private static final byte[] HARD =
            "\t:-#&*!|>'\"%@`{}[],?~\0\n\r 0123456789.eExWh\u00FF".getBytes(StandardCharsets.ISO_8859_1);

    /** Parts of the example, of every kind and form. */
    private static final Set<String> EVERY_FORM = Set.of(
            "pw-500",
            "pw-1000-used",
            "bl-640-used",
            "cs-dc",
            "cs-600",
            "fw-500s",
            "hb-100",
            "hb-100h",
            "dr-agm-100",
            "dr-105-used",
            "boat-75",
            "on-100",
            "on-220-used",
            "gd-440",
            "tw-10",
            "tw-20p",
            "tw-30m",
            "tw-i150",
            "tw-i600s",
            "tw-c15",
            "ga-plate");

    @Test
    void aDamagedPlanGivesProblemsOrAQuestion() throws IOException {
        byte[] plan = plan();
        byte[] parts = parts();
        Random random = new Random(SEED);
        int refused = 0;
        for (int round = 0; round < ROUNDS; round++) {
            refused += read(round, damaged(plan, random), parts);
        }
        assertThat(refused).isBetween(ROUNDS / 4, ROUNDS - 1);
    }

    @Test
    void aDamagedPlanOfMotorsAndHelpGivesProblemsOrAQuestion() throws IOException {
        byte[] plan = Sample.PLAN
                .replace(
                        "draws: 8 W",
                        "draws: 80 W\n    power factor: 0.7\n    wave: sine\n    attended: no\n"
                                + "    start: {horsepower: 1/6, code: K, lasts: 0.4 s, power factor: 0.6, alone: by a timer}")
                .replace("draws: 3 W", "draws: 3 W\n    start: {plug meter: 8 W}")
                .replace("carried: 95 %", "carried: 95 %\n  rolling: {off: 4 h, on: 2 h}")
                .replace("tilt: 60 deg", "tilt: 60 deg\n  shade: [{hours: 07:00-09:00, lost: 60 %}]")
                .concat("""
                        someone sleeps there: no
                        help:
                          - engine: {hours: [08:00-10:00], gives: 1000 W}
                          - battery: {after: 24 h, brings: 500 Wh, at most: 100 W}
                        """)
                .getBytes(StandardCharsets.UTF_8);
        byte[] parts = parts();
        Random random = new Random(SEED + 4);
        int refused = 0;
        for (int round = 0; round < ROUNDS; round++) {
            refused += read(round, damaged(plan, random), parts);
        }
        assertThat(read(-1, plan, parts)).isZero();
        assertThat(refused).isBetween(ROUNDS / 4, ROUNDS - 1);
    }

    @Test
    void aDamagedPlanOfKeptThingsGivesProblemsOrAQuestion() throws IOException {
        String freezer = Kept.FREEZER + "    meter: {uses: 0.7-0.9 kWh, in a room of: 21 degC}\n"
                + "    draws: 90-100 W\n    defrost: {heater: 50 W, for: 20 min, every: 10 h}\n    need: {below: -12 degC}\n"
                + "    duty: {hours: [10:00-14:00]}\n    before a storm: {chilled to: -24 degC}\n";
        byte[] plan = Kept.plan(freezer
                        + Kept.REFRIGERATOR
                        + "    freezer part: 100 L\n    need: {above: 40 degF, at most: 2 h}\n    label: 420 kWh\n"
                        + Kept.MEDICINE
                        + "    need: {between: 2 degC, and: 8 degC}\n    set to: 5 degC\n"
                        + "    medical: {can be without: 30 s, alarm: a bell, who acts: Ada, able: yes, second plan: ice}\n"
                        + Kept.COOLER
                        + Kept.PUMP
                        + Kept.BOILER)
                .replace("carried: 95 %", "carried: 95 %\n  storm: {panels stowed until: 12 h, forecast: yes}")
                .getBytes(StandardCharsets.UTF_8);
        byte[] parts = parts();
        Random random = new Random(SEED + 5);
        int refused = 0;
        for (int round = 0; round < 2 * ROUNDS; round++) {
            refused += read(round, damaged(plan, random), parts);
        }
        assertThat(read(-1, plan, parts)).isZero();
        assertThat(refused).isBetween(ROUNDS / 2, 2 * ROUNDS - 1);
    }

    @Test
    void aDamagedPartsFileGivesProblemsOrParts() throws IOException {
        byte[] plan = plan();
        byte[] parts = parts();
        Random random = new Random(SEED + 1);
        int refused = 0;
        for (int round = 0; round < ROUNDS; round++) {
            refused += read(round, plan, damaged(parts, random));
        }
        assertThat(refused).isBetween(ROUNDS / 4, ROUNDS - 1);
    }

    @Test
    void aDamagedFileOfSmallPartsGivesProblemsOrParts() throws IOException {
        byte[] plan = withSmallParts();
        byte[] parts = parts();
        byte[] small = Files.readAllBytes(ExampleTest.folder().resolve(SmallSample.NAME));
        Random random = new Random(SEED + 6);
        int refused = 0;
        for (int round = 0; round < ROUNDS; round++) {
            refused += read(round, plan, parts, damaged(small, random));
        }
        assertThat(read(-1, plan, parts, small)).isZero();
        assertThat(refused).isBetween(ROUNDS / 4, ROUNDS - 1);
    }

    /** Also with tax, shipping and two files in the plan. */
    @Test
    void aDamagedListOfPartsGivesProblemsOrParts() throws IOException {
        String list = """
                - kind: panel
                  id: own-60
                  name: Invented panel
                  price: 74.50 USD
                  priced_on: 2026-02-11
                  condition: new
                  mass_kg: 13 lb
                  panel_w: 0.1 kW
                  open_circuit_v: 22.4
                  power_pct_per_k: -0.36 %/K
                  voltage_pct_per_k: -0.28
                  noct_c: 45
                  seller: Tarnwhistle
                  source: a list
                  prices: [from 2 at 70.00, from 4 at 65.25 USD]
                  shipping_each: 4.00
                  taxed: no
                - kind: sockets
                  id: own-board
                  name: Invented board
                  price: 19
                  currency: USD
                  priced_on: 2026-02-11
                  condition: new
                  mass_kg: 300 g
                  outlets:
                    - 2x 12 V DC car socket 120 W
                    - 2x 5 V DC USB-A 24 W 90 %
                """;
        String plan = Sample.PLAN
                .replace("parts: parts.csv", "parts: [parts.csv, own.yaml]")
                .replace(
                        "money:\n",
                        "money:\n  tax: 8.875 %\n  shipping:\n"
                                + "    - {seller: Tarnwhistle, each order: 9.00 USD, free from: 75 USD}\n");
        byte[] parts = Sample.PARTS.getBytes(StandardCharsets.UTF_8);
        Random random = new Random(SEED + 8);
        int refused = 0;
        for (int round = 0; round < ROUNDS; round++) {
            boolean inPlan = round % 4 == 0;
            byte[] own = list.getBytes(StandardCharsets.UTF_8);
            byte[] plans = plan.getBytes(StandardCharsets.UTF_8);
            refused += read(
                    round,
                    inPlan ? damaged(plans, random) : plans,
                    name -> new ByteArrayInputStream(ownOr(name, parts, inPlan ? own : damaged(own, random))));
        }
        assertThat(read(
                        -1,
                        plan.getBytes(StandardCharsets.UTF_8),
                        name -> new ByteArrayInputStream(ownOr(name, parts, list.getBytes(StandardCharsets.UTF_8)))))
                .isZero();
        assertThat(refused).isBetween(ROUNDS / 4, ROUNDS - 1);
    }

    private static byte[] ownOr(String name, byte[] parts, byte[] own) throws NoSuchFileException {
        if (name.equals("own.yaml")) {
            return own;
        }
        if (name.equals("parts.csv")) {
            return parts;
        }
        throw new NoSuchFileException(name);
    }

    @Test
    void aDamagedPlanWithWiringGivesProblemsOrAQuestion() throws IOException {
        byte[] plan = withSmallParts();
        byte[] parts = parts();
        byte[] small = Files.readAllBytes(ExampleTest.folder().resolve(SmallSample.NAME));
        Random random = new Random(SEED + 7);
        int refused = 0;
        for (int round = 0; round < ROUNDS; round++) {
            refused += read(round, damaged(plan, random), parts, small);
        }
        assertThat(refused).isBetween(ROUNDS / 4, ROUNDS - 1);
    }

    /** The example plan, with its parts in one file. */
    private static byte[] plan() throws IOException {
        String plan = Files.readString(ExampleTest.folder().resolve("plan.yaml"));
        return ExampleParts.planOfOneFile(plan).getBytes(StandardCharsets.UTF_8);
    }

    private static byte[] parts() throws IOException {
        return ExampleParts.joined(ExampleTest.folder(), EVERY_FORM::contains).getBytes(StandardCharsets.UTF_8);
    }

    private static byte[] withSmallParts() {
        String wiring = """
                wiring:
                  panels: 12 m
                  charge controller: 40 cm
                  inverter: 20 in
                  engine: 20 ft
                  links: [30 cm, 45 cm]
                  hottest: 113 degF
                  side by side: 6
                  cords: {Lamps: 6 m, Scanner: 10 ft}
                """;
        return (SmallSample.PLAN + wiring).getBytes(StandardCharsets.UTF_8);
    }

    @Test
    void aDamagedRigFileGivesProblemsOrARig() {
        List<Part> known = PlanFile.read(ExampleTest.folder().resolve("plan.yaml"), ExampleTest.STATIONS)
                .parts();
        Random random = new Random(SEED + 2);
        for (int round = 0; round < ROUNDS; round++) {
            byte[] rig = damaged(RIG.getBytes(StandardCharsets.UTF_8), random);
            try {
                assertThat(RigFile.read("rig.yaml", new String(rig, StandardCharsets.ISO_8859_1), known)
                                .chosen())
                        .isNotEmpty();
            } catch (InputProblems told) {
                assertThat(told.problems()).isNotEmpty();
            } catch (RuntimeException | StackOverflowError e) {
                fail("seed " + SEED + ", round " + round + ": " + new String(rig, StandardCharsets.ISO_8859_1), e);
            }
        }
    }

    @Test
    void aDamagedWeatherFileGivesProblemsOrWeather(@TempDir Path folder) throws IOException {
        byte[] sound = WeatherFileTest.tmy3().getBytes(StandardCharsets.UTF_8);
        byte[] packed = packed(sound);
        Random random = new Random(SEED + 3);
        for (int round = 0; round < ROUNDS / 8; round++) {
            byte[] file = damaged(round % 2 == 0 ? sound : packed, random);
            Path path = folder.resolve("weather.csv");
            Files.write(path, file);
            try {
                assertThat(WeatherFile.read(path).weather().years()).isEqualTo(1);
            } catch (InputProblems told) {
                assertThat(told.problems()).isNotEmpty();
            } catch (RuntimeException e) {
                fail("seed " + SEED + ", round " + round, e);
            }
        }
    }

    private static byte[] packed(byte[] sound) throws IOException {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        try (OutputStream out = new GZIPOutputStream(bytes)) {
            out.write(sound);
        }
        return bytes.toByteArray();
    }

    /** 1 where the files were refused, 0 where they gave a question. */
    private static int read(int round, byte[] plan, byte[] parts) {
        return read(round, plan, parts, SmallSample.FILE.getBytes(StandardCharsets.UTF_8));
    }

    private static int read(int round, byte[] plan, byte[] parts, byte[] small) {
        Beside beside = name -> {
            if (!name.equals("parts.csv") && !name.equals(SmallSample.NAME)) {
                throw new NoSuchFileException(name);
            }
            return new ByteArrayInputStream(name.equals(SmallSample.NAME) ? small : parts);
        };
        return read(round, plan, beside);
    }

    private static int read(int round, byte[] plan, Beside beside) {
        try {
            Question question = new BytesPlan(plan, beside).read();
            assertThat(question.parts()).isNotEmpty();
            return 0;
        } catch (InputProblems told) {
            StringBuilder all = new StringBuilder();
            for (Problem problem : told.problems()) {
                all.append(problem.sentence());
                boolean full = !problem.where().isEmpty()
                        && !problem.found().isEmpty()
                        && !problem.expected().isEmpty();
                assertThat(full).as(problem.sentence()).isTrue();
            }
            assertThat(all.toString()).doesNotContainPattern("\\p{Cntrl}").doesNotContain("null");
            return 1;
        } catch (RuntimeException | StackOverflowError e) {
            return fail(
                    "seed " + SEED + ", round " + round + ", plan in hexadecimal: "
                            + HexFormat.of().formatHex(plan),
                    e);
        }
    }

    /** A plan as bytes, read the way one on disk is. */
    private record BytesPlan(byte[] bytes, Beside beside) {
        Question read() {
            Reading reading = new Reading();
            String text = FileText.decode(reading, bytes, "plan.yaml", "a plan");
            reading.throwIfWrong();
            return PlanFile.read("plan.yaml", String.valueOf(text), beside, ExampleTest.STATIONS);
        }
    }

    private static byte[] damaged(byte[] sound, Random random) {
        byte[] bytes = sound.clone();
        int wounds = 1 + random.nextInt(4);
        for (int wound = 0; wound < wounds && bytes.length > 0; wound++) {
            int at = random.nextInt(bytes.length);
            switch (random.nextInt(6)) {
                case 0 -> bytes[at] ^= (byte) (1 << random.nextInt(8));
                case 1 -> bytes[at] = HARD[random.nextInt(HARD.length)];
                case 2 -> bytes = joined(Arrays.copyOf(bytes, at), Arrays.copyOfRange(bytes, at + 1, bytes.length));
                case 3 ->
                    bytes = joined(
                            Arrays.copyOf(bytes, at), Arrays.copyOfRange(bytes, Math.max(0, at - 20), bytes.length));
                case 4 -> bytes[at] = (byte) random.nextInt(256);
                default -> bytes = random.nextInt(8) == 0 ? Arrays.copyOf(bytes, at) : bytes;
            }
        }
        return bytes;
    }

    private static byte[] joined(byte[] first, byte[] second) {
        byte[] all = Arrays.copyOf(first, first.length + second.length);
        System.arraycopy(second, 0, all, first.length, second.length);
        return all;
    }
}
