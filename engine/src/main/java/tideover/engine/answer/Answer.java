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
 * @param meets       whether the rig meets the target, also on the confirming seed where there is one; the target is every outage,
 *                    storm starts too, where somebody's health hangs on a load
 * @param weather     one sentence: what the weather rests on and what is known to be wrong with it
 * @param cautions    what to mind, most serious first
 * @param notes       where each figure comes from
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
        List<MarginNote> notes) {
    public Answer {
        cautions = List.copyOf(cautions);
        notes = List.copyOf(notes);
    }

    /**
     * Whether somebody's health hangs on a load. Then {@code meets} only says that nothing was found that this rig fails: it
     * must never be shown as a target met.
     */
    public boolean medical() {
        return question.medical();
    }
}
