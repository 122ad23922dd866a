package tideover.engine.part;

import tideover.engine.electronics.ConductorSize;
import tideover.engine.quantity.Require;

/**
 * Single stranded cable, sold by length.
 *
 * @param insulationDegC highest conductor temperature that its insulation is rated for
 * @param metres         that its price buys
 */
public record Cable(Listing listing, ConductorSize size, Metal metal, double insulationDegC, double metres)
        implements SmallPart {
    /** What its strands are of. */
    public enum Metal {
        COPPER("copper"),
        COPPER_CLAD_ALUMINIUM("copper-clad aluminium"),
        UNKNOWN("unknown");

        private final String words;

        Metal(String words) {
            this.words = words;
        }

        public String words() {
            return words;
        }
    }

    public Cable {
        Require.within(40, 250, "insulationDegC", insulationDegC, "degC");
        Require.above(0, "metres", metres, "m");
    }

    @Override
    public String kind() {
        return "cable";
    }

    @Override
    public double perPrice() {
        return metres;
    }
}
