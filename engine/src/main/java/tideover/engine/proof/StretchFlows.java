package tideover.engine.proof;

import tideover.engine.quantity.Series;

/**
 * Sun and demand of one stretch as flat arrays, one quantity an array, ready for the walk. An object serves one rig, is
 * filled for one stretch after another and belongs to one thread. A stretch begins at a midnight.
 */
final class StretchFlows {
    final int stepsPerHour;
    final double stepHours;
    final int stepsPerDay;
    final FlowArrays essential;
    final FlowArrays nice;

    /** By the hour of the stretch. */
    double[] arrayW = {};

    double[] sunBusW = {};

    /** Wh into the store in each step, were it neither full nor empty, with the panels out. */
    double[] gainWh = {};

    /** The same before the panels are out, by the step of the day. */
    final double[] darkGainWh;

    private final RigFigures rig;
    private final Gains gains;

    StretchFlows(RigFigures rig, BusDemand demand) {
        this.rig = rig;
        this.stepsPerHour = demand.stepsPerHour();
        this.stepHours = 1.0 / stepsPerHour;
        this.stepsPerDay = demand.stepsPerDay();
        this.essential = new FlowArrays(stepsPerDay, demand::essential);
        this.nice = new FlowArrays(stepsPerDay, demand::nice);
        this.gains = new Gains(rig, essential.busW, stepsPerHour);
        this.darkGainWh = gains.darkDayWh();
    }

    /** @param sunPerRatedW hourly DC watts per rated watt through all weather years */
    void fill(Stretch stretch, Series sunPerRatedW) {
        if (arrayW.length != stretch.hours()) {
            arrayW = new double[stretch.hours()];
            sunBusW = new double[stretch.hours()];
            gainWh = new double[stretch.hours() * stepsPerHour];
        }
        sunPerRatedW.copyRound(stretch.firstStartHour(), arrayW);
        for (int hour = 0; hour < arrayW.length; hour++) {
            arrayW[hour] *= rig.arrayRatedW();
            sunBusW[hour] = gains.sunBusW(arrayW[hour]);
        }
        gains.fill(sunBusW, darkGainWh, gainWh);
    }
}
