package tideover.engine.rig;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

/**
 * NFPA 70 table 690.7(A), crystalline and multicrystalline silicon, as printed: from, to (degC), factor. Factors 1.02, 1.18
 * and 1.21 with their bands found in a public source; the others from memory. Check the edition in force.
 */
class ColdTablePublishedTest {
    private static final double[][] TABLE = {
        {24, 20, 1.02},
        {19, 15, 1.04},
        {14, 10, 1.06},
        {9, 5, 1.08},
        {4, 0, 1.10},
        {-1, -5, 1.12},
        {-6, -10, 1.14},
        {-11, -15, 1.16},
        {-16, -20, 1.18},
        {-21, -25, 1.20},
        {-26, -30, 1.21},
        {-31, -35, 1.23},
        {-36, -40, 1.25},
    };

    @Test
    void bothEdgesOfEveryBand() {
        for (double[] band : TABLE) {
            assertThat(ColdTable.factor(band[0])).as("%.0f degC", band[0]).isEqualTo(band[2]);
            assertThat(ColdTable.factor(band[1])).as("%.0f degC", band[1]).isEqualTo(band[2]);
        }
    }

    /** The table is of whole degrees; the safe side lies colder. */
    @Test
    void betweenTwoBandsTheColderOneCounts() {
        for (int i = 0; i + 1 < TABLE.length; i++) {
            double between = TABLE[i][1] - 0.5;
            assertThat(ColdTable.factor(between)).as("%.1f degC", between).isEqualTo(TABLE[i + 1][2]);
        }
    }

    @Test
    void beyondTheTable() {
        assertThat(ColdTable.factor(25)).isEqualTo(1);
        assertThat(ColdTable.factor(24.9)).isEqualTo(1.02);
        assertThat(ColdTable.factor(-50)).isEqualTo(1.25);
    }

    /** 22.5 V at -20 degC, worked: 22.5 x 1.18 = 26.55 V. */
    @Test
    void aWorkedExample() {
        assertThat(22.5 * ColdTable.factor(-20)).isCloseTo(26.55, within(0.005));
    }
}
