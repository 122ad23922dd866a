package tideover.engine.outage;

import tideover.engine.quantity.Require;

/**
 * An outage in pieces: so many hours without the grid, so many with it, over and over. While the grid is there it feeds
 * the loads itself, and the mains charger the store.
 */
public record Rolling(int offHours, int onHours) {
    public Rolling {
        Require.within(1, 24 * 60, "offHours", offHours);
        Require.within(1, 24 * 60, "onHours", onHours);
    }

    /** Whether the grid is there, so long after the outage began. */
    public boolean gridOn(double hour) {
        return hour % (offHours + onHours) >= offHours;
    }
}
