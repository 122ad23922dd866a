package tideover.engine.battery;

/** What a battery is made of, as far as it behaves differently. */
public enum Chemistry {
    FLOODED_LEAD("flooded lead-acid"),
    GEL_LEAD("gel lead-acid"),
    AGM_LEAD("AGM lead-acid"),
    IRON_PHOSPHATE("lithium iron phosphate"),
    OTHER_LITHIUM("other lithium-ion");

    private final String words;

    Chemistry(String words) {
        this.words = words;
    }

    /** As a sentence writes it. */
    public String words() {
        return words;
    }

    public boolean isLead() {
        return !isLithium();
    }

    public boolean isLithium() {
        return this == IRON_PHOSPHATE || this == OTHER_LITHIUM;
    }

    /** How a cell of it usually behaves. */
    public CellTraits traits() {
        return CellTraits.of(this);
    }
}
