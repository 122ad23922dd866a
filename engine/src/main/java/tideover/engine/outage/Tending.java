package tideover.engine.outage;

import java.util.List;
import tideover.engine.load.DayWindow;
import tideover.engine.quantity.Require;

/**
 * What somebody does about an engine that belongs to a rig.
 *
 * @param engineHours hours of every day in which one may run: somebody is at home, starts it, stays within earshot and stops
 *                    it; not overlapping
 * @param storedL     most fuel that is kept in cans, beside what is in its tank
 */
public record Tending(List<DayWindow> engineHours, double storedL) {
    /** Morning and evening, and one common can. Common practice, no source. */
    public static final Tending USUAL = new Tending(List.of(new DayWindow(7, 9), new DayWindow(18, 21)), 20);

    private static final int DAY_HOURS = 24;

    public Tending {
        engineHours = List.copyOf(engineHours);
        Require.within(1, DAY_HOURS, "number of stretches", engineHours.size());
        Require.atLeast(0, "storedL", storedL, "L");
    }

    /** Hours of a stretch of the day in which one may run; {@code startHour} within one day. */
    public double hoursWithin(double startHour, double lengthHours) {
        double hours = 0;
        for (DayWindow window : engineHours) {
            hours += window.overlapHours(startHour, lengthHours);
        }
        return Math.min(hours, lengthHours);
    }

    /** Most of these hours that fall within an outage so long, whichever whole hour it begins in. */
    public double mostHours(int outageHours) {
        double ofDay = hoursWithin(0, DAY_HOURS);
        int rest = outageHours % DAY_HOURS;
        double most = 0;
        for (int start = 0; start < DAY_HOURS && rest > 0; start++) {
            most = Math.max(most, hoursWithin(start, rest));
        }
        return outageHours / DAY_HOURS * ofDay + most;
    }
}
