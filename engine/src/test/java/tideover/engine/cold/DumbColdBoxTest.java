package tideover.engine.cold;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The plain simulator keeps its books, and boxes walked by it use what their labels say. */
class DumbColdBoxTest {
    private static final double ROOM_DEG_C = ColdBox.LABEL_ROOM_DEG_C;

    private static ColdBox standard(
            BoxKind kind, double litres, double freezerPartL, @Nullable Defrost defrost, Food food) {
        boolean compact = litres + freezerPartL < 220;
        double kWh = LabelStandard.of(kind, defrost != null, compact, litres, freezerPartL)
                .kWhPerYear();
        return ColdBox.ofLabel(kind, litres, freezerPartL, kWh, null, defrost, List.of(Contents.of(food, litres / 5)));
    }

    /** Ten days to settle, thirty counted, door shut: what the label stands for, and the mean temperature it is tested at. */
    @ParameterizedTest
    @CsvSource({
        "CHEST_FREEZER, 300, 0, false",
        "UPRIGHT_FREEZER, 400, 0, true",
        "REFRIGERATOR, 396, 113, true",
        "MEDICINE_FRIDGE, 90, 0, false"
    })
    void aBoxUsesWhatItsLabelSays(BoxKind kind, double litres, double freezerPartL, boolean frostFree) {
        Defrost defrost = frostFree ? Defrost.USUAL : null;
        ColdBox usual = standard(kind, litres, freezerPartL, defrost, kind.freezes() ? Food.LEAN_BEEF : Food.WATER);
        ColdBox box = usual.setTo(LabelStandard.insideDegC(kind), usual.bandK());
        double label = LabelStandard.of(kind, frostFree, litres + freezerPartL < 220, litres, freezerPartL)
                .kWhPerYear();
        DumbColdBox walked = new DumbColdBox(box, box.setDegC());
        walked.run(240, ROOM_DEG_C, true);
        walked.countAfresh();
        walked.run(720, ROOM_DEG_C, true);
        double kWh = walked.usedWh() / 720 * 8.76;
        assertThat(kWh / label).isCloseTo(1, within(.03));
        // pauses are longer than runs, and the air spends them near the upper point
        assertThat(walked.airDegCHours() / 720).isBetween(box.setDegC(), box.setDegC() + box.bandK() / 6);
    }

    /** Runs and pauses in minutes and starts an hour in a room of 22 degC, a fifth of a kilogram a litre. */
    @ParameterizedTest
    @CsvSource({
        "CHEST_FREEZER, 300, 0, false, 5, 10, 25, 120",
        "UPRIGHT_FREEZER, 400, 0, true, 5, 10, 20, 120",
        "REFRIGERATOR, 396, 113, true, 10, 21, 30, 120",
        "MEDICINE_FRIDGE, 90, 0, false, 4, 20, 15, 120"
    })
    void compressorsCycleLikeRealOnes(
            BoxKind kind,
            double litres,
            double freezerPartL,
            boolean frostFree,
            double leastOn,
            double mostOn,
            double leastOff,
            double mostOff) {
        ColdBox box = standard(
                kind,
                litres,
                freezerPartL,
                frostFree ? Defrost.USUAL : null,
                kind.freezes() ? Food.LEAN_BEEF : Food.WATER);
        DumbColdBox walked = new DumbColdBox(box, box.setDegC());
        walked.run(240, 22, true);
        walked.countAfresh();
        walked.run(240, 22, true);
        double startsPerH = walked.switchedOff() / 240.0;
        double onMin = 60 * walked.compressorH() / walked.switchedOff();
        assertThat(onMin).isBetween(leastOn, mostOn);
        assertThat(60 / startsPerH - onMin).isBetween(leastOff, mostOff);
        assertThat(startsPerH).isLessThan(4);
    }

