package tideover.engine.search;

import java.util.Comparator;
import tideover.engine.rig.Rig;
import tideover.engine.wiring.Price;

/** A rig with its price and the carried share that the screening found, 0..1. */
public record Rated(Rig rig, Price price, double share) {
    /** Cheapest first; ties by share, then mass, then id. */
    static final Comparator<Rated> BY_PRICE = Comparator.comparingLong(
                    (Rated r) -> r.price().totalCents())
            .thenComparing(Comparator.comparingDouble(Rated::share).reversed())
            .thenComparingDouble(r -> r.rig().massKg())
            .thenComparing(r -> r.rig().id());

    /** Best share first; ties by price. */
    static final Comparator<Rated> BY_SHARE =
            Comparator.comparingDouble(Rated::share).reversed().thenComparing(BY_PRICE);
}
