package tideover.engine.sun;

import java.util.List;
import tideover.engine.quantity.Require;

/**
 * What unlike panels wired together give at least, from their best points alone.
 *
 * <p>They hold for any panels whose current falls as the volts rise, each with its best point in its own light and at its own
 * temperature at that moment. No bypass diodes are counted on (with them a string can do better), nor losses in blocking diodes and
 * wires. They are bounds on the best power of the array: a controller that settles on a lesser peak, or a plain one, gets less.
 */
public final class ArrayMismatch {
    private ArrayMismatch() {}

    /**
     * In series: {@code (smallest Imp) * (sum of Vmp)}. One current goes through all; at the smallest best current each panel has its
     * own best volts or more, since volts rise as current falls.
     */
    public static double seriesLeastW(List<OperatingPoint> bestPoints) {
        Require.within(1, Integer.MAX_VALUE, "panels", bestPoints.size());
        double volts = 0;
        double amps = Double.POSITIVE_INFINITY;
        for (OperatingPoint best : bestPoints) {
            volts += best.volts();
            amps = Math.min(amps, best.amps());
        }
        return volts * amps;
    }

    /**
     * In parallel: {@code (smallest Vmp) * (sum of Imp)}. One voltage is on all; at the smallest best volts each panel gives its own best
     * current or more, since current rises as volts fall.
     */
    public static double parallelLeastW(List<OperatingPoint> bestPoints) {
        Require.within(1, Integer.MAX_VALUE, "panels", bestPoints.size());
        double volts = Double.POSITIVE_INFINITY;
        double amps = 0;
        for (OperatingPoint best : bestPoints) {
            volts = Math.min(volts, best.volts());
            amps += best.amps();
        }
        return volts * amps;
    }

    /** What each would give with a controller of its own: no wiring gives more. */
    public static double apartW(List<OperatingPoint> bestPoints) {
        double watts = 0;
        for (OperatingPoint best : bestPoints) {
            watts += best.watts();
        }
        return watts;
    }
}
