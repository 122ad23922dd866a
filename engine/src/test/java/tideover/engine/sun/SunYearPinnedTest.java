package tideover.engine.sun;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.time.Instant;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;
import tideover.engine.quantity.ModelYear;

/**
 * Our own digits at 40 N 105 W, seven hours behind, 21 December: whoever moves one looks at the published tests again first. The
 * position comes from a library that uses the platform's sine, so a last digit may differ from one machine to another.
 */
class SunYearPinnedTest {
    private static final Offset<Double> TIGHT = within(1e-6);
    private static final SunYear SUN = SunYear.at(40, -105, -7);
    private static final int DAY = 354;

    @Test
    void position() {
        SunPosition sun = SunPosition.quick(Instant.parse("2025-12-21T17:00:00Z"), 40, -105);
        assertThat(sun.zenithDeg()).isCloseTo(69.1690199630, TIGHT);
        assertThat(sun.azimuthDeg()).isCloseTo(151.0226078146, TIGHT);
    }

    @Test
    void hourAndDay() {
        assertThat(SUN.horizontalWm2(DAY * 24 + 11)).isCloseTo(621.3772419659, TIGHT);
        assertThat(SUN.horizontalWm2(DAY * 24 + 7)).isCloseTo(43.2063202725, TIGHT);
        assertThat(SUN.cosZenith(DAY * 24 + 7)).isCloseTo(0.0458798425, TIGHT);
        assertThat(SUN.dayKwhM2(DAY)).isCloseTo(3.7582899846, TIGHT);
        assertThat(SUN.solarNoonHour(DAY)).isCloseTo(11.9721817562, TIGHT);
        assertThat(SUN.sunriseHour(DAY)).isCloseTo(7.3943798637, TIGHT);
        assertThat(SUN.hourShare(DAY * 24 + 9)).isCloseTo(0.1095341022, TIGHT);
    }

    @Test
    void plane() {
        PanelMount mount = new PanelMount(50, 200, 0, 0.25);
        PlaneYear plane = SUN.onto(mount);
        assertThat(plane.planeWm2(DAY * 24 + 11, 400, 150)).isCloseTo(725.7065182727, TIGHT);
        assertThat(plane.planeWm2(DAY * 24 + 7, 20, 12)).isCloseTo(57.0194734642, TIGHT);
        assertThat(SUN.onto(mount, new PerezSky()).planeWm2(DAY * 24 + 11, 400, 150))
                .isCloseTo(729.7511242910, TIGHT);
        double wh = 0;
        for (int h = 0; h < ModelYear.HOURS; h++) {
            double ghi = 0.55 * SUN.horizontalWm2(h);
            wh += plane.planeWm2(h, ghi, ghi * DiffuseFraction.hourly(0.55));
        }
        assertThat(wh / 1000).isCloseTo(1759.1178110067, TIGHT);
    }
}
