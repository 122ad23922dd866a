package tideover.engine.battery;

import tideover.engine.quantity.Require;

/**
 * Inner resistance of a battery from two steady loads, {@code R = (U1 - U2)/(I2 - I1)}, and what it gives into a dead short,
 * {@code (U1 I2 - U2 I1)/(U1 - U2)} (the two-point test of IEC 60896-21; formula from memory). The volts are read at the
 * battery's own posts, some seconds after the load came on (the standard: 20 s and 5 s).
 *
 * <p>Valid for loads well apart: {@link #of} refuses equal ones. Neglected: the charge drawn between the two readings, and
 * that electronics in a lithium battery cut a short off after a moment.
 *
 * @param ohm    at the posts
 * @param shortA into a short without any resistance of its own
 */
public record InnerResistance(double ohm, double shortA) {
    /** A, V of the smaller load; A, V of the larger. */
    public static InnerResistance of(double smallerA, double smallerV, double largerA, double largerV) {
        Require.above(smallerA, "larger current", largerA, "A");
        Require.above(largerV, "volts under the smaller current", smallerV, "V");
        double sag = smallerV - largerV;
        return new InnerResistance(sag / (largerA - smallerA), (smallerV * largerA - largerV * smallerA) / sag);
    }
}
