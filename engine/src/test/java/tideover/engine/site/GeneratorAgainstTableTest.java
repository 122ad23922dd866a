package tideover.engine.site;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import tideover.engine.quantity.ModelYear;
import tideover.engine.quantity.Series;
import tideover.engine.sun.SunYear;

/**
 * Three thousand years of days at twenty stations against the monthly figures they were drawn from (Wilcox &amp; Marion
 * 2008, twenty-stations.md). A month's mean over so many years has a standard error near 0.3 % of sun; the temperatures'
 * is below 0.1 K.
 */
class GeneratorAgainstTableTest {
    private static final int ROUNDS = 30;
    private static final int YEARS = 100;

    static Stream<Station> stations() {
        return TwentyStations.all().stream();
    }

    @ParameterizedTest
    @MethodSource("stations")
    void monthsComeOutAsTheTableSays(Station station) {
        MonthlyClimate climate = station.climate();
        SunYear sun = SunYear.at(
                station.place().latDeg(),
                station.place().lonDeg(),
                station.place().zoneH());
        DailyRecipe recipe = new DailyRecipe(station.place(), climate, sun);
        HourlyAir air = new HourlyAir(climate, sun, recipe);
        double[] sunKwhM2 = new double[12];
        double[] lowDegC = new double[12];
        double[] highDegC = new double[12];
        double[] meanDegC = new double[12];
        double[] products = new double[4];
        double[] sunSquares = new double[4];
        double[] airSquares = new double[4];
        for (int round = 0; round < ROUNDS; round++) {
            DailySeries days = recipe.draw(YEARS, 4000 + round);
            Series degC = air.hours(days);
            for (int day = 0; day < days.days(); day++) {
                int month = ModelYear.monthOfDay(day % ModelYear.DAYS);
                double lowest = Double.POSITIVE_INFINITY;
                double highest = Double.NEGATIVE_INFINITY;
                double sum = 0;
                for (int hour = day * 24; hour < day * 24 + 24; hour++) {
                    lowest = Math.min(lowest, degC.at(hour));
                    highest = Math.max(highest, degC.at(hour));
                    sum += degC.at(hour);
                }
                lowDegC[month] += lowest;
                highDegC[month] += highest;
                meanDegC[month] += sum / 24;
                sunKwhM2[month] += days.sunKwhM2(day);
                int season = MonthlyClimate.seasonOf(month);
                products[season] += days.sunScore(day) * days.anomalyScore(day);
                sunSquares[season] += days.sunScore(day) * days.sunScore(day);
                airSquares[season] += days.anomalyScore(day) * days.anomalyScore(day);
            }
        }
        for (int month = 0; month < 12; month++) {
            int days = ModelYear.daysIn(month) * ROUNDS * YEARS;
            String where = station.label() + " " + ModelYear.monthName(month);
            double ghi = climate.ghiKwhM2Day().at(month);
            // 1.5 %, and the rounding of the table's two figures: .005 kWh/m2 and .0005 of clearness.
            double rounding = 0.005
                    + (ghi > 0
                            ? 0.0005 * ghi / Math.max(0.05, climate.clearness().at(month))
                            : 0);
            double tolerance = 0.015 * ghi + (Double.isNaN(rounding) ? 0.005 : rounding);
            assertThat(sunKwhM2[month] / days).as(where + " sun").isCloseTo(ghi, within(tolerance));
            assertThat(lowDegC[month] / days)
                    .as(where + " lowest")
                    .isCloseTo(climate.lowDegC().at(month), within(0.5));
            assertThat(highDegC[month] / days)
                    .as(where + " highest")
                    .isCloseTo(climate.highDegC().at(month), within(0.5));
            assertThat(meanDegC[month] / days)
                    .as(where + " mean")
                    .isCloseTo(climate.meanDegC().at(month), within(0.5));
        }
        for (int season = 0; season < 4; season++) {
            double found = products[season] / Math.sqrt(sunSquares[season] * airSquares[season]);
            assertThat(found)
                    .as(station.label() + " correlation, season " + season)
                    .isCloseTo(recipe.withSun(season), within(0.05));
        }
    }
}
