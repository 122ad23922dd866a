package tideover.engine.sun;

import java.time.Duration;
import java.time.Instant;
import tideover.engine.quantity.ModelYear;
import tideover.engine.quantity.Require;
import tideover.engine.quantity.Units;

/**
 * Geometry of one year at one place; serves every weather year. The reference year is {@value #REFERENCE_YEAR}, not a leap year;
 * from one year to the next the sun shifts by at most a quarter of a day's step, 0.1 deg of declination.
 *
 * <p>Each hour of local standard time is looked at in {@value #INSTANTS} instants, the middles of its equal parts; the
 * sun counts as up when its centre is above the true horizon (no refraction, no hills). Against sixty instants an hour a
 * year's light on a plane of any tilt moves by less than 0.1 %, up to 66 deg of latitude (measured, and held by a test).
 */
public final class SunYear {
    static final int REFERENCE_YEAR = 2025;
    static final int INSTANTS = 6;

    private static final Instant NOON_2000 = Instant.parse("2000-01-01T12:00:00Z");
    private static final Instant YEAR_START = Instant.parse(REFERENCE_YEAR + "-01-01T00:00:00Z");
    private static final double SECONDS_A_DAY = 86_400;

    private final int instants;
    private final double[] normalWm2 = new double[ModelYear.HOURS];
    private final double[] horizontalWm2 = new double[ModelYear.HOURS];
    private final double[] cosZenith = new double[ModelYear.HOURS];
    private final double[] litShare = new double[ModelYear.HOURS];
    // Unit vectors to the sun, zero while it is down; single precision is a hundred times finer than the sun position.
    private final float[] toEast;
    private final float[] toNorth;
    private final float[] toZenith;
    private final double[] dayKwhM2 = new double[ModelYear.DAYS];
    private final double[] solarNoonHour = new double[ModelYear.DAYS];
    private final double[] sunriseHour = new double[ModelYear.DAYS];
    private final double[] hourShare = new double[ModelYear.HOURS];

    private SunYear(double latDeg, double lonDeg, double zoneH, int instants) {
        this.instants = instants;
        toEast = new float[ModelYear.HOURS * instants];
        toNorth = new float[ModelYear.HOURS * instants];
        toZenith = new float[ModelYear.HOURS * instants];
        Instant start = YEAR_START.minusSeconds(Math.round(zoneH * 3600));
        for (int hour = 0; hour < ModelYear.HOURS; hour++) {
            lookAtHour(hour, start, latDeg, lonDeg);
        }
        for (int day = 0; day < ModelYear.DAYS; day++) {
            lookAtDay(day, start, Units.radians(latDeg), lonDeg, zoneH);
        }
    }

    /**
     * The year at a place.
     *
     * @param latDeg north positive, -90..90
     * @param lonDeg east positive, -180..180
     * @param zoneH  local standard time less universal time, -12..14, fractions allowed
     */
    public static SunYear at(double latDeg, double lonDeg, double zoneH) {
        return at(latDeg, lonDeg, zoneH, INSTANTS);
    }

    /** With another number of instants in the hour, to see what the step is worth. */
    static SunYear at(double latDeg, double lonDeg, double zoneH, int instants) {
        Require.within(-90, 90, "latDeg", latDeg, "deg");
        Require.within(-180, 180, "lonDeg", lonDeg, "deg");
        Require.within(-12, 14, "zoneH", zoneH, "h");
        Require.within(1, 60, "instants", instants);
        return new SunYear(latDeg, lonDeg, zoneH, instants);
    }

    private void lookAtHour(int hour, Instant start, double latDeg, double lonDeg) {
        Instant hourStart = start.plusSeconds(hour * 3600L);
        double distanceAu = Almanac.distanceAuOn(daysSince2000(hourStart.plusSeconds(1800)));
        double sum = 0;
        int lit = 0;
        for (int i = 0; i < instants; i++) {
            Instant time = hourStart.plusMillis(Math.round(3_600_000 * (i + 0.5) / instants));
            SunPosition sun = SunPosition.quick(time, latDeg, lonDeg);
            if (sun.zenithDeg() < 90) {
                Direction toSun = Direction.of(sun.zenithDeg(), sun.azimuthDeg());
                int at = hour * instants + i;
                toEast[at] = (float) toSun.east();
                toNorth[at] = (float) toSun.north();
                toZenith[at] = (float) toSun.up();
                sum += toZenith[at]; // as stored, so that a flat plane's beam ratio is 1 to the last digit
                lit++;
            }
        }
        normalWm2[hour] = Almanac.SOLAR_CONSTANT_WM2 / (distanceAu * distanceAu);
        horizontalWm2[hour] = normalWm2[hour] * sum / instants;
        cosZenith[hour] = lit == 0 ? 0 : sum / lit;
        litShare[hour] = (double) lit / instants;
    }

