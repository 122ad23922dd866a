package tideover.engine.wiring;

import tideover.engine.quantity.Require;

/**
 * What flows when the two poles of a battery touch, and how much copper bears it until the fuse has cleared. A fuse must be
 * able to interrupt, at the system's direct volts, at least what flows at its own terminals.
 *
 * <p>Resistance only: inductance makes the current rise over some milliseconds and the arc last longer, which is the
 * fuse's business; the battery's volts are held, though they sag. What electronics cut off is not counted: they may fail.
 */
public final class ShortCircuit {
    /** Copper in PVC, 70 to 160 degC, A s^.5 / mm2; IEC 60364-4-43, from memory. Check the edition in force. */
    public static final double K_PVC = 115;

    /** Copper in XLPE, 90 to 250 degC, A s^.5 / mm2; IEC 60364-4-43, from memory. Check the edition in force. */
    public static final double K_XLPE = 143;

    private ShortCircuit() {}

    /**
     * {@code U / sum of R}.
     *
     * @param openV of the source at rest; take the highest it can have
     * @param ohms  all that lies in the loop, at its lowest: battery, links, both conductors cold
     */
    public static double boltedA(double openV, double... ohms) {
        Require.above(0, "openV", openV, "V");
        double loopOhm = 0;
        for (double ohm : ohms) {
            loopOhm += Require.atLeast(0, "ohms", ohm, "ohm");
        }
        return openV / Require.above(0, "loop", loopOhm, "ohm");
    }

    /**
     * From the volts under two loads, {@code (U1 I2 - U2 I1) / (U1 - U2)}, after the two-point test of IEC 60896-21 (from
     * memory). The points must lie well apart: a meter's last digit is multiplied by how far the answer lies beyond them.
     */
    public static double fromTwoPoints(double u1V, double i1A, double u2V, double i2A) {
        Require.above(0, "fall of volts per rise of amps", (u1V - u2V) / (i2A - i1A), "ohm");
        return (u1V * i2A - u2V * i1A) / (u1V - u2V);
    }

    /**
     * Copper that takes all the heat of the fault in itself, {@code S = I sqrt(t) / k}, mm2. For .1 to 5 s (from memory);
     * longer, heat escapes and the answer is too thick; shorter, with a fuse that limits the current, its let-through I2t
     * counts instead.
     *
     * @param k {@link #K_PVC} or {@link #K_XLPE}
     */
    public static double adiabaticMm2(double amps, double seconds, double k) {
        Require.atLeast(0, "amps", amps, "A");
        Require.atLeast(0, "seconds", seconds, "s");
        Require.above(0, "k", k, "A s^.5/mm2");
        return amps * Math.sqrt(seconds) / k;
    }
}
