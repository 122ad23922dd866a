package tideover.engine.site;

import java.util.List;
import tideover.engine.quantity.Require;
import tideover.engine.quantity.Series;

/**
 * What is known of a place's climate, month by month: every series has twelve values, January first, except the two
 * seasonal ones, which have four (December to February, March to May, June to August, September to November).
 *
 * @param ghiKwhM2Day        mean daily irradiation on the horizontal
 * @param clearness          monthly clearness index; NaN where the sun is too low for one
 * @param clearnessSd        standard deviation of the daily clearness index; NaN where unknown
 * @param clearnessLag1      day-to-day correlation of daily clearness (normal scores)
 * @param cloudCoverModelled true for months whose source modelled the sun from cloud cover, which understates the spread
 * @param lowDegC            mean of the daily lowest hour
 * @param highDegC           mean of the daily highest hour
 * @param meanDegC           mean of all hours
 * @param anomalySdDegC      standard deviation of the daily mean about the month's own straight line
 * @param anomalyLag1        day-to-day correlation of that anomaly
 * @param anomalyWithSun     correlation of the anomaly with the normal score of the same day's clearness, by season
 * @param rangePerScoreDegC  daily range gained per unit of that score, by season
 * @param lowestDegC         lowest hour on record, so far as the source knows; NaN where unknown
 * @param source             where the figures come from
 */
public record MonthlyClimate(
        Series ghiKwhM2Day,
        Series clearness,
        Series clearnessSd,
        double clearnessLag1,
        List<Boolean> cloudCoverModelled,
        Series lowDegC,
        Series highDegC,
        Series meanDegC,
        Series anomalySdDegC,
        double anomalyLag1,
        Series anomalyWithSun,
        Series rangePerScoreDegC,
        double lowestDegC,
        String source) {

    public MonthlyClimate {
        cloudCoverModelled = List.copyOf(cloudCoverModelled);
        Require.within(12, 12, "months of cloudCoverModelled", cloudCoverModelled.size());
        for (Series monthly :
                List.of(ghiKwhM2Day, clearness, clearnessSd, lowDegC, highDegC, meanDegC, anomalySdDegC)) {
            Require.within(12, 12, "months of a monthly series", monthly.length());
        }
        Require.within(4, 4, "seasons of anomalyWithSun", anomalyWithSun.length());
        Require.within(4, 4, "seasons of rangePerScoreDegC", rangePerScoreDegC.length());
        Require.within(-1, 1, "clearnessLag1", clearnessLag1, "");
        Require.within(-1, 1, "anomalyLag1", anomalyLag1, "");
    }

    /** Season of a month counted from 0: 0 for December to February, then on through the year. */
    public static int seasonOf(int month) {
        return ((month + 1) % 12) / 3;
    }
}
