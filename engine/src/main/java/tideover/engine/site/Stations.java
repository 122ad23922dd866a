package tideover.engine.site;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import tideover.engine.quantity.Require;
import tideover.engine.quantity.Units;

/** The table of stations: found by words, by name, or by where they are. Answers keep one order: label, then id. */
public final class Stations {
    /** Past this distance a station's climate is doubtful for the place. Common practice, no source. */
    static final double FAR_KM = 80;

    /** So is it past this difference in height, worth about 2 K (6.5 K a km, the standard atmosphere). Common practice, no source. */
    static final double HIGH_M = 300;

    /** Mean radius of the earth (IUGG). */
    private static final double EARTH_RADIUS_KM = 6371.0088;

    private final List<Station> stations;

    public Stations(List<Station> stations) {
        this.stations = stations.stream()
                .sorted(Comparator.comparing(Station::label).thenComparing(Station::id))
                .toList();
    }

    public List<Station> all() {
        return stations;
    }

    /** All stations in whose name, state or id every word of the text occurs, whatever the case; all, if there is no word. */
    public List<Station> search(String text) {
        List<String> words =
                Arrays.stream(plain(text).split(" ")).filter(w -> !w.isEmpty()).toList();
        return stations.stream()
                .filter(station -> {
                    String where = plain(station.label() + " " + station.id());
                    return words.stream().allMatch(where::contains);
                })
                .toList();
    }

    /** The station with this label ("Name ST", whatever the case) or this id. */
    public Optional<Station> byLabel(String text) {
        String wanted = plain(text);
        return stations.stream()
                .filter(s -> plain(s.label()).equals(wanted) || plain(s.id()).equals(wanted))
                .findFirst();
    }

    /**
     * Labels that the text was perhaps meant to be, best first: those with the most of its words, then those that fewest
     * single-letter edits lead to.
     */
    public List<String> closestNames(String text, int most) {
        Require.within(0, Integer.MAX_VALUE, "most", most);
        record Rated(String label, int missing, int edits) {}
        String wanted = plain(text);
        List<String> words = Arrays.asList(wanted.split(" "));
        return stations.stream()
                .map(Station::label)
                .distinct()
                .map(label -> {
                    String plain = plain(label);
                    int missing = 0;
                    for (String word : words) {
                        missing += leastEdits(word, plain);
                    }
                    return new Rated(label, missing, edits(wanted, plain));
                })
                .sorted(Comparator.comparingInt(Rated::missing)
                        .thenComparingInt(Rated::edits)
                        .thenComparing(Rated::label))
                .limit(most)
                .map(Rated::label)
                .toList();
    }

    /**
     * The station nearest to a point.
     *
     * @param elevM height of the point, NaN where unknown
     * @throws IllegalArgumentException where the table is empty
     */
    public NearestStation nearest(double latDeg, double lonDeg, double elevM) {
        Require.within(-90, 90, "latDeg", latDeg, "deg");
        Require.within(-180, 180, "lonDeg", lonDeg, "deg");
        Require.within(1, Integer.MAX_VALUE, "stations", stations.size());
        Station best = stations.get(0);
        double bestKm = Double.POSITIVE_INFINITY;
        for (Station station : stations) {
            double km = distanceKm(station.place(), latDeg, lonDeg);
            if (km < bestKm) {
                best = station;
                bestKm = km;
            }
        }
        double higherM = elevM - best.place().elevM();
        return new NearestStation(best, bestKm, higherM, cautions(best, bestKm, higherM));
    }

    private static List<String> cautions(Station station, double km, double higherM) {
        List<String> cautions = new ArrayList<>();
        if (km > FAR_KM) {
            cautions.add(String.format(
                    Locale.ROOT,
                    "The nearest station, %s, is %.0f km away: coast, hills or a lake between may make another climate.",
                    station.label(),
                    km));
        }
        if (Math.abs(higherM) > HIGH_M) {
            cautions.add(String.format(
                    Locale.ROOT,
                    "The place lies %.0f m %s the station %s: expect it about %.0f K %s, and fog and snow to differ.",
                    Math.abs(higherM),
                    higherM > 0 ? "above" : "below",
                    station.label(),
                    Math.abs(higherM) * 0.0065,
                    higherM > 0 ? "colder" : "warmer"));
        }
        return cautions;
    }

    /** Along the great circle, by the haversine, which holds for near and far and across the date line. */
    static double distanceKm(Place place, double latDeg, double lonDeg) {
        double halfLat = StrictMath.sin(Units.radians(latDeg - place.latDeg()) / 2);
        double halfLon = StrictMath.sin(Units.radians(lonDeg - place.lonDeg()) / 2);
        double h = halfLat * halfLat
                + StrictMath.cos(Units.radians(latDeg))
                        * StrictMath.cos(Units.radians(place.latDeg()))
                        * halfLon
                        * halfLon;
        return 2 * EARTH_RADIUS_KM * StrictMath.asin(StrictMath.sqrt(Math.min(1, h)));
    }

    /** Lower case, with anything but letters and digits as single spaces. */
    private static String plain(String text) {
        return text.toLowerCase(Locale.ROOT).replaceAll("[^\\p{L}\\p{N}]+", " ").strip();
    }

    private static int leastEdits(String word, String text) {
        int least = word.length();
        for (String other : text.split(" ")) {
            least = Math.min(least, edits(word, other));
        }
        return least;
    }

    /** Single letters to insert, delete or change (Levenshtein 1966, Soviet Physics Doklady 10, 707). */
    private static int edits(String from, String to) {
        int[] before = new int[to.length() + 1];
        int[] now = new int[to.length() + 1];
        for (int j = 0; j <= to.length(); j++) {
            before[j] = j;
        }
        for (int i = 1; i <= from.length(); i++) {
            now[0] = i;
            for (int j = 1; j <= to.length(); j++) {
                int changed = before[j - 1] + (from.charAt(i - 1) == to.charAt(j - 1) ? 0 : 1);
                now[j] = Math.min(changed, 1 + Math.min(before[j], now[j - 1]));
            }
            int[] swap = before;
            before = now;
            now = swap;
        }
        return before[to.length()];
    }
}
