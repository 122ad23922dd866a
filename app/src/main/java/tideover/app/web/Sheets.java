package tideover.app.web;

import io.javalin.config.RoutesConfig;
import io.javalin.http.BadRequestResponse;
import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import io.javalin.http.NotFoundResponse;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.UnaryOperator;
import org.jspecify.annotations.Nullable;
import tideover.app.files.LoadTemplates;
import tideover.app.files.PlanText;
import tideover.app.files.RigFile;
import tideover.app.report.HtmlReport;
import tideover.app.report.Page;
import tideover.app.report.Templates;
import tideover.app.report.Words;
import tideover.app.store.StaleEdit;
import tideover.app.store.Store;
import tideover.app.store.StoredPlan;
import tideover.engine.answer.Answer;
import tideover.engine.answer.Glimpse;
import tideover.engine.answer.Question;
import tideover.engine.rig.Assembly;
import tideover.engine.rig.Rig;
import tideover.engine.search.Rated;
import tideover.engine.site.Station;
import tideover.engine.site.Stations;
import tideover.engine.why.InputProblems;
import tideover.engine.why.MarginNote;

/** The sheet of one plan: shows it, takes what is typed, and tells the answer as it comes. */
final class Sheets {
    /** A change meets another program's change seldom, and hardly ever so often in a row. */
    private static final int MOST_TRIES = 20;

    private static final int MOST_STATIONS = 12;
    private static final int LONGEST_RIG = 400;
    private static final int MOST_PAGES = 6;

    private static final String JOINING = "money.hard-wired loads";

    private static final String FIGURES = """
            {latitude: 45 deg N, longitude: 0 deg W, height: 0 m, peak sun hours: [1, 1, 1, 1, 1, 1, 1, 1, 1, 1, 1, 1], \
            mean temperature: [10, 10, 10, 10, 10, 10, 10, 10, 10, 10, 10, 10 degC], source: to be typed}""";

    private final Store store;
    private final Asking asking;
    private final Stations stations;
    private final PlanReader reader;
    private final Frames frames;

    /** What answers show; drawing figures takes longer than all the rest of a page. */
    private final Map<Answer, Page> pages = new LinkedHashMap<>(MOST_PAGES, 0.75f, true);

    Sheets(Store store, Asking asking, Stations stations, PlanReader reader, Frames frames) {
        this.store = store;
        this.asking = asking;
        this.stations = stations;
        this.reader = reader;
        this.frames = frames;
    }

    void routes(RoutesConfig routes) {
        routes.get("/plans/{id}", this::sheet);
        routes.get("/plans/{id}/answer", this::answer);
        routes.post("/plans/{id}/edit", this::edit);
        routes.post("/plans/{id}/line", this::addLine);
        routes.post("/plans/{id}/load", this::addLoad);
        routes.post("/plans/{id}/take", this::take);
        routes.post("/plans/{id}/undo", this::undo);
        routes.post("/plans/{id}/weather", this::weather);
        routes.post("/plans/{id}/figures", this::figures);
        routes.get("/stations", this::suggestStations);
    }

    // --- showing

    private void sheet(Context request) {
        StoredPlan plan = plan(request);
        ask(plan, chosen(request));
        request.html(Templates.render("sheet/sheet.jte", sheet(request, plan)));
    }

    private Sheet sheet(Context request, StoredPlan plan) {
        PlanReader.Read read = reader.read(plan);
        String chosen = chosen(request);
        Standing base = asking.standing(key(plan.id(), ""));
        Standing standing = asking.standing(key(plan.id(), chosen));
        Answer answer = standing.answer();
        List<MarginNote> notes = answer != null && standing.isFresh() ? answer.notes() : List.of();
        Form.Lines lines = lines(plan, read, notes);
        AnswerView view = AnswerView.of(
                standing,
                read.question(),
                read.problems().size(),
                null,
                plan.revision(),
                "kept, " + plan.changed(),
                chosen,
                Form.shape(lines));
        return new Sheet(
                frames.of(request, lines.title().value(), plan.id(), "sheet"),
                plan.id(),
                plan.revision(),
                lines,
                view,
                answer == null ? null : page(answer, plan.id()),
                chosen,
                LoadTemplates.all().stream()
                        .map(one -> new Sheet.Template(one.id(), one.name()))
                        .toList(),
                picks(base.answer()),
                partsWords(read.question()));
    }

