package tideover.engine.answer;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import tideover.engine.search.Find;
import tideover.engine.search.Rated;

/**
 * What is known of an answer that is still being sought. Immutable: whoever is told the progress keeps the newest.
 *
 * @param stage        what is being done
 * @param stageShare   how far, 0..1
 * @param judgedBelowCents every rig that costs less has been judged; 0 before the search
 * @param winner       the cheapest that carries the target and was confirmed; null while it is out
 * @param confirming   the cheapest that carries the target and is being confirmed; null where there is none
 * @param notConfirmed cheaper ones that missed it on the confirming years
 * @param front        price against share so far, cheapest first
 */
public record Known(
        String stage,
        double stageShare,
        long judgedBelowCents,
        @Nullable Rated winner,
        @Nullable Rated confirming,
        List<Rated> notConfirmed,
        List<Rated> front) {
    public static final Known NOTHING = new Known("", 0, 0, null, null, List.of(), List.of());

    public Known {
        notConfirmed = List.copyOf(notConfirmed);
        front = List.copyOf(front);
    }

    public Known at(String newStage, double share) {
        return new Known(newStage, share, judgedBelowCents, winner, confirming, notConfirmed, front);
    }

    public Known judgedBelow(long cents) {
        return new Known(stage, stageShare, cents, winner, confirming, notConfirmed, front);
    }

    public Known with(Find find) {
        Rated rated = find.rated();
        return switch (find.kind()) {
            case STEP ->
                new Known(stage, stageShare, judgedBelowCents, winner, confirming, notConfirmed, and(front, rated));
            case MEETS -> new Known(stage, stageShare, judgedBelowCents, winner, rated, notConfirmed, front);
            case CONFIRMED -> new Known(stage, stageShare, judgedBelowCents, rated, null, notConfirmed, front);
            case NOT_CONFIRMED ->
                new Known(stage, stageShare, judgedBelowCents, winner, null, and(notConfirmed, rated), front);
        };
    }

    private static List<Rated> and(List<Rated> some, Rated one) {
        List<Rated> more = new ArrayList<>(some);
        more.add(one);
        return more;
    }
}
