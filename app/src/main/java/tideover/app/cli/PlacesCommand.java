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
import tideover.app.files.StationNames;
import tideover.app.files.StationTable;
import tideover.app.report.PlacesAnswer;
import tideover.engine.answer.Advisor;
import tideover.engine.answer.Options;
import tideover.engine.answer.Places;
import tideover.engine.answer.Question;
import tideover.engine.site.FarApart;
import tideover.engine.site.Station;
import tideover.engine.site.Stations;

/** {@code tideover places}: one rig where else it might stand. */
@Command(
        name = "places",
        mixinStandardHelpOptions = true,
        description =
                "One rig in twelve places, as unlike each other as the station table has them, or in those named.")
final class PlacesCommand implements Callable<Integer> {
    @Spec
    private CommandSpec spec = CommandSpec.create();

    @Parameters(paramLabel = "PLAN", description = "Plan file (docs/plan-file.md).")
    private Path plan = Path.of("");

    @Option(
            names = "--rig",
            required = true,
            paramLabel = "FILE-or-number",
            description = "A rig file, a rig's number in the lists of 'tideover size', or its parts as listed there.")
    private String rigName = "";

    @Option(
            names = "--at",
            paramLabel = "NAMES",
            description = "Up to twelve stations with semicolons between, as 'tideover sites' prints them.")
    private @Nullable String at;

    @Mixin
    private AskOptions ask = new AskOptions();

    @Override
    public Integer call() {
        Options options = ask.options();
        Stations table = StationTable.load();
        List<Station> stations =
                at == null ? FarApart.of(table, Places.MOST) : StationNames.read("--at", at, Places.MOST, table);
        Question question = PlanFile.open(plan, table).question();
        Places places;
        try (ProgressLine line = ask.progress(question);
                Watch watch = ask.watch(line, question, options)) {
            places = Advisor.places(question, RigChoice.of(rigName, question), stations, options, watch);
        }
        spec.commandLine()
                .getOut()
                .print(
                        ask.format() == AskOptions.Format.JSON
                                ? PlacesAnswer.json(places, Version.text())
                                : PlacesAnswer.text(places, Version.text()));
        return Failures.DONE;
    }
}
