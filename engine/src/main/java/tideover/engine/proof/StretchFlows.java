package tideover.engine.proof;

import java.util.List;
import tideover.engine.quantity.Series;

/**
 * Sun and demand of one stretch as flat arrays, one quantity an array, ready for the walk. An object is filled for one
 * stretch after another and belongs to one thread.
 *
 * <p>The lead day before the first start lets a window that began on the evening before be planned; a window that began
 * before the lead cannot reach the first start, since none is longer than a day.
 */
public final class StretchFlows {
    /** Rounding room on the store's discharge limit, which the rule book has already checked. */
    private static final double BREATH = 1 + 1e-9;

    final int stepsPerHour;
    final double stepHours;
    private final boolean split;
    private int steps;

    double[] arrayW = {};
    double[] sunBusW = {};
    FlowArrays essential = new FlowArrays(0, false);
    FlowArrays nice = new FlowArrays(0, false);

    /** Wh into the store in a step, were it neither full nor empty, with the panels out. */
    double[] gainWh = {};

    /** The same before the panels are out. */
    double[] darkGainWh = {};

    private double[] spareW = {};
    private double[] runShare = {};

    /** @param split whether to keep where the demand ends up, which only the accounting walk needs */
    StretchFlows(int stepsPerHour, boolean split) {
        this.stepsPerHour = stepsPerHour;
        this.stepHours = 1.0 / stepsPerHour;
        this.split = split;
    }

    /** @param sunPerRatedW hourly DC watts per rated watt through all weather years */
    void fill(Stretch stretch, Series sunPerRatedW, RigFigures rig, BusDemand demand) {
        grow(stretch.hours() * stepsPerHour);
        sun(stretch, sunPerRatedW, rig);
        for (int step = 0; step < steps; step++) {
            essential.set(step, demand.essential(step % demand.stepsPerDay()));
            nice.set(step, demand.nice(step % demand.stepsPerDay()));
        }
        if (!demand.essentialFree().isEmpty() || !demand.niceFree().isEmpty()) {
            for (int step = 0; step < steps; step++) {
                spareW[step] = sunBusW[step] - essential.busW[step];
            }
            planFree(demand.essentialFree(), true, essential);
            planFree(demand.niceFree(), false, nice);
        }
        gains(rig);
    }

    int steps() {
        return steps;
    }

    /** Step at which an outage begins that starts so many hours after the stretch's first start. */
    int stepOfStart(int startHour) {
        return (Stretch.LEAD_HOURS + startHour) * stepsPerHour;
    }

    private void grow(int wanted) {
        steps = wanted;
        if (arrayW.length == wanted) {
            return;
        }
        arrayW = new double[wanted];
        sunBusW = new double[wanted];
        essential = new FlowArrays(wanted, split);
        nice = new FlowArrays(wanted, split);
        gainWh = new double[wanted];
        darkGainWh = new double[wanted];
        spareW = new double[wanted];
        runShare = new double[wanted];
    }

    private void sun(Stretch stretch, Series sunPerRatedW, RigFigures rig) {
        int step = 0;
        for (int hour = 0; hour < stretch.hours(); hour++) {
            double fromPanelsW = rig.arrayRatedW() * sunPerRatedW.at(stretch.weatherHour(hour, sunPerRatedW.length()));
            double onBusW = Math.min(rig.controllerMaxW(), rig.controllerEff() * fromPanelsW);
            for (int i = 0; i < stepsPerHour; i++, step++) {
                arrayW[step] = fromPanelsW;
                sunBusW[step] = onBusW;
            }
        }
    }

    private void planFree(List<BusDemand.Free> loads, boolean forced, FlowArrays into) {
        for (BusDemand.Free free : loads) {
            FreeHours.plan(free.need(), spareW, free.flow().busW(), forced, stepsPerHour, runShare);
            for (int step = 0; step < steps; step++) {
                double share = runShare[step];
                if (share > 0) {
                    into.add(step, share, free.flow());
                    spareW[step] -= share * free.flow().busW();
                }
            }
        }
    }

    private void gains(RigFigures rig) {
        double in = rig.chargeEff() * stepHours;
        double out = stepHours / rig.dischargeEff();
        double mostOutW = rig.maxDischargeW() * BREATH;
        for (int step = 0; step < steps; step++) {
            double wantedW = essential.busW[step];
            double spare = sunBusW[step] - wantedW;
            if (spare >= 0) {
                gainWh[step] = Math.min(spare, rig.maxChargeW()) * in;
            } else {
                gainWh[step] = -spare <= mostOutW ? spare * out : Double.NEGATIVE_INFINITY;
            }
            darkGainWh[step] = wantedW <= mostOutW ? -wantedW * out : Double.NEGATIVE_INFINITY;
        }
    }
}
