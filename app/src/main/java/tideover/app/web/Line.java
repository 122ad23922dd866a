package tideover.app.web;

import java.util.List;
import org.jspecify.annotations.Nullable;
import tideover.engine.why.MarginNote;

/**
 * One thing that can be typed on the sheet: a place in the plan's text.
 *
 * @param path     of the value in the plan
 * @param id       of its field on the page
 * @param label    the key's words
 * @param value    as it stands in the plan; empty where it is left out
 * @param hint     what may be typed, by example
 * @param choices  the words that may stand here; empty where it is free
 * @param rows     lines of text to show; 1 for a single line
 * @param troubles what is wrong with it, in whole sentences
 * @param note     where the figure comes from; null where nothing is noted
 */
public record Line(
        String path,
        String id,
        String label,
        String value,
        String hint,
        List<String> choices,
        int rows,
        List<String> troubles,
        @Nullable MarginNote note) {
    private static final int LEAST_CHARS = 4;
    private static final int MOST_CHARS = 46;

    public Line {
        choices = List.copyOf(choices);
        troubles = List.copyOf(troubles);
    }

    public boolean isWrong() {
        return !troubles.isEmpty();
    }

    /** Width of the field in letters. */
    public int chars() {
        int letters = Math.max(value.length(), value.isEmpty() ? hint.length() : 0) + 1;
        return Math.max(LEAST_CHARS, Math.min(MOST_CHARS, letters));
    }

    /** Address of a place in the plan as the id of an element. */
    public static String idOf(String path) {
        return "at-" + path.replaceAll("[^A-Za-z0-9]+", "-");
    }
}
