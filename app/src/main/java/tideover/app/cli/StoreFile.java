package tideover.app.cli;

import java.nio.file.Path;
import picocli.CommandLine.Option;
import tideover.app.store.DataFolder;

/** Where the pages keep plans; what every command that touches them takes. */
final class StoreFile {
    @Option(
            names = "--store",
            paramLabel = "FILE",
            description = "File in which the pages keep plans (default: in your data folder).")
    private Path file =
            DataFolder.file(System.getenv(), System.getProperty("os.name", ""), System.getProperty("user.home", "."));

    Path path() {
        return file;
    }
}
