package tideover.engine.battery;

import java.util.List;
import tideover.engine.quantity.Decay;
import tideover.engine.quantity.Require;

/**
 * A battery's charge as two wells joined by a pipe: the load draws from the first, the second follows. So a fast draw ends
 * early, and what it left behind comes back in a rest (the kinetic battery model of Manwell &amp; McGowan 1993, Solar Energy
 * 50, 399; volume and page from memory).
 *
 * <p>With y1 available and y2 bound charge, y0 = y1 + y2, I the current out (negative while charging), c the first well's
 * share of the whole, heads h1 = y1/c and h2 = y2/(1 - c): {@code dy1/dt = -I + k (h2 - h1)}, {@code dy2/dt = -k (h2 - h1)}.
 * The rate kept here is {@code k' = k/(c (1 - c))}, 1/h; papers quote k or k', and the one for the other is a wrong battery.
 * Solved exactly for a current steady within the step. Empty when y1 = 0, full when both heads are.
 *
 * <p>Charge is in whatever unit the caller uses, the current in the same per hour. Valid at one temperature and as far as
 * one pair of figures describes all rates: lead within about 1 to 100 h. Neglected: volts, losses, ageing, cold; the rate
 * is the same in and out.
 *
 * @param availableShare c, above 0 to 1; 1 is a plain tank
 * @param ratePerHour    k' = k/(c (1 - c)), 1/h; of no effect in a plain tank
 */
public record TwoWells(double availableShare, double ratePerHour) {
    /** A plain tank: every rate gives the whole content. */
    public static final TwoWells ONE_WELL = new TwoWells(1, 1);

    /** Newton steps roughly double the digits, halvings add one bit: far more than either ever takes. */
    private static final int MOST_ITERATIONS = 200;

    public TwoWells {
        Require.above(0, "availableShare", availableShare, "");
        Require.within(0, 1, "availableShare", availableShare, "");
        Require.above(0, "ratePerHour", ratePerHour, "1/h");
    }

    /** The pair for a k as in the differential equation, 1/h. */
    public static TwoWells ofPipe(double availableShare, double pipePerHour) {
        return new TwoWells(availableShare, pipePerHour / (availableShare * (1 - availableShare)));
    }

    /** The exact step of so many hours, as three factors to be worked out once. */
    public WellStep step(double hours) {
        Require.atLeast(0, "hours", hours, "h");
        if (availableShare == 1) {
            return new WellStep(0, 1, -hours, hours);
        }
        double gone = Decay.gone(ratePerHour * hours);
        double drawn = -(gone + availableShare * (ratePerHour * hours - gone)) / ratePerHour;
        return new WellStep(1 - gone, availableShare * gone, drawn, hours);
    }

    /**
     * Share of the whole content that a full battery gives at a steady current in so many hours:
     * {@code k'cT/(1 - e + c (k'T - 1 + e))}, written {@code 1/(1 + (1 - c)/c * (1 - e)/(k'T))}.
     */
    public double capacity(double hours) {
        Require.above(0, "hours", hours, "h");
        return 1 / (1 + (1 - availableShare) / availableShare * lag(ratePerHour * hours));
    }

    /** (1 - e^-x)/x, falling from 1 to 0: what the pipe has not yet made good. */
    static double lag(double x) {
        return x > 0 ? Decay.gone(x) / x : 1;
    }

    /**
     * Hours until the first well is empty at a steady current; infinity where nothing is drawn. The same equation tells
     * when a charge fills it: give what is missing in either well, and the charging current as a positive one.
     *
     * @param available charge in the first well, or what is missing there
     * @param bound     charge in the second, or what is missing there
     * @param current   out of the first well, per hour; when filling: into it
     */
    public double hoursToEmpty(double available, double bound, double current) {
        if (available <= 0) {
            return 0;
        }
        if (!(current > 0)) {
            return Double.POSITIVE_INFINITY;
        }
        double all = available + bound;
        double latest = all / current;
        if (availableShare == 1) {
            return latest;
        }
        // The content of the first well falls throughout, or rises and then falls, and is never above the whole: it
        // passes
        // zero once, between now and the hour at which the whole would be gone. Newton within shrinking bounds.
        double least = 0;
        double most = latest;
        double at = available / current < latest ? available / current : latest / 2;
        for (int i = 0; i < MOST_ITERATIONS; i++) {
            double content = step(at).available(available, all, current);
            if (content > 0) {
                least = at;
            } else {
                most = at;
            }
            // Slope of y1: k'(c y0(t) - y1) - I, with what is left in all at that hour.
            double slope = ratePerHour * (availableShare * (all - current * at) - content) - current;
            double next = at - content / slope;
            if (!(next > least && next < most)) {
                next = (least + most) / 2;
            }
            if (Math.abs(next - at) <= 1e-13 * latest) {
                return next;
            }
            at = next;
        }
        return at;
    }

    /**
     * What the second well takes while the first is held full: the missing part shrinks by {@code e^(-k' c t)}.
     *
     * @param missingInBound what the second well lacks of {@code (1 - c)} of the whole
     */
    public double absorbed(double missingInBound, double hours) {
        return availableShare == 1 ? 0 : missingInBound * Decay.gone(ratePerHour * availableShare * hours);
    }

    /** The current per hour that the second well takes at once while the first is held full. */
    public double absorbingCurrent(double missingInBound) {
        return availableShare == 1 ? 0 : missingInBound * ratePerHour * availableShare;
    }

    /** The wells that give the capacities on a data sheet; see {@link WellFit}. */
    public static WellFit fit(List<CapacityRating> ratings, TwoWells fallback) {
        return WellFit.of(ratings, fallback);
    }

    /**
     * The same with what is usual for a chemistry. A lead battery of which one rating is known gets a second one by {@link
     * Peukert}: over 5 h, or over 20 h where the known one is itself short.
     */
    public static WellFit fit(List<CapacityRating> ratings, Chemistry chemistry) {
        List<CapacityRating> known = ratings;
        if (ratings.size() == 1 && chemistry.isLead()) {
            CapacityRating only = ratings.get(0);
            double hours = only.hours() >= 10 ? 5 : 20;
            known = List.of(only, Peukert.over(hours, only, Peukert.exponent(chemistry)));
        }
        return WellFit.of(known, chemistry.traits().fallback());
    }
}
