package tideover.engine.battery;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * EN 50272-2 / IEC 62485-2 section 7, form and gassing currents as four secondary pages print them; the worked batteries are the
 * form's arithmetic by hand. Check the edition in force.
 */
class HydrogenPublishedTest {
    /** Faraday's law; .42 and .46 both appear in print, of different temperatures. */
    @Test
    void hydrogenOfAnAmpereHour() {
        assertThat(Hydrogen.litresPerAh(0)).isCloseTo(.418, within(.0005));
        assertThat(Hydrogen.litresPerAh(25)).isCloseTo(.456, within(.0005));
    }

    /** 24 parts of air to one of hydrogen, .42 litres, five times over: .0504, printed .05. */
    @Test
    void theConstantIsAirForHydrogenFiveTimesOver() {
        assertThat(24 * Hydrogen.litresPerAh(0) / 1000 * 5).isCloseTo(Hydrogen.AIR_M3_PER_AH, within(.0005));
    }

    @Test
    void gassingCurrents() {
        assertThat(Hydrogen.floatMilliampPerAh(Chemistry.FLOODED_LEAD)).isEqualTo(5);
        assertThat(Hydrogen.boostMilliampPerAh(Chemistry.FLOODED_LEAD)).isEqualTo(20);
        for (Chemistry sealed : new Chemistry[] {Chemistry.AGM_LEAD, Chemistry.GEL_LEAD}) {
            assertThat(Hydrogen.floatMilliampPerAh(sealed)).isEqualTo(1);
            assertThat(Hydrogen.boostMilliampPerAh(sealed)).isEqualTo(8);
        }
        assertThatThrownBy(() -> Hydrogen.boostMilliampPerAh(Chemistry.IRON_PHOSPHATE))
                .isInstanceOf(IllegalArgumentException.class);
    }

    @ParameterizedTest
    @CsvSource({
        "AGM_LEAD, 6, 100, .030, .84, .240, 6.72",
        "FLOODED_LEAD, 6, 100, .150, 4.2, .600, 16.8",
    })
    void twelveVolts(
            Chemistry lead, int cells, double ah, double floatM3, double floatCm2, double boostM3, double boostCm2) {
        double onFloat = Hydrogen.airM3PerH(cells, Hydrogen.floatMilliampPerAh(lead), ah);
        double boosted = Hydrogen.airM3PerH(cells, Hydrogen.boostMilliampPerAh(lead), ah);
        assertThat(onFloat).isCloseTo(floatM3, within(1e-12));
        assertThat(Hydrogen.openingCm2(onFloat)).isCloseTo(floatCm2, within(1e-9));
        assertThat(boosted).isCloseTo(boostM3, within(1e-12));
        assertThat(Hydrogen.openingCm2(boosted)).isCloseTo(boostCm2, within(1e-9));
    }

    @Test
    void fortyEightVoltsOfFloodedLead() {
        double air = Hydrogen.airM3PerH(24, Hydrogen.boostMilliampPerAh(Chemistry.FLOODED_LEAD), 200);
        assertThat(air).isCloseTo(4.80, within(1e-12));
        assertThat(Hydrogen.openingCm2(air)).isCloseTo(134.4, within(1e-9));
    }

    /** EN 50272-3, a maker's page: 2 A for each 100 Ah vented, divided by 100. Taken for mA for each Ah it would be ten times too little. */
    @Test
    void theMotivePowerPartCountsInAmperesForEachHundred() {
        double printed = .05 * 6 * 2 * 100 / 100;
        assertThat(Hydrogen.airM3PerH(6, Hydrogen.milliampPerAh(2), 100)).isCloseTo(printed, within(1e-12));
        assertThat(Hydrogen.airM3PerH(6, 2, 100)).isCloseTo(printed / 10, within(1e-12));
    }
}
