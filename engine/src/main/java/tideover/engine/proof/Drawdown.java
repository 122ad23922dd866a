package tideover.engine.proof;

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
 * maxima, used here for drawdowns). Hours before the panels are out follow the clock, so they are worked out once for a
 * day and joined in front.
 *
 * <p>Extremes are kept by {@code if}: they seldom change, and a branch that is guessed right costs less than
 * {@code Math.max}, which also looks for NaN.
 *
 * <p>A gain may be minus infinity, for more than the store can give at once: every window over it needs an infinite store.
 */
public final class Drawdown {
    private Drawdown() {}

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
    public static double[] neededWh(
            double[] darkWh,
            double[] sunnyWh,
            int starts,
            int stepsPerSpan,
            int darkSpans,
            int lengthSpans,
            double chargeAtStart) {
        int dark = Math.min(darkSpans, lengthSpans);
        int sunny = lengthSpans - dark;
        int blockLength = Math.max(1, sunny);
        Gloom before = new Gloom(darkWh, stepsPerSpan, dark);
        Ends ends = new Ends(blockLength);
        double[] needed = new double[starts];
        int phase = 0;
        for (int block = 0; block < starts; block += blockLength) {
            int step = (block + lengthSpans) * stepsPerSpan;
            ends.read(sunnyWh, step, sunny, stepsPerSpan);
            double level = 0;
            double high = 0;
            double low = 0;
            double most = 0;
            int windows = Math.min(blockLength, starts - block);
            for (int i = 0; i < windows; i++) {
                // Below the start of the dark; then everything that can be the greatest drawdown.
                double lowest = smaller(ends.lowest[i], low) - ends.start[i] + before.end[phase];
                double fall = ends.highest[i] - low;
                fall = larger(ends.fall[i], fall);
                fall = larger(most, fall);
                fall = larger(before.fall[phase], fall);
                fall = larger(before.highest[phase] - lowest, fall);
                lowest = smaller(before.lowest[phase], lowest);
                needed[block + i] = larger(-lowest / chargeAtStart, fall);
                phase = phase + 1 == before.phases ? 0 : phase + 1;
                // The last window of all ends here; there may be no step beyond it.
                int more = i + 1 < windows ? stepsPerSpan : 0;
                for (int j = 0; j < more; j++) {
                    level += sunnyWh[step++];
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
        return needed;
    }

    private static double larger(double a, double b) {
        return a > b ? a : b;
    }

    private static double smaller(double a, double b) {
        return a < b ? a : b;
    }

    /** What the dark spans before a sunny window do to cumulative gain, 0 at their start; one entry for each phase. */
    private static final class Gloom {
        final int phases;
        final double[] end;
        final double[] highest;
        final double[] lowest;
        final double[] fall;

        Gloom(double[] gainWh, int stepsPerSpan, int length) {
            phases = length == 0 ? 1 : gainWh.length / stepsPerSpan;
            end = new double[phases];
            highest = new double[phases];
            lowest = new double[phases];
            fall = new double[phases];
            for (int phase = 0; phase < phases; phase++) {
                for (int j = 0; j < length * stepsPerSpan; j++) {
                    end[phase] += gainWh[(phase * stepsPerSpan + j) % gainWh.length];
                    highest[phase] = larger(highest[phase], end[phase]);
                    lowest[phase] = smaller(lowest[phase], end[phase]);
                    fall[phase] = larger(fall[phase], highest[phase] - end[phase]);
                }
            }
        }
    }

    /**
     * The readings at one border, one entry for each span of the block before it: of what lies from the span's start to
     * the border, 0 at the border.
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

        void read(double[] gainWh, int borderStep, int length, int stepsPerSpan) {
            double level = 0;
            double high = 0;
            double low = 0;
            double most = 0;
            int step = borderStep;
            for (int i = length - 1; i >= 0; i--) {
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
}
