package tideover.engine.part;

import java.util.EnumSet;
import java.util.Set;
import tideover.engine.battery.Chemistry;
import tideover.engine.electronics.Tracking;
import tideover.engine.quantity.Require;
import tideover.engine.why.Stated;

/**
 * A solar charge controller. Its output current is the limit on everything it gives, to the store and to the loads
 * together, so that it carries twice the watts on a bus of twice the volts.
 *
 * @param maxOutputA current out, whatever the bus voltage
 * @param maxInputV  panel voltage above which it is damaged
 * @param leastBusV  lowest nominal bus voltage it serves
 * @param mostBusV   highest nominal bus voltage it serves
 * @param efficiency out per in, 0..1; where it holds the panels at the store's volts, of what they give there
 * @param input      what more is known of its panel side
 * @param charges    chemistries it has a charging programme for; empty where the maker tells none
 */
public record ControllerRating(
        double maxOutputA,
        double maxInputV,
        double leastBusV,
        double mostBusV,
        double efficiency,
        Tracking tracking,
        PanelInput input,
        Set<Chemistry> charges) {
    public ControllerRating {
        Require.above(0, "maxOutputA", maxOutputA, "A");
        Require.above(0, "maxInputV", maxInputV, "V");
        Require.above(0, "leastBusV", leastBusV, "V");
        Require.atLeast(leastBusV, "mostBusV", mostBusV, "V");
        Require.within(0.1, 1, "efficiency", efficiency, "");
        charges = Set.copyOf(charges);
    }

    /** One known by its efficiency alone. */
    public ControllerRating(double maxOutputA, double maxInputV, double leastBusV, double mostBusV, double efficiency) {
        this(
                maxOutputA,
                maxInputV,
                leastBusV,
                mostBusV,
                efficiency,
                Tracking.UNKNOWN,
                PanelInput.UNKNOWN,
                EnumSet.noneOf(Chemistry.class));
    }

    /**
     * The panel side; NaN for what the maker does not tell.
     *
     * @param startV           volts above the battery's that it needs before it begins
     * @param maxA             short-circuit amps that the panels may have
     * @param startsWithoutBattery whether it runs while a tripped battery is gone; if not, such a battery never comes back by
     *                         the sun alone
     * @param plug             what its panel input takes: the make of a panel's plug, or {@link #BARE_ENDS}; empty where not told
     */
    public record PanelInput(double startV, double maxA, Stated startsWithoutBattery, String plug) {
        /** Of an input that clamps cables by screws. */
        public static final String BARE_ENDS = "screws";

        public static final PanelInput UNKNOWN = new PanelInput(Double.NaN, Double.NaN, Stated.UNKNOWN);

        public PanelInput {
            if (!Double.isNaN(startV)) {
                Require.atLeast(0, "startV", startV, "V");
            }
            if (!Double.isNaN(maxA)) {
                Require.above(0, "maxA", maxA, "A");
            }
        }

        /** Of one that does not tell what its input takes. */
        public PanelInput(double startV, double maxA, Stated startsWithoutBattery) {
            this(startV, maxA, startsWithoutBattery, "");
        }
    }

    public double maxOutputW(double busV) {
        return maxOutputA * busV;
    }
}
