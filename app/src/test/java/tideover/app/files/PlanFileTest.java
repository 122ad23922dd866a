package tideover.app.files;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.offset;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.OptionalLong;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import tideover.engine.answer.Question;
import tideover.engine.load.DayWindow;
import tideover.engine.load.Need;
import tideover.engine.load.SteadyLoad;
import tideover.engine.load.Supply;
import tideover.engine.load.TimedLoad;
import tideover.engine.outage.Outage;
import tideover.engine.search.Grammar;
import tideover.engine.site.Place;
import tideover.engine.site.RoomKind;
import tideover.engine.site.WeatherSource;
import tideover.engine.sun.PanelMount;
import tideover.engine.why.Basis;
import tideover.engine.why.InputProblems;
import tideover.engine.why.MarginNote;
import tideover.engine.wiring.Allowances;

/** What a sound plan comes to. */
class PlanFileTest {
    private static final String STATION = "station: Astoria Regional Airport OR";

    @Test
    void everyPartOfTheQuestionComesFromThePlan() {
        Question question = Sample.read(Sample.PLAN);

        assertThat(question.title()).isEqualTo("Test house");
        assertThat(question.about()).isEmpty();
        assertThat(question.place()).isEqualTo(new Place("Astoria Regional Airport OR", 46.15, -123.883, 3, -8));
        assertThat(question.weather()).isInstanceOf(WeatherSource.Generated.class);
        assertThat(question.lowestDegC()).isEqualTo(-14);
        assertThat(question.mount()).isEqualTo(new PanelMount(60, 180, 0.04, 0.2));
        assertThat(question.batteryRoom()).isEqualTo(RoomKind.GARAGE);
        assertThat(question.outage()).isEqualTo(new Outage(List.of(0, 10, 11), 72, 0.95, 0.85, 3, 1));
        assertThat(question.loads())
                .containsExactly(
                        new SteadyLoad(
                                "Scanner", Supply.dc(12, "car socket"), 3, true, new Need.AlwaysOn(), RoomKind.INDOORS),
                        new TimedLoad(
                                "Lamps",
                                Supply.ac(120, 60, "NEMA 5-15"),
                                8,
                                false,
                                List.of(new DayWindow(17, 23)),
                                RoomKind.INDOORS));
        assertThat(question.budgetCents()).isEqualTo(OptionalLong.of(90_000));
        assertThat(question.currency()).isEqualTo("USD");
        assertThat(question.allowances()).isEqualTo(new Allowances(0, 3500, 9000));
        assertThat(question.grammar()).isEqualTo(new Grammar(3, 2));
        assertThat(question.parts()).hasSize(3);
        assertThat(question.cautions()).isEmpty();
    }

    @Test
    void whatThePlanLeavesOutIsAssumedAndSaidSo() {
        String plan = Sample.PLAN
                .replace("panels:\n  tilt: 60 deg\n", "")
                .replace("look at:\n  most panels: 3\n  most batteries: 2\n", "")
                .replace("  at most: 900 USD\n", "");
        Question question = Sample.read(plan);

        assertThat(question.mount()).isEqualTo(new PanelMount(61, 180, 0.04, 0.2));
        assertThat(question.grammar()).isEqualTo(new Grammar(4, 4));
        assertThat(question.budgetCents()).isEmpty();
        assertThat(note(question, "Tilt of the panels from flat"))
                .isEqualTo(new MarginNote(
                        "Tilt of the panels from flat",
                        "61 deg",
                        Basis.COMMON_PRACTICE,
                        "default of the program: latitude and 15 deg more, for winter"));
        assertThat(note(question, "Charge when the grid fails"))
                .isEqualTo(new MarginNote("Charge when the grid fails", "85 %", Basis.GUESS, "default of the program"));
        assertThat(question.notes())
                .extracting(MarginNote::name)
                .contains(
                        "Panels are out after",
                        "Way the panels face, from north through east",
                        "Light lost to dirt",
                        "Light thrown back by the ground",
                        "Snow on the panels",
                        "Scanner: room",
                        "Budget",
                        "Most panels looked at");
    }

    @Test
    void everyTypedFigureIsNotedWithItsLine() {
        assertThat(Sample.read(Sample.PLAN).notes())
                .contains(
                        new MarginNote("Outage lasts", "72 h", Basis.YOURS, "plan.yaml:7"),
                        new MarginNote("Scanner: draws", "3 W", Basis.YOURS, "plan.yaml:15"),
                        new MarginNote("Budget", "900.00 USD", Basis.YOURS, "plan.yaml:26"));
    }

