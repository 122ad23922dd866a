package tideover.engine.proof;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import tideover.engine.quantity.ModelYear;
import tideover.engine.quantity.Series;

/**
 * A run of neighbouring start hours of one weather year and the tail that the last outage reaches into. Hours count
 * through all years; after the last the years go round.
 *
 * @param firstStartHour first hour an outage starts in, a midnight
 * @param starts         how many start hours follow one another
 * @param tailHours      hours after the last start that its outage may need
 */
record Stretch(int firstStartHour, int starts, int tailHours) {
    /** One stretch for each run of neighbouring months in each year. */
    static List<Stretch> of(List<Integer> months, int years, int tailHours) {
        List<Stretch> all = new ArrayList<>();
        for (int year = 0; year < years; year++) {
            int i = 0;
            while (i < months.size()) {
                int first = i;
                while (i + 1 < months.size() && months.get(i + 1) == months.get(i) + 1) {
                    i++;
                }
                int firstDay = ModelYear.firstDay(months.get(first));
                int endDay = ModelYear.firstDay(months.get(i)) + ModelYear.daysIn(months.get(i));
                all.add(new Stretch(year * ModelYear.HOURS + firstDay * 24, (endDay - firstDay) * 24, tailHours));
                i++;
            }
        }
        return all;
    }

    /** The same starts in pieces of so many days at most. */
    List<Stretch> pieces(int days) {
        List<Stretch> pieces = new ArrayList<>();
        for (int first = 0; first < starts; first += days * 24) {
            pieces.add(new Stretch(firstStartHour + first, Math.min(days * 24, starts - first), tailHours));
        }
        return pieces;
    }

    /** A figure for how kind it is: sun on so many rated watts of panel less what is needed, in its hours. */
    double spareW(PlaneWeather plane, Series needW, double ratedW) {
        double[] planeWm2 = new double[hours()];
        double[] needed = new double[hours()];
        plane.planeWm2().copyRound(firstStartHour, planeWm2);
        needW.copyRound(firstStartHour, needed);
        double perWm2 = Math.max(1, ratedW) / 1000;
        return perWm2 * Arrays.stream(planeWm2).sum() - Arrays.stream(needed).sum();
    }

    int hours() {
        return starts + tailHours;
    }
}