    private static Form.Lines lines(StoredPlan plan, PlanReader.Read read, List<MarginNote> notes) {
        return new Form(textOf(plan), read.problems(), notes).lines();
    }

    private static PlanText textOf(StoredPlan plan) {
        try {
            return PlanText.of(plan.text());
        } catch (InputProblems e) {
            // What was imported may be no plan at all; the store takes nothing else in.
            throw new BadRequestResponse(e.problems().get(0).sentence());
        }
    }

    private Page page(Answer answer, long id) {
        synchronized (pages) {
            Page known = pages.get(answer);
            if (known == null) {
                known = HtmlReport.page(answer, "", "/plans/" + id + "?rig=");
                pages.put(answer, known);
                if (pages.size() > MOST_PAGES) {
                    pages.remove(pages.keySet().iterator().next());
                }
            }
            return known;
        }
    }

    private static List<Sheet.Pick> picks(@Nullable Answer answer) {
        List<Sheet.Pick> picks = new ArrayList<>();
        if (answer != null && answer.shortlist() != null) {
            String currency = answer.question().currency();
            Map<String, Rated> rigs = new LinkedHashMap<>();
            answer.shortlist().front().forEach(one -> rigs.putIfAbsent(one.rig().id(), one));
            answer.shortlist()
                    .nearTies()
                    .forEach(one -> rigs.putIfAbsent(one.rig().id(), one));
            rigs.values()
                    .forEach(one -> picks.add(new Sheet.Pick(
                            one.rig().id(),
                            Words.money(one.price().totalCents(), currency) + ", " + Words.of100(one.share()) + ": "
                                    + one.rig().words())));
        }
        return picks;
    }

    private static String partsWords(@Nullable Question question) {
        return question == null
                ? "the files named in the plan"
                : question.parts().size() + " kinds of part";
    }

    // --- asking

    private static String key(long id, String chosen) {
        return id + "|" + chosen;
    }

    /** Sees to it that the newest revision is being worked on. */
    private void ask(StoredPlan plan, String chosen) {
        PlanReader.Read read = reader.read(plan);
        Question question = read.question();
        for (String which : chosen.isEmpty() ? List.of("") : List.of("", chosen)) {
            String key = key(plan.id(), which);
            Standing standing = asking.standing(key);
            if (question == null) {
                asking.unread(key, plan.revision());
            } else if (standing.revision() != plan.revision()
                    || (!standing.working()
                            && !standing.isFresh()
                            && standing.trouble().isEmpty())) {
                if (which.isEmpty()) {
                    asking.size(key, plan.revision(), question);
                } else {
                    Rig rig = rig(question, which);
                    if (rig != null) {
                        asking.prove(key, plan.revision(), question, rig);
                    }
                }
            }
        }
    }

    private static @Nullable Rig rig(Question question, String id) {
        return RigFile.ofId(id, question.parts())
                .map(chosen -> Assembly.of(chosen).rig())
                .orElse(null);
    }

    /** What the page asks for again and again. */
    private void answer(Context request) {
        StoredPlan plan = plan(request);
        String chosen = chosen(request);
        ask(plan, chosen);
        long revision = number(request.queryParam("revision"));
        long seen = number(request.queryParam("seen"));
        Standing standing = asking.standing(key(plan.id(), chosen));
        if (revision != plan.revision()) {
            elsewhere(request, plan, chosen);
            return;
        }
        if (!standing.working() && seen == standing.answered() && request.queryParam("idle") != null) {
            request.status(HttpStatus.NO_CONTENT);
            return;
        }
        boolean newer = standing.answered() != seen && standing.answer() != null;
        request.header("Tideover-Revision", String.valueOf(plan.revision()));
        request.html(fragments(request, plan, view(plan, chosen, null), newer));
    }

    /** Changed in another tab: line by line where the lines are the same ones, else by a word to load the page anew. */
    private void elsewhere(Context request, StoredPlan plan, String chosen) {
        AnswerView view = view(plan, chosen, null);
        request.header("Tideover-Revision", String.valueOf(plan.revision()));
        StringBuilder out = new StringBuilder(fragments(request, plan, view, false));
        if (view.shape().equals(request.queryParam("shape"))) {
            held(out, lines(plan, reader.read(plan), List.of()));
        } else {
            out.append(Templates.render("sheet/elsewhere.jte", plan.id()));
        }
        request.html(out.toString());
    }

