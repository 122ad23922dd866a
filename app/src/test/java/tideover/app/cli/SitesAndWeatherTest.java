package tideover.app.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import tideover.engine.quantity.ModelYear;
import tideover.engine.sun.SunYear;

/** Looking up places, and the weather of one as a table that anybody can check. */
class SitesAndWeatherTest {
    private static final String ASTORIA = "Astoria Regional Airport OR";

    @TempDir
    private Path folder;

    @ParameterizedTest
    @ValueSource(strings = {"astoria", "ASTORIA or", "regional astoria", "727910"})
    void aStationIsFoundByWordsOrNumber(String text) {
        Ran ran = Ran.of((Object[]) ("sites " + text).split(" "));

        assertThat(ran.status()).isZero();
        assertThat(ran.out()).contains("727910  " + ASTORIA).contains("1 of ");
    }

    @Test
    void withoutWordsAllAreListed() {
        Ran ran = Ran.of("sites", "--format", "json");

        assertThat(ran.json().path("stations").size()).isEqualTo(1019);
    }

    @Test
    void thePlaceNobodyKnowsGetsSuggestions() {
        Ran ran = Ran.of("sites", "Asotria");

        assertThat(ran.status()).isEqualTo(2);
        assertThat(ran.out()).isEmpty();
        assertThat(ran.err()).contains("TEXT: found 'Asotria'", "Nearest by spelling: " + ASTORIA);
        Ran weather = Ran.of("weather", "Asotria");
        assertThat(weather.status()).isEqualTo(2);
        assertThat(weather.out()).isEmpty();
        assertThat(weather.err()).contains("SITE: found 'Asotria'", "Nearest by spelling: " + ASTORIA);
    }

    @Test
    void aPlaceBesideAStationNeedsNoCaution() {
        Ran ran = Ran.of("sites", "--near", "46.19,-123.83", "--format", "json");

        assertThat(ran.json().path("stations").path(0).path("id").asString()).isEqualTo("727910");
        assertThat(ran.json().path("distance_km").asDouble()).isLessThan(10);
        assertThat(ran.json().path("cautions").size()).isZero();
    }

    /** Adak, at 176.65 degrees west, is the nearest from both sides of the date line; eastward it is 264 km away. */
    @Test
    void theDateLineIsNoEdge() {
        Ran east = Ran.of("sites", "--near", "51.9,179.5");
        Ran west = Ran.of("sites", "--near", "51.9,-179.5", "--format", "json");

        assertThat(east.out()).contains("Adak NAS AK", "264 km away", "another climate");
        assertThat(west.json().path("stations").path(0).path("name").asString()).startsWith("Adak");
        // 2.85 degrees of longitude on that parallel, by plane geometry
        double km = 2.85 * 111.195 * StrictMath.cos(StrictMath.toRadians(51.9));
        assertThat(west.json().path("distance_km").asDouble()).isBetween(km - 1, km + 1);
        assertThat(west.json().path("cautions").size()).isEqualTo(1);
    }

    @ParameterizedTest
    @ValueSource(strings = {"46", "46,", "46,-123,4", "91,0", "0,181", "NaN,0", "north,west", ""})
    void aPairThatIsNoPlaceIsRefused(String pair) {
        Ran ran = Ran.of("sites", "--near", pair);

        assertThat(ran.status()).isEqualTo(2);
        assertThat(ran.out()).isEmpty();
        assertThat(ran.err()).contains("--near: found '" + pair + "'", "such as 46.19,-123.83");
    }

    @Test
    void theWeatherOfAStationIsATableOfHours() throws IOException {
        Ran ran = Ran.of("weather", "Astoria", "Regional", "Airport", "OR", "--years", 2, "--seed", 5);
        Path file = folder.resolve("weather.csv");
        Ran filed = Ran.of("weather", "727910", "--years", 2, "--seed", 5, "--out", file);

        assertThat(ran.status()).isZero();
        assertThat(ran.err()).contains("generated from");
        List<String> lines = ran.out().lines().toList();
        assertThat(lines).hasSize(2 + 2 * ModelYear.HOURS);
        assertThat(lines.get(0)).startsWith("# Astoria").contains("UTC-8.0 h");
        assertThat(lines.get(1)).startsWith("year,month,day,hour,ghi_w_m2,dhi_w_m2,air_c,plane_w_m2,cell_c,panel_w");
        assertThat(lines.get(2)).startsWith("1,1,1,0,0.0,0.0,");
        assertThat(lines.get(lines.size() - 1)).startsWith("2,12,31,23,");
        assertThat(filed.out()).isEmpty();
        assertThat(Files.readString(file)).isEqualTo(ran.out());
        assertThat(Ran.of("weather", "727910", "--seed", 6, "--years", 2).out()).isNotEqualTo(ran.out());
    }

