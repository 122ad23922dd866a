package tideover.app.web;

import io.javalin.Javalin;
import io.javalin.config.JavalinConfig;
import io.javalin.config.SizeUnit;
import io.javalin.http.Context;
import io.javalin.http.HttpResponseException;
import io.javalin.http.HttpStatus;
import jakarta.servlet.ServletException;
import java.io.EOFException;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.List;
import java.util.Map;
import java.util.logging.Level;
import java.util.logging.Logger;
import org.eclipse.jetty.http.HttpException;
import org.eclipse.jetty.io.Content;
import org.eclipse.jetty.server.Request;
import org.eclipse.jetty.server.Response;
import org.eclipse.jetty.server.ServerConnector;
import org.eclipse.jetty.util.Callback;
import org.eclipse.jetty.util.thread.QueuedThreadPool;
import tideover.app.files.StationTable;
import tideover.app.report.Templates;
import tideover.app.store.StaleEdit;
import tideover.app.store.Store;
import tideover.app.store.StoreProblem;
import tideover.app.store.StoredPlan;
import tideover.engine.answer.Answer;
import tideover.engine.answer.Options;
import tideover.engine.answer.Question;
import tideover.engine.site.Stations;
import tideover.engine.why.InputProblems;

/** Serves the pages on the loopback address. Opens no connection of its own, ever. */
public final class PageServer implements AutoCloseable {
    private static final Logger LOG = Logger.getLogger(PageServer.class.getName());

    /** Held, or their levels are forgotten with them. */
    private static final List<Logger> OF_LIBRARIES =
            List.of(Logger.getLogger("io.javalin"), Logger.getLogger("org.eclipse.jetty"));

    private static final String HERE = "127.0.0.1";

    /** A form; uploads have their own bound. */
    private static final long MOST_FORM_BYTES = 2_000_000;

    private static final int MOST_UPLOAD_MB = 64;

    /** Whoever sends nothing for so long is cut off. */
    private static final int IDLE_MS = 15_000;

    private static final int MOST_THREADS = 48;

    private final Guard guard = new Guard();
    private final Javalin server;
    private final Asking asking;
    private final Examples examples;
    private final PlanReader reader;
    private final Store store;

    private PageServer(Store store, Options options, Stations stations) {
        OF_LIBRARIES.forEach(logger -> logger.setLevel(Level.WARNING));
        asking = new Asking(options);
        this.store = store;
        reader = new PlanReader(stations);
        Frames frames = new Frames(store, guard.token());
        examples = new Examples();
        if (store.plans().isEmpty() && store.deleted().isEmpty()) {
            examples.add(store);
        }
        Sheets sheets = new Sheets(store, asking, stations, reader, frames);
        Shelf shelf = new Shelf(store, asking, reader, frames, examples, stations);
        Parts parts = new Parts(store, asking, reader, frames);
        server = Javalin.create(config -> {
            settings(config);
            config.routes.before(guard::check);
            UploadRoom room = new UploadRoom();
            config.routes.beforeMatched(room::enter);
            config.routes.beforeMatched(guard::checkToken);
            config.routes.after(room::leave);
            config.routes.after(frames::restate);
            fixed(config, "/sheet.css", "/tideover/web/sheet.css", "text/css");
            fixed(config, "/sheet.js", "/tideover/web/sheet.js", "text/javascript");
            fixed(
                    config,
                    "/htmx.js",
                    "/META-INF/resources/webjars/htmx.org/2.0.10/dist/htmx.min.js",
                    "text/javascript");
            fixed(config, "/mark.svg", "/tideover/web/mark.svg", "image/svg+xml");
            shelf.routes(config.routes);
            sheets.routes(config.routes);
            parts.routes(config.routes);
            troubles(config);
        });
    }

    /**
     * Starts serving.
     *
     * @param port to listen on; 0 for any that is free
     */
    public static PageServer start(Store store, Options options, int port) {
        PageServer pages = new PageServer(store, options, StationTable.load());
        try {
            pages.server.start(HERE, port);
        } catch (RuntimeException e) {
            pages.asking.close();
            throw e;
        }
        return pages;
    }

    public int port() {
        return server.port();
    }

    public String address() {
        return "http://" + HERE + ":" + port() + "/";
    }

    /** The answer to the example plan, waited for; whoever looks at its sheet meanwhile sees it come. */
    public Answer example() {
        StoredPlan plan = examples.kept(store);
        Question question = reader.read(plan).question();
        if (question == null) {
            throw new IllegalStateException("the example cannot be read");
        }
        return asking.wait(plan.id() + "|", plan.revision(), question);
    }

