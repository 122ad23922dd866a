package tideover.app.cli;

import java.nio.file.Path;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Model.CommandSpec;
import tideover.app.files.PartsFile;
import tideover.app.files.PlanFile;
import tideover.app.report.ChosenCsv;
import tideover.engine.answer.Answer;
import tideover.engine.answer.ProvenRig;

/** The file of {@code --chosen}. */
final class ChosenOutput {
    private ChosenOutput() {}

    /** Writes what the answer's rig is made of, where that is asked for; without a rig it says why there is no file. */
    static void write(CommandSpec spec, @Nullable Path file, Answer answer, PlanFile.Plan plan) {
        if (file == null) {
            return;
        }
        ProvenRig rig = answer.rig();
        if (rig == null) {
            spec.commandLine().getErr().println("No rig was chosen, so " + file + " is not written.");
            return;
        }
        Output.write(
                file,
                writer -> ChosenCsv.write(
                        rig, answer.question().currency(), PartsFile.columnNames(), plan.typedById(), writer));
    }
}
