package tideover.app.files;

import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.snakeyaml.engine.v2.api.LoadSettings;
import org.snakeyaml.engine.v2.api.lowlevel.Compose;
import org.snakeyaml.engine.v2.api.lowlevel.Parse;
import org.snakeyaml.engine.v2.events.AliasEvent;
import org.snakeyaml.engine.v2.events.CollectionEndEvent;
import org.snakeyaml.engine.v2.events.CollectionStartEvent;
import org.snakeyaml.engine.v2.events.DocumentStartEvent;
import org.snakeyaml.engine.v2.events.Event;
import org.snakeyaml.engine.v2.events.NodeEvent;
import org.snakeyaml.engine.v2.events.ScalarEvent;
import org.snakeyaml.engine.v2.exceptions.Mark;
import org.snakeyaml.engine.v2.exceptions.MarkedYamlEngineException;
import org.snakeyaml.engine.v2.exceptions.YamlEngineException;
import org.snakeyaml.engine.v2.nodes.Node;

/**
 * From YAML text to a root {@link Field}. Only the plain part of YAML is taken: keys, lists and texts. Aliases (which
 * can blow a small file up), tags, several documents in one file and deep nesting are refused before anything is built.
 */
final class YamlFile {
    private static final int MOST_DEPTH = 12;

    private YamlFile() {}

    /** The root, or null where the text is no such file; then the problem stands in {@code reading}. */
    static @Nullable Field root(Reading reading, String file, String text) {
        LoadSettings settings = LoadSettings.builder()
                .setLabel(file)
                .setCodePointLimit(FileText.MOST_BYTES + 1)
                .build();
        try {
            if (!isPlain(reading, file, new Parse(settings).parseString(text))) {
                return null;
            }
            Optional<Node> root = new Compose(settings).composeString(text);
            if (root.isEmpty()) {
                reading.problem(file, "an empty file", "keys and values", "");
                return null;
            }
            return Field.root(reading, file, root.get());
        } catch (MarkedYamlEngineException e) {
            int line = e.getProblemMark().map(Mark::getLine).orElse(0) + 1;
            tell(reading, file + ":" + line, text, line, String.valueOf(e.getProblem()));
        } catch (YamlEngineException e) {
            reading.problem(file, "characters that cannot stand in YAML", "plain text", "Look for pasted symbols.");
        }
        return null;
    }

    private static void tell(Reading reading, String where, String text, int line, String said) {
        String typed = text.lines().skip(Math.max(0, line - 1L)).findFirst().orElse("");
        if (typed.contains("\t")) {
            reading.problem(where, "a tab", "spaces to indent with", "Replace the tab by spaces.");
            return;
        }
        reading.problem(
                where,
                Reading.quoted(typed.strip()) + " (" + said + ")",
                "YAML: \"key: value\", the same indent for keys of one block, \"- \" before each item of a list",
                "Look at this line and the one above it. A text with \": \" or \" #\" inside needs quotes around it.");
    }

    /** False, with the problems told, where the text uses what we do not take. */
    private static boolean isPlain(Reading reading, String file, Iterable<Event> events) {
        int depth = 0;
        int documents = 0;
        int before = reading.problemCount();
        for (Event event : events) {
            String where = file + ":" + (event.getStartMark().map(Mark::getLine).orElse(0) + 1);
            if (event instanceof DocumentStartEvent && ++documents > 1) {
                reading.problem(where, "a second document", "one document in the file", "Remove the line \"---\".");
                return false;
            }
            if (event instanceof AliasEvent) {
                reading.problem(
                        where, "an alias (*)", "each value written out", "Put a text that begins with * in quotes.");
            } else if (event instanceof NodeEvent node && node.getAnchor().isPresent()) {
                reading.problem(
                        where, "an anchor (&)", "each value written out", "Put a text that begins with & in quotes.");
            }
            boolean tagged =
                    event instanceof ScalarEvent scalar && scalar.getTag().isPresent()
                            || event instanceof CollectionStartEvent start
                                    && start.getTag().isPresent();
            if (tagged) {
                reading.problem(where, "a tag (!)", "plain values", "Put a text that begins with ! in quotes.");
            }
            if (event instanceof CollectionStartEvent && ++depth > MOST_DEPTH) {
                reading.problem(where, "blocks nested more than " + MOST_DEPTH + " deep", "a flat file", "");
                return false;
            }
            if (event instanceof CollectionEndEvent) {
                depth--;
            }
        }
        return reading.problemCount() == before;
    }
}
