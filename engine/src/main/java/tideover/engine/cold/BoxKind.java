package tideover.engine.cold;

/** What kinds of box are told apart, with how each is usually set. */
public enum BoxKind {
    CHEST_FREEZER("chest freezer", -18, 6, true),
    UPRIGHT_FREEZER("upright freezer", -18, 6, true),
    REFRIGERATOR("refrigerator", 3, 3, false),
    MEDICINE_FRIDGE("medicine fridge", 5, 3, false),
    COOLER("cooler", 4, 3, false);

    private final String words;
    private final double usualDegC;
    private final double usualBandK;
    private final boolean freezes;

    BoxKind(String words, double usualDegC, double usualBandK, boolean freezes) {
        this.words = words;
        this.usualDegC = usualDegC;
        this.usualBandK = usualBandK;
        this.freezes = freezes;
    }

    public String words() {
        return words;
    }

    /** Common setting; common practice, no source. */
    public double usualDegC() {
        return usualDegC;
    }

    /**
     * Air and liner move by so much between the thermostat's switching off and on, the contents far less; common practice, no
     * source.
     */
    public double usualBandK() {
        return usualBandK;
    }

    /** Whether it keeps its contents frozen. */
    public boolean freezes() {
        return freezes;
    }
}
