package tideover.engine.sun;

import java.util.ArrayList;
import java.util.List;
import tideover.engine.quantity.Require;

/**
 * What a panel's data sheet says of it at 1000 W/m2 with the cells at 25 degC (IEC 61215). The best volts times the best amps are the
 * rated watts: {@code bestA} is always worked out from the two.
 *
 * @param ratedW       most it gives
 * @param openCircuitV volts at no current
 * @param shortCircuitA amps at no volts
 * @param bestV        volts at which it gives most
 * @param cells        in series
 * @param currentPerK  change of short-circuit current per kelvin, a fraction, about +0.0005
 * @param voltPerK     change of open-circuit volts per kelvin, a fraction, about -0.003
 * @param powerPerK    change of the most it gives per kelvin, a fraction, about -0.004
 * @param assumed      names of the figures above that the sheet did not give
 */
public record PanelSheet(
        double ratedW,
        double openCircuitV,
        double shortCircuitA,
        double bestV,
        int cells,
        double currentPerK,
        double voltPerK,
        double powerPerK,
        List<String> assumed) {
    /** Best volts over open-circuit volts of an ordinary silicon panel. Common practice, no source: .80 to .84. */
    static final double USUAL_BEST_V = 0.815;

    /** Short-circuit amps over best amps. Common practice, no source: 1.05 to 1.08. */
    static final double USUAL_SHORT_A = 1.065;

    /** Open-circuit volts of a cell. Common practice, no source: .60 to .62 of old, .66 to .70 of new cells. */
    static final double USUAL_CELL_V = 0.62;

    /** From memory, the middle of what makers state for silicon. */
    static final double USUAL_CURRENT_PER_K = 0.0005;

    /** How the loss between Voc Isc and the rated watts falls to the volts: what the two usual shares above imply. */
    private static final double VOLT_PART = StrictMath.log(USUAL_BEST_V) / StrictMath.log(USUAL_BEST_V / USUAL_SHORT_A);

    private static final int[] USUAL_CELLS = {18, 32, 33, 36, 40, 48, 54, 60, 66, 72, 80, 96, 108, 120, 132, 144};

    public PanelSheet {
        Require.above(0, "ratedW", ratedW, "W");
        Require.above(0, "openCircuitV", openCircuitV, "V");
        Require.above(0, "shortCircuitA", shortCircuitA, "A");
        Require.within(1, 1000, "cells", cells);
        Require.within(-0.005, 0.005, "currentPerK", currentPerK, "1/K");
        Require.within(-0.02, 0, "voltPerK", voltPerK, "1/K");
        Require.within(-0.02, 0, "powerPerK", powerPerK, "1/K");
        // A falling, concave curve of current over volts has its best point in this quarter of the rectangle.
        inside("bestV", bestV, openCircuitV, "V");
        inside("bestA", ratedW / bestV, shortCircuitA, "A");
        assumed = List.copyOf(assumed);
    }

    private static void inside(String name, double value, double end, String unit) {
        Require.above(end / 2, name, value, unit);
        if (value >= end) {
            throw new IllegalArgumentException(
                    name + " is " + value + " " + unit + ", expected below " + end + " " + unit);
        }
    }

    /**
     * From what is known; NaN or 0 stands for what is not, in {@code shortCircuitA}, {@code bestV}, {@code cells} and
     * (NaN only) {@code currentPerK}. What is missing is taken as usual: best volts .815 of open-circuit volts, short-circuit amps
     * 1.065 of best amps, .62 V a cell brought to a usual count, +.05 % a kelvin. Where the short-circuit amps are known and the best volts
     * are not, the fill factor is shared between volts and amps in the proportion those two figures imply.
     *
     * @throws IllegalArgumentException where no panel can have these figures
     */
    public static PanelSheet of(
            double ratedW,
            double openCircuitV,
            double shortCircuitA,
            double bestV,
            int cells,
            double currentPerK,
            double voltPerK,
            double powerPerK) {
        List<String> assumed = new ArrayList<>();
        boolean shortKnown = known(shortCircuitA);
        double best = bestV;
        if (!known(bestV)) {
            assumed.add("bestV");
            double fill = shortKnown ? ratedW / (openCircuitV * shortCircuitA) : USUAL_BEST_V / USUAL_SHORT_A;
            best = openCircuitV * StrictMath.pow(fill, VOLT_PART);
        }
        double amps = shortCircuitA;
        if (!shortKnown) {
            assumed.add("shortCircuitA");
            amps = USUAL_SHORT_A * ratedW / best;
        }
        int count = cells;
        if (cells == 0) {
            assumed.add("cells");
            count = usualCells(openCircuitV);
        }
        double current = currentPerK;
        if (Double.isNaN(currentPerK)) {
            assumed.add("currentPerK");
            current = USUAL_CURRENT_PER_K;
        }
        return new PanelSheet(ratedW, openCircuitV, amps, best, count, current, voltPerK, powerPerK, assumed);
    }

    /** Amps at which it gives most. */
    public double bestA() {
        return ratedW / bestV;
    }

    private static boolean known(double value) {
        return !Double.isNaN(value) && value != 0;
    }

    /** The usual count nearest to .62 V a cell, if one lies within 15 %; odd panels get the quotient itself. */
    private static int usualCells(double openCircuitV) {
        double quotient = openCircuitV / USUAL_CELL_V;
        int nearest = USUAL_CELLS[0];
        for (int count : USUAL_CELLS) {
            if (Math.abs(count - quotient) < Math.abs(nearest - quotient)) {
                nearest = count;
            }
        }
        return Math.abs(nearest - quotient) <= 0.15 * quotient
                ? nearest
                : (int) Math.min(1000, Math.max(1, Math.round(quotient)));
    }
}
