package tideover.app.web;

import de.siegmar.fastcsv.reader.CsvReader;
import de.siegmar.fastcsv.reader.CsvRecord;
import de.siegmar.fastcsv.writer.CsvWriter;
import io.javalin.config.RoutesConfig;
import io.javalin.http.BadRequestResponse;
import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import java.io.IOException;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeSet;
import org.jspecify.annotations.Nullable;
import tideover.app.files.PartsFile;
import tideover.app.files.PlanFile;
import tideover.app.files.PlanText;
import tideover.app.report.ChosenCsv;
import tideover.app.report.Templates;
import tideover.app.report.Words;
import tideover.app.store.Store;
import tideover.app.store.StoredPlan;
import tideover.engine.answer.Answer;
import tideover.engine.part.Condition;
import tideover.engine.part.Listing;
import tideover.engine.part.Part;

/** The parts of a plan: a table to sift, files and pasted rows in, CSV out, and marks of what is owned already. */
public final class Parts {
    /** Rows marked by hand; a later file, so that it wins. */
    private static final String MARKED = "marked.csv";

    private static final String FILES = "parts";
    private static final int MOST_PASTED = 2_000_000;
    private static final String OWNED = "owned";

    private final Store store;
    private final Asking asking;
    private final PlanReader reader;
    private final Frames frames;

    Parts(Store store, Asking asking, PlanReader reader, Frames frames) {
        this.store = store;
        this.asking = asking;
        this.reader = reader;
        this.frames = frames;
    }

    void routes(RoutesConfig routes) {
        routes.get("/plans/{id}/parts", this::table);
        routes.post("/plans/{id}/parts", this::bringIn);
        routes.post("/plans/{id}/parts/mark", this::mark);
        routes.get("/plans/{id}/parts.csv", this::csv);
        routes.get("/plans/{id}/chosen.csv", this::chosen);
    }

    /**
     * The page of parts.
     *
     * @param kinds    all there are, to choose from
     * @param files    the plan's files of parts
     * @param problems what cannot be read; then the table is empty
     */
    public record View(
            Frame frame,
            long planId,
            String planName,
            List<Row> rows,
            int all,
            List<String> kinds,
            String kind,
            String wanted,
            String sort,
            List<String> files,
            List<String> problems) {
        public View {
            rows = List.copyOf(rows);
            kinds = List.copyOf(kinds);
            files = List.copyOf(files);
            problems = List.copyOf(problems);
        }
    }

    /** One part. */
    public record Row(
            String id,
            String kind,
            String name,
            String price,
            String condition,
            String mass,
            String dated,
            boolean owned) {}

    private void table(Context request) {
        request.html(Templates.render("sheet/parts.jte", view(request, List.of())));
    }

    private View view(Context request, List<String> added) {
        StoredPlan plan = plan(request);
        PlanReader.Read read = reader.read(plan);
        List<String> problems = new ArrayList<>(added);
        read.problems().forEach(problem -> problems.add(problem.sentence()));
        List<Part> parts = read.question() == null ? List.of() : read.question().parts();
        String kind = query(request, "kind");
        String wanted = query(request, "q");
        String sort = query(request, "sort");
        List<Row> rows = parts.stream()
                .filter(part -> kind.isEmpty() || part.kind().equals(kind))
                .filter(part -> matches(part.listing(), wanted))
                .sorted((a, b) -> compare(a.listing(), b.listing(), sort))
                .map(part ->
                        row(part, read.question() == null ? "" : read.question().currency()))
                .toList();
        PlanText text = PlanText.of(plan.text());
        return new View(
                frames.of(request, text.get("plan").orElse(""), plan.id(), "parts"),
                plan.id(),
                text.get("plan").orElse(""),
                rows,
                parts.size(),
                new ArrayList<>(new TreeSet<>(parts.stream().map(Part::kind).toList())),
                kind,
                wanted,
                sort,
                named(text),
                problems);
    }

    private static List<String> named(PlanText text) {
        List<String> names = new ArrayList<>();
        int count = text.count(FILES);
        for (int number = 1; number <= count; number++) {
            text.get(FILES + "[" + number + "]").ifPresent(names::add);
        }
        if (count == 0) {
            text.get(FILES).ifPresent(names::add);
        }
        return names;
    }

