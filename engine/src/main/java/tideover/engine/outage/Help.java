package tideover.engine.outage;

import java.util.List;
import tideover.engine.load.DayWindow;
import tideover.engine.quantity.Require;

/** What comes to a rig's help while the grid is out. */
public sealed interface Help permits Help.Engine, Help.Handover {
    /**
     * A fuel engine, outdoors, run in chosen hours of the day into the rig's charger. It feeds no load itself.
     *
     * @param windows hours of the day, not overlapping
     * @param watts   AC watts that it gives for hours
     */
    record Engine(List<DayWindow> windows, double watts) implements Help {
        public Engine {
            windows = List.copyOf(windows);
            Require.within(1, 24, "number of windows", windows.size());
            Require.above(0, "watts", watts, "W");
        }
    }

    /**
     * A charged battery that is brought and feeds the bus until it is empty, whether its power is used or not.
     *
     * @param afterHours since the outage began
     * @param wh         that it gives at the bus
     * @param mostW      most power
     */
    record Handover(int afterHours, double wh, double mostW) implements Help {
        public Handover {
            Require.within(0, 24 * 60, "afterHours", afterHours);
            Require.above(0, "wh", wh, "Wh");
            Require.above(0, "mostW", mostW, "W");
        }
    }
}
