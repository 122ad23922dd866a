package tideover.app.files;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.params.provider.Arguments.arguments;

import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/** What a person may type wrong in a plan, one slip a test, and the whole of what they are told. */
class PlanProblemsTest {
    private static final String DRAWS = "draws: 3 W";
    private static final String SUPPLY = "supply: 12 V DC, car socket";
    private static final String NEED = "need: always on";
    private static final String STATION = "station: Astoria Regional Airport OR";
    private static final String BUDGET = "at most: 900 USD";
    private static final String SUPPLY_EXPECTED = "volts, AC with its frequency or DC, and the plug, such as"
            + " \"120 V AC 60 Hz, NEMA 5-15\" or \"12 V DC, car socket\"";

    static Stream<Arguments> slips() {
        return Stream.of(
                // figures and units
                slip(
                        DRAWS,
                        "draws: 3",
                        "15 loads[1].draws: found \"3\", expected a power with its unit. Write 3 W. Also possible: kW."),
                slip(
                        DRAWS,
                        "draws: -3 W",
                        "15 loads[1].draws: found \"-3 W\", expected a power above 0 W and at most 100000 W."),
                slip(
                        DRAWS,
                        "draws: 0 W",
                        "15 loads[1].draws: found \"0 W\", expected a power above 0 W and at most 100000 W."),
                slip(DRAWS, "draws: 3 VA", "15 loads[1].draws: found \"3 VA\", expected a power in W or kW."),
                slip(DRAWS, "draws: 3 Wh", "15 loads[1].draws: found \"3 Wh\", expected a power in W or kW."),
                slip(DRAWS, "draws: 3 w", "15 loads[1].draws: found \"3 w\", expected a power in W or kW. Write 3 W."),
                slip(
                        DRAWS,
                        "draws: 1,200 W",
                        "15 loads[1].draws: found \"1,200 W\", expected a power, such as 120 W. Write thousands without a separator: 1200 W."),
                slip(
                        DRAWS,
                        "draws: 1,5 W",
                        "15 loads[1].draws: found \"1,5 W\", expected a power, such as 120 W. Write a point, not a comma: 1.5 W."),
                slip(
                        DRAWS,
                        "draws: 1e999 W",
                        "15 loads[1].draws: found \"1e999 W\", expected a power, such as 120 W. Write the number out in plain digits."),
                slip(DRAWS, "draws: NaN", "15 loads[1].draws: found \"NaN\", expected a power, such as 120 W."),
                slip(DRAWS, "draws: .inf W", "15 loads[1].draws: found \".inf W\", expected a power, such as 120 W."),
                slip(DRAWS, "draws: 0x10 W", "15 loads[1].draws: found \"0x10 W\", expected a power in W or kW."),
                slip(DRAWS, "draws: three W", "15 loads[1].draws: found \"three W\", expected a power, such as 120 W."),
                slip(
                        DRAWS,
                        "draws: 1111111111111111111111111111111 W",
                        "15 loads[1].draws: found \"1111111111111111111111111111111 W\", expected a power, such as 120 W. No figure here needs so many digits."),
                slip(DRAWS, "draws:", "15 loads[1]: found no \"draws:\", expected a power, such as 120 W."),
                slip(DRAWS, "draws: [3 W]", "15 loads[1].draws: found a list, expected a power, such as 120 W."),
                slip(
                        "carried: 95 %",
                        "carried: 0.95",
                        "8 outage.carried: found \"0.95\", expected a percentage with its sign. Write 95 %."),
                slip(
                        "carried: 95 %",
                        "carried: 95",
                        "8 outage.carried: found \"95\", expected a percentage with its sign. Write 95 %."),
                slip(
                        "carried: 95 %",
                        "carried: 400 %",
                        "8 outage.carried: found \"400 %\", expected a percentage above 0 % and at most 100 %."),
                slip(
                        "lasts: 72 h",
                        "lasts: 72",
                        "7 outage.lasts: found \"72\", expected a time with its unit. Write 72 h. Also possible: min, s, d."),
                slip(
                        "lasts: 72 h",
                        "lasts: 90 min",
                        "7 outage.lasts: found \"90 min\", expected whole hours. Write 2 h."),
                slip(
                        "lasts: 72 h",
                        "lasts: 100 d",
                        "7 outage.lasts: found \"100 d\", expected a time from 1 h to 1440 h."),
                slip("lasts: 72 h", "lasts: 0 h", "7 outage.lasts: found \"0 h\", expected a time from 1 h to 1440 h."),
                slip(
                        "tilt: 60 deg",
                        "tilt: 120 deg",
                        "10 panels.tilt: found \"120 deg\", expected an angle from 0 deg to 90 deg."),
                slip(
                        "tilt: 60 deg",
                        "tilt: steep",
                        "10 panels.tilt: found \"steep\", expected an angle, such as 60 deg."),
                slip(
                        "-14 degC",
                        "-14",
                        "4 place.coldest on record: found \"-14\", expected a temperature with its unit. Write -14 degC. Also possible: degF, K."),
                slip(
                        "-14 degC",
                        "-400 degC",
                        "4 place.coldest on record: found \"-400 degC\", expected a temperature from -90 degC to 40 degC."),
                slip(
                        "most panels: 3",
                        "most panels: 300",
                        "29 look at.most panels: found \"300\", expected most panels looked at, a whole number from 0 to 20."),
                slip(
                        "most panels: 3",
                        "most panels: 2.5",
                        "29 look at.most panels: found \"2.5\", expected most panels looked at, a whole number from 0 to 20."),
                slip(
                        "most batteries: 2",
                        "most batteries: 0",
                        "30 look at.most batteries: found \"0\", expected most batteries looked at, a whole number from 1 to 20."),

                // keys
                slip(
                        DRAWS,
                        "draw: 3 W",
                        "15 loads[1]: found the key \"draw\", expected the key \"draws\". Write draws:"),
                slip(
                        DRAWS,
                        "Draws: 3 W",
                        "15 loads[1]: found the key \"Draws\", expected the key \"draws\". Write draws:"),
                slip(
                        DRAWS,
                        "wattage: 3 W",
                        "15 loads[1]: found the key \"wattage\", expected one of the keys name, runs, like, draws, supply, essential, room, need, hours, from, power factor, start, wave, attended, hard-wired, senses flame, medical.",
                        "13 loads[1]: found no \"draws:\", expected a power, such as 120 W."),
                slip("    draws: 3 W\n", "", "13 loads[1]: found no \"draws:\", expected a power, such as 120 W."),
                slip(
                        DRAWS,
                        "draws: 3 W\n    draws: 4 W",
                        "16 loads[1].draws: found \"draws\" a second time, expected each key once. The first stands in line 15."),
                slip(
                        "store room: garage",
                        "store_room: garage",
                        "11: found the key \"store_room\", expected the key \"store room\". Write store room:"),
                slip(
                        "outage:\n",
                        "outages:\n",
                        "5: found the key \"outages\", expected the key \"outage\". Write outage:"),
                slip("plan: Test house", "plan:", "1: found no \"plan:\", expected the plan's title."),
                slip("plan: Test house\n", "", "1: found no \"plan:\", expected the plan's title."),
                slip(
                        "plan: Test house",
                        "plan: Test house\nabout: \"bell \\a\"",
                        "2 about: found \"bell ?\", expected a few words about the plan, without control characters."),

                // choices
                slip(
                        "store room: garage",
                        "store room: cellar",
                        "11 store room: found \"cellar\", expected where the battery stands: indoors, garage, shed, outdoors."),
                slip(
                        "store room: garage",
                        "store room: garag",
                        "11 store room: found \"garag\", expected where the battery stands: indoors, garage, shed, outdoors. Write garage."),
                slip(
                        "runs: steady",
                        "runs: motor",
                        "14 loads[1].runs: found \"motor\", expected how it runs: steady, at set hours, cold box, sump pump, heating."),
                slip(
                        "essential: yes",
                        "essential: maybe",
                        "17 loads[1].essential: found \"maybe\", expected whether it is essential: yes, no."),
                slip(
                        "essential: yes",
                        "essential: no",
                        "12 loads: found no essential load, expected at least one load with \"essential: yes\"."),
                slip(
                        "tilt: 60 deg",
                        "snow: sewpt",
                        "10 panels.snow: found \"sewpt\", expected snow on the panels: auto, lies, swept. Write swept."),

                // months
                slip(
                        "[nov, dec, jan]",
                        "[nov, dez, nov]",
                        "6 outage.months[2]: found \"dez\", expected a month: jan, feb, mar, apr, may, jun, jul, aug, sep, oct, nov, dec. Write dec.",
                        "6 outage.months[3]: found \"nov\" a second time, expected each month once."),
                slip(
                        "[nov, dec, jan]",
                        "[]",
                        "6 outage.months: found an empty list, expected months, such as [nov, dec, jan], or all."),
                slip(
                        "[nov, dec, jan]",
                        "winter",
                        "6 outage.months: found \"winter\", expected a month: jan, feb, mar, apr, may, jun, jul, aug, sep, oct, nov, dec."),
                slip(
                        "[nov, dec, jan]",
                        "{a: b}",
                        "6 outage.months: found a block of keys, expected months, such as [nov, dec, jan], or all. Begin each item with \"- \"."),

                // supplies
                slip(
                        SUPPLY,
                        "supply: 12 V, car socket",
                        "16 loads[1].supply: found \"12 V, car socket\", expected " + SUPPLY_EXPECTED
                                + ". Say AC or DC after the volts."),
                slip(
                        SUPPLY,
                        "supply: 12 V DC",
                        "16 loads[1].supply: found \"12 V DC\", expected " + SUPPLY_EXPECTED
                                + ". Name the plug after a comma."),
                slip(
                        SUPPLY,
                        "supply: 120 V AC, NEMA 5-15",
                        "16 loads[1].supply: found \"120 V AC, NEMA 5-15\", expected " + SUPPLY_EXPECTED
                                + ". Write the frequency after AC, such as 60 Hz."),
                slip(
                        SUPPLY,
                        "supply: 12 V DC 60 Hz, NEMA 5-15",
                        "16 loads[1].supply: found \"12 V DC 60 Hz, NEMA 5-15\", expected " + SUPPLY_EXPECTED
                                + ". Direct current has no frequency."),

                // needs and hours
                slip(
                        NEED,
                        "need: alway on",
                        "18 loads[1].need: found \"alway on\", expected \"always on\", or hours in a stretch of the day, such as {hours: 3 h, between: 08:00, and: 20:00}. Write always on."),
                slip(
                        NEED,
                        "need: {hours: 30 h, between: 8 am, and: 20}",
                        "18 loads[1].need.hours: found \"30 h\", expected a time above 0 h and at most 24 h.",
                        "18 loads[1].need.between: found \"8 am\", expected a time of day, such as 08:30. Write 08:00.",
                        "18 loads[1].need.and: found \"20\", expected a time of day, such as 08:30. Write 20:00."),
                slip(
                        NEED,
                        "need: {hours: 13 h, between: 08:00, and: 20:00}",
                        "18 loads[1].need.hours: found \"13 h\", expected at most the 12 h of the stretch."),
                slip(
                        NEED,
                        "need: {hours: 3 h, between: 08:00, and: 08:00}",
                        "18 loads[1].need: found a stretch without length, expected two different times of day. The whole day is 00:00 to 24:00."),
                slip(
                        NEED,
                        "need: {hours: 3 h, between: 08:00}",
                        "18 loads[1].need: found no \"and:\", expected a time of day, such as 08:30."),
                slip(
                        NEED,
                        "need: always on\n    hours: [10:00-11:00]",
                        "19 loads[1].hours: found hours for a load that runs steadily, expected no hours, or \"runs: at set hours\". For some hours within a stretch write need: {hours: 3 h, between: 08:00, and: 20:00}."),
                slip(
                        "hours: [17:00-23:00]",
                        "need: {hours: 3 h, between: 08:00, and: 20:00}",
                        "24 loads[2].need: found a need of its own, expected no need: what runs at set hours needs its power all through them. Remove it, or write \"runs: steady\" for something used some hours of a stretch.",
                        "19 loads[2]: found no \"hours:\", expected stretches of the day, such as [06:30-08:00, 17:00-23:00]."),
                slip(
                        "[17:00-23:00]",
                        "[17:00-23:00, 22:00-24:00]",
                        "24 loads[2].hours[2]: found \"22:00-24:00\", expected stretches that do not overlap. It overlaps 17:00-23:00."),
                slip(
                        "[17:00-23:00]",
                        "[17-23]",
                        "24 loads[2].hours[1]: found \"17-23\", expected a stretch of the day, such as 18:00-23:00. The whole day is 00:00-24:00."),
                slip(
                        "[17:00-23:00]",
                        "[17:00-25:00]",
                        "24 loads[2].hours[1]: found \"17:00-25:00\", expected a stretch of the day, such as 18:00-23:00. The whole day is 00:00-24:00."),
                slip(
                        "[17:00-23:00]",
                        "[17:00-17:00]",
                        "24 loads[2].hours[1]: found \"17:00-17:00\", expected a stretch of the day, such as 18:00-23:00. The whole day is 00:00-24:00."),

                // names
                slip(
                        "name: Lamps",
                        "name: Scanner",
                        "19 loads[2].name: found \"Scanner\" a second time, expected a name of its own for each load. The first stands in line 13."),
                slip("name: Lamps", "name: ''", "19 loads[2].name: found an empty text, expected what it is called."),

                // money
                slip(
                        BUDGET,
                        "at most: 900",
                        "26 money.at most: found \"900\", expected an amount and its currency, such as 900 USD. Write 900 USD, or your own currency's three letters."),
                slip(
                        BUDGET,
                        "at most: $900",
                        "26 money.at most: found \"$900\", expected an amount and its currency, such as 900 USD. Write 900 USD."),
                slip(
                        BUDGET,
                        "at most: 900.005 USD",
                        "26 money.at most: found \"900.005 USD\", expected whole cents, at most two digits after the point."),
                slip(
                        BUDGET,
                        "at most: 1,900 USD",
                        "26 money.at most: found \"1,900 USD\", expected an amount and its currency, such as 900 USD. Write thousands without a separator: 1900 USD."),
                slip(BUDGET, "at most: -1 USD", "26 money.at most: found \"-1 USD\", expected an amount of 0 or more."),
                slip(
                        BUDGET,
                        "at most: 900 QQQ",
                        "26 money.at most: found \"900 QQQ\", expected an amount and a currency in three letters, such as 900 USD."),
                slip(
                        "enclosure: 35 USD",
                        "enclosure: 35 EUR",
                        "27 money.small parts.enclosure: found \"35 EUR\", expected one currency in the whole plan. The first price is in USD."),
                slip(
                        ", separate parts: 90 USD",
                        "",
                        "27 money.small parts: found no \"separate parts:\", expected small parts with separate parts, such as 35 USD."),

                // place
                slip(
                        "  station: Astoria Regional Airport OR\n",
                        "",
                        "2 place: found none of them, expected exactly one of station, near, figures, hourly file."),
                slip(
                        STATION,
                        STATION + "\n  near: {latitude: 46 deg, longitude: -123 deg}",
                        "2 place: found station and near, expected exactly one of station, near, figures, hourly file."),
                slip(
                        STATION,
                        "near: {latitude: 46.2, longitude: -123.9 deg}",
                        "3 place.near.latitude: found \"46.2\", expected an angle with its unit. Write 46.2 deg. Also possible: rad."),
                slip(
                        STATION,
                        "near: {latitude: 96.2 deg, longitude: -123.9 deg}",
                        "3 place.near.latitude: found \"96.2 deg\", expected an angle from -90 deg to 90 deg."),
                slip(
                        STATION,
                        "near: {latitude: 46.2 deg, longitude: -123.9 deg W}",
                        "3 place.near.longitude: found \"-123.9 deg W\", expected degrees, such as -46.2 deg or 46.2 deg W. A minus or a letter, not both."),
                slip(
                        STATION,
                        "near: {latitude: 46.2 deg E, longitude: -123.9 deg}",
                        "3 place.near.latitude: found \"46.2 deg E\", expected degrees, such as -46.2 deg or 46.2 deg S."),
                slip(
                        STATION,
                        "near: {latitude: 46.2 deg, longitude: 123.9 deg}",
                        "3 place.near: found nothing in the station table nearer than Shemya AFB AK, 3624 km away, expected a place within 400 km of a station. Check the signs (west and south are negative), or give the place's own \"figures:\" or an \"hourly file:\"."),
                slip(
                        "coldest on record: -14 degC",
                        "latitude: 4 deg",
                        "4 place.latitude: found \"latitude\" beside station, expected it under near or figures."),
                slip(
                        STATION,
                        "hourly file: none.csv",
                        "3 place.hourly file: found no file \"none.csv\", expected an hourly weather file. Check the name and the folder."),

                // the parts file
                slip(
                        "parts: parts.csv",
                        "parts: part.csv",
                        "31 parts: found no file \"part.csv\", expected a parts file. Check the name and the folder."),
                slip(
                        "parts: parts.csv",
                        "part: parts.csv",
                        "31: found the key \"part\", expected the key \"parts\". Write parts:"),
                slip(
                        "parts: parts.csv\n",
                        "",
                        "1: found no \"parts:\", expected the name of the parts file, such as parts.csv."),

                // YAML itself
                slip(
                        "plan: Test house",
                        "plan: a: b",
                        "1: found \"plan: a: b\", which does not fit here, expected YAML: \"key: value\", the same indent for keys of one block, \"- \" before each item of a list. Look at this line and the one above it. A text with \": \" or \" #\" inside needs quotes around it."),
                slip(
                        "plan: Test house",
                        "plan: *x",
                        "1: found an alias (*), expected each value written out. Put a text that begins with * in quotes."),
                slip(
                        "plan: Test house",
                        "plan: &x Test",
                        "1: found an anchor (&), expected each value written out. Put a text that begins with & in quotes."),
                slip(
                        "plan: Test house",
                        "plan: !!java.net.URL [x]",
                        "1: found a tag (!), expected each value written out. Put a text that begins with ! in quotes."),
                slip(
                        "plan: Test house",
                        "plan: Test\n---\nplan: x",
                        "2: found a second document, expected one document in the file. Remove the line \"---\"."),
                slip(
                        "  lasts",
                        "\tlasts",
                        "7: found a tab, expected spaces to indent with. Replace the tab by spaces."),
                slip(
                        "plan: Test house",
                        "plan: 'Test",
                        "1: found a quote that is opened here and never closed, expected a pair of quotes."),
                slip(
                        "plan: Test house",
                        "plan: Test house\n? [a]\n: b",
                        "2: found a list or block as a key, expected a word as a key."));
    }

