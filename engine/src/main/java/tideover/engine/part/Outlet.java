package tideover.engine.part;

import tideover.engine.load.Supply;
import tideover.engine.quantity.Require;

/**
 * One kind of outlet on a part.
 *
 * @param count      how many of it
 * @param maxW       what all of them together give for hours
 * @param efficiency out per taken from the bus, 0..1: a USB socket's converter; 1 where the bus itself comes out, and for
 *                   AC, where the inverter's own figure counts
 */
public record Outlet(Supply supply, int count, double maxW, double efficiency) {
    public Outlet {
        Require.within(1, 100, "count", count);
        Require.above(0, "maxW", maxW, "W");
        Require.within(0.1, 1, "efficiency", efficiency, "");
    }
}
