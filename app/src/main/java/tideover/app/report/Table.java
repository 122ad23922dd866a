package tideover.app.report;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

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

    /** A column's heading, with the unit. */
    public record Column(String head, Kind kind) {}

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

        Builder figures(String head) {
            columns.add(new Column(head, Kind.FIGURES));
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
