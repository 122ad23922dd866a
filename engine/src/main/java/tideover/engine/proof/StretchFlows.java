package tideover.engine.proof;

import tideover.engine.quantity.Series;

/**
 * Sun and demand of one stretch as flat arrays, one quantity an array, ready for the walk. An object serves one rig, is
 * filled for one stretch after another and belongs to one thread. A stretch begins at a midnight.
 */
final class StretchFlows {
    /** Rounding room on the store's discharge limit, which the rule book has already checked. */
    private static final double BREATH = 1 + 1e-9;

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

    StretchFlows(RigFigures rig, BusDemand demand) {
        this.rig = rig;
        this.stepsPerHour = demand.stepsPerHour();
        this.stepHours = 1.0 / stepsPerHour;
        this.stepsPerDay = demand.stepsPerDay();
        this.essential = new FlowArrays(stepsPerDay, demand::essential);
        this.nice = new FlowArrays(stepsPerDay, demand::nice);
        this.darkGainWh = new double[stepsPerDay];
        for (int step = 0; step < stepsPerDay; step++) {
            darkGainWh[step] = gainWh(-essential.busW[step]);
        }
    }

    /** @param sunPerRatedW hourly DC watts per rated watt through all weather years */
    void fill(Stretch stretch, Series sunPerRatedW) {
        if (arrayW.length != stretch.hours()) {
            arrayW = new double[stretch.hours()];
            sunBusW = new double[stretch.hours()];
            gainWh = new double[stretch.hours() * stepsPerHour];
        }
        int step = 0;
        for (int hour = 0; hour < arrayW.length; hour++) {
            double fromPanelsW =
                    rig.arrayRatedW() * sunPerRatedW.at(stretch.weatherHour(hour, sunPerRatedW.length()));
            double onBusW = Math.min(rig.controllerMaxW(), rig.controllerEff() * fromPanelsW);
            arrayW[hour] = fromPanelsW;
            sunBusW[hour] = onBusW;
            int stepOfDay = hour % 24 * stepsPerHour;
            for (int i = 0; i < stepsPerHour; i++, step++, stepOfDay++) {
                gainWh[step] = onBusW == 0 ? darkGainWh[stepOfDay] : gainWh(onBusW - essential.busW[stepOfDay]);
            }
        }
    }

    /** What a step's spare power, or lack of it, does to the store. */
    private double gainWh(double spareW) {
        if (spareW >= 0) {
            return Math.min(spareW, rig.maxChargeW()) * rig.chargeEff() * stepHours;
        }
        boolean given = -spareW <= rig.maxDischargeW() * BREATH;
        return given ? spareW * stepHours / rig.dischargeEff() : Double.NEGATIVE_INFINITY;
    }
}
