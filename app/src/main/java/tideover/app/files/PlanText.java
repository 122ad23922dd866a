package tideover.app.files;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.StringJoiner;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;
import org.snakeyaml.engine.v2.common.FlowStyle;
import org.snakeyaml.engine.v2.common.ScalarStyle;
import org.snakeyaml.engine.v2.exceptions.Mark;
import org.snakeyaml.engine.v2.nodes.MappingNode;
import org.snakeyaml.engine.v2.nodes.Node;
import org.snakeyaml.engine.v2.nodes.NodeTuple;
import org.snakeyaml.engine.v2.nodes.ScalarNode;
import org.snakeyaml.engine.v2.nodes.SequenceNode;
import tideover.engine.why.InputProblems;
import tideover.engine.why.Problem;

/**
 * A plan's text that can be changed value by value, while everything else in it, remarks and order included, stays as it was
 * typed. A place is written as in problems: {@code loads[2].draws}, {@code outage.lasts}, items counted from 1. Every change is
 * read again and compared with what it was meant to do before it counts. Immutable.
 */
public final class PlanText {
    /** A value is shown and typed in one field. */
    private static final int LONGEST_VALUE = 4000;

    /** Keys under which commas part the items of a list. */
    private static final Set<String> LISTS = Set.of(
            "months", "hours", "engine hours", "links", "peak sun hours", "mean temperature", "parts", "small parts");

    private static final Pattern SEGMENT = Pattern.compile("([^.\\[\\]]+)((?:\\[\\d{1,4}\\])*)(?:\\.|$)");
    private static final String FILE = "plan.yaml";

    private final String text;
    private final List<String> lines;
    private final MappingNode root;

    private PlanText(String text, MappingNode root) {
        this.text = text;
        this.lines = List.of(text.split("\n", -1));
        this.root = root;
    }

    /** Throws {@code InputProblems} where the text is no plain YAML with keys. */
    public static PlanText of(String yaml) {
        Reading reading = new Reading();
        String text = yaml.replace("\r\n", "\n").replace('\r', '\n').replace("\uFEFF", "");
        Node node = YamlFile.node(reading, FILE, text);
        reading.throwIfWrong();
        if (!(node instanceof MappingNode mapping)) {
            throw new InputProblems(new Problem(FILE, "a text without keys", "a plan: keys and values", ""));
        }
        return new PlanText(text.endsWith("\n") ? text : text + "\n", mapping);
    }

    public String text() {
        return text;
    }

    // --- reading

    /** One step of a path: a key, or the place of an item, from 1. */
    private record Step(String key, int item) {}

    private static List<Step> steps(String path) {
        List<Step> steps = new ArrayList<>();
        Matcher matcher = SEGMENT.matcher(path);
        int end = 0;
        while (end < path.length() && matcher.find(end) && matcher.start() == end) {
            steps.add(new Step(matcher.group(1), 0));
            for (String item : matcher.group(2).split("[\\[\\]]+")) {
                if (!item.isEmpty()) {
                    steps.add(new Step("", counted(path, item)));
                }
            }
            end = matcher.end();
        }
        if (steps.isEmpty() || end < path.length() || path.endsWith(".")) {
            throw refused("the place \"" + cut(path) + "\"", "a place in the plan, such as outage.lasts");
        }
        return steps;
    }

    private static int counted(String path, String item) {
        int number = Integer.parseInt(item);
        if (number == 0) {
            throw refused("the place \"" + cut(path) + "\"", "items counted from 1");
        }
        return number;
    }

    private static InputProblems refused(String found, String expected) {
        return new InputProblems(new Problem(FILE, found, expected, ""));
    }

    private static String cut(String text) {
        String plain = text.replaceAll("\\p{Cntrl}", " ");
        return plain.length() > 60 ? plain.substring(0, 60) + "…" : plain;
    }

    private @Nullable Node find(List<Step> steps) {
        Node at = root;
        for (Step step : steps) {
            at = child(at, step);
            if (at == null) {
                return null;
            }
        }
        return at;
    }

    private static @Nullable Node child(Node node, Step step) {
        if (step.item() > 0) {
            return node instanceof SequenceNode list
                            && step.item() <= list.getValue().size()
                    ? list.getValue().get(step.item() - 1)
                    : null;
        }
        NodeTuple entry = entry(node, step.key());
        return entry == null ? null : entry.getValueNode();
    }

