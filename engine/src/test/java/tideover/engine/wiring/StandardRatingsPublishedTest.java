package tideover.engine.wiring;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import org.junit.jupiter.api.Test;

/** NFPA 70 240.6(A): 100 to 400 A found printed, all else from memory; 1, 3, 6, 10 and 601 A for fuses only. */
class StandardRatingsPublishedTest {
    private static final double[] AMPS = {
        1, 3, 6, 10, 15, 20, 25, 30, 35, 40, 45, 50, 60, 70, 80, 90, 100, 110, 125, 150, 175, 200, 225, 250, 300, 350,
        400, 450, 500, 600, 601
    };

    /** Walked in steps of half an ampere: each is answered by the first of the list that is not below it. */
    @Test
    void theWholeList() {
        int next = 0;
        for (double amps = 0; amps <= 601; amps += .5) {
            if (amps > AMPS[next]) {
                next++;
            }
            assertThat(StandardRatings.atLeastA(amps)).as("%.1f A", amps).isEqualTo(AMPS[next]);
            assertThat(StandardRatings.isStandard(amps)).as("%.1f A", amps).isEqualTo(amps == AMPS[next]);
        }
        assertThat(next).isEqualTo(AMPS.length - 1);
    }

    @Test
    void workedExamples() {
        assertThat(StandardRatings.atLeastA(135.3)).isEqualTo(150);
        assertThat(StandardRatings.atLeastA(30)).isEqualTo(30);
        assertThat(StandardRatings.atLeastA(30.01)).isEqualTo(35);
    }

    @Test
    void aboveTheList() {
        assertThat(StandardRatings.atLeastA(601.5)).isNaN();
        assertThat(StandardRatings.atLeastA(Double.POSITIVE_INFINITY)).isNaN();
        assertThat(StandardRatings.isStandard(700)).isFalse();
        assertThatThrownBy(() -> StandardRatings.atLeastA(Double.NaN)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> StandardRatings.atLeastA(-1)).isInstanceOf(IllegalArgumentException.class);
    }

    /** .1 x 3 x 100 comes out above 30: the last digit of a product must not cost the next size. */
    @Test
    void aRoundingErrorIsNotTheNextSize() {
        double amps = .1 * 3 * 100;
        assertThat(amps).isGreaterThan(30);
        assertThat(StandardRatings.atLeastA(amps)).isEqualTo(30);
    }
}
