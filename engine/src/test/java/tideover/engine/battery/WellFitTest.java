package tideover.engine.battery;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;

class WellFitTest {
    private static final long SEED = Long.getLong("tideover.seed", 20_262L);
    private static final TwoWells FALLBACK = new TwoWells(.3, 1.2);

    private static List<CapacityRating> ratings(TwoWells wells, double wholeAh, double... hours) {
        return java.util.Arrays.stream(hours)
                .mapToObj(over -> new CapacityRating(over, wholeAh * wells.capacity(over)))
                .toList();
    }

    @Test
    void threeRatingsGiveBackTheWells() {
        Random random = new Random(SEED);
        for (int trial = 0; trial < 200; trial++) {
            TwoWells wells = new TwoWells(.1 + .7 * random.nextDouble(), StrictMath.exp(-2 + 4 * random.nextDouble()));
            double whole = 20 + 200 * random.nextDouble();
            WellFit fit = TwoWells.fit(ratings(wells, whole, 1, 5, 20), FALLBACK);
            assertThat(fit.worstMiss())
                    .as("seed %d, trial %d, %s", SEED, trial, wells)
                    .isLessThan(1e-6);
            assertThat(fit.wells().availableShare()).isCloseTo(wells.availableShare(), within(2e-3));
            assertThat(fit.wells().ratePerHour() / wells.ratePerHour()).isCloseTo(1, within(2e-2));
            assertThat(fit.wholeAh() / whole).isCloseTo(1, within(2e-3));
        }
    }

    @Test
    void fourRatingsToo() {
        TwoWells wells = new TwoWells(.315, 1.24);
        WellFit fit = TwoWells.fit(ratings(wells, 100, 100, 20, 10, 3), FALLBACK);
        assertThat(fit.wells().availableShare()).isCloseTo(.315, within(1e-4));
        assertThat(fit.wells().ratePerHour()).isCloseTo(1.24, within(1e-3));
        assertThat(fit.wholeAh()).isCloseTo(100, within(1e-3));
    }

    /** Rounded to whole ampere-hours, as data sheets are, the ratings themselves must still be met to their rounding. */
    @Test
    void roundedRatingsAreMetWithinTheirRounding() {
        WellFit fit = TwoWells.fit(
                List.of(new CapacityRating(1, 58), new CapacityRating(5, 85), new CapacityRating(20, 100)), FALLBACK);
        assertThat(fit.worstMiss()).isLessThan(.01);
        assertThat(fit.wholeAh()).isBetween(100.0, 115.0);
    }

    /** What an AGM data sheet of 100 Ah often says (from memory): one pair of wells meets it from 1 to 20 h. */
    @Test
    void aUsualDataSheetIsMet() {
        WellFit fit = TwoWells.fit(
                List.of(
                        new CapacityRating(20, 100),
                        new CapacityRating(10, 93),
                        new CapacityRating(5, 85),
                        new CapacityRating(1, 60)),
                FALLBACK);
        assertThat(fit.worstMiss()).isLessThan(.01);
        assertThat(fit.wells().availableShare()).isCloseTo(.46, within(.005));
        assertThat(fit.wells().ratePerHour()).isCloseTo(.94, within(.005));
        assertThat(fit.wholeAh()).isCloseTo(105.6, within(.05));
    }

    @Test
    void twoRatingsAreMetWithTheFallbacksShare() {
        WellFit fit = TwoWells.fit(List.of(new CapacityRating(20, 100), new CapacityRating(5, 82)), FALLBACK);
        assertThat(fit.worstMiss()).isLessThan(1e-9);
        assertThat(fit.wells().availableShare()).isEqualTo(.3);
        assertThat(fit.wells().ratePerHour()).isBetween(.5, 5.0);
        assertThat(fit.wholeAh()).isBetween(100.0, 120.0);
    }

    @Test
    void aSteepPairLowersTheShare() {
        WellFit fit = TwoWells.fit(List.of(new CapacityRating(20, 100), new CapacityRating(5, 55)), FALLBACK);
        assertThat(fit.wells().availableShare()).isLessThan(.3);
        assertThat(fit.worstMiss()).isLessThan(1e-6);
    }

    @Test
    void oneRatingTakesTheFallback() {
        WellFit fit = TwoWells.fit(List.of(new CapacityRating(20, 100)), FALLBACK);
        assertThat(fit.wells()).isEqualTo(FALLBACK);
        assertThat(fit.wholeAh() * FALLBACK.capacity(20)).isCloseTo(100, within(1e-12));
    }

    @Test
    void whatDoesNotDependOnTheRateIsOneWell() {
        WellFit fit = TwoWells.fit(List.of(new CapacityRating(5, 100), new CapacityRating(1, 100)), FALLBACK);
        assertThat(fit.wells()).isEqualTo(TwoWells.ONE_WELL);
        assertThat(fit.wholeAh()).isEqualTo(100);
    }

    @Test
    void oneRatingOfALeadBatteryGetsASecondByTheRule() {
        CapacityRating rated = new CapacityRating(20, 100);
        for (Chemistry chemistry : Chemistry.values()) {
            WellFit fit = TwoWells.fit(List.of(rated), chemistry);
            double fiveHours = fit.wholeAh() * fit.wells().capacity(5);
            assertThat(fiveHours)
                    .isCloseTo(
                            Peukert.over(5, rated, Peukert.exponent(chemistry)).ah(), within(1e-6));
        }
        WellFit fromShort = TwoWells.fit(List.of(new CapacityRating(5, 80)), Chemistry.FLOODED_LEAD);
        assertThat(fromShort.wholeAh() * fromShort.wells().capacity(20)).isBetween(100.0, 110.0);
    }

    @Test
    void nonsenseIsRefused() {
        assertThatThrownBy(() -> TwoWells.fit(List.of(), FALLBACK)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(
                        () -> TwoWells.fit(List.of(new CapacityRating(20, 100), new CapacityRating(20, 90)), FALLBACK))
                .isInstanceOf(IllegalArgumentException.class);
    }
}