    @Test
    void aWeatherFileGivesItsOwnHoursBack() throws IOException {
        Path file = Files.writeString(folder.resolve("made-up.csv"), typicalYear(), StandardCharsets.US_ASCII);
        Ran ran = Ran.of("weather", file, "--tilt", 0, "--snow", "swept");

        assertThat(ran.status()).isZero();
        assertThat(ran.err()).contains("read from made-up.csv (TMY3 form, MADE-UP HILL PA), 1 year");
        List<String> lines = ran.out().lines().toList();
        assertThat(lines).hasSize(2 + ModelYear.HOURS);
        int noon = 24 * 171 + 12;
        String[] cells = lines.get(2 + noon).split(",");
        assertThat(String.join(",", List.of(cells).subList(0, 4))).isEqualTo("1,6,21,12");
        assertThat(Double.parseDouble(cells[4])).isEqualTo(ghiWm2(noon));
        assertThat(Double.parseDouble(cells[6])).isEqualTo(10);
        // a flat panel gets what the ground gets, less what its glass throws back
        assertThat(Double.parseDouble(cells[7])).isBetween(0.93 * ghiWm2(noon), ghiWm2(noon));
    }

    @Test
    void nothingIsWrittenWhereTheInputIsWrong() throws IOException {
        Path out = folder.resolve("never.csv");
        Path cut = Files.writeString(
                folder.resolve("cut.csv"), typicalYear().substring(0, 100_000), StandardCharsets.US_ASCII);
        Path absurd = Files.writeString(
                folder.resolve("absurd.csv"),
                typicalYear().replaceFirst(",10\\.0\r\n", ",999.0\r\n"),
                StandardCharsets.US_ASCII);

        for (Ran ran : List.of(
                Ran.of("weather", cut, "--out", out),
                Ran.of("weather", absurd, "--out", out),
                Ran.of("weather", folder, "--out", out),
                Ran.of("weather", "Nowhere", "--out", out),
                Ran.of("weather", ASTORIA, "--out", out, "--tilt", 91))) {
            assertThat(ran.status()).as(ran.err()).isEqualTo(2);
            assertThat(ran.out()).isEmpty();
            assertThat(ran.err()).contains("expected").doesNotContain("Exception");
            assertThat(out).doesNotExist();
        }
        assertThat(Ran.of("weather", absurd, "--out", out).err()).contains("absurd.csv:3: found \"999.0\"");
        assertThat(Ran.of("weather", cut, "--out", out).err()).contains("cut.csv");
    }

    @Test
    void aWeatherFileIsNotWrittenOverByItsOwnTable() throws IOException {
        Path file = Files.writeString(folder.resolve("made-up.csv"), typicalYear(), StandardCharsets.US_ASCII);
        Ran ran = Ran.of("weather", file, "--out", file);

        assertThat(ran.status()).isEqualTo(2);
        assertThat(ran.err()).contains("--out: found " + file + ", which this run reads");
        assertThat(Files.readString(file)).isEqualTo(typicalYear());
    }

    @ParameterizedTest
    @CsvSource({
        "--tilt, 91",
        "--tilt, -1",
        "--facing, 361",
        "--dirt, 100",
        "--panel, 0",
        "--years, 0",
        "--seed, x",
        "--snow, deep",
        "--tilt, NaN"
    })
    void optionsAreChecked(String option, String value) {
        Ran ran = Ran.of("weather", ASTORIA, option, value);

        assertThat(ran.status()).isEqualTo(2);
        assertThat(ran.out()).isEmpty();
        assertThat(ran.err()).contains(option).doesNotContain("Exception");
    }

    /** Six tenths of the sun outside the air, to a tenth of a watt. */
    private static double ghiWm2(int hour) {
        return Math.rint(6 * SunYear.at(40, -75, -5).horizontalWm2(hour)) / 10;
    }

    /** A typical year made up here, ten degrees all through; its hours are stamped with their end. */
    private static String typicalYear() {
        SunYear sun = SunYear.at(40, -75, -5);
        StringBuilder text = new StringBuilder("999999,\"MADE-UP HILL\",PA,-5.0,40.000,-75.000,120\r\n");
        text.append("Date (MM/DD/YYYY),Time (HH:MM),GHI (W/m^2),DHI (W/m^2),Dry-bulb (C)\r\n");
        for (int hour = 0; hour < ModelYear.HOURS; hour++) {
            int day = hour / 24;
            int month = ModelYear.monthOfDay(day);
            double ghiWm2 = Math.rint(6 * sun.horizontalWm2(hour)) / 10;
            text.append(String.format(
                    Locale.ROOT,
                    "%02d/%02d/1999,%02d:00,%.1f,%.1f,10.0\r\n",
                    month + 1,
                    day - ModelYear.firstDay(month) + 1,
                    hour % 24 + 1,
                    ghiWm2,
                    0.25 * ghiWm2));
        }
        return text.toString();
    }
}
