package tideover.app.cli;

import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.Callable;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;
import tideover.app.files.PlanFile;
import tideover.app.files.StationTable;
import tideover.app.report.TraceCsv;
import tideover.engine.answer.Advisor;
import tideover.engine.answer.Answer;
import tideover.engine.answer.Options;
import tideover.engine.answer.Question;
import tideover.engine.proof.Trace;
import tideover.engine.quantity.ModelYear;
import tideover.engine.rig.Rig;
import tideover.engine.site.WeatherSource;
import tideover.engine.why.InputProblems;
import tideover.engine.why.Problem;

/** {@code tideover prove}: one rig through every outage. */
@Command(
        name = "prove",
        mixinStandardHelpOptions = true,
        description =
                "Full simulation of one rig: carried share, hours carried by start, worst and median outage, binding"
                        + " limit.")
final class ProveCommand implements Callable<Integer> {
    private static final Pattern MOMENT = Pattern.compile("(\\d{1,4})-(\\d{1,2})-(\\d{1,2})T(\\d{1,2})");
    private static final int WORST = -1;
    private static final int MEDIAN = -2;

    @Spec
    private CommandSpec spec = CommandSpec.create();

    @Parameters(paramLabel = "PLAN", description = "Plan file (docs/plan-file.md).")
    private Path plan = Path.of("");

    @Option(
            names = "--rig",
            required = true,
            paramLabel = "FILE-or-number",
            description =
                    "A rig file (docs/plan-file.md), or a rig's number in the lists of 'tideover size' with the same"
                            + " plan and parts.")
    private String rigName = "";

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

    @Option(names = "--trace", paramLabel = "FILE", description = "Also write every step of one outage as CSV.")
    private @Nullable Path traceFile;

    @Option(
            names = "--outage",
            paramLabel = "WHICH",
            description =
                    "Outage of the trace: worst, median, or the weather year, month, day and hour in which it begins,"
                            + " such as 17-12-24T18 (default worst).")
    private @Nullable String outage;

    @Mixin
    private AskOptions ask = new AskOptions();

    @Override
    public Integer call() {
        Options options = ask.options();
        Output.check(
                List.of(plan, Path.of(rigName)),
                new Output.Asked("--report", report),
                new Output.Asked("--chosen", chosen),
                new Output.Asked("--trace", traceFile));
        if (outage != null && traceFile == null) {
            throw new ParameterException(spec.commandLine(), "--outage goes with --trace FILE, which takes its steps.");
        }
        PlanFile.Plan read = PlanFile.open(plan, StationTable.load());
        Question question = read.question();
        int startHour = startHour(question.weather(), options);
        Answer answer;
        try (ProgressLine line = ask.progress(question);
                Watch watch = ask.watch(line, question, options)) {
            Rig rig = RigChoice.of(rigName, question);
            answer = Advisor.prove(question, rig, options, watch);
            if (traceFile != null) {
                Trace trace = trace(question, rig, options, answer, startHour);
                Output.write(traceFile, writer -> TraceCsv.write(trace, writer));
            }
        }
        ChosenOutput.write(spec, chosen, answer, read);
        return SizeCommand.print(spec, answer, ask, report);
    }

    private Trace trace(Question question, Rig rig, Options options, Answer answer, int startHour) {
        if (answer.rig() == null) {
            throw new IllegalStateException("a proof without a rig");
        }
        return switch (startHour) {
            case WORST -> answer.rig().proof().worst();
            case MEDIAN -> answer.rig().proof().median();
            default -> Advisor.trace(question, rig, startHour, options);
        };
    }

    /** Hour of the weather years in which the asked outage begins, or {@link #WORST} or {@link #MEDIAN}. */
    private int startHour(WeatherSource weather, Options options) {
        if (outage == null || "worst".equals(outage)) {
            return WORST;
        }
        if ("median".equals(outage)) {
            return MEDIAN;
        }
        int years = weather instanceof WeatherSource.Imported imported
                ? imported.weather().years()
                : options.years();
        Matcher moment = MOMENT.matcher(outage);
        if (moment.matches()) {
            int year = Integer.parseInt(moment.group(1));
            int month = Integer.parseInt(moment.group(2));
            int day = Integer.parseInt(moment.group(3));
            int hour = Integer.parseInt(moment.group(4));
            if (year >= 1
                    && year <= years
                    && month >= 1
                    && month <= 12
                    && day >= 1
                    && day <= ModelYear.daysIn(month - 1)
                    && hour < 24) {
                return (year - 1) * ModelYear.HOURS + (ModelYear.firstDay(month - 1) + day - 1) * 24 + hour;
            }
        }
        throw new InputProblems(new Problem(
                "--outage",
                outage,
                "worst, median, or a start such as 1-12-24T18 with a weather year from 1 to " + years
                        + " (no 29 February)",
                ""));
    }
}
