package tideover.engine.answer;

import java.util.List;
import org.jspecify.annotations.Nullable;
import tideover.engine.search.Shortlist;
import tideover.engine.why.MarginNote;

/**
 * What the program has to say to a question.
 *
 * @param shortlist   what the search found; null where one given rig was proven
 * @param rig         the winner, or the given rig; null where nothing meets the target
 * @param beside      what stands beside it
 * @param meets       whether the rig, or where there is a cheaper way without one that way, meets the target, also on the confirming seed where there is one; the target is every outage,
 *                    storm starts too, where somebody's health hangs on a load
 * @param weather     one sentence: what the weather rests on and what is known to be wrong with it
 * @param cautions    what to mind, most serious first
 * @param notes       where each figure comes from
 * @param ways        of each kind of way the cheapest that meets the target, else the nearest; empty where one given rig was proven
 */
public record Answer(
        Question question,
        Options options,
        int years,
        @Nullable Shortlist shortlist,
        @Nullable ProvenRig rig,
        Beside beside,
        boolean meets,
        String weather,
        List<String> cautions,
        List<MarginNote> notes,
        List<Way> ways) {
    /** Of a rig by itself. */
    public Answer(
            Question question,
            Options options,
            int years,
            @Nullable Shortlist shortlist,
            @Nullable ProvenRig rig,
            Beside beside,
            boolean meets,
            String weather,
            List<String> cautions,
            List<MarginNote> notes) {
        this(question, options, years, shortlist, rig, beside, meets, weather, cautions, notes, List.of());
    }

    public Answer {
        ways = List.copyOf(ways);
        cautions = List.copyOf(cautions);
        notes = List.copyOf(notes);
    }

    /**
     * The cheapest way that meets the target where that is none of the rigs: no more money than the rig, or there is no rig.
     * Null where a rig is the cheapest.
     */
    public @Nullable Way cheaperWithoutRig() {
        Way least = Ways.least(ways);
        if (least == null || least.hasRig()) {
            return null;
        }
        return rig != null && rig.price().totalCents() < least.price().totalCents() ? null : least;
    }

    /**
     * Whether somebody's health hangs on a load. Then {@code meets} only says that nothing was found that this rig fails: it
     * must never be shown as a target met.
     */
    public boolean medical() {
        return question.medical();
    }
}
