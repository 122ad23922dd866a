package tideover.app.files;

import java.math.BigDecimal;
import java.math.MathContext;
import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;
import tideover.engine.why.Stated;

/**
 * One row of a parts file, or one part of such a list in YAML, read cell by cell under the names of its columns. Like {@link Field}: what is wrong is told
 * to the {@link Reading}, and a stand-in is given.
 */
final class Row {
    /** Finer than any figure on a label, and free of what turning units leaves behind. */
    private static final MathContext SETTLED = new MathContext(9);

    /** Longer than any cell needs to be, and short enough to look at from every side. */
    private static final int LONGEST_CELL = 2000;

    private final Reading reading;
    private final String file;
    private final long line;
    private final Map<String, String> cells;
    private final Set<String> excused;
    private final @Nullable Map<String, Integer> lines;
    private final Set<String> asked = new HashSet<>();

    /**
     * @param cells   tidied text by column
     * @param excused columns that the file lacks and that were told with its header
     */
    Row(Reading reading, String file, long line, Map<String, String> cells, Set<String> excused) {
        this(reading, file, line, cells, excused, null);
    }

    private Row(
            Reading reading,
            String file,
            long line,
            Map<String, String> cells,
            Set<String> excused,
            @Nullable Map<String, Integer> lines) {
        this.reading = reading;
        this.file = file;
        this.line = line;
        this.cells = cells;
        this.excused = excused;
        this.lines = lines;
    }

    /**
     * A part as keys with their values, where a figure may carry its unit.
     *
     * @param excused keys that are told of already
     * @param lines   where each key stands
     */
    static Row ofKeys(
            Reading reading,
            String file,
            long line,
            Map<String, String> cells,
            Set<String> excused,
            Map<String, Integer> lines) {
        return new Row(reading, file, line, cells, excused, lines);
    }

    /** Whether it is written as keys, not as a row of cells. */
    boolean isOfKeys() {
        return lines != null;
    }

    /** Puts what a key says into the form that a cell of a table has; a cell has it already. */
    void settle(String column, String cell) {
        if (lines != null) {
            cells.put(column, cell);
        }
    }

    /** What was typed, by column, without empty cells; figures with a unit in the form of a table. */
    Map<String, String> typed() {
        Map<String, String> typed = new LinkedHashMap<>();
        cells.forEach((column, text) -> {
            if (!text.isEmpty()) {
                typed.put(column, text);
            }
        });
        return typed;
    }

    Reading reading() {
        return reading;
    }

    /** Flaws of the whole reading so far; a record may be built from what was read since only while this stands still. */
    int flaws() {
        return reading.flaws();
    }

    /** File and line, such as "parts.csv:12". */
    String source() {
        return file + ":" + line;
    }

    String where(String column) {
        long at = lines == null ? line : lines.getOrDefault(column, (int) line);
        return file + ":" + at + " " + column;
    }

    boolean has(String column) {
        return !cell(column).isEmpty();
    }

    boolean hasAny(List<String> columns) {
        return columns.stream().anyMatch(this::has);
    }

    /** The first of some columns that is filled. */
    Optional<String> firstOf(List<String> columns) {
        return columns.stream().filter(this::has).findFirst();
    }

    /** The text, or empty where the cell is. Marks the column as used. */
    String cell(String column) {
        asked.add(column);
        return cells.getOrDefault(column, "");
    }

    String text(String column, String expected, int longest) {
        String text = cell(column);
        if (text.isEmpty()) {
            tellEmpty(column, expected);
        } else if (text.codePointCount(0, text.length()) > longest) {
            problem(column, Reading.quoted(text), expected + ", at most " + longest + " letters", "");
        } else if (text.codePoints().anyMatch(c -> Reading.cannotBeShown(c) && c != '\n' && c != '\r')) {
            problem(column, Reading.quoted(text), expected + ", without control characters", "");
        }
        // a line break inside a quoted cell is a space to us
        return text.replaceAll("\\s+", " ");
    }

    /** A number in the unit that the column's name says; NaN where wrong. */
    double number(String column, String what, String unit, Range range) {
        String text = cell(column);
        if (text.isEmpty()) {
            tellEmpty(column, what + ", " + range.words(unit));
            return Double.NaN;
        }
        Quantities.Outcome outcome =
                lines == null ? Quantities.bareNumber(text, what) : Quantities.maybeWithUnit(text, what, unit);
        if (outcome.wrong()) {
            problem(column, Reading.quoted(text), what + ", " + range.words(unit), outcome.suggestion());
            return Double.NaN;
        }
        double value = outcome.value();
        if (lines != null) {
            settle(
                    column,
                    new BigDecimal(value).round(SETTLED).stripTrailingZeros().toPlainString());
        }
        if (!range.holds(value)) {
            boolean share = unit.equals("%") && value > 0 && value <= 1;
            boolean sign = range.most() <= 0 && range.holds(-value);
            problem(
                    column,
                    Reading.quoted(text),
                    what + ", " + range.words(unit),
                    share
                            ? "Write " + Range.shown(100 * value, "") + " for " + Range.shown(100 * value, "%") + "."
                            : sign ? "What falls is negative: write -" + text + "." : "");
            return Double.NaN;
        }
        if (!range.likely(value)) {
            reading.caution(where(column) + ": " + Range.shown(value, unit)
                    + " is taken, but is unlikely (most lie within " + range.likelyWords(unit) + ").");
        }
        return value;
    }

