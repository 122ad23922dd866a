package tideover.engine.site;

import java.util.List;
import tideover.engine.quantity.ModelYear;
import tideover.engine.quantity.Series;

/**
 * Temperature of where things stand, from the outdoor air: one first-order lag toward the outdoor temperature plus a
 * steady gain, {@code dT/dt = (outdoor + gain - T) / tau}, solved exactly for outdoor air that is steady within the hour.
 *
 * <p>No heating or cooling is counted on, since the power is out, with one exception: a home that people live in is kept
 * from falling below {@link #HOME_FLOOR_DEG_C} by whatever heat they have. In winter such a room is colder than the heated
 * home of the first hours of an outage; in summer, without cooling, it is as warm as the days. Every figure here is common
 * practice, no source; a thermometer in the room is better.
 */
public final class Room {
    /** Time constants, h: a home's mass, a garage's slab, a shed's boards. Common practice, no source. */
    static final double INDOORS_LAG_H = 48;

    static final double GARAGE_LAG_H = 12;
    static final double SHED_LAG_H = 3;

    /** How much warmer than outdoors they settle, K: sun through glass, people, a wall shared with the home. Common practice, no source. */
    static final double INDOORS_GAIN_K = 4;

    static final double GARAGE_GAIN_K = 3;
    static final double SHED_GAIN_K = 1;

    /** Lowest indoor temperature while people stay. Common practice, no source. */
    static final double HOME_FLOOR_DEG_C = 10;

    /** Lags are run in over so many time constants of the last hours, since the year after the last is the first again. */
    private static final double RUN_IN = 8;

    private Room() {}

    /** Hourly temperature at the end of each hour of the weather years. */
    public static Series degC(RoomKind kind, Weather weather) {
        return switch (kind) {
            case INDOORS -> lagged(weather, INDOORS_LAG_H, INDOORS_GAIN_K, HOME_FLOOR_DEG_C);
            case GARAGE -> lagged(weather, GARAGE_LAG_H, GARAGE_GAIN_K, Double.NEGATIVE_INFINITY);
            case SHED -> lagged(weather, SHED_LAG_H, SHED_GAIN_K, Double.NEGATIVE_INFINITY);
            case OUTDOORS -> weather.airDegC();
        };
    }

    /** The lowest and highest that a temperature goes in some months. */
    public record Extremes(double lowestDegC, double highestDegC) {}

    /**
     * Extremes over all years.
     *
     * @param degC   hourly, through whole model years
     * @param months counted from 0
     */
    public static Extremes extremes(Series degC, List<Integer> months) {
        double lowest = Double.POSITIVE_INFINITY;
        double highest = Double.NEGATIVE_INFINITY;
        for (int hour = 0; hour < degC.length(); hour++) {
            if (months.contains(ModelYear.monthOfDay(hour / 24 % ModelYear.DAYS))) {
                lowest = Math.min(lowest, degC.at(hour));
                highest = Math.max(highest, degC.at(hour));
            }
        }
        return new Extremes(lowest, highest);
    }

    private static Series lagged(Weather weather, double lagH, double gainK, double floorDegC) {
        Series outdoor = weather.airDegC();
        double kept = StrictMath.exp(-1 / lagH);
        double[] degC = new double[weather.hours()];
        int runIn = (int) StrictMath.ceil(RUN_IN * lagH);
        double now = outdoor.at(weather.hours() - runIn) + gainK;
        for (int hour = -runIn; hour < degC.length; hour++) {
            double toward = outdoor.at(Math.floorMod(hour, degC.length)) + gainK;
            now = Math.max(floorDegC, toward + (now - toward) * kept);
            if (hour >= 0) {
                degC[hour] = now;
            }
        }
        return Series.owning(degC);
    }
}
