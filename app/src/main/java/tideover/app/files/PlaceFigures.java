package tideover.app.files;

import java.util.Locale;
import org.jspecify.annotations.Nullable;
import tideover.engine.site.Place;

/** What is known of a place so far, from a file's header and from a plan; NaN where nothing is. */
record PlaceFigures(@Nullable String name, double latDeg, double lonDeg, double elevM, double zoneH) {
    static final PlaceFigures NONE = new PlaceFigures(null, Double.NaN, Double.NaN, Double.NaN, Double.NaN);

    static final Range LATITUDE = Range.from(-90, 90);
    static final Range LONGITUDE = Range.from(-180, 180);
    static final Range HEIGHT = Range.from(-500, 9000).likely(-90, 4000);
    static final Range ZONE = Range.from(-12, 14);

    /** A zone further than this from the sun's own is unusual: no country's standard time lies further off. */
    private static final double ODD_ZONE_H = 2.5;

    PlaceFigures withName(String newName) {
        return new PlaceFigures(newName, latDeg, lonDeg, elevM, zoneH);
    }

    /** With one figure more, under its name in weather files; null where it is out of range. */
    @Nullable
    PlaceFigures with(String key, double value) {
        return switch (key) {
            case "latitude_deg" -> LATITUDE.holds(value) ? new PlaceFigures(name, value, lonDeg, elevM, zoneH) : null;
            case "longitude_deg" -> LONGITUDE.holds(value) ? new PlaceFigures(name, latDeg, value, elevM, zoneH) : null;
            case "elevation_m" -> HEIGHT.holds(value) ? new PlaceFigures(name, latDeg, lonDeg, value, zoneH) : null;
            case "zone_h" -> ZONE.holds(value) ? new PlaceFigures(name, latDeg, lonDeg, elevM, value) : null;
            default -> throw new IllegalArgumentException(key);
        };
    }

    static String rangeOf(String key) {
        return switch (key) {
            case "latitude_deg" -> LATITUDE.words("deg");
            case "longitude_deg" -> LONGITUDE.words("deg");
            case "elevation_m" -> HEIGHT.words("m");
            case "zone_h" -> ZONE.words("h");
            default -> throw new IllegalArgumentException(key);
        };
    }

    /** These figures, and the other's where these have none. */
    PlaceFigures over(PlaceFigures other) {
        return new PlaceFigures(
                name == null ? other.name : name,
                Double.isNaN(latDeg) ? other.latDeg : latDeg,
                Double.isNaN(lonDeg) ? other.lonDeg : lonDeg,
                Double.isNaN(elevM) ? other.elevM : elevM,
                Double.isNaN(zoneH) ? other.zoneH : zoneH);
    }

    /** The place, or null with the problem told. Zone and height may be guessed, and then a caution says so. */
    @Nullable
    Place place(Reading reading, String where, String file) {
        if (Double.isNaN(latDeg) || Double.isNaN(lonDeg)) {
            reading.problem(
                    where,
                    "no " + (Double.isNaN(latDeg) ? "latitude" : "longitude") + " for " + Reading.quoted(file),
                    "latitude and longitude, in the file's first lines or in the plan",
                    "Add # latitude_deg: and # longitude_deg: to the file, or latitude: and longitude: beside its name.");
            return null;
        }
        double zone = zoneH;
        if (Double.isNaN(zone)) {
            zone = sunZoneH(lonDeg);
            reading.caution(where + ": no time zone is given for " + file + "; " + Range.shown(zone, "h")
                    + " from its longitude is taken.");
        } else if (isOddZone(zone, lonDeg)) {
            reading.caution(
                    where + ": a zone of " + Range.shown(zone, "h") + " is far from the sun's own at this longitude, "
                            + Range.shown(sunZoneH(lonDeg), "h") + ". West is negative.");
        }
        return new Place(
                name == null ? words(latDeg, lonDeg) : name, latDeg, lonDeg, Double.isNaN(elevM) ? 0 : elevM, zone);
    }

    /** Hours that the sun itself keeps, to the whole hour. */
    static double sunZoneH(double lonDeg) {
        return StrictMath.rint(lonDeg / 15) + 0.0; // no minus before a zero
    }

    static boolean isOddZone(double zoneH, double lonDeg) {
        double apart = Math.abs(zoneH - lonDeg / 15);
        return Math.min(apart, 24 - apart) > ODD_ZONE_H;
    }

    /** Such as "46.15 N 123.88 W". */
    static String words(double latDeg, double lonDeg) {
        return String.format(
                Locale.ROOT,
                "%.2f %s %.2f %s",
                Math.abs(latDeg),
                latDeg < 0 ? "S" : "N",
                Math.abs(lonDeg),
                lonDeg < 0 ? "W" : "E");
    }
}
