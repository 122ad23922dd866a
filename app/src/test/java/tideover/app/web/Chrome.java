package tideover.app.web;

import com.microsoft.playwright.Browser;
import com.microsoft.playwright.BrowserContext;
import com.microsoft.playwright.BrowserType;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.Playwright;
import java.io.File;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Assumptions;

/** The machine's own Chromium, one for all tests of the JVM; it fetches nothing and speaks to this machine alone. */
final class Chrome {
    private static final String DRIVER = "playwright.cli.dir";
    private static final List<String> FLAGS = List.of(
            "--no-sandbox",
            "--disable-gpu",
            "--disable-quic",
            "--no-first-run",
            "--disable-background-networking",
            "--disable-component-update",
            "--disable-sync",
            // Whatever it wants elsewhere, for a page or for itself, is not found.
            "--host-resolver-rules=MAP * ~NOTFOUND, EXCLUDE 127.0.0.1");

    private static @Nullable Browser browser;

    private Chrome() {}

    private static @Nullable Path onPath(String... names) {
        return Stream.of(System.getenv("PATH").split(File.pathSeparator))
                .flatMap(folder -> Stream.of(names).map(name -> Path.of(folder, name)))
                .filter(Files::isExecutable)
                .findFirst()
                .orElse(null);
    }

    /** Under {@code ./check} what is missing is a failure; elsewhere the test is left out, and says so. */
    static synchronized Browser browser() {
        if (browser != null) {
            return browser;
        }
        Path node = onPath("node");
        Path chromium = onPath("chromium", "chromium-browser", "google-chrome");
        boolean driver = Files.isRegularFile(Path.of(System.getProperty(DRIVER, "nowhere"), "package", "cli.js"));
        boolean there = node != null && chromium != null && driver;
        if (!Boolean.getBoolean("tideover.browser.needed")) {
            Assumptions.assumeTrue(there, "no Chromium, node or driver here: run app/src/test/browser/install");
        }
        if (node == null || chromium == null || !driver) {
            throw new IllegalStateException(
                    "browser tests need node and Chromium on the PATH and what app/src/test/browser/install fetches");
        }
        Playwright playwright = Playwright.create(new Playwright.CreateOptions()
                .setEnv(Map.of("PLAYWRIGHT_NODEJS_PATH", node.toString(), "PLAYWRIGHT_SKIP_BROWSER_DOWNLOAD", "1")));
        browser = playwright
                .chromium()
                .launch(new BrowserType.LaunchOptions()
                        .setExecutablePath(chromium)
                        .setArgs(FLAGS));
        Runtime.getRuntime().addShutdownHook(new Thread(playwright::close, "browser's end"));
        return browser;
    }

    /** A person's window, in which nothing may go wrong unseen. */
    static final class Window implements AutoCloseable {
        private final BrowserContext context;
        private final List<String> faults = new ArrayList<>();

        Window(Browser.NewContextOptions options) {
            context = browser().newContext(options);
            context.setDefaultTimeout(30_000);
            context.onConsoleMessage(message -> {
                if (message.type().equals("error")) {
                    faults.add("console: " + message.text());
                }
            });
            context.onWebError(error -> faults.add("script: " + error.error()));
            context.onRequest(request -> {
                if (!request.url().startsWith("http://127.0.0.1:")
                        && !request.url().startsWith("data:")) {
                    faults.add("asked elsewhere: " + request.url());
                }
            });
        }

        static Window wide() {
            return new Window(new Browser.NewContextOptions().setViewportSize(1280, 900));
        }

        static Window phone() {
            return new Window(
                    new Browser.NewContextOptions().setViewportSize(390, 844).setHasTouch(true));
        }

        static Window withoutScript() {
            return new Window(
                    new Browser.NewContextOptions().setViewportSize(1280, 900).setJavaScriptEnabled(false));
        }

        Page page() {
            return context.newPage();
        }

        /** What went wrong so far is expected, and forgotten. */
        void forgive() {
            faults.clear();
        }

        List<String> faults() {
            return faults;
        }

        @Override
        public void close() {
            context.close();
            if (!faults.isEmpty()) {
                throw new AssertionError(String.join("\n", faults));
            }
        }
    }

    /** A picture of the whole page, to be looked at by a person. */
    static void shot(Page page, String name) {
        page.screenshot(new Page.ScreenshotOptions()
                .setPath(Path.of("target", "shots", name + ".png"))
                .setFullPage(true));
    }
}
