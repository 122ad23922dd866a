package tideover.engine.electronics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

/**
 * Schmidt &amp; Sauer 1996 (formula from memory) with ps .01, v .02, r .04, worked out by hand; weightings of the European
 * and the Californian efficiency (from memory).
 */
class InverterLossPublishedTest {
    private static final double RATED_W = 500;
    private final InverterLoss loss = new InverterLoss(.01 * RATED_W, .02, .04 / RATED_W);

    @Test
    void efficiencyFollowsTheWorkedValues() {
        double[] p = {.01, .02, .05, .1, .2, .3, .5, .75, 1};
        double[] expected = {.4950, .6575, .8183, .8897, .9276, .9387, .9434, .9404, .9346};
        for (int i = 0; i < p.length; i++) {
            assertThat(loss.efficiency(p[i] * RATED_W)).isCloseTo(expected[i], within(5e-5));
        }
    }

    @Test
    void isBestWhereTheConstantLossEqualsTheSquaredOne() {
        double best = Math.sqrt(.01 / .04);
        assertThat(best).isEqualTo(.5);
        assertThat(loss.efficiency(best * RATED_W)).isCloseTo(.94340, within(5e-6));
        assertThat(loss.efficiency(.49 * RATED_W)).isLessThan(loss.efficiency(best * RATED_W));
        assertThat(loss.efficiency(.51 * RATED_W)).isLessThan(loss.efficiency(best * RATED_W));
    }

    @Test
    void meetsTheWeightedEfficiencies() {
        double[] europeAt = {.05, .1, .2, .3, .5, 1};
        double[] europeWeight = {.03, .06, .13, .10, .48, .20};
        double[] californiaAt = {.1, .2, .3, .5, .75, 1};
        double[] californiaWeight = {.04, .05, .12, .21, .53, .05};
        assertThat(weighted(europeAt, europeWeight)).isCloseTo(.93214, within(5e-6));
        assertThat(weighted(californiaAt, californiaWeight)).isCloseTo(.93788, within(5e-6));
    }

    private double weighted(double[] at, double[] weight) {
        double sum = 0;
        for (int i = 0; i < at.length; i++) {
            sum += weight[i] * loss.efficiency(at[i] * RATED_W);
        }
        return sum;
    }

    @Test
    void comesBackFromThreeEfficiencies() {
        double[] at = {.1, .5, 1};
        double[] efficiencies = new double[3];
        for (int i = 0; i < 3; i++) {
            efficiencies[i] = loss.efficiency(at[i] * RATED_W);
        }
        InverterLoss found = InverterLoss.through(RATED_W, at, efficiencies);
        assertThat(found.standingW() / RATED_W).isCloseTo(.01, within(1e-12));
        assertThat(found.share()).isCloseTo(.02, within(1e-12));
        assertThat(found.perW() * RATED_W).isCloseTo(.04, within(1e-12));
    }

    @Test
    void comesBackFromNoLoadDrawAndTwoEfficiencies() {
        InverterLoss found = InverterLoss.through(
                RATED_W, .01 * RATED_W, .5, loss.efficiency(.5 * RATED_W), loss.efficiency(RATED_W));
        assertThat(found.share()).isCloseTo(.02, within(1e-12));
        assertThat(found.perW() * RATED_W).isCloseTo(.04, within(1e-12));
    }

    @Test
    void figuresWithoutACurveGiveOneThatLosesMore() {
        InverterLoss found = InverterLoss.through(RATED_W, 0, .5, .85, .95);
        assertThat(found.efficiency(.5 * RATED_W)).isLessThanOrEqualTo(.85 + 1e-12);
        assertThat(found.efficiency(RATED_W)).isLessThanOrEqualTo(.95);
    }
}
