package tideover.engine.site;

import tideover.engine.quantity.ModelYear;
import tideover.engine.quantity.RandomStream;
import tideover.engine.quantity.Require;
import tideover.engine.quantity.Series;
import tideover.engine.sun.SunYear;

/**
 * Hourly years from monthly climate figures: days by {@link DailyRecipe}, sun within the day by {@link HourlySun},
 * temperature by {@link HourlyAir}. Year k of a seed is the same whatever the number of years asked.
 */
public final class WeatherGenerator {
    static final String KNOWN_ERROR =
            "Against measured records the average winter's darkest three days came out from 21 %"
                    + " too dark to 11 % too bright and its darkest week from 12 % too dark to 18 % too bright; where fog or still"
                    + " grey weather lies for weeks the storage needed is found 10 to 20 % too small, and single days are often too"
                    + " dark. A size found with it needs a margin of 20 % or more.";

    private WeatherGenerator() {}

    static Weather generate(Place place, MonthlyClimate climate, int years, long seed) {
        Require.within(1, 1000, "years", years);
        SunYear sun = SunYear.at(place.latDeg(), place.lonDeg(), place.zoneH());
        DailyRecipe recipe = new DailyRecipe(place, climate, sun);
        DailySeries days = recipe.draw(years, seed);
        HourlySun hourlySun = new HourlySun(sun);
        double[] ghiWm2 = new double[years * ModelYear.HOURS];
        double[] diffuseWm2 = new double[years * ModelYear.HOURS];
        for (int year = 0; year < years; year++) {
            RandomStream random = RandomStream.of(seed, year, RandomStream.Purpose.WITHIN_DAY_SUN);
            for (int dayOfYear = 0; dayOfYear < ModelYear.DAYS; dayOfYear++) {
                int day = year * ModelYear.DAYS + dayOfYear;
                hourlySun.spread(
                        dayOfYear,
                        days.sunKwhM2(day),
                        recipe.hasClearness(dayOfYear),
                        random,
                        ghiWm2,
                        diffuseWm2,
                        day * 24);
            }
        }
        Series airDegC = new HourlyAir(climate, sun, recipe).hours(days);
        return new Weather(
                years,
                Series.owning(ghiWm2),
                Series.owning(diffuseWm2),
                airDegC,
                "generated from " + climate.source() + ", seed " + seed);
    }
}
