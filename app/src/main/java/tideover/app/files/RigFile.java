package tideover.app.files;

import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import tideover.engine.part.Part;
import tideover.engine.rig.Chosen;

/** A rig by its parts: a name and a list of part ids with how many of each, as YAML. */
public final class RigFile {
    private static final int MOST_OF_ONE = 20;
    private static final int MOST_KINDS = 20;

    private RigFile() {}

    private static final Pattern COUNTED = Pattern.compile("([1-9][0-9]{0,2})x(.+)");

    /** What a rig file asks for, in its order; whether it makes a rig is for the engine to say. */
    public record RigRequest(String name, List<Chosen> chosen) {
        public RigRequest {
            chosen = List.copyOf(chosen);
        }
    }

    /**
     * A rig as answers write it, its parts by their ids, such as "2xP100+BX500"; empty where some part of it is not among those
     * given.
     */
    public static Optional<List<Chosen>> ofId(String id, List<Part> parts) {
        Map<String, Part> byId = new LinkedHashMap<>();
        parts.forEach(part -> byId.put(part.listing().id(), part));
        List<Chosen> chosen = new ArrayList<>();
        for (String piece : id.split("\\+", MOST_KINDS + 1)) {
            Matcher counted = COUNTED.matcher(piece);
            if (byId.containsKey(piece)) {
                chosen.add(new Chosen(byId.get(piece), 1));
            } else if (counted.matches() && byId.containsKey(counted.group(2))) {
                chosen.add(new Chosen(byId.get(counted.group(2)), Integer.parseInt(counted.group(1))));
            } else {
                return Optional.empty();
            }
        }
        return Optional.of(chosen);
    }

    /** Reads a rig file against a plan's parts. Throws {@code InputProblems} with everything that is wrong in it. */
    public static RigRequest read(Path file, List<Part> parts) {
        Reading reading = new Reading();
        String name = PartsFile.fileName(file);
        String text = FileText.read(reading, Beside.alone(file), name, file.toString(), "a rig file");
        reading.throwIfWrong();
        return read(reading, name, String.valueOf(text), parts);
    }

    /** The same from text; {@code name} is what to call it in problems. */
    public static RigRequest read(String name, String text, List<Part> parts) {
        Reading reading = new Reading();
        String sound = FileText.decode(reading, text.getBytes(StandardCharsets.UTF_8), name, "a rig file");
        reading.throwIfWrong();
        return read(reading, name, String.valueOf(sound), parts);
    }

    private static RigRequest read(Reading reading, String file, String text, List<Part> parts) {
        Field root = YamlFile.root(reading, file, text);
        String name = "";
        List<Chosen> chosen = List.of();
        if (root != null) {
            root.keys("rig", "parts");
            name = root.child("rig").text("what the rig is called", PlanFile.LONGEST_NAME);
            chosen = chosen(root.child("parts"), parts);
        }
        reading.throwIfWrong();
        return new RigRequest(name, chosen);
    }

    private static List<Chosen> chosen(Field list, List<Part> parts) {
        Map<String, Part> byId = new LinkedHashMap<>();
        parts.forEach(part -> byId.put(part.listing().id(), part));
        Map<String, Field> earlier = new HashMap<>();
        List<Chosen> chosen = new ArrayList<>();
        List<Field> items = list.items("a list of parts, such as - {id: lamp-box, count: 1}");
        if (items.size() > MOST_KINDS) {
            list.problem(items.size() + " parts", "at most " + MOST_KINDS + " kinds of part", "");
            return chosen;
        }
        for (Field item : items) {
            item.keys("id", "count");
            Field idField = item.child("id");
            String id = idField.text("the id of a part", PlanFile.LONGEST_NAME);
            Field countField = item.child("count");
            int count = countField.isPresent() ? countField.count("how many", 1, MOST_OF_ONE) : 1;
            if (id.isEmpty()) {
                continue;
            }
            Part part = byId.get(id);
            Field before = earlier.putIfAbsent(id, idField);
            if (part == null) {
                idField.problem(
                        Reading.quoted(id),
                        "the id of a part in the plan's parts file",
                        Nearest.to(id, byId.keySet())
                                .map(near -> "Write " + near + ".")
                                .orElse(""));
            } else if (before != null) {
                idField.problem(
                        Reading.quoted(id) + " a second time",
                        "each part once, with its count",
                        "The first stands in line " + before.line() + ".");
            } else {
                chosen.add(new Chosen(part, count));
            }
        }
        return chosen;
    }
}
