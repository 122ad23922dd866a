package tideover.app.report;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Set;

/** A table of a page. Cells are plain text and escaped by the page, except those of a drawing column. */
public record Table(String caption, List<Column> columns, List<Row> rows) {
    public Table {
        columns = List.copyOf(columns);
        rows = List.copyOf(rows);
    }

    /** What stands in a column; the style's class of the same name does the rest. */
    public enum Kind {
        WORDS("words"),
        FIGURES("figures"),
        /** Words too short to be broken. */
        SHORT("short"),
        /** Our own SVG, written by {@link Svg} and not escaped again; says nothing that the figures do not say. */
        DRAWING("drawing");

        private final String style;

        Kind(String style) {
            this.style = style;
        }

        public String style() {
            return style;
        }
    }

    /**
     * A column's heading, with the unit.
     *
     * @param unit of bare figures, currency or such as "kg"; empty where cells tell it themselves or there is none
     */
    public record Column(String head, Kind kind, String unit) {
        private Column(String head, Kind kind) {
            this(head, kind, "");
        }
    }

    /**
     * One row.
     *
     * @param style class of the row, such as "total"; empty for a plain one
     */
    public record Row(List<String> cells, String style) {
        public Row {
            cells = List.copyOf(cells);
        }
    }

    static Builder titled(String caption) {
        return new Builder(caption);
    }

    /** Gathers columns, then rows. */
    static final class Builder {
        private static final Set<String> UNITS = Set.of("kg", "L", "\u00b0C");

        private final String caption;
        private final List<Column> columns = new ArrayList<>();
        private final List<Row> rows = new ArrayList<>();

        private Builder(String caption) {
            this.caption = caption;
        }

        Builder words(String head) {
            columns.add(new Column(head, Kind.WORDS));
            return this;
        }

        Builder shortWords(String head) {
            columns.add(new Column(head, Kind.SHORT));
            return this;
        }

        /** Bare figures; the unit stands behind the heading's comma. */
        Builder figures(String head) {
            int comma = head.lastIndexOf(", ");
            String behind = comma < 0 ? "" : head.substring(comma + 2);
            columns.add(new Column(head, Kind.FIGURES, UNITS.contains(behind) ? behind : ""));
            return this;
        }

        /** Bare sums. */
        Builder sums(String head, String currency) {
            columns.add(new Column(head, Kind.FIGURES, currency));
            return this;
        }

        Builder drawing(String head) {
            columns.add(new Column(head, Kind.DRAWING));
            return this;
        }

        Builder row(String... cells) {
            return styled("", cells);
        }

        Builder styled(String style, String... cells) {
            if (cells.length != columns.size()) {
                throw new IllegalArgumentException(cells.length + " cells in " + columns.size() + " columns");
            }
            rows.add(new Row(Arrays.asList(cells), style));
            return this;
        }

        Table done() {
            return new Table(caption, columns, rows);
        }
    }
}
