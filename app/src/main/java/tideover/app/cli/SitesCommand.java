package tideover.app.cli;

import java.io.PrintWriter;
import java.util.List;
import java.util.Locale;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;
import tideover.app.files.StationTable;
import tideover.app.report.JsonSites;
import tideover.engine.quantity.ModelYear;
import tideover.engine.site.NearestStation;
import tideover.engine.site.Station;
import tideover.engine.site.Stations;
import tideover.engine.why.InputProblems;
import tideover.engine.why.Problem;

/** {@code tideover sites}: look up a weather station. */
@Command(
        name = "sites",
        mixinStandardHelpOptions = true,
        description = "Looks up a weather station by words of its name, state or number.")
final class SitesCommand implements Callable<Integer> {
    @Spec
    private CommandSpec spec = CommandSpec.create();

    @Parameters(arity = "0..*", paramLabel = "TEXT", description = "Words to look for; none lists every station.")
    private List<String> words = List.of();

    @Option(
            names = "--near",
            paramLabel = "LAT,LON",
            description = "The station nearest to a place, degrees north and east.")
    private @Nullable String near;

    @Option(names = "--format", paramLabel = "FORM", description = "text or json (default text).")
    private AskOptions.Format format = AskOptions.Format.TEXT;

    @Override
    public Integer call() {
        Stations stations = StationTable.load();
        PrintWriter out = spec.commandLine().getOut();
        if (near != null) {
            NearestStation nearest = nearest(stations, near);
            if (format == AskOptions.Format.JSON) {
                out.print(JsonSites.of(List.of(nearest.station()), nearest));
            } else {
                heading(out);
                row(out, nearest.station());
                out.printf(Locale.ROOT, "%.0f km away.%n", nearest.distanceKm());
                nearest.cautions().forEach(out::println);
            }
            return Failures.DONE;
        }
        String text = String.join(" ", words);
        List<Station> found = stations.search(text);
        if (found.isEmpty()) {
            throw new InputProblems(new Problem(
                    "TEXT",
                    "'" + text + "'",
                    "words of a station's name, state or number",
                    "Nearest by spelling: " + String.join(", ", stations.closestNames(text, 3))
                            + ". Any other place: twelve monthly figures in the plan (docs/plan-file.md)."));
        }
        if (format == AskOptions.Format.JSON) {
            out.print(JsonSites.of(found, null));
        } else {
            heading(out);
            found.forEach(station -> row(out, station));
            out.printf(
                    Locale.ROOT,
                    "%d of %d stations.%n",
                    found.size(),
                    stations.all().size());
        }
        return Failures.DONE;
    }

    private static NearestStation nearest(Stations stations, String typed) {
        String[] pair = typed.split(",", -1);
        try {
            double latDeg = Double.parseDouble(pair[0].strip());
            double lonDeg = pair.length == 2 ? Double.parseDouble(pair[1].strip()) : Double.NaN;
            if (latDeg >= -90 && latDeg <= 90 && lonDeg >= -180 && lonDeg <= 180) {
                return stations.nearest(latDeg, lonDeg, Double.NaN);
            }
        } catch (NumberFormatException e) {
            // told below, together with every other way of getting it wrong
        }
        throw new InputProblems(new Problem(
                "--near",
                "'" + typed + "'",
                "degrees north and degrees east with a comma between, such as 46.19,-123.83",
                "South and west are negative."));
    }

    private static void heading(PrintWriter out) {
        out.println(
                "number  name                                        north     east  height  year's sun  winter low");
        out.println(
                "                                                      deg      deg       m  kWh/m2 day        degC");
    }

    private static void row(PrintWriter out, Station station) {
        double year = 0;
        double coldest = Double.POSITIVE_INFINITY;
        for (int month = 0; month < 12; month++) {
            year += station.climate().ghiKwhM2Day().at(month) * ModelYear.daysIn(month) / ModelYear.DAYS;
            coldest = Math.min(coldest, station.climate().lowDegC().at(month));
        }
        out.printf(
                Locale.ROOT,
                "%-7s %-40s %8.3f %8.3f %7.0f %11.2f %11.1f%n",
                station.id(),
                station.label(),
                station.place().latDeg(),
                station.place().lonDeg(),
                station.place().elevM(),
                year,
                coldest);
    }
}