    @Test
    void theBasisOfADrawIsWhereItIsFrom() {
        for (String[] pair : new String[][] {
            {"meter", Basis.MEASURED.name()}, {"label", Basis.MAKER.name()}, {"guess", Basis.GUESS.name()}
        }) {
            Question question = Sample.read(Sample.PLAN.replace("draws: 3 W", "draws: 3 W\n    from: " + pair[0]));

            assertThat(note(question, "Scanner: draws").basis().name()).isEqualTo(pair[1]);
        }
    }

    @Test
    void figuresMayBeInTheUnitsPeopleUse() {
        String plan = Sample.PLAN
                .replace("draws: 3 W", "draws: 0.003 kW")
                .replace("lasts: 72 h", "lasts: 3 d")
                .replace("-14 degC", "6.8 \u00B0F");
        Question question = Sample.read(plan);

        assertThat(question.loads().get(0).runningW()).isCloseTo(3, offset(1e-12));
        assertThat(question.outage().hours()).isEqualTo(72);
        assertThat(question.lowestDegC()).isCloseTo(-14, offset(1e-9));
    }

    /** YAML readers are known to make a truth of yes, a number of 08:00 and a date of 2026-01-02. */
    @Test
    void wordsAreReadAsTheyStand() {
        String plan = Sample.PLAN
                .replace("plan: Test house", "plan: 2026-01-02")
                .replace("name: Scanner", "name: no")
                .replace("need: always on", "need: {hours: 3 h, between: 8:00, and: 24:00}")
                .replace("essential: yes", "essential: 'yes'");
        Question question = Sample.read(plan);

        assertThat(question.title()).isEqualTo("2026-01-02");
        assertThat(question.loads().get(0).name()).isEqualTo("no");
        assertThat(question.loads().get(0).need()).isEqualTo(new Need.HoursInWindow(3, new DayWindow(8, 24)));
    }

    @Test
    void aStretchMayRunPastMidnight() {
        Question question = Sample.read(Sample.PLAN.replace("[17:00-23:00]", "[22:30 - 06:00, 12:00\u201313:00]"));

        assertThat(((TimedLoad) question.loads().get(1)).windows())
                .containsExactly(new DayWindow(22.5, 6), new DayWindow(12, 13));
    }

    @Test
    void aNeedMayFillItsStretch() {
        for (int minute = 0; minute < 60; minute++) {
            String need = String.format(Locale.ROOT, "{hours: 12 h, between: 08:%02d, and: 20:%02d}", minute, minute);
            Question question = Sample.read(Sample.PLAN.replace("always on", need));

            assertThat(question.loads().get(0).need()).isInstanceOf(Need.HoursInWindow.class);
        }
    }

    /** Hours in fractions are not exact; that must not make neighbours of strangers. */
    @Test
    void stretchesMayTouch() {
        Random random = new Random(1);
        for (int round = 0; round < 200; round++) {
            int[] minutes = random.ints(0, 1440).distinct().limit(8).sorted().toArray();
            List<String> stretches = new ArrayList<>();
            for (int i = 0; i < minutes.length; i++) {
                int to = minutes[(i + 1) % minutes.length];
                stretches.add(String.format(
                        Locale.ROOT, "%02d:%02d-%02d:%02d", minutes[i] / 60, minutes[i] % 60, to / 60, to % 60));
            }
            Question question = Sample.read(Sample.PLAN.replace("17:00-23:00", String.join(", ", stretches)));

            assertThat(((TimedLoad) question.loads().get(1)).windows()).hasSize(8);
        }
    }

    @Test
    void monthsMayBeAllOrOneOrWrittenOut() {
        assertThat(months("all")).hasSize(12);
        assertThat(months("December")).containsExactly(11);
        assertThat(months("[Dec, january]")).containsExactly(0, 11);
    }

    private static List<Integer> months(String typed) {
        return Sample.read(Sample.PLAN.replace("[nov, dec, jan]", typed))
                .outage()
                .months();
    }

