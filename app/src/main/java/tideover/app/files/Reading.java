package tideover.app.files;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import tideover.engine.why.Basis;
import tideover.engine.why.InputProblems;
import tideover.engine.why.MarginNote;
import tideover.engine.why.Problem;

/**
 * What one reading of a person's files gathers: all that is wrong, where each figure comes from, and what is possible
 * but unlikely. Readers go on after a problem with a stand-in value, so that the person hears of everything at once;
 * {@link #throwIfWrong} then keeps any stand-in from getting out.
 */
final class Reading {
    /** A hopeless file need not be told a thousand times. */
    static final int MOST_PROBLEMS = 100;

    private static final int MOST_QUOTED = 60;

    private final List<Problem> problems = new ArrayList<>();
    private final List<MarginNote> notes = new ArrayList<>();
    private final List<String> cautions = new ArrayList<>();
    private final List<Spread> spreads = new ArrayList<>();
    private final List<Worth> worths = new ArrayList<>();
    private final Map<String, Map<String, String>> typedById = new HashMap<>();
    private int problemCount;
    private int silentFlaws;

    /** Takes over what a part of the reading gathered by itself, at most so many of its problems. */
    void take(Reading part, int mostProblems) {
        int taken = Math.min(mostProblems, part.problems.size());
        part.problems.subList(0, taken).forEach(p -> problem(p.where(), p.found(), p.expected(), p.suggestion()));
        if (part.problemCount > taken) {
            problemCount++;
            problems.add(new Problem(
                    part.problems.get(0).where().replaceFirst(":.*", ""),
                    part.problemCount - taken + " further problems",
                    "the first " + taken + " mended",
                    "Mend those, then read again."));
        }
        silentFlaws += part.silentFlaws;
        notes.addAll(part.notes);
        part.cautions.forEach(this::caution);
        spreads.addAll(part.spreads);
        worths.addAll(part.worths);
        typedById.putAll(part.typedById);
    }

    void problem(String where, String found, String expected, String suggestion) {
        problemCount++;
        if (problems.size() < MOST_PROBLEMS) {
            problems.add(new Problem(where, found, expected, suggestion));
        }
    }

    void note(String name, String value, Basis basis, String source) {
        notes.add(new MarginNote(name, value, basis, source));
    }

    void caution(String sentence) {
        if (cautions.size() < MOST_PROBLEMS) {
            cautions.add(sentence);
        }
    }

    /** Keeps what was typed of a part, by column; of parts with the same id the last. */
    void typed(String id, Map<String, String> cells) {
        typedById.put(id, cells);
    }

    Map<String, Map<String, String>> typedById() {
        return Map.copyOf(typedById);
    }

    void spread(Spread spread) {
        spreads.add(spread);
    }

    /** A sum of money among the loads, whose currency is to be that of all prices. */
    record Worth(Field field, String currency) {
        void check(@Nullable String plansCurrency) {
            if (plansCurrency != null && !plansCurrency.equals(currency)) {
                field.problem(
                        quoted(field.shown()),
                        "one currency in the whole plan",
                        "Its prices are in " + plansCurrency + ".");
            }
        }
    }

    void worth(Field field, String currency) {
        worths.add(new Worth(field, currency));
    }

    List<Worth> worths() {
        return List.copyOf(worths);
    }

    /** Something is missing for a reason that was told already. */
    void silentFlaw() {
        silentFlaws++;
    }

    /** Flaws so far, told or silent; a record may be built from what was read since only while this stands still. */
    int flaws() {
        return problemCount + silentFlaws;
    }

    List<MarginNote> notes() {
        return List.copyOf(notes);
    }

    /** How far figures of the loads may be off, in the plan's order. */
    List<Spread> spreads() {
        return List.copyOf(spreads);
    }

    List<String> cautions() {
        return List.copyOf(cautions);
    }

    /** Ends a reading that met problems. */
    void throwIfWrong() {
        if (problemCount == 0) {
            return;
        }
        List<Problem> all = new ArrayList<>(problems);
        if (problemCount > problems.size()) {
            all.add(new Problem(
                    "and more",
                    problemCount - problems.size() + " further problems",
                    "the first " + problems.size() + " mended",
                    "Mend those, then read again."));
        }
        throw new InputProblems(all);
    }

    /** What was typed, between quotes, short and printable. */
    static String quoted(String typed) {
        StringBuilder shown = new StringBuilder("\"");
        int shownChars = 0;
        for (int i = 0; i < typed.length() && shownChars < MOST_QUOTED; shownChars++) {
            int c = typed.codePointAt(i);
            i += Character.charCount(c);
            if (Character.isISOControl(c)) {
                shown.append(c == '\n' || c == '\r' || c == '\t' ? " " : "?");
            } else {
                shown.appendCodePoint(c);
            }
        }
        return shown.append(typed.codePointCount(0, typed.length()) > MOST_QUOTED ? "...\"" : "\"")
                .toString();
    }
}
