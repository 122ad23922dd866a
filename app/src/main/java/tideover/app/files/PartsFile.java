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
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import tideover.engine.load.Supply;
import tideover.engine.part.Battery;
import tideover.engine.part.ChargeController;
import tideover.engine.part.Condition;
import tideover.engine.part.ControllerRating;
import tideover.engine.part.Enclosure;
import tideover.engine.part.Inverter;
import tideover.engine.part.InverterRating;
import tideover.engine.part.Listing;
import tideover.engine.part.Outlet;
import tideover.engine.part.Panel;
import tideover.engine.part.Part;
import tideover.engine.part.PlainStore;
import tideover.engine.part.ReadyBox;

/**
 * The parts that may be bought: a table of comma-separated values with a header, one part a row, the unit of each figure
 * in its column's name. {@code docs/parts-file.md} tells every column.
 */
public final class PartsFile {
    static final List<String> KINDS = List.of("box", "enclosure", "battery", "panel", "controller", "inverter");
    static final List<String> LISTING_COLUMNS =
            List.of("kind", "id", "name", "price", "currency", "priced_on", "condition", "mass_kg");
    static final List<String> STORE_COLUMNS = List.of(
            "usable_wh",
            "charge_efficiency_pct",
            "discharge_efficiency_pct",
            "nominal_v",
            "max_charge_a",
            "max_discharge_a");
    static final List<String> CONTROLLER_COLUMNS =
            List.of("max_output_a", "max_input_v", "least_bus_v", "most_bus_v", "controller_efficiency_pct");
    static final List<String> INVERTER_COLUMNS =
            List.of("rated_w", "inverter_efficiency_pct", "standing_w", "inverter_input_v");
    static final List<String> PANEL_COLUMNS =
            List.of("panel_w", "open_circuit_v", "power_pct_per_k", "voltage_pct_per_k", "noct_c");
    /** Every column a file may have, in the order of the docs. */
    static final List<String> COLUMNS = columns();

    private static final Range EFFICIENCY_PCT = Range.from(10, 100).likely(60, 100);
    private static final Range VOLTS = Range.above(0, 1000).likely(5, 60);
    private static final int MOST_PARTS = 2000;
    private static final int MOST_AT_HAND = 1000;
    private static final double STAND_IN_BUS_V = 12;
    private static final double DIFFERENT_VOLTS = 0.25;

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
        Header header = null;
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
                    header = Header.read(reading, name, row);
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

    private static @Nullable Part part(Reading reading, String file, Header header, CsvRecord record, Prices prices) {
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
        Part part = listing == null ? rest(reading, row, kind, placeholder()) : rest(reading, row, kind, listing);
        row.tellUnused(kind);
        return reading.flaws() == before ? part : null;
    }

