package tideover.engine.part;

import tideover.engine.quantity.Require;

/**
 * A battery on its own.
 *
 * @param mostInParallel the maker's limit; 1 where none is stated
 * @param mostInSeries   likewise
 * @param casing         its size and terminals
 */
public record Battery(Listing listing, Store store, int mostInParallel, int mostInSeries, BatteryCase casing)
        implements Part {
    public Battery {
        Require.within(1, 100, "mostInParallel", mostInParallel);
        Require.within(1, 100, "mostInSeries", mostInSeries);
    }

    /** Of which nobody tells how it is built. */
    public Battery(Listing listing, Store store, int mostInParallel, int mostInSeries) {
        this(listing, store, mostInParallel, mostInSeries, BatteryCase.UNKNOWN);
    }

    public Battery(Listing listing, Store store, int mostInParallel) {
        this(listing, store, mostInParallel, 1);
    }

    @Override
    public String kind() {
        return "battery";
    }
}
