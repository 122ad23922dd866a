package tideover.app.files;

import de.siegmar.fastcsv.reader.CommentStrategy;
import de.siegmar.fastcsv.reader.CsvParseException;
import de.siegmar.fastcsv.reader.CsvReader;
import de.siegmar.fastcsv.reader.CsvRecord;
import de.siegmar.fastcsv.reader.FieldMismatchStrategy;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import tideover.engine.part.Battery;
import tideover.engine.part.Build;
import tideover.engine.part.ChargeController;
import tideover.engine.part.Condition;
import tideover.engine.part.ControllerRating;
import tideover.engine.part.Enclosure;
import tideover.engine.part.Housing;
import tideover.engine.part.Inverter;
import tideover.engine.part.InverterRating;
import tideover.engine.part.Listing;
import tideover.engine.part.Outlet;
import tideover.engine.part.Part;
import tideover.engine.part.ReadyBox;
import tideover.engine.part.Store;
import tideover.engine.why.Stated;

/**
 * The parts that may be bought: a table of comma-separated values with a header, one part a row, the unit of each figure
 * in its column's name. {@code docs/parts-file.md} tells every column.
 */
public final class PartsFile {
    static final List<String> KINDS =
            List.of("box", "enclosure", "battery", "panel", "controller", "inverter", "charger");
    static final List<String> LISTING_COLUMNS =
            List.of("kind", "id", "name", "price", "currency", "priced_on", "condition", "mass_kg");
    /** Every column a file may have, in the order of the docs. */
    static final List<String> COLUMNS = columns();

    static final Range EFFICIENCY_PCT = Range.from(10, 100).likely(60, 100);
    static final Range VOLTS = Range.above(0, 1000).likely(5, 60);
    private static final int MOST_PARTS = 2000;
    private static final int MOST_AT_HAND = 1000;
    private static final double STAND_IN_BUS_V = 12;

    private PartsFile() {}

    /** Parts read, in the file's order, with the one currency of their prices. */
    public record Content(List<Part> parts, String currency, List<String> cautions) {}

    /** Reads a parts file by itself. Throws {@code InputProblems} with everything that is wrong in it. */
    public static Content read(Path file) {
        Reading reading = new Reading();
        String name = fileName(file);
        List<Part> parts = read(reading, Beside.folder(folderOf(file)), name, name, null);
        reading.throwIfWrong();
        return new Content(parts, parts.get(0).listing().currency(), reading.cautions());
    }

    static String fileName(Path file) {
        Path last = file.getFileName();
        return last == null ? file.toString() : last.toString();
    }

    static Path folderOf(Path file) {
        Path parent = file.toAbsolutePath().getParent();
        return parent == null ? file.toAbsolutePath() : parent;
    }

    /**
     * Reads a parts file on behalf of a plan.
     *
     * @param where         what to blame where there is no such file
     * @param plansCurrency the plan's own, or null where unknown
     */
    static List<Part> read(Reading reading, Beside beside, String name, String where, @Nullable String plansCurrency) {
        String text = FileText.read(reading, beside, name, where, "a parts file");
        return text == null ? List.of() : read(reading, text, name, plansCurrency);
    }

