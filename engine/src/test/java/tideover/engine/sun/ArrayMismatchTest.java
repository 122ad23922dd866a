package tideover.engine.sun;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.function.DoubleUnaryOperator;
import org.junit.jupiter.api.Test;
import tideover.engine.quantity.RandomStream;

class ArrayMismatchTest {
    private static SingleDiode any(RandomStream random) {
        double openV = 12 + 40 * random.nextUniform();
        double bestV = openV * (.75 + .1 * random.nextUniform());
        double ratedW = 30 + 400 * random.nextUniform();
        double shortA = ratedW / bestV * (1.04 + .1 * random.nextUniform());
        return PanelCurve.of(PanelSheet.of(ratedW, openV, shortA, bestV, 0, .0005, -.003, -.004))
                .at(150 + 900 * random.nextUniform(), -10 + 70 * random.nextUniform());
    }

    /** Volts at a current between nothing and short circuit, by halving. */
    private static double voltsAt(SingleDiode diode, double amps) {
        double low = 0;
        double high = diode.openCircuitV();
        for (int i = 0; i < 60; i++) {
            double middle = (low + high) / 2;
            if (diode.currentA(middle) > amps) {
                low = middle;
            } else {
                high = middle;
            }
        }
        return low;
    }

    private static double most(DoubleUnaryOperator watts, double end) {
        double most = 0;
        for (int i = 1; i < 400; i++) {
            most = Math.max(most, watts.applyAsDouble(end * i / 400));
        }
        return most;
    }

    /** Pairs solved directly: one current through both, one voltage on both. The search is coarse, so its best is too low if anything. */
    @Test
    void bothBoundsHoldOnAnyPair() {
        RandomStream random = RandomStream.of(21, 0, RandomStream.Purpose.TEST);
        for (int pair = 0; pair < 60; pair++) {
            SingleDiode one = any(random);
            SingleDiode other = any(random);
            List<OperatingPoint> best = List.of(one.bestPoint(), other.bestPoint());
            double series = most(
                    amps -> amps * (voltsAt(one, amps) + voltsAt(other, amps)),
                    Math.min(one.shortCircuitA(), other.shortCircuitA()));
            double parallel = most(
                    volts -> volts * (one.currentA(volts) + other.currentA(volts)),
                    Math.max(one.openCircuitV(), other.openCircuitV()));
            assertThat(series)
                    .isBetween(ArrayMismatch.seriesLeastW(best) * .999, ArrayMismatch.apartW(best) * (1 + 1e-9));
            assertThat(parallel)
                    .isBetween(ArrayMismatch.parallelLeastW(best) * .999, ArrayMismatch.apartW(best) * (1 + 1e-9));
        }
    }

    @Test
    void alikePanelsLoseNothing() {
        OperatingPoint best = SingleDiodePublishedTest.PANEL.bestPoint();
        List<OperatingPoint> three = List.of(best, best, best);
        assertThat(ArrayMismatch.seriesLeastW(three)).isCloseTo(3 * best.watts(), within(1e-9));
        assertThat(ArrayMismatch.parallelLeastW(three)).isCloseTo(3 * best.watts(), within(1e-9));
    }

    /** By hand: 18 V 5 A with 30 V 8 A; in series 5 A x 48 V, in parallel 18 V x 13 A, apart 90 + 240 W. */
    @Test
    void byHand() {
        List<OperatingPoint> best = List.of(new OperatingPoint(18, 5), new OperatingPoint(30, 8));
        assertThat(ArrayMismatch.seriesLeastW(best)).isCloseTo(240, within(1e-9));
        assertThat(ArrayMismatch.parallelLeastW(best)).isCloseTo(234, within(1e-9));
        assertThat(ArrayMismatch.apartW(best)).isCloseTo(330, within(1e-9));
    }
}
