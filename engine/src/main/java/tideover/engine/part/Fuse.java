package tideover.engine.part;

import tideover.engine.quantity.Require;

/**
 * A fuse link; it sits in a holder of the same format.
 *
 * @param format        such as "blade" or "class T"
 * @param mostDcV       direct volts that it can part; NaN where none are told
 * @param interruptingA fault current that it can part at those volts; NaN where not told
 * @param pieces        that its price buys
 */
public record Fuse(Listing listing, String format, double ratedA, double mostDcV, double interruptingA, int pieces)
        implements SmallPart {
    public Fuse {
        Require.text("format", format);
        Require.above(0, "ratedA", ratedA, "A");
        if (!Double.isNaN(mostDcV)) {
            Require.above(0, "mostDcV", mostDcV, "V");
        }
        if (!Double.isNaN(interruptingA)) {
            Require.above(0, "interruptingA", interruptingA, "A");
        }
        Require.within(1, 1000, "pieces", pieces);
    }

    @Override
    public String kind() {
        return "fuse";
    }

    @Override
    public double perPrice() {
        return pieces;
    }
}
