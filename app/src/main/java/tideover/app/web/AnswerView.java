package tideover.app.web;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.jspecify.annotations.Nullable;
import tideover.app.report.Reasons;
import tideover.app.report.Reasons.Reason;
import tideover.app.report.Words;
import tideover.engine.answer.Answer;
import tideover.engine.answer.Glimpse;
import tideover.engine.answer.Known;
import tideover.engine.answer.Question;
import tideover.engine.search.Rated;

/**
 * The answer as the top of a sheet tells it: the newest, dimmed while a newer one is worked out, with what is known of that so far.
 *
 * @param state   "fresh", "working", or "held" where the plan cannot be read
 * @param reasons of the sentence's numbers
 * @param bounds  what is known before the answer is
 * @param percent of the present stage
 * @param brief   the same in a few words
 * @param kept    when the plan was last kept
 * @param shape   of the form that the page shows
 */
public record AnswerView(
        String state,
        String heading,
        String sentence,
        List<Reason> reasons,
        List<String> bounds,
        int percent,
        String stage,
        List<String> troubles,
        String brief,
        String kept,
        long revision,
        long answered,
        String chosen,
        String shape) {
    public AnswerView {
        reasons = List.copyOf(reasons);
        bounds = List.copyOf(bounds);
        troubles = List.copyOf(troubles);
    }

    public boolean isWorking() {
        return state.equals("working");
    }

    /** What the page shows, so that it is not sent again: the revision that the answer is to, or 0. */
    public long seen() {
        return answered;
    }

    public String chosenInAddress() {
        return chosen.isEmpty() ? "" : "&rig=" + Addresses.of(chosen);
    }

    /**
     * @param question as it stands; null where it cannot be read
     * @param wrong    how many things in it cannot be read
     * @param glimpse  of the rig that the last answer named; null where there is none
     */
    static AnswerView of(
            Standing standing,
            @Nullable Question question,
            int wrong,
            @Nullable Glimpse glimpse,
            long revision,
            String kept,
            String chosen,
            String shape) {
        Answer answer = standing.answer();
        String sentence = answer == null ? "" : Words.sentence(answer);
        List<Reason> reasons = answer == null || answer.medical() ? List.of() : Reasons.of(answer);
        List<String> troubles = standing.trouble().isEmpty() ? List.of() : List.of(standing.trouble());
        if (question == null) {
            String held = wrong == 1
                    ? "One thing below cannot be read; the answer waits for it."
                    : "%d things below cannot be read; the answer waits for them.".formatted(wrong);
            return new AnswerView(
                    "held",
                    answer == null ? "The answer" : "The answer to the plan as it was",
                    answer == null ? held : sentence,
                    reasons,
                    answer == null ? List.of() : List.of(held),
                    0,
                    "",
                    troubles,
                    held,
                    kept,
                    revision,
                    standing.answered(),
                    chosen,
                    shape);
        }
        boolean working = standing.working();
        List<String> bounds = working ? bounds(standing.known(), question, glimpse) : List.of();
        String empty = "Being worked out.";
        return new AnswerView(
                working ? "working" : "fresh",
                working && answer != null
                        ? "The answer to the plan as it was; a new one is being worked out"
                        : "The answer",
                answer == null ? (working ? empty : "No answer yet.") : sentence,
                reasons,
                bounds,
                (int) Math.floor(100 * standing.known().stageShare()),
                stage(standing.known()),
                troubles,
                working ? (bounds.isEmpty() ? empty : bounds.get(0)) : brief(answer),
                kept,
                revision,
                standing.answered(),
                chosen,
                shape);
    }

    private static String brief(@Nullable Answer answer) {
        if (answer == null || answer.rig() == null) {
            return answer == null ? "" : "Nothing meets it.";
        }
        if (answer.medical()) {
            return Words.money(
                            answer.rig().price().totalCents(), answer.question().currency())
                    + "; somebody's health hangs on it: read below.";
        }
        return Words.money(answer.rig().price().totalCents(), answer.question().currency()) + ", carries "
                + Words.of100(answer.rig().proof().share().share());
    }

    private static String stage(Known known) {
        return known.stage().isEmpty() ? "beginning" : known.stage();
    }

    private static List<String> bounds(Known known, Question question, @Nullable Glimpse glimpse) {
        List<String> bounds = new ArrayList<>();
        String currency = question.currency();
        Rated winner = known.winner();
        Rated confirming = known.confirming();
        if (winner != null) {
            bounds.add("Confirmed: the least that will do costs "
                    + Words.money(winner.price().totalCents(), currency) + ": "
                    + winner.rig().words() + ". Its proof is being written.");
        } else if (confirming != null) {
            bounds.add("The least that may do costs "
                    + Words.money(confirming.price().totalCents(), currency) + " and is being confirmed: "
                    + confirming.rig().words() + ".");
        } else if (known.judgedBelowCents() > 0) {
            bounds.add("The least that will do costs " + Words.money(known.judgedBelowCents(), currency) + " or more.");
        }
        if (glimpse != null && winner == null) {
            bounds.add(glimpse(glimpse, question));
        }
        return bounds;
    }

    private static String glimpse(Glimpse glimpse, Question question) {
        String rig = "The rig named before costs " + Words.money(glimpse.cents(), question.currency());
        if (!glimpse.broken().isEmpty()) {
            return rig + " and breaks a rule now: " + glimpse.broken().get(0);
        }
        if (question.medical()) {
            return rig + ".";
        }
        return String.format(
                Locale.ROOT,
                "%s and carries %s%s; asked are %s.",
                rig,
                glimpse.exact() ? "" : "at most ",
                Words.of100(glimpse.atMost()),
                Words.of100(question.asked().targetShare()));
    }
}
