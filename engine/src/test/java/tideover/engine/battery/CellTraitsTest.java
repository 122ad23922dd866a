package tideover.engine.battery;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

class CellTraitsTest {
    @ParameterizedTest
    @CsvSource({
        "FLOODED_LEAD, 12, 6",
        "AGM_LEAD, 24, 12",
        "GEL_LEAD, 6, 3",
        "FLOODED_LEAD, 2, 1",
        "AGM_LEAD, 12.6, 6",
        "IRON_PHOSPHATE, 12.8, 4",
        "IRON_PHOSPHATE, 12, 4",
        "IRON_PHOSPHATE, 25.6, 8",
        "IRON_PHOSPHATE, 48, 15",
        "IRON_PHOSPHATE, 51.2, 16",
        "OTHER_LITHIUM, 14.6, 4",
        "OTHER_LITHIUM, 11.1, 3",
        "OTHER_LITHIUM, 36, 10",
    })
    void cellsOfABattery(Chemistry chemistry, double nominalV, int cells) {
        assertThat(chemistry.traits().cells(nominalV)).isEqualTo(cells);
    }

    @ParameterizedTest
    @EnumSource
    void curvesAreWhatTheSimulationNeeds(Chemistry chemistry) {
        CellTraits traits = chemistry.traits();
        for (int percent = 1; percent <= 100; percent++) {
            double before = (percent - 1) / 100.0;
            double now = percent / 100.0;
            assertThat(traits.openVByFill().at(now))
                    .isGreaterThan(traits.openVByFill().at(before));
            assertThat(traits.chargeEffByFill().at(now))
                    .isLessThanOrEqualTo(traits.chargeEffByFill().at(before))
                    .isBetween(.3, 1.0);
            assertThat(traits.ohmTimesByFill().at(now))
                    .isLessThanOrEqualTo(traits.ohmTimesByFill().at(before));
        }
        for (int degC = -49; degC <= 60; degC++) {
            assertThat(traits.usableByDegC().at(degC))
                    .isGreaterThanOrEqualTo(traits.usableByDegC().at(degC - 1))
                    .isBetween(.1, 1.0);
            assertThat(traits.ohmTimesByDegC().at(degC))
                    .isLessThanOrEqualTo(traits.ohmTimesByDegC().at(degC - 1));
            assertThat(traits.chargeShareByDegC().at(degC)).isBetween(0.0, 1.0);
            assertThat(traits.dischargeShareByDegC().at(degC)).isBetween(0.0, 1.0);
        }
        assertThat(traits.ohmTimesByDegC().at(25)).isEqualTo(1);
        assertThat(traits.ohmTimesByFill().at(.5)).isEqualTo(1);
        assertThat(traits.usableByDegC().at(25)).isEqualTo(1);
        assertThat(traits.ohmAh()).isBetween(traits.leastOhmAh(), traits.mostOhmAh());
        assertThat(traits.cutOffV()).isLessThanOrEqualTo(traits.openVByFill().at(0));
        assertThat(traits.openVByFill().at(1))
                .isLessThanOrEqualTo(traits.absorbV())
                .isLessThanOrEqualTo(chemistry == Chemistry.OTHER_LITHIUM ? traits.absorbV() : traits.floatV());
    }

    @Test
    void innerResistanceOfWholeBatteries() {
        assertThat(Chemistry.AGM_LEAD.traits().innerOhm(12, 100)).isCloseTo(.005, within(.0001));
        assertThat(Chemistry.IRON_PHOSPHATE.traits().innerOhm(12.8, 100)).isCloseTo(.015, within(.0001));
        assertThat(Chemistry.IRON_PHOSPHATE.traits().innerOhm(25.6, 100)).isCloseTo(.030, within(.0001));
    }

    @Test
    void selfDischargeDoublesWithTenKelvinForLeadOnly() {
        CellTraits flooded = Chemistry.FLOODED_LEAD.traits();
        assertThat(flooded.selfSharePerHour(20) * 720).isCloseTo(.05, within(1e-12));
        assertThat(flooded.selfSharePerHour(30)).isCloseTo(2 * flooded.selfSharePerHour(20), within(1e-15));
        CellTraits iron = Chemistry.IRON_PHOSPHATE.traits();
        assertThat(iron.selfSharePerHour(30)).isEqualTo(iron.selfSharePerHour(20));
    }
}
