package tideover.engine.part;

import tideover.engine.electronics.ConductorSize;
import tideover.engine.quantity.Require;

/**
 * A pair of cables for panels, plus and minus, each with a panel's plug at one end.
 *
 * @param connector      make of the plugs at the panel's end; {@link #ANY_MAKE} where none matters
 * @param farEnd         make of those at the other end, or {@link ControllerRating.PanelInput#BARE_ENDS}
 * @param insulationDegC highest conductor temperature
 * @param lengthM        of each of the two
 */
public record PanelLead(
        Listing listing,
        String connector,
        String farEnd,
        ConductorSize size,
        double insulationDegC,
        double lengthM,
        double ratedA)
        implements SmallPart {
    /** Of what stands for a lead of any make. */
    public static final String ANY_MAKE = "any make";

    public PanelLead {
        Require.text("connector", connector);
        Require.text("farEnd", farEnd);
        Require.within(40, 250, "insulationDegC", insulationDegC, "degC");
        Require.above(0, "lengthM", lengthM, "m");
        Require.above(0, "ratedA", ratedA, "A");
    }

    @Override
    public String kind() {
        return "panel lead";
    }
}
