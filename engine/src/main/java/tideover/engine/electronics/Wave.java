package tideover.engine.electronics;

/** The form of an inverter's alternating volts. A modified one is a stepped block with a pause at zero. */
public enum Wave {
    SINE("sine wave"),
    MODIFIED("modified wave"),
    UNKNOWN("wave not stated");

    private final String words;

    Wave(String words) {
        this.words = words;
    }

    public String words() {
        return words;
    }
}
