package tideover.engine.rig;

/** The way a rig is put together. */
public enum Route {
    READY_BOX("ready-made box", 0.002),
    ENCLOSURE("enclosure with a battery dropped in", 0.004),
    SEPARATE_PARTS("separate parts", 0.006);

    private final String words;
    private final double guessedLeadOhm;

    Route(String words, double guessedLeadOhm) {
        this.words = words;
        this.guessedLeadOhm = guessedLeadOhm;
    }

    /**
     * Until a rig is wired, and for what its maker has wired inside: some decimetres of heavy cable within a box; a metre of 16 mm2 each way, 1.2 mohm a
     * metre (IEC 60228 class 5), with a fuse and four joints between separate parts.
     */
    public double guessedLeadOhm() {
        return guessedLeadOhm;
    }

    public String words() {
        return words;
    }
}
