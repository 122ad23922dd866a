package tideover.app.web;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.net.Socket;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.CopyOnWriteArrayList;
import java.util.concurrent.TimeUnit;
import java.util.logging.Handler;
import java.util.logging.LogRecord;
import java.util.logging.Logger;
import java.util.zip.GZIPOutputStream;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Whoever means harm, spoken to over plain sockets: refused or harmless, and the pages go on. */
class HostileTest {
    private static final String SCRIPT = "<script>alert(1)</script><img src=x onerror=alert(2)>\"'";

    private Served served = Served.start();

    @BeforeEach
    void start() {
        served.close();
        served = Served.start();
    }

    @AfterEach
    void end() {
        served.close();
    }

    private Spoken spoken() {
        return new Spoken(served);
    }

    private String own() {
        return spoken().own();
    }

    private Spoken.Said say(String method, String path, Map<String, String> headers, byte[] body) {
        return spoken().say(method, path, headers, body);
    }

    private Spoken.Said get(String path) {
        return spoken().get(path);
    }

    private String token() {
        return spoken().token();
    }

    private Spoken.Said post(String path, Map<String, String> headers, String... namesAndValues) {
        return spoken().post(path, headers, namesAndValues);
    }

    private Spoken.Said upload(String path, String token, String name, byte[] bytes) {
        return spoken().upload(path, token, name, bytes);
    }

