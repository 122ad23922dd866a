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

    /** Of one part of a message: what was typed may stand in it as it is. */
    private static final int LONGEST_PART = 1000;

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
        if (!isFull()) {
            problems.add(new Problem(printable(where), printable(found), printable(expected), printable(suggestion)));
        }
    }

    /** No further problem is shown, only counted; so none needs a long search for its words. */
    boolean isFull() {
        return problems.size() >= MOST_PROBLEMS;
    }

    void note(String name, String value, Basis basis, String source) {
        notes.add(new MarginNote(printable(name), printable(value), basis, printable(source)));
    }

    void caution(String sentence) {
        if (cautions.size() < MOST_PROBLEMS) {
            cautions.add(printable(sentence));
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
        return "\"" + printable(typed, MOST_QUOTED) + "\"";
    }

    private static String printable(String text) {
        return printable(text, LONGEST_PART);
    }

    /** On one line, without what {@link #cannotBeShown} finds, and at most so many letters. */
    static String printable(String text, int mostLetters) {
        StringBuilder shown = new StringBuilder();
        int letters = 0;
        for (int i = 0; i < text.length(); letters++) {
            if (letters == mostLetters) {
                return shown.append("...").toString();
            }
            int c = text.codePointAt(i);
            i += Character.charCount(c);
            if (cannotBeShown(c)) {
                shown.append(c == '\n' || c == '\r' || c == '\t' ? " " : "?");
            } else {
                shown.appendCodePoint(c);
            }
        }
        return shown.toString();
    }

    /**
     * Control characters, line breaks, halves of a pair, and the marks that turn the order of what follows (Unicode Standard
     * Annex #9, explicit embeddings, overrides and isolates): a message that holds one may not look like what it says.
     */
    static boolean cannotBeShown(int c) {
        return Character.isISOControl(c)
                || c == 0x2028
                || c == 0x2029
                || (c >= 0x202A && c <= 0x202E)
                || (c >= 0x2066 && c <= 0x2069)
                || (c >= Character.MIN_SURROGATE && c <= Character.MAX_SURROGATE);
    }
}
