package tideover.engine.proof;

import java.util.List;
import tideover.engine.electronics.InverterLoss;
import tideover.engine.load.Load;
import tideover.engine.outage.Outage;
import tideover.engine.part.InverterRating;
import tideover.engine.quantity.Require;
import tideover.engine.rig.Rig;
import tideover.engine.rig.Sockets;

/**
 * What the loads ask of a rig's bus, step by step of the day. Each demand is held with its split: watts at the plug, what
 * the inverter and the outlets' converters lose on it, and the inverter's own draw.
 */
public final class BusDemand {
    private static final InverterLoss NO_INVERTER = new InverterLoss(0, 0, 0);

    private final int stepsPerHour;
    private final Flow[] essential;
    private final Flow[] nice;

    /** Watts on the bus and where they end up; {@code acW} is the part of {@code plugW} behind the inverter. */
    record Flow(double acW, double plugW, double inverterLossW, double outletLossW, double standingW) {
        double busW() {
            return plugW + inverterLossW + outletLossW + standingW;
        }
    }

    private BusDemand(int stepsPerHour) {
        this.stepsPerHour = Require.within(1, 60, "stepsPerHour", stepsPerHour);
        this.essential = new Flow[24 * stepsPerHour];
        this.nice = new Flow[24 * stepsPerHour];
    }

    /**
     * The demand of loads plugged into a rig, but for what switches itself: of that only the inverter's own draw. A load without an outlet asks for nothing here: for an essential one the
     * rule book has already rejected the rig.
     *
     * @param noonHour clock hour of solar noon: loads that may choose their hours take those nearest to it
     */
    public static BusDemand of(Rig rig, List<Load> loads, double noonHour, int stepsPerHour) {
        InverterRating inverter = rig.inverter();
        return of(rig, loads, inverter == null ? NO_INVERTER : inverter.loss(), noonHour, stepsPerHour);
    }

    /** The same with an inverter that draws nothing itself, to ask what its own draw costs. */
    static BusDemand withoutStanding(Rig rig, List<Load> loads, double noonHour, int stepsPerHour) {
        InverterRating inverter = rig.inverter();
        InverterLoss loss = inverter == null ? NO_INVERTER : inverter.loss().withoutStanding();
        return of(rig, loads, loss, noonHour, stepsPerHour);
    }

    /**
     * The inverter is on all day where an essential load is plugged into it, else while a nice-to-have load wants it. What
     * it loses is reckoned from the mean watts of a step; what a nice-to-have adds to the loss of the essentials is its own.
     */
    private static BusDemand of(Rig rig, List<Load> loads, InverterLoss loss, double noonHour, int stepsPerHour) {
        Sockets sockets = Sockets.of(rig, loads);
        BusDemand demand = new BusDemand(stepsPerHour);
        double stepHours = 1.0 / stepsPerHour;
        boolean leftOn = sockets.neverSwitchesInverterOff(rig);
        for (int step = 0; step < demand.essential.length; step++) {
            Draw needed = new Draw();
            Draw wished = new Draw();
            for (Sockets.Plugged one : sockets.plugged()) {
                if (one.load().keeps()) {
                    continue;
                }
                double plugW = one.load().wantedW(step * stepHours, stepHours, noonHour);
                Draw draw = one.load().essential() ? needed : wished;
                if (one.throughInverter(rig)) {
                    draw.acW += plugW;
                    draw.acShare += plugW / one.load().runningW();
                } else if (one.direct()) {
                    draw.directW += plugW;
                    draw.outletLossW += plugW * (one.busPerPlugW() - 1);
                }
            }
            double neededLossW = loss.lostW(needed.acW);
            double withWishedLossW = loss.lostW(needed.acW + wished.acW);
            double switchedOn = leftOn ? 0 : Math.min(1, wished.acShare);
            demand.essential[step] = needed.flow(neededLossW, leftOn ? loss.standingW() : 0);
            demand.nice[step] = wished.flow(withWishedLossW - neededLossW, switchedOn * loss.standingW());
        }
        return demand;
    }

    /** Watts at the plugs in one step. */
    private static final class Draw {
        double acW;
        double acShare;
        double directW;
        double outletLossW;

        Flow flow(double inverterLossW, double standingW) {
            return new Flow(acW, acW + directW, inverterLossW, outletLossW, standingW);
        }
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

    /** The same less what an engine puts on the bus through the rig's charger at those hours; below 0 it gives more. */
    public double[] essentialLessEngineW(Rig rig, Outage outage) {
        double[] watts = essentialBusW();
        double[] engineW = Relief.engineW(rig, outage, stepsPerHour);
        for (int step = 0; step < watts.length; step++) {
            watts[step] -= engineW[step];
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