    /** A number where the cell may stay empty: NaN then, as where it is wrong. */
    double numberIfAny(String column, String what, String unit, Range range) {
        return has(column) ? number(column, what, unit, range) : Double.NaN;
    }

    /** A number that goes with another: needed where that one is there. */
    double numberWith(boolean needed, String column, String what, String unit, Range range) {
        return needed ? number(column, what, unit, range) : numberIfAny(column, what, unit, range);
    }

    /** What a maker says of a trait; an empty cell is as good as "unknown". */
    Stated stated(String column, String what) {
        String word = has(column) ? choice(column, what, List.of("yes", "no", "unknown")) : null;
        return word == null ? Stated.UNKNOWN : Stated.valueOf(word.toUpperCase(Locale.ROOT));
    }

    /** A whole number; {@code least} where wrong. */
    int count(String column, String what, int least, int most) {
        String expected = what + ", a whole number from " + least + " to " + most;
        String text = cell(column);
        if (text.isEmpty()) {
            tellEmpty(column, expected);
            return least;
        }
        int number = text.matches("[0-9]{1,6}") ? Integer.parseInt(text) : -1;
        if (number < least || number > most) {
            problem(column, Reading.quoted(text), expected, "");
            return least;
        }
        return number;
    }

    /** One of some words; null where wrong. */
    @Nullable
    String choice(String column, String what, List<String> words) {
        String expected = what + ": " + String.join(", ", words);
        String text = cell(column);
        if (text.isEmpty()) {
            tellEmpty(column, expected);
            return null;
        }
        for (String word : words) {
            if (word.equalsIgnoreCase(text)) {
                return word;
            }
        }
        Optional<String> nearest = Nearest.to(text, words);
        problem(
                column,
                Reading.quoted(text),
                expected,
                nearest.map(word -> "Write " + word + ".").orElse(""));
        return null;
    }

    /** One of some things by its words; null where wrong. */
    <T> @Nullable T choice(String column, String what, List<T> choices, Function<T, String> words) {
        List<String> known = choices.stream().map(words).toList();
        String word = choice(column, what, known);
        return word == null ? null : choices.get(known.indexOf(word));
    }

    /** A day; null where wrong. */
    @Nullable
    LocalDate date(String column, String what) {
        String expected = what + ", such as 2026-03-14";
        String text = cell(column);
        if (text.isEmpty()) {
            tellEmpty(column, expected);
            return null;
        }
        try {
            LocalDate date = LocalDate.parse(text);
            if (date.getYear() >= 1980 && date.getYear() < 2200) {
                return date;
            }
        } catch (DateTimeParseException e) {
            // told below, with the years that are out of the question
        }
        problem(column, Reading.quoted(text), expected, "Year, month and day with two digits each.");
        return null;
    }

    void problem(String column, String found, String expected, String suggestion) {
        reading.problem(where(column), found, expected, suggestion);
    }

    void caution(String column, String sentence) {
        reading.caution(where(column) + ": " + sentence);
    }

    void tellEmpty(String column, String expected) {
        if (excused.contains(column)) {
            reading.silentFlaw();
        } else {
            problem(column, lines == null ? "an empty cell" : "no \"" + column + ":\"", expected, "");
        }
    }

    /** False, with the problem told, where some cell is so long that none of the row is worth reading. */
    boolean isOfPlainLength() {
        boolean plain = true;
        for (Map.Entry<String, String> cell : cells.entrySet()) {
            if (cell.getValue().length() > LONGEST_CELL) {
                problem(
                        cell.getKey(),
                        Reading.quoted(cell.getValue()),
                        "at most " + LONGEST_CELL + " letters",
                        "Look for a quote (\") that is opened and not closed.");
                plain = false;
            }
        }
        return plain;
    }

    /** Tells of every filled cell that nobody asked for. */
    void tellUnused(String kind) {
        cells.forEach((column, text) -> {
            if (!text.isEmpty() && !asked.contains(column)) {
                problem(
                        column,
                        Reading.quoted(text),
                        lines == null
                                ? "an empty cell: this column is not for a part of kind " + kind
                                : "no such key: it is not for a part of kind " + kind,
                        "");
            }
        });
    }
}
