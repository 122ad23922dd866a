package tideover.app.files;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;
import tideover.engine.part.Condition;
import tideover.engine.part.Listing;
import tideover.engine.part.Selling;
import tideover.engine.why.Basis;
import tideover.engine.why.MarginNote;

/**
 * Things that may be bought, one a row or one an item of a list: what the file of parts and that of small parts share.
 *
 * @param <P> what a row becomes
 */
final class PartsTable<P> {
    private static final int MOST_PARTS = 2000;
    private static final int LONGEST_FILE_NAME = 400;
    private static final int MOST_AT_HAND = 1000;

    /** Columns for people, and those that {@code --chosen} writes. */
    static final List<String> PASSED_OVER = List.of("needed", "bought", "paid", "remark");

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
    private final Function<P, Listing> listings;

    PartsTable(Form form, KindReader<P> kinds, Function<P, Listing> listings) {
        this.form = form;
        this.kinds = kinds;
        this.listings = listings;
    }

    /** Takes the rows of a file, one after the other. */
    interface Taker {
        /**
         * @param whole false where cells are missing or too many, which is told
         * @return whether to go on
         */
        boolean take(Row row, boolean whole);
    }

    /**
     * Reads the files that a plan names, one upon the other: a part whose id stands in an earlier file too takes that one's
     * place, wholly, and a note says so.
     *
     * @param files         fields that name a file each
     * @param plansCurrency the plan's own, or null where unknown
     * @param taken         where each id of the plan's other parts stands; these files' are added
     */
    List<P> read(
            Reading reading,
            Beside beside,
            List<Field> files,
            @Nullable String plansCurrency,
            Map<String, String> taken) {
        Map<String, P> byId = new LinkedHashMap<>();
        Map<String, String> sourceById = new HashMap<>();
        Map<String, Field> fieldByName = new HashMap<>();
        String currency = plansCurrency;
        for (Field file : files) {
            String name = file.text("the name of " + form.words(), LONGEST_FILE_NAME);
            if (name.isEmpty()) {
                continue;
            }
            Field earlier = fieldByName.putIfAbsent(name.replaceFirst("^(\\./+)+", ""), file);
            if (earlier != null) {
                file.problem(
                        Reading.quoted(name) + " a second time",
                        "each file once",
                        "The first stands in line " + earlier.line() + ".");
                continue;
            }
            Map<String, String> own = new HashMap<>(taken);
            List<String> replaced = new ArrayList<>();
            for (P part : read(reading, beside, name, file.where(), currency, own)) {
                Listing listing = listings.apply(part);
                P before = byId.put(listing.id(), part);
                if (before != null) {
                    replaced.add(
                            listing.id() + " (" + listings.apply(before).source() + " by " + listing.source() + ")");
                }
                currency = currency == null ? listing.currency() : currency;
            }
            if (!replaced.isEmpty()) {
                reading.note(MarginNote.REPLACED_PARTS, String.join(", ", replaced), Basis.YOURS, file.source());
            }
            sourceById.putAll(own);
        }
        taken.putAll(sourceById);
        return List.copyOf(byId.values());
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
        int before = reading.flaws();
        AtomicInteger rows = new AtomicInteger();
        Taker taker = (row, whole) -> {
            // wrong ones too: a hopeless file need not be read to its end
            if (rows.getAndIncrement() == MOST_PARTS) {
                reading.problem(name, "more than " + MOST_PARTS + " parts", "at most " + MOST_PARTS, "");
                return false;
            }
            P part = whole && row.isOfPlainLength() ? part(reading, row, prices) : null;
            if (part != null) {
                parts.add(part);
            }
            checkId(row, sourceById);
            return true;
        };
        boolean readable = isYaml(name)
                ? PartsInYaml.read(reading, name, text, form, taker)
                : PartsInCsv.read(reading, name, text, form, taker);
        if (!readable) {
            return List.of();
        }
        prices.tell(reading);
        if (parts.isEmpty() && reading.flaws() == before) {
            reading.problem(
                    name,
                    "no part",
                    isYaml(name) ? "a list of at least one part" : "a header and at least one part",
                    "");
        }
        return parts;
    }

    private static boolean isYaml(String name) {
        String lower = name.toLowerCase(Locale.ROOT);
        return lower.endsWith(".yaml") || lower.endsWith(".yml");
    }

    private static void checkId(Row row, Map<String, String> sourceById) {
        String id = row.cell("id");
        String earlier = id.isEmpty() ? null : sourceById.putIfAbsent(id, row.source());
        if (earlier != null) {
            row.problem(
                    "id",
                    Reading.quoted(id) + " a second time",
                    "an id of its own for each part",
                    "The first stands at " + earlier + ".");
        }
    }

    private @Nullable P part(Reading reading, Row row, Prices prices) {
        int before = reading.flaws();
        String kind = row.choice("kind", "the kind of part", form.kinds());
        Listing listing = listing(row, prices);
        PASSED_OVER.forEach(row::cell);
        if (kind == null) {
            return null;
        }
        P part = kinds.read(row, kind, listing == null ? placeholder() : listing);
        row.tellUnused(kind);
        if (part != null && listing != null && reading.flaws() == before) {
            reading.typed(listing.id(), row.typed());
            return part;
        }
        return null;
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
        Selling selling = SellingColumns.read(row, condition, price);
        if (id.isEmpty()
                || name.isEmpty()
                || condition == null
                || price == null
                || pricedOn == null
                || selling == null
                || Double.isNaN(massKg)) {
            return null;
        }
        return new Listing(
                id, name, price.cents(), price.currency(), pricedOn, condition, atHand, massKg, row.source(), selling);
    }

    /** How many can be had: of what is new as many as wanted, of anything else one, unless the row says otherwise. */
    private static int atHand(Row row, @Nullable Condition condition) {
        int unsaid = condition == Condition.NEW ? MOST_AT_HAND : 1;
        return row.has("at_hand") ? row.count("at_hand", "how many can be had", 1, MOST_AT_HAND) : unsaid;
    }
}
