package tideover.engine.proof;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Exact binomial bounds against figures computed from the formulas of Clopper &amp; Pearson 1934, Biometrika 26:404. */
class CarriedSharePublishedTest {
    @ParameterizedTest
    @CsvSource({"10, 0.2589", "30, 0.0950", "59, 0.0495", "100, 0.0295"})
    void noFailureInNTrials(int trials, double upperBound) {
        assertThat(1 - CarriedShare.zeroFailuresLow(trials)).isCloseTo(upperBound, within(5e-5));
        assertThat(CarriedShare.clopperPearsonHigh(0, trials)).isCloseTo(upperBound, within(5e-5));
    }

    @Test
    void oneFailureInThirty() {
        assertThat(CarriedShare.clopperPearsonHigh(1, 30)).isCloseTo(0.1486, within(5e-5));
    }
}
