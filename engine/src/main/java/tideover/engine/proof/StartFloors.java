package tideover.engine.proof;

import java.util.List;
import org.jspecify.annotations.Nullable;
import tideover.engine.load.Load;
import tideover.engine.rig.Rig;
import tideover.engine.rig.StartChain;
import tideover.engine.rig.StartEvent;

/**
 * What the first well must hold for the motors to start, by the battery's temperature and the step of the day. Laid out
 * for every whole degree; between two, the colder one counts.
 */
final class StartFloors {
    private static final int COLDEST_DEG_C = -60;
    private static final int DEGREES = 131;

    private final double[][] firstWh;

    private StartFloors(double[][] firstWh) {
        this.firstWh = firstWh;
    }

    /**
     * Of all starts that an essential load must make; null where there is none.
     *
     * @param switched whether those in which something that switches itself takes part, or the others
     * @param firstFullWh what the first well holds when full
     * @param noonHour    clock hour of solar noon
     */
    static @Nullable StartFloors of(
            Rig rig, double firstFullWh, List<Load> loads, double noonHour, int stepsPerHour, boolean switched) {
        List<StartEvent> events = StartChain.events(rig, loads, noonHour).stream()
                .filter(StartEvent::essential)
                .filter(event -> event.starting().stream().anyMatch(Load::keeps) == switched)
                .toList();
        if (events.isEmpty()) {
            return null;
        }
        int stepsPerDay = 24 * stepsPerHour;
        double stepHours = 1.0 / stepsPerHour;
        double[][] firstWh = new double[DEGREES][stepsPerDay];
        for (StartEvent event : events) {
            boolean[] mayCome = new boolean[stepsPerDay];
            for (int step = 0; step < stepsPerDay; step++) {
                mayCome[step] = event.mayCome(step * stepHours, stepHours);
            }
            for (int i = 0; i < DEGREES; i++) {
                double neededWh = firstFullWh * StartChain.fillNeeded(rig, event, COLDEST_DEG_C + i);
                for (int step = 0; step < stepsPerDay; step++) {
                    firstWh[i][step] = mayCome[step] ? Math.max(firstWh[i][step], neededWh) : firstWh[i][step];
                }
            }
        }
        return new StartFloors(firstWh);
    }

    double firstWh(double degC, int stepOfDay) {
        int i = (int) Math.floor(degC) - COLDEST_DEG_C;
        return firstWh[Math.max(0, Math.min(DEGREES - 1, i))][stepOfDay];
    }
}
