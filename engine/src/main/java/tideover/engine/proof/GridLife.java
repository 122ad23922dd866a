package tideover.engine.proof;

import java.util.function.Function;
import org.jspecify.annotations.Nullable;

/**
 * Where something that switches itself is at each hour of the weather years, while the grid is there. Its state as the hour
 * begins is where an outage finds it.
 */
final class GridLife {
    /** Slow boxes have forgotten how they began after so long. */
    private static final int RUN_IN_HOURS = 24 * 30;

    private final double[] figures;
    private final GridTape tape;
    private final int size;
    private final int hours;
    private final int stepsPerHour;

    private GridLife(double[] figures, GridTape tape, int size, int hours, int stepsPerHour) {
        this.tape = tape;
        this.stepsPerHour = stepsPerHour;
        this.figures = figures;
        this.size = size;
        this.hours = hours;
    }

    /**
     * Follows one through all years, round and round.
     *
     * @param made gives the keeper for a life that is not known yet
     */
    static GridLife of(Function<@Nullable GridLife, Keeper> made, int hours, int stepsPerHour) {
        Keeper keeper = made.apply(null);
        int runIn = Math.min(RUN_IN_HOURS, hours - hours % 24);
        keeper.onto(new Stretch(hours - runIn, runIn, hours));
        keeper.begin(0);
        double[] figures = new double[hours * keeper.figures()];
        GridTape tape = new GridTape(hours * stepsPerHour);
        for (int hour = 0; hour < runIn + hours; hour++) {
            if (hour >= runIn) {
                keeper.save(figures, (hour - runIn) * keeper.figures());
            }
            for (int step = 0; step < stepsPerHour; step++) {
                int ofDay = hour % 24 * stepsPerHour + step;
                if (hour < runIn) {
                    powered(keeper, hour, ofDay, 1.0 / stepsPerHour);
                } else {
                    record(keeper, hour, ofDay, (hour - runIn) * stepsPerHour + step, 1.0 / stepsPerHour, tape);
                }
            }
        }
        return new GridLife(figures, tape, keeper.figures(), hours, stepsPerHour);
    }

    /** A step with power all through. */
    static void powered(Keeper keeper, int hourOfStretch, int stepOfDay, double stepHours) {
        keeper.step(hourOfStretch, stepOfDay, 0, 0, true);
        double left = stepHours;
        while (left > 0) {
            double span = Math.min(left, keeper.untilSwitchH(left, true));
            keeper.pass(span, true);
            left -= span;
        }
    }

    /** The same, written down. */
    private static void record(
            Keeper keeper, int hourOfStretch, int stepOfDay, int step, double stepHours, GridTape tape) {
        keeper.step(hourOfStretch, stepOfDay, 0, 0, true);
        double left = stepHours;
        boolean begun = false;
        while (left > 0) {
            double span = Math.min(left, keeper.untilSwitchH(left, true));
            if (begun) {
                tape.switched(step, stepHours - left, keeper.plugW(), keeper.motor());
            } else {
                tape.step(step, keeper.plugW(), keeper.motor());
                begun = true;
            }
            keeper.pass(span, true);
            left -= span;
            // Between two switchings within the step as well, or what is there and back again would go unseen.
            if (keeper.uneasy()) {
                tape.uneasy(step);
            }
        }
    }

    GridTape tape() {
        return tape;
    }

    /** Number of a step on the tape. */
    int step(int hourOfYears, int stepOfHour) {
        return hourOfYears % hours * stepsPerHour + stepOfHour;
    }

    void restore(Keeper keeper, int hourOfYears) {
        keeper.restore(figures, hourOfYears % hours * size);
    }
}
