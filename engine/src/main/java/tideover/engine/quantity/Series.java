package tideover.engine.quantity;

import java.util.Arrays;

/** A row of figures that nobody can change: one quantity, one unit (stated in the name of what holds it), read by index. */
public final class Series {
    private final double[] values;

    private Series(double[] values) {
        this.values = values;
    }

    /** Copies, so that the caller's array stays the caller's. */
    public static Series of(double... values) {
        return new Series(values.clone());
    }

    /** Takes the array over without a copy, for long series: the caller must not write to it again. */
    public static Series owning(double[] values) {
        return new Series(values);
    }

    /** The same value throughout. */
    public static Series constant(int length, double value) {
        double[] values = new double[length];
        Arrays.fill(values, value);
        return new Series(values);
    }

    /** Every value times a factor. */
    public Series times(double factor) {
        return new Series(Arrays.stream(values).map(value -> value * factor).toArray());
    }

    /** The first figures alone. */
    public Series first(int length) {
        return new Series(Arrays.copyOf(values, Require.within(0, values.length, "length", length)));
    }

    public double least() {
        return Arrays.stream(values).min().orElse(Double.NaN);
    }

    public double at(int index) {
        return values[index];
    }

    public int length() {
        return values.length;
    }

    /** Sum in index order. */
    public double sum() {
        double sum = 0;
        for (double value : values) {
            sum += value;
        }
        return sum;
    }

    public double mean() {
        return sum() / values.length;
    }

    /** Copies {@code into.length} figures from {@code from} on, going round from the last to the first. */
    public void copyRound(int from, double[] into) {
        int at = from % values.length;
        int done = 0;
        while (done < into.length) {
            int run = Math.min(into.length - done, values.length - at);
            System.arraycopy(values, at, into, done, run);
            done += run;
            at = 0;
        }
    }

    public double[] toArray() {
        return values.clone();
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof Series that && Arrays.equals(values, that.values);
    }

    @Override
    public int hashCode() {
        return Arrays.hashCode(values);
    }

    @Override
    public String toString() {
        return "Series of " + values.length;
    }
}
