package tideover.engine.search;

import tideover.engine.rig.Rig;
import tideover.engine.wiring.Price;

/**
 * A rig that keeps every rule, wired, with its final price.
 *
 * @param number its place, from 1, among all rigs that can be put together ({@link Shelf})
 */
public record Priced(long number, Rig rig, Price price) {
    long cents() {
        return price.totalCents();
    }
}
