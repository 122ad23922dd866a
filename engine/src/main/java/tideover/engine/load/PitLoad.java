package tideover.engine.load;

import java.util.List;
import tideover.engine.quantity.Require;
import tideover.engine.site.RoomKind;

/**
 * A sump pump and its pit: water comes in, a float switches the pump, and the pit must not run over.
 *
 * @param runningW   of the pump
 * @param pit        where the water stands
 * @param inflow     what comes in
 * @param pumpedLPerH what the pump lifts
 */
public record PitLoad(
        String name,
        Supply supply,
        double runningW,
        Pit pit,
        Inflow inflow,
        double pumpedLPerH,
        RoomKind room,
        Nature nature)
        implements KeepingLoad {
    /**
     * Litres above the float's lower point.
     *
     * @param onL   at which the float lets the pump run; it stops at 0
     * @param brimL at which the pit runs over
     */
    public record Pit(double onL, double brimL) {
        public Pit {
            Require.above(0, "onL", onL, "L");
            Require.above(onL, "brimL", brimL, "L");
        }
    }

    /**
     * What comes in, hour by hour.
     *
     * @param usualLPerH in the asked months, without a storm
     * @param peakLPerH  in a storm, at its highest; the usual one where storms add nothing
     * @param peakHour   hours from the outage's beginning to the peak, in a straight rise
     * @param ebbHours   from the peak back to the usual, in a straight fall
     */
    public record Inflow(double usualLPerH, double peakLPerH, double peakHour, double ebbHours) {
        public Inflow {
            Require.atLeast(0, "usualLPerH", usualLPerH, "L/h");
            Require.atLeast(usualLPerH, "peakLPerH", peakLPerH, "L/h");
            Require.atLeast(0, "peakHour", peakHour, "h");
            Require.above(0, "ebbHours", ebbHours, "h");
        }

        /** So long after the outage began. */
        public double lPerH(double hour, boolean storm) {
            if (!storm) {
                return usualLPerH;
            }
            double rise = peakHour == 0 ? 1 : Math.min(1, hour / peakHour);
            double ebb = hour <= peakHour ? 1 : Math.max(0, 1 - (hour - peakHour) / ebbHours);
            return usualLPerH + (peakLPerH - usualLPerH) * Math.min(rise, ebb);
        }

        public boolean swells() {
            return peakLPerH > usualLPerH;
        }

        public Inflow times(double times) {
            return new Inflow(usualLPerH * times, peakLPerH * times, peakHour, ebbHours);
        }
    }

    public PitLoad {
        Require.text("name", name);
        Require.above(0, "runningW", runningW, "W");
        Require.above(inflow.usualLPerH(), "pumpedLPerH", pumpedLPerH, "L/h");
    }

    @Override
    public Need need() {
        return new Need.NoFlood();
    }

    @Override
    public List<DayWindow> onHours(double noonHour) {
        return List.of(DayWindow.ALL_DAY);
    }

    /** With the usual inflow. */
    @Override
    public double wantedWhPerDay() {
        return 24 * runningW * inflow.usualLPerH() / pumpedLPerH;
    }

    @Override
    public PitLoad drawing(double times) {
        return new PitLoad(name, supply, runningW * times, pit, inflow, pumpedLPerH, room, nature);
    }

    public PitLoad with(Inflow changed) {
        return new PitLoad(
                name,
                supply,
                runningW,
                pit,
                changed,
                Math.max(pumpedLPerH, Math.nextUp(changed.usualLPerH())),
                room,
                nature);
    }
}
