package tideover.engine.battery;

import tideover.engine.quantity.Require;

/**
 * How long a lead battery lasts at a steady current, by Peukert's rule (1897) in the form of the rated hours:
 * {@code t = H (C/(I H))^k}, H rated hours, C the H-hour capacity in Ah, I in A, k without a unit.
 *
 * <p>Some pages print C/I^k with the C of the label: that holds for a 1 A rating only. The rule knows no rests and no
 * changing current, so it serves for one thing only: to guess a second rating where a data sheet gives one, from which
 * {@link TwoWells} are found. Valid between about a third and three times the rated hours; not for lithium.
 */
public final class Peukert {
    /** Exponents of new batteries. Common practice, from memory; 1.05 to 1.5 are met with, and age raises them. */
    static final double FLOODED = 1.25;

    static final double GEL = 1.15;
    static final double AGM = 1.10;

    private Peukert() {}

    /** The usual exponent; 1, capacity the same at every rate, for lithium. */
    public static double exponent(Chemistry chemistry) {
        return switch (chemistry) {
            case FLOODED_LEAD -> FLOODED;
            case GEL_LEAD -> GEL;
            case AGM_LEAD -> AGM;
            case IRON_PHOSPHATE, OTHER_LITHIUM -> 1;
        };
    }

    /** Hours to empty at a steady current. */
    public static double hours(CapacityRating rated, double exponent, double amps) {
        Require.above(0, "amps", amps, "A");
        Require.within(1, 2, "exponent", exponent, "");
        return rated.hours() * StrictMath.pow(rated.amps() / amps, exponent);
    }

    /** The capacity over other hours: {@code C (t/H)^(1 - 1/k)}. */
    public static CapacityRating over(double hours, CapacityRating rated, double exponent) {
        Require.within(1, 2, "exponent", exponent, "");
        return new CapacityRating(hours, rated.ah() * StrictMath.pow(hours / rated.hours(), 1 - 1 / exponent));
    }

    /** The exponent that two discharges at steady currents show. */
    public static double exponentOf(CapacityRating slow, CapacityRating fast) {
        return StrictMath.log(slow.hours() / fast.hours()) / StrictMath.log(fast.amps() / slow.amps());
    }
}
