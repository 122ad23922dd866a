package tideover.engine.part;

import tideover.engine.quantity.Require;

/**
 * A solar charge controller. Its output current is the limit on everything it gives, to the store and to the loads
 * together, so that it carries twice the watts on a bus of twice the volts.
 *
 * @param maxOutputA current out, whatever the bus voltage
 * @param maxInputV  panel voltage above which it is damaged
 * @param leastBusV  lowest nominal bus voltage it serves
 * @param mostBusV   highest nominal bus voltage it serves
 * @param efficiency out per in, 0..1
 */
public record ControllerRating(
        double maxOutputA, double maxInputV, double leastBusV, double mostBusV, double efficiency) {
    public ControllerRating {
        Require.above(0, "maxOutputA", maxOutputA, "A");
        Require.above(0, "maxInputV", maxInputV, "V");
        Require.above(0, "leastBusV", leastBusV, "V");
        Require.atLeast(leastBusV, "mostBusV", mostBusV, "V");
        Require.within(0.1, 1, "efficiency", efficiency, "");
    }

    public double maxOutputW(double busV) {
        return maxOutputA * busV;
    }
}
