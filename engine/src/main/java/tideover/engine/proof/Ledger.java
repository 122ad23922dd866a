package tideover.engine.proof;

/**
 * Where the energy of a walk went, in Wh. Closes: {@code inWh} is what was served, what each loss took by name, and the
 * change in the store. Power that the panels could have given but nothing could take counts as in and as spilled.
 */
public final class Ledger {
    double inWh;
    double controllerLossWh;
    double controllerLimitWh;
    double chargeLimitWh;
    double noRoomWh;
    double chargeLossWh;
    double dischargeLossWh;
    double inverterLossWh;
    double outletLossWh;
    double standingWh;
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
        controllerLossWh += other.controllerLossWh;
        controllerLimitWh += other.controllerLimitWh;
        chargeLimitWh += other.chargeLimitWh;
        noRoomWh += other.noRoomWh;
        chargeLossWh += other.chargeLossWh;
        dischargeLossWh += other.dischargeLossWh;
        inverterLossWh += other.inverterLossWh;
        outletLossWh += other.outletLossWh;
        standingWh += other.standingWh;
        servedEssentialWh += other.servedEssentialWh;
        servedNiceWh += other.servedNiceWh;
        unservedEssentialWh += other.unservedEssentialWh;
        wantedNiceWh += other.wantedNiceWh;
        startWh += other.startWh;
        endWh += other.endWh;
    }
}
