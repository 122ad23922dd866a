package tideover.engine.part;

import java.util.Set;
import tideover.engine.battery.Chemistry;
import tideover.engine.quantity.Require;

/**
 * A charger of its own, fed by the mains, an engine or a vehicle's socket.
 *
 * @param maxOutputA into the store
 * @param leastBusV  lowest nominal store volts it serves
 * @param mostBusV   highest
 * @param efficiency out per in, 0..1
 * @param charges    chemistries it has a charging programme for; empty where the maker tells none
 */
public record Charger(
        Listing listing,
        double maxOutputA,
        double leastBusV,
        double mostBusV,
        double efficiency,
        Set<Chemistry> charges)
        implements Part {
    public Charger {
        Require.above(0, "maxOutputA", maxOutputA, "A");
        Require.above(0, "leastBusV", leastBusV, "V");
        Require.atLeast(leastBusV, "mostBusV", mostBusV, "V");
        Require.within(0.1, 1, "efficiency", efficiency, "");
        charges = Set.copyOf(charges);
    }

    @Override
    public String kind() {
        return "charger";
    }
}
