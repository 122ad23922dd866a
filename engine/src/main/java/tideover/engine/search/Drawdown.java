package tideover.engine.search;

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

    /** Windows of {@code length} spans of {@code stepsPerSpan} steps, one begun at every span; a length of 0 never falls. */
    private static Falls falls(double[] gainWh, int firstStep, int starts, int stepsPerSpan, int length) {
        double[] lowWh = new double[starts];
        double[] fallWh = new double[starts];
        if (length == 0) {
            return new Falls(lowWh, fallWh);
        }
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
                lowWh[block + i] = Math.min(ends.lowest[i], low) - ends.start[i];
                fallWh[block + i] = Math.max(Math.max(ends.fall[i], most), ends.highest[i] - low);
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
     * @param darkWh         net gains before the panels are out, Wh a step; whole spans that come round again and again,
     *                       such as those of one day, the first of them beside the first start
     * @param sunnyWh        net gains after, from the first start on
     * @param starts         number of starts, one each span
     * @param stepsPerSpan   steps between two starts
     * @param chargeAtStart  0..1, above 0
     */
    static double[] neededWh(
            double[] darkWh,
            double[] sunnyWh,
            int starts,
            int stepsPerSpan,
            int darkSpans,
            int lengthSpans,
            double chargeAtStart) {
        int dark = Math.min(darkSpans, lengthSpans);
        Falls sunny = falls(sunnyWh, dark * stepsPerSpan, starts, stepsPerSpan, lengthSpans - dark);
        double[] needed = new double[starts];
        if (dark == 0) {
            for (int i = 0; i < starts; i++) {
                needed[i] = Math.max(sunny.fallWh[i], -sunny.lowWh[i] / chargeAtStart);
            }
            return needed;
        }
        int period = darkWh.length / stepsPerSpan;
        for (int phase = 0; phase < period; phase++) {
            double level = 0;
            double high = 0;
            double low = 0;
            double most = 0;
            for (int j = 0; j < dark * stepsPerSpan; j++) {
                level += darkWh[(phase * stepsPerSpan + j) % darkWh.length];
                high = Math.max(high, level);
                low = Math.min(low, level);
                most = Math.max(most, high - level);
            }
            for (int i = phase; i < starts; i += period) {
                double lowest = Math.min(low, level + sunny.lowWh[i]);
                double fall = Math.max(Math.max(most, sunny.fallWh[i]), high - (level + sunny.lowWh[i]));
                needed[i] = Math.max(fall, -lowest / chargeAtStart);
            }
        }
        return needed;
    }
}
