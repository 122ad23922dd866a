package tideover.engine.site;

import tideover.engine.quantity.ModelYear;

/**
 * Sun and temperature of days in a row, from the last day before the first year (index -1) to the first day after the
 * last, so that the hours about midnight at both ends have neighbours. One array a quantity, for speed; only this package
 * sees them, and nothing writes to them once drawn.
 */
final class DailySeries {
    private final int years;
    private final double[] sunScore;
    private final double[] anomalyScore;
    private final double[] sunKwhM2;
    private final double[] meanDegC;
    private final double[] rangeDegC;

    DailySeries(int years) {
        this.years = years;
        int length = years * ModelYear.DAYS + 2;
        sunScore = new double[length];
        anomalyScore = new double[length];
        sunKwhM2 = new double[length];
        meanDegC = new double[length];
        rangeDegC = new double[length];
    }

    void set(int day, double sunScore, double anomalyScore, double sunKwhM2, double meanDegC, double rangeDegC) {
        this.sunScore[day + 1] = sunScore;
        this.anomalyScore[day + 1] = anomalyScore;
        this.sunKwhM2[day + 1] = sunKwhM2;
        this.meanDegC[day + 1] = meanDegC;
        this.rangeDegC[day + 1] = rangeDegC;
    }

    int years() {
        return years;
    }

    int days() {
        return years * ModelYear.DAYS;
    }

    /** Normal score of the day's clearness. */
    double sunScore(int day) {
        return sunScore[day + 1];
    }

    /** Normal score of the day's mean temperature. */
    double anomalyScore(int day) {
        return anomalyScore[day + 1];
    }

    /** Irradiation on the horizontal. */
    double sunKwhM2(int day) {
        return sunKwhM2[day + 1];
    }

    double meanDegC(int day) {
        return meanDegC[day + 1];
    }

    /** Daily highest less lowest. */
    double rangeDegC(int day) {
        return rangeDegC[day + 1];
    }

    /** Day of the model year, 0..364, of a day counted through the years from -1 on. */
    static int dayOfYear(int day) {
        return Math.floorMod(day, ModelYear.DAYS);
    }
}
