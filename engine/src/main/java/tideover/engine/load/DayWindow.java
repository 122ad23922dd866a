package tideover.engine.load;

import tideover.engine.quantity.Require;

/**
 * A stretch of every day, local standard time; one that ends at or before its start runs past midnight.
 *
 * @param fromHour from 0 to below 24, fractions allowed
 * @param toHour   above 0 to 24
 */
public record DayWindow(double fromHour, double toHour) {
    public static final DayWindow ALL_DAY = new DayWindow(0, 24);

    public DayWindow {
        Require.within(0, Math.nextDown(24.0), "fromHour", fromHour, "h");
        Require.within(0, 24, "toHour", toHour, "h");
        Require.above(0, "toHour", toHour, "h");
    }

    /** Such as "07:00-09:00". */
    public String words() {
        return Need.clock(fromHour) + "-" + Need.clock(toHour);
    }

    public double lengthHours() {
        return toHour > fromHour ? toHour - fromHour : 24 - (fromHour - toHour);
    }

    /** Hours of {@code [startHour, startHour + lengthHours)} that lie inside; {@code startHour} within one day. */
    public double overlapHours(double startHour, double lengthHours) {
        double inside = 0;
        double end = startHour + lengthHours;
        for (int shift = -24; shift <= 24; shift += 24) {
            double from = fromHour + shift;
            inside += Math.max(0, Math.min(end, from + lengthHours()) - Math.max(startHour, from));
        }
        return inside;
    }
}
