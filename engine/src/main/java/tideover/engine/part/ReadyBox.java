package tideover.engine.part;

import java.util.List;
import org.jspecify.annotations.Nullable;
import tideover.engine.quantity.Require;
import tideover.engine.why.Stated;

/**
 * A ready-made box: store, electronics and outlets in one.
 *
 * @param mainsChargeW watts into its store from the mains by its own charger; 0 where it has none
 * @param keepsRainOut whether it may stand in the rain
 */
public record ReadyBox(
        Listing listing,
        Store store,
        @Nullable ControllerRating controller,
        @Nullable InverterRating inverter,
        List<Outlet> outlets,
        double mainsChargeW,
        Stated keepsRainOut)
        implements Part {
    public ReadyBox {
        outlets = List.copyOf(outlets);
        Require.atLeast(0, "mainsChargeW", mainsChargeW, "W");
    }

    public ReadyBox(
            Listing listing,
            Store store,
            @Nullable ControllerRating controller,
            @Nullable InverterRating inverter,
            List<Outlet> outlets) {
        this(listing, store, controller, inverter, outlets, 0, Stated.UNKNOWN);
    }

    @Override
    public String kind() {
        return "box";
    }
}
