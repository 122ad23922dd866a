package tideover.engine.site;

import org.hipparchus.distribution.continuous.NormalDistribution;

/** The normal distribution with mean 0 and standard deviation 1. */
final class Normal {
    private static final double INVERSE_ROOT_TWO_PI = 0.3989422804014327;

    private Normal() {}

    /**
     * Probability of a value below {@code z}, by formula 26.2.17 of Abramowitz &amp; Stegun 1964 (after Hastings 1955):
     * absolute error below 7.5e-8 for every z. Taken for speed; a test compares it with an exact one.
     */
    static double below(double z) {
        double size = Math.abs(z);
        double t = 1 / (1 + 0.2316419 * size);
        double polynomial =
                t * (0.319381530 + t * (-0.356563782 + t * (1.781477937 + t * (-1.821255978 + t * 1.330274429))));
        double tail = density(size) * polynomial;
        return z < 0 ? tail : 1 - tail;
    }

    static double density(double z) {
        return INVERSE_ROOT_TWO_PI * StrictMath.exp(-0.5 * z * z);
    }

    /** The value that has {@code probability}, strictly between 0 and 1, below it. Exact and slow. */
    static double quantile(double probability) {
        return new NormalDistribution(0, 1).inverseCumulativeProbability(probability);
    }
}
