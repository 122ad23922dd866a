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
 * @param plugged one entry a load, in the loads' order
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
        /** Bus watts for each watt at the load's plug, standing draw apart. */
        public double busPerPlugW(Rig rig) {
            if (outlet == null) {
                return 0;
            }
            boolean ac = load.supply().isAc();
            return 1 / (ac && rig.inverter() != null ? rig.inverter().efficiency() : outlet.efficiency());
        }
    }

    public static Sockets of(Rig rig, List<Load> loads) {
        List<Plugged> plugged = new ArrayList<>();
        for (Load load : loads) {
            plugged.add(new Plugged(
                    load,
                    rig.outlets().stream()
                            .filter(outlet -> fits(load.supply(), outlet.supply()))
                            .findFirst()
                            .orElse(null)));
        }
        return new Sockets(plugged);
    }

    /** Draw of the inverter itself, which is left on through the outage where an essential load wants AC; else 0, W. */
    public double standingW(Rig rig) {
        boolean left = plugged.stream()
                .anyMatch(p -> p.load().essential() && p.load().supply().isAc() && p.outlet() != null);
        return left && rig.inverter() != null ? rig.inverter().standingW() : 0;
    }

    static boolean fits(Supply wanted, Supply given) {
        double share = wanted.isAc() ? AC_VOLT_SHARE : DC_VOLT_SHARE;
        return wanted.current() == given.current()
                && wanted.plug().equalsIgnoreCase(given.plug())
                && wanted.hertz() == given.hertz()
                && Math.abs(wanted.volts() - given.volts()) <= share * wanted.volts();
    }
}
