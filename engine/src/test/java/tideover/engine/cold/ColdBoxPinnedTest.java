package tideover.engine.cold;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Our own digits, those of docs/models.md: hours without power and days of use, by the plain simulator. */
class ColdBoxPinnedTest {
    private static final double ROOM_DEG_C = 22;

    private static double hours(ColdBox box, double fromDegC, double toDegC) {
        DumbColdBox walked = new DumbColdBox(box, fromDegC);
        double hours = 0;
        while (walked.foodDegC() < toDegC) {
            walked.step(ROOM_DEG_C, false);
            hours += 2.0 / 3600;
        }
        return hours;
    }

    private static double limit(BoxKind kind, boolean frostFree, boolean compact, double litres, double freezerPartL) {
        return LabelStandard.of(kind, frostFree, compact, litres, freezerPartL).kWhPerYear();
    }

    /** A chest of 198 L until its food is at its freezing point: full, half full, a quarter full. */
    @ParameterizedTest
    @CsvSource({"99, 53.73", "49.5, 27.83", "24.75, 14.796"})
    void hoursOfAChest(double kg, double pinnedH) {
        double kWh = limit(BoxKind.CHEST_FREEZER, false, false, 198, 0);
        ColdBox box =
                ColdBox.ofLabel(BoxKind.CHEST_FREEZER, 198, kWh, null, null, List.of(Contents.of(Food.LEAN_BEEF, kg)));
        assertThat(hours(box, -18, -1.7)).isCloseTo(pinnedH, within(.005));
    }

    /** The same chest with the most that its walls may let through if its label told but a household's share. */
    @ParameterizedTest
    @CsvSource({"99, 38.07", "49.5, 19.85"})
    void hoursBehindTheWorstWalls(double kg, double pinnedH) {
        double kWh = limit(BoxKind.CHEST_FREEZER, false, false, 198, 0);
        ColdBox box =
                ColdBox.ofLabel(BoxKind.CHEST_FREEZER, 198, kWh, null, null, List.of(Contents.of(Food.LEAN_BEEF, kg)));
        assertThat(hours(box.withWallsTimes(LabelStandard.wallsMostTimes(box.kind())), -18, -1.7))
                .isCloseTo(pinnedH, within(.005));
    }

    /** A refrigerator of 396 + 113 L with 20 kg, from 3 degC to 40 degF, by what its defrost heater is taken to use. */
    @ParameterizedTest
    @CsvSource({"12, 3.11", "24, 2.79", "NaN, 2.55"})
    void hoursOfARefrigerator(double everyHours, double pinnedH) {
        Defrost defrost = Double.isNaN(everyHours) ? null : new Defrost(450, 15, everyHours);
        double kWh = limit(BoxKind.REFRIGERATOR, true, false, 396, 113);
        assertThat(hours(refrigerator(kWh, defrost), 3, AgencyHours.LIMIT_DEG_C))
                .isCloseTo(pinnedH, within(.005));
    }

    /** 20 kg behind 30 W in air and film of a box of 396 L: by hand, without these, 1.1 h. */
    @Test
    void airAndFilmLengthenTheHour() {
        ColdBox box =
                ColdBox.ofWalls(BoxKind.REFRIGERATOR, 396, 30.0 / 19, null, null, List.of(Contents.of(Food.WATER, 20)));
        assertThat(hours(box, 3, AgencyHours.LIMIT_DEG_C)).isCloseTo(3.072, within(.005));
    }

    /** A chest of 300 L with 60 kg, plugged in at 20 degC: until its compressor first stops. */
    @Test
    void aPullDown() {
        double kWh = limit(BoxKind.CHEST_FREEZER, false, false, 300, 0);
        ColdBox box =
                ColdBox.ofLabel(BoxKind.CHEST_FREEZER, 300, kWh, null, null, List.of(Contents.of(Food.LEAN_BEEF, 60)));
        DumbColdBox walked = new DumbColdBox(box, 20);
        double hours = 0;
        while (walked.switchedOff() == 0) {
            walked.step(ROOM_DEG_C, true);
            hours += 2.0 / 3600;
        }
        assertThat(hours).isCloseTo(51.86, within(.05));
        assertThat(walked.foodDegC()).isCloseTo(-14.167, within(.005));
    }

    private static ColdBox refrigerator(double kWh, @Nullable Defrost defrost) {
        return ColdBox.ofLabel(
                BoxKind.REFRIGERATOR, 396, 113, kWh, null, defrost, List.of(Contents.of(Food.WATER, 20)));
    }
}
