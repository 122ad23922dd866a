package tideover.app.cli;

import java.io.PrintWriter;
import java.util.List;
import java.util.Locale;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;
import tideover.app.report.JsonLoads;
import tideover.app.report.TextLoads;
import tideover.engine.load.Usual;
import tideover.engine.load.UsualLoads;
import tideover.engine.why.InputProblems;
import tideover.engine.why.Problem;

/** {@code tideover loads}: look up what household loads usually draw. */
@Command(
        name = "loads",
        mixinStandardHelpOptions = true,
        description = {
            "What household loads usually draw, for a plan whose owner knows no figure yet: \"like:\" in the plan takes one by"
                    + " its word.",
            "A label is better, a meter better still."
        })
final class LoadsCommand implements Callable<Integer> {
    @Spec
    private CommandSpec spec = CommandSpec.create();

    @Parameters(arity = "0..*", paramLabel = "TEXT", description = "Words to look for; none lists every usual load.")
    private List<String> words = List.of();

    @Option(names = "--format", paramLabel = "FORM", description = "text or json (default text).")
    private AskOptions.Format format = AskOptions.Format.TEXT;

    @Override
    public Integer call() {
        PrintWriter out = spec.commandLine().getOut();
        String text = String.join(" ", words);
        List<Usual> found = UsualLoads.search(text);
        if (found.isEmpty()) {
            throw new InputProblems(new Problem(
                    "TEXT",
                    "'" + text + "'",
                    "words of a usual load",
                    "There are: "
                            + String.join(
                                    "; ",
                                    UsualLoads.all().stream().map(Usual::word).toList())
                            + "."));
        }
        if (format == AskOptions.Format.JSON) {
            out.print(JsonLoads.of(found));
        } else {
            out.print(TextLoads.of(found));
            out.printf(
                    Locale.ROOT,
                    "%d of %d usual loads. Ranges, not promises: a label beats them, a meter beats the label.%n",
                    found.size(),
                    UsualLoads.all().size());
        }
        return Failures.DONE;
    }
}
