package tideover.engine.proof;

import org.jspecify.annotations.Nullable;

/**
 * Something that switches itself by what it keeps, followed beside the store: a cold box, a pit, a heated home. Between two
 * switchings its draw is steady. Belongs to one thread.
 */
interface Keeper {
    /** A switching so near is now, h. */
    double INSTANT_H = 1e-12;

    /** Makes a stretch of weather ready. */
    void onto(Stretch stretch);

    /** Puts it where its life on the grid is at that hour. */
    void begin(int hourOfStretch);

    /**
     * A step begins; what is outside stays the same through it.
     *
     * @param hourOfOutage since its start
     * @param arrayW       what the panels can give
     * @param gridOn       whether the grid is there: then nobody holds it back
     */
    void step(int hourOfStretch, int stepOfDay, double hourOfOutage, double arrayW, boolean gridOn);

    /** Whether its owner lets it run in this step. */
    boolean allowed();

    /** Watts at its plug from now on, were there power. */
    double plugW();

    /** Whether its motor runs from now on, were there power. */
    boolean motor();

    /** Whether it would start its motor now. */
    boolean starting();

    /**
     * Hours until it switches, or something else changes in it.
     *
     * @param most hours that are of interest
     * @param live whether there is power at its plug
     */
    double untilSwitchH(double most, boolean live);

    /** Time goes on, at most until it switches. */
    void pass(double hours, boolean live);

    /** Why its need is broken; null while it is kept. */
    @Nullable
    Ending broken();

    /** Whether it still lives as on the grid. */
    default boolean asOnGrid() {
        return false;
    }

    /** Whether what it keeps is outside its limits now. */
    boolean uneasy();

    /** What it keeps: mean temperature of the contents or the room, degC, or litres in the pit. */
    double kept();

    /** Of the air around the contents where there is any, degC; else what it keeps. */
    double air();

    /** Heat or water that came in less what went out since the beginning, less what is more in it now: 0 but for rounding. */
    double imbalance();

    /** How many figures tell all of its state. */
    int figures();

    void save(double[] figures, int from);

    void restore(double[] figures, int from);

    /** Told once its figures were put back in the middle of a life: its books begin here. */
    void restored();
}
