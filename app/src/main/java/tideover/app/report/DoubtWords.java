package tideover.app.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import tideover.engine.proof.Doubts;

/** What is not known of a rig and its loads, and what to measure first. */
final class DoubtWords {
    /** In text; the page shows all that move anything. */
    static final int MOST_ROWS = 6;

    private static final double LEAST_SHOWN_SHARE = 0.0005;
    private static final double LEAST_SHOWN_HOURS = 0.05;

    private DoubtWords() {}

    /**
     * The share were nothing sure.
     *
     * @param stormy whether storms do more than take the grid, which these figures leave out
     */
    static String together(Doubts doubts, boolean stormy) {
        return "With everything that is not known: between " + Words.percent(doubts.low()) + " and "
                + Words.percentUp(doubts.high()) + " of 100. The interval beside the share is the luck of the weather"
                + " alone; here every doubtful figure goes through its range as well."
                + (stormy ? " What storms do is not in it." : "");
    }

    static boolean moves(Doubts.Effect effect) {
        return effect.width() >= LEAST_SHOWN_SHARE || effect.hoursBetween() >= LEAST_SHOWN_HOURS;
    }

    static List<Doubts.Effect> moving(Doubts doubts) {
        return doubts.ranked().stream().filter(DoubtWords::moves).toList();
    }

    /** What moves nothing, in one line; empty where everything does. */
    static String still(Doubts doubts) {
        String still = doubts.ranked().stream()
                .filter(effect -> !moves(effect))
                .map(effect -> effect.doubt().what())
                .collect(Collectors.joining("; "));
        return still.isEmpty() ? "" : "These move nothing here: " + still + ".";
    }

    /** Such as "0.6 to 1.05 times". */
    static String range(Doubts.Effect effect) {
        return times(effect.doubt().leastTimes()) + " to "
                + times(effect.doubt().mostTimes()) + " times";
    }

    private static String times(double times) {
        String two = String.format(Locale.ROOT, "%.2f", times);
        return two.endsWith("0") ? two.substring(0, two.length() - 1) : two;
    }

    /**
     * The rows of the text, most important first.
     *
     * @param shares whether shares are told; where somebody's health hangs on a load they say nothing
     */
    static List<String> rows(Doubts doubts, boolean shares) {
        List<String> rows = new ArrayList<>();
        List<Doubts.Effect> moving = moving(doubts);
        for (Doubts.Effect effect : moving.subList(0, Math.min(MOST_ROWS, moving.size()))) {
            String does = shares && effect.width() >= LEAST_SHOWN_SHARE
                    ? Words.percent(effect.shareAtLeast()) + " to " + Words.percent(effect.shareAtMost()) + " of 100"
                    : hours(effect) + " on average";
            rows.add(effect.doubt().what() + ", " + range(effect) + ": " + does + ". Measure: "
                    + effect.doubt().measure() + ".");
        }
        return rows;
    }

    /** What the rows leave out; empty where that is nothing. */
    static String rest(Doubts doubts) {
        int more = moving(doubts).size() - MOST_ROWS;
        String words =
                more > 0 ? Counted.of(more, "more figure") + (more == 1 ? " moves" : " move") + " it less. " : "";
        return (words + still(doubts)).strip();
    }

    private static String hours(Doubts.Effect effect) {
        return String.format(Locale.ROOT, "%.1f h", effect.hoursBetween());
    }

    static Table table(Doubts doubts, boolean shares) {
        Table.Builder table = Table.titled("Measure this first").words("figure").figures("range, times");
        if (shares) {
            table.figures("carried at its least, of\u00a0100").figures("at its most");
        }
        table.figures("hours between, on average").words("how to measure");
        for (Doubts.Effect effect : moving(doubts)) {
            List<String> cells =
                    new ArrayList<>(List.of(effect.doubt().what(), range(effect).replace(" times", "")));
            if (shares) {
                cells.add(Words.percent(effect.shareAtLeast()));
                cells.add(Words.percent(effect.shareAtMost()));
            }
            cells.add(hours(effect));
            cells.add(effect.doubt().measure());
            table.row(cells.toArray(new String[0]));
        }
        return table.done();
    }
}
