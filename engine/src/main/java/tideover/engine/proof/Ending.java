package tideover.engine.proof;

/** Why an essential need first went unserved, or was no longer kept. */
public enum Ending {
    EMPTY("the store was empty, or down to the depth it may be used"),
    VOLTS("the store's volts under load fell to the cut-off"),
    CURRENT("the loads took more current than the store gives"),
    START("a motor could not be started"),
    FROZEN("the battery froze"),
    CHARGED_COLD("the battery was charged below freezing"),
    THAWED("frozen food got too warm or began to thaw"),
    TOO_WARM("what is kept cool was too warm"),
    TOO_COLD("what is kept cool was too cold"),
    AGENCY_HOURS("a cold box was without power for longer than the food-safety agencies allow"),
    FLOODED("a pit ran over"),
    ROOM_COLD("a room got too cold");

    private final String words;

    Ending(String words) {
        this.words = words;
    }

    public String words() {
        return words;
    }
}
