package tideover.engine.proof;

/** Why an essential need first went unserved. */
public enum Ending {
    EMPTY("the store was empty, or down to the depth it may be used"),
    VOLTS("the store's volts under load fell to the cut-off"),
    CURRENT("the loads took more current than the store gives"),
    START("a motor could not be started"),
    FROZEN("the battery froze"),
    CHARGED_COLD("the battery was charged below freezing");

    private final String words;

    Ending(String words) {
        this.words = words;
    }

    public String words() {
        return words;
    }
}
