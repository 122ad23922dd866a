package tideover.engine.proof;

import java.util.Arrays;
import org.jspecify.annotations.Nullable;

/**
 * What came of outages that were at the same point: the store brim-full, everything that switches itself as on the grid,
 * the panels out. From there on nothing depends on when the outage began, so that one that comes to such a point need not be
 * followed again. Steps count through the stretch. Belongs to one walk.
 */
final class FullPoints {
    /** Content after each step, where some outage that had been at such a point has passed. */
    private double[] contentWh = {};

    /** For each point: step up to which all that follows is known; 0 where it was never reached. */
    private int[] knownUntil = {};

    /** Hour of the stretch in which it then fails; infinite where it does not as far as it is known. */
    private double[] failsAtHour = {};

    private Ending[] endings = {};

    /** Those of the outage being walked. */
    private int[] passed = new int[64];

    private int count;

    void forget(int steps) {
        if (contentWh.length != steps + 1) {
            contentWh = new double[steps + 1];
            knownUntil = new int[steps + 1];
            failsAtHour = new double[steps + 1];
            endings = new Ending[steps + 1];
        } else {
            Arrays.fill(knownUntil, 0);
        }
    }

    void begin() {
        count = 0;
    }

    /** Notes that the outage being walked is at such a point after a step. */
    void pass(int step) {
        if (count == passed.length) {
            passed = Arrays.copyOf(passed, 2 * count);
        }
        passed[count++] = step;
    }

    /** Notes the content after a step of an outage that has been at such a point. */
    void content(int step, double wh) {
        if (count > 0) {
            contentWh[step] = wh;
        }
    }

    /** Whether it is known what comes of an outage at a point, up to a step. */
    boolean knows(int step, int untilStep) {
        return knownUntil[step] >= untilStep || (knownUntil[step] > 0 && failsAtHour[step] < Double.POSITIVE_INFINITY);
    }

    double failsAtHour(int step) {
        return failsAtHour[step];
    }

    @Nullable
    Ending ending(int step) {
        return endings[step];
    }

    /** The lowest content after the steps from one to another. */
    double lowestWh(int fromStep, int untilStep) {
        double lowest = Double.POSITIVE_INFINITY;
        for (int step = fromStep; step <= untilStep; step++) {
            lowest = Math.min(lowest, contentWh[step]);
        }
        return lowest;
    }

    /** Writes down for all points that the outage passed what came of it. */
    void settle(double failedAtHour, int untilStep, @Nullable Ending ending) {
        for (int i = 0; i < count; i++) {
            knownUntil[passed[i]] = untilStep;
            failsAtHour[passed[i]] = failedAtHour;
            endings[passed[i]] = ending;
        }
    }

    /** The same as at a point that it has come to. */
    void settleLike(int step) {
        settle(failsAtHour[step], knownUntil[step], endings[step]);
    }
}
