package tideover.engine.site;

import org.jspecify.annotations.Nullable;
import tideover.engine.quantity.ModelYear;
import tideover.engine.quantity.RandomStream;
import tideover.engine.quantity.Series;
import tideover.engine.sun.SunYear;

/**
 * From monthly figures to days. Two normal series run through all years without a restart:
 *
 * <pre>
 *   x(d) = p x(d-1) + root(1-p^2) e        y(d) = .95 y(d-1) + root(1-.95^2) n        z = root(.95) x + root(.05) y
 *   a(d) = q a(d-1) + root(1-q^2) t        correlation of t and e within a day: rho
 * </pre>
 *
 * z is the score of the day's sun, turned into clearness by the month's {@link ClearnessCurve}; a is the score of the day's
 * mean temperature. The fast part is the day-to-day series of Graham, Hollands &amp; Unny 1988 (Solar Energy 40, 83); the
 * slow part, which makes long dark spells and unlike years, and the coupling of temperature are own findings from
 * measured records and hourly files (docs/models.md).
 */
final class DailyRecipe {
    private static final double SLOW_SHARE = 0.05;
    private static final double SLOW_LAG1 = 0.95;

    /** Share of the station's own figure where one short sample is blended with the mean of all stations. */
    private static final double OWN_SHARE = 0.5;

    static final double USUAL_CLEARNESS_LAG1 = 0.31;
    static final double USUAL_ANOMALY_LAG1 = 0.72;

    /** Mean over stations of the correlation of temperature with sun, by season, northern hemisphere. */
    private static final double[] USUAL_WITH_SUN = {-0.18, 0.09, 0.25, -0.05};

    /** One month brought up to the spread of many years. */
    private static final double ONE_MONTH_FACTOR = 1.1;

    /** Daily clearness modelled from cloud cover spreads about this much too little. */
    private static final double CLOUD_COVER_FACTOR = 1.15;

    private static final double MOST_CORRELATION = 0.95;
    private static final double LEAST_RANGE_DEG_C = 1;

    private final SunYear sun;
    private final MonthlyClimate climate;
    private final @Nullable ClearnessCurve[] curves = new ClearnessCurve[12];
    private final double fastLag1;
    private final double anomalyLag1;
    private final double[] withSun = new double[4];
    private final double[] rangePerScoreDegC = new double[4];
    private final double[] meanLineDegC;

    DailyRecipe(Place place, MonthlyClimate climate, SunYear sun) {
        this.sun = sun;
        this.climate = climate;
        fastLag1 = blend(climate.clearnessLag1(), USUAL_CLEARNESS_LAG1);
        anomalyLag1 = blend(climate.anomalyLag1(), USUAL_ANOMALY_LAG1);
        Series usualWithSun = usualWithSun(place.latDeg());
        for (int season = 0; season < 4; season++) {
            withSun[season] = blend(climate.anomalyWithSun().at(season), usualWithSun.at(season));
            double perScore = climate.rangePerScoreDegC().at(season);
            rangePerScoreDegC[season] = Double.isNaN(perScore) ? 0 : perScore; // polar night: no sun to follow
        }
        for (int month = 0; month < 12; month++) {
            double mean = climate.clearness().at(month);
            if (!Double.isNaN(mean)) {
                curves[month] = ClearnessCurve.of(mean, spread(climate, month));
            }
        }
        meanLineDegC = linesThroughMonths(climate.meanDegC());
    }

    /** Correlation of temperature with sun where a place has no figure of its own; seasons are swapped south of the equator. */
    static Series usualWithSun(double latDeg) {
        return latDeg >= 0
                ? Series.of(USUAL_WITH_SUN)
                : Series.of(USUAL_WITH_SUN[2], USUAL_WITH_SUN[3], USUAL_WITH_SUN[0], USUAL_WITH_SUN[1]);
    }

    /**
     * Standard deviation of daily clearness over many years: half the station's own month, which fixes it to some 15 %
     * only, half the usual for its mean.
     */
    static double spread(MonthlyClimate climate, int month) {
        double usual = ClearnessCurve.usualSd(climate.clearness().at(month));
        double own = climate.clearnessSd().at(month);
        if (Double.isNaN(own)) {
            return ONE_MONTH_FACTOR * usual;
        }
        double seen = climate.cloudCoverModelled().get(month) ? CLOUD_COVER_FACTOR * own : own;
        return ONE_MONTH_FACTOR * blend(seen, usual);
    }

    private static double blend(double own, double usual) {
        return Double.isNaN(own) ? usual : OWN_SHARE * own + (1 - OWN_SHARE) * usual;
    }

    /**
     * A value for each day on straight lines between the middles of months. The corners are moved until the mean of each
     * month's days is the month's figure, which lines through the figures themselves would cut at peaks and troughs, by
     * a degree inland. A month out of line with its neighbours makes jagged corners.
     */
    static double[] linesThroughMonths(Series monthly) {
        double[] corner = monthly.toArray();
        double[] line = new double[ModelYear.DAYS];
        for (int pass = 0; pass < 60; pass++) {
            for (int day = 0; day < ModelYear.DAYS; day++) {
                line[day] = onLine(corner, day + 0.5);
            }
            for (int month = 0; month < 12; month++) {
                double sum = 0;
                for (int day = 0; day < ModelYear.daysIn(month); day++) {
                    sum += line[ModelYear.firstDay(month) + day];
                }
                corner[month] += monthly.at(month) - sum / ModelYear.daysIn(month);
            }
        }
        return line;
    }

