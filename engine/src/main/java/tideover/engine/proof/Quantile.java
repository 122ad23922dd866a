package tideover.engine.proof;

/** Quantiles of sorted figures: the smallest figure that at least that share of them does not exceed. */
final class Quantile {
    private Quantile() {}

    static double of(double[] sorted, double share) {
        int index = (int) Math.ceil(share * sorted.length - 1e-9) - 1;
        return sorted[Math.max(0, Math.min(sorted.length - 1, index))];
    }
}
