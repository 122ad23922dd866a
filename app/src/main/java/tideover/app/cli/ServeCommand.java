package tideover.app.cli;

import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import tideover.engine.answer.Options;

/** {@code tideover serve}: the pages, on this machine alone. */
@Command(
        name = "serve",
        mixinStandardHelpOptions = true,
        description = "Serves the pages on this machine only, until Ctrl-C, and prints the address.")
final class ServeCommand implements Callable<Integer> {
    @Mixin
    private Serving serving = new Serving();

    @Override
    public Integer call() throws InterruptedException {
        Options usual = Options.USUAL;
        int threads = Math.min(64, Runtime.getRuntime().availableProcessors());
        serving.serve(
                new Options(usual.seed(), usual.years(), usual.confirmYears(), usual.stepsPerHour(), threads),
                pages -> {});
        return Failures.DONE;
    }
}
