package tideover.engine.answer;

import java.util.List;
import org.jspecify.annotations.Nullable;
import tideover.engine.proof.CarriedShare;
import tideover.engine.search.Rated;
import tideover.engine.wiring.Price;

/**
 * Buying in two steps, nothing bought thrown away: first the best share for the money that is there now; then, of all rigs that
 * contain the first, the best share for what is added later. Beside them what both sums would have bought in one step.
 *
 * @param years      weather years of the shares
 * @param nowCents   most that the first step may cost
 * @param laterCents most that the addition may cost
 * @param first      null where no rig within the first sum keeps every rule and carries an outage
 * @param second     null where there is no first; the first again, at no cost, where no addition is better
 * @param together   the best share for both sums in one step; null where there is none
 * @param firstMet   where the target is first met
 */
public record Steps(
        Question question,
        Options options,
        int years,
        long nowCents,
        long laterCents,
        @Nullable Step first,
        @Nullable Step second,
        @Nullable Whole together,
        Met firstMet,
        String weather,
        List<String> cautions) {
    public Steps {
        cautions = List.copyOf(cautions);
    }

    /** When the target is first met, other years and storm starts with it where they are asked. */
    public enum Met {
        AT_ONCE,
        LATER,
        NEVER
    }

    /**
     * One step.
     *
     * @param rig   all that is there after it, with the price of all of it bought at once
     * @param paid  what this step costs
     * @param meets whether what is there meets the target
     */
    public record Step(ProvenRig rig, Price paid, boolean meets) {}

    /**
     * What both sums would buy at once.
     *
     * @param confirmed on other years; null where the weather cannot be drawn again
     */
    public record Whole(
            Rated rig, CarriedShare share, @Nullable CarriedShare confirmed, boolean meets) {}

    /** Whether the second step adds nothing. */
    public boolean addsNothing() {
        return first != null
                && second != null
                && first.rig().rig().id().equals(second.rig().rig().id());
    }

    /** How much more of the outages one step would carry, 0..1; below 0 never but for nothing found. */
    public double lostToSteps() {
        return together == null || second == null
                ? Double.NaN
                : together.share().share() - second.rig().proof().share().share();
    }

    /** Whether somebody's health hangs on a load: then no step is shown as a target met. */
    public boolean medical() {
        return question.medical();
    }
}
