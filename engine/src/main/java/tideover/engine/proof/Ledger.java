package tideover.engine.proof;

/**
 * Where the energy of a walk went, in Wh. Closes: {@code inWh} and {@code helpInWh} are what was served, what each loss took by name, and the
 * change in the store. Power that the panels could have given but nothing could take counts as in and as spilled.
 */
public final class Ledger {
    double inWh;
    double helpInWh;
    double onBusWh;
    double controllerLossWh;
    double controllerLimitWh;
    double chargeLimitWh;
    double noRoomWh;
    double chargeLossWh;
    double dischargeLossWh;
    double inverterLossWh;
    double outletLossWh;
    double standingWh;
    double heaterWh;
    double selfDischargeWh;
    double gridServedWh;
    double servedEssentialWh;
    double servedNiceWh;
    double unservedEssentialWh;
    double wantedNiceWh;
    double startWh;
    double endWh;

    /** What the panels could give. */
    public double inWh() {
        return inWh;
    }

    /** What an engine, the returned grid through the charger, or a battery that was brought put on the bus. */
    public double helpInWh() {
        return helpInWh;
    }

    /** What the controller put on the bus, or could have put there, had there been room. */
    public double onBusWh() {
        return onBusWh;
    }

    /** Drawn by the battery's heater. */
    public double heaterWh() {
        return heaterWh;
    }

    /** Lost inside the battery with time. */
    public double selfDischargeWh() {
        return selfDischargeWh;
    }

    /** Wanted by essential loads while the grid was back, and served by the grid: not part of the rig's balance. */
    public double gridServedWh() {
        return gridServedWh;
    }

    /** Lost inside the charge controller. */
    public double controllerLossWh() {
        return controllerLossWh;
    }

    /** Cut off by the controller's output current. */
    public double controllerLimitWh() {
        return controllerLimitWh;
    }

    /** Not taken because the store charges no faster. */
    public double chargeLimitWh() {
        return chargeLimitWh;
    }

    /** Not taken because the store was full. */
    public double noRoomWh() {
        return noRoomWh;
    }

    public double chargeLossWh() {
        return chargeLossWh;
    }

    public double dischargeLossWh() {
        return dischargeLossWh;
    }

    public double inverterLossWh() {
        return inverterLossWh;
    }

    /** Lost in the converters of direct-current outlets. */
    public double outletLossWh() {
        return outletLossWh;
    }

    /** Drawn by the inverter itself. */
    public double standingWh() {
        return standingWh;
    }

    /** Reached the plugs of essential loads. */
    public double servedEssentialWh() {
        return servedEssentialWh;
    }

    /** Reached the plugs of nice-to-have loads. */
    public double servedNiceWh() {
        return servedNiceWh;
    }

    /** Wanted at the plugs of essential loads and not given. */
    public double unservedEssentialWh() {
        return unservedEssentialWh;
    }

    /** Wanted at the plugs of nice-to-have loads. */
    public double wantedNiceWh() {
        return wantedNiceWh;
    }

    /** In the store at the start. */
    public double startWh() {
        return startWh;
    }

    /** In the store at the end. */
    public double endWh() {
        return endWh;
    }

    void add(Ledger other) {
        inWh += other.inWh;
        helpInWh += other.helpInWh;
        onBusWh += other.onBusWh;
        controllerLossWh += other.controllerLossWh;
        controllerLimitWh += other.controllerLimitWh;
        chargeLimitWh += other.chargeLimitWh;
        noRoomWh += other.noRoomWh;
        chargeLossWh += other.chargeLossWh;
        dischargeLossWh += other.dischargeLossWh;
        inverterLossWh += other.inverterLossWh;
        outletLossWh += other.outletLossWh;
        standingWh += other.standingWh;
        heaterWh += other.heaterWh;
        selfDischargeWh += other.selfDischargeWh;
        gridServedWh += other.gridServedWh;
        servedEssentialWh += other.servedEssentialWh;
        servedNiceWh += other.servedNiceWh;
        unservedEssentialWh += other.unservedEssentialWh;
        wantedNiceWh += other.wantedNiceWh;
        startWh += other.startWh;
        endWh += other.endWh;
    }
}
