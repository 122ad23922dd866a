package tideover.engine.sun;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The single-diode curve: parameters of Easwarakhanthan et al. 1986 (Int. J. Solar Energy 4, 1), from memory; points recomputed from them. */
class SingleDiodePublishedTest {
    /** k/q, V/K. */
    private static final double THERMAL_V_PER_K = 8.617333262e-5;

    /** Ours: a usual panel of 36 cells, 25 degC; points computed independently. */
    static final SingleDiode PANEL = new SingleDiode(5.8, 2e-9, .25, 200, 1.0174261);

    private static void points(
            SingleDiode diode,
            double shortA,
            double openV,
            double bestA,
            double bestV,
            double bestW,
            double tolerance) {
        assertThat(diode.shortCircuitA()).isCloseTo(shortA, within(tolerance));
        assertThat(diode.openCircuitV()).isCloseTo(openV, within(tolerance));
        OperatingPoint best = diode.bestPoint();
        assertThat(best.amps()).isCloseTo(bestA, within(tolerance));
        assertThat(best.volts()).isCloseTo(bestV, within(tolerance));
        assertThat(best.watts()).isCloseTo(bestW, within(tolerance));
    }

    /** A silicon cell of 57 mm at 33 degC, 1000 W/m2; n 1.4837. */
    @Test
    void cell() {
        double modifiedV = 1.4837 * THERMAL_V_PER_K * 306.15;
        points(new SingleDiode(.7608, .3223e-6, .0364, 53.7634, modifiedV), .76028, .5738, .6894, .4515, .31126, 1e-4);
    }

    /** A module of 36 cells at 45 degC; n Ns 48.45. */
    @Test
    void module() {
        double modifiedV = 48.45 * THERMAL_V_PER_K * 318.15;
        points(
                new SingleDiode(1.0318, 3.2876e-6, 1.2057, 549.45, modifiedV),
                1.0295,
                16.772,
                .9051,
                12.642,
                11.443,
                1e-3);
    }

    @Test
    void panel() {
        points(PANEL, 5.7928, 22.1480, 5.3782, 17.8929, 96.232, 1e-3);
    }

    /** The panel moved as De Soto, Klein &amp; Beckman 2006 (Solar Energy 80, 78) do, alpha .003 A/K; computed independently. */
    @ParameterizedTest
    @CsvSource({
        "1000, 60, 5.898, 18.767, 5.369, 14.533, 78.02",
        "800, 47, 4.688, 19.783, 4.310, 15.776, 67.99",
        "500, 45, 2.928, 19.468, 2.698, 15.844, 42.75",
        "200, 25, 1.160, 20.512, 1.079, 17.304, 18.67",
        "1000, -10, 5.688, 25.492, 5.346, 21.316, 113.96"
    })
    void panelMoved(
            double planeWm2, double cellDegC, double shortA, double openV, double bestA, double bestV, double bestW) {
        PanelCurve curve = PanelCurve.given(PANEL, .003 / 5.8);
        points(curve.at(planeWm2, cellDegC), shortA, openV, bestA, bestV, bestW, .01);
    }
}
