package tideover.engine.search;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Predicate;
import org.jspecify.annotations.Nullable;
import tideover.engine.load.Load;
import tideover.engine.part.Aid;
import tideover.engine.part.Battery;
import tideover.engine.part.ChargeController;
import tideover.engine.part.Enclosure;
import tideover.engine.part.Panel;
import tideover.engine.part.Part;
import tideover.engine.part.ReadyBox;
import tideover.engine.rig.Chosen;
import tideover.engine.wiring.Allowances;
import tideover.engine.wiring.Build;
import tideover.engine.wiring.Price;
import tideover.engine.wiring.Terms;

/**
 * A rig that was bought before: what is bought now must contain it, and costs only what is added. Of nothing owned every rig is such
 * an addition, at its whole price.
 */
public final class Owned {
    public static final Owned NOTHING = new Owned(null);

    private final @Nullable Build build;

    /** By the part's id, how many are used, and how many were bought. */
    private final Map<String, Integer> used = new HashMap<>();

    private final Map<String, Integer> bought = new HashMap<>();

    private Owned(@Nullable Build build) {
        this.build = build;
        for (Chosen one : chosen()) {
            String id = one.part().listing().id();
            used.merge(id, one.count(), Integer::sum);
            bought.merge(id, one.part().listing().boughtFor(one.count()), Integer::sum);
        }
    }

    /** Everything that a rig is made of, its small parts and tools with it. */
    public static Owned of(Build build) {
        return new Owned(build);
    }

    boolean isNothing() {
        return build == null;
    }

    private List<Chosen> chosen() {
        return build == null ? List.of() : build.rig().chosen();
    }

    /** Parts that a rig may have which contains what is owned: where one of a kind is there, no other of that kind. */
    List<Part> fitting(List<Part> parts) {
        return parts.stream().filter(this::fits).toList();
    }

    private boolean fits(Part part) {
        if (part instanceof Aid || used.containsKey(part.listing().id())) {
            return true;
        }
        for (Chosen one : chosen()) {
            boolean sameKind = one.part().getClass() == part.getClass();
            boolean boxed = one.part() instanceof ReadyBox && (part instanceof Battery || part instanceof Enclosure);
            boolean loose = one.part() instanceof Battery && part instanceof ReadyBox;
            if (sameKind || boxed || loose) {
                return false;
            }
        }
        return true;
    }

    /** Whether some parts have at least as many of everything owned. */
    public boolean within(List<Chosen> some) {
        return within(some, one -> true);
    }

    /** The same, whatever panels there are. */
    boolean withinButPanels(List<Chosen> some) {
        return within(some, one -> !(one.part() instanceof Panel));
    }

    /** The same, whatever panels and controller there are. */
    boolean withinButPanelsAndController(List<Chosen> some) {
        return within(some, one -> !(one.part() instanceof Panel) && !(one.part() instanceof ChargeController));
    }

    private boolean within(List<Chosen> some, Predicate<Chosen> asked) {
        Map<String, Integer> counts = new HashMap<>();
        some.forEach(one -> counts.merge(one.part().listing().id(), one.count(), Integer::sum));
        return chosen().stream()
                .filter(asked)
                .map(one -> one.part().listing().id())
                .allMatch(id -> counts.getOrDefault(id, 0) >= used.getOrDefault(id, 0));
    }

    /** The least that a count of one part still costs, whole cents. */
    long leastCents(Chosen one) {
        int more = one.count() - bought.getOrDefault(one.part().listing().id(), 0);
        return more <= 0 ? 0 : one.part().listing().costCents(more);
    }

    /** What the addition costs that makes a build of what is owned. */
    public Price price(Build whole, List<Load> loads, Allowances allowances, Terms terms) {
        return build == null
                ? Price.of(whole, loads, allowances, terms)
                : Price.ofAddition(whole, build, loads, allowances, terms);
    }
}
