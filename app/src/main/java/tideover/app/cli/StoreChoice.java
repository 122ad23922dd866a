package tideover.app.cli;

import java.nio.file.Path;
import picocli.CommandLine.Option;
import tideover.app.store.DataFolder;

/** Which file of plans. */
final class StoreChoice {
    @Option(
            names = "--store",
            paramLabel = "FILE",
            description = "File in which the pages keep plans (default: in your data folder).")
    private Path file =
            DataFolder.file(System.getenv(), System.getProperty("os.name", ""), System.getProperty("user.home", "."));

    Path file() {
        return file;
    }
}
