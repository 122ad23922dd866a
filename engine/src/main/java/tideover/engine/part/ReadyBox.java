package tideover.engine.part;

import java.util.List;
import org.jspecify.annotations.Nullable;

/** A ready-made box known by its label: store, electronics and outlets in one. */
public record ReadyBox(
        Listing listing,
        PlainStore store,
        @Nullable ControllerRating controller,
        @Nullable InverterRating inverter,
        List<Outlet> outlets)
        implements Part {
    public ReadyBox {
        outlets = List.copyOf(outlets);
    }

    @Override
    public String kind() {
        return "box";
    }
}
