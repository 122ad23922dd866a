package tideover.engine.site;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import tideover.engine.quantity.ModelYear;
import tideover.engine.sun.SunYear;

class WeatherGeneratorTest {
    private static final Station BUFFALO = TwentyStations.named("Buffalo");
    private static final Station BARROW = TwentyStations.named("Barrow");

    private static Weather generate(Station station, int years, long seed) {
        return WeatherGenerator.generate(station.place(), station.climate(), years, seed);
    }

    private static SunYear sunOf(Station station) {
        return SunYear.at(
                station.place().latDeg(),
                station.place().lonDeg(),
                station.place().zoneH());
    }

    @Test
    void aYearIsTheSameWhateverTheNumberOfYears() {
        Weather few = generate(BUFFALO, 3, 11);
        Weather many = generate(BUFFALO, 8, 11);
        for (int hour = 0; hour < few.hours(); hour++) {
            assertThat(many.ghiWm2().at(hour)).isEqualTo(few.ghiWm2().at(hour));
            assertThat(many.diffuseWm2().at(hour)).isEqualTo(few.diffuseWm2().at(hour));
            assertThat(many.airDegC().at(hour)).isEqualTo(few.airDegC().at(hour));
        }
    }

    @Test
    void theSeedDecides() {
        assertThat(generate(BUFFALO, 2, 11)).isEqualTo(generate(BUFFALO, 2, 11));
        Weather other = generate(BUFFALO, 2, 12);
        assertThat(other.ghiWm2()).isNotEqualTo(generate(BUFFALO, 2, 11).ghiWm2());
        assertThat(other.airDegC()).isNotEqualTo(generate(BUFFALO, 2, 11).airDegC());
    }

    @Test
    void yearsDifferFromEachOther() {
        Weather weather = generate(BUFFALO, 2, 11);
        double[] first = new double[365];
        double[] second = new double[365];
        for (int day = 0; day < 365; day++) {
            first[day] = weather.dayKwhM2(day);
            second[day] = weather.dayKwhM2(365 + day);
        }
        assertThat(first).isNotEqualTo(second);
    }

    @Test
    void everyDayKeepsItsEnergyHourByHour() {
        for (Station station : TwentyStations.all()) {
            SunYear sun = sunOf(station);
            DailyRecipe recipe = new DailyRecipe(station.place(), station.climate(), sun);
            Weather weather = generate(station, 10, 5);
            DailySeries days = recipe.draw(10, 5);
            for (int day = 0; day < weather.days(); day++) {
                double expected = days.sunKwhM2(day);
                assertThat(weather.dayKwhM2(day))
                        .as(station.label() + " day " + day)
                        .isCloseTo(expected, within(1e-9 * expected));
            }
        }
    }

    @Test
    void everyHourStaysInsideItsBounds() {
        for (Station station : TwentyStations.all()) {
            SunYear sun = sunOf(station);
            Weather weather = generate(station, 10, 6);
            int outside = 0;
            for (int day = 0; day < weather.days(); day++) {
                int first = day % ModelYear.DAYS * 24;
                // The day against the hours' own sum, which at the polar circle is not the daily formula's.
                double outsideWh = 0;
                for (int i = 0; i < 24; i++) {
                    outsideWh += sun.horizontalWm2(first + i);
                }
                double clearness = weather.dayKwhM2(day) * 1000 / outsideWh;
                double floor = Math.min(0.01, clearness / 2) * (1 - 1e-9);
                double most = Math.max(0.81, clearness * 1.5);
                int month = ModelYear.monthOfDay(day % ModelYear.DAYS);
                boolean hasClearness =
                        !Double.isNaN(station.climate().clearness().at(month));
                for (int i = 0; i < 24; i++) {
                    double ghi = weather.ghiWm2().at(day * 24 + i);
                    double diffuse = weather.diffuseWm2().at(day * 24 + i);
                    double hourly = ghi / sun.horizontalWm2(first + i);
                    boolean dark = sun.horizontalWm2(first + i) == 0;
                    boolean lightIsRight = !hasClearness || (dark ? ghi == 0 : hourly >= floor && hourly <= most);
                    outside += diffuse >= 0 && diffuse <= ghi && lightIsRight ? 0 : 1;
                }
            }
            assertThat(outside).as(station.label()).isZero();
        }
    }

