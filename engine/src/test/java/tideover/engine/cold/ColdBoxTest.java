package tideover.engine.cold;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import tideover.engine.cold.LabelStandard.Rule;
import tideover.engine.quantity.Units;

class ColdBoxTest {
    private static final List<Contents> FOOD = List.of(Contents.of(Food.WATER, 20));
    private static final double FRESH_L = Units.litres(14);
    private static final double FREEZER_L = Units.litres(4);

    /**
     * A refrigerator with its freezer part as two boxes, walls alike all around, all heat moved at the freezer's cold: what the
     * one box stands for.
     */
    private static final class TwoParts {
        final double freshWPerK;
        final double freezerWPerK;

        TwoParts(double kWhPerYear) {
            double fresh = StrictMath.pow(FRESH_L, 2.0 / 3);
            double freezer = StrictMath.pow(FREEZER_L, 2.0 / 3);
            double movedW = kWhPerYear / 8.76 * Compressor.movedPerW(ColdBox.LABEL_ROOM_DEG_C, freezerDegC());
            double each = movedW
                    / (fresh * (ColdBox.LABEL_ROOM_DEG_C - freshDegC())
                            + freezer * (ColdBox.LABEL_ROOM_DEG_C - freezerDegC()));
            freshWPerK = fresh * each;
            freezerWPerK = freezer * each;
        }

        double watts(double roomDegC) {
            double heatW = freshWPerK * (roomDegC - freshDegC()) + freezerWPerK * (roomDegC - freezerDegC());
            return heatW / Compressor.movedPerW(roomDegC, freezerDegC());
        }

        static double freshDegC() {
            return LabelStandard.insideDegC(BoxKind.REFRIGERATOR);
        }

        static double freezerDegC() {
            return LabelStandard.insideDegC(BoxKind.UPRIGHT_FREEZER);
        }
    }

    private static ColdBox refrigerator() {
        return ColdBox.ofLabel(
                        BoxKind.REFRIGERATOR,
                        FRESH_L,
                        FREEZER_L,
                        LabelStandard.CLASS_3.kWhPerYear(Rule.OF_2014, FRESH_L, FREEZER_L),
                        null,
                        null,
                        FOOD)
                .setTo(LabelStandard.insideDegC(BoxKind.REFRIGERATOR), 3);
    }

    private static double meanW(ColdBox box, double roomDegC) {
        Compressor compressor = box.compressor();
        return compressor == null ? 0 : box.dutyAt(roomDegC) * compressor.watts(roomDegC);
    }

    /** All heat to the fresh food: it warms faster than as one of two parts, and the label's use is met in its room. */
    @Test
    void oneBoxForTwoPartsErrsToTheWarmSide() {
        TwoParts two = new TwoParts(403);
        assertThat(two.watts(ColdBox.LABEL_ROOM_DEG_C)).isCloseTo(403 / 8.76, within(1e-9));
        ColdBox one = refrigerator();
        assertThat(meanW(one, ColdBox.LABEL_ROOM_DEG_C)).isCloseTo(403 / 8.76, within(1e-9));
        assertThat(one.wallWPerK() / two.freshWPerK).isCloseTo(1.77, within(.01));
    }

    /** What the one box costs: in a cooler room its use falls faster than that of the two parts. docs/models.md has the shares. */
    @ParameterizedTest
    @CsvSource({"32.2, 1.00", "27, 0.96", "22, 0.90", "17, 0.82", "12, 0.68"})
    void oneBoxUsesLessInACoolRoom(double roomDegC, double share) {
        assertThat(meanW(refrigerator(), roomDegC) / new TwoParts(403).watts(roomDegC))
                .isCloseTo(share, within(.01));
    }

    /** Walls by label and walls by a meter in the label's test are the same walls. */
    @Test
    void labelAndMeterAgree() {
        double set = BoxKind.REFRIGERATOR.usualDegC();
        double walls = ColdBox.wallWPerK(365, ColdBox.LABEL_ROOM_DEG_C, set, null);
        ColdBox metered = ColdBox.ofMeter(BoxKind.REFRIGERATOR, 300, 1, ColdBox.LABEL_ROOM_DEG_C, null, null, FOOD);
        assertThat(metered.wallWPerK()).isCloseTo(walls, within(1e-12));
        assertThat(24 * meanW(metered, ColdBox.LABEL_ROOM_DEG_C)).isCloseTo(1000, within(1e-9));
    }

