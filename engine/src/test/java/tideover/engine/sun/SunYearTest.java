package tideover.engine.sun;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import java.time.Instant;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import tideover.engine.quantity.ModelYear;
import tideover.engine.quantity.Units;

class SunYearTest {
    private static final Instant YEAR_START = Instant.parse(SunYear.REFERENCE_YEAR + "-01-01T00:00:00Z");

    /**
     * Two ways to a day: the station table's formula, and the sum of hours. They differ because the reference year runs a
     * quarter of a day ahead of the table's and its declination moves within the day.
     */
    @ParameterizedTest
    @ValueSource(doubles = {-50, -35, 0, 20, 35, 50})
    void hoursSumToTheDayOfTheStationTable(double lat) {
        SunYear sun = SunYear.at(lat, -100, -7);
        double hoursOfTheYear = 0;
        double daysOfTheYear = 0;
        for (int day = 0; day < ModelYear.DAYS; day++) {
            double hours = daySum(sun, day);
            assertThat(hours / sun.dayKwhM2(day)).as("day %d", day).isCloseTo(1, within(0.0045));
            hoursOfTheYear += hours;
            daysOfTheYear += sun.dayKwhM2(day);
        }
        assertThat(hoursOfTheYear / daysOfTheYear).isCloseTo(1, within(0.0002));
    }

    /**
     * Monthly mean of the day formula against the one implied by the station table (TMY3, Wilcox &amp; Marion 2008, NREL/TP-581-43156):
     * irradiation over clearness index, in the bounds that the rounding of both columns leaves, 0.005 kWh/m2 and 0.0005.
     * Phoenix, Honolulu, Minneapolis and Fairbanks; month from 0.
     */
    @ParameterizedTest
    @CsvSource({
        "33.450,  0, 3.29, 0.608",
        "33.450,  2, 5.34, 0.624",
        "33.450,  5, 8.32, 0.722",
        "33.450,  9, 4.82, 0.663",
        "33.450, 11, 3.07, 0.620",
        "21.317,  0, 3.98, 0.542",
        "21.317,  5, 6.49, 0.587",
        "44.883,  0, 1.72, 0.497",
        "44.883,  2, 3.69, 0.515",
        "44.883,  5, 6.42, 0.553",
        "44.883, 11, 1.21, 0.404",
        "64.817,  0, 0.15, 0.393",
        "64.817,  2, 2.26, 0.548",
        "64.817,  5, 5.64, 0.495",
        "64.817,  9, 1.01, 0.429",
    })
    void monthlyMeansMatchTheStationTable(double lat, int month, double ghiKwhM2, double clearness) {
        SunYear sun = SunYear.at(lat, -100, -7);
        double mean = 0;
        for (int day = 0; day < ModelYear.daysIn(month); day++) {
            mean += sun.dayKwhM2(ModelYear.firstDay(month) + day) / ModelYear.daysIn(month);
        }
        assertThat(mean)
                .isBetween((ghiKwhM2 - 0.005) / (clearness + 0.0005), (ghiKwhM2 + 0.005) / (clearness - 0.0005));
    }

    /** Against sixty instants an hour: the year within a ten-thousandth, any hour within what ten minutes of sunrise are worth. */
    @ParameterizedTest
    @ValueSource(doubles = {0, 40, 64})
    void moreInstantsMoveLittle(double lat) {
        SunYear used = SunYear.at(lat, -100, -7);
        SunYear fine = SunYear.at(lat, -100, -7, 60);
        double usedSum = 0;
        double fineSum = 0;
        for (int hour = 0; hour < ModelYear.HOURS; hour++) {
            assertThat(used.horizontalWm2(hour)).isCloseTo(fine.horizontalWm2(hour), within(4.0));
            usedSum += used.horizontalWm2(hour);
            fineSum += fine.horizontalWm2(hour);
        }
        assertThat(usedSum / fineSum).isCloseTo(1, within(1e-4));
    }

    /** Places on both halves, by the date line, with odd zones; the full algorithm must see the sun due south or north at noon. */
    @ParameterizedTest
    @CsvSource({
        "52.4, 4.9, 1",
        "27.7, 85.3, 5.75",
        "-43.9, -176.5, 12.75",
        "47.6, -122.3, -8",
        "-33.9, 151.2, 10",
        "52, 179.9, -12",
        "-21, -175, 13",
    })
    void noonAndSunriseAreWhereTheFullAlgorithmHasThem(double lat, double lon, double zone) {
        SunYear sun = SunYear.at(lat, lon, zone);
        for (int day = 0; day < ModelYear.DAYS; day += 7) {
            SunPosition noon = full(lat, lon, zone, day, sun.solarNoonHour(day));
            double offMeridian =
                    StrictMath.sin(Units.radians(noon.azimuthDeg())) * StrictMath.sin(Units.radians(noon.zenithDeg()));
            assertThat(offMeridian).as("noon of day %d", day).isCloseTo(0, within(0.001));
            assertThat(noon.zenithDeg()).isLessThan(90);
            SunPosition rise = full(lat, lon, zone, day, sun.sunriseHour(day));
            assertThat(rise.zenithDeg()).as("sunrise of day %d", day).isCloseTo(90, within(0.2));
            assertThat(rise.azimuthDeg()).isBetween(0.0, 180.0);
        }
    }

