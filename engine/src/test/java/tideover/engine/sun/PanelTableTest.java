package tideover.engine.sun;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class PanelTableTest {
    /** Within .05 % of the rated watts of the direct solution, off the grid's own points: a usual, a new, an old and two odd panels. */
    @ParameterizedTest
    @CsvSource({
        "100, 22.5, 5.9, 18.6, 36, -.0040",
        "430, 41, 13.2, 34.5, 60, -.0026",
        "50, 22, 3.1, 17.0, 36, -.0048",
        "200, 24, 10.3, 20, 36, -.0036",
        "80, 90, 1.5, 65, 144, -.0025"
    })
    void followsTheDirectSolution(
            double ratedW, double openV, double shortA, double bestV, int cells, double powerPerK) {
        PanelCurve curve = PanelCurve.of(PanelSheet.of(ratedW, openV, shortA, bestV, cells, .0005, -.003, powerPerK));
        PanelTable table = PanelTable.of(curve);
        for (double planeWm2 = 1; planeWm2 <= 1400; planeWm2 += planeWm2 < 50 ? 0.7 : 9.3) {
            for (double cellDegC = -40; cellDegC <= 95; cellDegC += 2.3) {
                double direct = curve.at(planeWm2, cellDegC).bestPoint().watts() / ratedW;
                assertThat(table.wattsPerRatedWatt(planeWm2, cellDegC))
                        .as("%s W/m2, %s degC", planeWm2, cellDegC)
                        .isCloseTo(direct, within(.0005));
            }
        }
    }

    @Test
    void duskGivesNothingAndTheEdgesHold() {
        PanelTable table = PanelTable.of(PanelCurve.of(PanelCurveTest.HUNDRED));
        assertThat(table.wattsPerRatedWatt(0.99, 20)).isZero();
        assertThat(table.wattsPerRatedWatt(-1, 20)).isZero();
        assertThat(table.wattsPerRatedWatt(Double.NaN, 20)).isZero();
        assertThat(table.wattsPerRatedWatt(1, 20)).isPositive();
        assertThat(table.wattsPerRatedWatt(1000, 25)).isCloseTo(1, within(.0005));
        assertThat(table.wattsPerRatedWatt(500, -200)).isEqualTo(table.wattsPerRatedWatt(500, -60));
        assertThat(table.wattsPerRatedWatt(500, 200)).isEqualTo(table.wattsPerRatedWatt(500, 110));
        assertThat(table.wattsPerRatedWatt(3362, 25)).isCloseTo(2 * table.wattsPerRatedWatt(1681, 25), within(1e-12));
    }

    /** A panel held at the battery's volts never gives more than at its best point. */
    @Test
    void clampedNeverBeatsTheBest() {
        PanelTable table = PanelTable.of(PanelCurve.of(PanelCurveTest.HUNDRED));
        for (double planeWm2 = 5; planeWm2 <= 1400; planeWm2 += 31) {
            for (double cellDegC = -40; cellDegC <= 95; cellDegC += 7) {
                double best = 100 * table.wattsPerRatedWatt(planeWm2, cellDegC);
                for (double volts = 0; volts < 30; volts += 0.9) {
                    assertThat(volts * table.ampsAt(volts, planeWm2, cellDegC)).isLessThan(best + 0.05);
                }
            }
        }
    }
}