    /** The heater's heat that stays inside is not counted as coming through the walls. */
    @Test
    void defrostHeatIsNotTheWalls() {
        Defrost heater = new Defrost(400, 20, 24);
        ColdBox with = ColdBox.ofLabel(BoxKind.UPRIGHT_FREEZER, 400, 443, null, heater, FOOD);
        ColdBox without = ColdBox.ofLabel(BoxKind.UPRIGHT_FREEZER, 400, 443, null, null, FOOD);
        assertThat(with.wallWPerK()).isLessThan(without.wallWPerK());
        ColdBox inTest = with.setTo(LabelStandard.insideDegC(with.kind()), 6);
        double free = 1 - heater.minutes() / 60 / heater.everyHours();
        assertThat(free * meanW(inTest, ColdBox.LABEL_ROOM_DEG_C) + heater.meanW())
                .isCloseTo(443 / 8.76, within(1e-9));
    }

    /** A usual compressor copes with its box in any room, however hungry the box. */
    @ParameterizedTest
    @EnumSource(value = BoxKind.class, names = "COOLER", mode = EnumSource.Mode.EXCLUDE)
    void usualCompressorsCope(BoxKind kind) {
        for (double litres = 40; litres <= 800; litres += 40) {
            for (double kWh : new double[] {100, 300, 1000, 2500}) {
                ColdBox box = ColdBox.ofLabel(kind, litres, kWh, null, null, FOOD);
                assertThat(box.dutyAt(ColdBox.LABEL_ROOM_DEG_C)).isLessThan(.65);
                assertThat(box.dutyAt(43))
                        .as("%s %.0f L %.0f kWh", kind, litres, kWh)
                        .isLessThan(1);
            }
        }
    }

    /** A freezer part makes the compressor work harder for the same heat, by label, by meter and by walls alike. */
    @Test
    void aFreezerPartIsWorkedFor() {
        ColdBox plain = ColdBox.ofMeter(BoxKind.REFRIGERATOR, FRESH_L, 1.2, 22, null, null, FOOD);
        ColdBox with = ColdBox.ofMeter(BoxKind.REFRIGERATOR, FRESH_L, FREEZER_L, 1.2, 22, null, null, FOOD);
        assertThat(with.movedPerW(22)).isEqualTo(Compressor.movedPerW(22, ColdBox.FREEZER_PART_DEG_C));
        assertThat(plain.movedPerW(22)).isEqualTo(Compressor.movedPerW(22, 3));
        assertThat(with.wallWPerK() / plain.wallWPerK())
                .isCloseTo(with.movedPerW(22) / plain.movedPerW(22), within(1e-12));
        assertThat(24 * meanW(with, 22)).isCloseTo(1200, within(1e-9));
        assertThat(with.setTo(5, 3).workDegC()).isEqualTo(ColdBox.FREEZER_PART_DEG_C);
        assertThat(plain.setTo(5, 3).workDegC()).isEqualTo(5);
        assertThat(plain.withFreezerPart().movedPerW(22)).isEqualTo(with.movedPerW(22));
    }

    /** However its conductance is known, more food has more of it, as its surface has. */
    @Test
    void moreFoodKeepsItsOwnConductance() {
        ColdBox box =
                ColdBox.ofWalls(BoxKind.CHEST_FREEZER, 200, .6, null, null, List.of(new Contents(Food.COD, 20, 3)));
        assertThat(box.withFoodTimes(2).food().airWPerK()).isCloseTo(3 * StrictMath.pow(2, 2.0 / 3), within(1e-12));
        assertThat(box.withFoodTimes(2).food().kg()).isEqualTo(40);
        assertThat(box.withFoodTimes(1)).isEqualTo(box);
        Contents usual = Contents.of(Food.COD, 20).times(1.7);
        assertThat(usual.airWPerK()).isCloseTo(Contents.of(Food.COD, 34).airWPerK(), within(1e-12));
    }

    @Test
    void aToldCompressorIsKeptAndMayFallShort() {
        Compressor told = new Compressor(60, 22);
        ColdBox box = ColdBox.ofLabel(BoxKind.CHEST_FREEZER, 600, 900, told, null, FOOD);
        assertThat(box.compressor()).isEqualTo(told);
        assertThat(box.dutyAt(ColdBox.LABEL_ROOM_DEG_C)).isGreaterThan(1);
    }

    @Test
    void whatCannotBeIsRefused() {
        assertThatThrownBy(() -> ColdBox.ofLabel(BoxKind.COOLER, 40, 200, null, null, FOOD))
                .hasMessageContaining("no energy label");
        assertThatThrownBy(() -> ColdBox.ofMeter(BoxKind.REFRIGERATOR, 300, 1, 3, null, null, FOOD))
                .hasMessageContaining("roomDegC");
        // a heater that alone uses all that the label tells
        assertThatThrownBy(() -> ColdBox.ofLabel(BoxKind.REFRIGERATOR, 300, 100, null, new Defrost(600, 30, 10), FOOD))
                .hasMessageContaining("heat through the walls");
    }
}
