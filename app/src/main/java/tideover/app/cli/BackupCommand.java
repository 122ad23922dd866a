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

/** {@code tideover backup}: all plans of the pages in one file. */
@Command(
        name = "backup",
        mixinStandardHelpOptions = true,
        description = "Copies all plans of the pages into one new file. Where the pages are open, take the copy there.")
final class BackupCommand implements Callable<Integer> {
    @Spec
    private CommandSpec spec = CommandSpec.create();

    @Parameters(paramLabel = "FILE", description = "File to write.")
    private Path to = Path.of("");

    @Option(names = "--over", description = "Replace the file if it is there already.")
    private boolean over;

    @Mixin
    private StoreFile file = new StoreFile();

    @Override
    public Integer call() {
        try (Store store = Store.open(file.path())) {
            store.backup(to, over);
        }
        spec.commandLine().getOut().println("Copied to " + to + ".");
        return Failures.DONE;
    }
}
