package tideover.engine.proof;

import java.util.List;
import tideover.engine.load.Load;
import tideover.engine.part.InverterRating;
import tideover.engine.part.Outlet;
import tideover.engine.quantity.Require;
import tideover.engine.rig.Rig;
import tideover.engine.rig.Sockets;

/**
 * What the loads ask of a rig's bus, step by step of the day. Each demand is held with its split: watts at the plug, what
 * the inverter and the outlets' converters lose on it, and the inverter's own draw.
 */
public final class BusDemand {
    private final int stepsPerHour;
    private final Flow[] essential;
    private final Flow[] nice;

    /** Watts on the bus and where they end up. */
    record Flow(double plugW, double inverterLossW, double outletLossW, double standingW) {
        static final Flow NONE = new Flow(0, 0, 0, 0);

        double busW() {
            return plugW + inverterLossW + outletLossW + standingW;
        }

        Flow plus(Flow other, double times) {
            return new Flow(
                    plugW + times * other.plugW,
                    inverterLossW + times * other.inverterLossW,
                    outletLossW + times * other.outletLossW,
                    standingW + times * other.standingW);
        }
    }

    private BusDemand(int stepsPerHour) {
        this.stepsPerHour = Require.within(1, 60, "stepsPerHour", stepsPerHour);
        this.essential = new Flow[24 * stepsPerHour];
        this.nice = new Flow[24 * stepsPerHour];
    }

    /**
     * The demand of loads plugged into a rig. A load without an outlet asks for nothing here: for an essential one the
     * rule book has already rejected the rig.
     *
     * @param noonHour clock hour of solar noon: loads that may choose their hours take those nearest to it
     */
    public static BusDemand of(Rig rig, List<Load> loads, double noonHour, int stepsPerHour) {
        Sockets sockets = Sockets.of(rig, loads);
        InverterRating inverter = rig.inverter();
        double standingW = sockets.standingW(rig);
        double switchedOnW = standingW == 0 && inverter != null ? inverter.standingW() : 0;
        return of(rig, sockets.plugged(), standingW, switchedOnW, noonHour, stepsPerHour);
    }

    /** The same with an inverter that draws nothing itself, to ask what its own draw costs. */
    static BusDemand withoutStanding(Rig rig, List<Load> loads, double noonHour, int stepsPerHour) {
        return of(rig, Sockets.of(rig, loads).plugged(), 0, 0, noonHour, stepsPerHour);
    }

    /**
     * @param standingW   the inverter's own draw all day, for essential loads
     * @param switchedOnW its own draw while nice-to-have loads alone keep it on; once, however many they are
     */
    private static BusDemand of(
            Rig rig,
            List<Sockets.Plugged> plugged,
            double standingW,
            double switchedOnW,
            double noonHour,
            int stepsPerHour) {
        BusDemand demand = new BusDemand(stepsPerHour);
        InverterRating inverter = rig.inverter();
        double[] niceAcShare = new double[demand.nice.length];
        double stepHours = 1.0 / stepsPerHour;
        for (int step = 0; step < demand.essential.length; step++) {
            demand.essential[step] = new Flow(0, 0, 0, standingW);
            demand.nice[step] = Flow.NONE;
        }
        for (Sockets.Plugged one : plugged) {
            Outlet outlet = one.outlet();
            Load load = one.load();
            if (outlet == null || (load.supply().isAc() && inverter == null)) {
                continue;
            }
            boolean ac = load.supply().isAc();
            double lossW = load.runningW() * (one.busPerPlugW(rig) - 1);
            Flow running = new Flow(load.runningW(), ac ? lossW : 0, ac ? 0 : lossW, 0);
            Flow[] flows = load.essential() ? demand.essential : demand.nice;
            for (int step = 0; step < flows.length; step++) {
                double on = load.wantedW(step * stepHours, stepHours, noonHour) / load.runningW();
                flows[step] = flows[step].plus(running, on);
                niceAcShare[step] += ac && !load.essential() ? on : 0;
            }
        }
        Flow switchedOn = new Flow(0, 0, 0, switchedOnW);
        for (int step = 0; step < niceAcShare.length; step++) {
            demand.nice[step] = demand.nice[step].plus(switchedOn, Math.min(1, niceAcShare[step]));
        }
        return demand;
    }

    int stepsPerHour() {
        return stepsPerHour;
    }

    int stepsPerDay() {
        return essential.length;
    }

    Flow essential(int stepOfDay) {
        return essential[stepOfDay];
    }

    Flow nice(int stepOfDay) {
        return nice[stepOfDay];
    }

    /** Bus watts of the essential loads for each step of the day; two rigs with equal ones share a net-gain series. */
    public double[] essentialBusW() {
        double[] watts = new double[essential.length];
        for (int step = 0; step < watts.length; step++) {
            watts[step] = essential[step].busW();
        }
        return watts;
    }

    /** True where some nice-to-have wants power. */
    boolean hasNice() {
        for (Flow flow : nice) {
            if (flow.busW() > 0) {
                return true;
            }
        }
        return false;
    }
}
