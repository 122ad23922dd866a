package tideover.engine.proof;

import java.util.List;
import tideover.engine.outage.Outage;
import tideover.engine.quantity.Series;
import tideover.engine.quantity.Workers;

/**
 * The net gain of a rig's store step by step, were it never full nor empty: what the screening needs to judge every
 * store size in one pass. It holds the very arrays that the walk uses, so the two cannot drift apart.
 */
public final class NetGains {
    private NetGains() {}

    /** Takes the gains of one stretch; the arrays are used again afterwards and must not be kept. */
    public interface Visitor {
        /**
         * @param stretch   number of the stretch, in the order of the weather years
         * @param sunnyWh   Wh into the store in each step with the panels out, negative out of it
         * @param darkWh    the same before they are out
         * @param firstStep step of the first start
         * @param starts    start hours that follow one another from there
         */
        void visit(int stretch, double[] sunnyWh, double[] darkWh, int firstStep, int starts);
    }

    /** How many stretches {@link #visit} goes through. */
    public static int stretches(Outage outage, int years) {
        return Stretch.of(outage.months(), years, outage.hours()).size();
    }

    /**
     * Goes through the asked months of all years.
     *
     * @param sunPerRatedW hourly DC watts per rated watt
     * @param rig          its capacity is not looked at
     */
    public static void visit(
            Series sunPerRatedW,
            int years,
            RigFigures rig,
            BusDemand demand,
            Outage outage,
            Workers workers,
            Visitor visitor) {
        List<Stretch> stretches = Stretch.of(outage.months(), years, outage.hours());
        workers.forEach(stretches.size(), number -> {
            StretchFlows flows = new StretchFlows(demand.stepsPerHour(), false);
            Stretch stretch = stretches.get(number);
            flows.fill(stretch, sunPerRatedW, rig, demand);
            visitor.visit(number, flows.gainWh, flows.darkGainWh, flows.stepOfStart(0), stretch.starts());
        });
    }
}
