package tideover.engine.sun;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import tideover.engine.quantity.ModelYear;
import tideover.engine.quantity.RandomStream;
import tideover.engine.quantity.Units;

class PlaneYearTest {
    /** Days from noon of 1 January 2000 to noon of 1 January 2025, universal time. */
    private static final int NOON_2025 = 9132;

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

    /** Dirt is taken off once, by who asks for the light on the cells; the plane itself does not know it. */
    @Test
    void dirtIsNotInThePlane() {
        double clean = SUN.onto(new PanelMount(35, 180, 0, 0.2)).planeWm2(12, 400, 100);
        double dirty = SUN.onto(new PanelMount(35, 180, 0.05, 0.2)).planeWm2(12, 400, 100);
        assertThat(dirty).isEqualTo(clean);
    }

    /**
     * A second road to the beam: the daily factor of the monthly method, which integrates in closed form, against the sum of
     * hours in fine steps on the middle day of each month. All beam, thin enough for the cap at the horizon to leave it alone.
     */
    @ParameterizedTest
    @CsvSource({"30, 30", "40, 40", "40, 60", "43, 60", "50, 70"})
    void beamAgreesWithTheMonthlyMethod(double lat, double tilt) {
        SunYear sun = SunYear.at(lat, -105, -7, 60);
        PlaneYear plane = sun.onto(mount(tilt, 180), new IsotropicSky());
        for (int n : ExtraterrestrialPublishedTest.KLEIN_DAYS) {
            double global = 0;
            double onPlane = 0;
            for (int h = (n - 1) * 24; h < n * 24; h++) {
                double ghi = 0.15 * sun.horizontalWm2(h);
                global += ghi;
                onPlane += plane.planeWm2(h, ghi, 0);
            }
            double factor = MonthlyMethod.beamFactor(lat, tilt, Almanac.of(n - 1 + NOON_2025 + 105.0 / 360));
            assertThat(onPlane / global).isCloseTo(MonthlyMethod.ratio(factor, 0, tilt, 0.2), withinPercentage(0.15));
        }
    }

    /**
     * The two skies over a year of one clearness: within 7 % of each other, and in the two darkest months, on which sizes hang,
     * the one used is the lower (to 1 %), while both stay above an even sky.
     */
    @ParameterizedTest
    @CsvSource({
        "25, 0.25",
        "25, 0.45",
        "25, 0.65",
        "40, 0.25",
        "40, 0.45",
        "40, 0.65",
        "50, 0.25",
        "50, 0.45",
        "50, 0.65"
    })
    void skiesAgreeOverTheYear(double lat, double clearness) {
        SunYear sun = SunYear.at(lat, -105, -7);
        PanelMount mount = mount(lat + 15, 180);
        double[] even = yearAndWinter(sun, sun.onto(mount, new IsotropicSky()), clearness);
        double[] used = yearAndWinter(sun, sun.onto(mount), clearness);
        double[] perez = yearAndWinter(sun, sun.onto(mount, new PerezSky()), clearness);
        assertThat(used[0] / perez[0]).isCloseTo(1, within(0.07));
        assertThat(used[1] / perez[1]).isBetween(0.90, 1.01);
        assertThat(used[0]).isGreaterThan(even[0]);
        assertThat(used[1]).isGreaterThan(even[1]);
    }

    /** Sums over the year, and over December and January. */
    private static double[] yearAndWinter(SunYear sun, PlaneYear plane, double clearness) {
        double[] sums = new double[2];
        for (int h = 0; h < ModelYear.HOURS; h++) {
            double ghi = clearness * sun.horizontalWm2(h);
            double onPlane = plane.planeWm2(h, ghi, ghi * DiffuseFraction.hourly(clearness));
            sums[0] += onPlane;
            int month = ModelYear.monthOfDay(h / 24);
            sums[1] += month == 0 || month == 11 ? onPlane : 0;
        }
        return sums;
    }

    /** Against sixty instants an hour: the year on planes facing any way within 0.1 %, the two dark months within 0.3 %. */
    @ParameterizedTest
    @CsvSource({"0, 90, 90", "25, 60, 180", "40, 90, 270", "50, 90, 0", "64, 64, 180"})
    void moreInstantsMoveLittle(double lat, double tilt, double azimuth) {
        SunYear used = SunYear.at(lat, -100, -7);
        SunYear fine = SunYear.at(lat, -100, -7, 60);
        double[] usedSums = yearAndWinter(used, used.onto(mount(tilt, azimuth)), 0.6);
        double[] fineSums = yearAndWinter(fine, fine.onto(mount(tilt, azimuth)), 0.6);
        assertThat(usedSums[0] / fineSums[0]).isCloseTo(1, within(0.001));
        assertThat(usedSums[1] / fineSums[1]).isCloseTo(1, within(0.003));
    }

    /** The cap on the beam must not touch real weather: a cloudless sky by Haurwitz 1945 at sea level stays under it. */
    @Test
    void aClearDayPassesUncapped() {
        for (double elevation = 2; elevation <= 90; elevation += 1) {
            double cosZenith = StrictMath.sin(Units.radians(elevation));
            Sight sight = Sight.at(1367, cosZenith, cosZenith);
            double ghi = ClearDay.haurwitzWm2(cosZenith, 0.057);
            double beam = ghi * (1 - DiffuseFraction.hourly(ghi / sight.outsideWm2()));
            assertThat(beam).as("elevation %s", elevation).isLessThan(sight.mostDirectWm2());
        }
    }

    @Test
    void facingTheSunGainsAndFacingAwayLoses() {
        double[] flat = yearAndWinter(SUN, SUN.onto(mount(0, 180)), 0.6);
        double[] south = yearAndWinter(SUN, SUN.onto(mount(60, 180)), 0.6);
        double[] north = yearAndWinter(SUN, SUN.onto(mount(60, 0)), 0.6);
        assertThat(south[1]).isGreaterThan(1.5 * flat[1]);
        assertThat(north[1]).isLessThan(0.5 * flat[1]);
        SunYear sydney = SunYear.at(-33.9, 151.2, 10);
        double julyNorth = sydney.onto(mount(45, 0)).planeWm2(190 * 24 + 12, 400, 120);
        double julySouth = sydney.onto(mount(45, 180)).planeWm2(190 * 24 + 12, 400, 120);
        assertThat(julyNorth).isGreaterThan(500);
        assertThat(julySouth).isLessThan(200);
    }

    @Test
    void anyWeatherGivesAFiniteFigureOfAtLeastNothing() {
        RandomStream random = RandomStream.of(7, 0, RandomStream.Purpose.TEST);
        PlaneYear plane = SunYear.at(61.2, -149.9, -9).onto(mount(75, 160));
        for (int h = 0; h < ModelYear.HOURS; h++) {
            double ghi = 1100 * random.nextUniform();
            double diffuse = -50 + 1300 * random.nextUniform(); // also outside 0..ghi, which is held
            assertThat(plane.planeWm2(h, ghi, diffuse)).isBetween(0.0, 3000.0);
        }
        assertThat(plane.planeWm2(12, Double.NaN, 0)).isNaN();
    }
}
