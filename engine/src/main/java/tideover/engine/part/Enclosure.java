package tideover.engine.part;

import java.util.List;
import org.jspecify.annotations.Nullable;

/** A box with its electronics but no battery: one is dropped in. */
public record Enclosure(
        Listing listing,
        double batteryV,
        @Nullable ControllerRating controller,
        @Nullable InverterRating inverter,
        List<Outlet> outlets)
        implements Part {
    public Enclosure {
        outlets = List.copyOf(outlets);
    }

    @Override
    public String kind() {
        return "enclosure";
    }
}
