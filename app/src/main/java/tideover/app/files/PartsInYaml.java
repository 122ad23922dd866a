package tideover.app.files;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * A list of parts in YAML, the keys of each named as the columns of a table are. A figure stands alone, in the unit that
 * its key tells, or carries a unit; what holds several things in one cell may be a list.
 */
final class PartsInYaml {
    private static final String EXAMPLE = "such as - kind: battery, and under it id, name, price and the other keys";

    private PartsInYaml() {}

    /** False where nothing of it can be taken; then that is told. */
    static boolean read(Reading reading, String name, String text, PartsTable.Form form, PartsTable.Taker taker) {
        Field root = YamlFile.root(reading, name, text);
        if (root == null) {
            return false;
        }
        for (Field item : root.items("a list of parts, " + EXAMPLE)) {
            int before = reading.flaws();
            item.keys(
                    form.columns(),
                    "a part, " + EXAMPLE,
                    "a key that " + form.words() + " has; " + form.docs() + " lists them");
            boolean whole = item.isBlock() || reading.flaws() == before;
            if (!taker.take(row(reading, name, item, form), whole)) {
                return true;
            }
        }
        return true;
    }

    private static Row row(Reading reading, String name, Field item, PartsTable.Form form) {
        Map<String, String> cells = new LinkedHashMap<>();
        Map<String, Integer> lines = new HashMap<>();
        Set<String> excused = new HashSet<>();
        for (String column : form.columns()) {
            Field value = item.child(column);
            if (value.isExcused()) {
                excused.add(column);
            } else if (value.isPresent()) {
                lines.put(column, value.line());
                String cell = cell(value);
                if (cell.isEmpty()) {
                    excused.add(column);
                }
                cells.put(column, cell);
            }
        }
        return Row.ofKeys(reading, name, item.line(), cells, excused, lines);
    }

    /** The items of a list as one cell of a table has them. */
    private static String cell(Field value) {
        List<String> texts = new ArrayList<>();
        for (Field one : value.items("a text, a figure or a list of texts")) {
            if (one.isText()) {
                texts.add(one.shown());
            } else {
                one.problem("a list or a block of keys", "a text or a figure", "");
            }
        }
        return String.join("; ", texts);
    }
}
