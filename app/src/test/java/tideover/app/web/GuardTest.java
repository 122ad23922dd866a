package tideover.app.web;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.net.Socket;
import java.net.SocketTimeoutException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.zip.ZipEntry;
import java.util.zip.ZipInputStream;
import java.util.zip.ZipOutputStream;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import tideover.app.files.PlanText;

/** Requests that are none, and names, folders and speeds that nobody's browser has: calm words under the same guards. */
class GuardTest {
    private static Served served = Served.start();
    private static Spoken spoken = new Spoken(served);

    @BeforeAll
    static void start() {
        served.close();
        served = Served.start();
        spoken = new Spoken(served);
    }

    @AfterAll
    static void end() {
        served.close();
    }

    private static byte[] bytes(String text) {
        return text.replace("HOST", spoken.own()).getBytes(StandardCharsets.ISO_8859_1);
    }

    private static void assertCalm(Spoken.Said said) {
        assertThat(said.status()).isBetween(400, 499);
        assertThat(said.head())
                .contains("Content-Security-Policy: default-src 'none'")
                .doesNotContain("Server:");
        Guard.HEADERS.forEach((name, value) -> assertThat(said.head()).contains(name + ": " + value));
        assertThat(said.body())
                .contains("That did not work")
                .doesNotContain("our fault")
                .doesNotContain("Exception")
                .doesNotContain("jetty");
    }

