package tideover.app.report;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/** A straight scale: figures from {@code from} to {@code to} stand from {@code at} to {@code until} on the drawing. */
record Axis(double from, double to, double at, double until) {
    /** Round steps between hours: parts of a day, days, weeks. */
    private static final double[] HOUR_STEPS = {1, 2, 3, 6, 12, 24, 48, 72, 120, 168, 240, 336, 480, 720, 1440};

    double of(double value) {
        return at + (value - from) / (to - from) * (until - at);
    }

    /** Multiples of a round number of hours within the scale, at most so many steps. */
    List<Double> hourTicks(int most) {
        return ticks(Arrays.stream(HOUR_STEPS)
                .filter(step -> (to - from) / step <= most)
                .findFirst()
                .orElse(to - from));
    }

    /** Multiples of 1, 2 or 5 times a power of ten within the scale, at most so many steps. */
    List<Double> ticks(int most) {
        return ticks(roundStep(to - from, most));
    }

    private List<Double> ticks(double step) {
        List<Double> ticks = new ArrayList<>();
        long first = (long) Math.ceil(from / step - 1e-9);
        for (long i = first; i * step <= to + 1e-9 * step; i++) {
            ticks.add(i * step);
        }
        return ticks;
    }

    static double roundStep(double span, int most) {
        double power = Math.pow(10, Math.floor(Math.log10(span / most)));
        for (double times : new double[] {1, 2, 5}) {
            if (span / (times * power) <= most + 1e-9) {
                return times * power;
            }
        }
        return 10 * power;
    }

    /** A round figure at or above {@code value}, for the end of a scale of few steps. */
    static double roundUp(double value, int steps) {
        double step = roundStep(Math.max(value, 1e-6), steps);
        return Math.ceil(value / step - 1e-9) * step;
    }

    /**
     * Places for labels beside given heights, moved apart so that none is nearer than {@code gap} to the next and all
     * stay between {@code least} and {@code most}.
     *
     * @param wanted in rising order
     */
    static double[] apart(double[] wanted, double gap, double least, double most) {
        double[] places = wanted.clone();
        for (int i = 0; i < places.length; i++) {
            places[i] = Math.max(places[i], i == 0 ? least : places[i - 1] + gap);
        }
        for (int i = places.length - 1; i >= 0; i--) {
            places[i] = Math.min(places[i], i == places.length - 1 ? most : places[i + 1] - gap);
        }
        return places;
    }
}
