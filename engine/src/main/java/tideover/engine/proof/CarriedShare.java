package tideover.engine.proof;

import java.util.Arrays;
import org.hipparchus.analysis.solvers.BisectionSolver;
import org.hipparchus.special.Beta;
import tideover.engine.quantity.RandomStream;
import tideover.engine.quantity.Require;

/**
 * Share of outages carried, with a 90 % interval.
 *
 * @param outages  how many were walked
 * @param carried  how many kept every essential need to the end
 * @param share    carried per outage, 0..1
 * @param low      5 % end of the interval, 0..1
 * @param high     95 % end
 * @param interval how the interval was made
 */
public record CarriedShare(int outages, int carried, double share, double low, double high, Interval interval) {
    /** How an interval was made. */
    public enum Interval {
        RESAMPLED_YEARS("whole years drawn again with replacement"),
        EXACT_YEARS("exact binomial bound on years, since every year was alike or years are few");

        private final String words;

        Interval(String words) {
            this.words = words;
        }

        public String words() {
            return words;
        }
    }

    /** With fewer years than this, drawing them again says nothing: the exact bound on years stands instead. */
    static final int LEAST_YEARS_TO_RESAMPLE = 5;

    private static final int RESAMPLES = 2000;
    private static final double TAIL = 0.05;

    /**
     * The share from counts by year. Outages of one year share its weather, so years, not outages, are drawn again.
     *
     * @param outagesOfYear outages walked in each year
     * @param carriedOfYear how many of them were carried
     */
    static CarriedShare of(int[] outagesOfYear, int[] carriedOfYear, long seed) {
        int outages = Arrays.stream(outagesOfYear).sum();
        int carried = Arrays.stream(carriedOfYear).sum();
        Require.within(1, Integer.MAX_VALUE, "outages", outages);
        double share = (double) carried / outages;
        int years = 0;
        int wholeYears = 0;
        int lostYears = 0;
        for (int year = 0; year < outagesOfYear.length; year++) {
            if (outagesOfYear[year] > 0) {
                years++;
                wholeYears += carriedOfYear[year] == outagesOfYear[year] ? 1 : 0;
                lostYears += carriedOfYear[year] == 0 ? 1 : 0;
            }
        }
        if (wholeYears == years) {
            return new CarriedShare(outages, carried, share, zeroFailuresLow(years), 1, Interval.EXACT_YEARS);
        }
        if (lostYears == years) {
            return new CarriedShare(outages, carried, share, 0, 1 - zeroFailuresLow(years), Interval.EXACT_YEARS);
        }
        if (years < LEAST_YEARS_TO_RESAMPLE) {
            double low = 1 - clopperPearsonHigh(years - wholeYears, years);
            double high = clopperPearsonHigh(years - lostYears, years);
            return new CarriedShare(
                    outages, carried, share, Math.min(low, share), Math.max(high, share), Interval.EXACT_YEARS);
        }
        double[] shares = resampled(outagesOfYear, carriedOfYear, seed);
        return new CarriedShare(
                outages,
                carried,
                share,
                Math.min(share, Quantile.of(shares, TAIL)),
                Math.max(share, Quantile.of(shares, 1 - TAIL)),
                Interval.RESAMPLED_YEARS);
    }

    /** Sorted shares of years drawn with replacement. */
    private static double[] resampled(int[] outagesOfYear, int[] carriedOfYear, long seed) {
        RandomStream random = RandomStream.of(seed, 0, RandomStream.Purpose.RESAMPLED_YEARS);
        double[] shares = new double[RESAMPLES];
        for (int draw = 0; draw < RESAMPLES; draw++) {
            long outages = 0;
            long carried = 0;
            for (int i = 0; i < outagesOfYear.length; i++) {
                int year = random.nextIndex(outagesOfYear.length);
                outages += outagesOfYear[year];
                carried += carriedOfYear[year];
            }
            shares[draw] = outages == 0 ? 1 : (double) carried / outages;
        }
        Arrays.sort(shares);
        return shares;
    }

    /** With no failure in {@code n} trials, the 95 % bound on the share of good ones: 0.05^(1/n). */
    static double zeroFailuresLow(int n) {
        return StrictMath.pow(TAIL, 1.0 / n);
    }

    /** One-sided 95 % upper bound on a share after {@code k} of {@code n} (Clopper &amp; Pearson 1934, Biometrika 26). */
    static double clopperPearsonHigh(int k, int n) {
        if (k >= n) {
            return 1;
        }
        return new BisectionSolver(1e-12)
                .solve(200, p -> Beta.regularizedBeta(p, k + 1.0, n - (double) k) - (1 - TAIL), 0, 1);
    }
}
