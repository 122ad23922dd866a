package tideover.engine.wiring;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import org.junit.jupiter.api.Test;
import tideover.engine.electronics.ConductorSize;

/**
 * Voltage drop worked by hand from NFPA 70 chapter 9 table 8 and IEC 60228; the circular mil formula of boat practice and
 * both shares (ABYC E-11, ISO 13297) from memory; .03 of NFPA 70 for a branch circuit found printed.
 */
class VoltageDropPublishedTest {
    private static final double M_PER_FT = .3048;
    private static final double MM2_PER_CIRCULAR_MIL = Math.PI / 4 * .0254 * .0254;

    private static ConductorSize size(String words) {
        return ConductorSize.named(words).orElseThrow();
    }

    private static ConductorSize thinnestOf(double circularMils) {
        return ConductorSize.gauges().stream()
                .filter(gauge -> gauge.areaMm2() / MM2_PER_CIRCULAR_MIL >= circularMils)
                .findFirst()
                .orElseThrow();
    }

    /** 10 A, 15 ft one way, 12 AWG: 2 x 15 / 1000 x 1.98 x 10 = .594 V, 4.95 % of 12 V. */
    @Test
    void aGaugeByTable8() {
        double volts = VoltageDrop.volts(size("12 AWG"), 15 * M_PER_FT, 10, 75);
        assertThat(volts).isCloseTo(.594, within(1e-9));
        assertThat(volts / 12).isCloseTo(.0495, within(1e-9));
    }

    /** 20 A, 5 m one way, 6 mm2: .660 V, 5.50 % of 12 V and 2.75 % of 24 V; .7897 V where it is 70 degC warm. */
    @Test
    void aMetricSizeColdAndWarm() {
        double volts = VoltageDrop.volts(size("6 mm2"), 5, 20, 20);
        assertThat(volts).isCloseTo(.660, within(1e-9));
        assertThat(volts / 12).isCloseTo(.0550, within(1e-9));
        assertThat(volts / 24).isCloseTo(.0275, within(1e-9));
        assertThat(VoltageDrop.volts(size("6 mm2"), 5, 20, 70)).isCloseTo(.7897, within(5e-5));
    }

    @Test
    void circularMilsWorked() {
        double critical = VoltageDrop.circularMils(20, 30, VoltageDrop.CRITICAL_SHARE * 12);
        assertThat(critical).isCloseTo(17_917, within(.5));
        assertThat(thinnestOf(critical)).isEqualTo(size("6 AWG"));
        double other = VoltageDrop.circularMils(20, 30, VoltageDrop.OTHER_SHARE * 12);
        assertThat(other).isCloseTo(5375, within(.5));
        assertThat(thinnestOf(other)).isEqualTo(size("12 AWG"));
        double thick = VoltageDrop.circularMils(100, 12, VoltageDrop.CRITICAL_SHARE * 12);
        assertThat(thick).isCloseTo(35_833, within(.5));
        assertThat(thinnestOf(thick)).isEqualTo(size("4 AWG"));
    }

    @Test
    void theShares() {
        assertThat(VoltageDrop.CRITICAL_SHARE).isEqualTo(.03);
        assertThat(VoltageDrop.OTHER_SHARE).isEqualTo(.10);
    }

    /**
     * Two models of one thing: the volts that table 8 gives a gauge at 25 degC need, by the boat formula, that gauge's own
     * circular mils. At 75 degC the boat formula is a sixth too thin: it takes the wire as cool.
     */
    @Test
    void theTwoModelsAgreeOnCoolWire() {
        for (ConductorSize gauge : ConductorSize.gauges()) {
            double circularMils = gauge.areaMm2() / MM2_PER_CIRCULAR_MIL;
            double coolV = VoltageDrop.volts(gauge, 10 * M_PER_FT, 20, 25);
            assertThat(VoltageDrop.circularMils(20, 20, coolV))
                    .as(gauge.words())
                    .isCloseTo(circularMils, withinPercentage(1.5));
            double warmV = VoltageDrop.volts(gauge, 10 * M_PER_FT, 20, 75);
            assertThat(VoltageDrop.circularMils(20, 20, warmV) / circularMils)
                    .as(gauge.words())
                    .isBetween(.82, .84);
        }
    }

    @Test
    void inProportionToLengthAndAmps() {
        double once = VoltageDrop.volts(size("6 AWG"), 3, 7, 40);
        assertThat(VoltageDrop.volts(size("6 AWG"), 6, 7, 40)).isCloseTo(2 * once, within(1e-12));
        assertThat(VoltageDrop.volts(size("6 AWG"), 3, 14, 40)).isCloseTo(2 * once, within(1e-12));
        assertThat(VoltageDrop.volts(size("6 AWG"), 0, 14, 40)).isZero();
        assertThatThrownBy(() -> VoltageDrop.volts(size("6 AWG"), -1, 14, 40))
                .isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> VoltageDrop.circularMils(20, 30, 0)).isInstanceOf(IllegalArgumentException.class);
    }
}
