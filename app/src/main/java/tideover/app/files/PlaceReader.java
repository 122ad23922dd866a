package tideover.app.files;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;
import tideover.app.files.Quantities.Measure;
import tideover.engine.quantity.ModelYear;
import tideover.engine.quantity.Series;
import tideover.engine.site.MonthlyClimate;
import tideover.engine.site.NearestStation;
import tideover.engine.site.Place;
import tideover.engine.site.SnowCover;
import tideover.engine.site.Station;
import tideover.engine.site.Stations;
import tideover.engine.site.TypedClimate;
import tideover.engine.site.WeatherSource;
import tideover.engine.why.Basis;

/** Reads a plan's place: a station by name, the station nearest to somewhere, typed monthly figures, or an hourly file. */
final class PlaceReader {
    private static final List<String> WAYS = List.of("station", "near", "figures", "hourly file");
    private static final String WAYS_EXPECTED = "exactly one of station, near, figures, hourly file";

    /** A station further off than this stands for another climate. This project's own choice. */
    private static final double TOO_FAR_KM = 400;

    private static final Pattern TOWARDS = Pattern.compile("(.*\\S)\\s*([NSEWnsew])");

    private final Reading reading;
    private final Beside beside;
    private final Stations stations;

    PlaceReader(Reading reading, Beside beside, Stations stations) {
        this.reading = reading;
        this.beside = beside;
        this.stations = stations;
    }

    /**
     * What the plan's place comes to.
     *
     * @param lowestInDataDegC lowest hour that the data know; NaN where they do not
     * @param mayFreeze        whether snow may lie there, going by the data
     * @param coldestOnRecord  the field for the plan's own figure, perhaps empty
     * @param typedColdestDegC that figure; NaN where there is none
     */
    record Spot(
            Place place,
            WeatherSource weather,
            double lowestInDataDegC,
            boolean mayFreeze,
            Field coldestOnRecord,
            double typedColdestDegC) {}

    /** The place, or null where anything in it is wrong. */
    @Nullable
    Spot read(Field block) {
        int before = reading.flaws();
        block.keys(
                "name",
                "station",
                "near",
                "figures",
                "hourly file",
                "latitude",
                "longitude",
                "height",
                "zone",
                "coldest on record");
        if (!block.isBlock()) {
            return null;
        }
        Field nameField = block.child("name");
        String name = nameField.isPresent() ? nameField.text("the place's name", PlanFile.LONGEST_NAME) : "";
        Field coldest = block.child("coldest on record");
        double coldestDegC = coldest.isPresent()
                ? coldest.quantity(Measure.TEMPERATURE, Range.from(-90, 40).likely(-60, 20))
                : Double.NaN;

        List<String> given =
                WAYS.stream().filter(way -> block.child(way).isPresent()).toList();
        if (given.size() != 1) {
            if (reading.flaws() == before || !given.isEmpty()) {
                block.problem(given.isEmpty() ? "none of them" : String.join(" and ", given), WAYS_EXPECTED, "");
            }
            return null;
        }
        Field way = block.child(given.get(0));
        if (!given.get(0).equals("hourly file")) {
            for (String key : List.of("latitude", "longitude", "height", "zone")) {
                Field stray = block.child(key);
                if (stray.isPresent()) {
                    stray.problem("\"" + key + "\" beside " + given.get(0), "it under near or figures", "");
                }
            }
        }
        Spot spot = switch (given.get(0)) {
            case "station" -> station(way, name, coldest, coldestDegC);
            case "near" -> near(way, name, coldest, coldestDegC);
            case "figures" -> figures(way, name, coldest, coldestDegC);
            default -> hourlyFile(block, way, name, coldest, coldestDegC);
        };
        return reading.flaws() > before ? null : spot;
    }

    private @Nullable Spot station(Field field, String name, Field coldest, double coldestDegC) {
        String typed = field.text("a station's name or number, as \"tideover sites\" prints it", PlanFile.LONGEST_NAME);
        if (typed.isEmpty()) {
            return null;
        }
        Optional<Station> found = stations.byLabel(typed);
        if (found.isEmpty()) {
            List<String> near =
                    stations.search(typed).stream().limit(3).map(Station::label).toList();
            near = near.isEmpty() ? stations.closestNames(typed, 3) : near;
            field.problem(
                    Reading.quoted(typed),
                    "the name or number of a station in the station table",
                    near.isEmpty() ? "" : "Near to that: " + String.join("; ", near) + ".");
            return null;
        }
        Station station = found.get();
        reading.note("Place", station.label() + ", station " + station.id(), Basis.YOURS, field.source());
        noteClimate(station);
        Place place = station.place();
        place = new Place(
                name.isEmpty() ? station.label() : name, place.latDeg(), place.lonDeg(), place.elevM(), place.zoneH());
        return generated(place, station.climate(), coldest, coldestDegC);
    }

