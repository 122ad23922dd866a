package tideover.engine.search;

import tideover.engine.rig.Rig;
import tideover.engine.wiring.Price;

/**
 * A rig with its price and the carried share that the screening or the walk found.
 *
 * @param number its place, from 1, among all rigs that can be put together ({@link Shelf})
 * @param share  0..1
 */
public record Rated(long number, Rig rig, Price price, double share) {
    static Rated of(Priced priced, double share) {
        return new Rated(priced.number(), priced.rig(), priced.price(), share);
    }

    long cents() {
        return price.totalCents();
    }
}
