package tideover.engine.search;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.OptionalLong;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;
import tideover.engine.load.Load;
import tideover.engine.part.Part;
import tideover.engine.quantity.Workers;
import tideover.engine.rig.Site;
import tideover.engine.wiring.Allowances;
import tideover.engine.wiring.Bench;
import tideover.engine.wiring.Terms;

/**
 * Every rig of a shelf that keeps every rule, all of them judged and priced: for small shelves. {@link Search} asks for no more than
 * it must.
 *
 * @param kept       rigs that pass every rule and the budget, cheapest first; ties by mass, then id
 * @param looked     how many rigs can be put together
 * @param rejected   how many fell to each rule; one rig may fall to several
 * @param overBudget how many keep the rules that were asked and cost more than the budget
 * @param leastOverBudgetCents the cheapest of those, if there is one
 */
public record Candidates(
        List<Priced> kept,
        long looked,
        Map<String, Long> rejected,
        long overBudget,
        OptionalLong leastOverBudgetCents) {
    public Candidates {
        kept = List.copyOf(kept);
        rejected = Collections.unmodifiableMap(new TreeMap<>(rejected));
    }

    /**
     * @param site  what the rules ask of the place
     * @param bench where each is wired before its price is known
     */
    public static Candidates of(
            List<Part> parts,
            Grammar grammar,
            List<Load> loads,
            Site site,
            Bench bench,
            Allowances allowances,
            Terms terms,
            OptionalLong budgetCents) {
        Shelf shelf = Shelf.of(parts, grammar, loads);
        Offers offers = Offers.of(shelf, loads, site, bench, allowances, terms, budgetCents, Workers.of(1));
        List<Priced> kept = new ArrayList<>();
        for (@Nullable Priced one = offers.next(Offers.ALL); one != null; one = offers.next(Offers.ALL)) {
            kept.add(one);
        }
        // First, for it may still find that some break a rule.
        OptionalLong leastOverBudgetCents = offers.leastOverBudgetCents();
        return new Candidates(kept, shelf.rigs(), offers.rejected(), offers.overBudget(), leastOverBudgetCents);
    }
}
