package tideover.engine.site;

import java.util.Arrays;
import java.util.BitSet;
import tideover.engine.quantity.ModelYear;
import tideover.engine.quantity.Require;
import tideover.engine.quantity.Series;
import tideover.engine.sun.SunYear;

/**
 * Days on which snow lies on the panels, by a plain rule: a dark day at or below freezing brings snow that sticks; it
 * stays until a day warm or clear enough to shed it, and at most so many days after the last snow. Steep panels
 * shed by themselves. A covered panel gives nothing.
 *
 * <p>Every threshold is common practice, no source: weather here holds no snowfall, so a dark cold day stands in for one.
 * It marks too many days in dry cold places and too few where lake snow falls in bright weather. Nobody is assumed to
 * sweep the panels.
 */
public final class SnowCover {
    /** Panels steeper than this shed snow as it falls. Common practice, no source. */
    public static final double SHEDDING_TILT_DEG = 55;

    /** Snow sticks on days whose mean is at or below this. Common practice, no source. */
    static final double STICKING_DEG_C = 0;

    /** Days duller than this can be snow days: daily clearness index. Common practice, no source. */
    static final double DULL_CLEARNESS = 0.25;

    /** A day whose highest hour is above this sheds the snow. Common practice, no source. */
    static final double THAWING_DEG_C = 1;

    /** A day clearer than this sheds the snow, be it cold: light through thin snow warms the glass. Common practice, no source. */
    static final double SHEDDING_CLEARNESS = 0.6;

    /** Unless it snows again it is gone, blown off or swept, after so many days. Common practice, no source. */
    static final int LONGEST_DAYS = 7;

    private final BitSet covered;
    private final int days;

    private SnowCover(BitSet covered, int days) {
        this.covered = covered;
        this.days = days;
    }

    /** The days on which panels at this tilt lie under snow; starts bare on the first day. */
    public static SnowCover of(Weather weather, SunYear sun, double tiltDeg) {
        Require.within(0, 90, "tiltDeg", tiltDeg, "deg");
        BitSet covered = new BitSet(weather.days());
        if (tiltDeg > SHEDDING_TILT_DEG) {
            return new SnowCover(covered, weather.days());
        }
        int left = 0;
        for (int day = 0; day < weather.days(); day++) {
            double outsideKwhM2 = sun.dayKwhM2(day % ModelYear.DAYS);
            // With the sun down all day there is no clearness: neither a sign of snow nor a help to shed it.
            double clearness = outsideKwhM2 > 0 ? weather.dayKwhM2(day) / outsideKwhM2 : Double.NaN;
            if (weather.dayMeanDegC(day) <= STICKING_DEG_C && clearness < DULL_CLEARNESS) {
                left = LONGEST_DAYS + 1;
            } else if (highestDegC(weather, day) > THAWING_DEG_C || clearness > SHEDDING_CLEARNESS) {
                left = 0;
            } else if (left > 0) {
                left--;
            }
            covered.set(day, left > 0);
        }
        return new SnowCover(covered, weather.days());
    }

    /** Whether a climate can bring snow at all: its coldest month's mean daily lowest hour is below freezing. */
    public static boolean freezes(MonthlyClimate climate) {
        Series low = climate.lowDegC();
        for (int month = 0; month < low.length(); month++) {
            if (low.at(month) < 0) {
                return true;
            }
        }
        return false;
    }

    /** The same for weather that was read from a file. */
    public static boolean freezes(Weather weather) {
        double[] sum = new double[12];
        for (int day = 0; day < weather.days(); day++) {
            double lowest = Double.POSITIVE_INFINITY;
            for (int hour = day * 24; hour < day * 24 + 24; hour++) {
                lowest = Math.min(lowest, weather.airDegC().at(hour));
            }
            sum[ModelYear.monthOfDay(day % ModelYear.DAYS)] += lowest;
        }
        return Arrays.stream(sum).anyMatch(month -> month < 0);
    }

    /** Days counted through all weather years. */
    public boolean coveredOn(int day) {
        return covered.get(day);
    }

    /** Share of all days, 0..1. */
    public double share() {
        return (double) covered.cardinality() / days;
    }

    private static double highestDegC(Weather weather, int day) {
        double highest = Double.NEGATIVE_INFINITY;
        for (int hour = day * 24; hour < day * 24 + 24; hour++) {
            highest = Math.max(highest, weather.airDegC().at(hour));
        }
        return highest;
    }
}