    private static double onLine(double[] corner, double time) {
        int before = 11;
        while (before >= 0 && middleOf(before) > time) {
            before--;
        }
        double start = before < 0 ? middleOf(11) - ModelYear.DAYS : middleOf(before);
        double end = before == 11 ? middleOf(0) + ModelYear.DAYS : middleOf(before + 1);
        double share = (time - start) / (end - start);
        return corner[Math.floorMod(before, 12)] * (1 - share) + corner[Math.floorMod(before + 1, 12)] * share;
    }

    private static double middleOf(int month) {
        return ModelYear.firstDay(month) + ModelYear.daysIn(month) / 2.0;
    }

    /** Correlation that the day's two random parts must share for the scores a and z to correlate by {@code c}. */
    double innovationCorrelation(double c) {
        double p = fastLag1;
        double q = anomalyLag1;
        double rho = c * (1 - q * p) / StrictMath.sqrt((1 - SLOW_SHARE) * (1 - q * q) * (1 - p * p));
        return Math.max(-MOST_CORRELATION, Math.min(MOST_CORRELATION, rho));
    }

    /** Correlation of temperature with sun that a season is to show. */
    double withSun(int season) {
        return withSun[season];
    }

    /** Whether the month of this day has a clearness index; if not its sun is the month's mean every day. */
    boolean hasClearness(int dayOfYear) {
        return curves[ModelYear.monthOfDay(dayOfYear)] != null;
    }

    /** Days of so many years. Year k is the same whatever the number of years. */
    DailySeries draw(int years, long seed) {
        DailySeries series = new DailySeries(years);
        Walker walker = new Walker(RandomStream.of(seed, -1, RandomStream.Purpose.DAILY_WEATHER));
        set(series, -1, walker);
        for (int year = 0; year < years; year++) {
            walker.random = RandomStream.of(seed, year, RandomStream.Purpose.DAILY_WEATHER);
            for (int day = 0; day < ModelYear.DAYS; day++) {
                walker.step(day);
                set(series, year * ModelYear.DAYS + day, walker);
            }
        }
        walker.random = RandomStream.of(seed, years, RandomStream.Purpose.DAILY_WEATHER);
        walker.step(0);
        set(series, series.days(), walker);
        return series;
    }

    private void set(DailySeries series, int day, Walker walker) {
        int dayOfYear = DailySeries.dayOfYear(day);
        int month = ModelYear.monthOfDay(dayOfYear);
        int season = MonthlyClimate.seasonOf(month);
        double score = walker.sunScore();
        ClearnessCurve curve = curves[month];
        double sunKwhM2 = curve == null ? climate.ghiKwhM2Day().at(month) : curve.at(score) * sun.dayKwhM2(dayOfYear);
        double rangeDegC = climate.highDegC().at(month) - climate.lowDegC().at(month);
        series.set(
                day,
                score,
                walker.anomaly,
                sunKwhM2,
                meanLineDegC[dayOfYear] + climate.anomalySdDegC().at(month) * walker.anomaly,
                Math.max(LEAST_RANGE_DEG_C, rangeDegC + rangePerScoreDegC[season] * score));
    }

    /** The state that runs from day to day. */
    private final class Walker {
        private final double fastKick = StrictMath.sqrt(1 - fastLag1 * fastLag1);
        private final double slowKick = StrictMath.sqrt(1 - SLOW_LAG1 * SLOW_LAG1);
        private final double anomalyKick = StrictMath.sqrt(1 - anomalyLag1 * anomalyLag1);
        private final double fastPart = StrictMath.sqrt(1 - SLOW_SHARE);
        private final double slowPart = StrictMath.sqrt(SLOW_SHARE);
        private final double[] shared = new double[4];
        private final double[] unshared = new double[4];

        private RandomStream random;
        private double fast;
        private double slow;
        private double anomaly;

        /** Begins on the last day before the first year, in the long-run spread of all three. */
        Walker(RandomStream random) {
            this.random = random;
            for (int season = 0; season < 4; season++) {
                shared[season] = innovationCorrelation(withSun[season]);
                unshared[season] = StrictMath.sqrt(1 - shared[season] * shared[season]);
            }
            fast = random.nextNormal();
            slow = random.nextNormal();
            double together = shared[0] * anomalyKick * fastKick / (1 - anomalyLag1 * fastLag1);
            anomaly = together * fast + StrictMath.sqrt(1 - together * together) * random.nextNormal();
        }

        void step(int dayOfYear) {
            int season = MonthlyClimate.seasonOf(ModelYear.monthOfDay(dayOfYear));
            double forSun = random.nextNormal();
            fast = fastLag1 * fast + fastKick * forSun;
            slow = SLOW_LAG1 * slow + slowKick * random.nextNormal();
            double forAnomaly = shared[season] * forSun + unshared[season] * random.nextNormal();
            anomaly = anomalyLag1 * anomaly + anomalyKick * forAnomaly;
        }

        double sunScore() {
            return fastPart * fast + slowPart * slow;
        }
    }
}