    private static @Nullable NodeTuple entry(@Nullable Node node, String key) {
        if (node instanceof MappingNode mapping) {
            for (NodeTuple tuple : mapping.getValue()) {
                if (tuple.getKeyNode() instanceof ScalarNode name
                        && name.getValue().equals(key)) {
                    return tuple;
                }
            }
        }
        return null;
    }

    /** What stands at a place, as one would type it into one field; empty where nothing does. */
    public Optional<String> get(String path) {
        Node node = find(steps(path));
        return node == null ? Optional.empty() : Optional.of(shown(node));
    }

    private static String shown(Node node) {
        if (node instanceof ScalarNode scalar) {
            return scalar.getValue().strip().replaceAll("\\s*\n\\s*", " ");
        }
        if (node instanceof SequenceNode list
                && list.getValue().stream()
                        .allMatch(item -> item instanceof ScalarNode one
                                && !one.getValue().contains(","))) {
            StringJoiner joined = new StringJoiner(", ");
            list.getValue().forEach(item -> joined.add(shown(item)));
            return joined.toString();
        }
        return flow(node);
    }

    private static String flow(Node node) {
        if (node instanceof ScalarNode scalar) {
            return inFlow(scalar.getValue().strip());
        }
        if (node instanceof SequenceNode list) {
            StringJoiner joined = new StringJoiner(", ", "[", "]");
            list.getValue().forEach(item -> joined.add(flow(item)));
            return joined.toString();
        }
        StringJoiner joined = new StringJoiner(", ", "{", "}");
        if (node instanceof MappingNode mapping) {
            mapping.getValue()
                    .forEach(entry -> joined.add(flow(entry.getKeyNode()) + ": " + flow(entry.getValueNode())));
        }
        return joined.toString();
    }

    /** How many items a list has; 0 where there is none, 1 where a single value stands in its place. */
    public int count(String path) {
        Node node = find(steps(path));
        return node instanceof SequenceNode list ? list.getValue().size() : node == null ? 0 : 1;
    }

    /** Line on which the value at a place begins, from 1; 0 where there is none. */
    public int line(String path) {
        List<Step> steps = steps(path);
        Step last = steps.get(steps.size() - 1);
        Node parent = find(steps.subList(0, steps.size() - 1));
        NodeTuple entry = last.item() > 0 ? null : entry(parent, last.key());
        return entry == null ? 0 : mark(entry.getKeyNode(), true).getLine() + 1;
    }

    // --- changing

    /** The same with another value at a place; keys on the way are made where they are missing. */
    public PlanText with(String path, String value) {
        List<Step> steps = steps(path);
        Step last = steps.get(steps.size() - 1);
        String typed = tidy(value);
        refuseTwice(steps);
        Node held = find(steps);
        boolean isList = last.item() == 0 && (LISTS.contains(last.key()) || held instanceof SequenceNode);
        String yaml = last.item() > 0 ? scalar(typed, isInFlow(steps)) : yaml(typed, isList, isInFlow(steps));
        String changed = held == null ? inserted(steps, yaml) : replaced(steps, held, yaml);
        return checked(changed, steps, yaml);
    }

    private static String tidy(String value) {
        String plain = value.replaceAll("[\\s\u0085]+", " ")
                .replaceAll("[\\p{Cntrl}\\x80-\\x9F\\p{Cs}\uFEFF\uFFFE\uFFFF]", "")
                .strip();
        if (plain.length() > LONGEST_VALUE) {
            throw refused(plain.length() + " letters", "at most " + LONGEST_VALUE);
        }
        return plain;
    }

    /** Whether commas and brackets part values where this place is. */
    private boolean isInFlow(List<Step> steps) {
        for (int depth = 0; depth < steps.size(); depth++) {
            Node node = find(steps.subList(0, depth));
            if (node != null && isFlow(node)) {
                return true;
            }
        }
        return false;
    }

