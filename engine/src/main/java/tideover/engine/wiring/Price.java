package tideover.engine.wiring;

import java.util.List;
import tideover.engine.load.Load;
import tideover.engine.rig.Chosen;
import tideover.engine.rig.Rig;
import tideover.engine.rig.Sockets;

/**
 * What a rig costs, in whole cents.
 *
 * @param partsCents      the main parts at their listed prices
 * @param smallPartsCents the household's allowance for wire, fuses and the like on this way of building
 * @param hardWiredCents  its allowance for joining the hard-wired loads that this rig serves
 */
public record Price(long partsCents, long smallPartsCents, long hardWiredCents) {
    public static Price of(Rig rig, List<Load> loads, Allowances allowances) {
        long parts = 0;
        for (Chosen chosen : rig.chosen()) {
            parts += chosen.count() * chosen.part().listing().priceCents();
        }
        long small = switch (rig.route()) {
            case READY_BOX -> allowances.readyBoxCents();
            case ENCLOSURE -> allowances.enclosureCents();
            case SEPARATE_PARTS -> allowances.separatePartsCents();
        };
        return new Price(parts, small, allowances.hardWiredCents() * hardWiredServed(rig, loads));
    }

    /** Those that find an outlet: what is nice to have and finds none goes without, and is not joined. */
    private static long hardWiredServed(Rig rig, List<Load> loads) {
        List<Load> hardWired =
                loads.stream().filter(load -> load.nature().hardWired()).toList();
        if (hardWired.isEmpty()) {
            return 0;
        }
        return Sockets.of(rig, hardWired).plugged().stream()
                .filter(plugged -> plugged.throughInverter(rig) || plugged.direct())
                .count();
    }

    public long totalCents() {
        return partsCents + smallPartsCents + hardWiredCents;
    }
}
