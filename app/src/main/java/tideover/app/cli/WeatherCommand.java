package tideover.app.cli;

import java.io.PrintWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;
import tideover.app.files.StationTable;
import tideover.app.files.WeatherFile;
import tideover.app.report.WeatherCsv;
import tideover.engine.answer.Advisor;
import tideover.engine.answer.Options;
import tideover.engine.answer.WeatherSheet;
import tideover.engine.quantity.PlainNumber;
import tideover.engine.site.Place;
import tideover.engine.site.SnowCover;
import tideover.engine.site.Station;
import tideover.engine.site.Stations;
import tideover.engine.site.WeatherSource;
import tideover.engine.sun.PanelMount;
import tideover.engine.why.InputProblems;
import tideover.engine.why.Problem;

/** {@code tideover weather}: hourly weather, plane and panel figures as CSV, for anybody to check. */
@Command(
        name = "weather",
        mixinStandardHelpOptions = true,
        description =
                "Hourly weather, sun on the tilted plane, cell temperature and panel watts as CSV, from a station's"
                        + " generated years or from a weather file.")
final class WeatherCommand implements Callable<Integer> {
    @Spec
    private CommandSpec spec = CommandSpec.create();

    @Parameters(
            arity = "1..*",
            paramLabel = "SITE",
            description = "A station as 'tideover sites' prints it, its number, or an hourly weather file.")
    private List<String> site = List.of();

    @Option(names = "--years", paramLabel = "N", description = "Years to generate (default 1).")
    private int years = 1;

    @Option(names = "--seed", paramLabel = "S", description = "Seed (default 1).")
    private long seed = 1;

    @Option(names = "--tilt", paramLabel = "DEG", description = "Panel tilt from the horizontal (default 60).")
    private double tiltDeg = 60;

    @Option(
            names = "--facing",
            paramLabel = "DEG",
            description = "The way the panel faces, from north through east (default: towards the equator).")
    private @Nullable Double facingDeg;

    @Option(names = "--dirt", paramLabel = "PCT", description = "Light lost to dirt, percent (default 0).")
    private double dirtPercent;

    @Option(names = "--panel", paramLabel = "W", description = "Rated watts of the panel (default 100).")
    private double panelW = 100;

    @Option(names = "--snow", paramLabel = "RULE", description = "auto, lies or swept (default auto).")
    private Snow snow = Snow.AUTO;

    @Option(names = "--out", paramLabel = "FILE", description = "Write to a file instead of the screen.")
    private @Nullable Path out;

    /** Whether snow may lie on the panel; auto means where it freezes. */
    enum Snow {
        AUTO,
        LIES,
        SWEPT
    }

    /** What the rows are made from. */
    private record Source(Place place, WeatherSource weather, boolean freezes) {}

    @Override
    public Integer call() {
        check("--years", years, 1, 1000);
        check("--tilt", tiltDeg, 0, 90);
        check("--facing", facingDeg == null ? 0 : facingDeg, 0, 360);
        check("--dirt", dirtPercent, 0, 90);
        check("--panel", panelW, 0.001, 1e6);
        String name = String.join(" ", site);
        Output.check(List.of(Path.of(name)), new Output.Asked("--out", out));
        Source source = source(name);
        double azimuthDeg = facingDeg != null ? facingDeg : source.place().latDeg() < 0 ? 0 : 180;
        WeatherSheet sheet = Advisor.weather(
                source.place(),
                source.weather(),
                new PanelMount(tiltDeg, azimuthDeg, dirtPercent / 100, 0.2),
                snow == Snow.LIES || (snow == Snow.AUTO && source.freezes()),
                new Options(seed, years, 1, 1, 1),
                panelW);
        if (out != null) {
            Output.write(out, writer -> WeatherCsv.write(sheet, source.place(), writer));
        } else {
            PrintWriter screen = spec.commandLine().getOut();
            WeatherCsv.print(sheet, source.place(), screen);
        }
        PrintWriter err = spec.commandLine().getErr();
        err.println(source.weather().words());
        return Failures.DONE;
    }

    private Source source(String name) {
        Path file = Path.of(name);
        if (Files.isRegularFile(file)) {
            WeatherFile.Content content = WeatherFile.read(file);
            content.cautions().forEach(spec.commandLine().getErr()::println);
            return new Source(
                    content.place(),
                    new WeatherSource.Imported(content.weather()),
                    SnowCover.freezes(content.weather()));
        }
        Stations stations = StationTable.load();
        Station station = stations.byLabel(name)
                .orElseThrow(() -> new InputProblems(new Problem(
                        "SITE",
                        "'" + name + "'",
                        "a station's name with its state, its number, or a weather file",
                        "Nearest by spelling: " + String.join(", ", stations.closestNames(name, 3)) + ".")));
        return new Source(
                station.place(),
                new WeatherSource.Generated(station.place(), station.climate()),
                SnowCover.freezes(station.climate()));
    }

    private void check(String name, double value, double least, double most) {
        if (!(value >= least && value <= most)) {
            throw new ParameterException(
                    spec.commandLine(),
                    name + " is " + PlainNumber.of(value) + ", expected from " + PlainNumber.of(least) + " to "
                            + PlainNumber.of(most) + ".");
        }
    }
}
