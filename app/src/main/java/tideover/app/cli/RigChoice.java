package tideover.app.cli;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import tideover.app.files.RigFile;
import tideover.engine.answer.Advisor;
import tideover.engine.answer.Question;
import tideover.engine.rig.Assembly;
import tideover.engine.rig.Chosen;
import tideover.engine.rig.Rig;
import tideover.engine.search.Shelf;
import tideover.engine.why.InputProblems;
import tideover.engine.why.Problem;

/** The rig that {@code --rig} means: a file, a number of the lists, or parts as the lists write them. */
final class RigChoice {
    private RigChoice() {}

    static Rig of(String rigName, Question question) {
        if (rigName.matches("#?\\d+") && !Files.exists(Path.of(rigName))) {
            Shelf shelf = Advisor.shelf(question);
            String digits = rigName.replaceFirst("^#", "");
            long number = digits.length() > 18 ? Long.MAX_VALUE : Long.parseLong(digits);
            if (number < 1 || number > shelf.rigs()) {
                throw new InputProblems(new Problem(
                        "--rig",
                        rigName,
                        "a number from 1 to " + shelf.rigs() + ", as 'tideover size' lists them, or a rig file",
                        ""));
            }
            return shelf.rig(number);
        }
        Optional<List<Chosen>> listed =
                Files.exists(Path.of(rigName)) ? Optional.empty() : RigFile.ofId(rigName, question.parts());
        Assembly.Result result = Assembly.of(
                listed.isPresent()
                        ? listed.get()
                        : RigFile.read(Path.of(rigName), question.parts()).chosen());
        if (result.rig() == null) {
            throw new InputProblems(result.faults().stream()
                    .map(fault -> new Problem(rigName, fault.replaceFirst("\\.$", ""), "parts that make one rig", ""))
                    .toList());
        }
        return result.rig();
    }
}
