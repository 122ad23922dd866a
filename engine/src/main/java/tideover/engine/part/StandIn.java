package tideover.engine.part;

import tideover.engine.load.Load;
import tideover.engine.quantity.Require;

/**
 * Keeps one load's need without power: a lantern for lamps, filled water jugs for a well pump, a radio on cells. What keeps a
 * temperature or a level has no stand-in.
 *
 * @param forLoad    name of the load in the plan
 * @param lastsHours of an outage, counted from its beginning, through which one of it keeps the need
 */
public record StandIn(Listing listing, String forLoad, double lastsHours) implements Aid {
    public StandIn {
        Require.text("forLoad", forLoad);
        Require.above(0, "lastsHours", lastsHours, "h");
    }

    @Override
    public boolean suits(Load load) {
        return isNamed(load) && !load.keeps();
    }

    @Override
    public String kind() {
        return "stand-in";
    }
}