    private static boolean matches(Listing listing, String wanted) {
        String all = (listing.id() + " " + listing.name() + " " + listing.condition()).toLowerCase(Locale.ROOT);
        for (String word : wanted.toLowerCase(Locale.ROOT).split("\\s+")) {
            if (!all.contains(word)) {
                return false;
            }
        }
        return true;
    }

    private static int compare(Listing a, Listing b, String sort) {
        return switch (sort) {
            case "price" -> Long.compare(a.priceCents(), b.priceCents());
            case "mass" -> Double.compare(a.massKg(), b.massKg());
            case "name" -> a.name().compareToIgnoreCase(b.name());
            default -> 0;
        };
    }

    private static Row row(Part part, String currency) {
        Listing listing = part.listing();
        return new Row(
                listing.id(),
                part.kind(),
                listing.name(),
                Words.money(listing.priceCents(), currency),
                listing.condition().name().toLowerCase(Locale.ROOT),
                String.format(Locale.ROOT, "%.1f kg", listing.massKg()),
                listing.pricedOn().toString(),
                listing.condition() == Condition.OWNED);
    }

    // --- in

    /** A file of parts, or rows pasted out of a spreadsheet; refused as a whole where anything in it is wrong. */
    private void bringIn(Context request) throws IOException {
        StoredPlan plan = plan(request);
        String pasted = request.formParam("pasted");
        String name;
        byte[] bytes;
        if (Uploads.came(request)) {
            Uploads.Sent sent = Uploads.sent(request);
            name = Uploads.name(sent.name(), "parts.csv");
            bytes = sent.bytes();
        } else if (pasted != null && !pasted.isBlank() && pasted.length() <= MOST_PASTED) {
            name = freeName(plan, "pasted");
            bytes = fromSpreadsheet(pasted).getBytes(StandardCharsets.UTF_8);
        } else {
            throw new BadRequestResponse("Neither a file nor pasted rows came with that, or too much.");
        }
        List<String> problems = takeIn(plan, name, bytes);
        if (!problems.isEmpty()) {
            request.status(HttpStatus.UNPROCESSABLE_CONTENT);
            request.html(Templates.render("sheet/parts.jte", view(request, problems)));
            return;
        }
        request.redirect("/plans/" + plan.id() + "/parts", HttpStatus.SEE_OTHER);
    }

    private static String freeName(StoredPlan plan, String stem) {
        int number = 1;
        while (plan.files().containsKey(stem + "-" + number + ".csv")) {
            number++;
        }
        return stem + "-" + number + ".csv";
    }

