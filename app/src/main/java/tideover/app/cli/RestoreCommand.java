package tideover.app.cli;

import java.nio.file.Path;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;
import tideover.app.store.Store;

/** {@code tideover restore}: the plans of a copy in the place of those that are kept. */
@Command(
        name = "restore",
        mixinStandardHelpOptions = true,
        description = "Puts the plans of a copy in the place of all that are kept; those are kept in a file beside.")
final class RestoreCommand implements Callable<Integer> {
    @Spec
    private CommandSpec spec = CommandSpec.create();

    @Parameters(paramLabel = "FILE", description = "A file that \"backup\" or the pages wrote.")
    private Path from = Path.of("");

    @Mixin
    private StoreFile file = new StoreFile();

    @Override
    public Integer call() {
        Path replaced;
        try (Store store = Store.open(file.path())) {
            replaced = store.putBack(from);
        }
        spec.commandLine().getOut().println("Put back. What was kept before is in " + replaced + ".");
        return Failures.DONE;
    }
}