    @Test
    void aPlaceNearAStationKeepsItsOwnLatitude() {
        Question question = Sample.read(Sample.PLAN.replace(
                STATION, "near: {latitude: 46 deg N, longitude: 123.9 deg W, height: 33 ft}\n  name: Net-loft"));

        assertThat(question.place().name()).isEqualTo("Net-loft");
        assertThat(question.place().latDeg()).isEqualTo(46);
        assertThat(question.place().lonDeg()).isEqualTo(-123.9);
        assertThat(question.place().elevM()).isCloseTo(10.0584, offset(1e-9));
        assertThat(question.place().zoneH()).isEqualTo(-8);
        assertThat(note(question, "Place").value())
                .isEqualTo("46.00 N 123.90 W, climate of Astoria Regional Airport OR, 17 km away");
        assertThat(question.cautions()).isEmpty();
    }

    private static final String FIGURES = """
            figures:
                latitude: 57.6 deg N
                longitude: 7.3 deg W
                peak sun hours: [0.4, 1.1, 2.2, 3.9, 5.2, 5.2, 4.7, 3.8, 2.6, 1.3, 0.6, 0.3]
                mean temperature: [41, 41, 43, 45, 50, 54, 57, 57, 54, 50, 45, 43 degF]
                source: invented\
            """;

    @Test
    void aPlaceMayBeTypedInFigures() {
        Question question =
                Sample.read(Sample.PLAN.replace(STATION, FIGURES).replace("  coldest on record: -14 degC\n", ""));
        WeatherSource.Generated weather = (WeatherSource.Generated) question.weather();

        assertThat(question.place()).isEqualTo(new Place("57.60 N 7.30 W", 57.6, -7.3, 0, 0));
        assertThat(weather.climate().ghiKwhM2Day().at(11)).isEqualTo(0.3);
        assertThat(weather.climate().meanDegC().at(0)).isCloseTo(5, offset(1e-9));
        assertThat(weather.climate().source())
                .isEqualTo("twelve typed monthly figures (invented), which is rougher than a station's record");
        assertThat(note(question, "Sun, month by month").value())
                .isEqualTo("0.4, 1.1, 2.2, 3.9, 5.2, 5.2, 4.7, 3.8, 2.6, 1.3, 0.6, 0.3");
        assertThat(question.lowestDegC()).isNaN();
        assertThat(question.cautions())
                .containsExactly(
                        "plan.yaml:2 place.coldest on record: nothing tells how cold it gets; the rules take a bad"
                                + " case. Add \"coldest on record:\".");
    }

    @Test
    void figuresAreReadWithCare() {
        assertThat(figures("3.8, 2.6, 1.3, 0.6, 0.3]", "3.8]"))
                .containsExactly(
                        "plan.yaml:6 place.figures.peak sun hours: found 8 figures, expected twelve peak sun hours,"
                                + " January first.");
        assertThat(figures("43 degF]", "43]"))
                .containsExactly(
                        "plan.yaml:7 place.figures.mean temperature[12]: found \"43\", expected twelve mean temperatures,"
                                + " January first, the last with the unit of all. Write 43 degC, if that is the unit.");
        assertThat(figures("41, 41", "41, 441"))
                .containsExactly(
                        "plan.yaml:7 place.figures.mean temperature[2]: found \"441\", expected a temperature from -60"
                                + " degC to 50 degC.");
        assertThat(figures("0.3]", "2.6]"))
                .singleElement()
                .asString()
                .startsWith("plan.yaml:6 place.figures.peak sun hours: found dec: clearness ")
                .endsWith("Sun is for the horizontal, January first; check latitude and order.");
        assertThat(figures("    source: invented", ""))
                .containsExactly(
                        "plan.yaml:3 place.figures: found no \"source:\", expected where the figures are from, in a few"
                                + " words.");
    }

    private static List<String> figures(String from, String to) {
        return Sample.problemsIn(Sample.PLAN.replace(STATION, FIGURES.replace(from, to)));
    }

    @Test
    void aFarOrHighStationIsACaution() {
        Question question = Sample.read(
                Sample.PLAN.replace(STATION, "near: {latitude: 50.5 deg, longitude: -123 deg, height: 1500 m}"));

        assertThat(question.cautions())
                .containsExactly(
                        "plan.yaml:3 place.near: The nearest station, Bellingham Intl Airport WA, is 192 km away: coast, hills"
                                + " or a lake between may make another climate.",
                        "plan.yaml:3 place.near: The place lies 1455 m above the station Bellingham Intl Airport WA: expect it"
                                + " about 9 K colder, and fog and snow to differ.");
    }

