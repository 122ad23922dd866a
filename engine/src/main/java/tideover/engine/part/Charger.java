package tideover.engine.part;

import java.util.Set;
import org.jspecify.annotations.Nullable;
import tideover.engine.battery.Chemistry;
import tideover.engine.load.Supply;
import tideover.engine.quantity.Require;

/**
 * A charger of its own, fed by the mains, an engine or a vehicle's socket.
 *
 * @param maxOutputA into the store
 * @param leastBusV  lowest nominal store volts it serves
 * @param mostBusV   highest
 * @param efficiency out per in, 0..1
 * @param charges    chemistries it has a charging programme for; empty where the maker tells none
 * @param fedBy      what it is plugged into; null where not told, and then the mains
 */
public record Charger(
        Listing listing,
        double maxOutputA,
        double leastBusV,
        double mostBusV,
        double efficiency,
        Set<Chemistry> charges,
        @Nullable Supply fedBy)
        implements Part {
    /** Fed by the mains. */
    public Charger(
            Listing listing,
            double maxOutputA,
            double leastBusV,
            double mostBusV,
            double efficiency,
            Set<Chemistry> charges) {
        this(listing, maxOutputA, leastBusV, mostBusV, efficiency, charges, null);
    }

    public Charger {
        Require.above(0, "maxOutputA", maxOutputA, "A");
        Require.above(0, "leastBusV", leastBusV, "V");
        Require.atLeast(leastBusV, "mostBusV", mostBusV, "V");
        Require.within(0.1, 1, "efficiency", efficiency, "");
        charges = Set.copyOf(charges);
    }

    /** Whether it is for direct current, such as a vehicle's socket. */
    public boolean isDirect() {
        return fedBy != null && !fedBy.isAc();
    }

    @Override
    public String kind() {
        return "charger";
    }
}
