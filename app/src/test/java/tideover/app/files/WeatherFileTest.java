package tideover.app.files;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.offset;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.function.IntToDoubleFunction;
import java.util.stream.IntStream;
import java.util.zip.GZIPOutputStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import tideover.engine.answer.Question;
import tideover.engine.quantity.ModelYear;
import tideover.engine.quantity.Series;
import tideover.engine.site.Place;
import tideover.engine.site.Weather;
import tideover.engine.site.WeatherSource;
import tideover.engine.sun.DiffuseFraction;
import tideover.engine.sun.SunYear;

/** Weather files made up here hour by hour: sound ones of both forms, and every way they may be unsound. */
class WeatherFileTest {
    private static final SunYear SUN = SunYear.at(40, -75, -5);
    private static final String PLACE_LINES =
            "# place: Made-up hill\n# latitude_deg: 40\n# longitude_deg: -75\n# elevation_m: 120\n# zone_h: -5\n# any remark\n";
    private static final String HEADER = "time,ghi_w_m2,air_c,dhi_w_m2";

    @TempDir
    private Path folder;

    /** Six tenths of the sun outside the air, to a tenth of a watt. */
    private static double ghiWm2(int hour) {
        return Math.rint(6 * SUN.horizontalWm2(hour)) / 10;
    }

    private static double diffuseWm2(int hour) {
        return Math.rint(2.5 * ghiWm2(hour)) / 10;
    }

    /** A day's swing about ten degrees, to a tenth. */
    private static double airDegC(int hour) {
        return Math.rint(10 * (10 + 5 * StrictMath.sin((hour % 24 - 9) * Math.PI / 12))) / 10;
    }

    /** The rows of calendar years, 29 February among them. */
    private static List<String> plainRows(int firstYear, int lastYear) {
        List<String> rows = new ArrayList<>();
        LocalDateTime time = LocalDateTime.of(firstYear, 1, 1, 0, 0);
        while (time.getYear() <= lastYear) {
            int day = time.getDayOfYear() - (time.toLocalDate().isLeapYear() && time.getMonthValue() > 2 ? 2 : 1);
            int hour = Math.min(day, ModelYear.DAYS - 1) * 24 + time.getHour();
            rows.add(String.format(
                    Locale.ROOT, "%s,%.1f,%.1f,%.1f", time, ghiWm2(hour), airDegC(hour), diffuseWm2(hour)));
            time = time.plusHours(1);
        }
        return rows;
    }

    private static String plain(List<String> rows) {
        return PLACE_LINES + HEADER + "\n" + String.join("\n", rows) + "\n";
    }

    /** A calendar year made up here. */
    static String plainYear() {
        return plain(plainRows(2019, 2019));
    }

    /** A typical year made up here. */
    static String tmy3() {
        StringBuilder text = new StringBuilder("999999,\"MADE-UP HILL\",PA,-5.0,40.000,-75.000,120\r\n");
        text.append("Date (MM/DD/YYYY),Time (HH:MM),ETR (W/m^2),GHI (W/m^2),DHI (W/m^2),Dry-bulb (C)\r\n");
        for (int hour = 0; hour < ModelYear.HOURS; hour++) {
            int day = hour / 24;
            int month = ModelYear.monthOfDay(day);
            // the months of a typical year come from different years; the stamp is the hour's end
            text.append(String.format(
                    Locale.ROOT,
                    "%02d/%02d/%d,%02d:00,%.0f,%.1f,%.1f,%.1f\r\n",
                    month + 1,
                    day - ModelYear.firstDay(month) + 1,
                    1990 + month * 5 % 7,
                    hour % 24 + 1,
                    SUN.horizontalWm2(hour),
                    ghiWm2(hour),
                    diffuseWm2(hour),
                    airDegC(hour)));
        }
        return text.toString();
    }

    private WeatherFile.Content read(String text) throws IOException {
        Path file = folder.resolve("weather.csv");
        Files.writeString(file, text);
        return WeatherFile.read(file);
    }

    private List<String> problems(String text) {
        return Sample.problemsOf(() -> {
            try {
                read(text);
            } catch (IOException e) {
                throw new IllegalStateException(e);
            }
        });
    }

