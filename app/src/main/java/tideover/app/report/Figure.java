package tideover.app.report;

/**
 * A drawing with its words and its table.
 *
 * @param wide    SVG for paper and a desk
 * @param narrow  SVG for a phone; the same as {@code wide} where one serves both
 * @param caption what is seen, in words
 * @param data    the drawing's figures
 */
public record Figure(String wide, String narrow, String caption, Table data) {
    public boolean oneForBoth() {
        return wide.equals(narrow);
    }
}
