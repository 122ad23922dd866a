package tideover.app.files;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import tideover.engine.electronics.ConductorSize;
import tideover.engine.part.BatterySwitch;
import tideover.engine.part.Breaker;
import tideover.engine.part.Busbar;
import tideover.engine.part.Cable;
import tideover.engine.part.ControllerRating.PanelInput;
import tideover.engine.part.Cord;
import tideover.engine.part.Fitting;
import tideover.engine.part.Fuse;
import tideover.engine.part.FuseHolder;
import tideover.engine.part.Listing;
import tideover.engine.part.Lug;
import tideover.engine.part.PanelBranch;
import tideover.engine.part.PanelLead;
import tideover.engine.part.SmallPart;
import tideover.engine.part.Tool;
import tideover.engine.why.Stated;

/**
 * The small parts and tools that may be bought: cable, fuses, lugs and the like, a table as {@link PartsFile} reads one.
 * {@code docs/parts-file.md} tells every column.
 */
final class SmallPartsFile {
    static final List<String> KINDS = List.of(
            "cable",
            "cord",
            "fuse",
            "fuse holder",
            "breaker",
            "switch",
            "lug",
            "panel lead",
            "panel branch",
            "busbar",
            "fitting",
            "tool");

    /** Every column a file may have, in the order of the docs. */
    static final List<String> COLUMNS = columns();

    private static final Range AMPS = Range.above(0, 100_000).likely(0.5, 600);
    private static final Range FAULT_AMPS = Range.above(0, 1_000_000).likely(100, 300_000);
    private static final Range VOLTS = Range.above(0, 10_000).likely(5, 1500);
    private static final Range INSULATION_DEG_C = Range.from(40, 250).likely(60, 150);
    private static final Range CORD_M = Range.above(0, 500).likely(0.3, 50);
    private static final Range CABLE_M = Range.above(0, 1000).likely(0.3, 150);
    private static final int MOST_PIECES = 1000;
    private static final int LONGEST_WORD = 40;

    static final PartsTable<SmallPart> TABLE = new PartsTable<>(
            new PartsTable.Form(
                    "a file of small parts",
                    "docs/parts-file.md",
                    KINDS,
                    COLUMNS,
                    PartsFile.LISTING_COLUMNS.stream()
                            .filter(column -> !column.equals("mass_kg"))
                            .toList(),
                    Range.from(0, 10_000).likely(0, 100)),
            SmallPartsFile::part,
            SmallPart::listing);

    private SmallPartsFile() {}

    /** A fuse is of no use without a holder of its format, and a slip in the one word would pass in silence. */
    static void tellFusesWithoutHolder(Reading reading, List<SmallPart> parts) {
        Set<String> held = new LinkedHashSet<>();
        parts.forEach(part -> {
            if (part instanceof FuseHolder holder) {
                held.add(holder.format());
            }
        });
        Set<String> told = new HashSet<>(held);
        for (SmallPart part : parts) {
            if (part instanceof Fuse fuse && told.add(fuse.format())) {
                String nearest = Nearest.to(fuse.format(), held)
                        .map(format -> " Is it " + Reading.quoted(format) + "?")
                        .orElse("");
                reading.caution(fuse.listing().source() + " format: no fuse holder in the file takes the format "
                        + Reading.quoted(fuse.format()) + "." + nearest);
            }
        }
    }

    /** Each cell is read whether or not those before it were right, so that all is told at once. */
    private static @Nullable SmallPart part(Row row, String kind, Listing listing) {
        return switch (kind) {
            case "cable" -> cable(row, listing);
            case "cord" -> cord(row, listing);
            case "fuse" -> fuse(row, listing);
            case "fuse holder" -> holder(row, listing);
            case "breaker" -> breaker(row, listing);
            case "switch" -> batterySwitch(row, listing);
            case "lug" -> lug(row, listing);
            case "panel lead" -> panelLead(row, listing);
            case "panel branch" -> panelBranch(row, listing);
            case "busbar" -> busbar(row, listing);
            case "fitting" -> fitting(row, listing);
            case "tool" -> tool(row, listing);
            default -> throw new IllegalStateException("kind " + kind);
        };
    }

