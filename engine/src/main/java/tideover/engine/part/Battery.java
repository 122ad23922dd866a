package tideover.engine.part;

import tideover.engine.quantity.Require;

/** A battery on its own. {@code mostInParallel} is the maker's limit; 1 where none is stated. */
public record Battery(Listing listing, PlainStore store, int mostInParallel) implements Part {
    public Battery {
        Require.within(1, 100, "mostInParallel", mostInParallel);
    }

    @Override
    public String kind() {
        return "battery";
    }
}
