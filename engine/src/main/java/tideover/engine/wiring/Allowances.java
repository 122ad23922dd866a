package tideover.engine.wiring;

import tideover.engine.quantity.Require;

/**
 * The household's own guess of what is paid beside the main parts, in whole cents: wire, fuses, terminals and the like by
 * the way the rig is put together, and the joining of what hangs on the wires of the house. Where a file prices every small
 * part, the three ways of building are 0.
 *
 * @param hardWiredCents for each hard-wired load that the rig serves: listed inlet or transfer device, and the electrician
 */
public record Allowances(long readyBoxCents, long enclosureCents, long separatePartsCents, long hardWiredCents) {
    public Allowances {
        Require.atLeast(0, "readyBoxCents", readyBoxCents, "cents");
        Require.atLeast(0, "enclosureCents", enclosureCents, "cents");
        Require.atLeast(0, "separatePartsCents", separatePartsCents, "cents");
        Require.atLeast(0, "hardWiredCents", hardWiredCents, "cents");
    }

    /** Of a household whose loads are all on plugs. */
    public Allowances(long readyBoxCents, long enclosureCents, long separatePartsCents) {
        this(readyBoxCents, enclosureCents, separatePartsCents, 0);
    }

    /** The same, with what the joining of each hard-wired load costs. */
    public Allowances withHardWired(long cents) {
        return new Allowances(readyBoxCents, enclosureCents, separatePartsCents, cents);
    }
}
