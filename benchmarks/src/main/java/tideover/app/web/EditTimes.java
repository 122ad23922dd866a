package tideover.app.web;

import java.io.IOException;
import java.net.URI;
import java.net.URLEncoder;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import tideover.app.store.Store;
import tideover.engine.answer.Options;

/**
 * Times what one who edits the demo's sheet waits for, in a warm program on two threads: one load's watts are changed, and again and
 * again, each time once the answer before is whole. Beside it, as a yardstick, a file that needs no work.
 */
public final class EditTimes {
    private static final int WARM_UPS = 3;
    private static final int EDITS = 20;
    private static final long SLEEP_MS = 250;

    private final HttpClient client = HttpClient.newHttpClient();
    private final String address;

    private EditTimes(String address) {
        this.address = address;
    }

    /** Prints one table. */
    public static void main(String[] args) throws IOException, InterruptedException {
        Path folder = Files.createTempDirectory("edits");
        try (Store store = Store.open(folder.resolve("plans.db"));
                PageServer pages = PageServer.start(store, Options.USUAL, 0)) {
            new EditTimes(pages.address()).run();
        }
    }

    private void run() throws IOException, InterruptedException {
        String list = get("");
        String token = first(list, "name=\"token\" value=\"([^\"]+)\"");
        String plan = first(list, "href=\"/plans/(\\d+)\"");
        get("plans/" + plan);
        await(plan, 1, "data-state=\"fresh\"");
        List<Double> fixed = new ArrayList<>();
        List<Double> bounds = new ArrayList<>();
        List<Double> confirmed = new ArrayList<>();
        List<Double> whole = new ArrayList<>();
        String was = "7 W";
        for (int turn = 0; turn < WARM_UPS + EDITS; turn++) {
            long began = System.nanoTime();
            get("sheet.css");
            double fixedMs = sinceMs(began);
            String now = String.format(Locale.ROOT, "%.2f W", 6 + 0.1 * turn);
            began = System.nanoTime();
            String answer = post(plan, token, was, now);
            double boundsMs = sinceMs(began);
            if (!answer.contains("The rig named before")) {
                throw new IllegalStateException("an edit without bounds");
            }
            long revision = turn + 2;
            await(plan, revision, "Confirmed: the least|data-state=\"fresh\"");
            double confirmedMs = sinceMs(began);
            await(plan, revision, "data-state=\"fresh\"");
            was = now;
            if (turn >= WARM_UPS) {
                fixed.add(fixedMs);
                bounds.add(boundsMs);
                confirmed.add(confirmedMs);
                whole.add(sinceMs(began));
            }
        }
        print("yardstick: the style sheet", fixed);
        print("edit to the refreshed bounds", bounds);
        print("edit to the confirmed rig", confirmed);
        print("edit to the whole answer", whole);
    }

    private static double sinceMs(long began) {
        return (System.nanoTime() - began) / 1e6;
    }

    private static void print(String what, List<Double> ms) {
        List<Double> sorted = ms.stream().sorted().toList();
        System.out.printf(
                Locale.ROOT,
                "%-30s median %8.1f ms, 95 %% %8.1f ms, most %8.1f ms, of %d%n",
                what,
                sorted.get(sorted.size() / 2),
                sorted.get((int) Math.ceil(0.95 * sorted.size()) - 1),
                sorted.get(sorted.size() - 1),
                sorted.size());
    }

    private String get(String path) throws IOException, InterruptedException {
        return send(HttpRequest.newBuilder(URI.create(address + path)).build());
    }

    private String post(String plan, String token, String was, String now) throws IOException, InterruptedException {
        String form = "token=" + typed(token) + "&path=" + typed("loads[2].draws") + "&was=" + typed(was) + "&now="
                + typed(now);
        return send(HttpRequest.newBuilder(URI.create(address + "plans/" + plan + "/edit"))
                .header("Content-Type", "application/x-www-form-urlencoded")
                .header("HX-Request", "true")
                .POST(HttpRequest.BodyPublishers.ofString(form))
                .build());
    }

    private String send(HttpRequest request) throws IOException, InterruptedException {
        HttpResponse<String> response = client.send(request, HttpResponse.BodyHandlers.ofString());
        if (response.statusCode() != 200) {
            throw new IllegalStateException(response.statusCode() + ": " + response.body());
        }
        return response.body();
    }

    /** Asks as the page does, at its pace. */
    private void await(String plan, long revision, String pattern) throws IOException, InterruptedException {
        Pattern wanted = Pattern.compile(pattern);
        while (!wanted.matcher(get("plans/" + plan + "/answer?seen=0&revision=" + revision))
                .find()) {
            Thread.sleep(SLEEP_MS);
        }
    }

    private static String typed(String text) {
        return URLEncoder.encode(text, StandardCharsets.UTF_8);
    }

    private static String first(String text, String pattern) {
        Matcher matcher = Pattern.compile(pattern).matcher(text);
        if (!matcher.find()) {
            throw new IllegalStateException("no " + pattern);
        }
        return matcher.group(1);
    }
}
