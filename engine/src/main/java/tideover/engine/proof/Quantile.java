package tideover.engine.proof;

import tideover.engine.quantity.Series;

/** Quantiles of sorted figures: the smallest figure that at least that share of them does not exceed. */
final class Quantile {
    private Quantile() {}

    static double of(double[] sorted, double share) {
        return sorted[index(sorted.length, share)];
    }

    static double of(Series sorted, double share) {
        return sorted.at(index(sorted.length(), share));
    }

    private static int index(int length, double share) {
        int index = (int) Math.ceil(share * length - 1e-9) - 1;
        return Math.max(0, Math.min(length - 1, index));
    }
}
