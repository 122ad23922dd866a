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
 * @param counts     what became of all the rigs that can be put together
 */
public record Shortlist(
        @Nullable Rated winner,
        List<Rated> nearTies,
        List<Rated> unconfirmed,
        List<Rated> front,
        List<Rated> misses,
        List<OfRoute> byRoute,
        Counts counts) {
    public Shortlist {
        nearTies = List.copyOf(nearTies);
        unconfirmed = List.copyOf(unconfirmed);
        front = List.copyOf(front);
        misses = List.copyOf(misses);
        byRoute = List.copyOf(byRoute);
    }

    /**
     * Rigs counted.
     *
     * @param looked            that can be put together
     * @param rejected          that fell to each rule, as far as rules were asked of them; one may fall to several
     * @param fell              that fell to any rule
     * @param overBudget        that cost more than the budget, or whose main parts alone do, and are not known to break a rule
     * @param leastOverBudgetCents the cheapest found over the budget; empty where none was looked for or found
     * @param priced            that keep every rule and were wired and priced
     * @param ruledOutByDemand  whose store could not do what is wanted under the best array
     * @param ruledOutByArray   whose store and panels could not under the best electronics
     * @param ruledOutBySort    that could not with all at its best within their sort
     * @param notReached        dearer than all that was looked for
     * @param ruledOutBySeries  priced, and ruled out by the bound of their own series
     * @param screened          priced, whose share the screening told itself
     * @param series            different net-gain series behind the screening, the bounds' own included
     * @param walked            that the screening could only bound and that were simulated in full
     * @param walkedInVain      of those, given up before the end because too many outages had failed
     */
    public record Counts(
            long looked,
            Map<String, Long> rejected,
            long fell,
            long overBudget,
            OptionalLong leastOverBudgetCents,
            long priced,
            long ruledOutByDemand,
            long ruledOutByArray,
            long ruledOutBySort,
            long notReached,
            long ruledOutBySeries,
            long screened,
            int series,
            int walked,
            int walkedInVain) {
        public Counts {
            rejected = Collections.unmodifiableMap(new TreeMap<>(rejected));
        }
    }
}
