package tideover.engine.battery;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;

/** Peukert's rule with rated hours. Rows without a printed figure are the formula worked out elsewhere. */
class PeukertPublishedTest {
    private static final CapacityRating HUNDRED = new CapacityRating(20, 100);

    /** A tutoring page's example: 120 Ah at 20 h, k 1.4, 120 A: printed .30 h. */
    @Test
    void printedExample() {
        double hours = Peukert.hours(new CapacityRating(20, 120), 1.4, 120);
        assertThat(hours).isCloseTo(.30, within(.005)).isCloseTo(.3017, within(5e-5));
    }

    @Test
    void workedOut() {
        double hours = Peukert.hours(HUNDRED, 1.25, 20);
        assertThat(hours).isCloseTo(3.5355, within(5e-5));
        assertThat(hours * 20).isCloseTo(70.71, within(.005));
        assertThat(Peukert.hours(HUNDRED, 1.05, 50)).isCloseTo(1.7825, within(5e-5));
    }

    @Test
    void theRatedCurrentLastsTheRatedHours() {
        for (double exponent = 1; exponent <= 1.5; exponent += .1) {
            assertThat(Peukert.hours(HUNDRED, exponent, 5)).isCloseTo(20, within(1e-12));
        }
    }

    /** Two tests: 20 h at 5 A, 1 h at 55 A: ln 20 / ln 11. */
    @Test
    void exponentOfTwoTests() {
        assertThat(Peukert.exponentOf(HUNDRED, new CapacityRating(1, 55))).isCloseTo(1.24932, within(5e-6));
    }

    /** The trap: a published page's "100 Ah, k 1.2, 5 A: 14.5 h" is C/I^k with the C of the label. */
    @Test
    void labelIsNoOneAmpereRating() {
        assertThat(100 / StrictMath.pow(5, 1.2)).isCloseTo(14.5, within(.05));
        assertThat(Peukert.hours(HUNDRED, 1.2, 5)).isCloseTo(20, within(1e-12));
    }

    @Test
    void capacityOverOtherHoursIsTheSameRule() {
        CapacityRating five = Peukert.over(5, HUNDRED, 1.25);
        assertThat(Peukert.hours(HUNDRED, 1.25, five.amps())).isCloseTo(5, within(1e-12));
        assertThat(Peukert.exponentOf(HUNDRED, five)).isCloseTo(1.25, within(1e-12));
    }

    /** What the guessed second rating is for: both are met by the wells, and lithium stays one well. */
    @Test
    void aSecondRatingMakesTheWells() {
        for (Chemistry chemistry : Chemistry.values()) {
            CapacityRating five = Peukert.over(5, HUNDRED, Peukert.exponent(chemistry));
            WellFit fit =
                    TwoWells.fit(List.of(HUNDRED, five), chemistry.traits().fallback());
            assertThat(fit.worstMiss()).as(chemistry.words()).isLessThan(1e-9);
            assertThat(fit.wells().equals(TwoWells.ONE_WELL)).isEqualTo(chemistry.isLithium());
            assertThat(fit.wholeAh()).isBetween(100.0, 125.0);
        }
    }
}