    /** Spreadsheets put tabs between cells; what has none is taken for commas already. */
    private static String fromSpreadsheet(String pasted) {
        if (pasted.indexOf('\t') < 0) {
            return pasted;
        }
        StringWriter out = new StringWriter();
        try (CsvReader<CsvRecord> reader =
                        CsvReader.builder().fieldSeparator('\t').ofCsvRecord(pasted);
                CsvWriter writer = CsvWriter.builder().build(out)) {
            for (CsvRecord record : reader) {
                writer.writeRecord(record.getFields());
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return out.toString();
    }

    /** Adds a file to the plan's parts if the plan can be read with it; else tells what is wrong and changes nothing. */
    private List<String> takeIn(StoredPlan plan, String name, byte[] bytes) {
        PlanText text = PlanText.of(plan.text());
        List<String> names = new ArrayList<>(named(text));
        if (!names.contains(name)) {
            names.add(name);
        }
        PlanText with = text.with(FILES, "[" + String.join(", ", names) + "]");
        List<String> problems = reader.newTroubles(plan, with.text(), name, bytes);
        if (problems.isEmpty()) {
            store.putFile(plan.id(), name, bytes);
            StoredPlan now = store.plan(plan.id()).orElseThrow(Sheets::noPlan);
            store.replace(plan.id(), now.revision(), text.get("plan").orElse(""), with.text());
        }
        return problems;
    }

    /** Marks a part as owned, at no price, or takes the mark off; by a row in a file of marks that comes after all others. */
    private void mark(Context request) {
        StoredPlan plan = plan(request);
        PlanFile.@Nullable Plan read = reader.read(plan).plan();
        String id = String.valueOf(request.formParam("part"));
        if (read == null || !read.typedById().containsKey(id)) {
            throw new BadRequestResponse("There is no such part in this plan.");
        }
        Map<String, Map<String, String>> marked = marked(plan);
        if ("yes".equals(request.formParam(OWNED))) {
            Map<String, String> row = new LinkedHashMap<>(read.typedById().get(id));
            row.put("condition", OWNED);
            row.put("price", "0");
            row.put("at_hand", "1");
            row.keySet().removeAll(List.of("shipping", "volume_prices", "seller"));
            marked.put(id, row);
        } else {
            marked.remove(id);
        }
        List<String> problems = marked.isEmpty() ? dropMarks(plan) : takeIn(plan, MARKED, csv(marked.values()));
        if (!problems.isEmpty()) {
            throw new BadRequestResponse(problems.get(0));
        }
        request.redirect("/plans/" + plan.id() + "/parts?" + back(request), HttpStatus.SEE_OTHER);
    }

    private static String back(Context request) {
        return "q=" + Addresses.of(String.valueOf(request.formParam("q")))
                + "&kind=" + Addresses.of(String.valueOf(request.formParam("kind")))
                + "&sort=" + Addresses.of(String.valueOf(request.formParam("sort")));
    }

    private List<String> dropMarks(StoredPlan plan) {
        PlanText text = PlanText.of(plan.text());
        List<String> names = new ArrayList<>(named(text));
        if (names.remove(MARKED)) {
            store.replace(
                    plan.id(),
                    plan.revision(),
                    text.get("plan").orElse(""),
                    text.with(FILES, "[" + String.join(", ", names) + "]").text());
            store.removeFile(plan.id(), MARKED);
        }
        return List.of();
    }

    private static Map<String, Map<String, String>> marked(StoredPlan plan) {
        Map<String, Map<String, String>> rows = new LinkedHashMap<>();
        byte[] bytes = plan.files().get(MARKED);
        if (bytes != null) {
            CsvReader.builder()
                    .ofNamedCsvRecord(new String(bytes, StandardCharsets.UTF_8))
                    .forEach(record -> {
                        Map<String, String> row = new LinkedHashMap<>(record.getFieldsAsMap());
                        row.values().removeIf(String::isEmpty);
                        rows.put(row.getOrDefault("id", ""), row);
                    });
        }
        return rows;
    }

    private static byte[] csv(Iterable<Map<String, String>> rows) {
        return ChosenCsv.table(PartsFile.columnNames(), rows).getBytes(StandardCharsets.UTF_8);
    }

    // --- out

    /** All parts of the plan in one file, as they were typed. */
    private void csv(Context request) {
        PlanFile.@Nullable Plan read = reader.read(plan(request)).plan();
        if (read == null) {
            throw new BadRequestResponse("The plan cannot be read as it stands; mend the lines that are marked first.");
        }
        List<Map<String, String>> rows = new ArrayList<>();
        for (Part part : read.question().parts()) {
            rows.add(read.typedById().getOrDefault(part.listing().id(), Map.of()));
        }
        file(request, "parts.csv", csv(rows));
    }

    private void chosen(Context request) {
        StoredPlan plan = plan(request);
        PlanFile.@Nullable Plan read = reader.read(plan).plan();
        String rig = query(request, "rig");
        Answer answer = asking.standing(plan.id() + "|" + rig).answer();
        if (read == null || answer == null || answer.rig() == null) {
            throw new BadRequestResponse("There is no answer with a rig yet.");
        }
        StringWriter out = new StringWriter();
        try {
            ChosenCsv.write(answer.rig(), answer.question().currency(), PartsFile.columnNames(), read.typedById(), out);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        file(request, "chosen.csv", out.toString().getBytes(StandardCharsets.UTF_8));
    }

    private static void file(Context request, String name, byte[] bytes) {
        request.header("Content-Disposition", "attachment; filename=\"" + name + "\"");
        request.contentType("text/csv;charset=utf-8").result(bytes);
    }

    private StoredPlan plan(Context request) {
        return store.plan(Sheets.id(request)).orElseThrow(Sheets::noPlan);
    }

    private static String query(Context request, String name) {
        String text = request.queryParam(name);
        return text == null || text.length() > 200 ? "" : text.strip();
    }
}
