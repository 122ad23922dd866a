package tideover.engine.proof;

import java.util.ArrayList;
import java.util.List;
import tideover.engine.site.Weather;

/** Writes a walk down as one row a step, from the differences of its ledger. */
final class Recorder implements Walk.Tape {
    private final StretchFlows flows;
    private final int startHour;
    private final Weather weather;
    private final List<TraceStep> steps = new ArrayList<>();
    private Ledger before = new Ledger();

    Recorder(StretchFlows flows, int startHour, Weather weather) {
        this.flows = flows;
        this.startHour = startHour;
        this.weather = weather;
    }

    @Override
    public void after(int stepOfStretch, int stepOfOutage, boolean panelsOut, Ledger now) {
        double hours = flows.stepHours;
        int weatherHour = (startHour + stepOfOutage / flows.stepsPerHour) % weather.hours();
        steps.add(new TraceStep(
                stepOfOutage * hours,
                weatherHour,
                weather.airDegC().at(weatherHour),
                panelsOut,
                (now.inWh - before.inWh) / hours,
                panelsOut ? flows.sunBusW[stepOfStretch / flows.stepsPerHour] : 0,
                (now.controllerLossWh - before.controllerLossWh) / hours,
                (now.controllerLimitWh - before.controllerLimitWh) / hours,
                (now.chargeLimitWh - before.chargeLimitWh) / hours,
                (now.noRoomWh - before.noRoomWh) / hours,
                (now.servedEssentialWh - before.servedEssentialWh) / hours,
                (now.unservedEssentialWh - before.unservedEssentialWh) / hours,
                (now.servedNiceWh - before.servedNiceWh) / hours,
                (now.inverterLossWh - before.inverterLossWh) / hours,
                (now.outletLossWh - before.outletLossWh) / hours,
                (now.standingWh - before.standingWh) / hours,
                (now.chargeLossWh - before.chargeLossWh) / hours,
                (now.dischargeLossWh - before.dischargeLossWh) / hours,
                now.endWh));
        before = new Ledger();
        before.add(now);
    }

    List<TraceStep> steps() {
        return steps;
    }
}
