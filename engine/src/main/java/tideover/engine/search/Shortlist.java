package tideover.engine.search;

import java.util.List;
import java.util.Map;

/**
 * What the search found.
 *
 * @param meeting    rigs whose share meets the target, cheapest first
 * @param front      rigs than which none is both cheaper and better, cheapest first
 * @param misses     rigs nearest to the target below it, best share first
 * @param looked     rigs the grammar gave
 * @param screened   rigs that passed the rules and were screened
 * @param series     different net-gain series behind them
 * @param rejected   rigs that fell to each rule
 * @param overBudget rigs that passed the rules and cost more than the budget
 */
public record Shortlist(
        List<Rated> meeting,
        List<Rated> front,
        List<Rated> misses,
        int looked,
        int screened,
        int series,
        Map<String, Integer> rejected,
        int overBudget) {
    public Shortlist {
        meeting = List.copyOf(meeting);
        front = List.copyOf(front);
        misses = List.copyOf(misses);
    }
}
