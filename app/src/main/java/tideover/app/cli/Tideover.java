package tideover.app.cli;

import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import java.util.concurrent.Callable;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Spec;
import tideover.app.report.TextAnswer;
import tideover.engine.answer.Answer;

/** The program's command line; without a command it serves the pages, solves the demo plan and prints the answer. */
@Command(
        name = "tideover",
        versionProvider = Version.class,
        mixinStandardHelpOptions = true,
        sortOptions = false,
        description = {
            "Finds the cheapest kit that keeps a household's essentials running through power cuts, and proves it against"
                    + " the local weather.",
            "Without a command it serves the pages on this machine only and solves the invented demo plan; as JSON it does"
                    + " that alone."
        },
        footer = {
            "",
            "Exit status: 0 done, 1 our fault, 2 the input is wrong, 3 nothing meets the target, 130 stopped by Ctrl-C"
                    + " (what is known by then is printed).",
            "It advises and does not certify: local codes, licensed practice and the makers' instructions come first."
        },
        subcommands = {
            SizeCommand.class,
            ProveCommand.class,
            StepsCommand.class,
            ServeCommand.class,
            BackupCommand.class,
            RestoreCommand.class,
            PlacesCommand.class,
            CompareCommand.class,
            SitesCommand.class,
            LoadsCommand.class,
            WeatherCommand.class,
            CompletionCommand.class
        })
public final class Tideover implements Callable<Integer> {
    @Spec
    private CommandSpec spec = CommandSpec.create();

    @Mixin
    private AskOptions ask = new AskOptions();

    @Mixin
    private Serving serving = new Serving();

    private Tideover() {}

    public static void main(String[] args) {
        System.exit(run(
                new PrintWriter(new StandardOutput(), true, StandardCharsets.UTF_8),
                new PrintWriter(System.err, true, StandardCharsets.UTF_8),
                args));
    }

    /** Runs one command line and returns its exit status. */
    public static int run(PrintWriter out, PrintWriter err, String... args) {
        CommandLine line = line();
        line.setOut(out);
        line.setErr(err);
        line.setUsageHelpWidth(100);
        line.setCaseInsensitiveEnumValuesAllowed(true);
        line.setAbbreviatedSubcommandsAllowed(false);
        line.setParameterExceptionHandler(Failures::ofUsage);
        line.setExecutionExceptionHandler(Failures::ofWork);
        int status = line.execute(args);
        if (out.checkError()) {
            err.println("Standard output could not take all of it: is the disk full?");
            status = Failures.INPUT_WRONG;
        }
        err.flush();
        return status;
    }

    static CommandLine line() {
        return new CommandLine(new Tideover());
    }

    @Override
    public Integer call() throws InterruptedException {
        if (ask.format() == AskOptions.Format.JSON) {
            return SizeCommand.answer(spec, Demo.question(), ask.options(), ask, null);
        }
        PrintWriter out = spec.commandLine().getOut();
        serving.serve(ask.options(), pages -> {
            out.println();
            out.println("The invented demo plan is being solved; on the pages you need not wait for it.");
            out.flush();
            Answer answer = pages.example();
            out.println();
            out.print(TextAnswer.of(answer, Version.text()));
            out.println();
            out.println("This was the invented demo plan. Your own: " + pages.address() + "new");
        });
        return Failures.DONE;
    }
}