    private static void assertIsTheMadeUpYear(Weather weather, int year) {
        assertThat(partOf(weather.ghiWm2(), year)).isEqualTo(hours(WeatherFileTest::ghiWm2));
        assertThat(partOf(weather.airDegC(), year)).isEqualTo(hours(WeatherFileTest::airDegC));
        assertThat(partOf(weather.diffuseWm2(), year)).isEqualTo(hours(WeatherFileTest::diffuseWm2));
    }

    private static double[] partOf(Series series, int year) {
        return Arrays.copyOfRange(series.toArray(), year * ModelYear.HOURS, (year + 1) * ModelYear.HOURS);
    }

    private static double[] hours(IntToDoubleFunction figure) {
        return IntStream.range(0, ModelYear.HOURS).mapToDouble(figure).toArray();
    }

    @Test
    void aTypicalYearStandsAtTheStartOfItsHours() throws IOException {
        WeatherFile.Content content = read(tmy3());

        assertThat(content.place()).isEqualTo(new Place("MADE-UP HILL PA", 40, -75, 120, -5));
        assertThat(content.weather().years()).isEqualTo(1);
        assertIsTheMadeUpYear(content.weather(), 0);
        assertThat(content.weather().origin()).isEqualTo("read from weather.csv (TMY3 form, MADE-UP HILL PA)");
        assertThat(content.lowestDegC()).isEqualTo(5);
        assertThat(content.cautions()).isEmpty();
    }

    @Test
    void aGzippedFileIsKnownByItsBytesWhateverItsName() throws IOException {
        Path file = folder.resolve("weather.csv");
        try (OutputStream out = new GZIPOutputStream(Files.newOutputStream(file))) {
            out.write(tmy3().getBytes(StandardCharsets.US_ASCII));
        }

        assertThat(WeatherFile.read(file)).isEqualTo(read(tmy3()));
    }

    @Test
    void calendarYearsAreReadOneAfterTheOtherWithoutLeapDays() throws IOException {
        WeatherFile.Content content = read(plain(plainRows(2019, 2021)));

        assertThat(content.place()).isEqualTo(new Place("Made-up hill", 40, -75, 120, -5));
        assertThat(content.weather().years()).isEqualTo(3);
        for (int year = 0; year < 3; year++) {
            assertIsTheMadeUpYear(content.weather(), year);
        }
        assertThat(content.cautions())
                .containsExactly("weather.csv: 24 h of 29 February are left out; every year is taken as 365 days.");
    }

    @Test
    void columnsMayStandInAnyOrderBesideOthers() throws IOException {
        List<String> rows = plainRows(2019, 2019).stream()
                .map(row -> {
                    String[] cells = row.split(",");
                    return "x," + cells[2] + "," + cells[0].replace('T', ' ') + ":00," + cells[3] + "," + cells[1];
                })
                .toList();

        WeatherFile.Content content =
                read(PLACE_LINES + "station,air_c,time,dhi_w_m2,ghi_w_m2\n" + String.join("\r\n", rows));

        assertIsTheMadeUpYear(content.weather(), 0);
    }

    @Test
    void withoutADiffuseColumnItIsWorkedOut() throws IOException {
        List<String> rows = plainRows(2019, 2019).stream()
                .map(row -> row.substring(0, row.lastIndexOf(',')))
                .toList();
        Weather weather = read(PLACE_LINES + "time,ghi_w_m2,air_c\n" + String.join("\n", rows))
                .weather();

        assertThat(weather.origin()).endsWith("diffuse part worked out by Erbs, Klein & Duffie 1982)");
        int noon = 24 * 180 + 12;
        assertThat(weather.diffuseWm2().at(noon))
                .isEqualTo(ghiWm2(noon) * DiffuseFraction.hourly(ghiWm2(noon) / SUN.horizontalWm2(noon)));
        assertThat(weather.diffuseWm2().at(noon)).isBetween(0.2 * ghiWm2(noon), 0.8 * ghiWm2(noon));
    }

