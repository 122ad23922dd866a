package tideover.engine.site;

import tideover.engine.quantity.ModelYear;
import tideover.engine.quantity.Series;
import tideover.engine.sun.SunYear;

/**
 * Outdoor temperature within the day: lowest at sunrise, highest at 15:00 solar time, half a cosine wave from each to the
 * next, so that it runs on through midnight (the cosine form of de Wit 1978, Simulation of assimilation, respiration and
 * transpiration of crops; from memory, there with the peak an hour earlier). The wave is raised to a power that differs
 * by month, so that the mean of all hours need not lie half way between lowest and highest.
 *
 * <p>A day keeps its mean only on the average of many: on one that turns cold the evening belongs to the next. Such days
 * also have their lowest hour at midnight, so monthly means of daily extremes come out up to 0.3 K too wide (a test holds
 * them to 0.5).
 */
final class HourlyAir {
    private static final double HIGHEST_AFTER_NOON_H = 3;
    private static final double LONGEST_MORNING_H = 9;
    private static final double SHORTEST_MORNING_H = 3;

    // Mean of the half wave raised to a power g is .5 g^-.42 within 3e-3 for g from 1 to 2; this turns it round.
    private static final double POWER_OF_HALF = 1 / 0.42;
    private static final double LEAST_MEAN_SHARE = 0.3;

    private final MonthlyClimate climate;
    private final double[] lowTimeH = new double[ModelYear.DAYS];
    private final double[] highTimeH = new double[ModelYear.DAYS];
    // For each hour of the model year: the turning point before it, counted 0 low of the day before, 1 its high, 2 low
    // of the day itself and so on, and the share of the high in its temperature (of the low: the rest).
    private final int[] turnBefore = new int[ModelYear.HOURS];
    private final double[] highShare = new double[ModelYear.HOURS];

    HourlyAir(MonthlyClimate climate, SunYear sun) {
        this.climate = climate;
        for (int day = 0; day < ModelYear.DAYS; day++) {
            lookAtDay(sun, day);
        }
        for (int day = 0; day < ModelYear.DAYS; day++) {
            placeHours(day);
        }
    }

    /** How far up from the lowest to the highest the month's mean lies. */
    private double meanShare(int month) {
        double range = climate.highDegC().at(month) - climate.lowDegC().at(month);
        return range > 0 ? (climate.meanDegC().at(month) - climate.lowDegC().at(month)) / range : 0.5;
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
        double share = meanShare(ModelYear.monthOfDay(day));
        double flatter = Math.max(LEAST_MEAN_SHARE, Math.min(share, 1 - share));
        double power = StrictMath.pow(0.5 / flatter, POWER_OF_HALF);
        for (int i = 0; i < 24; i++) {
            double middle = i + 0.5;
            int before = 0;
            while (before < 4 && turns[before + 1] <= middle) {
                before++;
            }
            double done = (middle - turns[before]) / (turns[before + 1] - turns[before]);
            double half = (1 - StrictMath.cos(Math.PI * done)) / 2;
            double wave = before % 2 == 0 ? half : 1 - half;
            turnBefore[day * 24 + i] = before;
            highShare[day * 24 + i] = share <= 0.5 ? StrictMath.pow(wave, power) : 1 - StrictMath.pow(1 - wave, power);
        }
    }

    /** Temperature of every hour of the drawn years, degC. */
    Series hours(DailySeries days) {
        double[] turns = new double[2 * (days.days() + 2)];
        for (int day = -1; day <= days.days(); day++) {
            double share = meanShare(ModelYear.monthOfDay(DailySeries.dayOfYear(day)));
            turns[2 * day + 2] = days.meanDegC(day) - share * days.rangeDegC(day);
            turns[2 * day + 3] = days.meanDegC(day) + (1 - share) * days.rangeDegC(day);
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
