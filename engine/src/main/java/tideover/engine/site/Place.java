package tideover.engine.site;

import tideover.engine.quantity.Require;

/**
 * Somewhere on earth.
 *
 * @param latDeg  north positive
 * @param lonDeg  east positive, from -180 to 180
 * @param elevM   above sea level
 * @param zoneH   local standard time less universal time, -12..14
 */
public record Place(String name, double latDeg, double lonDeg, double elevM, double zoneH) {
    public Place {
        Require.text("name", name);
        Require.within(-90, 90, "latDeg", latDeg, "deg");
        Require.within(-180, 180, "lonDeg", lonDeg, "deg");
        Require.within(-500, 9000, "elevM", elevM, "m");
        Require.within(-12, 14, "zoneH", zoneH, "h");
    }

    /**
     * Clock hour of the sun's highest stand on the yearly mean, local standard time; within a quarter hour of any day's,
     * whole days apart: by the date line it lies past 24.
     */
    public double meanSolarNoonHour() {
        return 12 + zoneH - lonDeg / 15;
    }
}