    @Test
    void shortGapsAreBridgedAndCounted() throws IOException {
        List<String> rows = new ArrayList<>(plainRows(2019, 2019));
        rows.set(5000, rows.get(5000).replaceFirst(",[^,]*,", ",,")); // one hour of sun
        for (int hour = 300; hour < 303; hour++) {
            rows.set(hour, rows.get(hour).replaceFirst(",([^,]*),[^,]*,", ",$1,-9900,")); // three of temperature
        }
        rows.subList(8758, 8760).clear(); // the last two hours of the year are not there at all
        WeatherFile.Content content = read(plain(rows));

        assertThat(content.cautions())
                .containsExactly(
                        "weather.csv: 3 h of sun were missing in 2 gaps (longest 2 h, first at 28 jul 2019 08:00) and are filled"
                                + " by straight lines.",
                        "weather.csv: 5 h of temperature were missing in 2 gaps (longest 3 h, first at 13 jan 2019 12:00) and are"
                                + " filled by straight lines.");
        Weather weather = content.weather();
        assertThat(weather.ghiWm2().at(5000)).isCloseTo((ghiWm2(4999) + ghiWm2(5001)) / 2, offset(1e-9));
        assertThat(weather.airDegC().at(301)).isCloseTo((airDegC(299) + airDegC(303)) / 2, offset(1e-9));
        // the year after the last is the first again
        assertThat(weather.airDegC().at(8758))
                .isCloseTo(airDegC(8757) + (airDegC(0) - airDegC(8757)) / 3, offset(1e-9));
    }

    @Test
    void aLongGapIsNamedByItsFirstAndLastHour() {
        List<String> rows = new ArrayList<>(plainRows(2019, 2019));
        rows.subList(1500, 1504).clear();

        assertThat(problems(plain(rows)))
                .containsExactly(
                        "weather.csv: found 4 hours without sun, from 4 mar 2019 12:00 to 4 mar 2019 15:00, expected gaps of at"
                                + " most 3 hours. Fill it from another source, or leave the year out.",
                        "weather.csv: found 4 hours without temperature, from 4 mar 2019 12:00 to 4 mar 2019 15:00, expected"
                                + " gaps of at most 3 hours. Fill it from another source, or leave the year out.");
    }

    @Test
    void partYearsAreRefusedWithWhatWasFound() {
        List<String> rows = plainRows(2019, 2021);

        assertThat(problems(plain(rows.subList(24 * 151, rows.size() - 24 * 31))))
                .containsExactly(
                        "weather.csv: found year 2019 of 5136 hours, from 1 jun 2019 00:00 to 31 dec 2019 23:00, expected whole"
                                + " calendar years of 8760 hours. Leave part years out of the file.",
                        "weather.csv: found year 2021 of 8016 hours, from 1 jan 2021 00:00 to 30 nov 2021 23:00, expected whole"
                                + " calendar years of 8760 hours. Leave part years out of the file.");
    }

    @Test
    void aTypicalYearCutShort() {
        String text = tmy3();

        assertThat(problems(text.substring(0, text.indexOf("07/01/"))))
                .containsExactly(
                        "weather.csv: found a year of 4344 hours, from 1 jan 00:00 to 30 jun 23:00, expected whole"
                                + " calendar years of 8760 hours. The file may be cut short.");
    }

    @Test
    void absurdAndUnreadableReadingsAreToldWithTheirLine() {
        List<String> rows = new ArrayList<>(plainRows(2019, 2019));
        rows.set(0, "2019-01-01T00:00,1600,5,0");
        rows.set(1, "2019-01-01T01:00,0,61,0");
        rows.set(2, "2019-01-01T02:00,abc,5,0");
        rows.set(3, "2019-01-01T03:00,NaN,1e1,0");
        rows.set(4, "2019-01-01T04:00,-11,-81,0");
        rows.set(5, "2019-01-01T05:00,0,5");
        rows.set(6, "2019-01-01T06:00,0,5,0,9");

        assertThat(problems(plain(rows)))
                .containsExactly(
                        "weather.csv:8: found \"1600\", expected global irradiance from -10 W/m2 to 1500 W/m2. Leave the cell"
                                + " empty where a reading is bad.",
                        "weather.csv:9: found \"61\", expected air temperature from -80 degC to 60 degC. Leave the cell empty"
                                + " where a reading is bad.",
                        "weather.csv:10: found \"abc\", expected global irradiance, a number in W/m2.",
                        "weather.csv:11: found \"NaN\", expected global irradiance, a number in W/m2.",
                        "weather.csv:11: found \"1e1\", expected air temperature, a number in degC.",
                        "weather.csv:12: found \"-11\", expected global irradiance from -10 W/m2 to 1500 W/m2. Leave the cell"
                                + " empty where a reading is bad.",
                        "weather.csv:12: found \"-81\", expected air temperature from -80 degC to 60 degC. Leave the cell empty"
                                + " where a reading is bad.",
                        "weather.csv:13: found a row of 3 cells, expected 4 cells, as the header has.",
                        "weather.csv:14: found a row of 5 cells, expected 4 cells, as the header has.");
    }

