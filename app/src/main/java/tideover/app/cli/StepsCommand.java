package tideover.app.cli;

import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.Callable;
import java.util.stream.Stream;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;
import tideover.app.files.PlanFile;
import tideover.app.files.StationTable;
import tideover.app.files.SumText;
import tideover.app.report.JsonSteps;
import tideover.app.report.TextSteps;
import tideover.engine.answer.Advisor;
import tideover.engine.answer.Options;
import tideover.engine.answer.Question;
import tideover.engine.answer.Steps;
import tideover.engine.why.InputProblems;
import tideover.engine.why.Problem;

/** {@code tideover steps}: a first sum now, a second later, nothing bought thrown away. */
@Command(
        name = "steps",
        mixinStandardHelpOptions = true,
        description = "Buying in two steps, each the best for its money, nothing bought thrown away.")
final class StepsCommand implements Callable<Integer> {
    @Spec
    private CommandSpec spec = CommandSpec.create();

    @Parameters(paramLabel = "PLAN", description = "Plan file (docs/plan-file.md); its own budget is not looked at.")
    private Path plan = Path.of("");

    @Option(
            names = "--now",
            required = true,
            paramLabel = "MONEY",
            description = "Most that the first step may cost, such as \"400 USD\".")
    private String now = "";

    @Option(
            names = "--later",
            required = true,
            paramLabel = "MONEY",
            description = "Most that what is added to it may cost.")
    private String later = "";

    @Mixin
    private AskOptions ask = new AskOptions();

    @Override
    public Integer call() {
        Options options = ask.options();
        Question question = PlanFile.open(plan, StationTable.load()).question();
        SumText first = SumText.read("--now", now, question.currency());
        SumText second = SumText.read("--later", later, question.currency());
        List<Problem> problems =
                Stream.of(first, second).flatMap(sum -> sum.problem().stream()).toList();
        if (!problems.isEmpty()) {
            throw new InputProblems(problems);
        }
        Steps steps;
        try (ProgressLine line = ask.progress(question);
                Watch watch = ask.watch(line, question, options)) {
            steps = Advisor.steps(question, first.cents(), second.cents(), options, watch);
        }
        spec.commandLine()
                .getOut()
                .print(
                        ask.format() == AskOptions.Format.JSON
                                ? JsonSteps.of(steps, Version.text())
                                : TextSteps.of(steps, Version.text()));
        return steps.firstMet() == Steps.Met.NEVER ? Failures.NOTHING_MEETS : Failures.DONE;
    }
}
