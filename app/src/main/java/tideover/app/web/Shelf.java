package tideover.app.web;

import io.javalin.config.RoutesConfig;
import io.javalin.http.BadRequestResponse;
import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import tideover.app.files.Draft;
import tideover.app.files.LoadTemplates;
import tideover.app.files.PlanText;
import tideover.app.report.Templates;
import tideover.app.store.Store;
import tideover.app.store.StoreProblem;
import tideover.app.store.StoredPlan;
import tideover.engine.site.Stations;
import tideover.engine.why.InputProblems;

/** All plans: new, from an example, from a file, copied, renamed, deleted and brought back, and out again as files. */
public final class Shelf {
    private static final int LARGEST_PLAN = 1_000_000;

    private final Store store;
    private final Asking asking;
    private final Frames frames;
    private final PlanReader reader;
    private final Examples examples;
    private final Stations stations;

    Shelf(Store store, Asking asking, PlanReader reader, Frames frames, Examples examples, Stations stations) {
        this.reader = reader;
        this.stations = stations;
        this.store = store;
        this.asking = asking;
        this.frames = frames;
        this.examples = examples;
    }

    void routes(RoutesConfig routes) {
        routes.get("/", this::list);
        routes.get("/new", this::ask);
        routes.post("/new", this::begin);
        routes.post("/examples", this::fromExample);
        routes.post("/plans", this::bringIn);
        routes.post("/plans/{id}/copy", this::copy);
        routes.post("/plans/{id}/rename", this::rename);
        routes.post("/plans/{id}/delete", this::delete);
        routes.post("/plans/{id}/restore", this::restore);
        routes.get("/plans/{id}/plan.yaml", this::planFile);
        routes.get("/plans/{id}/plan.zip", this::zip);
        routes.post("/prefs", this::prefs);
        routes.get("/backup", this::backup);
        routes.post("/backup", this::putBack);
    }

    /** The page of all plans. */
    public record Plans(Frame frame, List<Row> plans, List<Row> deleted, String justDeleted) {}

    /** One plan. */
    public record Row(long id, String name, String told, String when) {}

    private void list(Context request) {
        List<Row> plans = store.plans().stream()
                .map(plan -> new Row(plan.id(), plan.name(), told(plan.id()), plan.changed()))
                .toList();
        List<Row> deleted = store.deleted().stream()
                .map(plan -> new Row(plan.id(), plan.name(), "", plan.changed()))
                .toList();
        String gone = Optional.ofNullable(request.queryParam("deleted")).orElse("");
        request.html(Templates.render(
                "sheet/plans.jte", new Plans(frames.of(request, "All plans", 0, "plans"), plans, deleted, gone)));
    }

    private String told(long id) {
        Standing standing = asking.standing(id + "|");
        return standing.answer() == null ? "" : tideover.app.report.Words.sentence(standing.answer());
    }

    /** A few short questions. */
    public record Ask(
            Frame frame, List<LoadTemplates.Template> templates, Draft.Answers given, List<String> problems) {}

    private void ask(Context request) {
        request.html(Templates.render(
                "sheet/new.jte",
                new Ask(
                        frames.of(request, "New plan", 0, "new"),
                        LoadTemplates.all(),
                        Draft.Answers.EMPTY,
                        List.of())));
    }

    private void begin(Context request) {
        Map<String, Integer> loads = new LinkedHashMap<>();
        for (LoadTemplates.Template one : LoadTemplates.all()) {
            int count = count(request.formParam("load-" + one.id()));
            if (count > 0) {
                loads.put(one.id(), count);
            }
        }
        Draft.Answers answers = new Draft.Answers(
                typed(request, "name"),
                typed(request, "station"),
                loads,
                typed(request, "hours"),
                request.formParams("months"),
                typed(request, "carried"),
                typed(request, "money"),
                room(typed(request, "room")));
        List<String> problems = Draft.problems(answers, stations);
        if (!problems.isEmpty()) {
            request.status(HttpStatus.UNPROCESSABLE_CONTENT);
            request.html(Templates.render(
                    "sheet/new.jte",
                    new Ask(frames.of(request, "New plan", 0, "new"), LoadTemplates.all(), answers, problems)));
            return;
        }
        String text = Draft.text(answers, stations, examples.parts(), examples.smallParts());
        long id = store.add(nameOf(text), text, examples.files());
        request.redirect("/plans/" + id, HttpStatus.SEE_OTHER);
    }

    private static String room(String typed) {
        return List.of("indoors", "garage", "shed", "outdoors").contains(typed) ? typed : "indoors";
    }

