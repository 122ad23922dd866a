package tideover.engine.sun;

import java.time.Instant;
import java.time.ZoneOffset;
import net.e175.klaus.solarpositioning.Grena3;
import net.e175.klaus.solarpositioning.SPA;
import net.e175.klaus.solarpositioning.SolarPosition;

/**
 * Where the centre of the sun's disc stands.
 *
 * <p>Two algorithms, from the solarpositioning library. {@link #apparent} is the full one of Reda &amp; Andreas,
 * NREL/TP-560-34302 (2003, revised 2008), good to 0.0003 deg from the year -2000 to 6000. {@link #quick} is number 3 of
 * Grena 2012 (Solar Energy 86, 1323), good to 0.01 deg from 2010 to 2110, some twenty times faster and without
 * refraction; the year's geometry uses it, and a test holds it to the full one.
 *
 * @param zenithDeg  from straight overhead, 0..180
 * @param azimuthDeg from north through east, 0..360
 */
record SunPosition(double zenithDeg, double azimuthDeg) {

    /** Seconds that terrestrial time runs ahead of universal time in the reference year; 1 s moves the sun 0.00001 deg. */
    static final double REFERENCE_DELTA_T_S = 69;

    /** As seen through the air, so raised by refraction (about 0.5 deg at the horizon). */
    static SunPosition apparent(
            Instant time,
            double latDeg,
            double lonDeg,
            double elevM,
            double pressureHPa,
            double airDegC,
            double deltaTSeconds) {
        return of(SPA.calculateSolarPosition(
                time.atZone(ZoneOffset.UTC), latDeg, lonDeg, elevM, deltaTSeconds, pressureHPa, airDegC));
    }

    /** The same algorithm without the air: what {@link #quick} is compared with. */
    static SunPosition airless(Instant time, double latDeg, double lonDeg, double elevM, double deltaTSeconds) {
        return of(SPA.calculateSolarPosition(time.atZone(ZoneOffset.UTC), latDeg, lonDeg, elevM, deltaTSeconds));
    }

    /** Without refraction, fast. */
    static SunPosition quick(Instant time, double latDeg, double lonDeg) {
        return of(Grena3.calculateSolarPosition(time.atZone(ZoneOffset.UTC), latDeg, lonDeg, REFERENCE_DELTA_T_S));
    }

    private static SunPosition of(SolarPosition position) {
        return new SunPosition(position.zenithAngle(), position.azimuth());
    }
}
