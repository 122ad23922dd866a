package tideover.engine.load;

import java.util.List;
import java.util.stream.Collectors;
import tideover.engine.quantity.Require;
import tideover.engine.site.RoomKind;

/** On between stated hours of every day, and owed its power all through them. The windows do not overlap. */
public record TimedLoad(
        String name,
        Supply supply,
        double runningW,
        boolean essential,
        List<DayWindow> windows,
        RoomKind room,
        Nature nature)
        implements Load {
    /** Windows that touch, such as 12:10 to 12:50 and 12:50 to 13:00, may seem to overlap by a rounding error. */
    public static final double TOUCHING_H = 1e-9;

    public TimedLoad {
        Require.text("name", name);
        Require.above(0, "runningW", runningW, "W");
        windows = List.copyOf(windows);
        Require.within(1, 24, "number of windows", windows.size());
        double hours = 0;
        for (DayWindow window : windows) {
            hours += window.lengthHours();
            for (DayWindow other : windows) {
                if (other != window && window.overlapHours(other.fromHour(), other.lengthHours()) > TOUCHING_H) {
                    throw new IllegalArgumentException("windows of " + name + " overlap");
                }
            }
        }
        Require.within(0, 24 + TOUCHING_H, "hours on", hours, "h");
    }

    /** One without a motor or other peculiarity. */
    public TimedLoad(
            String name, Supply supply, double runningW, boolean essential, List<DayWindow> windows, RoomKind room) {
        this(name, supply, runningW, essential, windows, room, Nature.PLAIN);
    }

    @Override
    public Need need() {
        return new Need.AlwaysOn();
    }

    @Override
    public TimedLoad drawing(double times) {
        return new TimedLoad(name, supply, runningW * times, essential, windows, room, nature);
    }

    @Override
    public List<DayWindow> onHours(double noonHour) {
        return windows;
    }

    @Override
    public String owed() {
        return windows.stream()
                .map(window -> Need.clock(window.fromHour()) + " to " + Need.clock(window.toHour()))
                .collect(Collectors.joining(", "));
    }
}
