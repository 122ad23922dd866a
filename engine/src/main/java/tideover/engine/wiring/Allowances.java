package tideover.engine.wiring;

import tideover.engine.quantity.Require;

/**
 * The household's own guess of what wire, fuses, terminals and the like cost beside the main parts, in whole cents, by
 * the way the rig is put together.
 */
public record Allowances(long readyBoxCents, long enclosureCents, long separatePartsCents) {
    public Allowances {
        Require.atLeast(0, "readyBoxCents", readyBoxCents, "cents");
        Require.atLeast(0, "enclosureCents", enclosureCents, "cents");
        Require.atLeast(0, "separatePartsCents", separatePartsCents, "cents");
    }
}
