package tideover.engine.site;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Arrays;
import org.junit.jupiter.api.Test;
import tideover.engine.quantity.ModelYear;
import tideover.engine.quantity.Series;
import tideover.engine.sun.SunYear;

class SnowCoverTest {
    private static final SunYear SUN = SunYear.at(43, -79, -5);

    /** One year of days of given clearness and steady temperature; the rest of the year is mild and middling. */
    private static Weather days(double[] clearness, double[] degC) {
        double[] ghiWm2 = new double[ModelYear.HOURS];
        double[] airDegC = new double[ModelYear.HOURS];
        for (int hour = 0; hour < ModelYear.HOURS; hour++) {
            int day = hour / 24;
            double k = day < clearness.length ? clearness[day] : 0.4;
            ghiWm2[hour] = k * SUN.dayKwhM2(day) * 1000 / 24;
            airDegC[hour] = day < degC.length ? degC[day] : 10;
        }
        return new Weather(1, Series.owning(ghiWm2), Series.owning(ghiWm2), Series.owning(airDegC), "made up");
    }

    private static double[] repeated(double value, int times) {
        double[] values = new double[times];
        Arrays.fill(values, value);
        return values;
    }

    @Test
    void snowComesOnADarkColdDayAndGoesOnAWarmOne() {
        Weather weather = days(new double[] {.4, .1, .4, .4, .4}, new double[] {-3, -3, -3, 2, -3});
        SnowCover cover = SnowCover.of(weather, SUN, 30);
        assertThat(cover.coveredOn(0)).isFalse(); // cold but bright
        assertThat(cover.coveredOn(1)).isTrue();
        assertThat(cover.coveredOn(2)).isTrue();
        assertThat(cover.coveredOn(3)).isFalse(); // thaw
        assertThat(cover.coveredOn(4)).isFalse();
        assertThat(cover.share()).isEqualTo(2.0 / 365);
    }

    @Test
    void aClearDayShedsItInTheCold() {
        SnowCover cover = SnowCover.of(days(new double[] {.1, .4, .7, .4}, repeated(-10, 4)), SUN, 30);
        assertThat(cover.coveredOn(1)).isTrue();
        assertThat(cover.coveredOn(2)).isFalse();
        assertThat(cover.coveredOn(3)).isFalse();
    }

    @Test
    void itLastsAtMostSoManyDaysUnlessItSnowsAgain() {
        double[] clearness = repeated(.4, 40);
        clearness[0] = .1;
        SnowCover once = SnowCover.of(days(clearness, repeated(-5, 40)), SUN, 30);
        assertThat(once.coveredOn(SnowCover.LONGEST_DAYS)).isTrue();
        assertThat(once.coveredOn(SnowCover.LONGEST_DAYS + 1)).isFalse();
        clearness[5] = .1;
        SnowCover twice = SnowCover.of(days(clearness, repeated(-5, 40)), SUN, 30);
        assertThat(twice.coveredOn(5 + SnowCover.LONGEST_DAYS)).isTrue();
        assertThat(twice.coveredOn(6 + SnowCover.LONGEST_DAYS)).isFalse();
    }

    @Test
    void steepPanelsShed() {
        Weather weather = days(repeated(.1, 20), repeated(-5, 20));
        assertThat(SnowCover.of(weather, SUN, 55).share()).isGreaterThan(0);
        assertThat(SnowCover.of(weather, SUN, 56).share()).isZero();
    }

    @Test
    void onlyWhereItFreezes() {
        assertThat(SnowCover.freezes(TwentyStations.named("Buffalo").climate())).isTrue();
        assertThat(SnowCover.freezes(TwentyStations.named("Miami").climate())).isFalse();
        for (String name : new String[] {"Buffalo", "Miami", "Barrow", "Honolulu"}) {
            Station station = TwentyStations.named(name);
            Weather weather = WeatherGenerator.generate(station.place(), station.climate(), 10, 1);
            assertThat(SnowCover.freezes(weather)).isEqualTo(SnowCover.freezes(station.climate()));
        }
    }

    @Test
    void coldDarkPlacesLieUnderSnowLongerThanWarmOnes() {
        assertThat(share("Miami")).isZero();
        assertThat(share("Houston")).isLessThan(0.02);
        assertThat(share("Buffalo")).isBetween(0.05, 0.25);
        assertThat(share("Duluth")).isGreaterThan(share("Boston"));
    }

    private static double share(String name) {
        Station station = TwentyStations.named(name);
        Place place = station.place();
        Weather weather = WeatherGenerator.generate(place, station.climate(), 20, 2);
        return SnowCover.of(weather, SunYear.at(place.latDeg(), place.lonDeg(), place.zoneH()), 40)
                .share();
    }
}
