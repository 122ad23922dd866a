package tideover.engine.load;

import java.util.List;
import tideover.engine.quantity.Require;
import tideover.engine.site.RoomKind;

/** Draws the same whenever it is on. Its need says whether that is always or some hours of a window. */
public record SteadyLoad(String name, Supply supply, double runningW, boolean essential, Need need, RoomKind room)
        implements Load {
    public SteadyLoad {
        Require.text("name", name);
        Require.above(0, "runningW", runningW, "W");
    }

    @Override
    public List<DayWindow> onHours(double noonHour) {
        return List.of(need instanceof Need.HoursInWindow some ? some.nearest(noonHour) : DayWindow.ALL_DAY);
    }
}
