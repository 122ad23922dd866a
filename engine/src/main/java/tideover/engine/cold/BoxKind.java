package tideover.engine.cold;

/** What kinds of box are told apart, with how each is usually set. */
public enum BoxKind {
    CHEST_FREEZER("chest freezer", -18, true),
    UPRIGHT_FREEZER("upright freezer", -18, true),
    REFRIGERATOR("refrigerator", 3, false),
    MEDICINE_FRIDGE("medicine fridge", 5, false),
    COOLER("cooler", 4, false);

    private final String words;
    private final double usualDegC;
    private final boolean freezes;

    BoxKind(String words, double usualDegC, boolean freezes) {
        this.words = words;
        this.usualDegC = usualDegC;
        this.freezes = freezes;
    }

    public String words() {
        return words;
    }

    /** Common setting; common practice, no source. */
    public double usualDegC() {
        return usualDegC;
    }

    /** Whether it keeps its contents frozen. */
    public boolean freezes() {
        return freezes;
    }
}