    private static void held(StringBuilder out, Form.Lines lines) {
        for (Line line : Form.all(lines)) {
            out.append(Templates.render("sheet/held.jte", Map.of("line", line, "swapped", true)));
        }
        out.append(Templates.render("sheet/problems.jte", Map.of("problems", lines.elsewhere(), "swapped", true)));
    }

    private AnswerView view(StoredPlan plan, String chosen, @Nullable Glimpse glimpse) {
        PlanReader.Read read = reader.read(plan);
        return AnswerView.of(
                asking.standing(key(plan.id(), chosen)),
                read.question(),
                read.problems().size(),
                glimpse,
                plan.revision(),
                "kept, " + plan.changed(),
                chosen,
                Form.shape(lines(plan, read, List.of())));
    }

    private static String pollAddress(StoredPlan plan) {
        return "/plans/" + plan.id() + "/answer";
    }

    private String fragments(Context request, StoredPlan plan, AnswerView view, boolean all) {
        StringBuilder out = new StringBuilder();
        out.append(Templates.render(
                "sheet/poll.jte", Map.of("answer", view, "address", pollAddress(plan), "swapped", false)));
        out.append(Templates.render("sheet/answer.jte", Map.of("answer", view, "swapped", true)));
        out.append(Templates.render("sheet/tally.jte", Map.of("answer", view, "swapped", true)));
        if (all) {
            Sheet sheet = sheet(request, plan);
            for (String part : List.of("placed", "carry", "least", "build", "right")) {
                Map<String, Object> model = new LinkedHashMap<>();
                model.put("sheet", sheet);
                model.put("page", sheet.page());
                model.put("swapped", true);
                out.append(Templates.render("sheet/" + part + ".jte", model));
            }
            // The reasons of what was typed are known only with the answer.
            for (Line line : Form.all(sheet.lines())) {
                out.append(Templates.render("sheet/letter.jte", Map.of("line", line, "swapped", true)));
            }
        }
        return out.toString();
    }

    // --- changing

    /** One change of the plan's text, on whatever is the newest. */
    private StoredPlan change(long id, UnaryOperator<PlanText> change) {
        for (int tries = 0; tries < MOST_TRIES; tries++) {
            StoredPlan plan = store.plan(id).orElseThrow(Sheets::noPlan);
            PlanText text = change.apply(textOf(plan));
            if (text.text().equals(plan.text())) {
                return plan;
            }
            try {
                store.replace(id, plan.revision(), text.get("plan").orElse("Plan without a name"), text.text());
                return store.plan(id).orElseThrow(Sheets::noPlan);
            } catch (StaleEdit e) {
                // Another tab was quicker; once more on what it left.
            }
        }
        throw new BadRequestResponse("This plan is being changed faster than it can be kept. Try again.");
    }

    private void edit(Context request) {
        long id = id(request);
        String path = typed(request, "path");
        String was = typed(request, "was");
        String now = typed(request, "now").strip();
        String[] clash = new String[1];
        StoredPlan plan;
        try {
            plan = change(id, text -> {
                String held = text.get(path).orElse("");
                clash[0] = null;
                if (held.equals(now)) {
                    return text;
                }
                if (!held.equals(was)) {
                    clash[0] = held;
                    return text;
                }
                return now.isEmpty() ? text.without(path) : text.with(path, now);
            });
        } catch (InputProblems e) {
            refuse(request, id, e.problems().get(0).sentence());
            return;
        }
        ask(plan, chosenFromPage(request));
        if (!isPartial(request)) {
            back(request, id, path);
            return;
        }
        String chosen = chosenFromPage(request);
        PlanReader.Read read = reader.read(plan);
        AnswerView view = view(plan, chosen, glimpse(plan, read.question()));
        StringBuilder out = new StringBuilder();
        out.append(Templates.render(
                "sheet/poll.jte", Map.of("answer", view, "address", pollAddress(plan), "swapped", true)));
        out.append(Templates.render("sheet/answer.jte", Map.of("answer", view, "swapped", true)));
        out.append(Templates.render("sheet/tally.jte", Map.of("answer", view, "swapped", true)));
        held(out, lines(plan, read, List.of()));
        out.append(Templates.render("sheet/clash.jte", clash(id, path, now, clash[0], request)));
        request.header("Tideover-Revision", String.valueOf(plan.revision()));
        request.html(out.toString());
    }

