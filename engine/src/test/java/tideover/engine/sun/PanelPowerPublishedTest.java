package tideover.engine.sun;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Panel temperature and power against published formulas and tables. */
class PanelPowerPublishedTest {
    /** IEC 61215 practice; Duffie &amp; Beckman, chapter 23. */
    @Test
    void nominalRule() {
        assertThat(PanelPower.cellDegC(30, 1000, 45)).isCloseTo(61.25, within(1e-9));
    }

    /** Definition of the nominal operating cell temperature: 800 W/m2, 20 degC. */
    @Test
    void nominalConditionsGiveTheNominalTemperature() {
        assertThat(PanelPower.cellDegC(20, 800, 47.3)).isCloseTo(47.3, within(1e-9));
    }

    /** Duffie &amp; Beckman, equation 23.3, 18 % efficient, .9 absorbed: the rule used is the hotter, so the safer, of the two. */
    @Test
    void nominalRuleLessElectricity() {
        assertThat(CellTemperature.runningDegC(30, 1000, 45, .18, .9)).isCloseTo(55.0, within(1e-9));
    }

    /** Arithmetic: 36.25 K over the rating at -.40 % a kelvin leaves 85.5 %. */
    @Test
    void hotPanelGivesLess() {
        assertThat(PanelPower.wattsPerRatedWatt(1000, 61.25, -0.004)).isCloseTo(0.855, within(1e-9));
    }

    @Test
    void ratedConditionsGiveTheRatedWattAndPowerIsNeverNegative() {
        assertThat(PanelPower.wattsPerRatedWatt(1000, 25, -0.004)).isCloseTo(1, within(1e-12));
        assertThat(PanelPower.wattsPerRatedWatt(0, 25, -0.004)).isZero();
        assertThat(PanelPower.wattsPerRatedWatt(1000, 400, -0.004)).isZero();
    }

    /** Faiman 2008 (coefficients from memory). */
    @ParameterizedTest
    @CsvSource({"1000, 1, 51.41", "800, 3, 37.57"})
    void faiman(double plane, double wind, double expected) {
        assertThat(CellTemperature.faimanDegC(20, plane, wind)).isCloseTo(expected, within(.01));
    }

    /** SAND2004-3535, table 1, air 25 degC, 1000 W/m2, wind 0, 1, 5 m/s (the rise of row 2 and 3 and all of row 4 from memory). */
    @ParameterizedTest
    @CsvSource({
        "-3.47, -.0594, 3, 59.12, 57.32, 51.12",
        "-2.98, -.0471, 1, 76.79, 74.46, 66.14",
        "-3.56, -.0750, 3, 56.44, 54.38, 47.55",
        "-2.81, -.0455, 0, 85.21, 82.53, 72.96",
    })
    void king(double a, double b, double rise, double still, double breeze, double wind) {
        assertThat(CellTemperature.kingDegC(25, 1000, 0, a, b, rise)).isCloseTo(still, within(.01));
        assertThat(CellTemperature.kingDegC(25, 1000, 1, a, b, rise)).isCloseTo(breeze, within(.01));
        assertThat(CellTemperature.kingDegC(25, 1000, 5, a, b, rise)).isCloseTo(wind, within(.01));
    }

    /**
     * The rule with the usual 45 degC lies within 2.5 K of both open-rack models at 1 m/s, the wind it stands for, and above
     * them in a stronger wind; a panel close to a roof is 18 K hotter, which the program does not know.
     */
    @Test
    void nominalRuleAgreesWithModelsThatKnowTheWind() {
        for (double plane = 200; plane <= 1000; plane += 200) {
            double ours = PanelPower.cellDegC(20, plane, 45);
            assertThat(ours).isCloseTo(CellTemperature.faimanDegC(20, plane, 1), within(2.5));
            assertThat(ours).isCloseTo(CellTemperature.kingDegC(20, plane, 1, -3.47, -.0594, 3), within(2.5));
            assertThat(ours).isGreaterThan(CellTemperature.faimanDegC(20, plane, 5));
        }
        double onRoof = CellTemperature.kingDegC(20, 1000, 1, -2.98, -.0471, 1);
        assertThat(onRoof - PanelPower.cellDegC(20, 1000, 45)).isCloseTo(18, within(1.0));
    }
}
