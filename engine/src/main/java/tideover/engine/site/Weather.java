package tideover.engine.site;

import tideover.engine.quantity.ModelYear;
import tideover.engine.quantity.Require;
import tideover.engine.quantity.Series;

/**
 * Hourly means over one or more model years, labelled by the hour's start, local standard time; hour {@code h} of year
 * {@code y} stands at {@code y * 8760 + h}. The year after the last is the first again.
 *
 * @param ghiWm2     global irradiance on the horizontal
 * @param diffuseWm2 the diffuse part of it, never more than the whole
 * @param airDegC    outdoor dry bulb
 * @param origin     one phrase: generated from what, or which file
 */
public record Weather(int years, Series ghiWm2, Series diffuseWm2, Series airDegC, String origin) {
    public Weather {
        Require.within(1, 1000, "years", years);
        int hours = years * ModelYear.HOURS;
        Require.within(hours, hours, "hours of ghiWm2", ghiWm2.length());
        Require.within(hours, hours, "hours of diffuseWm2", diffuseWm2.length());
        Require.within(hours, hours, "hours of airDegC", airDegC.length());
    }

    /** The first of its years alone, or all where there are no more. */
    public Weather firstYears(int some) {
        int hours = Math.min(some, years) * ModelYear.HOURS;
        return new Weather(
                Math.min(some, years), ghiWm2.first(hours), diffuseWm2.first(hours), airDegC.first(hours), origin);
    }

    public int hours() {
        return years * ModelYear.HOURS;
    }

    public int days() {
        return years * ModelYear.DAYS;
    }

    /** Irradiation of one day on the horizontal, days counted through all years. */
    public double dayKwhM2(int day) {
        double wh = 0;
        for (int h = day * 24; h < day * 24 + 24; h++) {
            wh += ghiWm2.at(h);
        }
        return wh / 1000;
    }

    /** Mean outdoor temperature of one day, days counted through all years. */
    public double dayMeanDegC(int day) {
        double sum = 0;
        for (int h = day * 24; h < day * 24 + 24; h++) {
            sum += airDegC.at(h);
        }
        return sum / 24;
    }
}
