package tideover.engine.part;

import tideover.engine.quantity.Require;

/**
 * Holds one fuse.
 *
 * @param format of the fuses that it takes
 * @param mostA  current that it carries for hours
 * @param pieces that its price buys
 */
public record FuseHolder(Listing listing, String format, double mostA, int pieces) implements SmallPart {
    public FuseHolder {
        Require.text("format", format);
        Require.above(0, "mostA", mostA, "A");
        Require.within(1, 1000, "pieces", pieces);
    }

    @Override
    public String kind() {
        return "fuse holder";
    }

    @Override
    public double perPrice() {
        return pieces;
    }
}