    private @Nullable Spot near(Field block, String name, Field coldest, double coldestDegC) {
        block.keys("latitude", "longitude", "height");
        double latDeg = coordinate(block.child("latitude"), "N", "S", PlaceFigures.LATITUDE);
        double lonDeg = coordinate(block.child("longitude"), "E", "W", PlaceFigures.LONGITUDE);
        Field height = block.child("height");
        double elevM = height.isPresent() ? height.quantity(Measure.LENGTH, PlaceFigures.HEIGHT) : Double.NaN;
        if (Double.isNaN(latDeg) || Double.isNaN(lonDeg) || (height.isPresent() && Double.isNaN(elevM))) {
            return null;
        }
        NearestStation nearest = stations.nearest(latDeg, lonDeg, elevM);
        Station station = nearest.station();
        String away = String.format(Locale.ROOT, "%s, %.0f km away", station.label(), nearest.distanceKm());
        if (nearest.distanceKm() > TOO_FAR_KM) {
            block.problem(
                    "nothing in the station table nearer than " + away,
                    "a place within " + Range.shown(TOO_FAR_KM, "km") + " of a station",
                    "Check the signs (west and south are negative), or give the place's own \"figures:\" or an"
                            + " \"hourly file:\".");
            return null;
        }
        nearest.cautions().forEach(block::caution);
        String words = PlaceFigures.words(latDeg, lonDeg);
        reading.note("Place", words + ", climate of " + away, Basis.YOURS, block.source());
        noteClimate(station);
        Place place = new Place(
                name.isEmpty() ? words + " (climate of " + station.label() + ")" : name,
                latDeg,
                lonDeg,
                Double.isNaN(elevM) ? station.place().elevM() : elevM,
                station.place().zoneH());
        return generated(place, station.climate(), coldest, coldestDegC);
    }

    private @Nullable Spot figures(Field block, String name, Field coldest, double coldestDegC) {
        int before = reading.flaws();
        block.keys("latitude", "longitude", "height", "zone", "peak sun hours", "mean temperature", "source");
        double latDeg = coordinate(block.child("latitude"), "N", "S", PlaceFigures.LATITUDE);
        double lonDeg = coordinate(block.child("longitude"), "E", "W", PlaceFigures.LONGITUDE);
        Field height = block.child("height");
        double elevM = height.isPresent() ? height.quantity(Measure.LENGTH, PlaceFigures.HEIGHT) : 0;
        double zoneH = zone(block.child("zone"), lonDeg);
        Field sunField = block.child("peak sun hours");
        double[] sunKwhM2Day = twelve(sunField, "peak sun hours", Measure.TIME, Range.from(0, 14), "h");
        Field meanField = block.child("mean temperature");
        double[] meanDegC = twelve(
                meanField,
                "mean temperatures",
                Measure.TEMPERATURE,
                Range.from(-60, 50).likely(-45, 42),
                null);
        String source = block.child("source").text("where the figures are from, in a few words", 200);
        if (reading.flaws() > before || sunKwhM2Day == null || meanDegC == null) {
            return null;
        }
        Place place =
                new Place(name.isEmpty() ? PlaceFigures.words(latDeg, lonDeg) : name, latDeg, lonDeg, elevM, zoneH);
        TypedClimate typed = TypedClimate.of(place, Series.of(sunKwhM2Day), Series.of(meanDegC), source);
        for (TypedClimate.Impossible impossible : typed.problems()) {
            sunField.problem(
                    ModelYear.monthName(impossible.month()) + ": " + impossible.found(),
                    impossible.expected(),
                    "Sun is for the horizontal, January first; check latitude and order.");
        }
        MonthlyClimate climate = typed.climate();
        if (climate == null) {
            return null;
        }
        reading.note("Place", PlaceFigures.words(latDeg, lonDeg), Basis.YOURS, block.source());
        reading.note("Sun, month by month", sunField.listShown(), Basis.YOURS, sunField.source() + ", from " + source);
        reading.note(
                "Temperature, month by month",
                meanField.listShown(),
                Basis.YOURS,
                meanField.source() + ", from " + source);
        return generated(place, climate, coldest, coldestDegC);
    }

    private @Nullable Spot hourlyFile(Field block, Field field, String name, Field coldest, double coldestDegC) {
        int before = reading.flaws();
        String file = field.text("the name of an hourly weather file", 400);
        Field lat = block.child("latitude");
        Field lon = block.child("longitude");
        Field height = block.child("height");
        Field zone = block.child("zone");
        PlaceFigures typed = new PlaceFigures(
                name.isEmpty() ? null : name,
                lat.isPresent() ? coordinate(lat, "N", "S", PlaceFigures.LATITUDE) : Double.NaN,
                lon.isPresent() ? coordinate(lon, "E", "W", PlaceFigures.LONGITUDE) : Double.NaN,
                height.isPresent() ? height.quantity(Measure.LENGTH, PlaceFigures.HEIGHT) : Double.NaN,
                zone.isPresent() ? zone.quantity(Measure.TIME, PlaceFigures.ZONE) : Double.NaN);
        if (reading.flaws() > before) {
            return null;
        }
        WeatherFile.Content content = WeatherFile.read(reading, beside, file, field.where(), typed);
        if (content == null) {
            return null;
        }
        reading.note("Weather", content.weather().origin(), Basis.YOURS, field.source());
        return new Spot(
                content.place(),
                new WeatherSource.Imported(content.weather()),
                content.lowestDegC(),
                SnowCover.freezes(content.weather()),
                coldest,
                coldestDegC);
    }

