package tideover.engine.part;

import tideover.engine.quantity.Require;

/**
 * A pair of forked plugs, plus and minus, that put two strings of panels side by side.
 *
 * @param connector make of the plugs
 * @param ratedA    of the joined side
 */
public record PanelBranch(Listing listing, String connector, double ratedA) implements SmallPart {
    public PanelBranch {
        Require.text("connector", connector);
        Require.above(0, "ratedA", ratedA, "A");
    }

    @Override
    public String kind() {
        return "panel branch";
    }
}
