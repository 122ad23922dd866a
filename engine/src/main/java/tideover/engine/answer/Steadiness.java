package tideover.engine.answer;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import tideover.engine.search.Rated;

/**
 * Which rig wins in other draws of the weather, as many years each as the question's own. Only rigs that were close are asked: the
 * winner, near ties, nearest misses and cheaper ones that were not confirmed. A rig that was far from
 * them here might win there; that is not looked into, nor is a winner confirmed there again.
 *
 * @param years  of each draw
 * @param asked  how many rigs were asked
 * @param draws  one for each seed
 */
public record Steadiness(int years, int asked, List<Draw> draws) {
    public Steadiness {
        draws = List.copyOf(draws);
    }

    /** @param cheapest of the rigs asked, that carries the target there; null where none does */
    public record Draw(long seed, @Nullable Rated cheapest) {}

    /** In how many draws a rig wins. */
    public int wins(Rated rig) {
        return (int) draws.stream()
                .filter(draw -> draw.cheapest() != null
                        && draw.cheapest().rig().id().equals(rig.rig().id()))
                .count();
    }

    /** In how many draws none of those asked carries the target. */
    public int without() {
        return (int) draws.stream().filter(draw -> draw.cheapest() == null).count();
    }

    /** Who wins how often: most often first, then cheapest. */
    public List<Rated> winners() {
        Map<String, Rated> byId = new LinkedHashMap<>();
        for (Draw draw : draws) {
            Rated cheapest = draw.cheapest();
            if (cheapest != null) {
                byId.putIfAbsent(cheapest.rig().id(), cheapest);
            }
        }
        List<Rated> winners = new ArrayList<>(byId.values());
        winners.sort(Comparator.<Rated>comparingInt(rig -> -wins(rig)).thenComparing(Choice.BY_PRICE));
        return winners;
    }
}