    static List<Part> read(Reading reading, String text, String name, @Nullable String plansCurrency) {
        List<Part> parts = new ArrayList<>();
        Map<String, String> sourceById = new HashMap<>();
        Prices prices = new Prices(plansCurrency);
        PartsHeader header = null;
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
                    header = PartsHeader.read(reading, name, row);
                    if (header == null) {
                        return List.of();
                    }
                    continue;
                }
                if (parts.size() == MOST_PARTS) {
                    reading.problem(name, "more than " + MOST_PARTS + " parts", "at most " + MOST_PARTS, "");
                    break;
                }
                Part part = part(reading, name, header, row, prices);
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
        if (header == null || (parts.isEmpty() && reading.flaws() == 0)) {
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

    private static @Nullable Part part(
            Reading reading, String file, PartsHeader header, CsvRecord record, Prices prices) {
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
        String kind = row.choice("kind", "the kind of part", KINDS);
        Listing listing = listing(row, prices);
        row.cell("remark");
        if (kind == null) {
            return null;
        }
        Part part = listing == null ? rest(row, kind, placeholder()) : rest(row, kind, listing);
        row.tellUnused(kind);
        return reading.flaws() == before ? part : null;
    }

    /** Stands in for a listing that is wrong, so that the row's other cells are looked at too. */
    private static Listing placeholder() {
        return new Listing("x", "x", 0, "USD", LocalDate.EPOCH, Condition.OWNED, 1, 1, "");
    }

    private static @Nullable Listing listing(Row row, Prices prices) {
        String id = row.text("id", "a short name of the part", 40);
        if (!id.isEmpty() && !id.matches("[A-Za-z0-9][A-Za-z0-9._-]*")) {
            row.problem("id", Reading.quoted(id), "letters, digits, point, hyphen and underscore only", "");
        }
        String name = row.text("name", "what the part is called", 120);
        String conditionWord = row.choice("condition", "how it comes", List.of("new", "used", "owned"));
        Condition condition = conditionWord == null ? null : Condition.valueOf(conditionWord.toUpperCase(Locale.ROOT));
        Money price = prices.read(row, condition);
        LocalDate pricedOn = row.date("priced_on", "the day the price was read");
        double massKg =
                row.number("mass_kg", "the mass", "kg", Range.from(0, 10_000).likely(0.05, 100));
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

    private static @Nullable Part rest(Row row, String kind, Listing listing) {
        int before = row.flaws();
        Part part = switch (kind) {
            case "battery" -> battery(row, listing);
            case "panel" -> PanelColumns.read(row, listing);
            case "controller" -> controller(row, listing);
            case "inverter" -> inverter(row, listing);
            case "charger" -> ChargerColumns.read(row, listing);
            case "box" -> box(row, listing);
            case "enclosure" -> enclosure(row, listing);
            default -> throw new IllegalStateException("kind " + kind);
        };
        return row.flaws() > before ? null : part;
    }

    private static @Nullable Part battery(Row row, Listing listing) {
        Store store = StoreColumns.read(row, listing);
        int mostInParallel = countOrOne(row, "most_in_parallel", "how many may be side by side");
        int mostInSeries = countOrOne(row, "most_in_series", "how many may be in a row");
        Build build = FitColumns.build(row);
        return store == null ? null : new Battery(listing, store, mostInParallel, mostInSeries, build);
    }

    private static int countOrOne(Row row, String column, String what) {
        return row.has(column) ? row.count(column, what, 1, 100) : 1;
    }

    private static @Nullable Part controller(Row row, Listing listing) {
        ControllerRating rating = ControllerColumns.read(row, Double.NaN);
        double leastBusV = rating == null ? Double.NaN : rating.leastBusV();
        double mostBusV = rating == null ? Double.NaN : rating.mostBusV();
        List<Outlet> outlets = OutletsText.of(row, "controller", false, false, leastBusV, mostBusV);
        return rating == null ? null : new ChargeController(listing, rating, outlets);
    }

    private static @Nullable Part inverter(Row row, Listing listing) {
        InverterRating rating = InverterColumns.read(row, Double.NaN);
        List<Outlet> outlets = OutletsText.of(row, "inverter", true, true, Double.NaN, Double.NaN);
        return rating == null ? null : new Inverter(listing, rating, outlets);
    }

    private static @Nullable Part box(Row row, Listing listing) {
        Store store = StoreColumns.read(row, listing);
        Electronics electronics = Electronics.read(row, "box", store == null ? Double.NaN : store.nominalV());
        double mainsW = row.numberIfAny(
                "mains_charge_w",
                "watts into its battery from the mains",
                "W",
                Range.above(0, 100_000).likely(10, 3000));
        Stated keepsRainOut = row.stated(FitColumns.RAIN, FitColumns.RAIN_WORDS);
        return store == null
                ? null
                : new ReadyBox(
                        listing,
                        store,
                        electronics.controller,
                        electronics.inverter,
                        electronics.outlets,
                        Double.isNaN(mainsW) ? 0 : mainsW,
                        keepsRainOut);
    }

    private static Part enclosure(Row row, Listing listing) {
        double batteryV = row.number("nominal_v", "the battery's volts", "V", VOLTS);
        Electronics electronics = Electronics.read(row, "enclosure", batteryV);
        Housing housing = FitColumns.housing(row);
        return new Enclosure(
                listing, batteryV, electronics.controller, electronics.inverter, electronics.outlets, housing);
    }

    /** What is built into a box or an enclosure. Where any of its columns is filled, a controller or inverter is there. */
    private record Electronics(
            @Nullable ControllerRating controller, @Nullable InverterRating inverter, List<Outlet> outlets) {
        /** @param busV volts of the battery inside; NaN where they are wrong */
        static Electronics read(Row row, String kind, double busV) {
            // wrong volts are told already; the bus columns need not complain as well
            double ownBusV = Double.isNaN(busV) ? STAND_IN_BUS_V : busV;
            boolean hasInverter = row.hasAny(InverterColumns.ALL);
            return new Electronics(
                    row.hasAny(ControllerColumns.ALL) ? ControllerColumns.read(row, ownBusV) : null,
                    hasInverter ? InverterColumns.read(row, ownBusV) : null,
                    OutletsText.of(row, kind, hasInverter, true, ownBusV, ownBusV));
        }
    }

    private static List<String> columns() {
        List<String> all = new ArrayList<>(LISTING_COLUMNS);
        all.add("at_hand");
        all.addAll(StoreColumns.PLAIN);
        all.addAll(StoreColumns.SHARED);
        all.addAll(RatedColumns.ALL);
        all.addAll(List.of("most_in_parallel", "most_in_series"));
        all.addAll(FitColumns.BATTERY);
        all.addAll(FitColumns.ENCLOSURE);
        all.addAll(ControllerColumns.ALL);
        all.addAll(InverterColumns.ALL);
        all.add("mains_charge_w");
        all.addAll(ChargerColumns.OWN);
        all.addAll(PanelColumns.ALL);
        all.addAll(List.of("outlets", "remark"));
        return List.copyOf(all);
    }
}
