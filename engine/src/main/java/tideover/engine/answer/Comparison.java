package tideover.engine.answer;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import tideover.engine.part.Part;
import tideover.engine.proof.CarriedShare;
import tideover.engine.rig.Assembly;
import tideover.engine.rig.Chosen;
import tideover.engine.rig.Rig;

/**
 * Two questions with their answers, and how the rig of each does under the other.
 *
 * @param firstUnderSecond null where there is no such rig or its parts are not all on the other list
 */
public record Comparison(
        Answer first,
        Answer second,
        @Nullable Answer firstUnderSecond,
        @Nullable Answer secondUnderFirst) {
    /** Answers both, one after the other. The currencies must be the same. */
    public static Comparison of(Question first, Question second, Options options, Progress progress) {
        if (!first.currency().equals(second.currency())) {
            throw new IllegalArgumentException(first.currency() + " and " + second.currency());
        }
        Skies skies = new Skies();
        Answer one = Advisor.size(first, options, skies, progress);
        Answer other = Advisor.size(second, options, skies, progress);
        return new Comparison(
                one, other, under(one, second, options, progress), under(other, first, options, progress));
    }

    private static @Nullable Answer under(Answer of, Question question, Options options, Progress progress) {
        ProvenRig proven = of.rig();
        Rig rig = proven == null ? null : listed(proven.rig(), question.parts());
        return rig == null ? null : Advisor.prove(question, rig, options, progress);
    }

    /** Of another list's parts, by their ids; null where one is missing, of another kind, or not there so often. */
    private static @Nullable Rig listed(Rig rig, List<Part> parts) {
        List<Chosen> chosen = new ArrayList<>();
        for (Chosen one : rig.chosen()) {
            Optional<Part> same = parts.stream()
                    .filter(part ->
                            part.listing().id().equals(one.part().listing().id())
                                    && part.kind().equals(one.part().kind())
                                    && part.listing().atHand() >= one.count())
                    .findFirst();
            if (same.isEmpty()) {
                return null;
            }
            chosen.add(new Chosen(same.get(), one.count()));
        }
        return Assembly.of(chosen).rig();
    }

    /** Whether the intervals of both shares have a share in common; false where there is no rig. */
    public boolean intervalsOverlap() {
        ProvenRig one = first.rig();
        ProvenRig other = second.rig();
        if (one == null || other == null) {
            return false;
        }
        CarriedShare a = one.proof().share();
        CarriedShare b = other.proof().share();
        return a.low() <= b.high() && b.low() <= a.high();
    }
}
