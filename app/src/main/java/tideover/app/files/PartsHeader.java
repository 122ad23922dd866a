package tideover.app.files;

import de.siegmar.fastcsv.reader.CsvRecord;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/** What the first row says of the others. */
final class PartsHeader {
    private static final int MOST_COLUMNS = 1000;

    private final List<String> columnAt;
    private final Set<String> missing;

    private PartsHeader(List<String> columnAt, Set<String> missing) {
        this.columnAt = columnAt;
        this.missing = missing;
    }

    int width() {
        return columnAt.size();
    }

    static @Nullable PartsHeader read(Reading reading, String file, CsvRecord record, PartsTable.Form form) {
        String where = file + ":" + record.getStartingLineNumber();
        List<String> typed = record.getFields();
        if (typed.size() == 1 && (typed.get(0).contains(";") || typed.get(0).contains("\t"))) {
            reading.problem(
                    where,
                    "a header without commas",
                    "comma-separated values",
                    "Save the table with commas between cells.");
            return null;
        }
        if (typed.stream().map(Quantities::tidy).noneMatch(form.columns()::contains)) {
            reading.problem(
                    where,
                    "no header",
                    "the names of the columns in the first row, such as " + String.join(",", form.needed()),
                    "");
            return null;
        }
        if (typed.size() > MOST_COLUMNS) {
            reading.problem(where, typed.size() + " columns", "at most " + MOST_COLUMNS, "");
            return null;
        }
        List<String> columnAt = new ArrayList<>();
        Set<String> seen = new HashSet<>();
        for (String cell : typed) {
            String word = Quantities.tidy(cell);
            String column =
                    form.columns().contains(word) ? word : told(reading, where, word, columnAt.size() + 1, form);
            if (!column.isEmpty() && !seen.add(column)) {
                reading.problem(where, "the column \"" + column + "\" twice", "each column once", "");
                column = "";
            }
            columnAt.add(column);
        }
        Set<String> missing = new HashSet<>(form.columns());
        missing.removeAll(seen);
        for (String needed : form.needed()) {
            if (missing.contains(needed)) {
                reading.problem(
                        where, "no column \"" + needed + "\"", "a header with " + String.join(",", form.needed()), "");
            }
        }
        missing.retainAll(form.needed()); // of these every row would complain; others are told where a kind needs them
        return new PartsHeader(columnAt, missing);
    }

    /** Tells of an unknown column and reads on under the nearest known name. */
    private static String told(Reading reading, String where, String word, int position, PartsTable.Form form) {
        Optional<String> nearest = Nearest.to(word, form.columns());
        reading.problem(
                where,
                word.isEmpty() ? "column " + position + " without a name" : "the column " + Reading.quoted(word),
                nearest.map(right -> "the column \"" + right + "\"")
                        .orElse("a column that " + form.words() + " has; " + form.docs() + " lists them"),
                nearest.map(right -> "Write " + right + ".").orElse(""));
        return nearest.orElse("");
    }

    Row row(Reading reading, String file, CsvRecord record) {
        Map<String, String> cells = new LinkedHashMap<>();
        for (int i = 0; i < Math.min(columnAt.size(), record.getFieldCount()); i++) {
            if (!columnAt.get(i).isEmpty()) {
                cells.put(columnAt.get(i), Quantities.tidy(record.getField(i)));
            }
        }
        return new Row(reading, file, record.getStartingLineNumber(), cells, missing);
    }
}
