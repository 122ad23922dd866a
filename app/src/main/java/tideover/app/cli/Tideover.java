package tideover.app.cli;

import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import java.util.concurrent.Callable;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Spec;
import tideover.engine.answer.Question;

/** The program's command line; without a command it solves the demo plan and prints the answer. */
@Command(
        name = "tideover",
        versionProvider = Version.class,
        mixinStandardHelpOptions = true,
        sortOptions = false,
        description = {
            "Finds the cheapest kit that keeps a household's essentials running through power cuts, and proves it against"
                    + " the local weather.",
            "Without a command it solves the invented demo plan."
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
    public Integer call() {
        Question demo = Demo.question();
        int status = SizeCommand.answer(spec, demo, ask.options(), ask, null);
        if (ask.format() == AskOptions.Format.TEXT) {
            PrintWriter out = spec.commandLine().getOut();
            out.println();
            out.println("This was the invented demo plan. Your own: write a plan file (docs/plan-file.md), then");
            out.println("  ./tideover sites NAME     to find your weather station");
            out.println("  ./tideover size PLAN      for the cheapest rig; add --report FILE.html for the full sheet");
        }
        return status;
    }
}
