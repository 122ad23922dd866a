package tideover.engine.part;

import tideover.engine.electronics.ConductorSize;
import tideover.engine.quantity.Require;

/**
 * A ring that is pressed onto the end of a cable and bolted down.
 *
 * @param size   of the cable
 * @param pieces that its price buys
 */
public record Lug(Listing listing, ConductorSize size, int pieces) implements SmallPart {
    public Lug {
        Require.within(1, 1000, "pieces", pieces);
    }

    @Override
    public String kind() {
        return "lug";
    }

    @Override
    public double perPrice() {
        return pieces;
    }
}
