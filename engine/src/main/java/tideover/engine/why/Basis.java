package tideover.engine.why;

/** How far a number can be trusted. */
public enum Basis {
    PUBLISHED("published"),
    MAKER("maker's figure"),
    MEASURED("measured"),
    COMMON_PRACTICE("common practice, no source"),
    FROM_MEMORY("from memory, not confirmed"),
    YOURS("your figure"),
    GUESS("assumed");

    private final String words;

    Basis(String words) {
        this.words = words;
    }

    public String words() {
        return words;
    }
}
