package tideover.engine.search;

import java.util.Arrays;
import org.jspecify.annotations.Nullable;

/**
 * The store that a window of net gains needs, for every window of one length at once.
 *
 * <p>Reservoir engineers' sequent peak (Rippl 1883; Thomas &amp; Burden 1963): a store of capacity C, filled to the
 * share c at the window's start, never runs dry in it exactly when {@code C >= (fall below the start) / c} and
 * {@code C >= greatest drawdown}, the largest fall of cumulative gain from an earlier maximum of the window.
 *
 * <p>The line is cut into blocks as long as the window; each window is the end of one block and the beginning of the
 * next. Cumulative gain is counted from the border between the two, backwards into the one and forwards into the other,
 * with its running highest, lowest and greatest drawdown; a window joins one reading of each. So the work for a start
 * does not grow with the length of its window (the sliding-window method of van Herk 1992 and Gil &amp; Werman 1993 for
 * maxima, used here for drawdowns). Running extremes are kept by {@code if}: they seldom change, and a branch that is
 * guessed right costs less than {@code Math.max}, which also looks for NaN.
 *
 * <p>A gain may be minus infinity, for more than the store can give at once: every window over it needs an infinite store.
 */
final class Drawdown {
    private Drawdown() {}

    /**
     * The readings at one border, one entry for each span of the block before it: of what lies from the span's start to
     * the border, border at 0.
     */
    private static final class Ends {
        final double[] start;
        final double[] highest;
        final double[] lowest;
        final double[] fall;

        Ends(int length) {
            start = new double[length];
            highest = new double[length];
            lowest = new double[length];
            fall = new double[length];
        }

        void read(double[] gainWh, int borderStep, int stepsPerSpan) {
            double level = 0;
            double high = 0;
            double low = 0;
            double most = 0;
            int step = borderStep;
            for (int i = start.length - 1; i >= 0; i--) {
                for (int j = 0; j < stepsPerSpan; j++) {
                    level -= gainWh[--step];
                    if (level < low) {
                        low = level;
                    } else {
                        if (level - low > most) {
                            most = level - low;
                        }
                        if (level > high) {
                            high = level;
                        }
                    }
                }
                start[i] = level;
                highest[i] = high;
                lowest[i] = low;
                fall[i] = most;
            }
        }
    }

    /** Window by window: the lowest that cumulative gain falls below the start, 0 or less, and the greatest drawdown. */
    private record Falls(double[] lowWh, double[] fallWh) {}

    /**
     * Windows of {@code length} spans of {@code stepsPerSpan} steps, one begun at every span.
     *
     * @param after falls of what follows each window; the result is then of both together
     */
    private static Falls falls(
            double[] gainWh, int firstStep, int starts, int stepsPerSpan, int length, @Nullable Falls after) {
        double[] lowWh = new double[starts];
        double[] fallWh = new double[starts];
        Ends ends = new Ends(length);
        for (int block = 0; block < starts; block += length) {
            int step = firstStep + (block + length) * stepsPerSpan;
            ends.read(gainWh, step, stepsPerSpan);
            double level = 0;
            double high = 0;
            double low = 0;
            double most = 0;
            int windows = Math.min(length, starts - block);
            for (int i = 0; i < windows; i++) {
                double lowest = Math.min(ends.lowest[i], low);
                double fall = Math.max(Math.max(ends.fall[i], most), ends.highest[i] - low);
                if (after != null) {
                    double then = level + after.lowWh[block + i];
                    lowest = Math.min(lowest, then);
                    fall = Math.max(Math.max(fall, after.fallWh[block + i]), Math.max(ends.highest[i], high) - then);
                }
                lowWh[block + i] = lowest - ends.start[i];
                fallWh[block + i] = fall;
                // The last window of all ends here; there may be no step beyond it.
                int more = i + 1 < windows ? stepsPerSpan : 0;
                for (int j = 0; j < more; j++) {
                    level += gainWh[step++];
                    if (level > high) {
                        high = level;
                    } else {
                        if (high - level > most) {
                            most = high - level;
                        }
                        if (level < low) {
                            low = level;
                        }
                    }
                }
            }
        }
        return new Falls(lowWh, fallWh);
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
        Falls falls =
                sunny == 0 ? null : falls(sunnyWh, firstStep + dark * stepsPerSpan, starts, stepsPerSpan, sunny, null);
        if (dark > 0) {
            falls = falls(darkWh, firstStep, starts, stepsPerSpan, dark, falls);
        }
        double[] needed = new double[starts];
        if (falls != null) {
            for (int i = 0; i < starts; i++) {
                needed[i] = Math.max(falls.fallWh[i], -falls.lowWh[i] / chargeAtStart);
            }
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
