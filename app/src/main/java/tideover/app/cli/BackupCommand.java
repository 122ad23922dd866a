package tideover.app.cli;

import java.nio.file.Path;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;
import tideover.app.store.Store;

/** {@code tideover backup}: a copy of all plans. */
@Command(
        name = "backup",
        mixinStandardHelpOptions = true,
        description = "Copies all plans of the pages, with their files, into one file; the pages may go on meanwhile.")
final class BackupCommand implements Callable<Integer> {
    @Spec
    private CommandSpec spec = CommandSpec.create();

    @Parameters(paramLabel = "COPY", description = "The file to write; one that is there is left alone.")
    private Path copy = Path.of("");

    @Option(names = "--replace", description = "Put the copy in the place of a file that is there.")
    private boolean replace;

    @Mixin
    private StoreChoice store = new StoreChoice();

    @Override
    public Integer call() {
        Store.backup(store.file(), copy, replace);
        spec.commandLine().getOut().println("All plans of " + store.file() + " were copied into " + copy + ".");
        return Failures.DONE;
    }
}