    private Map<String, Object> clash(long id, String path, String now, @Nullable String held, Context request) {
        Map<String, Object> model = new LinkedHashMap<>();
        model.put("id", id);
        model.put("path", path);
        model.put("where", inWords(textOf(store.plan(id).orElseThrow(Sheets::noPlan)), path));
        model.put("mine", now);
        model.put("theirs", held);
        model.put("token", frames.token());
        return model;
    }

    /** Such as "Router: draws" for the place of that load's watts. */
    private static String inWords(PlanText text, String path) {
        int end = path.indexOf("].");
        if (path.startsWith("loads[") && end > 0) {
            return text.get(path.substring(0, end + 1) + ".name").orElse("a load") + ": " + path.substring(end + 2);
        }
        return path.replace(".", ": ");
    }

    /** Of the rig that the last answer named, under the question as it is now. */
    private @Nullable Glimpse glimpse(StoredPlan plan, @Nullable Question question) {
        Answer answer = asking.standing(key(plan.id(), "")).answer();
        if (question == null || answer == null || answer.rig() == null) {
            return null;
        }
        Rig rig = rig(question, answer.rig().rig().id());
        return rig == null ? null : asking.glimpse(question, rig);
    }

    private void addLine(Context request) {
        long id = id(request);
        String parent = typed(request, "parent");
        String key = typed(request, "key");
        String path = parent.isEmpty() ? key : parent + "." + key;
        String example;
        try {
            example = Form.example(key);
        } catch (IllegalArgumentException e) {
            throw new BadRequestResponse("There is no such line.");
        }
        structural(request, id, text -> text.get(path).isPresent() ? text : text.with(path, example), path);
    }

    private void addLoad(Context request) {
        long id = id(request);
        LoadTemplates.Template template = LoadTemplates.all().stream()
                .filter(one -> one.id().equals(typed(request, "template")))
                .findFirst()
                .orElseThrow(() -> new BadRequestResponse("There is no such usual load."));
        Question question = reader.read(plan(request)).question();
        // What joining costs is a guess in one currency; in another the plan asks for it.
        boolean inGuess = question == null || LoadTemplates.JOINING.endsWith(" " + question.currency());
        structural(
                request,
                id,
                text -> {
                    PlanText added = text.adding("loads", template.block(name -> isNamed(text, name)));
                    return template.hardWired() && inGuess && added.get(JOINING).isEmpty()
                            ? added.with(JOINING, LoadTemplates.JOINING)
                            : added;
                },
                "loads");
    }

    private static boolean isNamed(PlanText text, String name) {
        for (int number = 1; number <= text.count("loads"); number++) {
            if (text.get("loads[" + number + "].name").orElse("").equals(name)) {
                return true;
            }
        }
        return false;
    }

    /** Takes a load off, if it is still the one that was meant. */
    private void take(Context request) {
        long id = id(request);
        String path = typed(request, "path");
        String was = typed(request, "was");
        if (!path.matches("loads\\[\\d{1,4}]")) {
            throw new BadRequestResponse("There is no such load.");
        }
        structural(
                request,
                id,
                text -> text.get(path + ".name").orElse("").equals(was) ? text.without(path) : text,
                "loads");
    }

    private void figures(Context request) {
        long id = id(request);
        structural(
                request,
                id,
                text -> text.without("place.station")
                        .without("place.near")
                        .without("place.hourly file")
                        .with("place.figures", FIGURES),
                "place.figures");
    }

    private void undo(Context request) {
        long id = plan(request).id();
        store.undo(id);
        StoredPlan plan = plan(request);
        ask(plan, "");
        request.redirect("/plans/" + id, HttpStatus.SEE_OTHER);
    }

