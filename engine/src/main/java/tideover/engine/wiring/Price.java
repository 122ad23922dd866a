package tideover.engine.wiring;

import java.util.List;
import tideover.engine.load.Load;
import tideover.engine.rig.Chosen;
import tideover.engine.rig.Rig;
import tideover.engine.rig.Sockets;

/**
 * What a rig costs, in whole cents.
 *
 * @param partsCents      the main parts at their listed prices, with the fuel that an engine among them burns in one outage
 * @param smallPartsCents wire, fuses and all that belongs to them: counted, or the household's allowance for this way of building
 * @param toolsCents      what is bought once and left over; 0 where an allowance stands for small parts and tools together
 * @param hardWiredCents  the allowance for joining the hard-wired loads that this rig serves
 */
public record Price(long partsCents, long smallPartsCents, long toolsCents, long hardWiredCents) {
    public static Price of(Build build, List<Load> loads, Allowances allowances) {
        Rig rig = build.rig();
        long parts = build.fuelCents();
        for (Chosen chosen : rig.chosen()) {
            parts += chosen.part().listing().costCents(chosen.count());
        }
        long joining = allowances.hardWiredCents() * hardWiredServed(rig, loads);
        return build.counted()
                ? new Price(
                        parts,
                        build.partsList().smallPartsCents(),
                        build.partsList().toolsCents(),
                        joining)
                : new Price(parts, allowed(rig, allowances), 0, joining);
    }

    /** Aids by themselves, with what belongs to them. */
    static Price withoutRig(List<Chosen> aids, PartsList list) {
        long parts = 0;
        for (Chosen chosen : aids) {
            parts += chosen.part().listing().costCents(chosen.count());
        }
        return new Price(parts, list.smallPartsCents(), list.toolsCents(), 0);
    }

    private static long allowed(Rig rig, Allowances allowances) {
        return switch (rig.route()) {
            case READY_BOX -> allowances.readyBoxCents();
            case ENCLOSURE -> allowances.enclosureCents();
            case SEPARATE_PARTS -> allowances.separatePartsCents();
        };
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
        return partsCents + smallPartsCents + toolsCents + hardWiredCents;
    }
}
