package tideover.engine.part;

import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * A box with its electronics but no battery: one is dropped in.
 *
 * @param housing what batteries fit in it, and what air comes to them
 */
public record Enclosure(
        Listing listing,
        double batteryV,
        @Nullable ControllerRating controller,
        @Nullable InverterRating inverter,
        List<Outlet> outlets,
        Housing housing)
        implements Part {
    public Enclosure {
        outlets = List.copyOf(outlets);
    }

    /** Of which nobody tells what fits in it. */
    public Enclosure(
            Listing listing,
            double batteryV,
            @Nullable ControllerRating controller,
            @Nullable InverterRating inverter,
            List<Outlet> outlets) {
        this(listing, batteryV, controller, inverter, outlets, Housing.UNKNOWN);
    }

    @Override
    public String kind() {
        return "enclosure";
    }
}
