package tideover.engine.site;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.Collections;
import org.hipparchus.distribution.continuous.NormalDistribution;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import tideover.engine.quantity.Series;
import tideover.engine.sun.SunYear;

/**
 * The daily recipe against the figures that came with it, worked out apart from this code when the recipe was fitted
 * (docs/models.md, "Place and weather").
 */
class RecipeAcceptanceTest {
    private static final int RUN_DAYS = 90;
    private static final int RUNS_A_YEAR = 4;
    private static final int YEARS_A_SEED = 500;
    private static final int SEEDS = 10;
    private static final int RUNS = RUNS_A_YEAR * YEARS_A_SEED * SEEDS;

    @ParameterizedTest
    @CsvSource({
        "0.30, 0.185, -0.517, 0.925, .053, .065, .265, .648",
        "0.40, 0.204, -0.025, 0.987, .057, .085, .398, .721",
        "0.50, 0.196,  0.484, 1.003, .073, .137, .537, .748",
        "0.60, 0.153,  1.016, 0.902, .149, .277, .650, .756",
        "0.70, 0.077,  1.718, 0.749, .398, .538, .730, .759"
    })
    void curveOfTheUsualMonth(
            double mean, double sd, double a, double b, double at1, double at5, double at50, double at95) {
        double usual = 1.1 * ClearnessCurve.usualSd(mean);
        assertThat(usual).isCloseTo(sd, within(0.0005));
        ClearnessCurve curve = ClearnessCurve.of(mean, usual);
        assertThat(curve.a()).isCloseTo(a, within(0.005));
        assertThat(curve.b()).isCloseTo(b, within(0.005));
        assertThat(curve.at(Normal.quantile(0.01))).isCloseTo(at1, within(0.005));
        assertThat(curve.at(Normal.quantile(0.05))).isCloseTo(at5, within(0.005));
        assertThat(curve.at(Normal.quantile(0.50))).isCloseTo(at50, within(0.005));
        assertThat(curve.at(Normal.quantile(0.95))).isCloseTo(at95, within(0.005));
    }

    @Test
    void autocorrelationOfTheSunScore() {
        DailySeries days = recipe(0.5).draw(1000, 31);
        int[] lags = {1, 2, 3, 5, 7};
        double[] expected = {.345, .136, .072, .038, .038};
        for (int i = 0; i < lags.length; i++) {
            double products = 0;
            double squares = 0;
            for (int day = 0; day + lags[i] < days.days(); day++) {
                products += days.sunScore(day) * days.sunScore(day + lags[i]);
                squares += days.sunScore(day) * days.sunScore(day);
            }
            assertThat(products / squares).as("lag " + lags[i]).isCloseTo(expected[i], within(0.01));
        }
    }