    /** Stands in for a listing that is wrong, so that the row's other cells are looked at too. */
    private static Listing placeholder() {
        return new Listing("x", "x", 0, "USD", LocalDate.EPOCH, Condition.OWNED, 1, 0, "");
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

    private static @Nullable Part rest(Reading reading, Row row, String kind, Listing listing) {
        int before = reading.flaws();
        boolean isBox = kind.equals("box");
        boolean isEnclosure = kind.equals("enclosure");
        PlainStore store = isBox || kind.equals("battery") ? store(reading, row) : null;
        double batteryV = isEnclosure ? row.number("nominal_v", "the battery's volts", "V", VOLTS) : Double.NaN;
        double ownBusV = isBox || isEnclosure ? store != null ? store.nominalV() : batteryV : Double.NaN;
        if ((isBox || isEnclosure) && Double.isNaN(ownBusV)) {
            ownBusV = STAND_IN_BUS_V; // told already; the bus columns need not complain as well
        }
        return switch (kind) {
            case "battery" -> {
                int most = row.has("most_in_parallel")
                        ? row.count("most_in_parallel", "how many may be side by side", 1, 100)
                        : 1;
                yield store == null || reading.flaws() > before ? null : new Battery(listing, store, most);
            }
            case "panel" -> panel(reading, row, listing);
            case "controller" -> {
                ControllerRating rating = controller(reading, row, Double.NaN);
                List<Outlet> outlets = outlets(
                        reading,
                        row,
                        kind,
                        false,
                        false,
                        rating == null ? Double.NaN : rating.leastBusV(),
                        rating == null ? Double.NaN : rating.mostBusV());
                yield rating == null || reading.flaws() > before
                        ? null
                        : new ChargeController(listing, rating, outlets);
            }
            case "inverter" -> {
                InverterRating rating = inverter(reading, row, Double.NaN);
                List<Outlet> outlets = outlets(reading, row, kind, true, true, Double.NaN, Double.NaN);
                yield rating == null || reading.flaws() > before ? null : new Inverter(listing, rating, outlets);
            }
            case "box", "enclosure" -> {
                boolean hasController = row.hasAny(CONTROLLER_COLUMNS);
                boolean hasInverter = row.hasAny(INVERTER_COLUMNS);
                ControllerRating controller = hasController ? controller(reading, row, ownBusV) : null;
                InverterRating inverter = hasInverter ? inverter(reading, row, ownBusV) : null;
                List<Outlet> outlets = outlets(reading, row, kind, hasInverter, true, ownBusV, ownBusV);
                if (reading.flaws() > before) {
                    yield null;
                }
                yield store != null
                        ? new ReadyBox(listing, store, controller, inverter, outlets)
                        : new Enclosure(listing, batteryV, controller, inverter, outlets);
            }
            default -> throw new IllegalStateException("kind " + kind);
        };
    }

    private static @Nullable PlainStore store(Reading reading, Row row) {
        int before = reading.flaws();
        double usableWh = row.number(
                "usable_wh",
                "what it stores between empty and full",
                "Wh",
                Range.above(0, 10_000_000).likely(20, 20_000));
        double chargePct = row.number("charge_efficiency_pct", "stored per delivered", "%", EFFICIENCY_PCT);
        double dischargePct = row.number("discharge_efficiency_pct", "given per taken out", "%", EFFICIENCY_PCT);
        double nominalV = row.number("nominal_v", "its volts", "V", VOLTS);
        double maxChargeA = row.number(
                "max_charge_a",
                "the most current into it",
                "A",
                Range.above(0, 10_000).likely(0.2, 500));
        double maxDischargeA = row.number(
                "max_discharge_a",
                "the most current out of it",
                "A",
                Range.above(0, 10_000).likely(0.5, 1000));
        if (reading.flaws() > before) {
            return null;
        }
        return new PlainStore(usableWh, chargePct / 100, dischargePct / 100, nominalV, maxChargeA, maxDischargeA);
    }

    /** @param ownBusV volts of the battery inside, for which the bus columns may stay empty; NaN where there is none */
    private static @Nullable ControllerRating controller(Reading reading, Row row, double ownBusV) {
        int before = reading.flaws();
        double maxOutputA = row.number(
                "max_output_a",
                "the most current out",
                "A",
                Range.above(0, 1000).likely(1, 150));
        double maxInputV = row.number(
                "max_input_v",
                "panel volts above which it is damaged",
                "V",
                Range.above(0, 2000).likely(15, 600));
        double leastBusV = busV(row, "least_bus_v", "the lowest battery volts it serves", ownBusV);
        double mostBusV = busV(row, "most_bus_v", "the highest battery volts it serves", ownBusV);
        double efficiencyPct = row.number("controller_efficiency_pct", "out per in", "%", EFFICIENCY_PCT);
        if (mostBusV < leastBusV) {
            row.problem("most_bus_v", Range.shown(mostBusV, "V"), "at least " + Range.shown(leastBusV, "V"), "");
        }
        if (reading.flaws() > before) {
            return null;
        }
        return new ControllerRating(maxOutputA, maxInputV, leastBusV, mostBusV, efficiencyPct / 100);
    }

    private static double busV(Row row, String column, String what, double ownBusV) {
        return Double.isNaN(ownBusV) || row.has(column) ? row.number(column, what, "V", VOLTS) : ownBusV;
    }

    private static @Nullable InverterRating inverter(Reading reading, Row row, double ownBusV) {
        int before = reading.flaws();
        double ratedW = row.number(
                "rated_w",
                "the watts it gives for hours",
                "W",
                Range.above(0, 100_000).likely(20, 8000));
        double efficiencyPct = row.number("inverter_efficiency_pct", "AC out per DC in", "%", EFFICIENCY_PCT);
        double standingW = row.number(
                "standing_w",
                "what it draws with nothing plugged in",
                "W",
                Range.from(0, 1000).likely(0.1, 60));
        double inputV = busV(row, "inverter_input_v", "the DC volts it wants", ownBusV);
        if (reading.flaws() > before) {
            return null;
        }
        return new InverterRating(ratedW, efficiencyPct / 100, standingW, inputV);
    }

    private static @Nullable Panel panel(Reading reading, Row row, Listing listing) {
        int before = reading.flaws();
        double ratedW =
                row.number("panel_w", "rated watts", "W", Range.above(0, 2000).likely(5, 700));
        double openCircuitV = row.number(
                "open_circuit_v",
                "volts with nothing connected",
                "V",
                Range.above(0, 300).likely(5, 80));
        double powerPct = row.number(
                "power_pct_per_k",
                "change of power per kelvin",
                "%/K",
                Range.from(-2, 0).likely(-0.6, -0.2));
        double voltPct = row.number(
                "voltage_pct_per_k",
                "change of open-circuit volts per kelvin",
                "%/K",
                Range.from(-2, 0).likely(-0.5, -0.2));
        double noctDegC = row.number(
                "noct_c",
                "cell temperature in its standard sun",
                "degC",
                Range.from(20, 90).likely(38, 55));
        if (reading.flaws() > before) {
            return null;
        }
        return new Panel(listing, ratedW, openCircuitV, powerPct / 100, voltPct / 100, noctDegC);
    }

    private static List<Outlet> outlets(
            Reading reading, Row row, String kind, boolean ac, boolean needed, double leastBusV, double mostBusV) {
        String text = row.cell("outlets");
        if (text.isEmpty()) {
            if (needed) {
                row.tellEmpty("outlets", OutletsText.EXPECTED);
            }
            return List.of();
        }
        List<Outlet> outlets = OutletsText.read(reading, row.where("outlets"), text);
        for (Outlet outlet : outlets) {
            Supply supply = outlet.supply();
            if (supply.isAc() && !ac) {
                row.problem(
                        "outlets",
                        "the outlet " + supply.words(),
                        "direct current only, for this " + kind + " has no inverter",
                        kind.equals("controller") ? "" : "Fill the inverter's columns.");
            }
            if (!supply.isAc() && kind.equals("inverter")) {
                row.problem("outlets", "the outlet " + supply.words(), "alternating current only from an inverter", "");
            }
            boolean converts = supply.volts() < leastBusV * (1 - DIFFERENT_VOLTS)
                    || supply.volts() > mostBusV * (1 + DIFFERENT_VOLTS);
            if (!supply.isAc() && converts && outlet.efficiency() == 1) {
                row.problem(
                        "outlets",
                        "the outlet " + supply.words() + " with no efficiency",
                        "the efficiency of its converter, for its volts are not the battery's",
                        "Write it after the watts, such as 90 %.");
            }
        }
        return outlets;
    }

    private static List<String> columns() {
        List<String> all = new ArrayList<>(LISTING_COLUMNS);
        all.add("at_hand");
        all.addAll(STORE_COLUMNS);
        all.add("most_in_parallel");
        all.addAll(CONTROLLER_COLUMNS);
        all.addAll(INVERTER_COLUMNS);
        all.addAll(PANEL_COLUMNS);
        all.add("outlets");
        all.add("remark");
        return List.copyOf(all);
    }

    /** What the first row says of the others. */
    private static final class Header {
        private final List<String> columnAt;
        private final Set<String> missing;

        private Header(List<String> columnAt, Set<String> missing) {
            this.columnAt = columnAt;
            this.missing = missing;
        }

        int width() {
            return columnAt.size();
        }

        static @Nullable Header read(Reading reading, String file, CsvRecord record) {
            String where = file + ":" + record.getStartingLineNumber();
            List<String> typed = record.getFields();
            if (typed.size() == 1 && (typed.get(0).contains(";") || typed.get(0).contains("\t"))) {
                reading.problem(
                        where,
                        "a header without commas",
                        "comma-separated values",
                        "Save the table with commas between cells.");
                return null;
            }
            if (typed.stream().map(Quantities::tidy).noneMatch(COLUMNS::contains)) {
                reading.problem(
                        where,
                        "no header",
                        "the names of the columns in the first row, such as " + String.join(",", LISTING_COLUMNS),
                        "");
                return null;
            }
            List<String> columnAt = new ArrayList<>();
            Set<String> seen = new HashSet<>();
            for (String cell : typed) {
                String word = Quantities.tidy(cell);
                String column = COLUMNS.contains(word) ? word : told(reading, where, word, columnAt.size() + 1);
                if (!column.isEmpty() && !seen.add(column)) {
                    reading.problem(where, "the column \"" + column + "\" twice", "each column once", "");
                    column = "";
                }
                columnAt.add(column);
            }
            Set<String> missing = new HashSet<>(COLUMNS);
            missing.removeAll(seen);
            for (String needed : LISTING_COLUMNS) {
                if (missing.contains(needed)) {
                    reading.problem(
                            where,
                            "no column \"" + needed + "\"",
                            "a header with " + String.join(",", LISTING_COLUMNS),
                            "");
                }
            }
            missing.retainAll(
                    LISTING_COLUMNS); // of these every row would complain; others are told where a kind needs them
            return new Header(columnAt, missing);
        }

        /** Tells of an unknown column and reads on under the nearest known name. */
        private static String told(Reading reading, String where, String word, int position) {
            Optional<String> nearest = Nearest.to(word, COLUMNS);
            reading.problem(
                    where,
                    word.isEmpty() ? "column " + position + " without a name" : "the column " + Reading.quoted(word),
                    nearest.map(right -> "the column \"" + right + "\"")
                            .orElse("a column that a parts file has; docs/parts-file.md lists them"),
                    nearest.map(right -> "Write " + right + ".").orElse(""));
            return nearest.orElse("");
        }

        Row row(Reading reading, String file, CsvRecord record) {
            Map<String, String> cells = new LinkedHashMap<>();
            for (int i = 0; i < columnAt.size(); i++) {
                if (!columnAt.get(i).isEmpty()) {
                    cells.put(columnAt.get(i), Quantities.tidy(record.getField(i)));
                }
            }
            return new Row(reading, file, record.getStartingLineNumber(), cells, missing);
        }

        void checkId(Reading reading, String file, CsvRecord record, Map<String, String> sourceById) {
            int at = columnAt.indexOf("id");
            if (at < 0 || at >= record.getFieldCount() || record.getField(at).isBlank()) {
                return;
            }
            String id = Quantities.tidy(record.getField(at));
            String source = file + ":" + record.getStartingLineNumber();
            String earlier = sourceById.putIfAbsent(id, source);
            if (earlier != null) {
                reading.problem(
                        source + " id",
                        Reading.quoted(id) + " a second time",
                        "an id of its own for each part",
                        "The first stands at " + earlier + ".");
            }
        }
    }

    /** Holds all prices of a file to one currency, the plan's. */
    private static final class Prices {
        private @Nullable String currency;
        private final boolean plansOwn;
        private @Nullable String firstOther;
        private String firstOtherAt = "";
        private int others;

        Prices(@Nullable String plansCurrency) {
            this.currency = plansCurrency;
            this.plansOwn = plansCurrency != null;
        }

        @Nullable
        Money read(Row row, @Nullable Condition condition) {
            String letters = row.text("currency", "the currency in three letters, such as USD", 20);
            if (!letters.isEmpty() && !Money.isCurrency(letters)) {
                row.problem("currency", Reading.quoted(letters), "a currency in three letters, such as USD", "");
                letters = "";
            }
            if (!letters.isEmpty()) {
                if (currency == null) {
                    currency = letters;
                } else if (!currency.equals(letters) && others++ == 0) {
                    firstOther = letters;
                    firstOtherAt = row.source();
                }
            }
            String typed = row.cell("price");
            if (typed.isEmpty()) {
                row.tellEmpty("price", "the price, such as 249.50");
                return null;
            }
            Money.Outcome outcome = Money.amount(typed, letters);
            Money price = outcome.money();
            if (price == null) {
                row.problem("price", Reading.quoted(typed), outcome.expected(), outcome.suggestion());
                return null;
            }
            if (condition == Condition.OWNED && price.cents() != 0) {
                row.problem("price", Reading.quoted(typed), "0, for what is owned costs nothing more", "");
            } else if (condition != null && condition != Condition.OWNED && price.cents() == 0) {
                row.caution("price", "a price of 0 for a part that is not owned.");
            } else if (price.cents() > 2_000_000) {
                row.caution("price", price.words() + " is taken, but is unlikely for one part.");
            }
            return letters.isEmpty() ? null : price;
        }

        void tell(Reading reading) {
            if (firstOther != null) {
                String more = others > 1 ? ", and " + (others - 1) + " more rows in another currency" : "";
                reading.problem(
                        firstOtherAt + " currency",
                        "\"" + firstOther + "\"" + more,
                        currency + (plansOwn ? ", the plan's currency" : ", as in the rows before")
                                + ", for every price",
                        "");
            }
        }
    }
}
