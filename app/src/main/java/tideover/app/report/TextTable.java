package tideover.app.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/**
 * A {@link Table} as lines of plain text. Figures stand right and unbroken under a heading that is broken where it must be;
 * columns of words share what is left, and break. Drawings are left out: they say nothing that the figures do not say.
 */
final class TextTable {
    private static final String GAP = "  ";
    private static final int LEAST_WORDS = 8;

    private final Table table;
    private final int[] widths;

    private TextTable(Table table, int width) {
        this.table = table;
        this.widths = widths(width);
    }

    /** Heading, a rule, rows; each line no longer than {@code width} unless single words are. */
    static List<String> of(Table table, int width) {
        TextTable text = new TextTable(table, width);
        List<String> lines = new ArrayList<>();
        List<String> heads = table.columns().stream().map(Table.Column::head).toList();
        text.write(lines, heads, true);
        lines.add(text.rule());
        text.rows(lines);
        return lines;
    }

    /** Without the heading, for what speaks for itself. */
    static List<String> bare(Table table, int width) {
        List<String> lines = new ArrayList<>();
        new TextTable(table, width).rows(lines);
        return lines;
    }

    private void rows(List<String> lines) {
        for (Table.Row row : table.rows()) {
            write(lines, row.cells(), false);
        }
    }

    private int[] widths(int width) {
        int count = table.columns().size();
        int[] found = new int[count];
        int[] least = new int[count];
        int left = width;
        for (int i = 0; i < count; i++) {
            boolean breaks = breaks(i);
            least[i] = longestWord(table.columns().get(i).head());
            found[i] = breaks ? table.columns().get(i).head().length() : least[i];
            for (Table.Row row : table.rows()) {
                String cell = row.cells().get(i);
                found[i] = Math.max(found[i], cell.length());
                least[i] = Math.max(least[i], longestWord(cell));
            }
            least[i] = breaks ? Math.max(least[i], LEAST_WORDS) : found[i];
            left -= found[i] + (i == 0 ? 0 : GAP.length());
        }
        // What is too wide is taken from the widest column that can still break, one by one.
        while (left < 0) {
            int widest = -1;
            for (int i = 0; i < count; i++) {
                if (found[i] > least[i] && (widest < 0 || found[i] > found[widest])) {
                    widest = i;
                }
            }
            if (widest < 0) {
                break;
            }
            found[widest]--;
            left++;
        }
        return found;
    }

    private boolean breaks(int column) {
        return table.columns().get(column).kind() == Table.Kind.WORDS;
    }

    private boolean right(int column) {
        return table.columns().get(column).kind() == Table.Kind.FIGURES;
    }

    private static int longestWord(String text) {
        int longest = 0;
        for (String word : text.split(" ")) {
            longest = Math.max(longest, word.length());
        }
        return longest;
    }

    /** Headings stand on the line of their last words, cells on that of their first. */
    private void write(List<String> lines, List<String> cells, boolean head) {
        List<List<String>> broken = new ArrayList<>();
        int height = 1;
        for (int i = 0; i < cells.size(); i++) {
            List<String> one = TextAnswer.wrap(cells.get(i), Math.max(1, widths[i]));
            broken.add(one);
            height = Math.max(height, one.size());
        }
        for (int at = 0; at < height; at++) {
            StringBuilder line = new StringBuilder();
            for (int i = 0; i < cells.size(); i++) {
                List<String> one = broken.get(i);
                int of = head ? at - (height - one.size()) : at;
                String cell = of < 0 || of >= one.size() ? "" : one.get(of);
                line.append(i == 0 ? "" : GAP).append(padded(cell, i));
            }
            lines.add(line.toString().stripTrailing());
        }
    }

    private String padded(String cell, int column) {
        return String.format(Locale.ROOT, "%" + (right(column) ? "" : "-") + Math.max(1, widths[column]) + "s", cell)
                .replace('\u00a0', ' ');
    }

    private String rule() {
        StringBuilder line = new StringBuilder();
        for (int i = 0; i < widths.length; i++) {
            line.append(i == 0 ? "" : GAP).append("-".repeat(widths[i]));
        }
        return line.toString();
    }
}
