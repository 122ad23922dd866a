package tideover.engine.proof;

import org.jspecify.annotations.Nullable;

/**
 * Walks outages of one rig, one at a time; an object belongs to one thread. Inside a step sun and demand are constant;
 * whatever switches does so at its instant inside the step.
 *
 * <p>Order of service: essential loads from the sun, then from the store. Nice-to-have loads get sun that the store
 * cannot take; above the keep-back level also the store itself. Below that level they never take from an essential.
 */
interface Walk {
    /** Makes a stretch of weather ready; outages start within it. */
    void onto(Stretch stretch);

    /**
     * Hours until the first essential need goes unserved, or {@code capHours}.
     *
     * @param startHour of the stretch
     * @param lowestWh  one element: the lowest store within the first {@code judgedHours}, 0 where it failed in them
     */
    double hoursCarried(int startHour, int capHours, int judgedHours, double[] lowestWh);

    /**
     * Walks the whole outage with every flow accounted for, on past an interruption.
     *
     * @param tape called after each step with the ledger so far, or null
     * @return hours until the first essential need goes unserved, or {@code hours}
     */
    double account(int startHour, int hours, Ledger ledger, @Nullable Tape tape);

    /** Why the outage walked last first failed; null where it did not. */
    @Nullable
    Ending ending();

    /** How many things switch themselves beside the store. */
    default int keepers() {
        return 0;
    }

    /** One of them as it is now. */
    default KeptNow kept(int number) {
        throw new IllegalArgumentException("nothing is kept here");
    }

    /**
     * Something that switches itself, at one moment.
     *
     * @param kept   temperature of what is kept, degC, or litres in a pit
     * @param airDegC of the air around it; the same where there is none
     * @param plugWh drawn since the outage began
     * @param darkH  hours since then without power at its plug, or held back by its owner
     * @param whole  whether its need has been kept so far
     */
    record KeptNow(double kept, double airDegC, double plugWh, double darkH, boolean whole) {}

    /** Listens to a walk. */
    interface Tape {
        void after(int stepOfOutage, boolean panelsOut, Ledger soFar);
    }
}
