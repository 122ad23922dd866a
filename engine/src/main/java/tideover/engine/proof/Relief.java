package tideover.engine.proof;

import java.util.List;
import org.jspecify.annotations.Nullable;
import tideover.engine.load.DayWindow;
import tideover.engine.outage.Help;
import tideover.engine.outage.Outage;
import tideover.engine.outage.Rolling;
import tideover.engine.rig.Rig;

/**
 * What else than the sun feeds the rig, laid out by the steps of an outage: the returned grid, an engine in chosen hours, borrowed or
 * the rig's own, a battery that is brought. Grid and engines all go through the one charger, never more than it gives.
 *
 * <p>The rig's own engine stands still once the asked hours are over: its fuel is counted for these alone.
 */
final class Relief {
    private final boolean[] gridOn;

    /** Bus watts that do not depend on the hour of the day. */
    private final double[] sinceStartW;

    /** Of engines through the charger, by the step of the day, while the rig's own has fuel. */
    private final double[] engineW;

    /** The same without the rig's own. */
    private final double[] borrowedW;

    /** From this step of the outage on. */
    private final int fuelEndsAt;

    private Relief(boolean[] gridOn, double[] sinceStartW, double[] engineW, double[] borrowedW, int fuelEndsAt) {
        this.gridOn = gridOn;
        this.sinceStartW = sinceStartW;
        this.engineW = engineW;
        this.borrowedW = borrowedW;
        this.fuelEndsAt = fuelEndsAt;
    }

    /** @param steps of the longest walk; null where nothing but the sun feeds the rig */
    static @Nullable Relief of(Rig rig, Outage outage, int stepsPerHour, int steps) {
        if (!rig.isHelped(outage)) {
            return null;
        }
        Rig.MainsCharge charger = rig.mainsCharge();
        double chargerW = charger == null || !charger.fromMains() ? 0 : charger.watts();
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
        return new Relief(
                gridOn,
                sinceStartW,
                engineW(rig, outage, stepsPerHour),
                borrowedW(rig, outage, stepsPerHour),
                outage.hours() * stepsPerHour);
    }

    /** What engines put on the bus through the rig's charger in the asked hours, by the step of the day, W. */
    static double[] engineW(Rig rig, Outage outage, int stepsPerHour) {
        double[] engineW = borrowedW(rig, outage, stepsPerHour);
        Rig.MainsCharge charger = rig.mainsCharge();
        if (charger != null && charger.engineW() > 0) {
            addEngine(outage.tending().engineHours(), busW(charger, charger.engineW()), stepsPerHour, engineW);
        }
        return engineW;
    }

    /** The same of engines that come to help. */
    private static double[] borrowedW(Rig rig, Outage outage, int stepsPerHour) {
        Rig.MainsCharge charger = rig.mainsCharge();
        double[] engineW = new double[24 * stepsPerHour];
        for (Help help : outage.help()) {
            if (help instanceof Help.Engine engine && charger != null && charger.fromMains()) {
                addEngine(engine.windows(), busW(charger, engine.watts()), stepsPerHour, engineW);
            }
        }
        return engineW;
    }

    private static double busW(Rig.MainsCharge charger, double engineW) {
        return Math.min(charger.watts(), engineW * charger.efficiency());
    }

    private static void addEngine(List<DayWindow> windows, double busW, int stepsPerHour, double[] engineW) {
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

    /** While the grid is there engines stand still. */
    double busW(int stepOfOutage, int stepOfDay) {
        if (gridOn[stepOfOutage]) {
            return sinceStartW[stepOfOutage];
        }
        double[] engines = stepOfOutage < fuelEndsAt ? engineW : borrowedW;
        return sinceStartW[stepOfOutage] + engines[stepOfDay];
    }
}
