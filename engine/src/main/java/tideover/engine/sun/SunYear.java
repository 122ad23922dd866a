package tideover.engine.sun;

/** Geometry of one year at one place; serves every weather year. */
public final class SunYear {
    private SunYear() {}

    /** The year at a place. */
    public static SunYear at(double latDeg, double lonDeg, double zoneH) {
        throw new IllegalStateException();
    }

    /** Mean extraterrestrial irradiance on the horizontal over one hour of the model year, W/m2. */
    public double horizontalWm2(int hour) {
        return 0;
    }

    /** Mean cosine of the zenith angle over the sunlit part of the hour; 0 where the sun is down throughout. */
    public double cosZenith(int hour) {
        return 0;
    }

    /** Extraterrestrial irradiation of one day on the horizontal by the formula of the station table, kWh/m2. */
    public double dayKwhM2(int day) {
        return 0;
    }

    /** Clock hour (local standard time, 0..24, fraction) of solar noon. */
    public double solarNoonHour(int day) {
        return 12;
    }

    /** Clock hour of geometric sunrise, or NaN on a day without one (polar day, polar night). */
    public double sunriseHour(int day) {
        return 6;
    }

    /** The same year seen from a tilted plane. */
    public PlaneYear onto(PanelMount mount) {
        throw new IllegalStateException();
    }
}