    private static @Nullable Cable cable(Row row, Listing listing) {
        int before = row.flaws();
        ConductorSize size = size(row);
        Cable.Metal metal = row.has("metal")
                ? row.choice("metal", "what its strands are of", List.of(Cable.Metal.values()), Cable.Metal::words)
                : Cable.Metal.UNKNOWN;
        double insulationDegC = insulationDegC(row);
        double metres = row.has("pack") ? row.number("pack", "metres that the price buys", "m", CABLE_M) : 1;
        return row.flaws() > before || size == null || metal == null
                ? null
                : new Cable(listing, size, metal, insulationDegC, metres);
    }

    private static @Nullable Cord cord(Row row, Listing listing) {
        int before = row.flaws();
        ConductorSize size = size(row);
        double lengthM = lengthM(row);
        double ratedA = ratedA(row, "what it carries for hours");
        double volts = row.number("volts", "the volts it is made for", "V", VOLTS);
        String plug = word(row, "plug", "its plug in words, such as NEMA 5-15");
        return row.flaws() > before || size == null ? null : new Cord(listing, size, lengthM, ratedA, volts, plug);
    }

    private static @Nullable Fuse fuse(Row row, Listing listing) {
        int before = row.flaws();
        String format = format(row);
        double ratedA = ratedA(row, "its rating");
        double dcV = dcVIfAny(row);
        double interruptingA = interruptingA(row);
        int pieces = pieces(row);
        return row.flaws() > before ? null : new Fuse(listing, format, ratedA, dcV, interruptingA, pieces);
    }

    private static @Nullable FuseHolder holder(Row row, Listing listing) {
        int before = row.flaws();
        String format = format(row);
        double mostA = ratedA(row, "what it carries for hours");
        int pieces = pieces(row);
        return row.flaws() > before ? null : new FuseHolder(listing, format, mostA, pieces);
    }

    private static @Nullable Breaker breaker(Row row, Listing listing) {
        int before = row.flaws();
        double ratedA = ratedA(row, "its rating");
        double dcV = dcVIfAny(row);
        double interruptingA = interruptingA(row);
        Stated polarised = row.stated("polarised", "whether direct current may pass one way only");
        return row.flaws() > before ? null : new Breaker(listing, ratedA, dcV, interruptingA, polarised);
    }

    private static @Nullable BatterySwitch batterySwitch(Row row, Listing listing) {
        int before = row.flaws();
        double ratedA = ratedA(row, "what it carries for hours");
        double dcV = row.number("dc_v", "direct volts that it can part", "V", VOLTS);
        return row.flaws() > before ? null : new BatterySwitch(listing, ratedA, dcV);
    }

    private static @Nullable Lug lug(Row row, Listing listing) {
        int before = row.flaws();
        ConductorSize size = size(row);
        int pieces = pieces(row);
        return row.flaws() > before || size == null ? null : new Lug(listing, size, pieces);
    }

    private static @Nullable PanelLead panelLead(Row row, Listing listing) {
        int before = row.flaws();
        String connector = connector(row);
        String farEnd = row.has("far_end")
                ? word(row, "far_end", "the make of the plugs at its other end, or screws for bare ends")
                : PanelInput.BARE_ENDS;
        ConductorSize size = size(row);
        double insulationDegC = insulationDegC(row);
        double lengthM = lengthM(row);
        double ratedA = ratedA(row, "what its plugs carry");
        return row.flaws() > before || size == null
                ? null
                : new PanelLead(listing, connector, farEnd, size, insulationDegC, lengthM, ratedA);
    }

