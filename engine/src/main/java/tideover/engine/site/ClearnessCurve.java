package tideover.engine.site;

import tideover.engine.quantity.Require;

/**
 * How a normal score becomes the clearness index of a day (irradiation on the horizontal over extraterrestrial):
 * {@code Kt = least + (most - least) * Phi(a + b z)}, z standard normal, Phi the normal distribution function. The two
 * parameters give the month's mean and standard deviation; the long dark tail that real months have comes with the shape.
 *
 * <p>The mean is exact, since E[Phi(a + b z)] = Phi(a / root(1 + b^2)); b is found by bisection. Meant for months with a
 * mean from about 0.1 to 0.8. What lies outside is drawn in to the nearest shape the curve can take, so the mean of a
 * month below 0.064 comes out too high.
 */
record ClearnessCurve(double least, double most, double a, double b) {
    private static final double LEAST = 0.05;
    private static final double USUAL_MOST = 0.76;

    private static final double FLATTEST = 0.02;
    private static final double STEEPEST = 6;
    private static final int POINTS = 801;
    private static final double REACH = 5;
    private static final double[] WEIGHT = new double[POINTS];

    static {
        for (int i = 0; i < POINTS; i++) {
            WEIGHT[i] = Normal.density(scoreAt(i));
        }
    }

    // Usual standard deviation of daily clearness by the month's mean: own fit to measured and satellite months.
    private static final double[] MEAN = {.20, .25, .30, .35, .40, .45, .50, .55, .60, .65, .70, .75, .80};
    private static final double[] USUAL_SD = {
        .135, .150, .168, .178, .185, .186, .178, .162, .139, .107, .070, .048, .030
    };

    /** The table above by straight lines; its end values are held beyond its ends. */
    static double usualSd(double mean) {
        if (mean <= MEAN[0]) {
            return USUAL_SD[0];
        }
        for (int i = 1; i < MEAN.length; i++) {
            if (mean <= MEAN[i]) {
                double share = (mean - MEAN[i - 1]) / (MEAN[i] - MEAN[i - 1]);
                return USUAL_SD[i - 1] + share * (USUAL_SD[i] - USUAL_SD[i - 1]);
            }
        }
        return USUAL_SD[USUAL_SD.length - 1];
    }

    /** The curve of one month from its mean and standard deviation. */
    static ClearnessCurve of(double mean, double sd) {
        Require.within(0, 1, "mean clearness", mean, "");
        Require.within(0, 1, "sd of clearness", sd, "");
        double most = Math.max(USUAL_MOST, mean + LEAST);
        double width = most - LEAST;
        double mu = Math.max(0.02, Math.min(0.98, (mean - LEAST) / width));
        double sigma = Math.min(sd / width, 0.95 * StrictMath.sqrt(mu * (1 - mu)));
        double middle = Normal.quantile(mu);
        double flat = FLATTEST;
        double steep = STEEPEST;
        while (steep - flat > 1e-7) {
            double b = (flat + steep) / 2;
            if (spread(middle, b, mu) < sigma) {
                flat = b;
            } else {
                steep = b;
            }
        }
        double b = (flat + steep) / 2;
        return new ClearnessCurve(LEAST, most, middle * StrictMath.sqrt(1 + b * b), b);
    }

    private static double scoreAt(int point) {
        return -REACH + point * (2 * REACH / (POINTS - 1));
    }

    private static double spread(double middle, double b, double mu) {
        double a = middle * StrictMath.sqrt(1 + b * b);
        double weights = 0;
        double squares = 0;
        for (int i = 0; i < POINTS; i++) {
            double off = Normal.below(a + b * scoreAt(i)) - mu;
            weights += WEIGHT[i];
            squares += WEIGHT[i] * off * off;
        }
        return StrictMath.sqrt(squares / weights);
    }

    /** Clearness of the day with this score. */
    double at(double score) {
        return least + (most - least) * Normal.below(a + b * score);
    }
}
