package tideover.engine.battery;

import java.util.Comparator;
import java.util.List;
import java.util.function.DoubleUnaryOperator;
import tideover.engine.quantity.Require;

/**
 * Two wells found from the capacities on a data sheet. A capacity over T hours obeys {@code 1/q = a + b (1 - e^-k'T)/(k'T)}
 * with {@code a = 1/whole} and {@code b/a = (1 - c)/c} (the capacity equation of Manwell &amp; McGowan 1993 turned round), so
 * for each k' the other two follow from a straight line.
 *
 * <ul>
 *   <li>Three ratings and more: the k' whose line misses them least, in relative terms, from a scan of {@link #LEAST_RATE}
 *       to {@link #MOST_RATE}; exact for three that some pair of wells can give.
 *   <li>Two: c of the fallback, and the faster of the two k' that give the ratio. (The slower one says that even the
 *       longest rating is far from the whole content.) A smaller c where no k' is steep enough.
 *   <li>One: both of the fallback.
 *   <li>Capacities that do not grow with the hours: one well.
 * </ul>
 *
 * @param wholeAh   content of both wells, Ah: what an endless discharge would give
 * @param worstMiss greatest relative difference between a rating and what the wells give, 0..1
 */
public record WellFit(TwoWells wells, double wholeAh, double worstMiss) {
    /** Bounds of the search, 1/h and share: wider than any battery reported that we know of. */
    static final double LEAST_RATE = 0.01;

    static final double MOST_RATE = 30;
    static final double LEAST_SHARE = 0.05;
    private static final int SCANNED = 400;
    private static final int HALVINGS = 100;

    /** Capacities closer than this are one capacity. */
    private static final double ALIKE = 1e-9;

    static WellFit of(List<CapacityRating> ratings, TwoWells fallback) {
        Require.within(1, Integer.MAX_VALUE, "number of ratings", ratings.size());
        List<CapacityRating> rising = ratings.stream()
                .sorted(Comparator.comparingDouble(CapacityRating::hours))
                .toList();
        for (int i = 1; i < rising.size(); i++) {
            Require.above(
                    rising.get(i - 1).hours(),
                    "hours of the next rating",
                    rising.get(i).hours(),
                    "h");
        }
        CapacityRating shortest = rising.get(0);
        CapacityRating longest = rising.get(rising.size() - 1);
        if (rising.size() == 1) {
            return judged(fallback, rising);
        }
        if (shortest.ah() >= longest.ah() * (1 - ALIKE)) {
            return judged(TwoWells.ONE_WELL, rising);
        }
        return rising.size() == 2
                ? judged(ofTwo(shortest, longest, fallback.availableShare()), rising)
                : judged(ofMany(rising), rising);
    }

    private static TwoWells ofTwo(CapacityRating shortest, CapacityRating longest, double fallbackShare) {
        double asked = shortest.ah() / longest.ah();
        double share = Math.min(fallbackShare, 1 - LEAST_SHARE);
        double steepest = steepestRate(share, shortest, longest);
        if (ratio(share, steepest, shortest, longest) > asked) {
            // Too steep for this c at any rate: the largest c that can.
            double tooLarge = share;
            double small = LEAST_SHARE;
            for (int i = 0; i < HALVINGS; i++) {
                double middle = (small + tooLarge) / 2;
                if (ratio(middle, steepestRate(middle, shortest, longest), shortest, longest) > asked) {
                    tooLarge = middle;
                } else {
                    small = middle;
                }
            }
            return new TwoWells(small, steepestRate(small, shortest, longest));
        }
        double slow = steepest;
        double fast = MOST_RATE;
        for (int i = 0; i < HALVINGS; i++) {
            double middle = StrictMath.sqrt(slow * fast);
            if (ratio(share, middle, shortest, longest) < asked) {
                slow = middle;
            } else {
                fast = middle;
            }
        }
        return new TwoWells(share, StrictMath.sqrt(slow * fast));
    }

    private static double ratio(double share, double rate, CapacityRating shortest, CapacityRating longest) {
        TwoWells wells = new TwoWells(share, rate);
        return wells.capacity(shortest.hours()) / wells.capacity(longest.hours());
    }

    /** The rate at which a fast and a slow discharge differ most. */
    private static double steepestRate(double share, CapacityRating shortest, CapacityRating longest) {
        return leastOver(rate -> ratio(share, rate, shortest, longest));
    }

    private static TwoWells ofMany(List<CapacityRating> rising) {
        double rate = leastOver(at -> squares(rising, at, share(rising, at)));
        return new TwoWells(share(rising, rate), rate);
    }

    /** The c whose line misses the ratings least at a rate, each weighed by its own size. */
    private static double share(List<CapacityRating> rising, double rate) {
        double ones = 0;
        double cross = 0;
        double lags = 0;
        double right = 0;
        double rightLags = 0;
        for (CapacityRating rating : rising) {
            double weighed = rating.ah();
            double lag = weighed * TwoWells.lag(rate * rating.hours());
            ones += weighed * weighed;
            cross += weighed * lag;
            lags += lag * lag;
            right += weighed;
            rightLags += lag;
        }
        double a = right * lags - rightLags * cross;
        double b = rightLags * ones - right * cross;
        if (!(b > 0)) {
            return 1;
        }
        return a > 0 ? Math.max(LEAST_SHARE, a / (a + b)) : LEAST_SHARE;
    }

    private static double squares(List<CapacityRating> rising, double rate, double share) {
        TwoWells wells = new TwoWells(share, rate);
        double whole = whole(wells, rising);
        double sum = 0;
        for (CapacityRating rating : rising) {
            double miss = whole * wells.capacity(rating.hours()) / rating.ah() - 1;
            sum += miss * miss;
        }
        return sum;
    }

    /** Where a function of the rate is least: a scan on a scale of logarithms, then the golden section about the best. */
    private static double leastOver(DoubleUnaryOperator of) {
        double ratio = StrictMath.pow(MOST_RATE / LEAST_RATE, 1.0 / SCANNED);
        double best = LEAST_RATE;
        double least = Double.POSITIVE_INFINITY;
        for (int i = 0; i <= SCANNED; i++) {
            double rate = Math.min(MOST_RATE, LEAST_RATE * StrictMath.pow(ratio, i));
            double value = of.applyAsDouble(rate);
            if (value < least) {
                least = value;
                best = rate;
            }
        }
        double low = Math.max(LEAST_RATE, best / ratio);
        double high = Math.min(MOST_RATE, best * ratio);
        double golden = (StrictMath.sqrt(5) - 1) / 2;
        for (int i = 0; i < HALVINGS; i++) {
            double left = high - golden * (high - low);
            double right = low + golden * (high - low);
            if (of.applyAsDouble(left) < of.applyAsDouble(right)) {
                high = right;
            } else {
                low = left;
            }
        }
        return (low + high) / 2;
    }

    /** The whole content that meets the ratings on the average. */
    private static double whole(TwoWells wells, List<CapacityRating> ratings) {
        double sum = 0;
        for (CapacityRating rating : ratings) {
            sum += rating.ah() / wells.capacity(rating.hours());
        }
        return sum / ratings.size();
    }

    private static WellFit judged(TwoWells wells, List<CapacityRating> ratings) {
        double whole = whole(wells, ratings);
        double worst = 0;
        for (CapacityRating rating : ratings) {
            worst = Math.max(worst, Math.abs(whole * wells.capacity(rating.hours()) / rating.ah() - 1));
        }
        return new WellFit(wells, whole, worst);
    }
}
