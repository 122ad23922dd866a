package tideover.engine.load;

import java.util.List;
import org.jspecify.annotations.Nullable;
import tideover.engine.quantity.Require;
import tideover.engine.why.Basis;

/**
 * What loads of one kind usually draw, for an owner who knows no figure yet. A range, never a figure alone; a label is better,
 * a meter better still.
 *
 * @param word        by which a plan refers to it
 * @param alsoCalled  other words for the same
 * @param leastW      of small or sparing ones, while they run
 * @param usualW      of most, while they run
 * @param mostW       of big or old ones, while they run
 * @param ac          whether the figures are of one on alternating current
 * @param powerFactor real watts per volt-ampere while it runs, 0..1; 1 on direct current
 * @param start       of one that draws the usual watts; null where nothing spins up
 * @param needsSine   whether a stepped wave may harm it or keep it from working
 * @param hardWired   whether it usually hangs on the wires of the house, without a plug
 * @param sensesFlame whether it may prove its flame by a current to ground, which a floating neutral can hide
 * @param medical     whether somebody's health may hang on it
 * @param hours       when it usually runs, in words
 * @param basis       how far the figures can be trusted
 * @param source      where they are from
 * @param measure     how its owner learns the watts of this one
 * @param ask         what must be asked before it is relied on
 */
public record Usual(
        String word,
        List<String> alsoCalled,
        double leastW,
        double usualW,
        double mostW,
        boolean ac,
        double powerFactor,
        @Nullable Start start,
        boolean needsSine,
        boolean hardWired,
        boolean sensesFlame,
        boolean medical,
        String hours,
        Basis basis,
        String source,
        String measure,
        List<String> ask) {
    public Usual {
        Require.text("word", word);
        alsoCalled = List.copyOf(alsoCalled);
        Require.above(0, "leastW", leastW, "W");
        Require.atLeast(leastW, "usualW", usualW, "W");
        Require.atLeast(usualW, "mostW", mostW, "W");
        Require.within(ac ? 0.1 : 1, 1, "powerFactor", powerFactor, "");
        Require.text("hours", hours);
        Require.text("source", source);
        Require.text("measure", measure);
        ask = List.copyOf(ask);
    }

    /** Volt-amperes of one that draws the usual watts. */
    public double usualVa() {
        return usualW / powerFactor;
    }

    /** Watts to reckon with where nobody knows better: the usual; the most where somebody's health may hang on it. */
    public double reckonedW() {
        return medical ? mostW : usualW;
    }

    /**
     * The start of one that takes so many volt-amperes when running: as stated, and in proportion for what takes more than the
     * usual. Null where nothing spins up.
     */
    public @Nullable Start start(double runningVa) {
        if (start == null) {
            return null;
        }
        double times = Math.max(1, runningVa / usualVa());
        return new Start(start.typedVa() * times, start.powerFactor(), start.seconds(), start.lowerBound(), "");
    }
}