    @Test
    void timesThatAreNone() {
        List<String> rows = new ArrayList<>(plainRows(2019, 2019));
        rows.set(0, "2019-01-01T00:30,0,5,0");
        rows.set(1, "2019-01-01T01:00Z,0,5,0");
        rows.set(2, "1 January,0,5,0");
        rows.set(3, "2019-02-30T03:00,0,5,0");
        rows.set(4, "2019-01-01T24:00,0,5,0");

        assertThat(problems(plain(rows)))
                .containsExactly(
                        "weather.csv:8: found \"2019-01-01T00:30\", expected the start of an hour, such as 2019-12-31T23:00."
                                + " Hourly means, stamped with the start of their hour.",
                        "weather.csv:9: found \"2019-01-01T01:00Z\", expected the start of an hour, such as 2019-12-31T23:00."
                                + " Local standard time all through, with no zone written behind it.",
                        "weather.csv:10: found \"1 January\", expected the start of an hour, such as 2019-12-31T23:00.",
                        "weather.csv:11: found day 30 of month 2, expected each hour once, in order, on a day of the calendar."
                                + " Local standard time all year has no hour missing in spring nor doubled in autumn.",
                        "weather.csv:12: found \"2019-01-01T24:00\", expected the start of an hour, such as 2019-12-31T23:00."
                                + " Hourly means, stamped with the start of their hour.");
    }

    @Test
    void anHourTwiceOrOutOfOrder() {
        List<String> rows = new ArrayList<>(plainRows(2019, 2019));
        rows.add(11, rows.get(10));
        rows.add(rows.remove(100));

        assertThat(problems(plain(rows)))
                .containsExactly(
                        "weather.csv:19: found 1 jan 2019 10:00 a second time, first in line 18, expected each hour once, in"
                                + " order, on a day of the calendar. Local standard time all year has no hour missing in spring"
                                + " nor doubled in autumn.",
                        "weather.csv:8768: found 5 jan 2019 03:00, earlier than the row before, expected each hour once, in"
                                + " order, on a day of the calendar. Local standard time all year has no hour missing in spring"
                                + " nor doubled in autumn.");
    }

    @Test
    void smallRepairsAreCounted() throws IOException {
        List<String> rows = new ArrayList<>(plainRows(2019, 2019));
        rows.set(0, "2019-01-01T00:00,-3,5,-1");
        rows.set(12, "2019-01-01T12:00,100,5,130");
        WeatherFile.Content content = read(plain(rows));

        assertThat(content.weather().ghiWm2().at(0)).isZero();
        assertThat(content.weather().diffuseWm2().at(0)).isZero();
        assertThat(content.weather().diffuseWm2().at(12)).isEqualTo(100);
        assertThat(content.cautions())
                .containsExactly(
                        "weather.csv: 1 h of sun slightly below zero are taken as 0.",
                        "weather.csv: 1 h have more diffuse than global sun; the diffuse part is cut to the whole.");
    }

    @Test
    void aFileFullOfFaultsIsNotToldInFull() {
        List<String> rows =
                plainRows(2019, 2019).stream().map(row -> row.replace(".", ",")).toList();

        assertThat(problems(plain(rows)))
                .hasSize(26)
                .last()
                .isEqualTo(
                        "weather.csv: found 8735 further problems, expected the first 25 mended. Mend those, then read again.");
    }

