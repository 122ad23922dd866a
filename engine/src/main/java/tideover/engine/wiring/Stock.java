package tideover.engine.wiring;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import tideover.engine.electronics.ConductorSize;
import tideover.engine.part.Cable;
import tideover.engine.part.Condition;
import tideover.engine.part.ControllerRating.PanelInput;
import tideover.engine.part.Cord;
import tideover.engine.part.Fuse;
import tideover.engine.part.FuseHolder;
import tideover.engine.part.Listing;
import tideover.engine.part.Lug;
import tideover.engine.part.PanelBranch;
import tideover.engine.part.PanelLead;
import tideover.engine.part.SmallPart;

/** The small parts and tools that may be had, sorted by kind once for all that is asked of them. */
public final class Stock {
    private static final double INSULATION_DEG_C = 90;

    /** Lengths of what is sold by length only, m. */
    private static final double[] LENGTHS_M = {5, 10, 20, 50, 100, 200};

    /** Of what is to be bought as strong as its run demands. */
    private static final double ANY_A = 10_000;

    private static final double ANY_V = 1500;
    private static final double ANY_FAULT_A = 1e6;

    private final List<SmallPart> parts;
    private final boolean priced;
    private final Map<Class<?>, List<SmallPart>> byKind = new HashMap<>();

    Stock(List<SmallPart> parts, boolean priced) {
        this.parts = List.copyOf(parts);
        this.priced = priced;
        parts.forEach(part -> byKind.computeIfAbsent(part.getClass(), kind -> new ArrayList<>())
                .add(part));
    }

    public List<SmallPart> parts() {
        return parts;
    }

    /** Whether they are a household's own list with prices; else the bare standard sizes. */
    public boolean priced() {
        return priced;
    }

    /** A household's own list; where it is empty the standard sizes stand in. */
    public static Stock of(List<SmallPart> parts, boolean metric) {
        return parts.isEmpty() ? standard(metric) : new Stock(parts, true);
    }

    /** Copper of every size, fuses of every standard rating: so that a circuit can be told where nothing has a price. */
    static Stock standard(boolean metric) {
        List<SmallPart> all = new ArrayList<>();
        for (ConductorSize size : metric ? ConductorSize.metrics() : ConductorSize.gauges()) {
            String words = size.words();
            all.add(new Cable(listing("copper cable " + words), size, Cable.Metal.COPPER, INSULATION_DEG_C, 1));
            all.add(new Lug(listing("lug " + words), size, 1));
            double capA = Ampacity.allowedA(size, INSULATION_DEG_C, 30, 2, 75);
            for (double lengthM : LENGTHS_M) {
                // The table of ampacities has nothing for the thinnest.
                if (capA > 0) {
                    all.add(new PanelLead(
                            listing("panel lead " + words),
                            PanelLead.ANY_MAKE,
                            PanelInput.BARE_ENDS,
                            size,
                            INSULATION_DEG_C,
                            lengthM,
                            capA));
                }
                all.add(new Cord(listing("cord " + words), size, lengthM, Math.max(1, capA), 120, Cord.ANY_PLUG));
            }
        }
        StandardRatings.forEach(ratedA -> all.add(new Fuse(listing("fuse"), FORMAT, ratedA, ANY_V, ANY_FAULT_A, 1)));
        all.add(new FuseHolder(listing("fuse holder"), FORMAT, ANY_A, 1));
        all.add(new PanelBranch(listing("panel branch"), PanelLead.ANY_MAKE, ANY_A));
        return new Stock(all, false);
    }

    private static final String FORMAT = "for direct current";

    private static Listing listing(String name) {
        return new Listing(name, name, 0, "", LocalDate.EPOCH, Condition.NEW, 1000, 0, "standard sizes");
    }

    <T extends SmallPart> List<T> of(Class<T> kind) {
        return byKind.getOrDefault(kind, List.of()).stream().map(kind::cast).toList();
    }
}