    /** Of two keys with one name nobody can tell which one is meant. */
    private void refuseTwice(List<Step> steps) {
        for (int depth = 0; depth < steps.size(); depth++) {
            String key = steps.get(depth).key();
            if (find(steps.subList(0, depth)) instanceof MappingNode mapping
                    && mapping.getValue().stream()
                                    .filter(entry -> entry.getKeyNode() instanceof ScalarNode name
                                            && name.getValue().equals(key))
                                    .count()
                            > 1) {
                throw refused(
                        "the key \"" + cut(key) + "\" twice in one block",
                        "each key once; take one of the two out of the plan file, then bring it in again");
            }
        }
    }

    /** How a typed value is written. */
    private static String yaml(String typed, boolean isList, boolean inFlow) {
        if (typed.startsWith("{") || typed.startsWith("[")) {
            Reading reading = new Reading();
            Node node = YamlFile.node(reading, FILE, "value: " + typed + "\n");
            if (node instanceof MappingNode one
                    && one.getValue().size() == 1
                    && !(one.getValue().get(0).getValueNode() instanceof ScalarNode)) {
                String flow = flow(one.getValue().get(0).getValueNode());
                boolean once = flow.equals(flowOf(tree(one.getValue().get(0).getValueNode())));
                return once ? flow : scalar(typed, inFlow);
            }
            return scalar(typed, inFlow);
        }
        if (isList && typed.contains(",")) {
            StringJoiner joined = new StringJoiner(", ", "[", "]").setEmptyValue("");
            for (String item : typed.split(",")) {
                if (!item.isBlank()) {
                    joined.add(inFlow(item.strip()));
                }
            }
            String list = joined.toString();
            return list.isEmpty() ? scalar(typed, inFlow) : list;
        }
        return scalar(typed, inFlow);
    }

    private static String inFlow(String value) {
        return scalar(value, true);
    }

    /** Plain where YAML then reads the same, else between quotes. */
    private static String scalar(String value, boolean inFlow) {
        boolean plain = !value.isEmpty() && isReadAs(inFlow ? "[" + value + "]" : value, value, inFlow);
        return plain ? value : quoted(value);
    }

    private static String quoted(String value) {
        StringBuilder out = new StringBuilder("\"");
        value.codePoints().forEach(c -> {
            if (c == '\n') {
                out.append("\\n");
            } else if (c == '"' || c == '\\') {
                out.append('\\').appendCodePoint(c);
            } else if (c < 0x20
                    || (c >= 0x7F && c < 0xA0)
                    || (c >= 0xD800 && c <= 0xDFFF)
                    || (c >= 0xFFFE && c <= 0xFFFF)) {
                out.append(String.format(Locale.ROOT, "\\u%04x", c));
            } else {
                out.appendCodePoint(c);
            }
        });
        return out.append('"').toString();
    }

    private static boolean isReadAs(String yaml, String value, boolean inFlow) {
        Node node = YamlFile.node(new Reading(), FILE, "value: " + yaml + "\n");
        if (!(node instanceof MappingNode mapping) || mapping.getValue().size() != 1) {
            return false;
        }
        Node read = mapping.getValue().get(0).getValueNode();
        if (inFlow) {
            read = read instanceof SequenceNode list && list.getValue().size() == 1
                    ? list.getValue().get(0)
                    : mapping;
        }
        return read instanceof ScalarNode scalar && scalar.getValue().equals(value);
    }

    private static Mark mark(Node node, boolean start) {
        return (start ? node.getStartMark() : node.getEndMark())
                .orElseThrow(() -> new IllegalStateException("a node without a place"));
    }

    private int offset(Mark mark) {
        return text.offsetByCodePoints(0, mark.getIndex());
    }

    private static boolean isFlow(Node node) {
        return (node instanceof MappingNode mapping && mapping.getFlowStyle() == FlowStyle.FLOW)
                || (node instanceof SequenceNode list && list.getFlowStyle() == FlowStyle.FLOW);
    }

    private String replaced(List<Step> steps, Node held, String yaml) {
        boolean block = !isFlow(held)
                && (!(held instanceof ScalarNode)
                        || mark(held, false).getLine() > mark(held, true).getLine());
        if (!block) {
            String before = text.substring(0, offset(mark(held, true)));
            return before + (before.endsWith(":") ? " " : "") + yaml + text.substring(offset(mark(held, false)));
        }
        Step last = steps.get(steps.size() - 1);
        Node parent = find(steps.subList(0, steps.size() - 1));
        NodeTuple entry = last.item() > 0 ? null : entry(parent, last.key());
        if (entry == null || isFlow(parent == null ? root : parent)) {
            return withParentInFlow(steps, yaml);
        }
        int keyEnd = offset(mark(entry.getKeyNode(), false));
        int end = endOf(entry);
        return text.substring(0, keyEnd) + ": " + yaml + "\n" + from(end);
    }

