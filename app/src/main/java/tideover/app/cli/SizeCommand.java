package tideover.app.cli;

import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;
import tideover.app.files.PlanFile;
import tideover.app.files.StationTable;
import tideover.app.report.HtmlReport;
import tideover.app.report.JsonAnswer;
import tideover.app.report.TextAnswer;
import tideover.engine.answer.Advisor;
import tideover.engine.answer.Answer;
import tideover.engine.answer.Options;
import tideover.engine.answer.Question;

/** {@code tideover size}: the cheapest rig that meets a plan. */
@Command(
        name = "size",
        mixinStandardHelpOptions = true,
        description = "The rigs that meet a plan, cheapest first, the trade-off front, and why others failed.")
final class SizeCommand implements Callable<Integer> {
    @Spec
    private CommandSpec spec = CommandSpec.create();

    @Parameters(paramLabel = "PLAN", description = "Plan file (docs/plan-file.md).")
    private Path plan = Path.of("");

    @Option(
            names = "--report",
            paramLabel = "FILE",
            description = "Also write the answer as one self-contained HTML page.")
    private @Nullable Path report;

    @Option(
            names = "--chosen",
            paramLabel = "FILE",
            description = "Also write what the rig is made of as CSV, which is a parts file too (docs/parts-file.md).")
    private @Nullable Path chosen;

    @Option(
            names = "--by-mass",
            description = "Also list the rigs than which none is both lighter and better; takes a search of its own.")
    private boolean byMass;

    @Mixin
    private AskOptions ask = new AskOptions();

    @Override
    public Integer call() {
        Options options = ask.options().withByMass(byMass);
        Output.check(List.of(plan), new Output.Asked("--report", report), new Output.Asked("--chosen", chosen));
        PlanFile.Plan read = PlanFile.open(plan, StationTable.load());
        Answer answer = solved(read.question(), options, ask);
        ChosenOutput.write(spec, chosen, answer, read);
        return print(spec, answer, ask, report);
    }

    static int answer(CommandSpec spec, Question question, Options options, AskOptions ask, @Nullable Path report) {
        return print(spec, solved(question, options, ask), ask, report);
    }

    private static Answer solved(Question question, Options options, AskOptions ask) {
        try (ProgressLine line = ask.progress(question);
                Watch watch = ask.watch(line, question, options)) {
            return Advisor.size(question, options, watch);
        }
    }

    static int print(CommandSpec spec, Answer answer, AskOptions ask, @Nullable Path report) {
        String version = Version.text();
        if (report != null) {
            Output.text(report, HtmlReport.of(answer, version));
        }
        spec.commandLine()
                .getOut()
                .print(
                        ask.format() == AskOptions.Format.JSON
                                ? JsonAnswer.of(answer, version)
                                : TextAnswer.of(answer, version));
        return answer.meets() ? Failures.DONE : Failures.NOTHING_MEETS;
    }
}
