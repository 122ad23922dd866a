package tideover.engine.battery;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * Rainflow counting of a history of charge, ASTM E1049-85, section 5.4.4: which closed swings it holds, whatever lay between,
 * so that wear by depth can be added up. Pure counting: any unit, any history of at least two different values.
 *
 * <p>Neglected: at which mean, how fast and how warm a swing was.
 */
public final class CycleCount {
    private CycleCount() {}

    /**
     * A swing down and up, or up and down.
     *
     * @param range from the lowest to the highest of it: for a state of charge its depth
     * @param count 1 whole, or half where the history does not close it
     */
    public record Cycle(double range, double count) {}

    /** In the order in which the rule finds them; halves left over at the end come last. */
    public static List<Cycle> of(double... history) {
        List<Cycle> cycles = new ArrayList<>();
        double[] stack = new double[history.length];
        int top = 0;
        for (double point : turns(history)) {
            stack[top++] = point;
            while (top >= 3) {
                double latest = Math.abs(stack[top - 1] - stack[top - 2]);
                double before = Math.abs(stack[top - 2] - stack[top - 3]);
                if (latest < before) {
                    break;
                }
                if (top == 3) {
                    // The range holds the start: half a swing, and its far end is the new start.
                    cycles.add(new Cycle(before, .5));
                    stack[0] = stack[1];
                    stack[1] = stack[2];
                    top = 2;
                } else {
                    cycles.add(new Cycle(before, 1));
                    stack[top - 3] = stack[top - 1];
                    top -= 2;
                }
            }
        }
        for (int i = 1; i < top; i++) {
            cycles.add(new Cycle(Math.abs(stack[i] - stack[i - 1]), .5));
        }
        return List.copyOf(cycles);
    }

    /** First, last and every value at which the history turns; level stretches are one value. */
    private static double[] turns(double[] history) {
        double[] turns = new double[history.length];
        int count = 0;
        for (double value : history) {
            if (count > 0 && value == turns[count - 1]) {
                continue;
            }
            if (count > 1 && (value > turns[count - 1]) == (turns[count - 1] > turns[count - 2])) {
                turns[count - 1] = value;
            } else {
                turns[count++] = value;
            }
        }
        return Arrays.copyOf(turns, count);
    }
}
