package tideover.engine.part;

import tideover.engine.electronics.InverterLoss;
import tideover.engine.electronics.Wave;
import tideover.engine.quantity.Require;
import tideover.engine.why.Stated;

/**
 * An inverter by its data sheet.
 *
 * @param ratedW AC watts it gives for hours
 * @param loss   what it loses, its own draw included
 * @param inputV nominal DC volts it wants
 * @param surge  volt-amperes for a moment; unknown counts as no more than the rating
 * @param window DC volts between which it works
 */
public record InverterRating(
        double ratedW, InverterLoss loss, double inputV, Surge surge, Window window, Wave wave, Habits habits) {
    public InverterRating {
        Require.above(0, "ratedW", ratedW, "W");
        Require.above(0, "inputV", inputV, "V");
    }

    /** One known by its label alone: constant efficiency beside a standing draw. */
    public InverterRating(double ratedW, double efficiency, double standingW, double inputV) {
        this(
                ratedW,
                InverterLoss.constant(efficiency, standingW),
                inputV,
                Surge.UNKNOWN,
                Window.UNKNOWN,
                Wave.UNKNOWN,
                Habits.UNKNOWN);
    }

    public InverterRating with(InverterLoss changed) {
        return new InverterRating(ratedW, changed, inputV, surge, window, wave, habits);
    }

    /** Draw whenever it is on, W. */
    public double standingW() {
        return loss.standingW();
    }

    /** Volt-amperes for a moment; no more than the rating where the maker tells none. */
    public double mostVa() {
        return surge.known() ? Math.max(ratedW, surge.most()) : ratedW;
    }

    /**
     * DC volts; NaN for what the maker does not tell.
     *
     * @param cutOffV    below it the inverter switches off
     * @param reconnectV at which it comes back
     * @param mostV      above it switches off, or is damaged
     */
    public record Window(double cutOffV, double reconnectV, double mostV) {
        public static final Window UNKNOWN = new Window(Double.NaN, Double.NaN, Double.NaN);

        public Window {
            positive("cutOffV", cutOffV);
            positive("reconnectV", reconnectV);
            positive("mostV", mostV);
            inOrder(cutOffV, "reconnectV", reconnectV);
            inOrder(cutOffV, "mostV", mostV);
            inOrder(reconnectV, "mostV", mostV);
        }

        private static void positive(String name, double volts) {
            if (!Double.isNaN(volts)) {
                Require.above(0, name, volts, "V");
            }
        }

        private static void inOrder(double lowerV, String name, double higherV) {
            if (!Double.isNaN(lowerV) && !Double.isNaN(higherV)) {
                Require.atLeast(lowerV, name, higherV, "V");
            }
        }
    }

    /**
     * What cheap electronics do when nobody is by.
     *
     * @param sleepsBelowW       AC watts below which it puts itself to sleep; 0: never; NaN: not told
     * @param wakesByItself      whether a load that asks again wakes it
     * @param restartsAfterFlat  whether it comes back once a battery that ran flat is charged; if not, a button must be pressed
     * @param transferSeconds    how long its AC outlets are without power when the grid fails while it is plugged in and
     *                           passes the grid's power through; NaN: not told, or it passes none through
     */
    public record Habits(double sleepsBelowW, Stated wakesByItself, Stated restartsAfterFlat, double transferSeconds) {
        public static final Habits UNKNOWN = new Habits(Double.NaN, Stated.UNKNOWN, Stated.UNKNOWN);

        public Habits {
            if (!Double.isNaN(sleepsBelowW)) {
                Require.atLeast(0, "sleepsBelowW", sleepsBelowW, "W");
            }
            if (!Double.isNaN(transferSeconds)) {
                Require.within(0, 3600, "transferSeconds", transferSeconds, "s");
            }
        }

        /** Of one that is not known to pass the grid's power through. */
        public Habits(double sleepsBelowW, Stated wakesByItself, Stated restartsAfterFlat) {
            this(sleepsBelowW, wakesByItself, restartsAfterFlat, Double.NaN);
        }

        public Habits transferring(double seconds) {
            return new Habits(sleepsBelowW, wakesByItself, restartsAfterFlat, seconds);
        }
    }
}
