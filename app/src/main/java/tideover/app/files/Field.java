package tideover.app.files;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;
import org.snakeyaml.engine.v2.exceptions.Mark;
import org.snakeyaml.engine.v2.nodes.MappingNode;
import org.snakeyaml.engine.v2.nodes.Node;
import org.snakeyaml.engine.v2.nodes.NodeTuple;
import org.snakeyaml.engine.v2.nodes.ScalarNode;
import org.snakeyaml.engine.v2.nodes.SequenceNode;
import org.snakeyaml.engine.v2.nodes.Tag;
import tideover.app.files.Quantities.Measure;
import tideover.engine.why.Basis;

/**
 * One place in a YAML file: a value, or the gap where one should be. Each reader takes the text as it stands in the file
 * (so {@code yes} and {@code 18:00} are what was typed, whatever YAML makes of them), and where it is wrong tells the
 * {@link Reading} and gives a stand-in: NaN, the first choice, an empty text. Items of lists count from 1.
 */
final class Field {
    /** Longer than anything that a person types into one value, and short enough to look at from every side. */
    private static final int LONGEST_VALUE = 5000;

    private final Reading reading;
    private final String file;
    private final String path;
    private final int line;
    private final @Nullable Node node;
    private final Map<String, Field> children = new LinkedHashMap<>();
    private final Set<String> misspelt = new HashSet<>();
    private final boolean excused;

    private Field(Reading reading, String file, String path, int line, @Nullable Node node, boolean excused) {
        this.reading = reading;
        this.file = file;
        this.path = path;
        this.line = line;
        this.node = node;
        this.excused = excused;
    }

    static Field root(Reading reading, String file, Node node) {
        return new Field(reading, file, "", lineOf(node), node, false);
    }

    /** Such as "plan.yaml:14 loads[3].draws". */
    String where() {
        return path.isEmpty() ? source() : source() + " " + path;
    }

    /** File and line, for notes. */
    String source() {
        return file + ":" + line;
    }

    int line() {
        return line;
    }

    /** Something stands here. */
    boolean isPresent() {
        return node != null && !isNothing(node);
    }

    /** Nothing stands here for a reason that was told already. */
    boolean isExcused() {
        return excused;
    }

    boolean isText() {
        return node instanceof ScalarNode;
    }

    boolean isBlock() {
        return node instanceof MappingNode;
    }

    void problem(String found, String expected, String suggestion) {
        reading.problem(where(), found, expected, suggestion);
    }

    /**
     * Opens a block of keys; must come before {@link #child}. A key that is not among the known ones is a problem that
     * offers the nearest; a key that stands twice is one that names both lines.
     */
    Field keys(String... known) {
        return keys(
                List.of(known),
                "a block of keys: " + String.join(", ", known),
                "one of the keys " + String.join(", ", known));
    }

    /**
     * The same of too many keys to list.
     *
     * @param right      the known keys
     * @param blockWords what is expected where there is no block
     * @param otherwise  what is expected where a key is like none of them
     */
    Field keys(List<String> right, String blockWords, String otherwise) {
        if (!isPresent()) {
            tellMissing(blockWords);
            return this;
        }
        if (!(node instanceof MappingNode block)) {
            problem(found(), blockWords, "");
            misspelt.addAll(right);
            return this;
        }
        List<String> absent = new ArrayList<>(right);
        for (NodeTuple pair : block.getValue()) {
            if (pair.getKeyNode() instanceof ScalarNode keyNode) {
                absent.remove(keyNode.getValue().strip());
            }
        }
        for (NodeTuple pair : block.getValue()) {
            int keyLine = lineOf(pair.getKeyNode());
            if (!(pair.getKeyNode() instanceof ScalarNode keyNode)) {
                reading.problem(file + ":" + keyLine, "a list or block as a key", "a word as a key", "");
                continue;
            }
            String key = keyNode.getValue().strip();
            String keyPath = path.isEmpty() ? key : path + "." + key;
            Field earlier = children.get(key);
            if (!right.contains(key)) {
                tellUnknown(keyLine, key, right, absent, otherwise);
            } else if (earlier != null) {
                reading.problem(
                        file + ":" + keyLine + " " + keyPath,
                        Reading.quoted(key) + " a second time",
                        "each key once",
                        "The first stands in line " + earlier.line + ".");
            } else {
                int at = isNothing(pair.getValueNode()) ? keyLine : lineOf(pair.getValueNode());
                // a block or list begins on a later line than its key; its own place is the key's
                int shown = pair.getValueNode() instanceof ScalarNode ? at : keyLine;
                children.put(key, new Field(reading, file, keyPath, shown, pair.getValueNode(), false));
            }
        }
        return this;
    }