    /** A clock one hour off is said, one that keeps universal time is refused. */
    @Test
    void theSunTellsAWrongClock() throws IOException {
        String sound = plain(plainRows(2019, 2019));

        assertThat(read(sound.replace("zone_h: -5", "zone_h: -6")).cautions())
                .containsExactly(
                        "weather.csv: it has sun that stands 1.0 h later than at this place; panels that face east or"
                                + " west are misjudged.");
        assertThat(problems(sound.replace("zone_h: -5", "zone_h: 0")))
                .containsExactly(
                        "weather.csv: found sun that stands 5.0 h earlier than at this place, expected local standard"
                                + " time of the place. Check longitude, zone and the clock of the file.");
    }

    @Test
    void noSunAtAll() {
        List<String> rows = plainRows(2019, 2019).stream()
                .map(row -> row.replaceFirst(",[^,]*,", ",0,"))
                .toList();

        assertThat(problems(plain(rows)))
                .containsExactly("weather.csv: found no sun in any hour, expected irradiance in W/m2.");
    }

    @Test
    void aFileThatDoesNotSayWhereItWasTaken() {
        assertThat(problems(HEADER + "\n" + String.join("\n", plainRows(2019, 2019))))
                .containsExactly(
                        "weather.csv: found no latitude for \"weather.csv\", expected latitude and longitude, in the"
                                + " file's first lines or in the plan. Add # latitude_deg: and # longitude_deg: to the file, or"
                                + " latitude: and longitude: beside its name.");
    }

    @Test
    void placeLinesAreReadWithCare() {
        String sound = plain(plainRows(2019, 2019));

        assertThat(problems(sound.replace("latitude_deg: 40", "latitude_deg: 140")))
                .containsExactly(
                        "weather.csv:2: found \"140\", expected latitude_deg, a number from -90 deg to 90 deg.");
        assertThat(problems(sound.replace("longitude_deg", "longitude")))
                .contains("weather.csv:3: found \"longitude\", expected \"longitude_deg\". Write # longitude_deg:");
    }

    @Test
    void filesThatAreSomethingElse() {
        String expected = ", expected a TMY3 file, or columns time, ghi_w_m2, air_c and perhaps dhi_w_m2.";

        assertThat(problems("")).containsExactly("weather.csv: found an empty file" + expected);
        assertThat(problems("hello\nworld\n")).containsExactly("weather.csv:1: found \"hello\"" + expected);
        assertThat(problems("a,b\n")).containsExactly("weather.csv: found no header" + expected);
        assertThat(problems("time,air_c\n")).containsExactly("weather.csv:1: found no column \"ghi_w_m2\"" + expected);
        assertThat(problems("time,ghi_w_m2,air_f\n2019-01-01T00:00,0,50\n"))
                .containsExactly(
                        "weather.csv:1: found the column \"air_f\", expected \"air_c\". Sun is in W/m2, air in degC.");
        assertThat(problems(PLACE_LINES + HEADER + "\n"))
                .containsExactly("weather.csv: found no hour of weather, expected at least one whole year.");
    }

    @Test
    void aDamagedGzipFile() throws IOException {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        try (OutputStream out = new GZIPOutputStream(bytes)) {
            out.write(tmy3().getBytes(StandardCharsets.US_ASCII));
        }
        byte[] cut = Arrays.copyOf(bytes.toByteArray(), bytes.size() / 2);
        byte[] headOnly = Arrays.copyOf(bytes.toByteArray(), 5);
        byte[] bent = bytes.toByteArray();
        Arrays.fill(bent, bent.length / 2, bent.length / 2 + 20, (byte) 0x55);

        for (byte[] bad : List.of(cut, headOnly, bent)) {
            Path file = folder.resolve("weather.csv.gz");
            Files.write(file, bad);
            assertThat(Sample.problemsOf(() -> WeatherFile.read(file)))
                    .containsExactly(
                            "weather.csv.gz: found a damaged or cut-short file, expected an hourly weather file.");
        }
    }

