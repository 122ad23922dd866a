package tideover.engine.part;

import java.util.List;

/** An inverter on its own, with its AC outlets. */
public record Inverter(Listing listing, InverterRating rating, List<Outlet> outlets) implements Part {
    public Inverter {
        outlets = List.copyOf(outlets);
    }

    @Override
    public String kind() {
        return "inverter";
    }
}
