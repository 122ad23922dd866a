package tideover.engine.proof;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import tideover.engine.quantity.ModelYear;
import tideover.engine.quantity.RandomStream;
import tideover.engine.quantity.Series;
import tideover.engine.site.Weather;
import tideover.engine.sun.PanelMount;
import tideover.engine.sun.SunYear;

class PlaneShadeTest {
    private static final SunYear SUN = SunYear.at(40, -105, -7);
    private static final Weather WEATHER = weather();

    private static Weather weather() {
        double[] ghi = new double[ModelYear.HOURS];
        double[] diffuse = new double[ModelYear.HOURS];
        double[] air = new double[ModelYear.HOURS];
        RandomStream random = RandomStream.of(31, 0, RandomStream.Purpose.TEST);
        for (int hour = 0; hour < ghi.length; hour++) {
            ghi[hour] = SUN.horizontalWm2(hour) * (.1 + .7 * random.nextUniform());
            diffuse[hour] = ghi[hour] * random.nextUniform();
            air[hour] = 10;
        }
        return new Weather(1, Series.owning(ghi), Series.owning(diffuse), Series.owning(air), "test");
    }

    private static Series light(Series shade) {
        return PlaneWeather.of(WEATHER, SUN, new PanelMount(40, 180, .03, .2, shade), false)
                .planeWm2();
    }

    @Test
    void noShadeIsTheMountInTheOpen() {
        assertThat(light(PanelMount.NO_SHADE))
                .isEqualTo(PlaneWeather.of(WEATHER, SUN, new PanelMount(40, 180, .03, .2), false)
                        .planeWm2());
        assertThat(new PanelMount(40, 180, .03, .2))
                .isEqualTo(new PanelMount(40, 180, .03, .2, Series.of(new double[24])));
    }

    /** Hour by hour: what is lost is the share of its clock hour, once; deeper shade never gives more. */
    @Test
    void moreShadeNeverGivesMore() {
        RandomStream random = RandomStream.of(32, 0, RandomStream.Purpose.TEST);
        Series open = light(PanelMount.NO_SHADE);
        for (int round = 0; round < 10; round++) {
            double[] some = new double[24];
            double[] more = new double[24];
            for (int hour = 0; hour < 24; hour++) {
                some[hour] = random.nextUniform();
                more[hour] = some[hour] + (1 - some[hour]) * random.nextUniform();
            }
            Series lightSome = light(Series.of(some));
            Series lightMore = light(Series.of(more));
            for (int hour = 0; hour < open.length(); hour++) {
                assertThat(lightMore.at(hour)).isLessThanOrEqualTo(lightSome.at(hour));
                assertThat(lightSome.at(hour)).isCloseTo((1 - some[hour % 24]) * open.at(hour), within(1e-9));
            }
        }
    }

    @Test
    void fullShadeAtNoonTakesThatHourOnly() {
        double[] shade = new double[24];
        shade[12] = 1;
        Series noonless = light(Series.of(shade));
        Series open = light(PanelMount.NO_SHADE);
        for (int hour = 0; hour < open.length(); hour++) {
            assertThat(noonless.at(hour)).isEqualTo(hour % 24 == 12 ? 0 : open.at(hour));
        }
    }

    @Test
    void refusesWhatIsNoShade() {
        assertThatThrownBy(() -> new PanelMount(40, 180, 0, .2, Series.of(0, 0)))
                .hasMessageContaining("shadeByHour");
        double[] shade = new double[24];
        shade[7] = 1.2;
        assertThatThrownBy(() -> new PanelMount(40, 180, 0, .2, Series.of(shade)))
                .hasMessageContaining("shadeByHour 7 is 1.2");
    }
}
