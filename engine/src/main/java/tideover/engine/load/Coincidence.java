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
        return peak(loads, on -> {
            double sum = 0;
            for (Load load : on) {
                sum += weightW.applyAsDouble(load);
            }
            return sum;
        });
    }

    /** Highest value over the day of a figure of the loads that may run at one instant, and at least 0. */
    public static double peak(List<Load> loads, ToDoubleFunction<List<Load>> figureOfThoseOn) {
        List<Double> instants = new ArrayList<>(List.of(0.0));
        loads.forEach(load -> mayRun(load).forEach(window -> instants.add(window.fromHour())));
        double peak = 0;
        for (double instant : instants) {
            List<Load> on = loads.stream()
                    .filter(load -> mayRun(load).stream().anyMatch(window -> window.overlapHours(instant, 1e-6) > 0))
                    .toList();
            peak = Math.max(peak, figureOfThoseOn.applyAsDouble(on));
        }
        return peak;
    }

    /** The hours in which a load may run, whichever it chooses. */
    public static List<DayWindow> mayRun(Load load) {
        if (load instanceof TimedLoad || load.keeps()) {
            return load.onHours(12);
        }
        return load.need() instanceof Need.HoursInWindow some ? List.of(some.window()) : List.of(DayWindow.ALL_DAY);
    }
}
