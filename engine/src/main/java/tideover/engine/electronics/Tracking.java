package tideover.engine.electronics;

/** How a charge controller holds the panels. */
public enum Tracking {
    /** Seeks the panels' best operating point (MPPT). */
    BEST_POINT("tracks the best point (MPPT)"),
    /** Joins the panels to the battery by pulses, so that they work at the battery's volts (PWM). */
    AT_STORE_VOLTS("holds the panels at the battery's volts (PWM)"),
    /** Not stated: its efficiency stands for everything. */
    UNKNOWN("kind not stated");

    private final String words;

    Tracking(String words) {
        this.words = words;
    }

    public String words() {
        return words;
    }
}
