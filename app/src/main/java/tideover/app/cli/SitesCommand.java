package tideover.app.cli;

import java.util.List;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** {@code tideover sites}: look up a weather station. */
@Command(
        name = "sites",
        mixinStandardHelpOptions = true,
        description = "Looks up a weather station by words of its name, state or number.")
final class SitesCommand implements Callable<Integer> {
    @Spec
    private CommandSpec spec = CommandSpec.create();

    @Parameters(arity = "0..*", paramLabel = "TEXT", description = "Words to look for; none lists every station.")
    private List<String> words = List.of();

    @Option(
            names = "--near",
            paramLabel = "LAT,LON",
            description = "The station nearest to a place, degrees north and east.")
    private @Nullable String near;

    @Option(names = "--format", paramLabel = "FORM", description = "text or json (default text).")
    private AskOptions.Format format = AskOptions.Format.TEXT;

    @Override
    public Integer call() {
        return 0;
    }
}