    /** Heat in = heat held + heat moved, through thermostat, door, defrost, outage, melting and ice. */
    @Test
    void heatIsNeitherMadeNorLost() {
        ColdBox box = standard(BoxKind.UPRIGHT_FREEZER, 400, 0, Defrost.USUAL, Food.COD)
                .withIce(6)
                .withOpenings(12);
        DumbColdBox walked = new DumbColdBox(box, -18, -18, 2).atHour(5).defrostClockAt(3);
        double before = walked.heldWh();
        walked.run(50, 25, true);
        walked.run(330, 30, false);
        assertThat(walked.meltedShare(1)).isGreaterThan(.2);
        walked.run(50, 25, true);
        assertThat(walked.heldWh() - before)
                .isCloseTo(walked.wallWh() + walked.doorWh() + walked.heaterWh() - walked.movedWh(), within(1e-6));
        assertThat(walked.doorWh()).isPositive();
        assertThat(walked.heaterWh()).isPositive();
    }

    @Test
    void halvingTheStepChangesLittle() {
        ColdBox box = standard(BoxKind.CHEST_FREEZER, 300, 0, null, Food.LEAN_BEEF);
        DumbColdBox coarse = new DumbColdBox(box, -18, -18, 2);
        DumbColdBox fine = new DumbColdBox(box, -18, -18, 1);
        for (DumbColdBox walked : List.of(coarse, fine)) {
            walked.run(100, 25, true);
            walked.run(60, 25, false);
            walked.run(40, 25, true);
        }
        assertThat(coarse.foodDegC()).isCloseTo(fine.foodDegC(), within(.02));
        assertThat(coarse.usedWh()).isCloseTo(fine.usedWh(), within(.005 * fine.usedWh()));
    }

    /** Loaded and plugged in at +20 degC it runs on until the air is at the thermostat's lower point, not a moment less. */
    @Test
    void aPullDownRunsWithoutABreak() {
        ColdBox box = standard(BoxKind.CHEST_FREEZER, 300, 0, null, Food.LEAN_BEEF);
        DumbColdBox walked = new DumbColdBox(box, 20);
        double hours = 0;
        double coldest = 20;
        while (walked.switchedOff() == 0) {
            assertThat(hours).isLessThan(500);
            coldest = walked.airDegC();
            walked.run(1.0 / 60, 22, true);
            hours += 1.0 / 60;
        }
        assertThat(coldest).isCloseTo(box.setDegC() - box.bandK() / 2, within(.2));
        assertThat(walked.compressorH()).isCloseTo(hours, within(.02));
        assertThat(walked.foodDegC()).isLessThan(Food.LEAN_BEEF.freezingDegC());
    }

    /** The heater's clock stands still without power, and the compressor while the heater is on. */
    @Test
    void theDefrostClockCountsPoweredHours() {
        Defrost heater = new Defrost(450, 20, 10);
        ColdBox box = standard(BoxKind.UPRIGHT_FREEZER, 400, 0, heater, Food.LEAN_BEEF);
        DumbColdBox walked = new DumbColdBox(box, -18);
        double each = heater.heaterW() * heater.minutes() / 60 * Defrost.INTO_BOX;
        walked.run(9.9, 22, true);
        assertThat(walked.heaterWh()).isZero();
        walked.run(24, 22, false);
        assertThat(walked.heaterWh()).isZero();
        walked.run(10, 22, true);
        assertThat(walked.heaterWh()).isCloseTo(each, within(.2));
        walked.run(10, 22, true);
        assertThat(walked.heaterWh()).isCloseTo(2 * each, within(.2));
    }

    /** Door heat comes from seven to eleven in the evening, as much as the box tells. */
    @Test
    void theDoorOpensByDay() {
        ColdBox box = standard(BoxKind.REFRIGERATOR, 400, 100, null, Food.WATER).withOpenings(32);
        DumbColdBox night = new DumbColdBox(box, 3).atHour(23);
        night.run(8, 22, false);
        assertThat(night.doorWh()).isZero();
        night.run(16, 22, false);
        assertThat(night.doorWh()).isCloseTo(16 * box.doorW(22), within(.1));
        assertThat(box.doorW(22)).isCloseTo(2 * 400 * 1.5 * 1.2e-3 * 1.006 / 3.6 * 19, within(1e-9));
    }
}
