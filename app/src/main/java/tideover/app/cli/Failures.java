package tideover.app.cli;

import java.io.PrintWriter;
import java.io.UncheckedIOException;
import java.util.regex.Pattern;
import picocli.CommandLine;
import tideover.app.store.StoreProblem;
import tideover.engine.quantity.Stopped;
import tideover.engine.why.InputProblems;
import tideover.engine.why.Problem;

/** The one place where a failure becomes text and an exit status. */
final class Failures {
    static final int DONE = 0;
    static final int OUR_FAULT = 1;
    static final int INPUT_WRONG = 2;
    static final int NOTHING_MEETS = 3;

    /** As shells count it: 128 and the number of the signal. */
    static final int STOPPED = 130;

    /** The library speaks of the types of the language. */
    private static final Pattern NO_INTEGER = Pattern.compile("is not an? (?:int|long)$");

    private static final Pattern NO_NUMBER = Pattern.compile("is not a double$");

    private Failures() {}

    static int ofUsage(CommandLine.ParameterException failure, String[] args) {
        PrintWriter err = failure.getCommandLine().getErr();
        err.println(plain(String.valueOf(failure.getMessage())));
        CommandLine.UnmatchedArgumentException.printSuggestions(failure, err);
        err.println("See: " + failure.getCommandLine().getCommandSpec().qualifiedName() + " --help");
        return INPUT_WRONG;
    }

    private static String plain(String message) {
        String whole = NO_INTEGER.matcher(message).replaceFirst("is not a whole number that fits");
        return NO_NUMBER.matcher(whole).replaceFirst("is not a number");
    }

    static int ofWork(Exception failure, CommandLine line, CommandLine.ParseResult parsed) {
        PrintWriter err = line.getErr();
        if (failure instanceof Stopped) {
            return STOPPED;
        }
        if (failure instanceof InputProblems wrong) {
            int count = wrong.problems().size();
            err.println(count == 1 ? "One thing is wrong:" : count + " things are wrong:");
            for (Problem problem : wrong.problems()) {
                err.println("  " + problem.sentence());
            }
            return INPUT_WRONG;
        }
        if (failure instanceof UncheckedIOException io) {
            err.println(io.getMessage());
            return INPUT_WRONG;
        }
        if (failure instanceof StoreProblem problem) {
            err.println(problem.getMessage());
            return INPUT_WRONG;
        }
        err.println("This is our fault, not yours; please report it with these lines:");
        failure.printStackTrace(err);
        return OUR_FAULT;
    }
}
