package tideover.engine.site;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.Locale;
import org.jspecify.annotations.Nullable;
import tideover.engine.quantity.ModelYear;
import tideover.engine.quantity.Require;
import tideover.engine.quantity.Series;
import tideover.engine.sun.SunYear;

/**
 * Climate from twelve figures of sun and twelve of temperature that someone found for a place. What else the generator
 * needs is taken as usual: spreads and correlations are means over the stations of the table (docs/models.md), with the
 * seasons swapped south of the equator. Weather from it is rougher than a station's.
 *
 * @param climate  null where a figure is impossible
 * @param problems what is impossible, month by month; empty where nothing is
 */
public record TypedClimate(@Nullable MonthlyClimate climate, List<Impossible> problems) {
    /** Lower monthly means are not met anywhere that sun is counted on. Common practice, no source. */
    static final double LEAST_CLEARNESS = 0.08;

    /** The clearest months of the clearest deserts reach about .80. Common practice, no source. */
    static final double MOST_CLEARNESS = 0.85;

    /** Below this extraterrestrial irradiation a clearness index says nothing, kWh/m2 a day: polar night and its edges. */
    static final double LEAST_OUTSIDE_KWH_M2 = 0.2;

    /** Light that twilight and refraction may give in such a month, kWh/m2 a day. Common practice, no source. */
    static final double TWILIGHT_KWH_M2 = 0.1;

    private static final double COLDEST_SD_DEG_C = 4.8;
    private static final double WARMEST_SD_DEG_C = 2.2;
    private static final double USUAL_RANGE_DEG_C = 10;
    private static final double[] USUAL_RANGE_PER_SCORE_DEG_C = {1.5, 2.2, 1.5, 2.0};

    private static final double COLDEST_DEG_C = -70;
    private static final double HOTTEST_DEG_C = 60;

    /**
     * One figure that cannot be.
     *
     * @param month    from 0
     * @param found    the figure, or what follows from it, in words
     * @param expected what it should be, in words
     */
    public record Impossible(int month, String found, String expected) {
        /** Such as "jun: clearness 1.31 (9.10 h of 6.95 above the air), expected 0.08 to 0.85". */
        public String sentence() {
            return ModelYear.monthName(month) + ": " + found + ", expected " + expected;
        }
    }

    public TypedClimate {
        problems = List.copyOf(problems);
    }

    /** With the usual daily range about the mean temperatures. */
    public static TypedClimate of(Place place, Series peakSunHours, Series meanDegC, String source) {
        return of(place, peakSunHours, meanDegC, null, null, source);
    }

    /**
     * All series have twelve values, January first.
     *
     * @param peakSunHours mean daily irradiation on the horizontal, kWh/m2 (hours of 1000 W/m2)
     * @param meanDegC     mean temperature
     * @param lowDegC      mean of daily lowest; null for 5 K below the mean
     * @param highDegC     mean of daily highest; null for 5 K above the mean
     * @param source       where the figures are from
     */
    public static TypedClimate of(
            Place place,
            Series peakSunHours,
            Series meanDegC,
            @Nullable Series lowDegC,
            @Nullable Series highDegC,
            String source) {
        Series low = lowDegC == null ? shifted(meanDegC, -USUAL_RANGE_DEG_C / 2) : lowDegC;
        Series high = highDegC == null ? shifted(meanDegC, USUAL_RANGE_DEG_C / 2) : highDegC;
        for (Series monthly : List.of(peakSunHours, meanDegC, low, high)) {
            Require.within(12, 12, "months of a monthly series", monthly.length());
        }
        SunYear sun = SunYear.at(place.latDeg(), place.lonDeg(), place.zoneH());
        List<Impossible> problems = new ArrayList<>();
        double[] clearness = new double[12];
        for (int month = 0; month < 12; month++) {
            double outsideKwhM2 = outsideKwhM2(sun, month);
            clearness[month] = outsideKwhM2 < LEAST_OUTSIDE_KWH_M2 ? Double.NaN : peakSunHours.at(month) / outsideKwhM2;
            checkSun(problems, month, peakSunHours.at(month), outsideKwhM2);
            checkTemperature(problems, month, low.at(month), meanDegC.at(month), high.at(month));
        }
        if (!problems.isEmpty()) {
            return new TypedClimate(null, problems);
        }
        double[] unknown = new double[12];
        Arrays.fill(unknown, Double.NaN);
        boolean north = place.latDeg() >= 0;
        double[] perScore = USUAL_RANGE_PER_SCORE_DEG_C;
        MonthlyClimate climate = new MonthlyClimate(
                peakSunHours,
                Series.of(clearness),
                Series.of(unknown),
                DailyRecipe.USUAL_CLEARNESS_LAG1,
                Collections.nCopies(12, false),
                low,
                high,
                meanDegC,
                anomalySd(meanDegC),
                DailyRecipe.USUAL_ANOMALY_LAG1,
                DailyRecipe.usualWithSun(place.latDeg()),
                north ? Series.of(perScore) : Series.of(perScore[2], perScore[3], perScore[0], perScore[1]),
                Double.NaN,
                "twelve typed monthly figures (" + source + "), which is rougher than a station's record");
        return new TypedClimate(climate, problems);
    }

