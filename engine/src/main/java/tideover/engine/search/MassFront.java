package tideover.engine.search;

import java.util.ArrayList;
import java.util.List;

/**
 * Mass against share: rigs than which none is both lighter and better. They come lightest first; equal masses, to the gram, in any
 * order.
 */
final class MassFront {
    private static final double GRAMS = 1000;

    private final List<Rated> rigs = new ArrayList<>();

    /** The best share so far; 0 before the first, since what carries nothing is nobody's answer. */
    double best() {
        return rigs.isEmpty() ? 0 : rigs.get(rigs.size() - 1).share();
    }

    /** Takes a rig that is no lighter than those before. */
    void add(Rated rated) {
        if (rated.share() <= best()) {
            return;
        }
        if (!rigs.isEmpty()
                && grams(rigs.get(rigs.size() - 1).rig().massKg())
                        == grams(rated.rig().massKg())) {
            rigs.remove(rigs.size() - 1);
        }
        rigs.add(rated);
    }

    List<Rated> rigs() {
        return List.copyOf(rigs);
    }

    /** Whole grams: sums of the same masses in another order must not differ. */
    static long grams(double kg) {
        return Math.round(GRAMS * kg);
    }
}
