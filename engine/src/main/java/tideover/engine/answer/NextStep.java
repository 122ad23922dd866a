package tideover.engine.answer;

import org.jspecify.annotations.Nullable;
import tideover.engine.rig.Rig;
import tideover.engine.wiring.Price;

/**
 * The cheapest single change among the parts on the list that lifts a rig by a real step, all rules kept. For one that meets the
 * target a real step is half of what still fails, and a hundredth at least, or all of it; for one that misses it, the target. Shares
 * are of the first weather years; one that is to meet a missed target was confirmed on the others as well.
 *
 * @param from       the rig that is changed: the winner, the given rig, or the nearest miss
 * @param fromCents  its price
 * @param fromShare  what it carries, 0..1
 * @param goalShare  what was asked of the change
 * @param tried      how many single changes keep every rule and cost more
 * @param found      the cheapest that reaches the goal; null where none does
 * @param followed   false where so many had to be walked in full that the search was given up before its end
 */
public record NextStep(
        Rig from,
        long fromCents,
        double fromShare,
        double goalShare,
        int tried,
        @Nullable Change found,
        boolean followed) {
    /**
     * @param words         the change, such as "one more Foo panel, 2 in all"
     * @param share         what it carries then
     * @param overBudget    whether it costs more than the plan's budget
     */
    public record Change(String words, Rig rig, Price price, double share, boolean overBudget) {}

    /** Whether the rig meets the target already, so that the step is a gain beyond it. */
    public boolean isBeyondTarget(double target) {
        return fromShare >= target && goalShare > target;
    }
}
