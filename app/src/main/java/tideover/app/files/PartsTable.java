package tideover.app.files;

import de.siegmar.fastcsv.reader.CommentStrategy;
import de.siegmar.fastcsv.reader.CsvParseException;
import de.siegmar.fastcsv.reader.CsvReader;
import de.siegmar.fastcsv.reader.CsvRecord;
import de.siegmar.fastcsv.reader.FieldMismatchStrategy;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import tideover.engine.part.Condition;
import tideover.engine.part.Listing;

/**
 * A table of comma-separated values with a header, one thing that may be bought a row: what the file of parts and that of
 * small parts share.
 *
 * @param <P> what a row becomes
 */
final class PartsTable<P> {
    private static final int MOST_PARTS = 2000;
    private static final int MOST_AT_HAND = 1000;

    /**
     * What such a file may hold.
     *
     * @param words   such as "a parts file"
     * @param docs    page that tells its columns
     * @param columns every column a file may have, in the order of the docs
     * @param needed  those that no file may lack
     * @param massKg  of one part; it may stay empty where its column is not needed
     */
    record Form(
            String words, String docs, List<String> kinds, List<String> columns, List<String> needed, Range massKg) {
        boolean needs(String column) {
            return needed.contains(column);
        }
    }

    /** Reads what a kind has beyond its listing; null where that is wrong. */
    interface KindReader<P> {
        @Nullable
        P read(Row row, String kind, Listing listing);
    }

    private final Form form;
    private final KindReader<P> kinds;

    PartsTable(Form form, KindReader<P> kinds) {
        this.form = form;
        this.kinds = kinds;
    }

    /**
     * Reads a file on behalf of a plan.
     *
     * @param where         what to blame where there is no such file
     * @param plansCurrency the plan's own, or null where unknown
     * @param sourceById    where each id of the plan's parts stands; this file's are added
     */
    List<P> read(
            Reading reading,
            Beside beside,
            String name,
            String where,
            @Nullable String plansCurrency,
            Map<String, String> sourceById) {
        String text = FileText.read(reading, beside, name, where, form.words());
        return text == null ? List.of() : read(reading, text, name, plansCurrency, sourceById);
    }

    private List<P> read(
            Reading reading, String text, String name, @Nullable String plansCurrency, Map<String, String> sourceById) {
        List<P> parts = new ArrayList<>();
        Prices prices = new Prices(plansCurrency);
        PartsHeader header = null;
        int before = reading.flaws();
        try (CsvReader<CsvRecord> records = CsvReader.builder()
                .commentStrategy(CommentStrategy.SKIP)
                .allowUnclosedQuote(false)
                .extraFieldStrategy(FieldMismatchStrategy.IGNORE)
                .missingFieldStrategy(FieldMismatchStrategy.IGNORE)
                .trimWhitespacesAroundQuotes(true)
                .ofCsvRecord(text)) {
            for (CsvRecord row : records) {
                if (row.getFields().stream().allMatch(String::isBlank)) {
                    continue;
                }
                if (header == null) {
                    header = PartsHeader.read(reading, name, row, form);
                    if (header == null) {
                        return List.of();
                    }
                    continue;
                }
                if (parts.size() == MOST_PARTS) {
                    reading.problem(name, "more than " + MOST_PARTS + " parts", "at most " + MOST_PARTS, "");
                    break;
                }
                P part = part(reading, name, header, row, prices);
                if (part != null) {
                    parts.add(part);
                }
                header.checkId(reading, name, row, sourceById);
            }
        } catch (CsvParseException e) {
            reading.problem(
                    name,
                    "cells that cannot be told apart (" + reason(e) + ")",
                    "comma-separated values",
                    "Look for a quote (\") that is opened and not closed.");
            return List.of();
        } catch (IOException e) {
            throw new UncheckedIOException(e); // a text in memory has no such fault
        }
        prices.tell(reading);
        if (header == null || (parts.isEmpty() && reading.flaws() == before)) {
            reading.problem(name, "no part", "a header and at least one part", "");
        }
        return parts;
    }

    /** The parser's own words, which tell the line. */
    private static String reason(CsvParseException e) {
        Throwable cause = e.getCause();
        String words = cause == null || cause.getMessage() == null ? e.getMessage() : cause.getMessage();
        return words == null ? "no reason given" : words.replaceAll("[\\p{Cntrl}]", " ");
    }

    private @Nullable P part(Reading reading, String file, PartsHeader header, CsvRecord record, Prices prices) {
        int before = reading.flaws();
        String source = file + ":" + record.getStartingLineNumber();
        if (record.getFieldCount() != header.width()) {
            reading.problem(
                    source,
                    "a row of " + record.getFieldCount() + " cells",
                    header.width() + " cells, as the header has",
                    "A text with a comma inside needs quotes around it.");
            return null;
        }
        Row row = header.row(reading, file, record);
        String kind = row.choice("kind", "the kind of part", form.kinds());
        Listing listing = listing(row, prices);
        row.cell("remark");
        if (kind == null) {
            return null;
        }
        P part = kinds.read(row, kind, listing == null ? placeholder() : listing);
        row.tellUnused(kind);
        return reading.flaws() == before ? part : null;
    }

    /** Stands in for a listing that is wrong, so that the row's other cells are looked at too. */
    private static Listing placeholder() {
        return new Listing("x", "x", 0, "USD", LocalDate.EPOCH, Condition.OWNED, 1, 1, "");
    }

    private @Nullable Listing listing(Row row, Prices prices) {
        String id = row.text("id", "a short name of the part", 40);
        if (!id.isEmpty() && !id.matches("[A-Za-z0-9][A-Za-z0-9._-]*")) {
            row.problem("id", Reading.quoted(id), "letters, digits, point, hyphen and underscore only", "");
        }
        String name = row.text("name", "what the part is called", 120);
        String conditionWord = row.choice("condition", "how it comes", List.of("new", "used", "owned"));
        Condition condition = conditionWord == null ? null : Condition.valueOf(conditionWord.toUpperCase(Locale.ROOT));
        Money price = prices.read(row, condition);
        LocalDate pricedOn = row.date("priced_on", "the day the price was read");
        double massKg = row.has("mass_kg") || form.needs("mass_kg")
                ? row.number("mass_kg", "the mass", "kg", form.massKg())
                : 0;
        int atHand = atHand(row, condition);
        if (id.isEmpty()
                || name.isEmpty()
                || condition == null
                || price == null
                || pricedOn == null
                || Double.isNaN(massKg)) {
            return null;
        }
        return new Listing(
                id, name, price.cents(), price.currency(), pricedOn, condition, atHand, massKg, row.source());
    }

    /** How many can be had: of what is new as many as wanted, of anything else one, unless the row says otherwise. */
    private static int atHand(Row row, @Nullable Condition condition) {
        int unsaid = condition == Condition.NEW ? MOST_AT_HAND : 1;
        return row.has("at_hand") ? row.count("at_hand", "how many can be had", 1, MOST_AT_HAND) : unsaid;
    }
}