    @Test
    void thePolesHaveOneDayAYearAndNothingBreaks() {
        for (double lat : new double[] {-90, 90}) {
            SunYear sun = SunYear.at(lat, 0, 0);
            for (int day = 0; day < ModelYear.DAYS; day++) {
                assertThat(sun.sunriseHour(day)).isNaN();
                assertThat(sun.dayKwhM2(day)).isBetween(0.0, 15.5);
            }
            int june = 171;
            int december = 355;
            assertThat(sun.dayKwhM2(june) > 0).isEqualTo(lat > 0);
            assertThat(sun.dayKwhM2(december) > 0).isEqualTo(lat < 0);
            PlaneYear plane = sun.onto(new PanelMount(60, 180, 0, 0.2));
            for (int hour = 0; hour < ModelYear.HOURS; hour++) {
                assertThat(sun.cosZenith(hour)).isBetween(0.0, 0.4);
                assertThat(plane.planeWm2(hour, 200, 100)).isBetween(0.0, 1400.0);
            }
        }
    }

    @Test
    void theArcticHasPolarNightAndDay() {
        SunYear sun = SunYear.at(71.3, -156.8, -9);
        assertThat(sun.sunriseHour(0)).isNaN();
        assertThat(sun.sunriseHour(171)).isNaN();
        assertThat(sun.sunriseHour(80)).isBetween(5.0, 8.5);
        assertThat(sun.dayKwhM2(0)).isZero();
        assertThat(daySum(sun, 0)).isZero();
        assertThat(daySum(sun, 171)).isCloseTo(sun.dayKwhM2(171), within(0.05));
    }

    @Test
    void bothSidesOfTheDateLineAreOnePlace() {
        SunYear east = SunYear.at(-17, 180, 12);
        SunYear west = SunYear.at(-17, -180, 12);
        for (int hour = 0; hour < ModelYear.HOURS; hour++) {
            assertThat(west.horizontalWm2(hour)).isCloseTo(east.horizontalWm2(hour), within(1e-3));
        }
        assertThat(west.solarNoonHour(40)).isCloseTo(east.solarNoonHour(40), within(1e-9));
    }

    @Test
    void aHalfHourZoneShiftsTheClockByHalfAnHour() {
        SunYear whole = SunYear.at(28, 77, 5);
        SunYear half = SunYear.at(28, 77, 5.5);
        assertThat(half.solarNoonHour(100) - whole.solarNoonHour(100)).isCloseTo(0.5, within(1e-4));
    }

    @Test
    void summerAndWinterChangePlacesInTheSouth() {
        SunYear sun = SunYear.at(-33.9, 151.2, 10);
        assertThat(sun.dayKwhM2(0)).isGreaterThan(2 * sun.dayKwhM2(171));
    }

    @Test
    void hoursKeepTheirBounds() {
        SunYear sun = SunYear.at(40, -105, -7);
        for (int hour = 0; hour < ModelYear.HOURS; hour++) {
            assertThat(sun.horizontalWm2(hour)).isBetween(0.0, 1367 * 1.035);
            assertThat(sun.cosZenith(hour)).isBetween(0.0, 1.0);
            assertThat(sun.cosZenith(hour) > 0).isEqualTo(sun.horizontalWm2(hour) > 0);
        }
    }

    @Test
    void placesOffTheMapAreRefused() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> SunYear.at(90.5, 0, 0))
                .withMessageContaining("latDeg");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> SunYear.at(0, 181, 0))
                .withMessageContaining("lonDeg");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> SunYear.at(0, 0, 15))
                .withMessageContaining("zoneH");
        assertThatIllegalArgumentException().isThrownBy(() -> SunYear.at(Double.NaN, 0, 0));
    }

    private static SunPosition full(double lat, double lon, double zone, int day, double clockHour) {
        Instant time = YEAR_START.plusSeconds(Math.round((day * 24 + clockHour - zone) * 3600));
        return SunPosition.airless(time, lat, lon, 0, SunPosition.REFERENCE_DELTA_T_S);
    }

    private static double daySum(SunYear sun, int day) {
        double wh = 0;
        for (int hour = day * 24; hour < day * 24 + 24; hour++) {
            wh += sun.horizontalWm2(hour);
        }
        return wh / Units.KILO;
    }
}
