package tideover.app.files;

import java.util.Arrays;
import java.util.Collection;
import java.util.EnumSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import tideover.engine.battery.Chemistry;

/** The chemistries of batteries as a parts file writes them: {@code iron phosphate}, or a list {@code agm; gel}. */
final class ChemistryText {
    private static final Map<String, Chemistry> BY_WORD = byWord();

    private ChemistryText() {}

    static List<String> words() {
        return List.copyOf(BY_WORD.keySet());
    }

    /** The chemistry of a battery; null where wrong. */
    static @Nullable Chemistry one(Row row, String column) {
        String word = row.choice(column, "what it is made of", words());
        return word == null ? null : BY_WORD.get(word);
    }

    /** Those that a part has a charging programme for; empty where the cell is, or where all in it is wrong. */
    static Set<Chemistry> several(Row row, String column) {
        Set<Chemistry> all = EnumSet.noneOf(Chemistry.class);
        String text = row.cell(column);
        if (text.isEmpty()) {
            return all;
        }
        String expected = "chemistries it can charge, such as agm; iron phosphate, of: " + String.join(", ", words());
        for (String typed : Arrays.stream(text.split(";")).map(String::strip).toList()) {
            Optional<String> known =
                    words().stream().filter(typed::equalsIgnoreCase).findFirst();
            if (known.isEmpty()) {
                row.problem(column, Reading.quoted(typed), expected, suggestion(typed, words()));
            } else if (!all.add(BY_WORD.get(known.get()))) {
                row.problem(column, Reading.quoted(typed) + " a second time", "each chemistry once", "");
            }
        }
        return all;
    }

    private static String suggestion(String typed, Collection<String> words) {
        return typed.contains(",")
                ? "Put semicolons between them."
                : Nearest.to(typed, words).map(word -> "Write " + word + ".").orElse("");
    }

    private static Map<String, Chemistry> byWord() {
        Map<String, Chemistry> words = new LinkedHashMap<>();
        words.put("flooded", Chemistry.FLOODED_LEAD);
        words.put("gel", Chemistry.GEL_LEAD);
        words.put("agm", Chemistry.AGM_LEAD);
        words.put("iron phosphate", Chemistry.IRON_PHOSPHATE);
        words.put("other lithium", Chemistry.OTHER_LITHIUM);
        return words;
    }
}
