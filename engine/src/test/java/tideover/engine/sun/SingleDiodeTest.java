package tideover.engine.sun;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import tideover.engine.quantity.RandomStream;

class SingleDiodeTest {
    /** Any circuit, from a coin cell in dusk to a long string, with and without the two resistances. */
    private static SingleDiode any(RandomStream random) {
        double modifiedV = StrictMath.exp(-4 + 7 * random.nextUniform());
        double photoA = StrictMath.exp(-8 + 11 * random.nextUniform());
        double openV = modifiedV * (5 + 40 * random.nextUniform());
        double ohm = random.nextUniform() < 0.1 ? 0 : 0.3 * openV / photoA * random.nextUniform();
        double shuntOhm = random.nextUniform() < 0.1
                ? Double.POSITIVE_INFINITY
                : openV / photoA * StrictMath.exp(1 + 6 * random.nextUniform());
        return new SingleDiode(photoA, photoA / StrictMath.expm1(openV / modifiedV), ohm, shuntOhm, modifiedV);
    }

    /** The current found satisfies the equation, from short circuit to twice open circuit. */
    @Test
    void currentSolvesTheCircuit() {
        RandomStream random = RandomStream.of(11, 0, RandomStream.Purpose.TEST);
        for (int i = 0; i < 2000; i++) {
            SingleDiode diode = any(random);
            double openV = diode.openCircuitV();
            double last = Double.POSITIVE_INFINITY;
            for (int k = 0; k <= 40; k++) {
                double volts = openV * k / 20;
                double amps = diode.currentA(volts);
                if (diode.seriesOhm() == 0 && k > 20) {
                    break; // a bare diode at twice open circuit: beyond any number
                }
                double x = volts + amps * diode.seriesOhm();
                double diodeA = diode.saturationA() * StrictMath.expm1(x / diode.modifiedV());
                double error = diode.photoA() - diodeA - x / diode.shuntOhm() - amps;
                assertThat(error).as("%s at %s V", diode, volts).isCloseTo(0, within(1e-9 * (diode.photoA() + diodeA)));
                assertThat(amps).isLessThanOrEqualTo(last);
                last = amps;
            }
            assertThat(diode.currentA(openV)).isCloseTo(0, within(1e-9 * diode.photoA()));
            if (diode.seriesOhm() > 0) {
                assertThat(diode.currentA(2 * openV)).isNegative();
            }
        }
    }

    /** No point of a fine walk along the curve gives more than the best, and the curve is flat there. */
    @Test
    void bestPointIsTheBest() {
        RandomStream random = RandomStream.of(12, 0, RandomStream.Purpose.TEST);
        for (int i = 0; i < 500; i++) {
            SingleDiode diode = any(random);
            OperatingPoint best = diode.bestPoint();
            assertThat(diode.currentA(best.volts())).isCloseTo(best.amps(), within(1e-9 * diode.photoA()));
            double openV = diode.openCircuitV();
            for (int k = 0; k <= 200; k++) {
                double volts = openV * k / 200;
                assertThat(volts * diode.currentA(volts)).isLessThanOrEqualTo(best.watts() * (1 + 1e-9));
            }
        }
    }

    @Test
    void darkPanelGivesNothingAndTakesSome() {
        SingleDiode dark = new SingleDiode(0, 1e-10, 0.3, 100, 1);
        assertThat(dark.openCircuitV()).isZero();
        assertThat(dark.shortCircuitA()).isZero();
        assertThat(dark.bestPoint()).isEqualTo(new OperatingPoint(0, 0));
        assertThat(dark.currentA(12)).isNegative();
    }

    @Test
    void refusesWhatIsNoCircuit() {
        assertThatThrownBy(() -> new SingleDiode(5, 0, 0.3, 100, 1)).hasMessageContaining("saturationA");
        assertThatThrownBy(() -> new SingleDiode(5, 1e-9, -0.1, 100, 1)).hasMessageContaining("seriesOhm");
        assertThatThrownBy(() -> new SingleDiode(5, 1e-9, 0.1, 0, 1)).hasMessageContaining("shuntOhm");
        assertThatThrownBy(() -> new SingleDiode(5, 1e-9, 0.1, Double.NaN, 1)).hasMessageContaining("shuntOhm");
        assertThatThrownBy(() -> SingleDiodePublishedTest.PANEL.currentA(-1)).hasMessageContaining("volts");
    }
}
