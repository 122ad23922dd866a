package tideover.engine.rig;

import java.util.List;
import tideover.engine.load.ColdLoad;
import tideover.engine.load.DayWindow;
import tideover.engine.load.Load;
import tideover.engine.part.Engine;
import tideover.engine.part.InverterRating;

/**
 * How an engine that feeds the loads itself runs through a day: in every step in which an essential load wants power, and stands
 * still in the others. A load that switches itself wants power all the time, for nobody knows when: a cold box then draws what it uses
 * on a usual day spread evenly, pumps and heaters what they draw while they run, which is the most.
 */
public final class RunOfDay {
    private static final int DAY_HOURS = 24;

    private final double[] hours;
    private final double[] litres;
    private final double[] wh;
    private final int stepsPerHour;

    private RunOfDay(int stepsPerHour) {
        this.stepsPerHour = stepsPerHour;
        hours = new double[DAY_HOURS * stepsPerHour];
        litres = new double[hours.length];
        wh = new double[hours.length];
    }

    /** @param noonHour clock hour of solar noon */
    public static RunOfDay of(Rig rig, Engine engine, List<Load> loads, double noonHour, int stepsPerHour) {
        List<Load> fed = Sockets.of(rig, loads).plugged().stream()
                .filter(one -> one.load().essential() && one.throughInverter(rig))
                .map(Sockets.Plugged::load)
                .toList();
        RunOfDay day = new RunOfDay(stepsPerHour);
        double stepHours = 1.0 / stepsPerHour;
        for (int step = 0; step < day.hours.length; step++) {
            double from = step * stepHours;
            double share = 0;
            double plugW = 0;
            for (Load load : fed) {
                share = Math.max(share, wantedShare(load, from, stepHours, noonHour));
                plugW += drawnW(load, from, stepHours, noonHour);
            }
            if (share > 0) {
                day.hours[step] = share * stepHours;
                day.wh[step] = plugW * stepHours;
                day.litres[step] = day.hours[step] * engine.litresPerH(dcW(rig, plugW / share));
            }
        }
        return day;
    }

    /** What the engine gives for it: an inverter between takes its part. */
    private static double dcW(Rig rig, double plugW) {
        InverterRating inverter = rig.inverter();
        return inverter == null ? plugW : inverter.loss().dcW(plugW);
    }

    private static double wantedShare(Load load, double from, double stepHours, double noonHour) {
        if (load.keeps()) {
            return 1;
        }
        double hours = 0;
        for (DayWindow window : load.onHours(noonHour)) {
            hours += window.overlapHours(from, stepHours);
        }
        return Math.min(1, hours / stepHours);
    }

    private static double drawnW(Load load, double from, double stepHours, double noonHour) {
        if (load instanceof ColdLoad cold) {
            return Math.min(cold.runningW(), cold.wantedWhPerDay() / DAY_HOURS);
        }
        return load.keeps() ? load.runningW() : load.wantedW(from, stepHours, noonHour);
    }

    /** Sums over an outage that begins at a whole hour. */
    private static double sum(double[] byStep, int startHour, int stepsPerHour, int outageHours) {
        double sum = 0;
        int steps = outageHours * stepsPerHour;
        for (int step = 0; step < steps; step++) {
            sum += byStep[(startHour * stepsPerHour + step) % byStep.length];
        }
        return sum;
    }

    private static double most(double[] byStep, int stepsPerHour, int outageHours) {
        double most = 0;
        for (int start = 0; start < DAY_HOURS; start++) {
            most = Math.max(most, sum(byStep, start, stepsPerHour, outageHours));
        }
        return most;
    }

    /** Most hours that it runs in an outage so long. */
    public double mostHours(int outageHours) {
        return most(hours, stepsPerHour, outageHours);
    }

    /** Most that it burns, L. */
    public double mostLitres(int outageHours) {
        return most(litres, stepsPerHour, outageHours);
    }

    /** Most that the essential loads take at their plugs, Wh. */
    public double mostWh(int outageHours) {
        return most(wh, stepsPerHour, outageHours);
    }

    /** Share of the hours of the day from which on the fuel lasts for an outage so long, 0..1. */
    public double lastingShare(int outageHours, double fuelL) {
        int lasting = 0;
        for (int start = 0; start < DAY_HOURS; start++) {
            lasting += sum(litres, start, stepsPerHour, outageHours) <= fuelL + ROUNDING_L ? 1 : 0;
        }
        return (double) lasting / DAY_HOURS;
    }

    private static final double ROUNDING_L = 1e-9;
}