    private void lookAtDay(int day, Instant start, double latRad, double lonDeg, double zoneH) {
        // Days counted as the station table counts them, from 1, in a year a quarter of a day on from 2001.
        dayKwhM2[day] = Almanac.of(day + 1 + 365.25).dayKwhM2(latRad);
        Almanac noon = Almanac.of(daysSince2000(start.plusSeconds(day * 86_400L + 43_200)));
        double noonHour = 12 + zoneH - lonDeg / 15 - noon.equationOfTimeMin() / 60;
        solarNoonHour[day] = onTheClock(noonHour);
        double halfDayRad = noon.sunsetAngleRad(latRad);
        sunriseHour[day] = halfDayRad <= 0 || halfDayRad >= Math.PI
                ? Double.NaN
                : onTheClock(noonHour - halfDayRad * (12 / Math.PI));
        spread(day, DayShape.of(halfDayRad));
    }

    /** Fills the shares of one clock day: extraterrestrial light by the hour, bent by the day shape, brought to a sum of 1. */
    private void spread(int day, DayShape shape) {
        double sum = 0;
        for (int hour = day * 24; hour < day * 24 + 24; hour++) {
            double hourAngleRad = (hour - day * 24 + 0.5 - solarNoonHour[day]) * (Math.PI / 12);
            hourShare[hour] = horizontalWm2[hour] == 0 ? 0 : horizontalWm2[hour] * shape.fullness(hourAngleRad);
            sum += hourShare[hour];
        }
        if (sum > 0) {
            for (int hour = day * 24; hour < day * 24 + 24; hour++) {
                hourShare[hour] /= sum;
            }
        }
    }

    private static double daysSince2000(Instant time) {
        return Duration.between(NOON_2000, time).getSeconds() / SECONDS_A_DAY;
    }

    private static double onTheClock(double hour) {
        double wrapped = hour % 24;
        return wrapped < 0 ? wrapped + 24 : wrapped;
    }

    /** Mean extraterrestrial irradiance on the horizontal over one hour of the model year, W/m2 (solar constant 1367). */
    public double horizontalWm2(int hour) {
        return horizontalWm2[hour];
    }

    /** Mean cosine of the zenith angle over the sunlit part of the hour; 0 where the sun is down throughout. */
    public double cosZenith(int hour) {
        return cosZenith[hour];
    }

    /**
     * Extraterrestrial irradiation of one day on the horizontal by the formula of the station table, kWh/m2: the low-precision
     * sun of the Astronomical Almanac (Michalsky 1988), one declination for the day, solar constant 1367 W/m2. Sums of
     * {@link #horizontalWm2} differ from it a little, since there the declination moves within the day.
     *
     * @param day from 0
     */
    public double dayKwhM2(int day) {
        return dayKwhM2[day];
    }

    /**
     * Share of the day's global irradiation that falls in this hour in the long-term mean (Collares-Pereira &amp; Rabl 1979,
     * brought to a sum of 1 over the clock day); all 0 on a day without sun.
     */
    public double hourShare(int hour) {
        return hourShare[hour];
    }

    /**
     * Clock hour (local standard time, 0..24, fraction) of solar noon. Where the zone is far from the longitude it is
     * wrapped to the same clock day.
     */
    public double solarNoonHour(int day) {
        return solarNoonHour[day];
    }

    /**
     * Clock hour of geometric sunrise (centre of the disc, no refraction), or NaN on a day without one (polar day, polar
     * night). Wrapped to 0..24 like the noon, so near the midnight sun it may be a late evening hour.
     */
    public double sunriseHour(int day) {
        return sunriseHour[day];
    }

    /** The same year seen from a tilted plane. */
    public PlaneYear onto(PanelMount mount) {
        return onto(mount, new HdkrSky());
    }

    /** With another sky, for comparison. */
    PlaneYear onto(PanelMount mount, SkyModel sky) {
        Direction facing = Direction.of(mount.tiltDeg(), mount.azimuthDeg());
        Sight[] sights = new Sight[ModelYear.HOURS];
        for (int hour = 0; hour < ModelYear.HOURS; hour++) {
            if (litShare[hour] > 0) {
                double onPlane = 0;
                for (int at = hour * instants; at < (hour + 1) * instants; at++) {
                    onPlane += Math.max(0, facing.cosineTo(toEast[at], toNorth[at], toZenith[at]));
                }
                double lit = litShare[hour] * instants;
                sights[hour] = Sight.over(normalWm2[hour], litShare[hour], cosZenith[hour], onPlane / lit);
            } else {
                sights[hour] = Sight.DOWN;
            }
        }
        return new PlaneYear(mount, sky, sights);
    }
}
