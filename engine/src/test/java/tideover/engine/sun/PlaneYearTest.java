package tideover.engine.sun;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import tideover.engine.quantity.ModelYear;

class PlaneYearTest {
    private static final SunYear SUN = SunYear.at(40, -105, -7);

    private static PanelMount mount(double tiltDeg, double azimuthDeg) {
        return new PanelMount(tiltDeg, azimuthDeg, 0, 0.2);
    }

    @Test
    void aFlatCleanPlaneSeesTheHorizontalItself() {
        PlaneYear flat = SUN.onto(mount(0, 180));
        for (int h = 0; h < ModelYear.HOURS; h++) {
            assertThat(flat.planeWm2(h, 300, 120)).isCloseTo(300, within(1e-9));
        }
    }

    @Test
    void noLightGivesNoneAndDarkHoursAreAllSky() {
        PlaneYear plane = SUN.onto(mount(60, 180));
        for (int h = 0; h < ModelYear.HOURS; h++) {
            assertThat(plane.planeWm2(h, 0, 0)).isZero();
            if (SUN.horizontalWm2(h) == 0) {
                // Sky seen 0.75, ground seen 0.25 of albedo 0.2.
                assertThat(plane.planeWm2(h, 8, 0)).isCloseTo(8 * (0.75 + 0.25 * 0.2), within(1e-9));
            }
        }
    }

    @Test
    void theBarelyRisenSunMakesNoAbsurdNoon() {
        PlaneYear east = SUN.onto(mount(90, 90));
        for (int h = 0; h < ModelYear.HOURS; h++) {
            double ghi = Math.max(30, 0.6 * SUN.horizontalWm2(h));
            assertThat(east.planeWm2(h, ghi, 0)).isBetween(0.0, 1200.0);
        }
    }

    @Test
    void dirtTakesItsShare() {
        PanelMount clean = new PanelMount(35, 180, 0, 0.2);
        PanelMount dirty = new PanelMount(35, 180, 0.05, 0.2);
        int noon = 12;
        assertThat(SUN.onto(dirty).planeWm2(noon, 400, 100))
                .isCloseTo(0.95 * SUN.onto(clean).planeWm2(noon, 400, 100), within(1e-9));
    }
}
