package tideover.engine.load;

import tideover.engine.quantity.Require;

/**
 * What a motor takes in the first moment.
 *
 * @param typedVa    volt-amperes as stated
 * @param powerFactor of the starting current, 0..1: real watts per volt-ampere
 * @param seconds    until it has run up
 * @param lowerBound whether the figure is only known to be too small: a label's "starting watts", or the peak of a plug
 *                   meter, which looks about once a second and misses what is over in a fifth of one
 * @param alone      by what means it never starts together with another motor, such as a timer; empty where nothing sees to
 *                   that
 */
public record Start(double typedVa, double powerFactor, double seconds, boolean lowerBound, String alone) {
    /**
     * Starting against running volt-amperes of small compressors, from 5 to 8 times for .1 to 1 s (from memory); variable
     * speed ones start softly, near 1. A lower bound is lifted to this.
     */
    public static final double USUAL_TIMES = 6;

    /** Locked rotors draw mostly magnetising current: about .5 to .7 (from memory). */
    public static final double USUAL_POWER_FACTOR = 0.6;

    public static final double USUAL_SECONDS = 0.5;

    /** Restarted against the pressure it has just built up, a compressor takes so many times as long, if it starts at all. Common practice, no source. */
    public static final double HOT_TIMES = 3;

    public Start {
        Require.above(0, "typedVa", typedVa, "VA");
        Require.above(0, "powerFactor", powerFactor, "");
        Require.within(0, 1, "powerFactor", powerFactor, "");
        Require.above(0, "seconds", seconds, "s");
        Require.within(0, 60, "seconds", seconds, "s");
    }

    /** Volt-amperes to reckon with, for a motor that takes so many when running. */
    public double va(double runningVa) {
        return lowerBound ? Math.max(typedVa, USUAL_TIMES * runningVa) : typedVa;
    }

    /** Real watts of the same moment. */
    public double watts(double runningVa) {
        return powerFactor * va(runningVa);
    }
}
