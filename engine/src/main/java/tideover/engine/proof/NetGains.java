package tideover.engine.proof;

import java.util.List;
import tideover.engine.outage.Outage;
import tideover.engine.quantity.Series;

/**
 * The net gain of a rig's store step by step, were it never full nor empty: what the screening needs to judge every
 * store size in one pass. It holds the very arrays that the walk uses, so the two cannot drift apart.
 */
public final class NetGains {
    private NetGains() {}

    /** Takes the gains of one stretch; the arrays are used again afterwards and must not be kept. */
    public interface Visitor {
        /**
         * @param sunnyWh Wh into the store in each step with the panels out, negative out of it; the first start's first
         *                step comes first
         * @param darkWh  the same before they are out, by the step of the day; every stretch begins at a midnight
         * @param starts  start hours that follow one another
         */
        void visit(double[] sunnyWh, double[] darkWh, int starts);
    }

    /**
     * Goes through the asked months of all years, in their order.
     *
     * @param sunPerRatedW hourly DC watts per rated watt
     * @param rig          its capacity is not looked at
     */
    public static void visit(
            Series sunPerRatedW, int years, RigFigures rig, BusDemand demand, Outage outage, Visitor visitor) {
        List<Stretch> stretches = Stretch.of(outage.months(), years, outage.hours());
        StretchFlows flows = new StretchFlows(rig, demand);
        for (Stretch stretch : stretches) {
            flows.fill(stretch, sunPerRatedW);
            visitor.visit(flows.gainWh, flows.darkGainWh, stretch.starts());
        }
    }
}
