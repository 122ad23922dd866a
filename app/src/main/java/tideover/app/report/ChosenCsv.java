package tideover.app.report;

import java.io.IOException;
import java.io.Writer;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.regex.Pattern;
import tideover.engine.answer.ProvenRig;
import tideover.engine.part.Listing;
import tideover.engine.rig.Chosen;
import tideover.engine.wiring.PartsList;

/**
 * What an answer's rig is made of, as a table that a spreadsheet opens and that is a parts file at the same time: main parts
 * with all that their own file says of them, then, in lines that a parts file passes over, small parts and tools with what
 * is bought, and the sums. What each column holds is told in docs/parts-file.md.
 */
public final class ChosenCsv {
    private static final String NEEDED = "needed";
    private static final String BOUGHT = "bought";
    private static final String PAID = "paid";

    /** Of every file, whatever its parts tell. */
    private static final List<String> ALWAYS = List.of(
            "kind", "id", "name", "price", "currency", "priced_on", "condition", "mass_kg", NEEDED, BOUGHT, PAID);

    /** Before the kind of what is no main part: such a line is a remark to who reads parts. */
    private static final String REMARK = "# ";

    /** As spreadsheets write a no-break space; readers of parts take it off again. */
    private static final String NO_BREAK_SPACE = "\u00A0";

    /**
     * What spreadsheets take for the beginning of a formula (OWASP, CSV Injection): these signs, also in their wide form, and
     * whatever cannot be seen before them.
     */
    private static final String SIGNS = "[\\p{Z}\\p{C}]*[=+\\-@\uFF1D\uFF0B\uFF0D\uFF20]";

    private static final Pattern FORMULA = Pattern.compile(SIGNS);
    private static final Pattern FORMULA_CELL = Pattern.compile("[,;|][\",;|\\s]*(?=" + SIGNS + ")");
    private static final Pattern QUOTED = Pattern.compile("[\",;\u00A0]");
    private static final Pattern LINE_BREAKS = Pattern.compile("[\\s\\p{Cntrl}\u0085\u2028\u2029]+");

    private ChosenCsv() {}

    /**
     * @param columns   those of a parts file, in their order
     * @param typedById what was typed of each part, by column
     */
    public static void write(
            ProvenRig rig,
            String currency,
            List<String> columns,
            Map<String, Map<String, String>> typedById,
            Writer out)
            throws IOException {
        List<Map<String, String>> rows = rows(rig, currency, typedById);
        Set<String> used = new LinkedHashSet<>(ALWAYS);
        List<String> known = new ArrayList<>(columns);
        known.removeAll(ALWAYS);
        for (String column : known) {
            if (rows.stream().anyMatch(row -> row.containsKey(column))) {
                used.add(column);
            }
        }
        out.write(String.join(",", used) + "\n");
        for (Map<String, String> row : rows) {
            List<String> cells = new ArrayList<>();
            used.forEach(column -> cells.add(cell(row.getOrDefault(column, ""))));
            out.write(String.join(",", cells) + "\n");
        }
    }

    /** Rows of a parts file under those of the columns that any of them fills; harmless to a spreadsheet. */
    public static String table(List<String> columns, Iterable<Map<String, String>> rows) {
        Set<String> used = new LinkedHashSet<>();
        for (String column : columns) {
            for (Map<String, String> row : rows) {
                if (row.containsKey(column)) {
                    used.add(column);
                    break;
                }
            }
        }
        StringBuilder out = new StringBuilder(String.join(",", used)).append('\n');
        for (Map<String, String> row : rows) {
            List<String> cells = new ArrayList<>();
            used.forEach(column -> cells.add(cell(row.getOrDefault(column, ""))));
            out.append(String.join(",", cells)).append('\n');
        }
        return out.toString();
    }

