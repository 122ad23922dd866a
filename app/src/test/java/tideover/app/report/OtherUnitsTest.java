package tideover.app.report;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * Factors: NIST Special Publication 811 (2008), appendix B: pound 0.453 592 37 kg, foot 0.3048 m, inch 0.0254 m, gallon (US)
 * 3.785 412 L, mile 1.609 344 km, degree Fahrenheit (t - 32) / 1.8.
 */
class OtherUnitsTest {
    private static final OtherUnits BOTH = new OtherUnits(true, null);

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "each 11.2 kg heavy | each 11.2 kg (24.7 lb) heavy",
                "at -4 degC, | at -4 degC (25 degF),",
                "from 0 to 25 degC. | from 0 to 25 degC (32 to 77 degF).",
                "just -18 degC | just -18 degC (0 degF)",
                "up to 12 m of it | up to 12 m (39 ft) of it",
                "2 m | 2 m (6.6 ft)",
                "40 cm | 40 cm (15.7 in)",
                "1,000 x 508 x 35 mm | 1,000 x 508 x 35 mm (39.37 x 20.00 x 1.38 in)",
                "17 cm2 in and out | 17 cm2 (2.6 in2) in and out",
                "0.6 m3 an hour | 0.6 m3 (21 ft3) an hour",
                "20 L | 20 L (5.3 gal)",
                "16 km away | 16 km (9.9 mi) away",
                // Told already, part of a longer unit, or no figure of its own.
                "6.1 m (20 ft) from | 6.1 m (20 ft) from",
                "at 5 L/min | at 5 L/min",
                "12 W/K | 12 W/K",
                "35 mm2 | 35 mm2",
                "N5-20 kg | N5-20 kg",
                "3 minutes and 4 meals | 3 minutes and 4 meals"
            })
    void tellsEachFigureTwice(String told, String both) {
        assertThat(BOTH.inText(told)).isEqualTo(both);
    }

    @Test
    void sumsInAnotherCurrency() {
        OtherUnits euros = new OtherUnits(false, OtherUnits.Rate.of("1 usd = 0.92 EUR"));
        assertThat(euros.inText("costs 1,045.20 USD, 900 to 1,200 USD and 11.2 kg"))
                .isEqualTo("costs 1,045.20 USD (961.58 EUR), 900 to 1,200 USD (828 to 1,104 EUR) and 11.2 kg");
        assertThat(euros.inText("10.00 CHF")).isEqualTo("10.00 CHF");
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "0.92",
                "1 USD = EUR",
                "1 USD = 0 EUR",
                "2 USD = 1 EUR",
                "1 USD = -1 EUR",
                "1 US = 1 EUR",
                "$1 = 1"
            })
    void anUnreadableRateIsRefused(String typed) {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> OtherUnits.Rate.of(typed))
                .withMessageContaining("1 USD = 0.92 EUR");
    }

    @Test
    void leavesFieldsAttributesAndDrawingsAlone() {
        String page =
                "<p title=\"9 kg\">9 kg</p><input value=\"9 kg\"><textarea>9 kg</textarea><svg><text>9 kg</text></svg>"
                        + "<td class=\"figures\" data-unit=\"kg\">9.0</td><td data-unit=\"kg\">unknown</td><td>9.0</td> 9 kg";
        assertThat(BOTH.inPage(page))
                .isEqualTo("<p title=\"9 kg\">9 kg (20 lb)</p><input value=\"9 kg\"><textarea>9 kg</textarea>"
                        + "<svg><text>9 kg</text></svg><td class=\"figures\" data-unit=\"kg\">9.0 (19.8 lb)</td>"
                        + "<td data-unit=\"kg\">unknown</td><td>9.0</td> 9 kg");
        assertThat(OtherUnits.NONE.inPage(page)).isEqualTo(page);
    }
}
