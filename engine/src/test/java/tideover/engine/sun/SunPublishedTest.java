package tideover.engine.sun;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.time.Duration;
import java.time.Instant;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import tideover.engine.quantity.Units;

/** Sun position, distance and time against printed figures. */
class SunPublishedTest {
    /**
     * Worked example of Reda &amp; Andreas, NREL/TP-560-34302 (2003, revised 2008), appendix A.5: 17 October 2003, 12:30:30 local
     * time seven hours behind universal, 1830.14 m, 820 mbar, 11 degC, delta T 67 s, refraction at sunrise 0.5667 deg.
     */
    private static final Instant NREL = Instant.parse("2003-10-17T19:30:30Z");

    private static final double NREL_LAT = 39.742476;
    private static final double NREL_LON = -105.1786;

    private static SunPosition nrel() {
        return SunPosition.apparent(NREL, NREL_LAT, NREL_LON, 1830.14, 820, 11, 67);
    }

    @Test
    void zenithAndAzimuthMatchTheNrelExample() {
        assertThat(nrel().zenithDeg()).isCloseTo(50.11162, within(1e-5));
        assertThat(nrel().azimuthDeg()).isCloseTo(194.34024, within(1e-5));
    }

    /** The same report: surface 30 deg from the horizontal, azimuth rotation -10 deg from south, that is, 10 deg eastward. */
    @Test
    void incidenceMatchesTheNrelExample() {
        Direction toSun = Direction.of(nrel().zenithDeg(), nrel().azimuthDeg());
        double cosine = Direction.of(30, 170).cosineTo(toSun);
        assertThat(Units.degrees(StrictMath.acos(cosine))).isCloseTo(25.18700, within(1e-5));
    }

    /**
     * The same report's geocentric declination, distance and equation of time (all three from memory), which the almanac's short
     * formulas meet as far as they claim to: 0.01 deg, a ten-thousandth of the distance, some seconds.
     */
    @Test
    void almanacMeetsTheNrelExample() {
        Almanac almanac = almanacAt(NREL);
        assertThat(Units.degrees(almanac.declinationRad())).isCloseTo(-9.31434, within(0.01));
        assertThat(almanac.distanceAu()).isCloseTo(0.9965422974, within(1e-4));
        assertThat(almanac.equationOfTimeMin()).isCloseTo(14.6415, within(0.1));
    }

    /** Three instants worked out with the low-order series of Meeus, true zenith, good to 0.02 deg. */
    @ParameterizedTest
    @CsvSource({
        "2026-06-21T12:00:00Z, 40,   0,  23.43805, 16.5664, 178.532",
        "2026-12-21T17:00:00Z, 40, -75, -23.43774, 63.4392, 180.467",
        "2026-03-20T09:00:00Z,  0,  30,  -0.09271, 16.8677,  90.320",
    })
    void quickPathMeetsThreeMoreInstants(
            Instant time, double lat, double lon, double declination, double zenith, double azimuth) {
        SunPosition sun = SunPosition.quick(time, lat, lon);
        assertThat(sun.zenithDeg()).isCloseTo(zenith, within(0.02));
        // An error across the sky of 0.02 deg turns the azimuth by that over the sine of the zenith angle.
        double slack = 0.02 / StrictMath.sin(Units.radians(zenith));
        assertThat(sun.azimuthDeg()).isCloseTo(azimuth, within(slack));
        assertThat(Units.degrees(almanacAt(time).declinationRad())).isCloseTo(declination, within(0.02));
    }

    /** What the shorter series are worth at the NREL instant, n = 290: why the program uses neither for the hour's geometry. */
    @Test
    void spencerAndCooperMissTheNrelExampleAsKnown() {
        assertThat(TextbookSun.spencerDeclinationDeg(290)).isCloseTo(-8.959, within(0.001));
        assertThat(TextbookSun.spencerEquationOfTimeMin(290)).isCloseTo(14.82, within(0.01));
        assertThat(TextbookSun.cooperDeclinationDeg(290)).isCloseTo(-10.330, within(0.001));
    }

    /** Duffie &amp; Beckman, example 1.6.1 (from memory): 13 February is printed as -14 deg. */
    @Test
    void cooperDeclinationMatchesTheTextbook() {
        assertThat(TextbookSun.cooperDeclinationDeg(44)).isCloseTo(-13.95, within(0.01));
    }

    /** Duffie &amp; Beckman, example 1.6.1: latitude 43, slope 45 facing 15 deg west of south, 10:30; printed 35 deg. */
    @Test
    void incidenceMatchesTheTextbook() {
        double zenith = TextbookSun.zenithDeg(43, -14, -22.5);
        double azimuth = 180 + TextbookSun.azimuthFromSouthDeg(43, -14, -22.5);
        double cosine = Direction.of(45, 180 + 15).cosineTo(Direction.of(zenith, azimuth));
        assertThat(cosine).isCloseTo(0.81738, within(1e-5));
        assertThat(Units.degrees(StrictMath.acos(cosine))).isCloseTo(35.18, within(0.1));
    }

