package tideover.app.files;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import org.jspecify.annotations.Nullable;
import tideover.engine.part.Battery;
import tideover.engine.part.BatteryCase;
import tideover.engine.part.ChargeController;
import tideover.engine.part.ControllerRating;
import tideover.engine.part.Enclosure;
import tideover.engine.part.Housing;
import tideover.engine.part.Inverter;
import tideover.engine.part.InverterRating;
import tideover.engine.part.Listing;
import tideover.engine.part.Outlet;
import tideover.engine.part.Part;
import tideover.engine.part.ReadyBox;
import tideover.engine.part.SocketBoard;
import tideover.engine.part.Store;
import tideover.engine.why.Stated;

/**
 * The parts that may be bought: a table of comma-separated values with a header, one part a row, the unit of each figure
 * in its column's name. {@code docs/parts-file.md} tells every column.
 */
public final class PartsFile {
    static final List<String> KINDS = List.of(
            "box",
            "enclosure",
            "battery",
            "panel",
            "controller",
            "inverter",
            "charger",
            "sockets",
            "engine",
            "vehicle",
            "jug",
            "cooler",
            "stand-in");
    static final List<String> LISTING_COLUMNS =
            List.of("kind", "id", "name", "price", "currency", "priced_on", "condition", "mass_kg");
    /** Every column a file may have, in the order of the docs. */
    static final List<String> COLUMNS = columns();

    static final Range EFFICIENCY_PCT = Range.from(10, 100).likely(60, 100);
    static final Range VOLTS = Range.above(0, 1000).likely(5, 60);
    private static final double STAND_IN_BUS_V = 12;
    /** Nominal volts of batteries that a board of sockets may hang on. */
    private static final double LEAST_BOARD_BUS_V = 12;

    private static final double MOST_BOARD_BUS_V = 51.2;
    static final PartsTable<Part> TABLE = new PartsTable<>(
            new PartsTable.Form(
                    "a parts file",
                    "docs/parts-file.md",
                    KINDS,
                    COLUMNS,
                    LISTING_COLUMNS,
                    Range.from(0, 10_000).likely(0.05, 100)),
            PartsFile::part,
            Part::listing);

    private PartsFile() {}

    /** Parts read, in the file's order, with the one currency of their prices. */
    public record Content(List<Part> parts, String currency, List<String> cautions) {}

    /** Reads a parts file by itself. Throws {@code InputProblems} with everything that is wrong in it. */
    public static Content read(Path file) {
        Reading reading = new Reading();
        String name = fileName(file);
        List<Part> parts = TABLE.read(reading, Beside.alone(file), name, name, null, new HashMap<>());
        reading.throwIfWrong();
        return new Content(parts, parts.get(0).listing().currency(), reading.cautions());
    }

    /** Every column a file may have, in the order of the docs. */
    public static List<String> columnNames() {
        return COLUMNS;
    }

    static String fileName(Path file) {
        Path last = file.getFileName();
        return last == null ? file.toString() : last.toString();
    }

    static Path folderOf(Path file) {
        Path parent = file.toAbsolutePath().getParent();
        return parent == null ? file.toAbsolutePath() : parent;
    }

    private static @Nullable Part part(Row row, String kind, Listing listing) {
        int before = row.flaws();
        Part part = switch (kind) {
            case "battery" -> battery(row, listing);
            case "panel" -> PanelColumns.read(row, listing);
            case "controller" -> controller(row, listing);
            case "inverter" -> inverter(row, listing);
            case "charger" -> ChargerColumns.read(row, listing);
            case "sockets" -> sockets(row, listing);
            case "engine" -> EngineColumns.read(row, listing, false);
            case "vehicle" -> EngineColumns.read(row, listing, true);
            case "jug" -> AidColumns.jug(row, listing);
            case "cooler" -> AidColumns.cooler(row, listing);
            case "stand-in" -> AidColumns.standIn(row, listing);
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
        BatteryCase casing = FitColumns.casing(row);
        return store == null ? null : new Battery(listing, store, mostInParallel, mostInSeries, casing);
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

    /** It hangs on whatever battery a rig has, so only volts that no battery makes must tell their converter. */
    private static Part sockets(Row row, Listing listing) {
        return new SocketBoard(
                listing, OutletsText.of(row, "sockets", false, true, LEAST_BOARD_BUS_V, MOST_BOARD_BUS_V));
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
        all.addAll(SellingColumns.ALL);
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
        all.addAll(EngineColumns.OWN);
        all.addAll(PanelColumns.ALL);
        all.addAll(AidColumns.ALL);
        all.add("outlets");
        all.addAll(PartsTable.PASSED_OVER);
        return List.copyOf(all);
    }
}
