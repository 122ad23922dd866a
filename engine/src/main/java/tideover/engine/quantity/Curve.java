package tideover.engine.quantity;

import java.util.Arrays;

/**
 * A curve of straight lines between given points, flat beyond the first and the last. Immutable; a table of a source stays
 * a table, point by point.
 */
public final class Curve {
    private final double[] x;
    private final double[] y;

    private Curve(double[] x, double[] y) {
        this.x = x;
        this.y = y;
    }

    /** @param xy points one after another, x, y, x, y, with x rising */
    public static Curve of(double... xy) {
        Require.within(2, Integer.MAX_VALUE, "length of the points", xy.length);
        double[] x = new double[xy.length / 2];
        double[] y = new double[x.length];
        for (int i = 0; i < x.length; i++) {
            x[i] = xy[2 * i];
            y[i] = xy[2 * i + 1];
            if (i > 0) {
                Require.above(x[i - 1], "x", x[i], "");
            }
        }
        return new Curve(x, y);
    }

    /** The same value everywhere. */
    public static Curve flat(double value) {
        return of(0, value);
    }

    public double at(double at) {
        int last = x.length - 1;
        if (!(at > x[0])) {
            return y[0];
        }
        if (at >= x[last]) {
            return y[last];
        }
        int i = Arrays.binarySearch(x, at);
        if (i >= 0) {
            return y[i];
        }
        i = -i - 2;
        return y[i] + (y[i + 1] - y[i]) * (at - x[i]) / (x[i + 1] - x[i]);
    }

    /**
     * Where a rising curve reaches a value; the first x where it begins above, infinity where it never gets there.
     */
    public double whereRisesTo(double value) {
        if (value <= y[0]) {
            return x[0];
        }
        for (int i = 1; i < x.length; i++) {
            if (value <= y[i]) {
                return x[i - 1] + (value - y[i - 1]) / (y[i] - y[i - 1]) * (x[i] - x[i - 1]);
            }
        }
        return Double.POSITIVE_INFINITY;
    }

    /** Every value times a factor. */
    public Curve times(double factor) {
        return new Curve(x, Arrays.stream(y).map(value -> value * factor).toArray());
    }

    /** Mean height between the first point and the last. */
    public double mean() {
        if (x.length == 1) {
            return y[0];
        }
        double area = 0;
        for (int i = 1; i < x.length; i++) {
            area += (x[i] - x[i - 1]) * (y[i] + y[i - 1]) / 2;
        }
        return area / (x[x.length - 1] - x[0]);
    }

    /** Least value. */
    public double least() {
        return Arrays.stream(y).min().orElseThrow();
    }

    /** Greatest value. */
    public double most() {
        return Arrays.stream(y).max().orElseThrow();
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof Curve that && Arrays.equals(x, that.x) && Arrays.equals(y, that.y);
    }

    @Override
    public int hashCode() {
        return 31 * Arrays.hashCode(x) + Arrays.hashCode(y);
    }
}
