package tideover.engine.site;

import tideover.engine.quantity.ModelYear;
import tideover.engine.quantity.Series;
import tideover.engine.sun.SunYear;

/**
 * Outdoor temperature within the day: lowest at sunrise, highest at 15:00 solar time, running on through midnight. It rises
 * by a quarter sine wave, the day part of Parton &amp; Logan 1981 (Agricultural Meteorology 23, 205; from memory). It falls by
 * {@code (1 - s)^g}, s the share of the way to the next low, which lies close to their exponential but takes any mean,
 * 1/(g + 1): g is chosen by month so that the mean of all hours need not lie half way between lowest and highest.
 *
 * <p>A day keeps its mean only on the average of many: on one that turns cold the evening belongs to the next. Such days
 * also have their lowest hour at midnight, and no hour's middle falls just on sunrise. So the lows, highs and means that the
 * curve is hung on are moved until the month's own come out, once, by trial on {@value #TRIAL_YEARS} years drawn for
 * nothing else.
 */
final class HourlyAir {
    private static final double HIGHEST_AFTER_NOON_H = 3;
    private static final double LONGEST_MORNING_H = 9;
    private static final double SHORTEST_MORNING_H = 3;

    /** Mean height of a quarter sine wave. */
    private static final double RISING_MEAN = 2 / Math.PI;

    private static final double LEAST_FALLING_MEAN = 0.15;
    private static final double MOST_FALLING_MEAN = 0.65;

    private static final int TRIAL_YEARS = 6;
    private static final int TRIALS = 3;
    private static final long TRIAL_SEED = 1981;
    private static final double LEAST_SWING_DEG_C = 2;

    private final MonthlyClimate climate;
    private final double[] lowTimeH = new double[ModelYear.DAYS];
    private final double[] highTimeH = new double[ModelYear.DAYS];
    // For each hour of the model year: the turning point before it, counted 0 low of the day before, 1 its high, 2 low
    // of the day itself and so on; how far it is to the next one, 0..1; the share of the high in its temperature.
    private final int[] turnBefore = new int[ModelYear.HOURS];
    private final double[] done = new double[ModelYear.HOURS];
    private final double[] highShare = new double[ModelYear.HOURS];
    // By month: where the mean is to lie between low and high, and by how much both are moved.
    private final double[] meanShare = new double[12];
    private final double[] lowMovedK = new double[12];
    private final double[] highMovedK = new double[12];

    HourlyAir(MonthlyClimate climate, SunYear sun, DailyRecipe recipe) {
        this.climate = climate;
        for (int month = 0; month < 12; month++) {
            meanShare[month] = tableShare(month);
        }
        for (int day = 0; day < ModelYear.DAYS; day++) {
            lookAtDay(sun, day);
        }
        for (int day = 0; day < ModelYear.DAYS; day++) {
            placeHours(day);
        }
        bend();
        DailySeries trial = recipe.draw(TRIAL_YEARS, TRIAL_SEED);
        for (int i = 0; i < TRIALS; i++) {
            correct(trial);
        }
    }

    /** How far up from the lowest to the highest the month's mean lies. */
    private double tableShare(int month) {
        double range = rangeDegC(month);
        return range > 0 ? (climate.meanDegC().at(month) - climate.lowDegC().at(month)) / range : 0.5;
    }

    private double rangeDegC(int month) {
        return climate.highDegC().at(month) - climate.lowDegC().at(month);
    }

    private void lookAtDay(SunYear sun, int day) {
        double noon = sun.solarNoonHour(day);
        // Where the clock and the sun are half a day apart noon may jump between the ends of the clock day.
        double jump = noon - sun.solarNoonHour(0);
        noon -= jump > 12 ? 24 : jump < -12 ? -24 : 0;
        double sunrise = sun.sunriseHour(day);
        double polar = sun.dayKwhM2(day) > 0 ? LONGEST_MORNING_H : SHORTEST_MORNING_H;
        double morningH = Double.isNaN(sunrise) ? polar : (noon - sunrise + 48) % 24;
        lowTimeH[day] = noon - Math.max(SHORTEST_MORNING_H, Math.min(LONGEST_MORNING_H, morningH));
        highTimeH[day] = noon + HIGHEST_AFTER_NOON_H;
    }

