package tideover.engine.load;

import org.jspecify.annotations.Nullable;
import tideover.engine.quantity.Require;

/**
 * How a load behaves beside its watts.
 *
 * @param powerFactor real watts per volt-ampere while it runs, 0..1
 * @param start       what its motor takes at first; null where nothing spins up
 * @param needsSine   whether a stepped wave harms it or keeps it from working
 * @param attended    whether somebody is by who sees that it has stopped and presses what needs pressing
 * @param medical     what is arranged around it where somebody's health hangs on it; null elsewhere
 * @param hardWired   whether it hangs on the wires of the house, without a plug
 * @param sensesFlame whether it proves its flame by a current to ground, which a floating neutral can hide
 */
public record Nature(
        double powerFactor,
        @Nullable Start start,
        boolean needsSine,
        boolean attended,
        @Nullable Medical medical,
        boolean hardWired,
        boolean sensesFlame) {
    /** A lamp, a heater, a small power supply. */
    public static final Nature PLAIN = new Nature(1, null, false, false, null);

    public Nature {
        Require.above(0, "powerFactor", powerFactor, "");
        Require.within(0, 1, "powerFactor", powerFactor, "");
    }

    /** Of a load on a plug. */
    public Nature(
            double powerFactor, @Nullable Start start, boolean needsSine, boolean attended, @Nullable Medical medical) {
        this(powerFactor, start, needsSine, attended, medical, false, false);
    }

    /** Of a load on a plug that nobody's health hangs on. */
    public Nature(double powerFactor, @Nullable Start start, boolean needsSine, boolean attended) {
        this(powerFactor, start, needsSine, attended, null);
    }

    public Nature with(@Nullable Medical changed) {
        return new Nature(powerFactor, start, needsSine, attended, changed, hardWired, sensesFlame);
    }

    /** The same load, wired to the house or not. */
    public Nature wired(boolean hardWired, boolean sensesFlame) {
        return new Nature(powerFactor, start, needsSine, attended, medical, hardWired, sensesFlame);
    }
}
