package tideover.engine.site;

import tideover.engine.quantity.ModelYear;
import tideover.engine.quantity.Series;
import tideover.engine.sun.SunYear;

/**
 * Outdoor temperature within the day: lowest at sunrise, highest at 15:00 solar time, half a cosine wave between each and
 * the next, so that it runs on through midnight (the cosine form of de Wit 1978, Simulation of assimilation, respiration
 * and transpiration of crops; from memory, there with the peak an hour earlier). The wave is raised to a power that
 * differs by month, so that the mean of all hours need not lie half way between lowest and highest.
 *
 * <p>The table's lowest and highest are those of calendar days, and on a day that turns cold the lowest hour is the last
 * one. So the lows and highs that the wave is hung on must lie closer together than the table's: the difference, and the
 * power, are found once by trial on {@value #TRIAL_YEARS} years drawn for nothing else.
 */
final class HourlyAir {
    private static final double HIGHEST_AFTER_NOON_H = 3;
    private static final double LONGEST_MORNING_H = 9;
    private static final double SHORTEST_MORNING_H = 3;

    private static final int TRIAL_YEARS = 10;
    private static final long TRIAL_SEED = 1978;
    private static final int TRIALS = 5;
    private static final double LEAST_HUNG_DEG_C = 2;

    // Mean of the half wave raised to a power g is near .5 g^-.42 (3e-3 for g from 1 to 2); this is its inverse.
    private static final double POWER_OF_HALF = 1 / 0.42;

    private final MonthlyClimate climate;
    private final double[] lowTimeH = new double[ModelYear.DAYS];
    private final double[] highTimeH = new double[ModelYear.DAYS];
    // For each hour of the model year: the turning point before it (0 low of the day before, 1 its high, 2 low of the
    // day ...), the plain wave's share of the high there, and that share raised to the month's power.
    private final int[] turnBefore = new int[ModelYear.HOURS];
    private final double[] wave = new double[ModelYear.HOURS];
    private final double[] highShare = new double[ModelYear.HOURS];
    private final double[] meanShare = new double[12];
    private final double[] lowShiftDegC = new double[12];
    private final double[] highShiftDegC = new double[12];

    HourlyAir(MonthlyClimate climate, SunYear sun, DailyRecipe recipe) {
        this.climate = climate;
        for (int day = 0; day < ModelYear.DAYS; day++) {
            lookAtDay(sun, day);
        }
        for (int day = 0; day < ModelYear.DAYS; day++) {
            placeHours(day);
        }
        for (int month = 0; month < 12; month++) {
            meanShare[month] = lowToMean(month);
        }
        bend();
        DailySeries trial = recipe.draw(TRIAL_YEARS, TRIAL_SEED);
        for (int i = 0; i < TRIALS; i++) {
            correct(trial);
        }
    }

    /** How far up from the lowest to the highest the month's mean lies. */
    private double lowToMean(int month) {
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
        double morningH = Double.isNaN(sunrise)
                ? sun.dayKwhM2(day) > 0 ? LONGEST_MORNING_H : SHORTEST_MORNING_H
                : (noon - sunrise + 48) % 24;
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
            double time = i + 0.5;
            int before = 0;
            while (before < 4 && turns[before + 1] <= time) {
                before++;
            }
            double done = (time - turns[before]) / (turns[before + 1] - turns[before]);
            boolean rising = before % 2 == 0;
            double half = (1 - StrictMath.cos(Math.PI * done)) / 2;
            turnBefore[day * 24 + i] = before;
            wave[day * 24 + i] = rising ? half : 1 - half;
        }
    }

    private void bend() {
        for (int hour = 0; hour < ModelYear.HOURS; hour++) {
            double share = meanShare[ModelYear.monthOfDay(hour / 24)];
            double flatter = Math.min(share, 1 - share);
            double power = StrictMath.pow(0.5 / Math.max(0.25, flatter), POWER_OF_HALF);
            highShare[hour] =
                    share <= 0.5 ? StrictMath.pow(wave[hour], power) : 1 - StrictMath.pow(1 - wave[hour], power);
        }
    }

    private void correct(DailySeries trial) {
        Series hours = hours(trial);
        double[] lowOff = new double[12];
        double[] highOff = new double[12];
        double[] meanOff = new double[12];
        for (int day = 0; day < trial.days(); day++) {
            int month = ModelYear.monthOfDay(DailySeries.dayOfYear(day));
            double lowest = Double.POSITIVE_INFINITY;
            double highest = Double.NEGATIVE_INFINITY;
            double sum = 0;
            for (int hour = day * 24; hour < day * 24 + 24; hour++) {
                double degC = hours.at(hour);
                lowest = Math.min(lowest, degC);
                highest = Math.max(highest, degC);
                sum += degC;
            }
            double low = trial.meanDegC(day) - lowToMean(month) * trial.rangeDegC(day);
            lowOff[month] += lowest - low;
            highOff[month] += highest - (low + trial.rangeDegC(day));
            meanOff[month] += sum / 24 - trial.meanDegC(day);
        }
        for (int month = 0; month < 12; month++) {
            int days = TRIAL_YEARS * ModelYear.daysIn(month);
            double hungDegC = rangeDegC(month) + highShiftDegC[month] - lowShiftDegC[month];
            meanShare[month] -= meanOff[month] / days / Math.max(LEAST_HUNG_DEG_C, hungDegC);
            lowShiftDegC[month] -= lowOff[month] / days;
            highShiftDegC[month] -= highOff[month] / days;
        }
        bend();
    }

    /** Temperature of every hour of the drawn years. */
    Series hours(DailySeries days) {
        double[] turns = new double[2 * (days.days() + 2)];
        for (int day = -1; day <= days.days(); day++) {
            int month = ModelYear.monthOfDay(DailySeries.dayOfYear(day));
            double lowDegC = days.meanDegC(day) - lowToMean(month) * days.rangeDegC(day);
            turns[2 * day + 2] = lowDegC + lowShiftDegC[month];
            turns[2 * day + 3] = lowDegC + days.rangeDegC(day) + highShiftDegC[month];
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
