package tideover.engine.cold;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import tideover.engine.cold.LabelStandard.Rule;
import tideover.engine.quantity.Units;

/**
 * 10 CFR 430.32(a): the regulation's lines worked out by hand for boxes of so many cubic feet, and one box that a public note
 * works out under three rules.
 */
class LabelStandardPublishedTest {
    /** Adjusted volume, exact and rounded kWh a year. */
    @ParameterizedTest
    @CsvSource({
        "CLASS_10, OF_2014, 7, 0, 12.32, 197.613, 198",
        "CLASS_10, OF_2014, 14.8, 0, 26.048, 297.690, 298",
        "CLASS_8, OF_2014, 10, 0, 17.6, 291.732, 292",
        "CLASS_3, OF_2014, 14, 4, 21.04, 403.493, 403",
        "CLASS_3, OF_2029, 14, 4, 21.04, 342.934, 343",
        "CLASS_3, OF_2001, 14, 4, 20.52, 477.096, 477",
        "CLASS_18, OF_2014, 5, 0, 8.8, 218.2, 218",
        "CLASS_18, OF_2029, 5, 0, 8.8, 176.968, 177",
    })
    void workedOut(
            LabelStandard productClass,
            Rule rule,
            double ft3,
            double freezerFt3,
            double adjustedFt3,
            double exact,
            double kWh) {
        double litres = Units.litres(ft3);
        double freezerL = Units.litres(freezerFt3);
        assertThat(productClass.adjustedFt3(rule, litres, freezerL)).isCloseTo(adjustedFt3, within(1e-9));
        assertThat(productClass.exactKwh(rule, adjustedFt3)).isCloseTo(exact, within(5e-4));
        assertThat(productClass.kWhPerYear(rule, litres, freezerL)).isEqualTo(kWh);
    }

    /** The chest of 7 ft3: .542 kWh a day, 22.6 W in the mean. */
    @Test
    void aSmallChest() {
        double kWh = LabelStandard.CLASS_10.kWhPerYear(Rule.OF_2014, Units.litres(7), 0);
        assertThat(kWh / 365).isCloseTo(.542, within(5e-4));
        assertThat(kWh / 8.76).isCloseTo(22.6, within(.05));
    }

    /** A public note: a refrigerator with its freezer above, adjusted volume 16.4, uses "about 436 / 366 / 311". */
    @ParameterizedTest
    @CsvSource({"OF_2001, 436, 436.7", "OF_2014, 366, 366.0", "OF_2029, 311, 311.1"})
    void threeRules(Rule rule, double told, double recomputed) {
        double kWh = LabelStandard.CLASS_3.exactKwh(rule, 16.4);
        assertThat(kWh).isCloseTo(told, within(1.0)).isCloseTo(recomputed, within(.05));
    }

    @Test
    void halvesGoUp() {
        assertThat(LabelStandard.rounded(100.5)).isEqualTo(101);
        assertThat(LabelStandard.rounded(101.5)).isEqualTo(102);
        assertThat(LabelStandard.rounded(101.499)).isEqualTo(101);
        // class 10 at an adjusted volume of 30: 218.7 + 107.8 is a half in decimals
        assertThat(LabelStandard.rounded(LabelStandard.CLASS_10.exactKwh(Rule.OF_2014, 30)))
                .isEqualTo(327);
        assertThat(LabelStandard.rounded(Math.nextDown(326.5))).isEqualTo(327);
    }

    @Test
    void everyKindHasItsClass() {
        assertThat(LabelStandard.of(BoxKind.CHEST_FREEZER, false, false, false)).isEqualTo(LabelStandard.CLASS_10);
        assertThat(LabelStandard.of(BoxKind.CHEST_FREEZER, true, false, false)).isEqualTo(LabelStandard.CLASS_10A);
        assertThat(LabelStandard.of(BoxKind.CHEST_FREEZER, false, true, false)).isEqualTo(LabelStandard.CLASS_18);
        assertThat(LabelStandard.of(BoxKind.UPRIGHT_FREEZER, false, false, false))
                .isEqualTo(LabelStandard.CLASS_8);
        assertThat(LabelStandard.of(BoxKind.UPRIGHT_FREEZER, true, false, false))
                .isEqualTo(LabelStandard.CLASS_9);
        assertThat(LabelStandard.of(BoxKind.UPRIGHT_FREEZER, false, true, false))
                .isEqualTo(LabelStandard.CLASS_16);
        assertThat(LabelStandard.of(BoxKind.UPRIGHT_FREEZER, true, true, false)).isEqualTo(LabelStandard.CLASS_17);
        assertThat(LabelStandard.of(BoxKind.REFRIGERATOR, true, false, true)).isEqualTo(LabelStandard.CLASS_3);
        assertThat(LabelStandard.of(BoxKind.REFRIGERATOR, false, true, true)).isEqualTo(LabelStandard.CLASS_11);
        assertThat(LabelStandard.of(BoxKind.MEDICINE_FRIDGE, false, true, false))
                .isEqualTo(LabelStandard.CLASS_11A);
        assertThatThrownBy(() -> LabelStandard.of(BoxKind.COOLER, false, false, false))
                .hasMessageContaining("no energy label");
    }

    @Test
    void theLimitOfABoxIsThatOf2014() {
        LabelStandard.Limit limit =
                LabelStandard.of(BoxKind.REFRIGERATOR, true, false, Units.litres(14), Units.litres(4));
        assertThat(limit).isEqualTo(new LabelStandard.Limit(LabelStandard.CLASS_3, 403));
    }

    /** Later rules ask no less of a box, at any size it is sold in. */
    @ParameterizedTest
    @EnumSource(LabelStandard.class)
    void rulesOnlyTighten(LabelStandard productClass) {
        for (double litres = 30; litres <= 800; litres += 10) {
            for (int i = 1; i < Rule.values().length; i++) {
                Rule before = Rule.values()[i - 1];
                Rule after = Rule.values()[i];
                if (productClass.has(before) && productClass.has(after)) {
                    assertThat(productClass.kWhPerYear(after, litres, 0))
                            .isLessThanOrEqualTo(productClass.kWhPerYear(before, litres, 0));
                }
            }
        }
    }

    @Test
    void whatIsNotKnownIsRefused() {
        assertThat(LabelStandard.CLASS_9.has(Rule.OF_2029)).isFalse();
        assertThat(LabelStandard.CLASS_10.fromMemory(Rule.OF_2014)).isTrue();
        assertThat(LabelStandard.CLASS_3.fromMemory(Rule.OF_2014)).isFalse();
        assertThatThrownBy(() -> LabelStandard.CLASS_9.kWhPerYear(Rule.OF_2029, 400, 0))
                .hasMessageContaining("class 9");
    }
}
