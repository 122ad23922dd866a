package tideover.engine.site;

/** Where appliances, batteries and people are. */
public enum RoomKind {
    INDOORS("indoors"),
    GARAGE("garage"),
    SHED("shed"),
    OUTDOORS("outdoors");

    private final String words;

    RoomKind(String words) {
        this.words = words;
    }

    public String words() {
        return words;
    }
}
