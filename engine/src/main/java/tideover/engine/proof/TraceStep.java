package tideover.engine.proof;

import java.util.List;

/**
 * One step of a walked outage; powers are means over the step.
 *
 * @param hour               hours since the outage began, at the step's start
 * @param weatherHour        hour of the weather years, counted through all years
 * @param airDegC            outdoor air
 * @param batteryDegC        of the battery, or of its room where it is a plain store
 * @param panelsOut          whether the panels are out
 * @param arrayW             what the panels could give
 * @param onBusW             what the controller can put on the bus
 * @param helpW              from an engine, the returned grid or a battery that was brought
 * @param controllerLossW    lost inside the controller
 * @param controllerLimitW   cut off by its output current
 * @param chargeLimitW       not taken because the store charges no faster
 * @param noRoomW            not taken because the store is full
 * @param essentialServedW   at the plugs of essential loads
 * @param essentialUnservedW wanted there and not given
 * @param niceServedW        at the plugs of nice-to-have loads
 * @param inverterLossW      lost in the inverter
 * @param outletLossW        lost in outlet converters
 * @param standingW          the inverter's own draw
 * @param heaterW            drawn by the battery's heater
 * @param selfW              lost inside the battery with time
 * @param chargeLossW        lost on the way into the store
 * @param dischargeLossW     lost on the way out of it
 * @param storedWh           in the store at the step's end
 * @param kept               what switches itself, in the trace's order
 */
public record TraceStep(
        double hour,
        int weatherHour,
        double airDegC,
        double batteryDegC,
        boolean panelsOut,
        double arrayW,
        double onBusW,
        double helpW,
        double controllerLossW,
        double controllerLimitW,
        double chargeLimitW,
        double noRoomW,
        double essentialServedW,
        double essentialUnservedW,
        double niceServedW,
        double inverterLossW,
        double outletLossW,
        double standingW,
        double heaterW,
        double selfW,
        double chargeLossW,
        double dischargeLossW,
        double storedWh,
        List<KeptStep> kept) {
    /**
     * One thing that switches itself.
     *
     * @param kept    at the step's end: temperature of what is kept, degC, or litres in a pit
     * @param airDegC at the step's end, of the air around it; the same as kept where there is none
     * @param plugW   mean draw at its plug
     * @param darkH   hours of the step without power at its plug, or held back by its owner
     * @param whole   whether its need has been kept so far
     */
    public record KeptStep(double kept, double airDegC, double plugW, double darkH, boolean whole) {}

    public TraceStep {
        kept = List.copyOf(kept);
    }
}
