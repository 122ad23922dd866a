package tideover.engine.proof;

import tideover.engine.quantity.ModelYear;
import tideover.engine.quantity.Series;
import tideover.engine.site.SnowCover;
import tideover.engine.site.Weather;
import tideover.engine.sun.PanelMount;
import tideover.engine.sun.PlaneYear;
import tideover.engine.sun.SunYear;

/**
 * What the weather puts on the panels' plane, hour by hour through all years, dirt, shade and snow taken off.
 *
 * @param planeWm2     irradiance that reaches the cells
 * @param airDegC      outdoor air
 * @param coveredHours hours with snow on the panels
 */
public record PlaneWeather(Series planeWm2, Series airDegC, int coveredHours) {
    /** The first hours alone; the count of covered hours stays that of all. */
    PlaneWeather first(int hours) {
        return new PlaneWeather(planeWm2.first(hours), airDegC.first(hours), coveredHours);
    }

    /** @param snow whether snow may lie on the panels */
    public static PlaneWeather of(Weather weather, SunYear sun, PanelMount mount, boolean snow) {
        PlaneYear plane = sun.onto(mount);
        SnowCover cover = snow ? SnowCover.of(weather, sun, mount.tiltDeg()) : null;
        double[] reaching = new double[weather.hours()];
        int covered = 0;
        for (int hour = 0; hour < reaching.length; hour++) {
            if (cover != null && cover.coveredOn(hour / 24)) {
                covered++;
                continue;
            }
            double ghiWm2 = weather.ghiWm2().at(hour);
            if (ghiWm2 > 0) {
                reaching[hour] = mount.reachingShare(hour % 24)
                        * plane.planeWm2(
                                hour % ModelYear.HOURS,
                                ghiWm2,
                                weather.diffuseWm2().at(hour));
            }
        }
        return new PlaneWeather(Series.owning(reaching), weather.airDegC(), covered);
    }
}
