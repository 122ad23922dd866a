package tideover.app.cli;

import io.javalin.util.JavalinBindException;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.function.Consumer;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;
import tideover.app.store.Store;
import tideover.app.store.StoreProblem;
import tideover.app.web.PageServer;
import tideover.engine.answer.Options;

/** Serves the pages until the process is ended; what both commands that do so take. */
final class Serving {
    private static final int HIGHEST_PORT = 65_535;

    @Spec(Spec.Target.MIXEE)
    private CommandSpec spec = CommandSpec.create();

    @Option(names = "--port", paramLabel = "N", description = "Port of the pages (default: any that is free).")
    private int port;

    @Mixin
    private StoreChoice plans = new StoreChoice();

    /** @param meanwhile is done once the address has been printed */
    void serve(Options options, Consumer<PageServer> meanwhile) throws InterruptedException {
        if (port < 0 || port > HIGHEST_PORT) {
            throw new ParameterException(
                    spec.commandLine(), "Option --port takes 0 to " + HIGHEST_PORT + "; found " + port + ".");
        }
        Path file = plans.file();
        PrintWriter out = spec.commandLine().getOut();
        try (Store store = Store.open(file);
                PageServer pages = PageServer.start(store, options, port)) {
            out.println("The pages: " + pages.address());
            out.println("Open that in a browser on this machine; it is served to no other. Plans are kept in " + file
                    + ".");
            out.println("Stop with Ctrl-C.");
            out.flush();
            meanwhile.accept(pages);
            out.flush();
            Thread.currentThread().join();
        } catch (JavalinBindException e) {
            throw new StoreProblem("Port " + port + " is in use; give another with --port, or none.");
        }
    }
}
