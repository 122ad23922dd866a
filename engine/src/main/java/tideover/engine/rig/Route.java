package tideover.engine.rig;

/** The way a rig is put together. */
public enum Route {
    READY_BOX("ready-made box", 0.002),
    ENCLOSURE("enclosure with a battery dropped in", 0.004),
    SEPARATE_PARTS("separate parts", 0.006);

    private final String words;
    private final double leadOhm;

    Route(String words, double leadOhm) {
        this.words = words;
        this.leadOhm = leadOhm;
    }

    /**
     * A guess until lengths are known: some decimetres of heavy cable within a box; a metre of 16 mm2 each way, 1.2 mohm a
     * metre (IEC 60228 class 5), with a fuse and four joints between separate parts.
     */
    double leadOhm() {
        return leadOhm;
    }

    public String words() {
        return words;
    }
}
