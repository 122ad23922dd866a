package tideover.engine.proof;

/**
 * One kind of demand through a stretch: watts on the bus, and, where the energy is to be accounted for, where they end
 * up. The screening needs only the bus.
 */
final class FlowArrays {
    final double[] busW;
    final double[] plugW;
    final double[] inverterLossW;
    final double[] outletLossW;
    final double[] standingW;

    FlowArrays(int steps, boolean split) {
        busW = new double[steps];
        int splitSteps = split ? steps : 0;
        plugW = new double[splitSteps];
        inverterLossW = new double[splitSteps];
        outletLossW = new double[splitSteps];
        standingW = new double[splitSteps];
    }

    private boolean split() {
        return plugW.length > 0;
    }

    void set(int step, BusDemand.Flow flow) {
        busW[step] = flow.busW();
        if (split()) {
            plugW[step] = flow.plugW();
            inverterLossW[step] = flow.inverterLossW();
            outletLossW[step] = flow.outletLossW();
            standingW[step] = flow.standingW();
        }
    }

    void add(int step, double share, BusDemand.Flow flow) {
        busW[step] += share * flow.busW();
        if (split()) {
            plugW[step] += share * flow.plugW();
            inverterLossW[step] += share * flow.inverterLossW();
            outletLossW[step] += share * flow.outletLossW();
            standingW[step] += share * flow.standingW();
        }
    }
}