    private static int count(@Nullable String digits) {
        return digits != null && digits.matches("[0-9]{1,2}") ? Integer.parseInt(digits) : 0;
    }

    private void fromExample(Context request) {
        long id = examples.add(store);
        request.redirect("/plans/" + id, HttpStatus.SEE_OTHER);
    }

    /** A plan file, or a plan with its files as ZIP. */
    private void bringIn(Context request) throws IOException {
        byte[] bytes = Uploads.sent(request).bytes();
        long id;
        if (bytes.length > 1 && bytes[0] == 'P' && bytes[1] == 'K') {
            try {
                Uploads.Packed packed = Uploads.unpacked(bytes);
                id = store.add(nameOf(packed.plan()), packed.plan(), packed.files());
            } catch (IllegalArgumentException e) {
                throw new BadRequestResponse(String.valueOf(e.getMessage()));
            }
        } else {
            if (bytes.length > LARGEST_PLAN) {
                throw new BadRequestResponse("A plan file holds at most 1 MB.");
            }
            String text = new String(bytes, StandardCharsets.UTF_8);
            id = store.add(nameOf(text), text, examples.files());
        }
        request.redirect("/plans/" + id, HttpStatus.SEE_OTHER);
    }

    /** The plan's title; whatever is no plan is refused here, in the reader's words. */
    private static String nameOf(String text) {
        try {
            return PlanText.of(text).get("plan").filter(name -> !name.isBlank()).orElse("Plan without a name");
        } catch (InputProblems e) {
            throw new BadRequestResponse(
                    "This is no plan file: " + e.problems().get(0).sentence());
        }
    }

    private void copy(Context request) {
        StoredPlan plan = plan(request);
        PlanText text = PlanText.of(plan.text());
        String name = "Copy of " + text.get("plan").orElse("a plan");
        long id = store.copy(plan.id(), name, text.with("plan", name).text());
        request.redirect("/plans/" + id, HttpStatus.SEE_OTHER);
    }

    private void rename(Context request) {
        StoredPlan plan = plan(request);
        String name = typed(request, "name");
        if (!name.isBlank()) {
            PlanText text = PlanText.of(plan.text()).with("plan", name);
            store.replace(plan.id(), plan.revision(), name, text.text());
        }
        request.redirect("/", HttpStatus.SEE_OTHER);
    }

    private void delete(Context request) {
        long id = Sheets.id(request);
        store.delete(id);
        asking.forget(id);
        request.redirect("/?deleted=" + id, HttpStatus.SEE_OTHER);
    }

    private void restore(Context request) {
        store.restore(Sheets.id(request));
        request.redirect("/", HttpStatus.SEE_OTHER);
    }

    private void planFile(Context request) {
        StoredPlan plan = plan(request);
        request.header("Content-Disposition", "attachment; filename=\"plan.yaml\"");
        request.contentType("application/yaml;charset=utf-8").result(plan.text());
    }

    private void zip(Context request) {
        StoredPlan plan = plan(request);
        request.header("Content-Disposition", "attachment; filename=\"plan.zip\"");
        request.contentType("application/zip").result(Uploads.packed(plan.text(), plan.files()));
    }

    /** Everything in one file. */
    private void backup(Context request) throws IOException {
        Path copy = Files.createTempFile("tideover", ".db");
        try {
            store.backup(copy, true);
            request.header("Content-Disposition", "attachment; filename=\"tideover-plans.db\"");
            request.contentType("application/vnd.sqlite3").result(Files.readAllBytes(copy));
        } finally {
            Files.deleteIfExists(copy);
        }
    }

    private void putBack(Context request) throws IOException {
        byte[] bytes = Uploads.sent(request).bytes();
        Path copy = Files.createTempFile("tideover", ".db");
        try {
            Files.write(copy, bytes);
            store.takeOver(copy);
        } catch (StoreProblem e) {
            throw new BadRequestResponse("That file is no sound copy of Tideover's plans; nothing was changed.");
        } finally {
            Files.deleteIfExists(copy);
        }
        asking.forgetAll();
        reader.forgetAll();
        request.redirect("/", HttpStatus.SEE_OTHER);
    }

    private void prefs(Context request) {
        frames.choose(request);
        String back = typed(request, "back");
        request.redirect(
                back.matches("/[A-Za-z0-9?=&%+._/-]*") && !back.startsWith("//") ? back : "/", HttpStatus.SEE_OTHER);
    }

    private StoredPlan plan(Context request) {
        return store.plan(Sheets.id(request)).orElseThrow(Sheets::noPlan);
    }

    private static String typed(Context request, String name) {
        String text = request.formParam(name);
        return text == null ? "" : text.strip();
    }
}
