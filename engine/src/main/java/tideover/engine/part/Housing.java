package tideover.engine.part;

import java.util.List;
import org.jspecify.annotations.Nullable;
import tideover.engine.quantity.Require;
import tideover.engine.why.Stated;

/**
 * An enclosure as a thing that batteries stand in.
 *
 * @param room         for all of them together; null where not told
 * @param terminals    that its leads take, in words; empty where not told
 * @param holdsKg      most that all batteries may weigh; NaN where not told
 * @param ventCm2      free area of its openings, the smaller of way in and way out; 0 where it is tight, NaN where not told
 * @param keepsRainOut whether it may stand in the rain
 * @param bringsLeads  whether it comes with leads for the battery and a fuse in them
 */
public record Housing(
        @Nullable Dimensions room,
        List<String> terminals,
        double holdsKg,
        double ventCm2,
        Stated keepsRainOut,
        Stated bringsLeads) {
    public static final Housing UNKNOWN = new Housing(null, List.of(), Double.NaN, Double.NaN, Stated.UNKNOWN);

    /** Of one that does not tell whether it brings leads: unknown counts as no. */
    public Housing(
            @Nullable Dimensions room, List<String> terminals, double holdsKg, double ventCm2, Stated keepsRainOut) {
        this(room, terminals, holdsKg, ventCm2, keepsRainOut, Stated.UNKNOWN);
    }

    public Housing {
        terminals = List.copyOf(terminals);
        if (!Double.isNaN(holdsKg)) {
            Require.above(0, "holdsKg", holdsKg, "kg");
        }
        if (!Double.isNaN(ventCm2)) {
            Require.atLeast(0, "ventCm2", ventCm2, "cm2");
        }
    }

    public boolean takes(String terminal) {
        return terminals.stream().anyMatch(terminal::equalsIgnoreCase);
    }
}
