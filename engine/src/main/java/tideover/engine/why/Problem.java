package tideover.engine.why;

/**
 * One thing a person typed wrong.
 *
 * @param where      file, line and field, such as {@code plan.yaml:14 loads[2].watts}
 * @param found      what stood there
 * @param expected   what would have been right
 * @param suggestion what to do, or empty
 */
public record Problem(String where, String found, String expected, String suggestion) {
    public String sentence() {
        String tail = suggestion.isEmpty() ? "" : " " + suggestion;
        return where + ": found " + found + ", expected " + expected + "." + tail;
    }
}