    private static Arguments slip(String from, String to, String... problems) {
        return arguments(
                to,
                from,
                Stream.of(problems).map(problem -> "plan.yaml:" + problem).toList());
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("slips")
    void isTold(String to, String from, List<String> problems) {
        assertThat(Sample.problemsWith(from, to)).containsExactlyElementsOf(problems);
    }

    @Test
    void theSampleItselfIsSound() {
        assertThat(Sample.problemsIn(Sample.PLAN)).isEmpty();
    }

    @Test
    void everythingWrongIsToldAtOnceInPlanAndParts() {
        String plan = Sample.PLAN
                .replace("draws: 3 W", "draws: -3 W")
                .replace("lasts: 72 h", "lasts: long")
                .replace("most panels", "moist panels");
        String parts = Sample.PARTS.replace("199.50", "minus");

        assertThat(Sample.problemsOf(() -> Sample.read(plan, parts)))
                .containsExactly(
                        "plan.yaml:7 outage.lasts: found \"long\", expected a time, such as 72 h.",
                        "plan.yaml:15 loads[1].draws: found \"-3 W\", expected a power above 0 W and at most 100000 W.",
                        "plan.yaml:29 look at: found the key \"moist panels\", expected the key \"most panels\". Write most panels:",
                        "parts.csv:2 price: found \"minus\", expected an amount in plain digits, such as 249.50.");
    }

    /** Nothing is left but a title: every section is named, and nothing inside a section that is not there. */
    @Test
    void missingSectionsAreNamed() {
        assertThat(Sample.problemsIn("plan: bare\n"))
                .containsExactly(
                        "plan.yaml:1: found no \"place:\", expected a block of keys: name, station, near, figures, hourly file, latitude, longitude, height, zone, coldest on record.",
                        "plan.yaml:1: found no \"outage:\", expected a block of keys: months, lasts, carried, charge at start, keep back, rolling, storm.",
                        "plan.yaml:1: found no \"store room:\", expected where the battery stands: indoors, garage, shed, outdoors.",
                        "plan.yaml:1: found no \"loads:\", expected a list of loads, each with name, runs, draws, supply, essential.",
                        "plan.yaml:1: found no \"money:\", expected a block of keys: at most, small parts, hard-wired loads, tax, shipping.",
                        "plan.yaml:1: found no \"parts:\", expected the name of the parts file, such as parts.csv.");
    }

    @Test
    void anEmptyFile() {
        assertThat(Sample.problemsIn(" \n")).containsExactly("plan.yaml: found an empty file, expected a plan.");
    }

    @Test
    void aFileOfRemarksOnly() {
        assertThat(Sample.problemsIn("# later\n"))
                .containsExactly("plan.yaml: found an empty file, expected keys and values.");
    }

    @Test
    void aFileThatIsNoBlock() {
        assertThat(Sample.problemsIn("just words"))
                .containsExactly(
                        "plan.yaml:1: found \"just words\", expected a block of keys: plan, about, place, outage,"
                                + " help, panels, store room, someone sleeps there, loads, money, look at, parts,"
                                + " small parts, wiring.");
    }

    @Test
    void aBinaryFile() {
        assertThat(Sample.problemsIn("plan: \0"))
                .containsExactly("plan.yaml: found a binary file, expected a plan as plain text. Save it as plain text,"
                        + " encoded UTF-8.");
    }

    @Test
    void aControlCharacter() {
        assertThat(Sample.problemsIn("plan: \u0007"))
                .containsExactly(
                        "plan.yaml: found characters that cannot stand in YAML, expected plain text. Look for pasted symbols.");
    }

    @Test
    void tenMegabytes() {
        assertThat(Sample.problemsIn("#".repeat(10_000_000)))
                .containsExactly("plan.yaml: found a file of more than 1 MB, expected a plan of at most 1 MB.");
    }

    /** Nine levels of nine: a thousand million words, were aliases taken. */
    @Test
    void anAliasBomb() {
        StringBuilder bomb = new StringBuilder("a0: &a0 [lol, lol, lol]\n");
        for (int level = 1; level < 10; level++) {
            String one = "*a" + (level - 1);
            bomb.append("a" + level + ": &a" + level + " [" + (one + ", ").repeat(8) + one + "]\n");
        }

        assertThat(Sample.problemsIn(bomb.toString()))
                .hasSize(10)
                .first()
                .isEqualTo(
                        "plan.yaml:1: found an anchor (&), expected each value written out. Put a text that begins with &"
                                + " in quotes.");
    }

    @Test
    void deepNesting() {
        assertThat(Sample.problemsIn("plan: " + "[".repeat(400_000)))
                .containsExactly("plan.yaml:1: found blocks nested more than 12 deep, expected a flat file.");
    }

    @Test
    void aFloodOfProblemsIsCut() {
        StringBuilder keys = new StringBuilder(Sample.PLAN);
        for (int i = 0; i < 500; i++) {
            keys.append("qq").append(i).append("qq: 1\n");
        }

        assertThat(Sample.problemsIn(keys.toString()))
                .hasSize(101)
                .last()
                .isEqualTo(
                        "and more: found 400 further problems, expected the first 100 mended. Mend those, then read again.");
    }
}
