package tideover.engine.answer;

import tideover.engine.search.Find;

/** Told what is being done, how far it is and what has been found; asked whether to go on. */
public interface Progress {
    Progress SILENT = (stage, share) -> {};

    /** @param share of the stage done, 0..1 */
    void at(String stage, double share);

    /** A rig that has come to light; steps of the front come cheapest first. */
    default void found(Find find) {}

    /** Every rig that costs less has been judged: the answer, if it is still out, costs at least this. */
    default void judgedBelow(long cents) {}

    /**
     * Asked at every round from any thread. Once it says so, the asking ends with {@link tideover.engine.quantity.Stopped}; what is
     * known by then has been told here.
     */
    default boolean stop() {
        return false;
    }
}