    @Test
    void withoutAClearnessTheMonthsSunIsSkyLightAboutNoon() {
        Weather weather = generate(BARROW, 2, 3);
        SunYear sun = sunOf(BARROW);
        int months = 0;
        for (int day = 0; day < weather.days(); day++) {
            int dayOfYear = day % ModelYear.DAYS;
            int month = ModelYear.monthOfDay(dayOfYear);
            if (!Double.isNaN(BARROW.climate().clearness().at(month))) {
                continue;
            }
            months |= 1 << month;
            assertThat(weather.dayKwhM2(day))
                    .isCloseTo(BARROW.climate().ghiKwhM2Day().at(month), within(1e-12));
            for (int i = 0; i < 24; i++) {
                int hour = day * 24 + i;
                assertThat(weather.diffuseWm2().at(hour))
                        .isEqualTo(weather.ghiWm2().at(hour));
                if (Math.abs(i + 0.5 - sun.solarNoonHour(dayOfYear)) > 2) {
                    assertThat(weather.ghiWm2().at(hour)).isZero();
                }
            }
        }
        assertThat(Integer.bitCount(months)).isGreaterThanOrEqualTo(2);
    }

    /** The greatest step between two hours is no greater at midnight, or from year to year, than within a day. */
    @Test
    void temperatureRunsOnThroughMidnight() {
        for (String name : new String[] {"Fargo", "Barrow", "Honolulu", "Phoenix"}) {
            Weather weather = generate(TwentyStations.named(name), 30, 8);
            double within = 0;
            double midnight = 0;
            double sum = 0;
            for (int hour = 1; hour < weather.hours(); hour++) {
                double step =
                        Math.abs(weather.airDegC().at(hour) - weather.airDegC().at(hour - 1));
                within = hour % 24 == 0 ? within : Math.max(within, step);
                midnight = hour % 24 == 0 ? Math.max(midnight, step) : midnight;
                sum += step;
            }
            assertThat(midnight).as(name).isLessThan(within);
            assertThat(sum / weather.hours()).as(name).isLessThan(2);
        }
    }

    @Test
    void lowestComesAboutSunriseAndHighestInTheAfternoon() {
        Weather weather = generate(BUFFALO, 30, 9);
        SunYear sun = sunOf(BUFFALO);
        double[] july = new double[24];
        for (int day = 0; day < weather.days(); day++) {
            if (ModelYear.monthOfDay(day % ModelYear.DAYS) == 6) {
                for (int i = 0; i < 24; i++) {
                    july[i] += weather.airDegC().at(day * 24 + i);
                }
            }
        }
        int lowest = 0;
        int highest = 0;
        for (int i = 0; i < 24; i++) {
            lowest = july[i] < july[lowest] ? i : lowest;
            highest = july[i] > july[highest] ? i : highest;
        }
        assertThat(lowest + 0.5).isCloseTo(sun.sunriseHour(196), within(1.0));
        assertThat(highest + 0.5).isCloseTo(sun.solarNoonHour(196) + 3, within(1.0));
    }

    @Test
    void monthsOfThirtyYearsScatterAboutTheTableAndAreNotForcedOntoIt() {
        Weather weather = generate(BUFFALO, 30, 10);
        double[] january = new double[30];
        for (int year = 0; year < 30; year++) {
            for (int day = 0; day < 31; day++) {
                january[year] += weather.dayKwhM2(year * 365 + day) / 31;
            }
        }
        double table = BUFFALO.climate().ghiKwhM2Day().at(0);
        double mean = 0;
        double squares = 0;
        for (double one : january) {
            mean += one / 30;
        }
        for (double one : january) {
            squares += (one - mean) * (one - mean) / 29;
        }
        double sd = Math.sqrt(squares);
        assertThat(mean).isCloseTo(table, within(4 * sd / Math.sqrt(30)));
        // The year-to-year spread of a monthly mean is about .30 of the daily one (Netherlands .26-.30, Davis .38-.41).
        double daily = DailyRecipe.spread(BUFFALO.climate(), 0)
                / BUFFALO.climate().clearness().at(0);
        assertThat(sd / mean / daily).isBetween(0.2, 0.4);
    }

    @Test
    void linesThroughMonthsKeepTheirMeans() {
        for (Station station : TwentyStations.all()) {
            double[] line = DailyRecipe.linesThroughMonths(station.climate().meanDegC());
            for (int month = 0; month < 12; month++) {
                double sum = 0;
                for (int day = 0; day < ModelYear.daysIn(month); day++) {
                    sum += line[ModelYear.firstDay(month) + day];
                }
                assertThat(sum / ModelYear.daysIn(month))
                        .isCloseTo(station.climate().meanDegC().at(month), within(1e-9));
            }
        }
    }
}