    /** A flow block written anew with one change in it. */
    private String withParentInFlow(List<Step> steps, @Nullable String yaml) {
        for (int depth = 0; depth < steps.size(); depth++) {
            Node node = find(steps.subList(0, depth));
            if (node != null && isFlow(node)) {
                Object tree = tree(node);
                set(tree, steps.subList(depth, steps.size()), yaml == null ? null : treeOf(yaml));
                return text.substring(0, offset(mark(node, true)))
                        + flowOf(tree)
                        + text.substring(offset(mark(node, false)));
            }
        }
        throw refused("a place that cannot be changed by itself", "a single value");
    }

    private static String flowOf(@Nullable Object tree) {
        if (tree instanceof Map<?, ?> map) {
            StringJoiner joined = new StringJoiner(", ", "{", "}");
            map.forEach((key, value) -> joined.add(inFlow(String.valueOf(key)) + ": " + flowOf(value)));
            return joined.toString();
        }
        if (tree instanceof List<?> list) {
            StringJoiner joined = new StringJoiner(", ", "[", "]");
            list.forEach(item -> joined.add(flowOf(item)));
            return joined.toString();
        }
        return inFlow(String.valueOf(tree));
    }

    /** First line, from 0, that no longer belongs to a key and its value. */
    private int endOf(NodeTuple entry) {
        Mark key = mark(entry.getKeyNode(), true);
        return Math.max(endOfBlock(key.getLine(), key.getColumn()), lastLine(entry.getValueNode()) + 1);
    }

    /** Where indents tell nothing: brackets and quotes may go on further left. */
    private static int lastLine(Node node) {
        if (!isFlow(node) && node instanceof MappingNode mapping) {
            List<NodeTuple> all = mapping.getValue();
            return lastLine(all.get(all.size() - 1).getValueNode());
        }
        if (!isFlow(node) && node instanceof SequenceNode list) {
            return lastLine(list.getValue().get(list.getValue().size() - 1));
        }
        boolean isBlock = node instanceof ScalarNode scalar
                && (scalar.getScalarStyle() == ScalarStyle.LITERAL || scalar.getScalarStyle() == ScalarStyle.FOLDED);
        return mark(node, isBlock).getLine();
    }

    /** First line, from 0, that no longer belongs to a key's block. */
    private int endOfBlock(int keyLine, int keyColumn) {
        int end = keyLine + 1;
        for (int line = keyLine + 1; line < lines.size(); line++) {
            String one = lines.get(line);
            String bare = one.strip();
            int indent = one.length() - one.stripLeading().length();
            boolean item = indent == keyColumn && bare.startsWith("- ");
            if (bare.isEmpty() || (bare.startsWith("#") && indent <= keyColumn)) {
                continue;
            }
            if (indent <= keyColumn && !item) {
                break;
            }
            end = line + 1;
        }
        return end;
    }

    private String from(int line) {
        return String.join("\n", lines.subList(Math.min(line, lines.size()), lines.size()));
    }

    private String until(int line) {
        return line == 0 ? "" : String.join("\n", lines.subList(0, line)) + "\n";
    }

    private String inserted(List<Step> steps, String yaml) {
        int depth = steps.size() - 1;
        while (depth > 0 && find(steps.subList(0, depth)) == null) {
            depth--;
        }
        Node parent = depth == 0 ? root : find(steps.subList(0, depth));
        List<Step> missing = steps.subList(depth, steps.size());
        if (missing.stream().anyMatch(step -> step.item() > 0)) {
            throw refused("an item that is not there", "one of the items");
        }
        if (!(parent instanceof MappingNode mapping)) {
            throw refused("a value where keys would have to stand", "a block of keys");
        }
        if (isFlow(mapping)) {
            return withParentInFlow(steps, yaml);
        }
        NodeTuple first = mapping.getValue().get(0);
        NodeTuple last = mapping.getValue().get(mapping.getValue().size() - 1);
        int column = mark(first.getKeyNode(), true).getColumn();
        int at = endOf(last);
        StringBuilder block = new StringBuilder();
        for (int i = 0; i < missing.size(); i++) {
            block.append(" ".repeat(column + 2 * i))
                    .append(scalar(missing.get(i).key(), false))
                    .append(':');
            block.append(i + 1 < missing.size() ? "\n" : " " + yaml + "\n");
        }
        return until(at) + block + from(at);
    }