    /** Mean of the lowest 1, 2, 3, 5 and 7 day mean over runs of 90 days, and what one run in ten lies below; 20 000 runs. */
    @ParameterizedTest
    @CsvSource({
        "0.30, .054, .065, .079, .108, .132, .050, .053, .059, .074, .091",
        "0.40, .059, .084, .111, .160, .195, .051, .058, .071, .103, .132",
        "0.50, .077, .127, .173, .242, .287, .054, .073, .103, .161, .205",
        "0.60, .149, .240, .303, .379, .422, .080, .144, .205, .287, .339",
        "0.70, .379, .476, .527, .579, .606, .255, .374, .440, .513, .550"
    })
    void darkSpells(
            double mean,
            double mean1,
            double mean2,
            double mean3,
            double mean5,
            double mean7,
            double rare1,
            double rare2,
            double rare3,
            double rare5,
            double rare7) {
        int[] lengths = {1, 2, 3, 5, 7};
        double[] means = {mean1, mean2, mean3, mean5, mean7};
        double[] rares = {rare1, rare2, rare3, rare5, rare7};
        double[][] lowest = new double[lengths.length][RUNS];
        DailyRecipe recipe = recipe(mean);
        SunYear sun = SunYear.at(0, 0, 0);
        double sum = 0;
        int run = 0;
        for (int seed = 0; seed < SEEDS; seed++) {
            DailySeries days = recipe.draw(YEARS_A_SEED, 900 + seed);
            for (int year = 0; year < YEARS_A_SEED; year++) {
                for (int quarter = 0; quarter < RUNS_A_YEAR; quarter++) {
                    double[] clearness = new double[RUN_DAYS];
                    for (int i = 0; i < RUN_DAYS; i++) {
                        int dayOfYear = quarter * RUN_DAYS + i;
                        clearness[i] = days.sunKwhM2(year * 365 + dayOfYear) / sun.dayKwhM2(dayOfYear);
                        sum += clearness[i];
                    }
                    for (int n = 0; n < lengths.length; n++) {
                        lowest[n][run] = lowestMean(clearness, lengths[n]);
                    }
                    run++;
                }
            }
        }
        assertThat(sum / (RUNS * RUN_DAYS)).isCloseTo(mean, within(0.005 * mean));
        for (int n = 0; n < lengths.length; n++) {
            Arrays.sort(lowest[n]);
            // 2 % for sampling, and half the last printed digit.
            assertThat(Arrays.stream(lowest[n]).average().orElseThrow())
                    .as("lowest %d days", lengths[n])
                    .isCloseTo(means[n], within(0.02 * means[n] + 0.0005));
            assertThat(lowest[n][RUNS / 10])
                    .as("lowest %d days, 1 in 10", lengths[n])
                    .isCloseTo(rares[n], within(0.02 * rares[n] + 0.0005));
        }
    }

    @Test
    void quickNormalDistributionAgreesWithTheExactOne() {
        NormalDistribution exact = new NormalDistribution(0, 1);
        for (int i = -800; i <= 800; i++) {
            double z = i / 100.0;
            assertThat(Normal.below(z)).isCloseTo(exact.cumulativeProbability(z), within(7.5e-8));
        }
    }

    @Test
    void curvesMeetMeanAndSpreadWhereverTheyCan() {
        for (double mean = 0.10; mean <= 0.80; mean += 0.05) {
            double wanted = ClearnessCurve.usualSd(mean);
            ClearnessCurve curve = ClearnessCurve.of(mean, wanted);
            double sum = 0;
            double squares = 0;
            int points = 20_000;
            for (int i = 0; i < points; i++) {
                double k = curve.at(Normal.quantile((i + 0.5) / points));
                sum += k;
                squares += k * k;
            }
            double found = sum / points;
            assertThat(found).isCloseTo(mean, within(5e-4));
            double room = 0.95 * Math.sqrt((mean - curve.least()) * (curve.most() - mean));
            assertThat(Math.sqrt(squares / points - found * found)).isCloseTo(Math.min(wanted, room), within(1e-3));
        }
    }

    /** The same mean clearness in all months, spread as usual, on the equator. */
    private static DailyRecipe recipe(double clearness) {
        Series same = filled(12, clearness);
        Series unknown = filled(12, Double.NaN);
        MonthlyClimate climate = new MonthlyClimate(
                filled(12, 5),
                same,
                unknown,
                0.31,
                Collections.nCopies(12, false),
                filled(12, 5),
                filled(12, 15),
                filled(12, 10),
                filled(12, 3),
                0.72,
                filled(4, 0),
                filled(4, 2),
                Double.NaN,
                "one clearness");
        return new DailyRecipe(new Place("Equator", 0, 0, 0, 0), climate, SunYear.at(0, 0, 0));
    }

    private static Series filled(int length, double value) {
        double[] values = new double[length];
        Arrays.fill(values, value);
        return Series.owning(values);
    }

    private static double lowestMean(double[] values, int days) {
        double sum = 0;
        double lowest = Double.POSITIVE_INFINITY;
        for (int i = 0; i < values.length; i++) {
            sum += values[i] - (i >= days ? values[i - days] : 0);
            if (i >= days - 1) {
                lowest = Math.min(lowest, sum / days);
            }
        }
        return lowest;
    }
}
