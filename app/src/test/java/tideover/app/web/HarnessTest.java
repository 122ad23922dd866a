package tideover.app.web;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import com.microsoft.playwright.Page;
import com.sun.net.httpserver.HttpServer;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.net.InetAddress;
import java.net.InetSocketAddress;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.HashSet;
import java.util.Set;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import tideover.app.web.Chrome.Window;

/** That the browser tests can fail: each kind of fault, planted in a small page, is told. */
class HarnessTest {
    private static final String HEAD = "<!doctype html><html lang=en><head><title>Planted</title>"
            + "<link rel=icon href='data:,'></head><body><main><h1>Planted</h1>";

    private static HttpServer server;

    @BeforeAll
    static void serve() throws IOException {
        server = HttpServer.create(new InetSocketAddress(InetAddress.getByName("127.0.0.1"), 0), 0);
        page("/clean", "", "<p style='color:#222;background:#fff'>All is well.</p>");
        page("/no-alt", "", "<img src='data:image/gif;base64,R0lGODlhAQABAAAAACw=' width=20 height=20>");
        page("/pale", "", "<p style='color:#bbb;background:#fff'>Hard to read.</p>");
        page("/console", "", "<script>console.error('planted words')</script>");
        page("/throws", "", "<script>throw new Error('planted fault')</script>");
        page("/missing", "", "<img alt='' src='/no-such-file.png'>");
        page("/elsewhere", "", "<img alt='' src='http://planted.invalid/dot.png'>");
        page("/address-elsewhere", "", "<img alt='' src='http://192.0.2.1/dot.png'>");
        page("/policy", "default-src 'none'", "<script>document.title = 'ran'</script>");
        server.start();
    }

    @AfterAll
    static void end() {
        server.stop(0);
    }

    private static void page(String path, String policy, String body) {
        byte[] bytes = (HEAD + body + "</main></body></html>").getBytes(StandardCharsets.UTF_8);
        server.createContext(path, exchange -> {
            exchange.getResponseHeaders().set("Content-Type", "text/html;charset=utf-8");
            if (!policy.isEmpty()) {
                exchange.getResponseHeaders().set("Content-Security-Policy", policy);
            }
            exchange.sendResponseHeaders(200, bytes.length);
            exchange.getResponseBody().write(bytes);
            exchange.close();
        });
    }

    private static Page open(Window window, String path) {
        Page page = window.page();
        page.navigate("http://127.0.0.1:" + server.getAddress().getPort() + path);
        return page;
    }

    private static void told(String path, String words) {
        Window window = Window.wide();
        Page page = open(window, path);
        page.waitForCondition(() -> window.faults().stream().anyMatch(fault -> fault.contains(words)));
        assertThatThrownBy(window::close).isInstanceOf(AssertionError.class).hasMessageContaining(words);
    }

    @Test
    void faultsOfScriptsAreTold() {
        told("/console", "console: planted words");
        told("/throws", "planted fault");
    }

    @Test
    void whatIsMissingIsTold() {
        told("/missing", "404");
    }

    @Test
    void whatIsAskedElsewhereIsToldAndNotReached() {
        told("/elsewhere", "asked elsewhere: http://planted.invalid/dot.png");
        told("/elsewhere", "ERR_NAME_NOT_RESOLVED");
        told("/address-elsewhere", "asked elsewhere: http://192.0.2.1/dot.png");
        told("/address-elsewhere", "ERR_NAME_NOT_RESOLVED");
    }

    @Test
    void whatThePolicyForbidsIsTold() {
        told("/policy", "Content Security Policy");
    }

    @Test
    void accessibilityEngineSeesPlantedFaults() {
        try (Window window = Window.wide()) {
            assertThat(AccessibleTest.violations(open(window, "/clean"))).isEmpty();
            assertThat(AccessibleTest.violations(open(window, "/no-alt")))
                    .singleElement()
                    .asString()
                    .startsWith("image-alt: ")
                    .contains("[img]");
            assertThat(AccessibleTest.violations(open(window, "/pale")))
                    .singleElement()
                    .asString()
                    .startsWith("color-contrast: ")
                    .contains("[p]");
        }
    }

    @Test
    void picturesShowThePage() throws IOException {
        try (Window window = Window.phone()) {
            Chrome.shot(open(window, "/clean"), "harness-phone");
        }
        BufferedImage picture =
                ImageIO.read(Path.of("target", "shots", "harness-phone.png").toFile());
        assertThat(picture.getWidth()).isEqualTo(390);
        Set<Integer> colours = new HashSet<>();
        for (int y = 0; y < picture.getHeight(); y++) {
            for (int x = 0; x < picture.getWidth(); x++) {
                colours.add(picture.getRGB(x, y));
            }
        }
        assertThat(colours).hasSizeGreaterThan(2);
    }
}