    /** A key that is missing is meant sooner than one that stands there already. */
    private void tellUnknown(int keyLine, String key, List<String> right, List<String> absent, String otherwise) {
        Optional<String> nearest =
                reading.isFull() ? Optional.empty() : Nearest.to(key, absent).or(() -> Nearest.to(key, right));
        nearest.ifPresent(misspelt::add);
        reading.problem(
                file + ":" + keyLine + (path.isEmpty() ? "" : " " + path),
                "the key " + Reading.quoted(key),
                nearest.map(word -> "the key \"" + word + "\"").orElse(otherwise),
                nearest.isPresent() ? "Write " + nearest.get() + ":" : "");
    }

    /** The text under a key before {@link #keys} has opened the block, which it may decide; empty where there is none. */
    String glimpse(String key) {
        if (node instanceof MappingNode block) {
            for (NodeTuple pair : block.getValue()) {
                if (pair.getKeyNode() instanceof ScalarNode keyNode
                        && keyNode.getValue().strip().equals(key)
                        && pair.getValueNode() instanceof ScalarNode value) {
                    return Quantities.tidy(value.getValue());
                }
            }
        }
        return "";
    }

    /** The value under a key, or the gap where it would be. */
    Field child(String key) {
        Field child = children.get(key);
        if (child != null) {
            return child;
        }
        String keyPath = path.isEmpty() ? key : path + "." + key;
        // told already: the whole block is missing, or the key is there under a misspelt name
        boolean told = excused || !isPresent() || misspelt.contains(key);
        return new Field(reading, file, keyPath, line, null, told);
    }

    /** The items of a list; a single value counts as a list of one. Empty where nothing stands here. */
    List<Field> items(String expected) {
        if (!isPresent()) {
            tellMissing(expected);
            return List.of();
        }
        if (!(node instanceof SequenceNode list)) {
            if (node instanceof MappingNode) {
                problem(found(), expected, "Begin each item with \"- \".");
                return List.of();
            }
            return List.of(this);
        }
        if (list.getValue().isEmpty()) {
            problem("an empty list", expected, "");
        }
        List<Field> items = new ArrayList<>();
        for (Node item : list.getValue()) {
            items.add(new Field(reading, file, path + "[" + (items.size() + 1) + "]", lineOf(item), item, false));
        }
        return items;
    }

    /** Text on one line, or empty where there is none; then the problem is told. */
    String text(String expected, int longest) {
        return paragraphs(expected, longest).replaceAll("\\s*\n\\s*", " ");
    }

    /** The same with its line breaks. */
    String paragraphs(String expected, int longest) {
        String raw = raw(expected);
        if (raw.codePointCount(0, raw.length()) > longest) {
            problem(Reading.quoted(raw), expected + ", at most " + longest + " letters", "");
            return "";
        }
        if (raw.codePoints().anyMatch(c -> Reading.cannotBeShown(c) && c != '\n')) {
            problem(Reading.quoted(raw), expected + ", without control characters", "");
            return "";
        }
        return raw;
    }

    /** A figure with its unit, in the engine's unit; NaN where wrong. */
    double quantity(Measure measure, Range range) {
        String raw = raw(measure.expected());
        if (raw.isEmpty()) {
            return Double.NaN;
        }
        Quantities.Outcome outcome = Quantities.read(raw, measure);
        if (outcome.wrong()) {
            problem(Reading.quoted(raw), String.valueOf(outcome.expected()), outcome.suggestion());
            return Double.NaN;
        }
        return inRange(outcome.value(), raw, measure.words(), measure.unit(), range);
    }

