package tideover.app.files;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;
import tideover.engine.part.Battery;
import tideover.engine.part.BatteryCase;
import tideover.engine.part.Dimensions;
import tideover.engine.part.Enclosure;
import tideover.engine.part.Housing;
import tideover.engine.part.Part;
import tideover.engine.part.ReadyBox;
import tideover.engine.why.Stated;

/** How batteries are built and what enclosures hold. */
class FitColumnsTest {
    private static final String ENCLOSURE = Sample.row(Map.ofEntries(
            Map.entry("kind", "enclosure"),
            Map.entry("id", "case-1"),
            Map.entry("name", "Invented case"),
            Map.entry("price", "129"),
            Map.entry("currency", "USD"),
            Map.entry("priced_on", "2026-01-20"),
            Map.entry("condition", "new"),
            Map.entry("mass_kg", "4.8"),
            Map.entry("nominal_v", "12.8"),
            Map.entry("outlets", "1x 12 V DC car socket 90 W")));

    private static List<Part> read(String... rows) {
        return Sample.read(Sample.PLAN, Sample.HEADER + String.join("", rows)).parts();
    }

    @Test
    void nothingNeedBeTold() {
        List<Part> parts = read(Sample.BATTERY, ENCLOSURE, Sample.BOX);

        assertThat(((Battery) parts.get(0)).casing()).isEqualTo(BatteryCase.UNKNOWN);
        assertThat(((Enclosure) parts.get(1)).housing()).isEqualTo(Housing.UNKNOWN);
        assertThat(((ReadyBox) parts.get(2)).keepsRainOut()).isEqualTo(Stated.UNKNOWN);
    }

    @ParameterizedTest
    @ValueSource(strings = {"330x172x215", "330 x 172 X 215", "330\u00D7172\u00D7215", "330.0x172.0x215.0"})
    void aSizeIsWrittenWithAnX(String typed) {
        String row = Sample.bent(Sample.bent(Sample.BATTERY, "size_mm", typed), "terminals", "M8  stud");

        assertThat(((Battery) read(row, Sample.BOX).get(0)).casing())
                .isEqualTo(new BatteryCase(new Dimensions(330, 172, 215), "M8 stud"));
    }

    @Test
    void anEnclosureTellsWhatItHolds() {
        String row = Sample.bent(ENCLOSURE, "room_mm", "350x350x220");
        row = Sample.bent(row, "takes_terminals", "M8 stud;post");
        row = Sample.bent(row, "holds_kg", "25");
        row = Sample.bent(row, "vent_cm2", "0");
        row = Sample.bent(row, "keeps_rain_out", "no");

        assertThat(((Enclosure) read(row, Sample.BATTERY).get(0)).housing())
                .isEqualTo(new Housing(new Dimensions(350, 350, 220), List.of("M8 stud", "post"), 25, 0, Stated.NO));
    }

    @Test
    void aBoxTellsWhetherItMayStandInTheRain() {
        String row = Sample.bent(Sample.BOX, "keeps_rain_out", "yes");

        assertThat(((ReadyBox) read(row, Sample.BATTERY).get(0)).keepsRainOut()).isEqualTo(Stated.YES);
    }

    /** Row, column, cell and what is said of it. */
    static Stream<List<String>> slips() {
        String size =
                "expected the battery's length, width and height, each from 5 mm to 5000 mm, such as 330x172x215.";
        String unit = " Put x between them, and no unit.";
        String terminals = "expected terminals that its leads take, such as M8 stud; post.";
        return Stream.of(
                List.of(Sample.BATTERY, "size_mm", "330x172", size),
                List.of(Sample.BATTERY, "size_mm", "330x172x215 mm", size + unit),
                List.of(Sample.BATTERY, "size_mm", "330*172*215", size + unit),
                List.of(Sample.BATTERY, "size_mm", "330x0x215", size),
                List.of(Sample.BATTERY, "size_mm", "-330x172x215", size),
                List.of(Sample.BATTERY, "terminals", "post; blade", "expected the one kind that this battery has."),
                List.of(ENCLOSURE, "takes_terminals", "post;;blade", terminals),
                List.of(ENCLOSURE, "takes_terminals", ";", terminals),
                List.of(
                        ENCLOSURE,
                        "holds_kg",
                        "0",
                        "expected what its batteries may weigh together, above 0 kg and at most 10000 kg."),
                List.of(
                        ENCLOSURE,
                        "vent_cm2",
                        "-1",
                        "expected the free area of its air openings, from 0 cm2 to 10000 cm2."),
                List.of(
                        ENCLOSURE,
                        "keeps_rain_out",
                        "perhaps",
                        "expected whether it may stand in the rain: yes, no, unknown."),
                List.of(
                        ENCLOSURE,
                        "size_mm",
                        "1x1x1",
                        "expected an empty cell: this column is not for a part of kind enclosure."),
                List.of(
                        Sample.BATTERY,
                        "room_mm",
                        "1x1x1",
                        "expected an empty cell: this column is not for a part of kind battery."));
    }

    @ParameterizedTest
    @MethodSource("slips")
    void whatIsWrongIsTold(List<String> slip) {
        String parts = Sample.HEADER + Sample.bent(slip.get(0), slip.get(1), slip.get(2));

        assertThat(Sample.problemsInParts(parts))
                .contains("parts.csv:2 " + slip.get(1) + ": found \"" + slip.get(2) + "\", " + slip.get(3));
    }

    @Test
    void anUnlikelySizeIsTaken() {
        String row = Sample.bent(Sample.BATTERY, "size_mm", "330x17x215");

        assertThat(Sample.read(Sample.PLAN, Sample.HEADER + row + Sample.BOX).cautions())
                .contains("parts.csv:2 size_mm: 17 mm is taken, but is unlikely.");
    }
}
