package tideover.app.cli;

import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;
import tideover.app.store.Store;

/** {@code tideover restore}: a copy of all plans becomes what the pages show. */
@Command(
        name = "restore",
        mixinStandardHelpOptions = true,
        description =
                "Puts a copy that 'tideover backup' wrote in the place of all plans of the pages. What was there is kept"
                        + " beside it. End the pages first.")
final class RestoreCommand implements Callable<Integer> {
    @Spec
    private CommandSpec spec = CommandSpec.create();

    @Parameters(paramLabel = "COPY", description = "The copy; it stays as it is.")
    private Path copy = Path.of("");

    @Mixin
    private StoreChoice store = new StoreChoice();

    @Override
    public Integer call() {
        PrintWriter out = spec.commandLine().getOut();
        var before = Store.putBack(copy, store.file());
        out.println("The plans of " + copy + " are now in " + store.file() + ".");
        before.ifPresent(kept -> out.println("What was there before is kept in " + kept + "."));
        return Failures.DONE;
    }
}