    /** An upload leaves a new revision behind; each test begins from whatever the plan is then. */
    private static long revision() {
        return served.store.plan(1).orElseThrow().revision();
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "GET / HTTP/1.1\r\nConnection: close\r\n\r\n",
                "GET / HTTP/1.0\r\n\r\n",
                "GET / HTTP/1.1\r\nHost: HOST\r\nHost: evil.example\r\nConnection: close\r\n\r\n",
                "GET / HTTP/1.1\r\nHost: a b\r\nConnection: close\r\n\r\n",
                "GET http://evil.example/ HTTP/1.1\r\nHost: HOST\r\nConnection: close\r\n\r\n",
                "CONNECT evil.example:443 HTTP/1.1\r\nHost: HOST\r\nConnection: close\r\n\r\n",
                "GET /plans/%zz HTTP/1.1\r\nHost: HOST\r\nConnection: close\r\n\r\n",
                "GET /% HTTP/1.1\r\nHost: HOST\r\nConnection: close\r\n\r\n",
                "GET /plans/1%00 HTTP/1.1\r\nHost: HOST\r\nConnection: close\r\n\r\n",
                "GET /%ff%fe HTTP/1.1\r\nHost: HOST\r\nConnection: close\r\n\r\n",
                "GET /\\..\\x HTTP/1.1\r\nHost: HOST\r\nConnection: close\r\n\r\n",
                "POST /new HTTP/1.1\r\nHost: HOST\r\nConnection: close\r\nContent-Length: -5\r\n\r\n",
                "POST /new HTTP/1.1\r\nHost: HOST\r\nContent-Length: 5\r\nTransfer-Encoding: chunked\r\n\r\n0\r\n\r\n",
                "\u0016\u0003\u0001 no such thing\r\n\r\n"
            })
    void requestsThatAreNoneAreToldCalmly(String request) {
        assertCalm(spoken.raw(bytes(request)));
    }

    @Test
    void endlessAddressesAndHeadLinesAreToldCalmly() {
        assertCalm(spoken.get("/" + "x".repeat(100_000)));
        assertCalm(spoken.get("/?q=" + "x".repeat(100_000)));
        assertCalm(spoken.say("GET", "/", Map.of("X", "y".repeat(100_000)), new byte[0]));
    }

    @ParameterizedTest
    @ValueSource(strings = {"PUT", "DELETE", "PATCH", "OPTIONS", "TRACE", "PROPFIND", "FOO", "get"})
    void otherMethodsDoNothing(String method) {
        long before = revision();
        assertCalm(spoken.say(method, "/plans/1", Map.of(), new byte[0]));
        assertCalm(spoken.say(method, "/plans/1/edit", Map.of(), new byte[0]));
        assertThat(revision()).isEqualTo(before);
    }

    @ParameterizedTest
    @ValueSource(strings = {"edit", "line", "load", "take", "undo", "copy", "rename", "delete", "restore", "figures"})
    void lookingChangesNothing(String what) {
        long before = revision();
        assertCalm(spoken.get("/plans/1/" + what + "?token=" + spoken.token() + "&path=plan&was=&now=x&name=x"));
        assertThat(revision()).isEqualTo(before);
    }

    /** A foreign name that leads here may read what it is told: it is told no token. */
    @Test
    void whoeverIsRefusedLearnsNoToken() {
        String token = spoken.token();
        Spoken.Said foreign =
                spoken.say("GET", "/", Map.of("Host", "evil.example:" + served.pages.port()), new byte[0]);
        assertCalm(foreign);
        Spoken.Said guessed = spoken.post("/plans/1/undo", Map.of(), "token", "guessed");
        assertCalm(guessed);
        for (Spoken.Said said : List.of(foreign, guessed, spoken.get("/no-such"))) {
            assertThat(said.head() + said.body()).doesNotContain(token).doesNotContain("name=\"token\"");
        }
    }

    @Test
    void formsInPartsThatAreNoneAreToldCalmly() {
        Map<String, String> headers =
                Map.of("X-Tideover-Token", spoken.token(), "Content-Type", "multipart/form-data; boundary=q");
        for (String body : List.of("", "--q\r\nfoo", "--q\r\nContent-Disposition: form-data; name=\"file\"\r\n\r\nx")) {
            assertCalm(spoken.say("POST", "/plans", headers, bytes(body)));
        }
        assertCalm(spoken.upload("/plans/1/weather", spoken.token(), "x\r\ny.csv", new byte[] {65}));
    }

    @Test
    void formsWithoutALengthAreBoundedToo() {
        StringBuilder body = new StringBuilder("POST /plans/1/edit HTTP/1.1\r\nHost: HOST\r\nConnection: close\r\n"
                + "Content-Type: application/x-www-form-urlencoded\r\nTransfer-Encoding: chunked\r\n\r\n");
        for (int mb = 0; mb < 8; mb++) {
            body.append("100000\r\n").append("x".repeat(1 << 20)).append("\r\n");
        }
        assertThat(spoken.raw(bytes(body + "0\r\n\r\n")).status()).isIn(0, 413);
        String fields = "&a=1".repeat(300_000);
        Spoken.Said said = spoken.say(
                "POST",
                "/plans/1/edit",
                Map.of("Content-Type", "application/x-www-form-urlencoded"),
                bytes("token=" + spoken.token() + fields));
        assertCalm(said);
    }

    @Test
    void oddPlacesAndPagesAreToldCalmly() {
        String token = spoken.token();
        long before = revision();
        Map<String, String> odd = Map.of("HX-Request", "true", "HX-Current-URL", "http://x/plans/1?rig=%zz");
        assertThat(spoken.post("/plans/1/edit", odd, "token", token, "path", "about", "was", "no", "now", "x")
                        .status())
                .isEqualTo(200);
        for (String path : List.of("loads", "outage", "..", "")) {
            assertCalm(spoken.post("/plans/1/take", Map.of(), "token", token, "path", path, "was", ""));
        }
        assertCalm(spoken.post("/plans/1/rename", Map.of(), "token", token, "name", "x".repeat(5000)));
        for (String path : List.of("/plans/999/undo", "/plans/999/copy", "/plans/x/edit", "/plans/-1/rename")) {
            assertCalm(spoken.post(path, Map.of(), "token", token, "name", "x", "path", "plan"));
        }
        assertThat(revision()).isEqualTo(before);
    }

    /** Names that would lie over the plan itself or over its parts, or that the store takes no file under. */
    @ParameterizedTest
    @ValueSource(
            strings = {
                "plan.yaml",
                "small-parts.csv",
                "..",
                ".hidden",
                "a\\..\\b.csv",
                "\u00e9\u202e.csv",
                "LONG",
                "a;\"x.csv"
            })
    void fileNamesHarmNothing(String name) throws IOException {
        byte[] parts = served.store.plan(1).orElseThrow().files().get("small-parts.csv");
        assertThat(parts).isNotNull();
        String sent = name.equals("LONG") ? "a".repeat(20) + "-".repeat(90) + ".csv" : name;
        // A form that such a name breaks is refused.
        assertThat(spoken.upload("/plans/1/weather", spoken.token(), sent, new byte[] {65})
                        .status())
                .isIn(303, 400);
        assertThat(served.store.plan(1).orElseThrow().files())
                .containsEntry("small-parts.csv", parts)
                .doesNotContainKey("plan.yaml")
                .allSatisfy((key, file) -> assertThat(key).matches("[A-Za-z0-9_][A-Za-z0-9._/-]*"));
        assertThat(spoken.get("/plans/1/plan.zip").status()).isEqualTo(200);
        assertThat(entries(served.store.plan(1).orElseThrow().text())).contains("plan.yaml");
    }

    private static List<String> entries(String text) throws IOException {
        List<String> names = new ArrayList<>();
        byte[] packed = Uploads.packed(text, served.store.plan(1).orElseThrow().files());
        try (ZipInputStream in = new ZipInputStream(new java.io.ByteArrayInputStream(packed))) {
            for (ZipEntry entry = in.getNextEntry(); entry != null; entry = in.getNextEntry()) {
                names.add(entry.getName());
            }
        }
        assertThat(names).doesNotHaveDuplicates();
        return names;
    }

    /** Something packed into a folder is unpacked by whoever passes over it. */
    @Test
    void foldersInAZipAreBoundedToo() throws IOException {
        ByteArrayOutputStream packed = new ByteArrayOutputStream();
        try (ZipOutputStream zip = new ZipOutputStream(packed)) {
            zip.putNextEntry(new ZipEntry("folder/"));
            byte[] zeros = new byte[1 << 20];
            for (int mb = 0; mb < 80; mb++) {
                zip.write(zeros);
            }
            zip.putNextEntry(new ZipEntry("plan.yaml"));
            zip.write(bytes("plan: x\n"));
        }
        Spoken.Said said = spoken.upload("/plans", spoken.token(), "x.zip", packed.toByteArray());
        assertCalm(said);
        assertThat(said.body()).contains("larger than a plan's files may be");
    }

    @Test
    void aByteASecondIsCutOffAndManyIdleOnesHoldNobodyUp() throws Exception {
        List<Socket> idle = new ArrayList<>();
        try (Socket slow = new Socket("127.0.0.1", served.pages.port())) {
            for (int i = 0; i < 300; i++) {
                idle.add(new Socket("127.0.0.1", served.pages.port()));
            }
            slow.setSoTimeout(1000);
            slow.getOutputStream()
                    .write(bytes("POST /plans/1/edit HTTP/1.1\r\nHost: HOST\r\nContent-Length: 100000\r\n"
                            + "Content-Type: application/x-www-form-urlencoded\r\n\r\ntoken="));
            assertThat(spoken.get("/").status()).isEqualTo(200);
            byte[] said = new byte[0];
            int seconds = 0;
            while (said.length == 0 && seconds < 30) {
                seconds++;
                try {
                    slow.getOutputStream().write('x');
                    said = slow.getInputStream().readNBytes(12);
                } catch (SocketTimeoutException e) {
                    // Not yet.
                } catch (IOException e) {
                    break;
                }
            }
            assertThat(seconds).as("seconds of trickling").isLessThan(30);
            assertThat(new String(said, StandardCharsets.ISO_8859_1)).isIn("", "HTTP/1.1 408");
            assertThat(spoken.get("/").status()).isEqualTo(200);
        } finally {
            for (Socket one : idle) {
                one.close();
            }
        }
    }

    @Test
    void titlesCarryNoHeadLines() {
        String token = spoken.token();
        assertThat(spoken.post("/plans/1/rename", Map.of(), "token", token, "name", "a\r\nX-Evil: y")
                        .status())
                .isEqualTo(303);
        for (String path : List.of("/plans/1/plan.yaml", "/plans/1/plan.zip", "/plans/1/parts.csv", "/")) {
            assertThat(spoken.get(path).head()).doesNotContain("X-Evil");
        }
        assertThat(PlanText.of(served.store.plan(1).orElseThrow().text()).get("plan"))
                .contains("a X-Evil: y");
        Spoken.Said back = spoken.post("/prefs", Map.of(), "token", token, "back", "//evil.example/");
        assertThat(back.head()).contains("Location: /\r\n").doesNotContain("evil");
        assertThat(spoken.post("/prefs", Map.of(), "token", token, "back", "/\r\nX-Evil: y")
                        .head())
                .doesNotContain("X-Evil");
    }
}