    private long revision() {
        return served.store.plan(1).orElseThrow().revision();
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "evil.example",
                "evil.example:80",
                "127.0.0.1",
                "localhost",
                "127.0.0.1:1",
                "[::1]:80",
                "127.0.0.1.evil.example:PORT"
            })
    void foreignHostIsRefused(String host) {
        Spoken.Said said =
                say("GET", "/", Map.of("Host", host.replace("PORT", String.valueOf(served.pages.port()))), new byte[0]);
        assertThat(said.status()).isEqualTo(403);
        assertThat(said.body()).doesNotContain("Net-loft").doesNotContain("name=\"token\"");
    }

    @ParameterizedTest
    @ValueSource(
            strings = {"http://evil.example", "https://127.0.0.1:PORT", "null", "http://127.0.0.1:1", "http://localhost"
            })
    void foreignOriginIsRefused(String origin) {
        Map<String, String> headers = Map.of("Origin", origin.replace("PORT", String.valueOf(served.pages.port())));
        Spoken.Said said =
                post("/plans/1/edit", headers, "token", token(), "path", "outage.lasts", "was", "72 h", "now", "24 h");
        assertThat(said.status()).isEqualTo(403);
        assertThat(revision()).isEqualTo(1);
    }

    @Test
    void otherSitesFormIsRefused() {
        Spoken.Said said = post(
                "/plans/1/edit",
                Map.of("Sec-Fetch-Site", "cross-site"),
                "token",
                token(),
                "path",
                "outage.lasts",
                "was",
                "72 h",
                "now",
                "24 h");
        assertThat(said.status()).isEqualTo(403);
        assertThat(revision()).isEqualTo(1);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "/new",
                "/examples",
                "/plans",
                "/prefs",
                "/plans/1/copy",
                "/plans/1/rename",
                "/plans/1/delete",
                "/plans/1/restore",
                "/plans/1/edit",
                "/plans/1/line",
                "/plans/1/load",
                "/plans/1/take",
                "/plans/1/undo",
                "/plans/1/weather",
                "/plans/1/figures",
                "/plans/1/parts",
                "/plans/1/parts/mark",
                "/backup"
            })
    void nothingChangesWithoutTheToken(String path) {
        for (String token : new String[] {"", "guessed", "A".repeat(43)}) {
            Spoken.Said said = post(
                    path,
                    Map.of("Origin", "http://" + own()),
                    "token",
                    token,
                    "name",
                    "x",
                    "path",
                    "outage.lasts",
                    "was",
                    "72 h",
                    "now",
                    "24 h");
            assertThat(said.status()).as(path).isEqualTo(403);
        }
        assertThat(served.store.plans()).hasSize(1);
        assertThat(revision()).isEqualTo(1);
    }

    @Test
    void oneTokenForEveryStart() {
        String first = token();
        try (Served other = Served.start()) {
            Served mine = served;
            served = other;
            assertThat(token()).isNotEqualTo(first).hasSizeGreaterThan(40);
            served = mine;
        }
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "/../../etc/passwd",
                "/%2e%2e/%2e%2e/etc/passwd",
                "/plans/..%2f..%2fetc%2fpasswd",
                "/sheet.css/../../x",
                "/plans/1%00",
                "/plans/99999999999999999999",
                "/plans/-1",
                "/plans/1/../../x",
                "/webjars/htmx.org/2.0.10/package.json",
                "/tideover/demo/plan.yaml",
                "/META-INF/MANIFEST.MF",
                "/plans/%zz",
                "/%ff%fe",
                "//evil.example/"
            })
    void addressesLeadNowhereElse(String path) {
        Spoken.Said said = get(path);
        assertThat(said.status()).isBetween(400, 404);
        assertThat(said.body())
                .doesNotContain("root:")
                .doesNotContain("Exception")
                .doesNotContain("at tideover.");
    }

    @Test
    void everyAnswerCarriesItsGuards() {
        for (String path : List.of(
                "/", "/plans/1", "/sheet.css", "/htmx.js", "/no-such", "/plans/1/plan.yaml", "/plans/1/plan.zip")) {
            String head = get(path).head();
            assertThat(head)
                    .as(path)
                    .contains("Content-Security-Policy: default-src 'none'; script-src 'self'; style-src 'self'")
                    .contains("X-Content-Type-Options: nosniff")
                    .contains("Cache-Control: no-store")
                    .doesNotContain("unsafe-inline")
                    .doesNotContain("Set-Cookie")
                    .doesNotContain("Server:");
        }
    }

    @Test
    void scriptInEveryFieldComesBackAsText() {
        String token = token();
        List<String> paths =
                new ArrayList<>(List.of("plan", "about", "place.name", "outage.lasts", "store room", "money.at most"));
        for (String key : List.of("name", "draws", "supply", "need", "from", "runs")) {
            paths.add("loads[1]." + key);
        }
        for (String path : paths) {
            String was = tideover.app.files.PlanText.of(
                            served.store.plan(1).orElseThrow().text())
                    .get(path)
                    .orElse("");
            Spoken.Said said = post(
                    "/plans/1/edit",
                    Map.of("HX-Request", "true"),
                    "token",
                    token,
                    "path",
                    path,
                    "was",
                    was,
                    "now",
                    SCRIPT);
            assertThat(said.status()).as(path).isEqualTo(200);
            assertNoScript(said.body());
        }
        for (String page : List.of(
                "/",
                "/plans/1",
                "/plans/1/parts?q=" + Addresses.of(SCRIPT) + "&kind=" + Addresses.of(SCRIPT),
                "/plans/1?rig=" + Addresses.of(SCRIPT),
                "/stations?q=" + Addresses.of(SCRIPT),
                "/?deleted=" + Addresses.of(SCRIPT))) {
            assertNoScript(get(page).body());
        }
        assertNoScript(post("/new", Map.of(), "token", token, "name", SCRIPT, "station", SCRIPT, "hours", SCRIPT)
                .body());
    }

    private static void assertNoScript(String body) {
        assertThat(body).doesNotContain("<script>alert").doesNotContain("<img src=x");
    }

    @Test
    void scriptInImportsComesBackAsText() {
        String token = token();
        String csv =
                "kind,id,name,price,currency,priced_on,condition,mass_kg,usable_wh,charge_efficiency_pct,discharge_efficiency_pct,nominal_v,max_charge_a,max_discharge_a\n"
                        + "battery,x-1,\"" + SCRIPT.replace("\"", "\"\"")
                        + "\",10,USD,2026-01-01,new,5,500,95,95,12.8,20,50\n";
        assertThat(upload("/plans/1/parts", token, "p.csv", csv.getBytes(StandardCharsets.UTF_8))
                        .status())
                .isEqualTo(303);
        String page = get("/plans/1/parts?q=x-1").body();
        assertThat(page).contains("&lt;script&gt;");
        assertNoScript(page);
        String plan = "plan: \"" + SCRIPT.replace("\"", "\\\"") + "\"\nloads: ["
                + SCRIPT.replace("\"", "").replace("'", "") + "]\n";
        assertThat(upload("/plans", token, "plan.yaml", plan.getBytes(StandardCharsets.UTF_8))
                        .status())
                .isEqualTo(303);
        assertNoScript(get("/plans/2").body());
        assertNoScript(get("/").body());
    }

    @Test
    void formulasGoOutAsText() {
        String token = token();
        String csv =
                "kind,id,name,price,currency,priced_on,condition,mass_kg,usable_wh,charge_efficiency_pct,discharge_efficiency_pct,nominal_v,max_charge_a,max_discharge_a\n"
                        + "battery,x-1,\"=HYPERLINK(\"\"http://evil.example\"\")\",10,USD,2026-01-01,new,5,500,95,95,12.8,20,50\n"
                        + "battery,x-2,@SUM(A1),10,USD,2026-01-01,new,5,500,95,95,12.8,20,50\n";
        assertThat(upload("/plans/1/parts", token, "p.csv", csv.getBytes(StandardCharsets.UTF_8))
                        .status())
                .isEqualTo(303);
        Spoken.Said out = get("/plans/1/parts.csv");
        assertThat(out.status()).isEqualTo(200);
        assertThat(out.body()).contains("HYPERLINK").doesNotContainPattern("(?m)(^|,)\"?[=@+]");
    }

    @Test
    void bombsAreRefused() throws IOException {
        String token = token();
        byte[] zeros = new byte[1 << 20];
        ByteArrayOutputStream zipped = new ByteArrayOutputStream();
        try (ZipOutputStream zip = new ZipOutputStream(zipped)) {
            zip.putNextEntry(new ZipEntry("plan.yaml"));
            zip.write("plan: x\n".getBytes(StandardCharsets.UTF_8));
            for (int i = 0; i < 3; i++) {
                zip.putNextEntry(new ZipEntry("parts/bomb" + i + ".csv"));
                for (int mb = 0; mb < 60; mb++) {
                    zip.write(zeros);
                }
            }
        }
        Spoken.Said said = upload("/plans", token, "bomb.zip", zipped.toByteArray());
        assertThat(said.status()).isEqualTo(400);
        assertThat(said.body()).contains("larger than a plan's files may be");
        for (String name :
                List.of("../../evil.csv", "/etc/evil.csv", "a/b/c.csv", "..\\evil.csv", "parts/../../x.csv")) {
            ByteArrayOutputStream one = new ByteArrayOutputStream();
            try (ZipOutputStream zip = new ZipOutputStream(one)) {
                zip.putNextEntry(new ZipEntry("plan.yaml"));
                zip.write("plan: x\n".getBytes(StandardCharsets.UTF_8));
                zip.putNextEntry(new ZipEntry(name));
                zip.write(65);
            }
            assertThat(upload("/plans", token, "x.zip", one.toByteArray()).status())
                    .as(name)
                    .isEqualTo(400);
        }
        ByteArrayOutputStream packed = new ByteArrayOutputStream();
        try (GZIPOutputStream gzip = new GZIPOutputStream(packed)) {
            for (int mb = 0; mb < 400; mb++) {
                gzip.write(zeros);
            }
        }
        Spoken.Said bomb = upload("/plans/1/weather", token, "bomb.csv.gz", packed.toByteArray());
        assertThat(bomb.status()).isEqualTo(400);
        assertThat(bomb.body()).contains("nothing was changed").doesNotContain("our fault");
        assertThat(served.store.plan(1).orElseThrow().files()).doesNotContainKey("bomb.csv.gz");
        assertThat(revision()).isEqualTo(1);
        assertThat(served.store.plans()).hasSize(1);
    }

    @Test
    void tooMuchIsRefused() {
        String token = token();
        assertThat(post(
                                "/plans/1/edit",
                                Map.of(),
                                "token",
                                token,
                                "path",
                                "about",
                                "was",
                                "",
                                "now",
                                "x".repeat(3_000_000))
                        .status())
                .isBetween(400, 413);
        Spoken.Said large = upload("/plans", token, "plan.yaml", new byte[70_000_000]);
        assertThat(large.status()).isIn(0, 400, 413, 500);
        assertThat(get("/?" + "x".repeat(100_000)).status()).isBetween(400, 431);
        assertThat(revision()).isEqualTo(1);
        assertThat(get("/plans/1").status()).isEqualTo(200);
    }

    @Test
    void uploadNamesLeadNowhere() {
        String token = token();
        assertThat(upload("/plans/1/weather", token, "../../../tmp/evil.csv", Spoken.weather())
                        .status())
                .isEqualTo(303);
        assertThat(served.store.plan(1).orElseThrow().files()).containsKey("evil.csv");
    }

    @Test
    void whatIsNoWeatherIsNotKept() {
        String hour =
                "# place: x\n# latitude_deg: 1\n# longitude_deg: 1\n# zone_h: 0\ntime,ghi_w_m2,air_c\n2019-01-01T00:00,0,1\n";
        Spoken.Said said = upload("/plans/1/weather", token(), "hour.csv", hour.getBytes(StandardCharsets.UTF_8));
        assertThat(said.status()).isEqualTo(400);
        assertThat(said.body()).contains("hour.csv").contains("nothing was changed");
        assertThat(served.store.plan(1).orElseThrow().files()).doesNotContainKey("hour.csv");
        assertThat(revision()).isEqualTo(1);
    }

    @Test
    void aFormThatBreaksOffIsNoFaultAndHoldsNothingUp() throws IOException {
        Logger log = Logger.getLogger(PageServer.class.getName());
        List<LogRecord> told = new CopyOnWriteArrayList<>();
        Handler ear = new Handler() {
            @Override
            public void publish(LogRecord record) {
                told.add(record);
            }

            @Override
            public void flush() {}

            @Override
            public void close() {}
        };
        log.addHandler(ear);
        try {
            String token = token();
            for (String type : List.of("multipart/form-data; boundary=edge", "application/x-www-form-urlencoded")) {
                try (Socket socket = new Socket("127.0.0.1", served.pages.port())) {
                    socket.getOutputStream()
                            .write(("POST /plans/1/weather HTTP/1.1\r\nHost: " + own()
                                            + "\r\nContent-Length: 100000\r\n"
                                            + "Content-Type: " + type + "\r\n\r\n--edge\r\n"
                                            + "Content-Disposition: form-data; name=\"token\"\r\n\r\n" + token
                                            + "\r\n--edge\r\nContent-Disposition: form-data; name=\"file\";"
                                            + " filename=\"half.csv\"\r\n\r\ntime,")
                                    .getBytes(StandardCharsets.ISO_8859_1));
                    socket.getOutputStream().flush();
                }
            }
            assertThat(upload("/plans/1/weather", token, "whole.csv", Spoken.weather())
                            .status())
                    .isEqualTo(303);
        } finally {
            log.removeHandler(ear);
        }
        assertThat(told).extracting(LogRecord::getMessage).isEmpty();
        assertThat(served.store.plan(1).orElseThrow().files())
                .containsKey("whole.csv")
                .doesNotContainKey("half.csv");
    }

    @Test
    void manyUploadsAtOnceComeOneAfterAnother() throws Exception {
        String token = token();
        List<CompletableFuture<Integer>> sent = new ArrayList<>();
        for (int i = 0; i < 6; i++) {
            String name = "year-" + i + ".csv";
            sent.add(CompletableFuture.supplyAsync(() ->
                    upload("/plans/1/weather", token, name, Spoken.weather()).status()));
        }
        int taken = 0;
        for (CompletableFuture<Integer> one : sent) {
            int status = one.get(120, TimeUnit.SECONDS);
            assertThat(status).isIn(303, 503);
            taken += status == 303 ? 1 : 0;
        }
        assertThat(taken).isPositive();
        assertThat(served.store.plan(1).orElseThrow().files().keySet().stream()
                        .filter(name -> name.startsWith("year-")))
                .hasSize(taken);
        assertThat(get("/plans/1").status()).isEqualTo(200);
    }

    @Test
    void refusedPlacesChangeNothing() {
        String token = token();
        for (String path : List.of(
                "",
                "..",
                "loads[999].draws",
                "loads[0]",
                "outage[0]",
                "a.b.c.d",
                "plan.x",
                "loads",
                "__proto__",
                "outage.\nlasts",
                "[1]")) {
            Spoken.Said said = post(
                    "/plans/1/edit",
                    Map.of("HX-Request", "true"),
                    "token",
                    token,
                    "path",
                    path,
                    "was",
                    "",
                    "now",
                    "{a: b}");
            assertThat(said.status()).as(path).isIn(200, 400);
            assertThat(said.body()).doesNotContain("That is our fault");
        }
        assertThat(get("/plans/1").status()).isEqualTo(200);
    }

    @Test
    void copiesOfAllPlansComeAndGo() throws IOException {
        String token = token();
        java.net.http.HttpClient client = java.net.http.HttpClient.newHttpClient();
        byte[] copy;
        try {
            copy = client.send(
                            java.net.http.HttpRequest.newBuilder(java.net.URI.create(served.at("backup")))
                                    .build(),
                            java.net.http.HttpResponse.BodyHandlers.ofByteArray())
                    .body();
        } catch (InterruptedException e) {
            throw new IllegalStateException(e);
        }
        assertThat(new String(copy, 0, 15, StandardCharsets.ISO_8859_1)).isEqualTo("SQLite format 3");
        post("/plans/1/edit", Map.of(), "token", token, "path", "outage.lasts", "was", "72 h", "now", "24 h");
        assertThat(upload("/backup", token, "x.db", "no copy at all".getBytes(StandardCharsets.UTF_8))
                        .status())
                .isEqualTo(400);
        assertThat(get("/plans/1/plan.yaml").body()).contains("lasts: 24 h");
        assertThat(upload("/backup", token, "x.db", copy).status()).isEqualTo(303);
        assertThat(get("/plans/1/plan.yaml").body()).contains("lasts: 72 h");
    }

    @Test
    void slowOnesHoldNobodyUp() throws Exception {
        List<Socket> slow = new ArrayList<>();
        try {
            for (int i = 0; i < 60; i++) {
                Socket socket = new Socket("127.0.0.1", served.pages.port());
                socket.getOutputStream()
                        .write(("POST /plans/1/edit HTTP/1.1\r\nHost: " + own() + "\r\nContent-Length: 100000\r\n"
                                        + "Content-Type: application/x-www-form-urlencoded\r\n\r\ntoken=")
                                .getBytes(StandardCharsets.ISO_8859_1));
                slow.add(socket);
            }
            long began = System.nanoTime();
            assertThat(get("/").status()).isEqualTo(200);
            assertThat((System.nanoTime() - began) / 1e9)
                    .as("seconds for others")
                    .isLessThan(20);
            Socket one = slow.get(0);
            one.setSoTimeout(60_000);
            InputStream in = one.getInputStream();
            byte[] last = in.readAllBytes();
            assertThat(new String(last, StandardCharsets.ISO_8859_1)).doesNotStartWith("HTTP/1.1 200");
        } finally {
            for (Socket socket : slow) {
                socket.close();
            }
        }
    }
}
