package tideover.engine.rig;

/** The way a rig is put together. */
public enum Route {
    READY_BOX("ready-made box"),
    ENCLOSURE("enclosure with a battery dropped in"),
    SEPARATE_PARTS("separate parts");

    private final String words;

    Route(String words) {
        this.words = words;
    }

    public String words() {
        return words;
    }
}
