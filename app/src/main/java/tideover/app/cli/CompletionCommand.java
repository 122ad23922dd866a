package tideover.app.cli;

import java.util.concurrent.Callable;
import picocli.AutoComplete;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Spec;

/** {@code tideover completion}: a script for the shell. */
@Command(
        name = "completion",
        mixinStandardHelpOptions = true,
        description = "Prints a completion script for bash and zsh: source <(tideover completion)")
final class CompletionCommand implements Callable<Integer> {
    @Spec
    private CommandSpec spec = CommandSpec.create();

    @Override
    public Integer call() {
        spec.commandLine()
                .getOut()
                .print(AutoComplete.bash("tideover", spec.root().commandLine()));
        return Failures.DONE;
    }
}
