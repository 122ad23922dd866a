package tideover.app.report;

import java.util.Locale;
import org.jspecify.annotations.Nullable;
import tideover.engine.answer.Answer;
import tideover.engine.answer.Question;
import tideover.engine.answer.Way;

/** What is said of the way that costs least where that is no rig. */
final class WayWords {
    private WayWords() {}

    /** The first sentences of an answer. */
    static String sentence(Answer answer, Way least) {
        Question question = answer.question();
        String price = Words.money(least.price().totalCents(), question.currency());
        String what = least.kind() == Way.Kind.NOTHING
                ? "nothing to plug into, doors shut, and a thermometer for each cold box"
                : WaysTable.parts(least) + (least.withoutPower() ? ", no battery" : ", without a battery");
        long besideCents = least.price().totalCents() - least.price().partsCents();
        if (least.withoutPower() && least.kind() != Way.Kind.NOTHING && besideCents > 0) {
            what += " (" + PriceWords.bare(besideCents) + " of it for what belongs to it, thermometers above all)";
        }
        String words = "The least that will do costs " + price + ": " + what + ". It carries "
                + Words.of100(least.share()) + " " + Words.outages(question) + ".";
        if (answer.rig() != null) {
            words += " The cheapest rig that does so too costs "
                    + Words.money(answer.rig().price().totalCents(), question.currency())
                    + ". What is told below of a rig is told of that one.";
        }
        return least.kind() == Way.Kind.NOTHING ? words : words + loss(answer);
    }

    /** What buying nothing risks; empty where the plan tells no worth. */
    static String loss(Answer answer) {
        Way nothing = nothing(answer);
        if (nothing == null || Double.isNaN(nothing.expectedLossCents())) {
            return "";
        }
        return String.format(
                Locale.ROOT,
                " With nothing bought %s is kept, and food worth %s spoils in the mean outage.",
                Words.of100(nothing.share()),
                Words.money(
                        Math.round(nothing.expectedLossCents()),
                        answer.question().currency()));
    }

    private static @Nullable Way nothing(Answer answer) {
        return answer.ways().stream()
                .filter(way -> way.kind() == Way.Kind.NOTHING)
                .findFirst()
                .orElse(null);
    }
}
