package tideover.engine.site;

import tideover.engine.quantity.ModelYear;
import tideover.engine.quantity.RandomStream;
import tideover.engine.quantity.Units;
import tideover.engine.sun.DiffuseFraction;
import tideover.engine.sun.SunYear;

/**
 * Spreads a day's irradiation over its hours. The hourly clearness index is a trend over the day plus a disturbance that
 * remembers the hour before, held between a floor and what the clearest air lets through; the sum over the day is kept.
 *
 * <p>The trend is the long-term shape of the day by Collares-Pereira &amp; Rabl ({@link SunYear#hourShare}). The disturbance
 * follows Graham &amp; Hollands 1990 (Solar Energy 44, 333): standard deviation {@code .16 sin(pi Kt / .90)} (from memory),
 * lag-1 correlation .54 +- .14 (their abstract). It is added, not multiplied, and normal, where theirs is bent to a beta
 * distribution; the bounds do the bending here. One object serves one thread: it keeps a working row.
 */
final class HourlySun {
    /**
     * Memory of the disturbance before the day's own mean is taken out of it. Taking the mean out lowers the correlation that
     * can be seen; with this value what is seen comes out inside the published range (a test holds it).
     */
    private static final double LAG1 = 0.70;

    private static final double KICK = StrictMath.sqrt(1 - LAG1 * LAG1);
    private static final double SPREAD = 0.16;
    private static final double SPREAD_ENDS_AT = 0.90;
    private static final double MOST_SPREAD_FACTOR = 3;

    private static final double FLOOR = 0.01;

    // Highest hourly clearness, .85 exp(-.055 / sin h): own fit to the 99th percentile by sun height h in four hourly
    // files (Wilcox & Marion 2008): .80 with the sun overhead, .50 at 6 deg.
    private static final double CLEAREST = 0.85;
    private static final double CLEAREST_PER_AIR_MASS = 0.055;
    private static final double LOWEST_SINE = 0.05;

    /** How far the cap stands above the mean of a day that is itself clearer than the cap. */
    private static final double ROOM_ABOVE = 0.03;

    private final double[] outsideWm2 = new double[ModelYear.HOURS];
    private final double[] trend = new double[ModelYear.HOURS];
    private final double[] cap = new double[ModelYear.HOURS];
    private final double[] outsideWh = new double[ModelYear.DAYS];
    private final double[] capMean = new double[ModelYear.DAYS];
    private final double[] spreadFactor = new double[ModelYear.DAYS];
    private final int[] noonHour = new int[ModelYear.DAYS];
    private final double[] clearness = new double[24];

    HourlySun(SunYear sun) {
        for (int day = 0; day < ModelYear.DAYS; day++) {
            noonHour[day] = (int) Math.max(1, Math.min(22, sun.solarNoonHour(day)));
            lookAtDay(sun, day);
        }
    }

    private void lookAtDay(SunYear sun, int day) {
        double capWh = 0;
        for (int hour = day * 24; hour < day * 24 + 24; hour++) {
            outsideWm2[hour] = sun.horizontalWm2(hour);
            outsideWh[day] += outsideWm2[hour];
        }
        for (int hour = day * 24; hour < day * 24 + 24; hour++) {
            if (outsideWm2[hour] > 0) {
                trend[hour] = sun.hourShare(hour) * outsideWh[day] / outsideWm2[hour];
                cap[hour] =
                        CLEAREST * StrictMath.exp(-CLEAREST_PER_AIR_MASS / Math.max(LOWEST_SINE, sun.cosZenith(hour)));
                capWh += cap[hour] * outsideWm2[hour];
            }
        }
        if (outsideWh[day] > 0) {
            capMean[day] = capWh / outsideWh[day];
            spreadFactor[day] = spreadFactor(day);
        }
    }

