package tideover.engine.load;

import java.util.ArrayList;
import java.util.List;
import java.util.function.ToDoubleFunction;

/**
 * The most that loads can draw at one instant. Every instant at which some load may begin is looked at, so a peak
 * shorter than a simulation step is found too.
 */
public final class Coincidence {
    private Coincidence() {}

    /** Highest sum over the day of {@code weightW} over the loads that may run at that instant, W. */
    public static double peakW(List<Load> loads, ToDoubleFunction<Load> weightW) {
        List<Double> instants = new ArrayList<>(List.of(0.0));
        loads.forEach(load -> mayRun(load).forEach(window -> instants.add(window.fromHour())));
        double peak = 0;
        for (double instant : instants) {
            double sum = 0;
            for (Load load : loads) {
                boolean on = mayRun(load).stream().anyMatch(window -> window.overlapHours(instant, 1e-6) > 0);
                sum += on ? weightW.applyAsDouble(load) : 0;
            }
            peak = Math.max(peak, sum);
        }
        return peak;
    }

    private static List<DayWindow> mayRun(Load load) {
        if (load instanceof TimedLoad timed) {
            return timed.windows();
        }
        return load.need() instanceof Need.HoursInWindow some ? List.of(some.window()) : List.of(DayWindow.ALL_DAY);
    }
}
