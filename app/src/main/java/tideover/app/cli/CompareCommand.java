package tideover.app.cli;

import java.nio.file.Path;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;
import tideover.app.files.PlanFile;
import tideover.app.files.StationTable;
import tideover.app.report.ComparisonAnswer;
import tideover.engine.answer.Comparison;
import tideover.engine.answer.Options;
import tideover.engine.answer.Question;
import tideover.engine.site.Stations;
import tideover.engine.why.InputProblems;
import tideover.engine.why.Problem;

/** {@code tideover compare}: two plans side by side. */
@Command(
        name = "compare",
        mixinStandardHelpOptions = true,
        description = "Two plans side by side, and the rig of each under the other.")
final class CompareCommand implements Callable<Integer> {
    @Spec
    private CommandSpec spec = CommandSpec.create();

    @Parameters(index = "0", paramLabel = "PLAN", description = "Plan file (docs/plan-file.md).")
    private Path first = Path.of("");

    @Parameters(index = "1", paramLabel = "PLAN", description = "The other plan, in the same currency.")
    private Path second = Path.of("");

    @Mixin
    private AskOptions ask = new AskOptions();

    @Override
    public Integer call() {
        Options options = ask.options();
        Stations stations = StationTable.load();
        Question one = PlanFile.open(first, stations).question();
        Question other = PlanFile.open(second, stations).question();
        if (!one.currency().equals(other.currency())) {
            throw new InputProblems(new Problem(
                    second.toString(),
                    "prices in " + other.currency(),
                    "those of " + first + ", " + one.currency(),
                    ""));
        }
        Comparison comparison;
        try (ProgressLine line = ask.progress(one);
                Watch watch = ask.watch(line, one, options)) {
            comparison = Comparison.of(one, other, options, watch);
        }
        spec.commandLine()
                .getOut()
                .print(
                        ask.format() == AskOptions.Format.JSON
                                ? ComparisonAnswer.json(comparison, Version.text())
                                : ComparisonAnswer.text(comparison, Version.text()));
        return comparison.first().meets() && comparison.second().meets() ? Failures.DONE : Failures.NOTHING_MEETS;
    }
}
