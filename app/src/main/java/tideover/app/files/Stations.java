package tideover.app.files;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import tideover.engine.quantity.Units;
import tideover.engine.site.Place;
import tideover.engine.site.Station;

/** The stations as a whole: looked up by name, or by where they are. */
public final class Stations {
    private final List<Station> all;

    public Stations(List<Station> all) {
        this.all = List.copyOf(all);
    }

    public Optional<Station> find(String typed) {
        return all.stream()
                .filter(s -> s.id().equals(typed) || s.label().equalsIgnoreCase(typed))
                .findFirst();
    }

    public List<String> closestNames(String typed, int most) {
        List<String> names = new ArrayList<>(all.stream().map(Station::label).toList());
        names.sort(Comparator.comparingInt(name -> Nearest.slips(name, typed)));
        return names.subList(0, Math.min(most, names.size()));
    }

    public Station nearest(double latDeg, double lonDeg) {
        return all.stream()
                .min(Comparator.comparingDouble(s -> distanceKm(s.place(), latDeg, lonDeg)))
                .orElseThrow();
    }

    public static double distanceKm(Place place, double latDeg, double lonDeg) {
        double a = Units.radians(place.latDeg());
        double b = Units.radians(latDeg);
        double cos = StrictMath.sin(a) * StrictMath.sin(b)
                + StrictMath.cos(a) * StrictMath.cos(b) * StrictMath.cos(Units.radians(lonDeg - place.lonDeg()));
        return 6371 * StrictMath.acos(Math.min(1, Math.max(-1, cos)));
    }
}
