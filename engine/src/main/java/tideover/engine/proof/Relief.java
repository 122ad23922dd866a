package tideover.engine.proof;

import java.util.List;
import org.jspecify.annotations.Nullable;
import tideover.engine.load.DayWindow;
import tideover.engine.outage.Help;
import tideover.engine.outage.Outage;
import tideover.engine.outage.Rolling;
import tideover.engine.rig.Rig;

/**
 * What else than the sun feeds the rig, laid out by the steps of an outage: the returned grid, an engine in chosen hours,
 * a battery that is brought. Grid and engine both go through the one charger, never more than it gives.
 */
final class Relief {
    private final boolean[] gridOn;

    /** Bus watts that do not depend on the hour of the day. */
    private final double[] sinceStartW;

    /** Of the engine through the charger, by the step of the day. */
    private final double[] engineW;

    private Relief(boolean[] gridOn, double[] sinceStartW, double[] engineW) {
        this.gridOn = gridOn;
        this.sinceStartW = sinceStartW;
        this.engineW = engineW;
    }

    /** @param steps of the longest walk; null where nothing but the sun feeds the rig */
    static @Nullable Relief of(Rig rig, Outage outage, int stepsPerHour, int steps) {
        if (!outage.isHelped()) {
            return null;
        }
        Rig.MainsCharge charger = rig.mainsCharge();
        double chargerW = charger == null ? 0 : charger.watts();
        boolean[] gridOn = new boolean[steps];
        double[] sinceStartW = new double[steps];
        Rolling rolling = outage.rolling();
        for (int step = 0; step < steps; step++) {
            gridOn[step] = rolling != null && rolling.gridOn((double) step / stepsPerHour);
            sinceStartW[step] = gridOn[step] ? chargerW : 0;
        }
        for (Help help : outage.help()) {
            if (help instanceof Help.Handover handover) {
                addHandover(handover, stepsPerHour, sinceStartW);
            }
        }
        return new Relief(gridOn, sinceStartW, engineW(rig, outage, stepsPerHour));
    }

    /** What engines put on the bus through the rig's charger, by the step of the day, W. */
    static double[] engineW(Rig rig, Outage outage, int stepsPerHour) {
        Rig.MainsCharge charger = rig.mainsCharge();
        double[] engineW = new double[24 * stepsPerHour];
        for (Help help : outage.help()) {
            if (help instanceof Help.Engine engine && charger != null) {
                double busW = Math.min(charger.watts(), engine.watts() * charger.efficiency());
                addEngine(engine, busW, stepsPerHour, engineW);
            }
        }
        return engineW;
    }

    private static void addEngine(Help.Engine engine, double busW, int stepsPerHour, double[] engineW) {
        List<DayWindow> windows = engine.windows();
        double stepHours = 1.0 / stepsPerHour;
        for (int step = 0; step < engineW.length; step++) {
            double hours = 0;
            for (DayWindow window : windows) {
                hours += window.overlapHours(step * stepHours, stepHours);
            }
            engineW[step] = Math.max(engineW[step], busW * hours / stepHours);
        }
    }

    private static void addHandover(Help.Handover handover, int stepsPerHour, double[] sinceStartW) {
        double leftWh = handover.wh();
        for (int step = handover.afterHours() * stepsPerHour; step < sinceStartW.length && leftWh > 0; step++) {
            double wh = Math.min(leftWh, handover.mostW() / stepsPerHour);
            sinceStartW[step] += wh * stepsPerHour;
            leftWh -= wh;
        }
    }

    boolean gridOn(int stepOfOutage) {
        return gridOn[stepOfOutage];
    }

    /** While the grid is there the engine stands still. */
    double busW(int stepOfOutage, int stepOfDay) {
        return sinceStartW[stepOfOutage] + (gridOn[stepOfOutage] ? 0 : engineW[stepOfDay]);
    }
}