    private Spot generated(Place place, MonthlyClimate climate, Field coldest, double coldestDegC) {
        return new Spot(
                place,
                new WeatherSource.Generated(place, climate),
                climate.lowestDegC(),
                SnowCover.freezes(climate),
                coldest,
                coldestDegC);
    }

    private void noteClimate(Station station) {
        reading.note("Climate", station.climate().source(), Basis.PUBLISHED, "station table of the program");
    }

    private double zone(Field field, double lonDeg) {
        if (field.isPresent()) {
            double zoneH = field.quantity(Measure.TIME, PlaceFigures.ZONE);
            if (PlaceFigures.isOddZone(zoneH, lonDeg)) {
                field.caution("this zone is far from the sun's own at this longitude, "
                        + Range.shown(PlaceFigures.sunZoneH(lonDeg), "h") + ". West is negative.");
            }
            field.note("Standard time less universal time", Basis.YOURS);
            return zoneH;
        }
        double zoneH = PlaceFigures.sunZoneH(lonDeg);
        if (!Double.isNaN(zoneH)) {
            reading.note(
                    "Standard time less universal time",
                    Range.shown(zoneH, "h"),
                    Basis.GUESS,
                    PlanFile.DEFAULT + ": longitude over 15, to the whole hour");
        }
        return zoneH;
    }

    /** Degrees, such as "-123.9 deg" or "123.9 deg W"; NaN where wrong. */
    private double coordinate(Field field, String positive, String negative, Range range) {
        String typed = field.shown();
        Matcher match = TOWARDS.matcher(typed);
        if (!match.matches()) {
            return field.quantity(Measure.ANGLE, range);
        }
        String letter = match.group(2).toUpperCase(Locale.ROOT);
        Quantities.Outcome outcome = Quantities.read(match.group(1), Measure.ANGLE);
        boolean known = letter.equals(positive) || letter.equals(negative);
        if (outcome.wrong() || !known || !(outcome.value() >= 0)) {
            field.problem(
                    Reading.quoted(typed),
                    "degrees, such as -46.2 deg or 46.2 deg " + negative,
                    outcome.wrong() ? outcome.suggestion() : known ? "A minus or a letter, not both." : "");
            return Double.NaN;
        }
        double degrees = letter.equals(negative) ? -outcome.value() : outcome.value();
        if (!range.holds(degrees)) {
            field.problem(Reading.quoted(typed), "an angle " + range.words("deg"), "");
            return Double.NaN;
        }
        return degrees;
    }

    /**
     * Twelve figures, January first. Those without a unit take that of the last one; {@code ownUnit}, where there is one,
     * needs not be written at all.
     */
    private double @Nullable [] twelve(
            Field field, String what, Measure measure, Range range, @Nullable String ownUnit) {
        String expected = "twelve " + what + ", January first";
        List<Field> items = field.items(expected);
        if (items.isEmpty()) {
            return null;
        }
        if (items.size() != 12) {
            field.problem(items.size() + (items.size() == 1 ? " figure" : " figures"), expected, "");
            return null;
        }
        String last = items.get(11).shown();
        String unit = last.replaceFirst("^[-+\u2212]?[0-9.,]*\\s*", "");
        if (unit.isEmpty()
                && ownUnit == null
                && !Quantities.bareNumber(last, "").wrong()) {
            items.get(11)
                    .problem(
                            Reading.quoted(last),
                            expected + ", the last with the unit of all",
                            "Write " + last + " " + measure.unit() + ", if that is the unit.");
            return null;
        }
        List<Double> values = new ArrayList<>();
        for (Field item : items) {
            String typed = item.raw(measure.expected());
            boolean bare = !Quantities.bareNumber(typed, "").wrong();
            String full = !bare ? typed : typed + " " + (unit.isEmpty() && ownUnit != null ? ownUnit : unit);
            Quantities.Outcome outcome = Quantities.read(full, measure);
            if (outcome.wrong()) {
                if (!typed.isEmpty()) {
                    item.problem(Reading.quoted(typed), String.valueOf(outcome.expected()), outcome.suggestion());
                }
                continue;
            }
            if (!range.holds(outcome.value())) {
                item.problem(Reading.quoted(typed), measure.words() + " " + range.words(measure.unit()), "");
                continue;
            }
            if (!range.likely(outcome.value())) {
                item.caution(typed + " is taken, but is unlikely here.");
            }
            values.add(outcome.value());
        }
        return values.size() == 12
                ? values.stream().mapToDouble(Double::doubleValue).toArray()
                : null;
    }
}