    /** Duffie &amp; Beckman, example 1.6.2: latitude 43, 13 February 9:30 and 1 July 18:30; printed 66.5, -40.0 and 79.6, 112.0. */
    @Test
    void zenithAndAzimuthMatchTheTextbook() {
        assertThat(TextbookSun.zenithDeg(43, -14, -37.5)).isCloseTo(66.55, within(0.1));
        assertThat(TextbookSun.azimuthFromSouthDeg(43, -14, -37.5)).isCloseTo(-40.08, within(0.1));
        double july = TextbookSun.cooperDeclinationDeg(182);
        assertThat(TextbookSun.zenithDeg(43, july, 97.5)).isCloseTo(79.63, within(0.1));
        assertThat(TextbookSun.azimuthFromSouthDeg(43, july, 97.5)).isCloseTo(112.04, within(0.1));
    }

    /**
     * Duffie &amp; Beckman, example 1.5.1: 89.4 W, six hours behind, 3 February, 10:30 standard is 10:19 solar. By Spencer's
     * series to 0.1 min; by the program's noon to 0.5 min, which is what the two series differ by.
     */
    @Test
    void solarTimeMatchesTheTextbook() {
        double offsetMin = 4 * (90 - 89.4) + TextbookSun.spencerEquationOfTimeMin(34);
        assertThat(offsetMin).isCloseTo(-11.09, within(0.1));
        double noonHour = SunYear.at(43, -89.4, -6).solarNoonHour(33);
        assertThat((12 - noonHour) * 60).isCloseTo(-11.09, within(0.5));
    }

    /** Spencer's equation of time recomputed, minutes; the almanac's, at noon of the reference year, keeps within a minute. */
    @ParameterizedTest
    @CsvSource({
        "1, -2.90",
        "41, -14.17",
        "80, -7.86",
        "106, 0.02",
        "135, 3.94",
        "165, 0.19",
        "207, -6.58",
        "246, 0.29",
        "305, 16.39",
        "355, 2.17"
    })
    void equationOfTime(int n, double minutes) {
        assertThat(TextbookSun.spencerEquationOfTimeMin(n)).isCloseTo(minutes, within(0.01));
        Instant noon = Instant.parse("2025-01-01T12:00:00Z").plus(Duration.ofDays(n - 1));
        assertThat(almanacAt(noon).equationOfTimeMin()).isCloseTo(minutes, within(1.0));
    }

    /** Both printed orbit factors at perihelion and aphelion; the almanac lies within 0.3 % of each, nearer to Spencer's. */
    @ParameterizedTest
    @CsvSource({"3, 1.03296, 1.03508", "185, 0.96703, 0.96659"})
    void orbitFactor(int n, double simple, double spencer) {
        assertThat(TextbookSun.orbitFactor(n)).isCloseTo(simple, within(1e-5));
        assertThat(TextbookSun.spencerOrbitFactor(n)).isCloseTo(spencer, within(1e-5));
        double ours = Almanac.of(n + 365.25).normalWm2() / Almanac.SOLAR_CONSTANT_WM2;
        assertThat(ours).isCloseTo(simple, within(0.003)).isCloseTo(spencer, within(0.0015));
    }

    /** Day length 2/15 acos(-tan lat tan declination) with Cooper's declination, hours, n = 80, 172, 264, 355. */
    @ParameterizedTest
    @CsvSource({
        "20, 11.98, 13.21, 11.99, 10.79",
        "40, 11.95, 14.85, 11.98, 9.15",
        "50, 11.94, 16.15, 11.97, 7.85",
        "60, 11.91, 18.49, 11.95, 5.51"
    })
    void dayLength(double lat, double march, double june, double september, double december) {
        assertThat(dayHours(lat, 80)).isCloseTo(march, within(0.01));
        assertThat(dayHours(lat, 172)).isCloseTo(june, within(0.01));
        assertThat(dayHours(lat, 264)).isCloseTo(september, within(0.01));
        assertThat(dayHours(lat, 355)).isCloseTo(december, within(0.01));
    }

    /** Follows from the formula: twelve hours at the equator, mirrored lengths in the two hemispheres, 0 or 24 past the circle. */
    @Test
    void dayLengthKeepsItsSymmetry() {
        for (int n = 1; n <= 365; n++) {
            assertThat(dayHours(0, n)).isCloseTo(12, within(1e-9));
            assertThat(dayHours(52, n) + dayHours(-52, n)).isCloseTo(24, within(1e-9));
        }
        assertThat(dayHours(80, 172)).isCloseTo(24, within(1e-9));
        assertThat(dayHours(80, 355)).isZero();
        assertThat(dayHours(90, 172)).isCloseTo(24, within(1e-9));
        assertThat(dayHours(-90, 172)).isZero();
    }

    private static double dayHours(double latDeg, int n) {
        return TextbookSun.day(n).sunsetAngleRad(Units.radians(latDeg)) * 24 / Math.PI;
    }

    private static Almanac almanacAt(Instant time) {
        return Almanac.of(
                Duration.between(Instant.parse("2000-01-01T12:00:00Z"), time).toSeconds() / 86_400.0);
    }
}
