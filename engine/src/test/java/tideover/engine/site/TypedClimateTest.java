package tideover.engine.site;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.Objects;
import org.junit.jupiter.api.Test;
import tideover.engine.quantity.ModelYear;
import tideover.engine.quantity.Series;
import tideover.engine.sun.SunYear;

/** Climates typed by hand; all figures here are round ones of our own making. */
class TypedClimateTest {
    private static final Place SOUTH = new Place("South", -33.9, 151.2, 20, 10);
    private static final Series SOUTH_SUN = Series.of(6.4, 5.6, 4.7, 3.6, 2.7, 2.3, 2.6, 3.4, 4.6, 5.5, 6.1, 6.6);
    private static final Series SOUTH_MEAN = Series.of(23, 23, 22, 19, 16, 13, 12, 13.5, 16, 18, 20, 22);

    private static MonthlyClimate climate(TypedClimate typed) {
        assertThat(typed.problems()).isEmpty();
        return Objects.requireNonNull(typed.climate());
    }

    private static Series same(double value) {
        double[] values = new double[12];
        Arrays.fill(values, value);
        return Series.owning(values);
    }

    /** Sun that is the given share of the extraterrestrial, to two decimals down, month by month. */
    private static Series sunOf(Place place, double clearness) {
        SunYear sun = SunYear.at(place.latDeg(), place.lonDeg(), place.zoneH());
        double[] hours = new double[12];
        for (int day = 0; day < 365; day++) {
            int month = ModelYear.monthOfDay(day);
            hours[month] += clearness * sun.dayKwhM2(day) / ModelYear.daysIn(month);
        }
        for (int month = 0; month < 12; month++) {
            hours[month] = Math.floor(hours[month] * 100) / 100;
        }
        return Series.owning(hours);
    }

    @Test
    void southOfTheEquatorSeasonsAreSwapped() {
        MonthlyClimate climate = climate(TypedClimate.of(SOUTH, SOUTH_SUN, SOUTH_MEAN, "typed"));
        assertThat(climate.anomalyWithSun()).isEqualTo(Series.of(0.25, -0.05, -0.18, 0.09));
        assertThat(climate.rangePerScoreDegC()).isEqualTo(Series.of(1.5, 2.0, 1.5, 2.2));
        assertThat(climate.anomalySdDegC().at(6)).isEqualTo(4.8);
        assertThat(climate.anomalySdDegC().at(0)).isEqualTo(2.2);
        assertThat(climate.clearnessLag1()).isEqualTo(0.31);
        assertThat(climate.anomalyLag1()).isEqualTo(0.72);
        assertThat(climate.lowDegC().at(0)).isEqualTo(18);
        assertThat(climate.highDegC().at(0)).isEqualTo(28);
        assertThat(climate.clearness().at(5)).isBetween(0.4, 0.6);
        DailyRecipe recipe = new DailyRecipe(SOUTH, climate, SunYear.at(SOUTH.latDeg(), SOUTH.lonDeg(), SOUTH.zoneH()));
        assertThat(recipe.withSun(0)).isCloseTo(0.25, within(1e-12));
        assertThat(recipe.withSun(2)).isCloseTo(-0.18, within(1e-12));
        Weather weather = WeatherGenerator.generate(SOUTH, climate, 40, 1);
        assertThat(mean(weather, 0, true)).isCloseTo(6.4, within(0.5));
        assertThat(mean(weather, 5, true)).isCloseTo(2.3, within(0.3));
        assertThat(mean(weather, 6, false)).isCloseTo(12, within(1.5));
    }

    @Test
    void tropics() {
        Place place = new Place("Tropics", 1.3, 103.9, 15, 8);
        MonthlyClimate climate = climate(TypedClimate.of(place, same(4.5), same(27), same(24), same(31), "typed"));
        assertThat(climate.anomalySdDegC()).isEqualTo(same(2.2)); // no coldest month: all alike
        Weather weather = WeatherGenerator.generate(place, climate, 40, 2);
        for (int month = 0; month < 12; month++) {
            assertThat(mean(weather, month, true)).isCloseTo(4.5, within(0.4));
            assertThat(mean(weather, month, false)).isCloseTo(27, within(0.8));
        }
    }

    @Test
    void polarNightHasNoClearnessAndPolarDayRunsThroughMidnight() {
        Place place = new Place("Far north", 78.2, 15.6, 10, 1);
        MonthlyClimate climate = climate(TypedClimate.of(place, sunOf(place, 0.45), same(-6), "typed"));
        assertThat(climate.clearness().at(11)).isNaN();
        assertThat(climate.clearness().at(5)).isCloseTo(0.45, within(0.01));
        Weather weather = WeatherGenerator.generate(place, climate, 5, 3);
        double midnightWm2 = 0;
        for (int hour = 0; hour < weather.hours(); hour++) {
            int day = hour / 24 % ModelYear.DAYS;
            assertThat(weather.airDegC().at(hour)).isFinite();
            if (ModelYear.monthOfDay(day) == 11) {
                assertThat(weather.ghiWm2().at(hour)).isZero();
            }
            if (ModelYear.monthOfDay(day) == 5 && hour % 24 == 0) {
                midnightWm2 = Math.max(midnightWm2, weather.ghiWm2().at(hour));
            }
        }
        assertThat(midnightWm2).isGreaterThan(20);
    }

