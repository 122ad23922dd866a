package tideover.engine.part;

import tideover.engine.quantity.Require;

/** Parts a circuit by hand; it protects nothing. */
public record BatterySwitch(Listing listing, double ratedA, double mostDcV) implements SmallPart {
    public BatterySwitch {
        Require.above(0, "ratedA", ratedA, "A");
        Require.above(0, "mostDcV", mostDcV, "V");
    }

    @Override
    public String kind() {
        return "switch";
    }
}
