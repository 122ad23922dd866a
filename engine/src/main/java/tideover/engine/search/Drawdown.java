package tideover.engine.search;

import java.util.Arrays;

/**
 * The store that a window of net gains needs, for every window of one length at once.
 *
 * <p>Reservoir engineers' sequent peak (Rippl 1883; Thomas &amp; Burden 1963): a store of capacity C, filled to the
 * share c at the window's start, never runs dry in it exactly when {@code C >= (fall below the start) / c} and
 * {@code C >= greatest drawdown}, the largest fall of cumulative gain from an earlier maximum of the window.
 *
 * <p>Both are found from four sums of a span: its net gain, its highest and lowest running sum, its greatest drawdown.
 * Two neighbouring spans combine to one by a few additions, and the combining is associative. So the line is cut into
 * blocks as long as the window; each window is the end of one block and the beginning of the next, and both are found
 * by running sums: a fixed number of combinations for each start, however long the window (the sliding-window method of
 * van Herk 1992 and Gil &amp; Werman 1993 for maxima, used here for these four sums).
 */
final class Drawdown {
    private Drawdown() {}

    /** Spans laid side by side, one entry each. */
    static final class Spans {
        final double[] net;
        final double[] peak;
        final double[] low;
        final double[] fall;

        Spans(int count) {
            net = new double[count];
            peak = new double[count];
            low = new double[count];
            fall = new double[count];
        }

        int count() {
            return net.length;
        }
    }

    /** Spans of {@code stepsPerSpan} steps each, from net gains in Wh a step. */
    static Spans spans(double[] gainWh, int firstStep, int spanCount, int stepsPerSpan) {
        Spans spans = new Spans(spanCount);
        int step = firstStep;
        for (int s = 0; s < spanCount; s++) {
            double sum = 0;
            double peak = 0;
            double low = 0;
            double fall = 0;
            for (int i = 0; i < stepsPerSpan; i++) {
                sum += gainWh[step++];
                peak = Math.max(peak, sum);
                low = Math.min(low, sum);
                fall = Math.max(fall, peak - sum);
            }
            spans.net[s] = sum;
            spans.peak[s] = peak;
            spans.low[s] = low;
            spans.fall[s] = fall;
        }
        return spans;
    }

    private static Spans windows(double[] gainWh, int firstStep, int starts, int stepsPerSpan, int length) {
        return length == 0
                ? new Spans(starts)
                : windows(spans(gainWh, firstStep, starts + length - 1, stepsPerSpan), length);
    }

    /** The four sums of every window of {@code length} neighbouring spans, at least one; window i begins at span i. */
    static Spans windows(Spans spans, int length) {
        int count = spans.count() - length + 1;
        Spans out = new Spans(count);
        double[] net = new double[length + 1];
        double[] peak = new double[length + 1];
        double[] low = new double[length + 1];
        double[] fall = new double[length + 1];
        for (int block = 0; block < count; block += length) {
            // The ends of this block, from each place to the block's end.
            for (int i = length - 1; i >= 0; i--) {
                int s = block + i;
                double n = spans.net[s];
                net[i] = n + net[i + 1];
                peak[i] = Math.max(spans.peak[s], n + peak[i + 1]);
                low[i] = Math.min(spans.low[s], n + low[i + 1]);
                fall[i] = Math.max(Math.max(spans.fall[s], fall[i + 1]), spans.peak[s] - (n + low[i + 1]));
            }
            // The beginnings of the next block, growing, joined to those ends.
            double headNet = 0;
            double headPeak = 0;
            double headLow = 0;
            double headFall = 0;
            int windows = Math.min(length, count - block);
            for (int i = 0; i < windows; i++) {
                out.net[block + i] = net[i] + headNet;
                out.peak[block + i] = Math.max(peak[i], net[i] + headPeak);
                out.low[block + i] = Math.min(low[i], net[i] + headLow);
                out.fall[block + i] = Math.max(Math.max(fall[i], headFall), peak[i] - (net[i] + headLow));
                int s = block + length + i;
                if (s < spans.count()) {
                    double n = spans.net[s];
                    headFall = Math.max(Math.max(headFall, spans.fall[s]), headPeak - (headNet + spans.low[s]));
                    headPeak = Math.max(headPeak, headNet + spans.peak[s]);
                    headLow = Math.min(headLow, headNet + spans.low[s]);
                    headNet += n;
                }
            }
        }
        return out;
    }

    /**
     * Capacity in Wh that each start needs: {@code darkSpans} spans without the panels, then sunny ones to the length.
     *
     * @param darkWh         net gains before the panels are out, Wh a step
     * @param sunnyWh        net gains after
     * @param firstStep      step of the first start
     * @param starts         number of starts, one each span
     * @param stepsPerSpan   steps between two starts
     * @param chargeAtStart  0..1, above 0
     */
    static double[] neededWh(
            double[] darkWh,
            double[] sunnyWh,
            int firstStep,
            int starts,
            int stepsPerSpan,
            int darkSpans,
            int lengthSpans,
            double chargeAtStart) {
        int dark = Math.min(darkSpans, lengthSpans);
        int sunny = lengthSpans - dark;
        Spans before = windows(darkWh, firstStep, starts, stepsPerSpan, dark);
        Spans after = windows(sunnyWh, firstStep + dark * stepsPerSpan, starts, stepsPerSpan, sunny);
        double[] needed = new double[starts];
        for (int i = 0; i < starts; i++) {
            double net = before.net[i];
            double low = Math.min(before.low[i], net + after.low[i]);
            double fall = Math.max(Math.max(before.fall[i], after.fall[i]), before.peak[i] - (net + after.low[i]));
            needed[i] = Math.max(fall, -low / chargeAtStart);
        }
        return needed;
    }

    /** Share of needs that a capacity meets. {@code sortedWh} in rising order. */
    static double shareMet(double[] sortedWh, double capacityWh, double breathWh) {
        int lower = 0;
        int upper = sortedWh.length;
        while (lower < upper) {
            int middle = (lower + upper) >>> 1;
            if (sortedWh[middle] <= capacityWh + breathWh) {
                lower = middle + 1;
            } else {
                upper = middle;
            }
        }
        return (double) lower / sortedWh.length;
    }

    static double[] sorted(double[] neededWh) {
        double[] copy = neededWh.clone();
        Arrays.sort(copy);
        return copy;
    }
}
