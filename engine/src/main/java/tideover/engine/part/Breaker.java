package tideover.engine.part;

import tideover.engine.quantity.Require;
import tideover.engine.why.Stated;

/**
 * A circuit breaker: parts a fault by itself, and a circuit by hand.
 *
 * @param mostDcV       direct volts that it can part; NaN where it is made for alternating current alone, or nothing is told
 * @param interruptingA fault current that it can part at those volts; NaN where not told
 * @param polarised     whether direct current may pass one way only; such a one burns where the fault comes from the other side
 */
public record Breaker(Listing listing, double ratedA, double mostDcV, double interruptingA, Stated polarised)
        implements SmallPart {
    public Breaker {
        Require.above(0, "ratedA", ratedA, "A");
        if (!Double.isNaN(mostDcV)) {
            Require.above(0, "mostDcV", mostDcV, "V");
        }
        if (!Double.isNaN(interruptingA)) {
            Require.above(0, "interruptingA", interruptingA, "A");
        }
    }

    @Override
    public String kind() {
        return "breaker";
    }
}