    /**
     * A figure, or a range of it as in {@code 30-60 W}, in the engine's unit; one of NaN where wrong.
     *
     * @see Span
     */
    Span span(Measure measure, Range range) {
        List<String> ends = Quantities.ends(shown());
        if (ends == null) {
            return Span.of(quantity(measure, range));
        }
        String raw = raw(measure.expected());
        double[] values = new double[2];
        for (int i = 0; i < 2; i++) {
            Quantities.Outcome outcome = Quantities.read(ends.get(i), measure);
            if (outcome.wrong()) {
                boolean noUnit = Quantities.bareNumber(ends.get(1), "").expected() == null;
                problem(
                        Reading.quoted(raw),
                        outcome.expected() + ", or a range of it",
                        noUnit ? "Write " + raw + " " + measure.unit() + "." : outcome.suggestion());
                return Span.of(Double.NaN);
            }
            values[i] = outcome.value();
        }
        if (!(values[0] < values[1])) {
            boolean same = values[0] == values[1];
            problem(
                    Reading.quoted(raw),
                    "the lesser end of the range first",
                    "Write " + (same ? ends.get(0) : ends.get(1) + " to " + ends.get(0)) + ".");
            return Span.of(Double.NaN);
        }
        for (double value : values) {
            if (!range.holds(value)) {
                return Span.of(inRange(value, raw, measure.words(), measure.unit(), range));
            }
        }
        Span span = new Span(values[0], values[1]);
        return Double.isNaN(inRange(span.middle(), raw, measure.words(), measure.unit(), range))
                ? Span.of(Double.NaN)
                : span;
    }

    /** A percentage as a fraction 0..1; NaN where wrong. The range is in percent. */
    double share(Range percent) {
        return quantity(Measure.PERCENT, percent) / 100;
    }

    /** A figure whose unit stands elsewhere; NaN where wrong. */
    double bareNumber(String what, String unit, Range range) {
        String expected = what + ", a number";
        String raw = raw(expected);
        if (raw.isEmpty()) {
            return Double.NaN;
        }
        Quantities.Outcome outcome = Quantities.bareNumber(raw, expected);
        if (outcome.wrong()) {
            problem(Reading.quoted(raw), String.valueOf(outcome.expected()), outcome.suggestion());
            return Double.NaN;
        }
        return inRange(outcome.value(), raw, what, unit, range);
    }

    /** A whole number; {@code least} where wrong. */
    int count(String what, int least, int most) {
        String expected = what + ", a whole number from " + least + " to " + most;
        String raw = raw(expected);
        if (raw.isEmpty()) {
            return least;
        }
        int number = raw.matches("[0-9]{1,6}") ? Integer.parseInt(raw) : -1;
        if (number < least || number > most) {
            problem(Reading.quoted(raw), expected, "");
            return least;
        }
        return number;
    }

    /** A time that must come out as whole hours; {@code range.least()} where wrong. */
    int wholeHours(Range range) {
        double hours = quantity(Measure.TIME, range);
        if (hours != StrictMath.rint(hours)) {
            if (!Double.isNaN(hours)) {
                problem(Reading.quoted(raw("")), "whole hours", "Write " + Math.round(hours) + " h.");
            }
            return (int) range.least();
        }
        return (int) hours;
    }

    /** One of some words; the first of them where wrong. */
    <T> T choice(String what, List<T> choices, Function<T, String> words) {
        List<String> known = choices.stream().map(words).toList();
        String expected = what + ": " + String.join(", ", known);
        String raw = raw(expected);
        if (raw.isEmpty()) {
            return choices.get(0);
        }
        for (T choice : choices) {
            if (words.apply(choice).equalsIgnoreCase(raw)) {
                return choice;
            }
        }
        Optional<String> nearest = Nearest.to(raw, known);
        problem(
                Reading.quoted(raw),
                expected,
                nearest.map(word -> "Write " + word + ".").orElse(""));
        return choices.get(0);
    }

    boolean yesOrNo(String what) {
        return choice(what, List.of("yes", "no"), word -> word).equals("yes");
    }