    /** The same without what stands at a place; nothing changes where there is nothing. */
    public PlanText without(String path) {
        List<Step> steps = steps(path);
        Node held = find(steps);
        if (held == null) {
            return this;
        }
        refuseTwice(steps);
        Step last = steps.get(steps.size() - 1);
        List<Step> above = steps.subList(0, steps.size() - 1);
        Node parent = above.isEmpty() ? root : find(above);
        if (parent == null) {
            return this;
        }
        if (isInFlow(steps)) {
            boolean only =
                    parent instanceof MappingNode block && block.getValue().size() == 1;
            return only && !above.isEmpty() && above.get(above.size() - 1).item() == 0
                    ? without(parentPath(path))
                    : checked(withParentInFlow(steps, null), steps, null);
        }
        int first;
        int column;
        if (last.item() > 0) {
            first = mark(held, true).getLine();
            String line = lines.get(first);
            column = line.length() - line.stripLeading().length();
            if (!line.stripLeading().startsWith("- ")) {
                throw refused("an item that does not begin its line", "a list, an item a line");
            }
            if (parent instanceof SequenceNode list && list.getValue().size() == 1) {
                throw refused("the last item of a list", "at least one to be left");
            }
        } else {
            NodeTuple entry = entry(parent, last.key());
            Mark key = mark(entry == null ? held : entry.getKeyNode(), true);
            first = key.getLine();
            column = key.getColumn();
            boolean begins = lines.get(first).stripLeading().startsWith("- ");
            boolean alone =
                    parent instanceof MappingNode mapping && mapping.getValue().size() == 1;
            if (alone && !above.isEmpty() && !begins) {
                return without(parentPath(path));
            }
            if (begins || alone) {
                return checked(replaced(steps, held, "\"\""), steps, "\"\"");
            }
        }
        NodeTuple gone = last.item() > 0 ? null : entry(parent, last.key());
        int end = gone == null ? Math.max(endOfItem(first, column), lastLine(held) + 1) : endOf(gone);
        return checked(until(first) + from(end), steps, null);
    }

    private static String parentPath(String path) {
        return path.substring(0, path.lastIndexOf('.'));
    }

    private int endOfItem(int first, int column) {
        int end = first + 1;
        for (int line = first + 1; line < lines.size(); line++) {
            String one = lines.get(line);
            int indent = one.length() - one.stripLeading().length();
            if (one.isBlank()) {
                continue;
            }
            if (indent <= column) {
                break;
            }
            end = line + 1;
        }
        // The empty line that parted it from the next goes with it.
        boolean parted = end < lines.size() - 1 && lines.get(end).isBlank();
        return parted ? end + 1 : end;
    }

    /** The same with one more item at the end of a list; the block is YAML without indent. */
    public PlanText adding(String path, String block) {
        List<Step> steps = steps(path);
        refuseTwice(steps);
        Node held = find(steps);
        String changed;
        if (held == null) {
            if (steps.size() != 1) {
                throw refused("a list that is not there", "a list");
            }
            changed = text + "\n" + steps.get(0).key() + ":\n" + item(block, 2);
        } else if (isNothing(held) && steps.size() == 1 && !isFlow(root)) {
            NodeTuple entry = Objects.requireNonNull(entry(root, steps.get(0).key()));
            changed = text.substring(0, offset(mark(entry.getKeyNode(), false)))
                    + ":\n"
                    + item(block, mark(entry.getKeyNode(), true).getColumn() + 2)
                    + from(endOf(entry));
        } else if (held instanceof SequenceNode list && !isInFlow(steps) && !isFlow(list)) {
            Node lastItem = list.getValue().get(list.getValue().size() - 1);
            int itemLine = mark(lastItem, true).getLine();
            String line = lines.get(itemLine);
            int column = line.length() - line.stripLeading().length();
            if (!line.stripLeading().startsWith("- ")) {
                throw refused("an item that does not begin its line", "a list, an item a line");
            }
            int end = Math.max(endOfItem(itemLine, column), lastLine(lastItem) + 1);
            while (end > 0 && lines.get(end - 1).isBlank()) {
                end--;
            }
            changed = until(end) + "\n" + item(block, column) + from(end);
        } else {
            throw refused("no list of blocks", "a list, an item a line");
        }
        PlanText added = of(changed);
        Object expected = tree(root);
        Object one = treeOf("\n" + block.indent(2));
        if (held == null || isNothing(held)) {
            @SuppressWarnings("unchecked")
            Map<String, Object> map = (Map<String, Object>) expected;
            map.put(steps.get(0).key(), new ArrayList<>(List.of(one)));
        } else {
            appendTo(expected, steps, one);
        }
        return same(added, expected);
    }

