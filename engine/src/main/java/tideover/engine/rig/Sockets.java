package tideover.engine.rig;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import tideover.engine.load.Load;
import tideover.engine.load.Supply;
import tideover.engine.part.Outlet;

/**
 * Which outlet each load is plugged into: the first of the rig's outlets with its kind of current, its plug, its hertz
 * and its volts.
 *
 * @param plugged one entry a load that has a plug, in the loads' order; none for what the rig's aids take off it
 */
public record Sockets(List<Plugged> plugged) {
    /** Alternating volts may be off by this share: the service range of ANSI C84.1 and EN 50160 is 5 to 10 %. */
    private static final double AC_VOLT_SHARE = 0.10;

    /** Direct volts may be off by this share: a "12 V" device runs on a 12.8 V battery. Common practice, no source. */
    private static final double DC_VOLT_SHARE = 0.10;

    public Sockets {
        plugged = List.copyOf(plugged);
    }

    /** A load and its outlet; null where none fits. */
    public record Plugged(Load load, @Nullable Outlet outlet) {
        /** Whether it gets its power through the rig's inverter. */
        public boolean throughInverter(Rig rig) {
            return outlet != null && load.supply().isAc() && rig.inverter() != null;
        }

        /** Whether it gets direct current. */
        public boolean direct() {
            return outlet != null && !load.supply().isAc();
        }

        /** Bus watts for each watt of direct current at the load's plug; 0 for what gets none. */
        public double busPerPlugW() {
            return outlet != null && direct() ? 1 / outlet.efficiency() : 0;
        }
    }

    public static Sockets of(Rig rig, List<Load> loads) {
        List<Plugged> plugged = new ArrayList<>();
        for (Load load : rig.served(loads)) {
            if (!load.plugged()) {
                continue;
            }
            plugged.add(new Plugged(
                    load,
                    rig.outlets().stream()
                            .filter(outlet -> fits(load.supply(), outlet.supply()))
                            .findFirst()
                            .orElse(null)));
        }
        return new Sockets(plugged);
    }

    /** Bus watts while some of the essential loads run together, losses and the inverter's own draw included. */
    public double busW(Rig rig, List<Load> on) {
        double directW = 0;
        double acW = 0;
        for (Plugged one : plugged) {
            if (on.contains(one.load())) {
                directW += one.busPerPlugW() * one.load().runningW();
                acW += one.throughInverter(rig) ? one.load().runningW() : 0;
            }
        }
        double lostW = rig.inverter() == null ? 0 : rig.inverter().loss().lostW(acW);
        return directW + acW + lostW + standingW(rig);
    }

    /** Draw of the inverter itself, which is left on through the outage where an essential load wants AC; else 0, W. */
    public double standingW(Rig rig) {
        return rig.inverter() != null && leavesInverterOn(rig) ? rig.inverter().standingW() : 0;
    }

    /** Whether an essential load keeps the inverter on all through the outage. */
    public boolean leavesInverterOn(Rig rig) {
        return plugged.stream().anyMatch(one -> one.load().essential() && one.throughInverter(rig));
    }

    /** Whether one of them that is never held back does; else the inverter is on only while one may run. */
    public boolean neverSwitchesInverterOff(Rig rig) {
        return plugged.stream()
                .anyMatch(one -> one.load().essential()
                        && one.throughInverter(rig)
                        && !one.load().heldBack());
    }

    static boolean fits(Supply wanted, Supply given) {
        double share = wanted.isAc() ? AC_VOLT_SHARE : DC_VOLT_SHARE;
        return wanted.current() == given.current()
                && wanted.plug().equalsIgnoreCase(given.plug())
                && wanted.hertz() == given.hertz()
                && Math.abs(wanted.volts() - given.volts()) <= share * wanted.volts();
    }
}
