package tideover.engine.part;

import tideover.engine.electronics.ConductorSize;
import tideover.engine.quantity.Require;

/**
 * A pair of cables for panels, plus and minus, each with a panel's plug at one end; the other end is cut to what it feeds.
 *
 * @param connector      make of the plugs
 * @param insulationDegC highest conductor temperature
 * @param lengthM        of each of the two
 */
public record PanelLead(
        Listing listing, String connector, ConductorSize size, double insulationDegC, double lengthM, double ratedA)
        implements SmallPart {
    public PanelLead {
        Require.text("connector", connector);
        Require.within(40, 250, "insulationDegC", insulationDegC, "degC");
        Require.above(0, "lengthM", lengthM, "m");
        Require.above(0, "ratedA", ratedA, "A");
    }

    @Override
    public String kind() {
        return "panel lead";
    }
}
