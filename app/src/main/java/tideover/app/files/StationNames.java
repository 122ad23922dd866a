package tideover.app.files;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import tideover.engine.site.Station;
import tideover.engine.site.Stations;
import tideover.engine.why.InputProblems;
import tideover.engine.why.Problem;

/** Stations typed in one line, such as {@code "Astoria Regional Airport OR; 726797"}. */
public final class StationNames {
    private StationNames() {}

    /** @throws InputProblems with everything that is wrong */
    public static List<Station> read(String option, String typed, int most, Stations table) {
        List<Problem> problems = new ArrayList<>();
        List<Station> found = new ArrayList<>();
        String expected = "a station's name or number, as \"tideover sites\" prints it";
        List<String> names = List.of(typed.split(";", -1));
        if (names.size() > most) {
            problems.add(new Problem(option, names.size() + " places", "at most " + most, ""));
        }
        for (String name : names) {
            Optional<Station> station = table.byLabel(name);
            if (station.isEmpty()) {
                List<String> near = name.isBlank() ? List.of() : table.closestNames(name, 3);
                problems.add(new Problem(
                        option,
                        "\"" + name.strip() + "\"",
                        expected,
                        near.isEmpty() ? "" : "Near to that: " + String.join("; ", near) + "."));
            } else if (found.contains(station.get())) {
                problems.add(new Problem(option, "\"" + name.strip() + "\" twice", "each place once", ""));
            } else {
                found.add(station.get());
            }
        }
        if (!problems.isEmpty()) {
            throw new InputProblems(problems);
        }
        return found;
    }
}