    private static List<Map<String, String>> rows(
            ProvenRig rig, String currency, Map<String, Map<String, String>> typedById) {
        List<Map<String, String>> rows = new ArrayList<>();
        for (Chosen chosen : rig.rig().chosen()) {
            Listing listing = chosen.part().listing();
            Map<String, String> row = new LinkedHashMap<>(typedById.getOrDefault(listing.id(), Map.of()));
            listing(row, listing, currency, chosen.part().kind());
            paid(
                    row,
                    String.valueOf(chosen.count()),
                    listing.boughtFor(chosen.count()),
                    listing.goodsCents(chosen.count()));
            rows.add(row);
        }
        for (PartsList.Line line : rig.build().partsList().lines()) {
            Map<String, String> row = new LinkedHashMap<>();
            String kind = REMARK + line.part().kind();
            if (rig.build().counted()) {
                listing(row, line.part().listing(), currency, kind);
                paid(row, SmallPartsTable.needed(line), line.bought(), line.cents());
            } else {
                row.put("kind", kind);
                row.put("name", SmallPartsTable.standardName(line));
                row.put(NEEDED, SmallPartsTable.needed(line));
            }
            rows.add(row);
        }
        rig.build().partsList().missing().forEach((what, count) -> {
            Map<String, String> row = new LinkedHashMap<>(Map.of("kind", REMARK + "no price", "name", what));
            row.put(NEEDED, String.valueOf(count));
            rows.add(row);
        });
        if (rig.build().counted()) {
            for (PriceWords.Line line : PriceWords.besideMainParts(rig)) {
                if (!line.isOfList()) {
                    rows.add(sum(line.what(), line.cents(), currency));
                }
            }
        } else {
            PriceWords.besideMainParts(rig).forEach(line -> rows.add(sum(line.what(), line.cents(), currency)));
        }
        rows.add(sum("in all", rig.price().totalCents(), currency));
        return rows;
    }

    private static void listing(Map<String, String> row, Listing listing, String currency, String kind) {
        row.put("kind", kind);
        row.put("id", listing.id());
        row.put("name", listing.name());
        row.put("price", plain(listing.priceCents()));
        row.put("currency", currency);
        row.put("priced_on", listing.pricedOn().toString());
        row.put("condition", listing.condition().name().toLowerCase(Locale.ROOT));
        if (!listing.selling().seller().isEmpty()) {
            row.put("seller", listing.selling().seller());
        }
        if (!listing.selling().readAt().isEmpty()) {
            row.put("source", listing.selling().readAt());
        }
    }

    private static void paid(Map<String, String> row, String needed, int bought, long cents) {
        row.put(NEEDED, needed);
        row.put(BOUGHT, String.valueOf(bought));
        row.put(PAID, plain(cents));
    }

    private static Map<String, String> sum(String what, long cents, String currency) {
        Map<String, String> row = new LinkedHashMap<>();
        row.put("kind", REMARK + "sum");
        row.put("name", what);
        row.put("currency", currency);
        row.put(PAID, plain(cents));
        return row;
    }

    /** Without separators, so that a spreadsheet can add it up. */
    private static String plain(long cents) {
        return PriceWords.bare(cents).replace(",", "");
    }

    /**
     * A cell on one line, between quotes where it needs them. A text that a spreadsheet would take for a formula begins with a
     * no-break space instead; a negative number is none.
     */
    static String cell(String text) {
        String line = onOneLine(text);
        boolean formula = FORMULA.matcher(line).lookingAt() && !line.matches("-[0-9]+(\\.[0-9]+)?");
        String safe = formula ? NO_BREAK_SPACE + line : line;
        return QUOTED.matcher(safe).find() ? "\"" + safe.replace("\"", "\"\"") + "\"" : safe;
    }

    /** A text inside a line of remarks, where no separator may begin a cell that a spreadsheet takes for a formula. */
    static String remark(String text) {
        return FORMULA_CELL.matcher(onOneLine(text)).replaceAll(" ");
    }

    private static String onOneLine(String text) {
        return LINE_BREAKS.matcher(text).replaceAll(" ").strip();
    }
}
