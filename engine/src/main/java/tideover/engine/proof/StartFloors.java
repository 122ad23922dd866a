package tideover.engine.proof;

import java.util.List;
import java.util.function.DoubleUnaryOperator;
import org.jspecify.annotations.Nullable;
import tideover.engine.load.Load;
import tideover.engine.rig.Rig;

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

    /** One start: the steps of the day at which it may come, and the filling of the first well it needs by temperature. */
    record Start(boolean[] atStep, DoubleUnaryOperator fillNeededByDegC) {}

    /** Null where no essential load has a motor to start. */
    static @Nullable StartFloors of(Rig rig, CellBank bank, List<Load> loads, double noonHour, int stepsPerHour) {
        return null;
    }

    static StartFloors of(Iterable<Start> starts, int stepsPerDay, double firstFullWh) {
        double[][] firstWh = new double[DEGREES][stepsPerDay];
        for (Start start : starts) {
            for (int i = 0; i < DEGREES; i++) {
                double neededWh = firstFullWh * start.fillNeededByDegC().applyAsDouble(COLDEST_DEG_C + i);
                for (int step = 0; step < stepsPerDay; step++) {
                    if (start.atStep()[step]) {
                        firstWh[i][step] = Math.max(firstWh[i][step], neededWh);
                    }
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