    private static double outsideKwhM2(SunYear sun, int month) {
        double sum = 0;
        for (int day = 0; day < ModelYear.daysIn(month); day++) {
            sum += sun.dayKwhM2(ModelYear.firstDay(month) + day);
        }
        return sum / ModelYear.daysIn(month);
    }

    private static void checkSun(List<Impossible> problems, int month, double hours, double outsideKwhM2) {
        if (outsideKwhM2 < LEAST_OUTSIDE_KWH_M2) {
            double most = MOST_CLEARNESS * outsideKwhM2 + TWILIGHT_KWH_M2;
            if (!(hours >= 0 && hours <= most)) {
                problems.add(new Impossible(
                        month,
                        words("%.2f peak sun hours with the sun hardly up", hours),
                        words("at most %.2f", most)));
            }
            return;
        }
        double clearness = hours / outsideKwhM2;
        if (!(clearness >= LEAST_CLEARNESS && clearness <= MOST_CLEARNESS)) {
            problems.add(new Impossible(
                    month,
                    words(
                            "clearness %.2f (%.2f peak sun hours on the horizontal, of %.2f above the air)",
                            clearness, hours, outsideKwhM2),
                    words(
                            "%.2f to %.2f (%.2f to %.2f peak sun hours)",
                            LEAST_CLEARNESS,
                            MOST_CLEARNESS,
                            LEAST_CLEARNESS * outsideKwhM2,
                            MOST_CLEARNESS * outsideKwhM2)));
        }
    }

    private static void checkTemperature(List<Impossible> problems, int month, double low, double mean, double high) {
        if (!(mean >= COLDEST_DEG_C && mean <= HOTTEST_DEG_C)) {
            problems.add(new Impossible(
                    month,
                    words("mean temperature %.1f degC", mean),
                    words("%.0f to %.0f degC", COLDEST_DEG_C, HOTTEST_DEG_C)));
        } else if (!(low <= mean && mean <= high && high - low <= USUAL_RANGE_DEG_C * 4)) {
            problems.add(new Impossible(
                    month,
                    words("lowest %.1f, mean %.1f, highest %.1f degC", low, mean, high),
                    "the mean between the other two, at most 40 K apart"));
        }
    }

    /** From the coldest month to the warmest on a straight line over their means; the warmest month's where all are alike. */
    private static Series anomalySd(Series meanDegC) {
        double coldest = Double.POSITIVE_INFINITY;
        double warmest = Double.NEGATIVE_INFINITY;
        for (int month = 0; month < 12; month++) {
            coldest = Math.min(coldest, meanDegC.at(month));
            warmest = Math.max(warmest, meanDegC.at(month));
        }
        double[] sd = new double[12];
        for (int month = 0; month < 12; month++) {
            double cold = warmest > coldest ? (warmest - meanDegC.at(month)) / (warmest - coldest) : 0;
            sd[month] = WARMEST_SD_DEG_C + cold * (COLDEST_SD_DEG_C - WARMEST_SD_DEG_C);
        }
        return Series.of(sd);
    }

    private static Series shifted(Series values, double by) {
        double[] shifted = values.toArray();
        for (int i = 0; i < shifted.length; i++) {
            shifted[i] += by;
        }
        return Series.owning(shifted);
    }

    private static String words(String format, Object... figures) {
        return String.format(Locale.ROOT, format, figures);
    }
}
