package tideover.engine.part;

import java.util.List;
import tideover.engine.quantity.Require;
import tideover.engine.why.Stated;

/**
 * A fuel engine with a generator, or a vehicle that idles to charge. It is run outdoors and started when it is wanted.
 *
 * @param vehicle whether it is a vehicle: it then gives direct current from its sockets while it idles, and nothing else
 * @param ratedW  watts that it gives for hours: AC; of a vehicle, what its alternator has left for its sockets at idle
 * @param surge   volt-amperes for a moment; unknown counts as no more than {@code ratedW}. None of a vehicle
 * @param outlets AC; of a vehicle, its DC sockets
 */
public record Engine(
        Listing listing,
        boolean vehicle,
        double ratedW,
        Surge surge,
        List<Outlet> outlets,
        Fuel fuel,
        Burn burn,
        Habits habits)
        implements Part {
    /**
     * Litres an hour; straight lines between the three. A vehicle burns the same at idle whatever its sockets give: the figure has
     * to be one with the alternator at work.
     */
    public record Burn(double noLoadLPerH, double halfLPerH, double fullLPerH) {
        public Burn {
            Require.above(0, "noLoadLPerH", noLoadLPerH, "L/h");
            Require.atLeast(noLoadLPerH, "halfLPerH", halfLPerH, "L/h");
            Require.atLeast(halfLPerH, "fullLPerH", fullLPerH, "L/h");
        }

        public static Burn atIdle(double litresPerH) {
            return new Burn(litresPerH, litresPerH, litresPerH);
        }

        /** @param share of the rated watts, 0..1; what is more counts as 1 */
        public double litresPerH(double share) {
            double within = Math.max(0, Math.min(1, share));
            return within < 0.5
                    ? noLoadLPerH + (halfLPerH - noLoadLPerH) * within / 0.5
                    : halfLPerH + (fullLPerH - halfLPerH) * (within - 0.5) / 0.5;
        }
    }

    /**
     * How it is to live with. NaN for what is not told.
     *
     * @param noiseDbA      at 7 m
     * @param secondsToLoad from the start until it bears load
     * @param startsItself  whether it starts by itself when the grid fails
     * @param serviceHours  of running, from one service to the next
     * @param serviceCents  what one costs
     */
    public record Habits(
            double noiseDbA, double secondsToLoad, Stated startsItself, double serviceHours, double serviceCents) {
        /** Until it runs evenly, where its maker does not tell. Common practice, no source. */
        public static final double USUAL_SECONDS_TO_LOAD = 60;

        public static final Habits UNKNOWN = new Habits(Double.NaN, Double.NaN, Stated.UNKNOWN, Double.NaN, Double.NaN);

        /** What to reckon with until it bears load, s. */
        public double untilLoadSeconds() {
            return Double.isNaN(secondsToLoad) ? USUAL_SECONDS_TO_LOAD : secondsToLoad;
        }
    }

    public Engine {
        Require.above(0, "ratedW", ratedW, "W");
        outlets = List.copyOf(outlets);
    }

    @Override
    public String kind() {
        return vehicle ? "vehicle" : "engine";
    }

    /** Volt-amperes for a moment; no more than the rating where the maker tells none. */
    public double mostVa() {
        return surge.known() ? Math.max(ratedW, surge.most()) : ratedW;
    }

    /** Litres an hour while so many watts are drawn. */
    public double litresPerH(double drawnW) {
        return burn.litresPerH(drawnW / ratedW);
    }
}
