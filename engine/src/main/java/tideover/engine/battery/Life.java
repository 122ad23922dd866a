package tideover.engine.battery;

import java.util.List;
import tideover.engine.quantity.Curve;
import tideover.engine.quantity.Require;

/**
 * How long a battery lasts, to 80 % of its rated capacity: wear by cycles and wear by the calendar added, {@code
 * 1/years = 1/calendar + cycles a year/cycles(depth)}. Adding shares of a life is Miner's rule; each alone would promise more.
 *
 * <p>Calendar life falls by half with every {@link #halvedByK} above 25 degC (for lead the usual rule of thumb; for lithium a
 * milder one) and is not lengthened below. All figures are common practice, no source, for middling wares well treated:
 * makers promise up to twice as much, and lead left half empty for weeks or lithium kept full in the heat gets half.
 *
 * <p>Neglected: rate, sulphation, cold, dry-out, the growth of the inner resistance.
 *
 * @param cyclesByDepth full swings of a depth 0..1
 * @param calendarYears at 25 degC, charged and hardly used
 * @param halvedByK     kelvin that halve the calendar life
 */
public record Life(Curve cyclesByDepth, double calendarYears, double halvedByK) {
    private static final double RATED_DEG_C = 25;

    /** Swings smaller than this count as of this depth: nobody knows better. */
    private static final double SMALLEST_DEPTH = .1;

    /** Rule of thumb, Arrhenius: chemistry twice as fast for 10 K. */
    private static final double LEAD_HALVED_BY_K = 10;

    private static final double LITHIUM_HALVED_BY_K = 15;

    private static final Life FLOODED =
            new Life(Curve.of(SMALLEST_DEPTH, 3500, .2, 2000, .3, 1400, .5, 900, .8, 550, 1, 400), 6, LEAD_HALVED_BY_K);
    private static final Life GEL =
            new Life(Curve.of(SMALLEST_DEPTH, 3500, .2, 2000, .3, 1400, .5, 800, .8, 450, 1, 350), 8, LEAD_HALVED_BY_K);
    private static final Life AGM =
            new Life(Curve.of(SMALLEST_DEPTH, 3000, .2, 1600, .3, 1100, .5, 600, .8, 350, 1, 250), 6, LEAD_HALVED_BY_K);
    private static final Life IRON = new Life(
            Curve.of(SMALLEST_DEPTH, 15_000, .3, 9_000, .5, 6_000, .8, 3_500, 1, 2_500), 12, LITHIUM_HALVED_BY_K);
    private static final Life OTHER =
            new Life(Curve.of(SMALLEST_DEPTH, 5_000, .3, 2_500, .5, 1_400, .8, 700, 1, 500), 8, LITHIUM_HALVED_BY_K);

    public static Life of(Chemistry chemistry) {
        return switch (chemistry) {
            case FLOODED_LEAD -> FLOODED;
            case GEL_LEAD -> GEL;
            case AGM_LEAD -> AGM;
            case IRON_PHOSPHATE -> IRON;
            case OTHER_LITHIUM -> OTHER;
        };
    }

    /** Years on the shelf or on float at a temperature. */
    public double calendarYears(double degC) {
        return calendarYears * StrictMath.pow(2, -Math.max(0, degC - RATED_DEG_C) / halvedByK);
    }

    /** Share of the life that counted swings of charge use up. */
    public double worn(List<CycleCount.Cycle> cycles) {
        double worn = 0;
        for (CycleCount.Cycle cycle : cycles) {
            worn += cycle.count() / cyclesByDepth.at(cycle.range());
        }
        return worn;
    }

    /** Years at so many swings a year of one depth, at one temperature. */
    public double years(double cyclesPerYear, double depth, double degC) {
        Require.atLeast(0, "cyclesPerYear", cyclesPerYear, "");
        Require.within(0, 1, "depth", depth, "");
        return 1 / (1 / calendarYears(degC) + cyclesPerYear / cyclesByDepth.at(depth));
    }

    /** What each kilowatt-hour delivered over the life costs, cents, when it is swung regularly. No energy for charging. */
    public double centsPerKwh(double priceCents, double kwhPerCycle, double cyclesPerYear, double depth, double degC) {
        Require.above(0, "kwhPerCycle", kwhPerCycle, "kWh");
        Require.above(0, "cyclesPerYear", cyclesPerYear, "");
        return priceCents / (kwhPerCycle * cyclesPerYear * years(cyclesPerYear, depth, degC));
    }

    /** What each year of standing by costs, cents. */
    public double centsPerStandbyYear(double priceCents, double degC) {
        return priceCents / calendarYears(degC);
    }
}
