package tideover.engine.proof;

import java.util.List;
import tideover.engine.outage.Outage;
import tideover.engine.quantity.Series;

/**
 * The net gain of a rig's store step by step, were it never full nor empty: what the screening needs to judge every
 * store size in one pass. It is made by the very code that the walk uses, so the two cannot drift apart.
 */
public final class NetGains {
    private NetGains() {}

    /** Takes the gains of one stretch; the arrays are used again afterwards and must not be kept. */
    public interface Visitor {
        /**
         * @param sunnyWh Wh into the store in each step with the panels out, negative out of it, from the first start on
         * @param darkDayWh the same before they are out, by the step of the day; the first start is a midnight
         * @param starts  start hours that follow one another
         */
        void visit(double[] sunnyWh, double[] darkDayWh, int starts);
    }

    /** Start hours of outages, in runs of neighbours. */
    public static final class Starts {
        private final List<Stretch> stretches;

        private Starts(List<Stretch> stretches) {
            this.stretches = stretches;
        }

        /** Every hour of the asked months of so many years. */
        public static Starts all(Outage outage, int years) {
            return new Starts(Stretch.of(outage.months(), years, outage.hours()));
        }
    }

    /**
     * Goes through some starts, in their order.
     *
     * @param sunPerRatedW  hourly DC watts per rated watt
     * @param rig           its capacity is not looked at
     * @param essentialBusW essential loads on the bus by the step of the day
     * @param lessW         hourly watts wanted beside those through all weather years, once the panels are out;
     *                      below 0 they add
     */
    public static void visit(
            Series sunPerRatedW,
            Starts from,
            RigFigures rig,
            double[] essentialBusW,
            Series lessW,
            int stepsPerHour,
            Visitor visitor) {
        Gains gains = new Gains(rig, essentialBusW, stepsPerHour);
        double[] darkDayWh = gains.darkDayWh();
        double[] sunBusW = {};
        double[] less = {};
        double[] sunnyWh = {};
        for (Stretch stretch : from.stretches) {
            if (sunBusW.length != stretch.hours()) {
                sunBusW = new double[stretch.hours()];
                less = new double[stretch.hours()];
                sunnyWh = new double[stretch.hours() * stepsPerHour];
            }
            sunPerRatedW.copyRound(stretch.firstStartHour(), sunBusW);
            lessW.copyRound(stretch.firstStartHour(), less);
            for (int hour = 0; hour < sunBusW.length; hour++) {
                sunBusW[hour] = gains.sunBusW(rig.arrayRatedW() * sunBusW[hour]) - less[hour];
            }
            gains.fill(sunBusW, darkDayWh, sunnyWh);
            visitor.visit(sunnyWh, darkDayWh, stretch.starts());
        }
    }
}
