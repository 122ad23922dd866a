package tideover.app.cli;

import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;
import tideover.app.store.DataFolder;
import tideover.app.store.Store;
import tideover.app.web.PageServer;
import tideover.engine.answer.Options;

/** {@code tideover serve}: the pages, on this machine alone. */
@Command(
        name = "serve",
        mixinStandardHelpOptions = true,
        description = "Serves the pages on this machine only, until Ctrl-C, and prints the address.")
final class ServeCommand implements Callable<Integer> {
    private static final int HIGHEST_PORT = 65_535;

    @Spec
    private CommandSpec spec = CommandSpec.create();

    @Option(names = "--port", paramLabel = "N", description = "Port to listen on (default: any that is free).")
    private int port;

    @Option(
            names = "--store",
            paramLabel = "FILE",
            description = "File in which plans are kept (default: in your data folder).")
    private Path file =
            DataFolder.file(System.getenv(), System.getProperty("os.name", ""), System.getProperty("user.home", "."));

    @Override
    public Integer call() throws InterruptedException {
        if (port < 0 || port > HIGHEST_PORT) {
            throw new ParameterException(
                    spec.commandLine(), "Option --port takes 0 to " + HIGHEST_PORT + "; found " + port + ".");
        }
        int threads = Math.min(64, Runtime.getRuntime().availableProcessors());
        Options usual = Options.USUAL;
        Options options = new Options(usual.seed(), usual.years(), usual.confirmYears(), usual.stepsPerHour(), threads);
        try (Store store = Store.open(file);
                PageServer pages = PageServer.start(store, options, port)) {
            PrintWriter out = spec.commandLine().getOut();
            out.println("The pages: " + pages.address());
            out.println("On this machine only. Stop with Ctrl-C.");
            out.flush();
            Thread.currentThread().join();
        }
        return Failures.DONE;
    }
}
