package tideover.engine.proof;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import org.junit.jupiter.api.Test;

class CarriedShareTest {
    @Test
    void whereNothingFailedTheExactBoundOnYearsStands() {
        int[] each = new int[30];
        Arrays.fill(each, 2000);
        CarriedShare share = CarriedShare.of(each, each, 1);
        assertThat(share.share()).isEqualTo(1);
        assertThat(share.low()).isCloseTo(0.905, within(1e-3));
        assertThat(share.high()).isEqualTo(1);
        assertThat(share.interval()).isEqualTo(CarriedShare.Interval.EXACT_YEARS);
    }

    /** Outages of a year hang together: the interval follows the number of years, not of outages. */
    @Test
    void intervalIsThatOfYears() {
        int[] outages = new int[30];
        int[] carried = new int[30];
        for (int year = 0; year < 30; year++) {
            outages[year] = 2000;
            carried[year] = year % 3 == 0 ? 1000 : 2000;
        }
        CarriedShare share = CarriedShare.of(outages, carried, 1);
        assertThat(share.share()).isCloseTo(5.0 / 6, within(1e-12));
        // Ten of thirty years at one half: standard error 0.5 * sqrt(1/3 * 2/3 / 30) = 0.043, times 1.645 = 0.071.
        assertThat(share.low()).isCloseTo(5.0 / 6 - 0.071, within(0.012));
        assertThat(share.high()).isCloseTo(5.0 / 6 + 0.071, within(0.012));
        assertThat(share.interval()).isEqualTo(CarriedShare.Interval.RESAMPLED_YEARS);
    }

    @Test
    void oneYearClaimsLittle() {
        CarriedShare share = CarriedShare.of(new int[] {720}, new int[] {700}, 1);
        assertThat(share.low()).isLessThan(0.01);
        assertThat(share.high()).isGreaterThan(0.94);
        assertThat(CarriedShare.of(new int[] {720}, new int[] {720}, 1).low()).isCloseTo(0.05, within(1e-12));
    }

    @Test
    void nothingCarriedIsNoCertaintyEither() {
        int[] outages = new int[30];
        Arrays.fill(outages, 10);
        CarriedShare share = CarriedShare.of(outages, new int[30], 1);
        assertThat(share.low()).isZero();
        assertThat(share.high()).isCloseTo(0.095, within(1e-3));
    }
}