    /** On both sides of the line the sun peaks at the sun's noon, whichever day the clock is on, and keeps its days. */
    @Test
    void dateLine() {
        for (Place place : new Place[] {
            new Place("West of the line", -17.8, 179.9, 5, 12),
            new Place("East of the line", 51.9, -179.9, 5, -12),
            new Place("Clock a day ahead", -10, -172, 5, 13),
            new Place("Clock half a day wrong", 40, 100, 5, -5)
        }) {
            MonthlyClimate climate = climate(TypedClimate.of(place, sunOf(place, 0.5), SOUTH_MEAN, "typed"));
            Weather weather = WeatherGenerator.generate(place, climate, 10, 4);
            SunYear sun = SunYear.at(place.latDeg(), place.lonDeg(), place.zoneH());
            double[] march = new double[24];
            double[] warmth = new double[24];
            for (int day = 0; day < weather.days(); day++) {
                if (ModelYear.monthOfDay(day % ModelYear.DAYS) == 2) {
                    for (int i = 0; i < 24; i++) {
                        march[i] += weather.ghiWm2().at(day * 24 + i);
                        warmth[i] += weather.airDegC().at(day * 24 + i);
                    }
                }
            }
            assertThat(apart(peak(march) + 0.5, sun.solarNoonHour(74)))
                    .as(place.name())
                    .isLessThan(1.5);
            assertThat(apart(peak(warmth) + 0.5, sun.solarNoonHour(74) + 3))
                    .as(place.name())
                    .isLessThan(1.5);
            for (int month = 0; month < 12; month++) {
                assertThat(mean(weather, month, false)).as(place.name()).isCloseTo(SOUTH_MEAN.at(month), within(3.0));
            }
        }
    }

    @Test
    void impossibleSunIsNamedMonthByMonth() {
        double[] hours = SOUTH_SUN.toArray();
        hours[5] = 5.5; // the tilted figure of a brochure
        hours[8] = Double.NaN;
        hours[10] = 0.1;
        TypedClimate typed = TypedClimate.of(SOUTH, Series.of(hours), SOUTH_MEAN, "typed");
        assertThat(typed.climate()).isNull();
        assertThat(typed.problems()).extracting(TypedClimate.Impossible::month).containsExactly(5, 8, 10);
        assertThat(typed.problems().get(0).sentence())
                .isEqualTo("jun: clearness 1.20 (5.50 peak sun hours on the horizontal, of 4.57 above the air),"
                        + " expected 0.08 to 0.85 (0.37 to 3.88 peak sun hours)");
    }

    @Test
    void sunInPolarNightIsRefusedButTwilightIsNot() {
        Place place = new Place("Far north", 78.2, 15.6, 10, 1);
        double[] hours = sunOf(place, 0.45).toArray();
        hours[11] = 0.05;
        assertThat(TypedClimate.of(place, Series.of(hours), same(-6), "typed").problems())
                .isEmpty();
        hours[11] = 1;
        TypedClimate typed = TypedClimate.of(place, Series.of(hours), same(-6), "typed");
        assertThat(typed.climate()).isNull();
        assertThat(typed.problems()).hasSize(1);
        assertThat(typed.problems().get(0).sentence())
                .isEqualTo("dec: 1.00 peak sun hours with the sun hardly up, expected at most 0.10");
    }

    @Test
    void impossibleTemperaturesAreNamed() {
        double[] low = same(10).toArray();
        low[2] = 25;
        TypedClimate typed = TypedClimate.of(SOUTH, SOUTH_SUN, same(20), Series.of(low), same(30), "typed");
        assertThat(typed.problems()).extracting(TypedClimate.Impossible::month).containsExactly(2);
        assertThat(TypedClimate.of(SOUTH, SOUTH_SUN, same(85), "in Fahrenheit").problems())
                .hasSize(12);
    }

    /** The typed way and the station's way meet: a station's own sun gives back its clearness. */
    @Test
    void clearnessFromTypedSunIsTheTables() {
        for (Station station : TwentyStations.all()) {
            MonthlyClimate table = station.climate();
            TypedClimate typed = TypedClimate.of(station.place(), table.ghiKwhM2Day(), table.meanDegC(), "typed");
            MonthlyClimate climate = climate(typed);
            for (int month = 0; month < 12; month++) {
                double found = climate.clearness().at(month);
                double expected = table.clearness().at(month);
                assertThat(Double.isNaN(found)).isEqualTo(Double.isNaN(expected));
                if (!Double.isNaN(found)) {
                    double rounding =
                            0.0006 + 0.005 * expected / table.ghiKwhM2Day().at(month);
                    assertThat(found).as(station.label() + " month " + month).isCloseTo(expected, within(rounding));
                }
            }
        }
    }

    private static double mean(Weather weather, int month, boolean sun) {
        double sum = 0;
        int days = 0;
        for (int day = 0; day < weather.days(); day++) {
            if (ModelYear.monthOfDay(day % ModelYear.DAYS) == month) {
                sum += sun ? weather.dayKwhM2(day) : weather.dayMeanDegC(day);
                days++;
            }
        }
        return sum / days;
    }

    private static int peak(double[] hours) {
        int peak = 0;
        for (int i = 1; i < hours.length; i++) {
            peak = hours[i] > hours[peak] ? i : peak;
        }
        return peak;
    }

    private static double apart(double hour, double other) {
        return Math.abs(Math.IEEEremainder(hour - other, 24));
    }
}
