package tideover.app.files;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.offset;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import tideover.app.files.Quantities.Measure;

/** Conversions against the exact factors of NIST Special Publication 811 (Thompson &amp; Taylor 2008), appendix B.8. */
class QuantitiesPublishedTest {
    @ParameterizedTest
    @CsvSource({
        "1 lb, MASS, 0.45359237",
        "25 lbs, MASS, 11.33980925",
        "1 oz, MASS, 0.028349523125",
        "250 g, MASS, 0.25",
        "12 ft, LENGTH, 3.6576",
        "1 in, LENGTH, 0.0254",
        "1 yd, LENGTH, 0.9144",
        "-5 degF, TEMPERATURE, -20.5555555555556",
        "32 degF, TEMPERATURE, 0",
        "273.15 K, TEMPERATURE, 0",
        "1.2 kWh, ENERGY, 1200",
        "3.6 MJ, ENERGY, 1000",
        "36 kJ, ENERGY, 10",
        "90 min, TIME, 1.5",
        "3 d, TIME, 72",
        "1 rad, ANGLE, 57.2957795130823",
        "85 %, PERCENT, 85",
        "0.5 kW, POWER, 500",
        "500 mA, CURRENT, 0.5",
        "1.2 kVA, APPARENT_POWER, 1200",
        "0.5 min, MOMENT, 30",
        "7 ft3, VOLUME, 198.217926144",
        "50 gal, VOLUME, 189.2705892",
        "27 gallons, VOLUME, 102.206118168",
        "100 L/min, FLOW, 6000",
        "1600 gph, FLOW, 6056.6588544",
        "27 gal/min, FLOW, 6132.36709008",
        "0.8 kWh, ENERGY_OF_A_DAY, 0.8",
        "800 Wh, ENERGY_OF_A_DAY, 0.8",
        "0.8 kWh a day, ENERGY_OF_A_DAY, 0.8",
        "220 kWh a year, ENERGY_OF_A_YEAR, 220",
        "1.2 W/K, HEAT_FLOW, 1.2",
        "12 h, BRIDGE, 43200"
    })
    void isTheEnginesUnit(String typed, Measure measure, double value) {
        Quantities.Outcome outcome = Quantities.read(typed, measure);

        assertThat(outcome.wrong()).isFalse();
        assertThat(outcome.value()).isCloseTo(value, offset(1e-11 * Math.max(1, Math.abs(value))));
    }

    @Test
    void theSignsOfThePrintingTradeAreTaken() {
        assertThat(Quantities.read("\u22125\u00A0\u00B0C", Measure.TEMPERATURE).value())
                .isEqualTo(-5);
        assertThat(Quantities.read("60\u00B0", Measure.ANGLE).value()).isEqualTo(60);
        assertThat(Quantities.read("85%", Measure.PERCENT).value()).isEqualTo(85);
    }
}
