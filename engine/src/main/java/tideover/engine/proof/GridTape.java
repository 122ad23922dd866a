package tideover.engine.proof;

import java.util.Arrays;
import java.util.BitSet;

/**
 * What something that switches itself draws, step by step and switching by switching, through all weather years while it
 * never lacks power. As long as an outage gives it all it asks for it lives on as on the grid, and needs no reckoning anew.
 */
final class GridTape {
    /** Of each step as it begins: draw, whether a motor runs, whether anything is outside its limits at its end. */
    private final double[] stepW;

    private final BitSet motorAtStep = new BitSet();
    private final BitSet uneasy = new BitSet();

    /** Where the switchings of a step begin in the lists. */
    private final int[] firstOfStep;

    private double[] atHours = new double[1024];
    private double[] afterW = new double[1024];
    private final BitSet motorAfter = new BitSet();
    private int count;

    GridTape(int steps) {
        stepW = new double[steps];
        firstOfStep = new int[steps + 1];
    }

    void step(int step, double plugW, boolean motor) {
        stepW[step] = plugW;
        motorAtStep.set(step, motor);
        firstOfStep[step] = count;
        firstOfStep[step + 1] = count;
    }

    /** A switching within the step told last. */
    void switched(int step, double atHoursOfStep, double plugW, boolean motor) {
        if (count == atHours.length) {
            atHours = Arrays.copyOf(atHours, 2 * count);
            afterW = Arrays.copyOf(afterW, 2 * count);
        }
        atHours[count] = atHoursOfStep;
        afterW[count] = plugW;
        motorAfter.set(count, motor);
        count++;
        firstOfStep[step + 1] = count;
    }

    void uneasy(int step) {
        uneasy.set(step);
    }

    boolean isUneasy(int step) {
        return uneasy.get(step);
    }

    int steps() {
        return stepW.length;
    }

    double plugW(int step) {
        return stepW[step];
    }

    boolean motor(int step) {
        return motorAtStep.get(step);
    }

    int first(int step) {
        return firstOfStep[step];
    }

    int end(int step) {
        return firstOfStep[step + 1];
    }

    double atHours(int number) {
        return atHours[number];
    }

    double afterW(int number) {
        return afterW[number];
    }

    boolean motorAfter(int number) {
        return motorAfter.get(number);
    }
}