    private static void settings(JavalinConfig config) {
        config.startup.showJavalinBanner = false;
        config.startup.showOldJavalinVersionWarning = false;
        config.startup.startupWatcherEnabled = false;
        config.http.maxRequestSize = MOST_FORM_BYTES;
        config.http.defaultContentType = "text/html;charset=utf-8";
        config.jetty.threadPool = new QueuedThreadPool(MOST_THREADS, 4, IDLE_MS);
        config.jetty.multipartConfig.maxFileSize(MOST_UPLOAD_MB, SizeUnit.MB);
        config.jetty.multipartConfig.maxTotalRequestSize(MOST_UPLOAD_MB + 1L, SizeUnit.MB);
        config.jetty.multipartConfig.maxInMemoryFileSize(MOST_UPLOAD_MB, SizeUnit.MB);
        config.jetty.modifyHttpConfiguration(http -> {
            http.setSendServerVersion(false);
            http.setIdleTimeout(IDLE_MS);
            http.setMinRequestDataRate(100);
        });
        config.jetty.modifyServletContextHandler(context -> context.setErrorHandler(PageServer::unreadable));
        config.jetty.modifyServer(jetty -> {
            jetty.setErrorHandler(PageServer::unreadable);
            for (org.eclipse.jetty.server.Connector one : jetty.getConnectors()) {
                if (one instanceof ServerConnector connector) {
                    connector.setIdleTimeout(IDLE_MS);
                }
            }
        });
    }

    /** A file out of the program's own jar; nothing else is ever read for an address. */
    private static void fixed(JavalinConfig config, String address, String resource, String type) {
        byte[] bytes = bytes(resource);
        config.routes.get(address, request -> request.contentType(type).result(bytes));
    }

    private static byte[] bytes(String resource) {
        try (InputStream in = PageServer.class.getResourceAsStream(resource)) {
            if (in == null) {
                throw new IllegalStateException("not in the jar: " + resource);
            }
            return in.readAllBytes();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static void troubles(JavalinConfig config) {
        config.routes.exception(HttpResponseException.class, (e, request) -> {
            request.status(e.getStatus());
            trouble(request, String.valueOf(e.getMessage()));
        });
        config.routes.exception(InputProblems.class, (e, request) -> {
            request.status(HttpStatus.BAD_REQUEST);
            trouble(request, e.problems().get(0).sentence());
        });
        config.routes.exception(StaleEdit.class, (e, request) -> {
            request.status(HttpStatus.CONFLICT);
            trouble(request, "This plan was changed in another tab at the same moment. Try again.");
        });
        config.routes.exception(ServletException.class, (e, request) -> {
            // A form in several parts that is none; the server's library wraps what it has against it.
            request.status(e.getCause() instanceof HttpException told ? told.getCode() : 400);
            trouble(request, "What was sent cannot be read, or is more than " + MOST_UPLOAD_MB + " MB.");
        });
        config.routes.exception(HttpException.RuntimeException.class, (e, request) -> {
            request.status(e.getCode());
            trouble(request, "It came too slowly or broke off; nothing was changed.");
        });
        config.routes.exception(EOFException.class, (e, request) -> {
            request.status(HttpStatus.BAD_REQUEST);
            trouble(request, "It broke off; nothing was changed.");
        });
        config.routes.exception(StoreProblem.class, (e, request) -> {
            request.status(HttpStatus.INTERNAL_SERVER_ERROR);
            trouble(request, String.valueOf(e.getMessage()));
        });
        config.routes.exception(Exception.class, (e, request) -> {
            LOG.log(Level.SEVERE, "a page failed", e);
            request.status(HttpStatus.INTERNAL_SERVER_ERROR);
            trouble(request, "The program failed at this page. That is our fault; nothing was changed.");
        });
        config.routes.error(HttpStatus.NOT_FOUND, request -> trouble(request, "There is no such page."));
    }

    private static void trouble(Context request, String words) {
        request.html(troublePage(words));
    }

    private static String troublePage(String words) {
        return Templates.render("sheet/trouble.jte", Map.of("frame", Frames.bare(), "words", words));
    }

    /** What never reaches a page: addresses and head lines that are none. The same calm words, under the same guards. */
    private static boolean unreadable(Request request, Response response, Callback done) {
        Guard.HEADERS.forEach(response.getHeaders()::put);
        response.getHeaders().put("Content-Type", "text/html;charset=utf-8");
        Content.Sink.write(response, true, troublePage("There is no such page, or the request cannot be read."), done);
        return true;
    }

    @Override
    public void close() {
        asking.close();
        server.stop();
    }
}