    private static boolean isNothing(Node node) {
        return (node instanceof ScalarNode scalar
                        && scalar.getScalarStyle() == ScalarStyle.PLAIN
                        && scalar.getValue().isEmpty())
                || (node instanceof SequenceNode list && list.getValue().isEmpty());
    }

    private static String item(String block, int column) {
        List<String> typed = block.strip().lines().toList();
        StringBuilder out = new StringBuilder();
        for (int i = 0; i < typed.size(); i++) {
            out.append(" ".repeat(column))
                    .append(i == 0 ? "- " : "  ")
                    .append(typed.get(i))
                    .append('\n');
        }
        return out.toString();
    }

    // --- seeing that a change did what it was meant to and nothing else

    private PlanText checked(String changed, List<Step> steps, @Nullable String yaml) {
        Object expected = tree(root);
        set(expected, steps, yaml == null ? null : treeOf(yaml));
        return same(of(changed), expected);
    }

    private static PlanText same(PlanText changed, Object expected) {
        if (!tree(changed.root).equals(expected)) {
            throw new IllegalStateException("a change of the plan's text did something else than it was meant to");
        }
        return changed;
    }

    private static Object treeOf(String yaml) {
        Node node = YamlFile.node(new Reading(), FILE, "value: " + yaml + "\n");
        if (node instanceof MappingNode mapping && mapping.getValue().size() == 1) {
            return tree(mapping.getValue().get(0).getValueNode());
        }
        throw refused("a value that is no YAML", "a value");
    }

    /** Maps, lists and texts. */
    private static Object tree(Node node) {
        if (node instanceof MappingNode mapping) {
            Map<String, Object> map = new LinkedHashMap<>();
            mapping.getValue()
                    .forEach(entry -> map.put(
                            entry.getKeyNode() instanceof ScalarNode key ? key.getValue() : "",
                            tree(entry.getValueNode())));
            return map;
        }
        if (node instanceof SequenceNode sequence) {
            List<Object> list = new ArrayList<>();
            sequence.getValue().forEach(item -> list.add(tree(item)));
            return list;
        }
        return node instanceof ScalarNode scalar ? scalar.getValue() : "";
    }

    @SuppressWarnings("unchecked")
    private static void set(Object tree, List<Step> steps, @Nullable Object value) {
        Object at = tree;
        for (int i = 0; i < steps.size(); i++) {
            Step step = steps.get(i);
            boolean last = i == steps.size() - 1;
            if (step.item() > 0) {
                List<Object> list = (List<Object>) at;
                if (!last) {
                    at = list.get(step.item() - 1);
                } else if (value == null) {
                    list.remove(step.item() - 1);
                } else {
                    list.set(step.item() - 1, value);
                }
            } else {
                Map<String, Object> map = (Map<String, Object>) at;
                if (!last) {
                    at = map.computeIfAbsent(step.key(), key -> new LinkedHashMap<String, Object>());
                } else if (value == null) {
                    map.remove(step.key());
                } else {
                    map.put(step.key(), value);
                }
            }
        }
    }

    @SuppressWarnings("unchecked")
    private static void appendTo(Object tree, List<Step> steps, Object item) {
        Object at = tree;
        for (Step step : steps) {
            at = Objects.requireNonNull(
                    step.item() > 0
                            ? ((List<Object>) at).get(step.item() - 1)
                            : ((Map<String, Object>) at).get(step.key()));
        }
        ((List<Object>) at).add(item);
    }
}
