package tideover.engine.search;

import java.util.BitSet;
import org.jspecify.annotations.Nullable;
import tideover.engine.part.ChargeController;
import tideover.engine.rig.Rig;
import tideover.engine.search.Shelf.Array;

/**
 * The rigs of one core and one controller, which differ in their panels alone. Offered cheapest panels first; what has not been
 * asked for is not made.
 */
final class Strand {
    final Cores.Core core;

    /** The separate one; null where it is built in or there is none. */
    final @Nullable ChargeController controller;

    /** Without panels. */
    final Rig bare;

    /** Whether it is a rig without panels. */
    final boolean alone;

    /** Arrays, by their place, that keep the rules of panels on this controller. */
    final BitSet suits;

    /** Number of its first rig. */
    final long firstNumber;

    /** The least that it costs without panels. */
    long cents;

    /** Whether the rules that panels make no difference to have been asked. */
    boolean judged;

    /** Whether it broke one of them. */
    boolean fell;

    /** Position among the arrays by price; -1 for none at all. */
    int at;

    /** How many of its rigs bounds ruled out since the beginning: by demand, by array, by sort. */
    long ruledOutByDemand;

    long ruledOutByArray;
    long ruledOutBySort;

    /** What the search knows of it. */
    int profile;

    int capacity;

    Strand(
            Cores.Core core,
            @Nullable ChargeController controller,
            Rig bare,
            boolean alone,
            BitSet suits,
            long firstNumber,
            long cents) {
        this.core = core;
        this.controller = controller;
        this.bare = bare;
        this.alone = alone;
        this.suits = suits;
        this.firstNumber = firstNumber;
        this.cents = cents;
        this.at = alone ? -1 : 0;
    }

    /** Number of the rig with an array, or without one. */
    long number(@Nullable Array array) {
        return array == null ? firstNumber : firstNumber + (alone ? 1 : 0) + array.place();
    }

    /** How many rigs keep the rules of panels. */
    long rigs() {
        return suits.cardinality() + (alone ? 1 : 0);
    }
}
