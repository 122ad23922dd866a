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
import org.snakeyaml.engine.v2.exceptions.ReaderException;
import org.snakeyaml.engine.v2.exceptions.YamlEngineException;
import org.snakeyaml.engine.v2.nodes.Node;

/**
 * From YAML text to a root {@link Field}. Only the plain part of YAML is taken: keys, lists and texts. Aliases (which
 * can blow a small file up), tags, several documents in one file and deep nesting are refused before anything is built.
 */
final class YamlFile {
    private static final int MOST_DEPTH = 12;

    /** The library copies all of a long value whenever it has read so many letters more. */
    private static final int BUFFER = 32_768;

    private YamlFile() {}

    /** The root, or null where the text is no such file; then the problem stands in {@code reading}. */
    static @Nullable Field root(Reading reading, String file, String text) {
        Node node = node(reading, file, text);
        return node == null ? null : Field.root(reading, file, node);
    }

    /** The same before it is a field. */
    static @Nullable Node node(Reading reading, String file, String text) {
        LoadSettings settings = LoadSettings.builder()
                .setLabel(file)
                .setCodePointLimit(FileText.MOST_BYTES + 1)
                .setBufferSize(BUFFER)
                .setAllowNonScalarKeys(true) // refused below, with their line
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
            return root.get();
        } catch (MarkedYamlEngineException e) {
            tell(reading, file, text, e);
        } catch (ReaderException e) {
            reading.problem(file, "characters that cannot stand in YAML", "plain text", "Look for pasted symbols.");
        } catch (YamlEngineException e) {
            reading.problem(file, "text that is no YAML", "keys and values", "");
        }
        return null;
    }

    /** In our own words: the library's speak of tokens and block ends. */
    private static void tell(Reading reading, String file, String text, MarkedYamlEngineException e) {
        int line = e.getProblemMark().map(Mark::getLine).orElse(0) + 1;
        String context = String.valueOf(e.getContext());
        if (context.contains("quoted scalar") && String.valueOf(e.getProblem()).contains("end of stream")) {
            int opened = e.getContextMark().map(Mark::getLine).orElse(0) + 1;
            reading.problem(
                    file + ":" + opened, "a quote that is opened here and never closed", "a pair of quotes", "");
            return;
        }
        String typed = text.lines().skip(line - 1L).findFirst().orElse("");
        if (typed.contains("\t")) {
            reading.problem(file + ":" + line, "a tab", "spaces to indent with", "Replace the tab by spaces.");
            return;
        }
        reading.problem(
                file + ":" + line,
                typed.isBlank()
                        ? "something that breaks off"
                        : Reading.quoted(typed.strip()) + ", which does not fit here",
                "YAML: \"key: value\", the same indent for keys of one block, \"- \" before each item of a list",
                "Look at this line and the one above it. A text with \": \" or \" #\" inside needs quotes around it.");
    }

    /** False, with the problems told, where the text uses what we do not take. */
    private static boolean isPlain(Reading reading, String file, Iterable<Event> events) {
        int depth = 0;
        int documents = 0;
        int before = reading.flaws();
        int toldLine = -1;
        for (Event event : events) {
            int line = event.getStartMark().map(Mark::getLine).orElse(0) + 1;
            String where = file + ":" + line;
            if (event instanceof DocumentStartEvent && ++documents > 1) {
                reading.problem(where, "a second document", "one document in the file", "Remove the line \"---\".");
                return false;
            }
            String strange = strange(event);
            if (strange != null && line != toldLine) {
                String mark = strange.substring(strange.length() - 2, strange.length() - 1);
                reading.problem(
                        where,
                        strange,
                        "each value written out",
                        "Put a text that begins with " + mark + " in quotes.");
                toldLine = line;
            }
            if (event instanceof CollectionStartEvent && ++depth > MOST_DEPTH) {
                reading.problem(where, "blocks nested more than " + MOST_DEPTH + " deep", "a flat file", "");
                return false;
            }
            if (event instanceof CollectionEndEvent) {
                depth--;
            }
        }
        return reading.flaws() == before;
    }

    /** What of YAML this is that we do not take, its mark in brackets; null where it is plain. */
    private static @Nullable String strange(Event event) {
        if (event instanceof AliasEvent) {
            return "an alias (*)";
        }
        if (event instanceof NodeEvent node && node.getAnchor().isPresent()) {
            return "an anchor (&)";
        }
        boolean tagged = (event instanceof ScalarEvent scalar && scalar.getTag().isPresent())
                || (event instanceof CollectionStartEvent start
                        && start.getTag().isPresent());
        return tagged ? "a tag (!)" : null;
    }
}
