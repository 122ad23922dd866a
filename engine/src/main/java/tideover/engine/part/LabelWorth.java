package tideover.engine.part;

import tideover.engine.battery.Chemistry;
import tideover.engine.part.RatedStore.Worth;

/**
 * What a battery's label is worth while nobody has measured it: share of the rated capacity that is really there. Common
 * practice, no source. Only a full discharge tells; {@link Worth#measured} then takes the table's place.
 */
public final class LabelWorth {
    static final Worth NEW_OF_KNOWN_MAKER = new Worth(.95, 1.0);
    static final Worth NEW_OF_UNKNOWN_MAKER = new Worth(.80, .95);
    static final Worth USED_LEAD = new Worth(.50, .75);
    static final Worth USED_LITHIUM = new Worth(.60, .80);

    private LabelWorth() {}

    /**
     * What one can count on, and the middle of what is seen. What lay on a shelf counts as used: nobody knows how it was kept.
     *
     * @param makerKnown whether the maker's labels are known to hold; does not help a used one
     */
    public static Worth unmeasured(Chemistry chemistry, Condition condition, boolean makerKnown) {
        if (condition == Condition.NEW) {
            return makerKnown ? NEW_OF_KNOWN_MAKER : NEW_OF_UNKNOWN_MAKER;
        }
        return chemistry.isLead() ? USED_LEAD : USED_LITHIUM;
    }
}
