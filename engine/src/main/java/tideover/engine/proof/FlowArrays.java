package tideover.engine.proof;

import java.util.function.IntFunction;

/** One kind of demand by the step of the day: watts on the bus and where they end up, one quantity an array. */
final class FlowArrays {
    final double[] busW;
    final double[] acW;
    final double[] plugW;
    final double[] inverterLossW;
    final double[] outletLossW;
    final double[] standingW;

    FlowArrays(int stepsPerDay, IntFunction<BusDemand.Flow> flowOfStep) {
        busW = new double[stepsPerDay];
        acW = new double[stepsPerDay];
        plugW = new double[stepsPerDay];
        inverterLossW = new double[stepsPerDay];
        outletLossW = new double[stepsPerDay];
        standingW = new double[stepsPerDay];
        for (int step = 0; step < stepsPerDay; step++) {
            BusDemand.Flow flow = flowOfStep.apply(step);
            busW[step] = flow.busW();
            acW[step] = flow.acW();
            plugW[step] = flow.plugW();
            inverterLossW[step] = flow.inverterLossW();
            outletLossW[step] = flow.outletLossW();
            standingW[step] = flow.standingW();
        }
    }

    /** Whether anything is wanted at any step of the day. */
    boolean wantAny() {
        for (double watts : plugW) {
            if (watts > 0) {
                return true;
            }
        }
        return false;
    }
}