    private void placeHours(int day) {
        double[] turns = new double[6];
        for (int i = 0; i < 3; i++) {
            int near = Math.floorMod(day - 1 + i, ModelYear.DAYS);
            turns[2 * i] = (i - 1) * 24 + lowTimeH[near];
            turns[2 * i + 1] = (i - 1) * 24 + highTimeH[near];
        }
        for (int i = 0; i < 24; i++) {
            double middle = i + 0.5;
            int before = 0;
            while (before < 4 && turns[before + 1] <= middle) {
                before++;
            }
            turnBefore[day * 24 + i] = before;
            done[day * 24 + i] = (middle - turns[before]) / (turns[before + 1] - turns[before]);
        }
    }

    private void bend() {
        for (int hour = 0; hour < ModelYear.HOURS; hour++) {
            int day = hour / 24;
            double risingH = highTimeH[day] - lowTimeH[day];
            double share = meanShare[ModelYear.monthOfDay(day)];
            double wanted = (24 * share - RISING_MEAN * risingH) / (24 - risingH);
            double fallingMean = Math.max(LEAST_FALLING_MEAN, Math.min(MOST_FALLING_MEAN, wanted));
            highShare[hour] = turnBefore[hour] % 2 == 0
                    ? StrictMath.sin(Math.PI / 2 * done[hour])
                    : StrictMath.pow(1 - done[hour], 1 / fallingMean - 1);
        }
    }

    /** Compares months of the trial with what its days were to be, and moves lows, highs and means by the difference. */
    private void correct(DailySeries trial) {
        Series degC = hours(trial);
        double[] lowOff = new double[12];
        double[] highOff = new double[12];
        double[] meanOff = new double[12];
        for (int day = 0; day < trial.days(); day++) {
            int month = ModelYear.monthOfDay(DailySeries.dayOfYear(day));
            double lowest = Double.POSITIVE_INFINITY;
            double highest = Double.NEGATIVE_INFINITY;
            double sum = 0;
            for (int hour = day * 24; hour < day * 24 + 24; hour++) {
                lowest = Math.min(lowest, degC.at(hour));
                highest = Math.max(highest, degC.at(hour));
                sum += degC.at(hour);
            }
            double lowDegC = trial.meanDegC(day) - tableShare(month) * trial.rangeDegC(day);
            lowOff[month] += lowest - lowDegC;
            highOff[month] += highest - lowDegC - trial.rangeDegC(day);
            meanOff[month] += sum / 24 - trial.meanDegC(day);
        }
        for (int month = 0; month < 12; month++) {
            double days = TRIAL_YEARS * ModelYear.daysIn(month);
            double swing = Math.max(LEAST_SWING_DEG_C, rangeDegC(month) + highMovedK[month] - lowMovedK[month]);
            double lowByK = lowOff[month] / days;
            double highByK = highOff[month] / days;
            lowMovedK[month] -= lowByK;
            highMovedK[month] -= highByK;
            // Moving both moves the mean with them; what is left is the shape's to mend.
            double movedByK = (1 - meanShare[month]) * lowByK + meanShare[month] * highByK;
            meanShare[month] -= (meanOff[month] / days - movedByK) / swing;
        }
        bend();
    }

    /** Temperature of every hour of the drawn years, degC. */
    Series hours(DailySeries days) {
        double[] turns = new double[2 * (days.days() + 2)];
        for (int day = -1; day <= days.days(); day++) {
            int month = ModelYear.monthOfDay(DailySeries.dayOfYear(day));
            double lowDegC = days.meanDegC(day) - tableShare(month) * days.rangeDegC(day);
            turns[2 * day + 2] = lowDegC + lowMovedK[month];
            turns[2 * day + 3] = lowDegC + days.rangeDegC(day) + highMovedK[month];
        }
        double[] degC = new double[days.days() * 24];
        for (int hour = 0; hour < degC.length; hour++) {
            int hourOfYear = hour % ModelYear.HOURS;
            int turn = 2 * (hour / 24) + turnBefore[hourOfYear];
            int low = turn + turn % 2;
            int high = turn + 1 - turn % 2;
            degC[hour] = turns[low] + (turns[high] - turns[low]) * highShare[hourOfYear];
        }
        return Series.owning(degC);
    }
}