    private void structural(Context request, long id, UnaryOperator<PlanText> change, String path) {
        StoredPlan plan;
        try {
            plan = change(id, change);
        } catch (InputProblems e) {
            refuse(request, id, e.problems().get(0).sentence());
            return;
        }
        ask(plan, "");
        if (!isPartial(request)) {
            back(request, id, path);
            return;
        }
        Sheet sheet = sheet(request, plan);
        request.header("Tideover-Revision", String.valueOf(plan.revision()));
        request.html(Templates.render("sheet/question.jte", Map.of("sheet", sheet))
                + Templates.render(
                        "sheet/poll.jte",
                        Map.of("answer", sheet.answer(), "address", pollAddress(plan), "swapped", true))
                + Templates.render("sheet/answer.jte", Map.of("answer", sheet.answer(), "swapped", true))
                + Templates.render("sheet/tally.jte", Map.of("answer", sheet.answer(), "swapped", true)));
    }

    /** Refused as a whole where it cannot be read as weather. */
    private void weather(Context request) throws IOException {
        long id = id(request);
        StoredPlan before = plan(request);
        Uploads.Sent sent = Uploads.sent(request);
        String name = weatherName(before, Uploads.name(sent.name(), "weather.csv"));
        UnaryOperator<PlanText> named = text -> text.without("place.station")
                .without("place.near")
                .without("place.figures")
                .with("place.hourly file", name);
        String text = named.apply(textOf(before)).text();
        List<String> problems = reader.newTroubles(before, text, name, sent.bytes());
        if (!problems.isEmpty()) {
            throw new BadRequestResponse("This weather was not taken, and nothing was changed. " + problems.get(0));
        }
        store.putFile(id, name, sent.bytes());
        StoredPlan plan = change(id, named);
        ask(plan, "");
        back(request, id, "place.hourly file");
    }

    /** A file of parts of the same name stays as it is. */
    private static String weatherName(StoredPlan plan, String name) {
        boolean free = !plan.files().containsKey(name)
                || textOf(plan).get("place.hourly file").orElse("").equals(name);
        return free ? name : Uploads.name("weather-" + name, "weather.csv");
    }

    // --- what comes in

    private void suggestStations(Context request) {
        String wanted = String.valueOf(request.queryParam("q")).strip();
        List<String> names = wanted.length() < 2
                ? List.of()
                : stations.search(wanted).stream()
                        .limit(MOST_STATIONS)
                        .map(Station::label)
                        .toList();
        request.html(Templates.render("sheet/stations.jte", names));
    }

    private StoredPlan plan(Context request) {
        return store.plan(id(request)).orElseThrow(Sheets::noPlan);
    }

    static NotFoundResponse noPlan() {
        return new NotFoundResponse("There is no such plan here; perhaps it was deleted.");
    }

    static long id(Context request) {
        return number(request.pathParam("id"));
    }

    private static long number(@Nullable String digits) {
        return digits != null && digits.matches("[0-9]{1,15}") ? Long.parseLong(digits) : -1;
    }

    private static String chosen(Context request) {
        String rig = request.queryParam("rig");
        return rig == null ? "" : bounded(rig);
    }

    private static String bounded(String rig) {
        return rig.length() > LONGEST_RIG ? "" : rig;
    }

    /** The rig that the page around a partial request looks at. */
    private static String chosenFromPage(Context request) {
        String page = request.header("HX-Current-URL");
        int at = page == null ? -1 : page.indexOf("?rig=");
        if (page == null || at < 0) {
            return "";
        }
        String rig = page.substring(at + "?rig=".length()).replaceAll("[&#].*", "");
        try {
            return bounded(java.net.URLDecoder.decode(rig, StandardCharsets.UTF_8));
        } catch (IllegalArgumentException e) {
            return "";
        }
    }

    private static String typed(Context request, String name) {
        String text = request.formParam(name);
        return text == null ? "" : text;
    }

    private static boolean isPartial(Context request) {
        return "true".equals(request.header("HX-Request"));
    }

    private static void back(Context request, long id, String path) {
        request.redirect("/plans/" + id + "#" + Line.idOf(path), HttpStatus.SEE_OTHER);
    }

    private void refuse(Context request, long id, String words) {
        if (isPartial(request)) {
            Map<String, Object> model = Map.of("words", words);
            request.html(Templates.render("sheet/refused.jte", model));
        } else {
            throw new BadRequestResponse(words);
        }
    }
}