    /** What the disturbance must be widened by, so that it has its spread after its weighted mean over the day is taken out. */
    private double spreadFactor(int day) {
        double[] alike = new double[24];
        for (int apart = 0; apart < 24; apart++) {
            alike[apart] = StrictMath.pow(LAG1, apart);
        }
        double meanSquare = 0;
        for (int i = day * 24; i < day * 24 + 24; i++) {
            for (int j = day * 24; j < day * 24 + 24; j++) {
                meanSquare += outsideWm2[i] * outsideWm2[j] * alike[Math.abs(i - j)];
            }
        }
        meanSquare /= outsideWh[day] * outsideWh[day];
        return Math.min(MOST_SPREAD_FACTOR, 1 / StrictMath.sqrt(Math.max(1e-9, 1 - meanSquare)));
    }

    /**
     * Writes the 24 hours of one day.
     *
     * @param hasClearness false where the month has no clearness index: then all light is sky light about noon
     * @param from         index of the day's first hour in the arrays
     */
    void spread(
            int dayOfYear,
            double dayKwhM2,
            boolean hasClearness,
            RandomStream random,
            double[] ghiWm2,
            double[] diffuseWm2,
            int from) {
        double dayWh = dayKwhM2 * Units.KILO;
        if (hasClearness && outsideWh[dayOfYear] > 0) {
            drawClearness(dayOfYear, dayWh, random);
            for (int i = 0; i < 24; i++) {
                ghiWm2[from + i] = clearness[i] * outsideWm2[dayOfYear * 24 + i];
                diffuseWm2[from + i] = ghiWm2[from + i] * DiffuseFraction.hourly(clearness[i]);
            }
        } else {
            // A quarter, a half and a quarter of it in the three hours about noon: twilight and a sun on the horizon.
            int noon = from + noonHour[dayOfYear];
            ghiWm2[noon - 1] = dayWh / 4;
            ghiWm2[noon] = dayWh / 2;
            ghiWm2[noon + 1] = dayWh / 4;
            System.arraycopy(ghiWm2, from, diffuseWm2, from, 24);
        }
    }

    private void drawClearness(int dayOfYear, double dayWh, RandomStream random) {
        int first = dayOfYear * 24;
        double mean = dayWh / outsideWh[dayOfYear];
        double inside = Math.max(0, Math.min(1, mean / SPREAD_ENDS_AT));
        double sd = spreadFactor[dayOfYear] * SPREAD * StrictMath.sin(Math.PI * inside);
        double disturbance = random.nextNormal();
        double disturbanceWh = 0;
        for (int i = 0; i < 24; i++) {
            clearness[i] = 0;
            if (outsideWm2[first + i] > 0) {
                clearness[i] = disturbance;
                disturbanceWh += disturbance * outsideWm2[first + i];
                disturbance = LAG1 * disturbance + KICK * random.nextNormal();
            }
        }
        double disturbanceMean = disturbanceWh / outsideWh[dayOfYear];
        double lift = Math.max(1, (mean + ROOM_ABOVE) / capMean[dayOfYear]);
        double floor = Math.min(FLOOR, mean / 2);
        double missingWh = dayWh;
        double upWh = 0;
        double downWh = 0;
        for (int i = 0; i < 24; i++) {
            double outside = outsideWm2[first + i];
            if (outside > 0) {
                double most = cap[first + i] * lift;
                double wanted = mean * trend[first + i] + sd * (clearness[i] - disturbanceMean);
                clearness[i] = Math.max(floor, Math.min(most, wanted));
                missingWh -= clearness[i] * outside;
                upWh += (most - clearness[i]) * outside;
                downWh += (clearness[i] - floor) * outside;
            }
        }
        // What the bounds cut off goes to the other hours in proportion to the room each has left: exact in one pass.
        double share = missingWh > 0 ? missingWh / upWh : missingWh < 0 ? missingWh / downWh : 0;
        for (int i = 0; i < 24; i++) {
            if (outsideWm2[first + i] > 0) {
                double room = share > 0 ? cap[first + i] * lift - clearness[i] : clearness[i] - floor;
                clearness[i] += share * room;
            }
        }
    }
}