    private static @Nullable PanelBranch panelBranch(Row row, Listing listing) {
        int before = row.flaws();
        String connector = connector(row);
        double ratedA = ratedA(row, "what its joined side carries");
        return row.flaws() > before ? null : new PanelBranch(listing, connector, ratedA);
    }

    private static @Nullable Busbar busbar(Row row, Listing listing) {
        int before = row.flaws();
        double ratedA = ratedA(row, "what it carries for hours");
        return row.flaws() > before ? null : new Busbar(listing, ratedA);
    }

    private static @Nullable Fitting fitting(Row row, Listing listing) {
        Fitting.Use use = row.choice("use", "what it is for", List.of(Fitting.Use.values()), Fitting.Use::words);
        int pieces = pieces(row);
        return use == null ? null : new Fitting(listing, use, pieces);
    }

    private static @Nullable Tool tool(Row row, Listing listing) {
        Tool.Job job = row.choice("job", "what it is for", List.of(Tool.Job.values()), Tool.Job::words);
        return job == null ? null : new Tool(listing, job);
    }

    private static @Nullable ConductorSize size(Row row) {
        String expected = "the size of the conductor, such as 10 AWG, 1/0 AWG or 6 mm2";
        String typed = row.text("size", expected, LONGEST_WORD);
        if (typed.isEmpty()) {
            return null;
        }
        Optional<ConductorSize> size = ConductorSize.named(typed);
        if (size.isEmpty()) {
            row.problem("size", Reading.quoted(typed), expected, sizeMeant(typed));
        }
        return size.orElse(null);
    }

    /** What to write for "10", "#10", "AWG 10", "10 gauge" or "6 mm"; empty where nothing can be guessed. */
    private static String sizeMeant(String typed) {
        String number = typed.replaceFirst("(?i)^(#|awg)\\s*", "")
                .replaceFirst("(?i)(ga|gauge|mm|mm\\^2|sqmm)$", "")
                .strip();
        boolean square = typed.toLowerCase(Locale.ROOT).contains("mm");
        String guess = number + (square ? " mm2" : " AWG");
        return ConductorSize.named(guess)
                .map(size -> "Write " + size.words() + ".")
                .orElse("");
    }

    private static double insulationDegC(Row row) {
        return row.number("insulation_c", "what its insulation is rated for", "degC", INSULATION_DEG_C);
    }

    private static double ratedA(Row row, String what) {
        return row.number("rated_a", what, "A", AMPS);
    }

    private static double lengthM(Row row) {
        return row.number("length_m", "its length", "m", CORD_M);
    }

    private static double dcVIfAny(Row row) {
        return row.numberIfAny("dc_v", "direct volts that it can part", "V", VOLTS);
    }

    private static double interruptingA(Row row) {
        return row.numberIfAny("interrupting_a", "the fault current that it can part at dc_v", "A", FAULT_AMPS);
    }

    private static String format(Row row) {
        return word(row, "format", "the format in words, such as blade, the same for a fuse and its holder");
    }

    private static String connector(Row row) {
        return word(row, "connector", "the make of its plugs, in the words of the panels");
    }

    private static String word(Row row, String column, String expected) {
        return row.text(column, expected, LONGEST_WORD);
    }

    private static int pieces(Row row) {
        return row.has("pack") ? row.count("pack", "pieces that the price buys", 1, MOST_PIECES) : 1;
    }

    private static List<String> columns() {
        List<String> all = new ArrayList<>(PartsFile.LISTING_COLUMNS);
        all.add("at_hand");
        all.addAll(SellingColumns.ALL);
        Stream.of(
                        "size",
                        "metal",
                        "insulation_c",
                        "pack",
                        "length_m",
                        "rated_a",
                        "dc_v",
                        "interrupting_a",
                        "polarised",
                        "format",
                        "connector",
                        "far_end",
                        "plug",
                        "volts",
                        "use",
                        "job")
                .forEach(all::add);
        all.addAll(PartsTable.PASSED_OVER);
        return List.copyOf(all);
    }
}
