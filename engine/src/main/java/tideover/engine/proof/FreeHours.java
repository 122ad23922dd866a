package tideover.engine.proof;

import java.util.Arrays;
import tideover.engine.load.Need;

/**
 * When a load with free hours runs. The policy, stated to the user: it waits for sun that covers it beside everything
 * before it, and no longer than the last moment from which its hours still fit before the deadline. So its hours depend
 * on the weather and the array, not on the store, and a store that can feed every planned hour keeps the need.
 */
final class FreeHours {
    private FreeHours() {}

    /**
     * Share of each step of a stretch that the load runs.
     *
     * @param spareW    sun left on the bus in each step, W, before this load
     * @param busW      what the load takes from the bus while it runs, W
     * @param forced    whether the hours must be found even without sun
     * @param runShare  0..1 for each step, written here; the stretch begins at a midnight
     */
    static void plan(
            Need.HoursInWindow need,
            double[] spareW,
            double busW,
            boolean forced,
            int stepsPerHour,
            double[] runShare) {
        double stepHours = 1.0 / stepsPerHour;
        int steps = runShare.length;
        Arrays.fill(runShare, 0);
        double length = need.window().lengthHours();
        for (int dayStart = -24; dayStart * stepsPerHour < steps; dayStart += 24) {
            double from = dayStart + need.window().fromHour();
            double to = from + length;
            double owed = need.hours();
            double left = length;
            int first = (int) Math.floor(from * stepsPerHour);
            int end = (int) Math.ceil(to * stepsPerHour);
            for (int step = first; step < end; step++) {
                double inside = Math.min(to, (step + 1) * stepHours) - Math.max(from, step * stepHours);
                left -= inside;
                boolean known = step >= 0 && step < steps;
                boolean sunny = known && spareW[step] >= busW;
                double mustRun = forced ? Math.max(0, owed - Math.max(0, left)) : 0;
                double run = Math.min(inside, sunny ? owed : mustRun);
                if (run > 0) {
                    owed -= run;
                    if (known) {
                        runShare[step] += run / stepHours;
                    }
                }
            }
        }
    }
}
