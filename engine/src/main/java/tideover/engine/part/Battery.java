package tideover.engine.part;

import tideover.engine.quantity.Require;

/**
 * A battery on its own.
 *
 * @param mostInParallel the maker's limit; 1 where none is stated
 * @param mostInSeries   likewise
 */
public record Battery(Listing listing, Store store, int mostInParallel, int mostInSeries) implements Part {
    public Battery {
        Require.within(1, 100, "mostInParallel", mostInParallel);
        Require.within(1, 100, "mostInSeries", mostInSeries);
    }

    public Battery(Listing listing, Store store, int mostInParallel) {
        this(listing, store, mostInParallel, 1);
    }

    @Override
    public String kind() {
        return "battery";
    }
}
