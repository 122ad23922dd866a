package tideover.engine.answer;

import java.util.List;
import org.jspecify.annotations.Nullable;
import tideover.engine.proof.CarriedShare;
import tideover.engine.search.Rated;

/**
 * What stands beside the winner, so that nobody takes the cheapest for the only one.
 *
 * @param choice     the safer and the lighter of those that cost about the same; null where there is no winner or no near tie
 * @param steadiness who wins in other draws of the weather; null where there is no winner or weather cannot be drawn again
 * @param lean       the winner's share with a fifth less sun and a store a fifth smaller at once; null where there is no winner
 * @param nextStep   the cheapest single change that lifts it; null where nothing fails or nothing could be changed
 * @param massFront  rigs than which none is both lighter and better, lightest first; null unless it was asked for
 */
public record Beside(
        @Nullable Choice choice,
        @Nullable Steadiness steadiness,
        @Nullable CarriedShare lean,
        @Nullable NextStep nextStep,
        @Nullable List<Rated> massFront) {
    public static final Beside NOTHING = new Beside(null, null, null, null, null);

    /** What is left of sun and store in {@code lean}. */
    public static final double LEAN_TIMES = 0.8;

    Beside with(List<Rated> byMass) {
        return new Beside(choice, steadiness, lean, nextStep, byMass);
    }

    public Beside {
        massFront = massFront == null ? null : List.copyOf(massFront);
    }
}
