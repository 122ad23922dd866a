package tideover.engine.search;

import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.OptionalLong;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;

/**
 * What the search found.
 *
 * @param winner      the cheapest rig that meets the target and was confirmed; null where there is none
 * @param nearTies    others that meet the target within a tenth of the winner's price, cheapest first
 * @param unconfirmed cheaper rigs that met the target in the screening and were not confirmed
 * @param front       rigs than which none is both cheaper and better, cheapest first, as far as it was followed: to the
 *                    first that carries everything, or to twice the winner's price
 * @param misses      the rigs nearest below the target among all no dearer than the near ties, best share first
 * @param byRoute     for each way of building the cheapest that meets the target and was confirmed, the winner among them; where
 *                    none was found, the one whose share is nearest, if the screening alone can tell it
 * @param looked      rigs the grammar gave
 * @param kept        of those, rigs that keep every rule and the budget
 * @param ruledOut    of those, rigs ruled out by a bound that is better than they can be, or near ties and small steps of the
 *                    front that the bound alone speaks for
 * @param screened    of those, rigs screened exactly
 * @param series      different net-gain series behind the screening, the bounds' own included
 * @param walked      rigs that the screening could only bound and that were walked in full
 * @param rejected    rigs that fell to each rule; one rig may fall to several
 * @param overBudget  rigs that keep every rule and cost more than the budget
 * @param leastOverBudgetCents the cheapest of those; empty where there is none
 */
public record Shortlist(
        @Nullable Rated winner,
        List<Rated> nearTies,
        List<Rated> unconfirmed,
        List<Rated> front,
        List<Rated> misses,
        List<OfRoute> byRoute,
        int looked,
        int kept,
        int ruledOut,
        int screened,
        int series,
        int walked,
        Map<String, Integer> rejected,
        int overBudget,
        OptionalLong leastOverBudgetCents) {
    public Shortlist {
        nearTies = List.copyOf(nearTies);
        unconfirmed = List.copyOf(unconfirmed);
        front = List.copyOf(front);
        misses = List.copyOf(misses);
        byRoute = List.copyOf(byRoute);
        rejected = Collections.unmodifiableMap(new TreeMap<>(rejected));
    }
}
