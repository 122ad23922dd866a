package tideover.engine.sun;

import tideover.engine.quantity.Require;

/**
 * Current and volts of a panel in one light and at one temperature, the single-diode circuit:
 * {@code I = IL - I0 (e^((V + I Rs)/a) - 1) - (V + I Rs)/Rsh}. One source, one diode, one resistance across and one in line:
 * all cells alike, lit alike and equally warm. Only the quadrant in which a panel gives is of use; the breakdown of
 * shaded cells at reversed volts is not in it.
 *
 * <p>All is worked through the volts {@code x = V + I Rs} across the diode: the current is explicit in x, falls with it and
 * is concave, so every search below is a Newton search from the side on which it cannot overshoot.
 *
 * @param photoA      IL, current the light drives, 0 in the dark
 * @param saturationA I0, of the diode
 * @param seriesOhm   Rs, of the whole panel
 * @param shuntOhm    Rsh, of the whole panel; infinity for none
 * @param modifiedV   a = n Ns k T / q: ideality, cells in series, thermal volts
 */
public record SingleDiode(double photoA, double saturationA, double seriesOhm, double shuntOhm, double modifiedV) {
    private static final int MOST_STEPS = 200;

    /** A step shorter than this share of what it moves is the end of a search. */
    private static final double CLOSE = 1e-15;

    public SingleDiode {
        Require.atLeast(0, "photoA", photoA, "A");
        Require.above(0, "saturationA", saturationA, "A");
        Require.atLeast(0, "seriesOhm", seriesOhm, "ohm");
        Require.within(Double.MIN_VALUE, Double.POSITIVE_INFINITY, "shuntOhm", shuntOhm, "ohm");
        Require.above(0, "modifiedV", modifiedV, "V");
    }

    /**
     * Amps out of the panel while something holds it at so many volts. Above open circuit it is negative, the current
     * driven back into the panel: who blocks that (a diode, a controller) sets it to nothing himself.
     *
     * @param volts 0 or more; shorts and reversed volts are no business of this model
     */
    public double currentA(double volts) {
        Require.atLeast(0, "volts", volts, "V");
        if (seriesOhm == 0) {
            return diodeA(volts);
        }
        // Both are above the answer: the current is at most IL, and the diode takes at most what volts/Rs and IL bring.
        double x = Math.min(
                volts + seriesOhm * photoA, modifiedV * StrictMath.log1p((volts / seriesOhm + photoA) / saturationA));
        for (int i = 0; i < MOST_STEPS; i++) {
            double step = (x - seriesOhm * diodeA(x) - volts) / (1 - seriesOhm * slopeS(x));
            x -= step;
            if (step <= CLOSE * x) {
                break;
            }
        }
        // Not (x - volts)/Rs, in which a small Rs would blow up the rounding.
        return diodeA(x);
    }

    /** Volts at no current. */
    public double openCircuitV() {
        double x = modifiedV * StrictMath.log1p(photoA / saturationA);
        for (int i = 0; i < MOST_STEPS; i++) {
            double step = diodeA(x) / slopeS(x);
            x -= step;
            if (step <= CLOSE * x) {
                break;
            }
        }
        return Math.max(0, x);
    }

    /** Amps at no volts. */
    public double shortCircuitA() {
        return currentA(0);
    }

    /**
     * Where the panel gives most. The current is concave in the volts, so between short and open circuit there is exactly one such point.
     */
    public OperatingPoint bestPoint() {
        double openV = openCircuitV();
        if (openV == 0) {
            return new OperatingPoint(0, 0);
        }
        double low = 0;
        double high = openV;
        double x = openV - modifiedV * StrictMath.log1p(openV / modifiedV); // exact but for the resistances
        for (int i = 0; i < MOST_STEPS && high - low > CLOSE * high; i++) {
            double amps = diodeA(x);
            double slopeS = slopeS(x);
            double volts = x - seriesOhm * amps;
            // d(VI)/dx, and its own slope.
            double rise = amps + slopeS * (volts - seriesOhm * amps);
            double bend = 2 * slopeS * (1 - seriesOhm * slopeS) + bendSperV(x) * (volts - seriesOhm * amps);
            if (volts < 0 || rise > 0) {
                low = x;
            } else {
                high = x;
            }
            double next = x - rise / bend;
            if (Math.abs(next - x) <= CLOSE * high) {
                break;
            }
            x = next > low && next < high ? next : (low + high) / 2;
        }
        double amps = diodeA(x);
        return new OperatingPoint(x - seriesOhm * amps, amps);
    }

    /** Amps with x volts across the diode. */
    private double diodeA(double x) {
        return photoA - saturationA * StrictMath.expm1(x / modifiedV) - x / shuntOhm;
    }

    private double slopeS(double x) {
        return -saturationA / modifiedV * StrictMath.exp(x / modifiedV) - 1 / shuntOhm;
    }

    private double bendSperV(double x) {
        return -saturationA / (modifiedV * modifiedV) * StrictMath.exp(x / modifiedV);
    }
}
