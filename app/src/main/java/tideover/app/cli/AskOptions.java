package tideover.app.cli;

import java.io.PrintWriter;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;
import tideover.app.report.KnownWords;
import tideover.engine.answer.Options;
import tideover.engine.answer.Question;

/** What every asking command takes. */
final class AskOptions {
    /** How an answer is printed. */
    enum Format {
        TEXT,
        JSON
    }

    @Spec(Spec.Target.MIXEE)
    private CommandSpec spec = CommandSpec.create();

    @Option(names = "--format", paramLabel = "FORM", description = "text or json (default text).")
    private Format format = Format.TEXT;

    @Option(names = "--seed", paramLabel = "N", description = "Seed of the weather years (default ${DEFAULT-VALUE}).")
    private long seed = Options.USUAL.seed();

    @Option(names = "--years", paramLabel = "N", description = "Weather years to generate (default 30).")
    private int years = Options.USUAL.years();

    @Option(
            names = "--confirm-years",
            paramLabel = "N",
            description = "Years on the next seed that the winner must pass too (default 100).")
    private int confirmYears = Options.USUAL.confirmYears();

    @Option(
            names = "--step",
            paramLabel = "MIN",
            description = "Simulation step in minutes: 60, 30, 20, 15, 12, 10, 6 or 5 (default 15).")
    private int stepMinutes = 15;

    @Option(names = "--threads", paramLabel = "N", description = "Threads (default: the machine's; changes no figure).")
    private int threads = Math.min(64, Runtime.getRuntime().availableProcessors());

    @Option(names = "--quiet", description = "No progress on the terminal.")
    private boolean quiet;

    Format format() {
        return format;
    }

    Options options() {
        within("--years", years, 1, 1000);
        within("--confirm-years", confirmYears, 1, 1000);
        within("--threads", threads, 1, 64);
        if (stepMinutes < 5 || stepMinutes > 60 || 60 % stepMinutes != 0) {
            throw new ParameterException(
                    spec.commandLine(),
                    "--step is " + stepMinutes + ", expected 60, 30, 20, 15, 12, 10, 6 or 5 minutes.");
        }
        return new Options(seed, years, confirmYears, 60 / stepMinutes, threads);
    }

    ProgressLine progress(Question question) {
        return new ProgressLine(spec.commandLine().getErr(), !quiet && ProgressLine.onTerminal(), question.currency());
    }

    /** Where the process has to end before the answer is out, what is known goes to standard output. */
    Watch watch(ProgressLine line, Question question, Options options) {
        PrintWriter out = spec.commandLine().getOut();
        return Watch.over(line, known -> {
            line.close();
            out.print(
                    format == Format.JSON
                            ? KnownWords.json(known, question, options, Version.text())
                            : KnownWords.text(known, question, options));
            out.flush();
        });
    }

    private void within(String name, int value, int least, int most) {
        if (value < least || value > most) {
            throw new ParameterException(
                    spec.commandLine(), name + " is " + value + ", expected from " + least + " to " + most + ".");
        }
    }
}
