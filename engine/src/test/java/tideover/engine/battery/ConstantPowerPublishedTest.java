package tideover.engine.battery;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

/** Closed solutions worked out elsewhere. */
class ConstantPowerPublishedTest {
    /** 600 W on 12.8 V behind 20 milliohm; no solution above V^2/4R = 2048 W. */
    @Test
    void wattsBehindAResistance() {
        double amps = ConstantPower.dischargeA(12.8, .020, 600);
        assertThat(amps).isCloseTo(50.9275, within(1e-3));
        assertThat(12.8 - amps * .020).isCloseTo(11.7814, within(1e-3));
        assertThat(amps * amps * .020).isCloseTo(51.87, within(.005));
        assertThat(ConstantPower.mostW(12.8, .020)).isCloseTo(2048, within(1e-9));
        assertThat(ConstantPower.dischargeA(12.8, .020, 2047.9)).isFinite();
        assertThat(ConstantPower.dischargeA(12.8, .020, 2048.1)).isNaN();
    }

    /** Inverter of 1000 W, efficiency .88, at a cut-off of 10.5 V: 108.23 A. */
    @Test
    void inverterAtItsCutOff() {
        assertThat(ConstantPower.dischargeA(10.5, 0, 1000 / .88)).isCloseTo(108.23, within(.005));
    }

    /** Two-point test, IEC 60896-21 style (formula from memory): 40 A 12.2 V, 200 A 11.6 V: 3.75 milliohm, 3293 A. */
    @Test
    void twoPoints() {
        InnerResistance inner = InnerResistance.of(40, 12.2, 200, 11.6);
        assertThat(inner.ohm()).isCloseTo(.00375, within(1e-9));
        assertThat(inner.shortA()).isCloseTo(3293, within(.5));
        assertThatThrownBy(() -> InnerResistance.of(40, 12.2, 40, 11.6)).isInstanceOf(IllegalArgumentException.class);
    }

    @Test
    void theCurrentGivesTheWattsItWasAskedFor() {
        for (double ohm : new double[] {0, 1e-9, .001, .02}) {
            for (double watts = 0; watts <= 1500; watts += 100) {
                double out = ConstantPower.dischargeA(12.8, ohm, watts);
                double in = ConstantPower.chargeA(12.8, ohm, watts);
                assertThat(out * (12.8 - out * ohm)).isCloseTo(watts, within(1e-9));
                assertThat(in * (12.8 + in * ohm)).isCloseTo(watts, within(1e-9));
            }
        }
    }
}