    /** A price; null where wrong. */
    @Nullable
    Money money(String what) {
        String raw = raw(what + ", such as 35 USD");
        if (raw.isEmpty()) {
            return null;
        }
        Money.Outcome outcome = Money.read(raw);
        if (outcome.money() == null) {
            problem(Reading.quoted(raw), outcome.expected(), outcome.suggestion());
        }
        return outcome.money();
    }

    /** A time of day in hours since midnight; NaN where wrong. */
    double clock() {
        String raw = raw(ClockText.TIME_EXPECTED);
        double hour = ClockText.hour(raw);
        if (Double.isNaN(hour) && !raw.isEmpty()) {
            problem(Reading.quoted(raw), ClockText.TIME_EXPECTED, ClockText.suggestion(raw));
        }
        return hour;
    }

    /** The text as typed, tidied; empty, and told, where there is none. */
    String raw(String expected) {
        if (!isPresent()) {
            tellMissing(expected);
            return "";
        }
        if (!(node instanceof ScalarNode scalar)) {
            problem(found(), expected, "");
            return "";
        }
        String text = Quantities.tidy(scalar.getValue());
        if (text.isEmpty()) {
            problem("an empty text", expected, "");
        }
        if (text.length() > LONGEST_VALUE) {
            problem(Reading.quoted(text), expected + ", at most " + LONGEST_VALUE + " letters", "");
            return "";
        }
        return text;
    }

    /** A block as it was typed, for a note, such as "below -12 degC"; never tells. */
    String blockShown() {
        if (!(node instanceof MappingNode block)) {
            return shown();
        }
        List<String> shown = new ArrayList<>();
        for (NodeTuple pair : block.getValue()) {
            if (pair.getKeyNode() instanceof ScalarNode keyNode) {
                String key = keyNode.getValue().strip();
                shown.add((key + " " + child(key).listShown()).strip());
            }
        }
        return String.join(", ", shown);
    }

    /** The text for a note; never tells. */
    String shown() {
        return node instanceof ScalarNode scalar ? Quantities.tidy(scalar.getValue()) : "";
    }

    /** The items of a list for a note, such as "1.2, 2.3"; never tells. */
    String listShown() {
        if (!(node instanceof SequenceNode list)) {
            return shown();
        }
        List<String> shown = new ArrayList<>();
        for (Node item : list.getValue()) {
            shown.add(item instanceof ScalarNode scalar ? Quantities.tidy(scalar.getValue()) : "");
        }
        return String.join(", ", shown);
    }

    void note(String name, Basis basis) {
        reading.note(name, shown(), basis, source());
    }

    void caution(String sentence) {
        reading.caution(where() + ": " + sentence);
    }

    private double inRange(double value, String raw, String what, String unit, Range range) {
        if (!range.holds(value)) {
            problem(Reading.quoted(raw), what + " " + range.words(unit), "");
            return Double.NaN;
        }
        if (!range.likely(value)) {
            caution(raw + " is taken, but is unlikely here (most lie within " + range.likelyWords(unit) + ").");
        }
        return value;
    }

    private void tellMissing(String expected) {
        if (excused) {
            reading.silentFlaw();
            return;
        }
        int dot = path.lastIndexOf('.');
        String key = dot < 0 ? path : path.substring(dot + 1);
        String parent = dot < 0 ? "" : " " + path.substring(0, dot);
        boolean item = key.endsWith("]");
        reading.problem(
                item ? where() : source() + parent,
                item || path.isEmpty() ? "nothing" : "no \"" + key + ":\"",
                expected,
                "");
    }

    private String found() {
        return node instanceof MappingNode
                ? "a block of keys"
                : node instanceof SequenceNode ? "a list" : Reading.quoted(shown());
    }

    private static boolean isNothing(Node node) {
        return node instanceof ScalarNode scalar
                && scalar.isPlain()
                && (scalar.getTag().equals(Tag.NULL) || scalar.getValue().isEmpty());
    }

    private static int lineOf(Node node) {
        return node.getStartMark().map(Mark::getLine).orElse(0) + 1;
    }
}