    @Test
    void withoutTheColdestOnRecordTheDataLessTwelveKelvinStandIn() {
        Question question = Sample.read(Sample.PLAN.replace("  coldest on record: -14 degC\n", ""));

        // the table's lowest hour at Astoria is -4.4 degC
        assertThat(question.lowestDegC()).isCloseTo(-16.4, offset(1e-9));
        assertThat(question.cautions())
                .containsExactly(
                        "plan.yaml:2 place.coldest on record: coldest taken as -16.4 degC: the coldest hour of the"
                                + " weather data, -4.4 degC, less 12 K, because such data are typical and not extreme. A figure of"
                                + " your own (\"coldest on record:\") is better.");
    }

    @Test
    void theUnlikelyIsTakenWithACaution() {
        String plan = Sample.PLAN
                .replace("draws: 8 W", "draws: 5 kW")
                .replace("tilt: 60 deg", "tilt: 60 deg\n  facing: 0 deg\n  out after: 80 h\n  dirt: 40 %");

        assertThat(Sample.read(plan).cautions())
                .containsExactly(
                        "plan.yaml:12 panels.out after: 80 h is taken, but is unlikely here (most lie within 0 h to 24 h).",
                        "plan.yaml:12 panels.out after: the panels are out only after the outage is over; they never help.",
                        "plan.yaml:11 panels.facing: panels that face away from the equator see little sun; 180 deg is south,"
                                + " 0 deg is north.",
                        "plan.yaml:13 panels.dirt: 40 % is taken, but is unlikely here (most lie within 0 % to 20 %).",
                        "plan.yaml:24 loads[2].draws: 5 kW is taken, but is unlikely here (most lie within 0.1 W to 3000 W).");
    }

    @Test
    void aPlugThatNoPartHasIsACaution() {
        assertThat(Sample.read(Sample.PLAN.replace("car socket", "car soket")).cautions())
                .containsExactly(
                        "Scanner: no part has an outlet for its plug, \"car soket\". Was \"car socket\" meant?");
    }

    @Test
    void linesMayEndTheWayOtherMachinesEndThem() {
        String plan = Sample.PLAN.replace("\n", "\r\n");

        assertThat(Sample.read("\uFEFF" + plan, Sample.PARTS.replace("\n", "\r\n")))
                .isEqualTo(Sample.read(Sample.PLAN));
    }

    @Test
    void aPlanOnDiskFindsItsPartsBesideIt(@TempDir Path folder) throws IOException {
        Files.writeString(folder.resolve("plan.yaml"), Sample.PLAN);
        Files.writeString(folder.resolve("parts.csv"), Sample.PARTS);

        assertThat(PlanFile.read(folder.resolve("plan.yaml"), ExampleTest.STATIONS))
                .isEqualTo(Sample.read(Sample.PLAN));
    }

    @Test
    void aPlanThatIsNotThereOrNotAFile(@TempDir Path folder) {
        Path none = folder.resolve("none.yaml");

        assertThat(Sample.problemsOf(() -> PlanFile.read(none, ExampleTest.STATIONS)))
                .containsExactly(
                        none + ": found no file \"none.yaml\", expected a plan. Check the name and the folder.");
        assertThat(Sample.problemsOf(() -> PlanFile.read(folder, ExampleTest.STATIONS)))
                .containsExactly(folder + ": found \"" + folder.getFileName()
                        + "\", which is not a plain file, expected a plan. Check the name and the folder.");
    }

    @Test
    void aPlanThatIsNotUtf8(@TempDir Path folder) throws IOException {
        Path file = folder.resolve("plan.yaml");
        Files.write(file, "plan: Caf\u00E9".getBytes(StandardCharsets.ISO_8859_1));

        assertThat(Sample.problemsOf(() -> PlanFile.read(file, ExampleTest.STATIONS)))
                .containsExactly(
                        "plan.yaml: found text that is not UTF-8, expected a plan as plain text. Save it again,"
                                + " encoded UTF-8.");
    }

    @Test
    void aTenMegabytePlanIsRefusedUnread(@TempDir Path folder) throws IOException {
        Path file = folder.resolve("plan.yaml");
        byte[] bytes = new byte[10_000_000];
        Arrays.fill(bytes, (byte) '#');
        Files.write(file, bytes);

        assertThatThrownBy(() -> PlanFile.read(file, ExampleTest.STATIONS))
                .isInstanceOf(InputProblems.class)
                .hasMessage(
                        "1 problem(s), first: plan.yaml: found a file of more than 1 MB, expected a plan of at most 1 MB.");
    }

    private static MarginNote note(Question question, String name) {
        return question.notes().stream()
                .filter(note -> note.name().equals(name))
                .findFirst()
                .orElseThrow();
    }
}
