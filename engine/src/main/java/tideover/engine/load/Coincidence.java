package tideover.engine.load;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
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
        List<List<DayWindow>> windows = loads.stream().map(Coincidence::mayRun).toList();
        Set<Double> instants = new LinkedHashSet<>(List.of(0.0));
        windows.forEach(some -> some.forEach(window -> instants.add(window.fromHour())));
        double peak = 0;
        for (double instant : instants) {
            List<Load> on = new ArrayList<>();
            for (int i = 0; i < loads.size(); i++) {
                if (isOn(windows.get(i), instant)) {
                    on.add(loads.get(i));
                }
            }
            peak = Math.max(peak, figureOfThoseOn.applyAsDouble(on));
        }
        return peak;
    }

    private static boolean isOn(List<DayWindow> windows, double instant) {
        for (DayWindow window : windows) {
            if (window.overlapHours(instant, 1e-6) > 0) {
                return true;
            }
        }
        return false;
    }

    /** The hours in which a load may run, whichever it chooses. */
    public static List<DayWindow> mayRun(Load load) {
        if (load instanceof TimedLoad || load.keeps()) {
            return load.onHours(12);
        }
        return load.need() instanceof Need.HoursInWindow some ? List.of(some.window()) : List.of(DayWindow.ALL_DAY);
    }
}
