package tideover.engine.sun;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import tideover.engine.quantity.Units;

/** Haurwitz 1945, recomputed, so that the clear day the beam's cap is tried with is the published one. */
class ClearDayPublishedTest {
    @ParameterizedTest
    @CsvSource({
        "5, 49.76",
        "10, 137.31",
        "20, 317.89",
        "30, 489.85",
        "45, 716.27",
        "50, 780.80",
        "60, 890.33",
        "90, 1037.16"
    })
    void byElevation(double elevation, double expected) {
        assertThat(ClearDay.haurwitzWm2(StrictMath.sin(Units.radians(elevation)), 0.057))
                .isCloseTo(expected, within(.02));
    }

    /** The other of the two haze figures in circulation (both from memory). */
    @Test
    void otherHaze() {
        assertThat(ClearDay.haurwitzWm2(1, 0.059)).isCloseTo(1035.09, within(.02));
    }
}
