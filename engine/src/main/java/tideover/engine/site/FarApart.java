package tideover.engine.site;

import java.util.ArrayList;
import java.util.List;
import tideover.engine.quantity.Series;

/**
 * Stations as unlike each other as a table has them, by latitude, the mean sun of the darkest month and the mean temperature of the
 * coldest, each as a share of its range over the table. First comes the one with the least winter sun; then, one by one, the one
 * furthest from all that were taken (Gonzalez 1985, Theoretical Computer Science 38, 293); of equals the first of the table.
 */
public final class FarApart {
    private FarApart() {}

    /** So many, or all where there are fewer. */
    public static List<Station> of(Stations table, int many) {
        List<Station> all = table.all();
        double[][] traits = traits(all);
        double[] away = new double[all.size()];
        java.util.Arrays.fill(away, Double.POSITIVE_INFINITY);
        List<Station> taken = new ArrayList<>();
        int next = darkest(traits);
        while (taken.size() < Math.min(many, all.size())) {
            taken.add(all.get(next));
            int furthest = 0;
            for (int i = 0; i < away.length; i++) {
                away[i] = Math.min(away[i], squared(traits[i], traits[next]));
                furthest = away[i] > away[furthest] ? i : furthest;
            }
            next = furthest;
        }
        return taken;
    }

    private static double[][] traits(List<Station> all) {
        double[][] traits = new double[all.size()][];
        for (int i = 0; i < traits.length; i++) {
            Station station = all.get(i);
            traits[i] = new double[] {
                station.place().latDeg(),
                least(station.climate().ghiKwhM2Day()),
                least(station.climate().meanDegC())
            };
        }
        for (int trait = 0; trait < 3; trait++) {
            double least = Double.POSITIVE_INFINITY;
            double most = Double.NEGATIVE_INFINITY;
            for (double[] one : traits) {
                least = Math.min(least, one[trait]);
                most = Math.max(most, one[trait]);
            }
            for (double[] one : traits) {
                one[trait] = most > least ? (one[trait] - least) / (most - least) : 0;
            }
        }
        return traits;
    }

    private static int darkest(double[][] traits) {
        int darkest = 0;
        for (int i = 0; i < traits.length; i++) {
            darkest = traits[i][1] < traits[darkest][1] ? i : darkest;
        }
        return darkest;
    }

    private static double least(Series months) {
        double least = Double.POSITIVE_INFINITY;
        for (int month = 0; month < months.length(); month++) {
            least = Math.min(least, months.at(month));
        }
        return least;
    }

    private static double squared(double[] a, double[] b) {
        double sum = 0;
        for (int i = 0; i < a.length; i++) {
            sum += (a[i] - b[i]) * (a[i] - b[i]);
        }
        return sum;
    }
}
