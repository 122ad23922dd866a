package tideover.engine.sun;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The straight line and the whole curve are two models of one thing. */
class PanelModelsCompareTest {
    /** In full light the sheet rules both: one at rated cells, by the coefficient where cells in the sun are, a little apart in the cold. */
    @ParameterizedTest
    @CsvSource({"100, 22.5, 36, -.0040", "200, 24.3, 36, -.0036", "400, 37.0, 54, -.0034", "320, 40.2, 60, -.0039"})
    void agreeInFullLight(double ratedW, double openV, int cells, double powerPerK) {
        PanelTable table = PanelTable.of(PanelCurve.of(
                PanelSheet.of(ratedW, openV, Double.NaN, Double.NaN, cells, Double.NaN, -.003, powerPerK)));
        assertThat(table.wattsPerRatedWatt(1000, 25)).isCloseTo(1, within(.0005));
        for (double cellDegC = -10; cellDegC <= 75; cellDegC += 5) {
            double straight = PanelPower.wattsPerRatedWatt(1000, cellDegC, powerPerK);
            double tolerance = cellDegC >= 25 && cellDegC <= 65 ? .003 : .015;
            assertThat(table.wattsPerRatedWatt(1000, cellDegC)).isCloseTo(straight, within(tolerance));
        }
    }

    /**
     * In weak light the curve is the lower: volts fall with the logarithm of the light by {@code a ln(G/1000)}, so at 10 W/m2 some
     * 4.6 a of 22 V are gone and no resistance can bring them back; the straight line knows nothing of it.
     */
    @Test
    void differInWeakLight() {
        PanelTable table = PanelTable.of(PanelCurve.of(PanelCurveTest.HUNDRED));
        double last = 1.001;
        for (double planeWm2 : new double[] {400, 200, 100, 50, 20, 10, 5}) {
            double share = table.wattsPerRatedWatt(planeWm2, 25) / PanelPower.wattsPerRatedWatt(planeWm2, 25, -.004);
            assertThat(share).as("%s W/m2", planeWm2).isLessThan(last);
            last = share;
        }
        SingleDiode rated = table.curve().rated();
        double lostV = rated.modifiedV() * StrictMath.log(100);
        double share = table.wattsPerRatedWatt(10, 25) / .01;
        assertThat(share).isBetween(1 - 1.6 * lostV / 18.6, 1 - .6 * lostV / 18.6);
        assertThat(table.curve().weakLightShare()).isBetween(.92, 1.0);
    }
}
