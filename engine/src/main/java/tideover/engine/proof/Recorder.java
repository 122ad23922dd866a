package tideover.engine.proof;

import java.util.ArrayList;
import java.util.List;
import tideover.engine.quantity.Series;
import tideover.engine.site.Weather;

/** Writes a walk down as one row a step, from the differences of its ledger. */
final class Recorder implements Walk.Tape {
    private final double stepHours;
    private final int stepsPerHour;
    private final int startHour;
    private final Weather weather;
    private final Series batteryDegC;
    private final List<TraceStep> steps = new ArrayList<>();
    private final Walk walk;
    private final double[] keptWh;
    private final double[] darkH;
    private Ledger before = new Ledger();

    Recorder(Walk walk, int stepsPerHour, int startHour, Weather weather, Series batteryDegC) {
        this.walk = walk;
        this.keptWh = new double[walk.keepers()];
        this.darkH = new double[walk.keepers()];
        this.stepsPerHour = stepsPerHour;
        this.stepHours = 1.0 / stepsPerHour;
        this.batteryDegC = batteryDegC;
        this.startHour = startHour;
        this.weather = weather;
    }

    @Override
    public void after(int stepOfOutage, boolean panelsOut, Ledger now) {
        double hours = stepHours;
        int weatherHour = (startHour + stepOfOutage / stepsPerHour) % weather.hours();
        steps.add(new TraceStep(
                stepOfOutage * hours,
                weatherHour,
                weather.airDegC().at(weatherHour),
                batteryDegC.at(weatherHour),
                panelsOut,
                (now.inWh - before.inWh) / hours,
                (now.onBusWh - before.onBusWh) / hours,
                (now.helpInWh - before.helpInWh) / hours,
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
                (now.heaterWh - before.heaterWh) / hours,
                (now.selfDischargeWh - before.selfDischargeWh) / hours,
                (now.chargeLossWh - before.chargeLossWh) / hours,
                (now.dischargeLossWh - before.dischargeLossWh) / hours,
                now.endWh,
                kept()));
        before = new Ledger();
        before.add(now);
    }

    private List<TraceStep.KeptStep> kept() {
        List<TraceStep.KeptStep> all = new ArrayList<>();
        for (int number = 0; number < keptWh.length; number++) {
            Walk.KeptNow now = walk.kept(number);
            all.add(new TraceStep.KeptStep(
                    now.kept(),
                    now.airDegC(),
                    (now.plugWh() - keptWh[number]) / stepHours,
                    now.darkH() - darkH[number],
                    now.whole()));
            keptWh[number] = now.plugWh();
            darkH[number] = now.darkH();
        }
        return all;
    }

    List<TraceStep> steps() {
        return steps;
    }
}
