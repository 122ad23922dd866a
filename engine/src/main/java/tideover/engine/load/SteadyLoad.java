package tideover.engine.load;

import java.util.List;
import tideover.engine.quantity.Require;
import tideover.engine.site.RoomKind;

/** Draws the same whenever it is on. Its need says whether that is always or some hours of a window. */
public record SteadyLoad(
        String name, Supply supply, double runningW, boolean essential, Need need, RoomKind room, Nature nature)
        implements Load {
    public SteadyLoad {
        Require.text("name", name);
        Require.above(0, "runningW", runningW, "W");
    }

    /** One without a motor or other peculiarity. */
    public SteadyLoad(String name, Supply supply, double runningW, boolean essential, Need need, RoomKind room) {
        this(name, supply, runningW, essential, need, room, Nature.PLAIN);
    }

    @Override
    public SteadyLoad drawing(double times) {
        return new SteadyLoad(name, supply, runningW * times, essential, need, room, nature);
    }

    @Override
    public List<DayWindow> onHours(double noonHour) {
        return List.of(need instanceof Need.HoursInWindow some ? some.nearest(noonHour) : DayWindow.ALL_DAY);
    }
}