    /** Two hundred megabytes and a bit of long remarks, packed into a fifth of one. */
    @Test
    void aFileThatUnpacksWithoutEnd() throws IOException {
        Path file = folder.resolve("weather.csv.gz");
        try (OutputStream out = new GZIPOutputStream(Files.newOutputStream(file))) {
            byte[] lines = ("#" + "a".repeat(99_998) + "\n").repeat(10).getBytes(StandardCharsets.US_ASCII);
            for (int i = 0; i < 65; i++) {
                out.write(lines);
            }
        }

        assertThat(Sample.problemsOf(() -> WeatherFile.read(file)))
                .containsExactly("weather.csv.gz: found more than 64 MB unpacked, expected an hourly weather file.");
    }

    /** The same in one cell: the table reader gives up before the bound is reached. */
    @Test
    void oneEndlessCell() throws IOException {
        Path file = folder.resolve("weather.csv.gz");
        try (OutputStream out = new GZIPOutputStream(Files.newOutputStream(file))) {
            byte[] letters = new byte[1_000_000];
            Arrays.fill(letters, (byte) 'a');
            for (int i = 0; i < 50; i++) {
                out.write(letters);
            }
        }

        assertThat(Sample.problemsOf(() -> WeatherFile.read(file)))
                .containsExactly(
                        "weather.csv.gz: found cells that cannot be told apart by their commas, expected an hourly weather file.");
    }

    @Test
    void aPlanMayNameAWeatherFile() throws IOException {
        Files.writeString(folder.resolve("weather.csv"), plain(plainRows(2019, 2019)));
        Files.writeString(folder.resolve("parts.csv"), Sample.PARTS);
        Files.writeString(
                folder.resolve("plan.yaml"),
                Sample.PLAN
                        .replace("station: Astoria Regional Airport OR", "hourly file: weather.csv\n  name: Hill")
                        .replace("  coldest on record: -14 degC\n", ""));
        Question question = PlanFile.read(folder.resolve("plan.yaml"), ExampleTest.STATIONS);

        assertThat(question.place()).isEqualTo(new Place("Hill", 40, -75, 120, -5));
        assertThat(question.weather()).isInstanceOf(WeatherSource.Imported.class);
        assertThat(question.lowestDegC()).isCloseTo(5 - 12, offset(1e-9));
        assertThat(question.snow()).isFalse();
    }

    @Test
    void thePlanMaySayWhereTheFileWasTaken() throws IOException {
        Files.writeString(folder.resolve("weather.csv"), HEADER + "\n" + String.join("\n", plainRows(2019, 2019)));
        Files.writeString(folder.resolve("parts.csv"), Sample.PARTS);
        Files.writeString(
                folder.resolve("plan.yaml"),
                Sample.PLAN.replace(
                        "station: Astoria Regional Airport OR",
                        "hourly file: weather.csv\n  latitude: 40 deg N\n  longitude: 75 deg W\n  height: 400 ft"));
        Question question = PlanFile.read(folder.resolve("plan.yaml"), ExampleTest.STATIONS);

        assertThat(question.place().name()).isEqualTo("40.00 N 75.00 W");
        assertThat(question.place().elevM()).isCloseTo(121.92, offset(1e-9));
        assertThat(question.place().zoneH()).isEqualTo(-5);
        assertThat(question.cautions())
                .containsExactly(
                        "plan.yaml:3 place.hourly file: no time zone is given for weather.csv; -5 h from its longitude"
                                + " is taken.");
    }

    @Test
    void whatIsWrongInPlanPartsAndWeatherIsToldTogether() throws IOException {
        Files.writeString(folder.resolve("weather.csv"), "time,air_c\n");
        Files.writeString(folder.resolve("parts.csv"), Sample.PARTS.replace("199.50", "x"));
        Files.writeString(
                folder.resolve("plan.yaml"),
                Sample.PLAN
                        .replace("station: Astoria Regional Airport OR", "hourly file: weather.csv")
                        .replace("draws: 3 W", "draws: 3"));

        assertThat(Sample.problemsOf(() -> PlanFile.read(folder.resolve("plan.yaml"), ExampleTest.STATIONS)))
                .extracting(problem -> problem.substring(0, problem.indexOf(':')))
                .containsExactly("weather.csv", "plan.yaml", "parts.csv");
    }
}
