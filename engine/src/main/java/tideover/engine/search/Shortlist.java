package tideover.engine.search;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/**
 * What the search found.
 *
 * @param ranked     every rig that passed the rules and the budget: those that meet the target, cheapest first, then the
 *                   others, best share first; the place in this list, from 1, is a rig's number
 * @param meetCount  how many of them meet the target
 * @param looked     rigs the grammar gave
 * @param series     different net-gain series behind them
 * @param rejected   rigs that fell to each rule; one rig may fall to several
 * @param overBudget rigs that passed the rules and cost more than the budget
 */
public record Shortlist(
        List<Rated> ranked, int meetCount, int looked, int series, Map<String, Integer> rejected, int overBudget) {
    public Shortlist {
        ranked = List.copyOf(ranked);
    }

    /** Rigs that meet the target, cheapest first. */
    public List<Rated> meeting() {
        return ranked.subList(0, meetCount);
    }

    /** The rigs nearest below the target, best share first. */
    public List<Rated> misses(int most) {
        return ranked.subList(meetCount, Math.min(ranked.size(), meetCount + most));
    }

    /** Rigs than which none is both cheaper and better, cheapest first. */
    public List<Rated> front() {
        List<Rated> front = new ArrayList<>();
        double best = -1;
        for (Rated rated : ranked.stream().sorted(Rated.BY_PRICE).toList()) {
            if (rated.share() > best) {
                best = rated.share();
                front.add(rated);
            }
        }
        return front;
    }

    /** Number of a rig of this list, from 1. */
    public int numberOf(Rated rated) {
        int index = ranked.indexOf(rated);
        if (index < 0) {
            throw new IllegalArgumentException(
                    "not on this list: " + rated.rig().id());
        }
        return index + 1;
    }
}
