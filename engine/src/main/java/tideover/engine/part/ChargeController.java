package tideover.engine.part;

import java.util.List;

/** A charge controller on its own, with the load outlets it may carry. */
public record ChargeController(Listing listing, ControllerRating rating, List<Outlet> outlets) implements Part {
    public ChargeController {
        outlets = List.copyOf(outlets);
    }

    @Override
    public String kind() {
        return "controller";
    }
}
