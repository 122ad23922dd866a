package tideover.engine.proof;

/** What spare power on the bus, or the lack of it, does to the store, were it neither full nor empty. */
final class Gains {
    /** Rounding room on the store's discharge limit, which the rule book has already checked. */
    static final double BREATH = 1 + 1e-9;

    private final RigFigures rig;
    private final double[] essentialBusW;
    private final int stepsPerHour;
    private final double inWh;
    private final double outWh;
    private final double mostOutW;

    /** @param essentialBusW essential loads on the bus by the step of the day */
    Gains(RigFigures rig, double[] essentialBusW, int stepsPerHour) {
        this.rig = rig;
        this.essentialBusW = essentialBusW;
        this.stepsPerHour = stepsPerHour;
        this.inWh = rig.chargeEff() / stepsPerHour;
        this.outWh = 1 / (rig.dischargeEff() * stepsPerHour);
        this.mostOutW = rig.maxDischargeW() * BREATH;
    }

    /** Sun on the bus from what the panels give. */
    double sunBusW(double fromPanelsW) {
        return Math.min(rig.controllerMaxW(), rig.controllerEff() * fromPanelsW);
    }

    /** Gains in Wh of each step of a day without sun. */
    double[] darkDayWh() {
        double[] gainWh = new double[essentialBusW.length];
        for (int step = 0; step < gainWh.length; step++) {
            gainWh[step] = wh(-essentialBusW[step]);
        }
        return gainWh;
    }

    /** Gains in Wh of each step, from hourly sun on the bus that begins at a midnight. */
    void fill(double[] sunBusW, double[] darkDayWh, double[] gainWh) {
        int step = 0;
        for (int hour = 0; hour < sunBusW.length; hour++) {
            double sunW = sunBusW[hour];
            int ofDay = hour % 24 * stepsPerHour;
            for (int i = 0; i < stepsPerHour; i++, step++, ofDay++) {
                gainWh[step] = sunW == 0 ? darkDayWh[ofDay] : wh(sunW - essentialBusW[ofDay]);
            }
        }
    }

    private double wh(double spareW) {
        if (spareW >= 0) {
            return Math.min(spareW, rig.maxChargeW()) * inWh;
        }
        return -spareW <= mostOutW ? spareW * outWh : Double.NEGATIVE_INFINITY;
    }
}
