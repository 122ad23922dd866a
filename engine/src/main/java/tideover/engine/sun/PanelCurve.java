package tideover.engine.sun;

import org.jspecify.annotations.Nullable;
import tideover.engine.quantity.Require;
import tideover.engine.quantity.Units;

/**
 * The whole curve of a panel in any light and at any temperature: a {@link SingleDiode} fitted to the data sheet, moved as De
 * Soto, Klein &amp; Beckman 2006 (Solar Energy 80, 78) move it.
 *
 * <p>Fitted so that short-circuit amps, open-circuit volts and the best point (its place, and that it is the best) are the
 * sheet's. A fifth condition sets the ideality factor. The paper takes the maker's coefficient of open-circuit volts; here it is
 * his coefficient of power, mean from 25 to 65 degC, since energy hangs on it. The two disagree by the few hundredths of a per
 * cent a kelvin to which makers round; cold open-circuit volts are for the maker's own coefficient, not for this curve.
 */
public final class PanelCurve {
    /** How much of the sheet the curve could be made to meet. */
    public enum Fit {
        /** All of it. */
        WHOLE,
        /** All of it, but the coefficient of power only by bending the band gap off silicon's. */
        BAND_GAP_BENT,
        /** All of it but the coefficient of power: the nearest the model can do. */
        POWER_PER_K_MISSED,
        /** Rated watts, open-circuit volts and short-circuit amps, but not the place of the best point. */
        BEST_POINT_MOVED,
        /** Not from a sheet: five parameters given. */
        GIVEN
    }

    /** Boltzmann's constant over the elementary charge, V/K (both exact in the SI of 2019), and so in eV/K. */
    static final double THERMAL_V_PER_K = 1.380649e-23 / 1.602176634e-19;

    static final double RATED_CELL_K = PanelPower.RATED_CELL_DEG_C + Units.ZERO_CELSIUS_K;

    /** Band gap of silicon at 25 degC and its relative fall per kelvin (De Soto et al. 2006). */
    private static final double GAP_EV = 1.121;

    private static final double GAP_PER_K = -0.0002677;

    /** Between these cell temperatures the mean coefficient of power is met: a panel in the sun lies between. */
    private static final double HOT_DEG_C = 65;

    /** Ideality looked at; outside this no silicon diode lies. */
    private static final double LEAST_IDEALITY = 0.5;

    private static final double MOST_IDEALITY = 2.5;

    /** Sharpest knee tried where the fill factor asks for a lower ideality than that. */
    private static final double SHARPEST = 150;

    private static final int TRIES = 96;
    private static final int HALVINGS = 60;

    private final SingleDiode rated;
    private final double currentPerK;
    private final double gapFactor;
    private final double ratedW;
    private final Fit fit;

    // What the moving needs again and again.
    private final double lnSaturation;
    private final double gapAtRated;

    private PanelCurve(SingleDiode rated, double currentPerK, double gapFactor, double ratedW, Fit fit) {
        this.rated = rated;
        this.currentPerK = currentPerK;
        this.gapFactor = gapFactor;
        this.ratedW = ratedW;
        this.fit = fit;
        this.lnSaturation = StrictMath.log(rated.saturationA());
        this.gapAtRated = gapFactor * GAP_EV / (THERMAL_V_PER_K * RATED_CELL_K);
    }

    /** Fitted to a sheet. Never fails: what could not be met, {@link #fit} tells. */
    public static PanelCurve of(PanelSheet sheet) {
        double cellV = sheet.cells() * THERMAL_V_PER_K * RATED_CELL_K;
        // By ideality, but wide enough, and no wider than sense, where the count of cells and the volts do not fit
        // together.
        double least =
                Math.max(sheet.openCircuitV() / SHARPEST, Math.min(LEAST_IDEALITY * cellV, sheet.openCircuitV() / 40));
        double most = Math.min(sheet.openCircuitV() / 3, Math.max(MOST_IDEALITY * cellV, sheet.openCircuitV() / 10));
        PanelCurve nearest = null;
        PanelCurve before = null;
        for (int i = 0; i <= TRIES; i++) {
            double modifiedV = most * StrictMath.pow(least / most, (double) i / TRIES);
            PanelCurve next = fitted(sheet, modifiedV);
            if (next == null) {
                before = null;
                continue;
            }
            if (before != null && between(before.powerPerK(), sheet.powerPerK(), next.powerPerK())) {
                return closing(sheet, before, next);
            }
            nearest = nearer(nearest, next, sheet);
            before = next;
        }
        for (int i = 0; nearest == null && i <= TRIES; i++) {
            nearest =
                    fitted(sheet, least * StrictMath.pow(sheet.openCircuitV() / SHARPEST / least, (double) i / TRIES));
        }
        return nearest == null ? bent(sheet, moved(sheet, cellV)) : bent(sheet, nearest);
    }

    /**
     * Five parameters known from elsewhere, at 1000 W/m2 and 25 degC.
     *
     * @param currentPerK change of the light's current per kelvin, a fraction of it
     */
    static PanelCurve given(SingleDiode rated, double currentPerK) {
        return new PanelCurve(rated, currentPerK, 1, rated.bestPoint().watts(), Fit.GIVEN);
    }

    private static boolean between(double one, double value, double other) {
        return (one - value) * (other - value) <= 0;
    }

    private static PanelCurve nearer(@Nullable PanelCurve one, PanelCurve other, PanelSheet sheet) {
        return one == null
                        || Math.abs(other.powerPerK() - sheet.powerPerK())
                                < Math.abs(one.powerPerK() - sheet.powerPerK())
                ? other
                : one;
    }

    /** Halves the ideality between two fits on either side of the coefficient of power. */
    private static PanelCurve closing(PanelSheet sheet, PanelCurve one, PanelCurve other) {
        PanelCurve low = one;
        PanelCurve high = other;
        for (int i = 0; i < HALVINGS; i++) {
            PanelCurve middle = fitted(sheet, (low.rated.modifiedV() + high.rated.modifiedV()) / 2);
            if (middle == null) {
                break;
            }
            if (between(low.powerPerK(), sheet.powerPerK(), middle.powerPerK())) {
                high = middle;
            } else {
                low = middle;
            }
        }
        PanelCurve best = nearer(low, high, sheet);
        return Math.abs(best.powerPerK() - sheet.powerPerK()) < 1e-7 ? best : bent(sheet, best);
    }

    /**
     * The sheet's three points and the best point's being the best, for one modified ideality. With Rs chosen, the three points are
     * linear in I0 and 1/Rsh (IL falls out); what is left, dP/dV = 0, is one equation in Rs.
     *
     * @return null where no Rs, Rsh of 0 or more does it
     */
    private static @Nullable PanelCurve fitted(PanelSheet sheet, double modifiedV) {
        double most = Math.min((sheet.openCircuitV() - sheet.bestV()) / sheet.bestA(), sheet.bestV() / sheet.bestA());
        double beforeOhm = 0;
        double before = Double.NaN;
        for (int i = 0; i <= TRIES; i++) {
            double ohm = most * i / TRIES;
            double next = new Points(sheet, modifiedV, ohm).unbalance();
            if (between(before, 0, next)) {
                double low = beforeOhm;
                double high = ohm;
                for (int j = 0; j < HALVINGS; j++) {
                    double middle = (low + high) / 2;
                    if (between(before, 0, new Points(sheet, modifiedV, middle).unbalance())) {
                        high = middle;
                    } else {
                        low = middle;
                    }
                }
                Points points = new Points(sheet, modifiedV, (low + high) / 2);
                if (points.physical()) {
                    return new PanelCurve(points.diode(), sheet.currentPerK(), 1, sheet.ratedW(), Fit.WHOLE);
                }
            }
            before = next;
            beforeOhm = ohm;
        }
        return null;
    }

    /**
     * For figures that no single diode has: no shunt, the ideality of an ordinary cell or, where that cannot fill so well, the
     * first sharper one that can; Rs such that the rated watts come out.
     */
    private static PanelCurve moved(PanelSheet sheet, double cellV) {
        double modifiedV = Math.max(sheet.openCircuitV() / SHARPEST, Math.min(1.1 * cellV, sheet.openCircuitV() / 15));
        while (noShunt(sheet, modifiedV, 0).bestPoint().watts() < sheet.ratedW()
                && modifiedV > sheet.openCircuitV() / 400) {
            modifiedV *= 0.9;
        }
        double low = 0;
        double high = sheet.openCircuitV() / sheet.shortCircuitA();
        for (int i = 0; i < HALVINGS; i++) {
            double middle = (low + high) / 2;
            if (noShunt(sheet, modifiedV, middle).bestPoint().watts() > sheet.ratedW()) {
                low = middle;
            } else {
                high = middle;
            }
        }
        return new PanelCurve(
                noShunt(sheet, modifiedV, (low + high) / 2),
                sheet.currentPerK(),
                1,
                sheet.ratedW(),
                Fit.BEST_POINT_MOVED);
    }

    private static SingleDiode noShunt(PanelSheet sheet, double modifiedV, double ohm) {
        // I0 from short and open circuit: Isc = I0 (e^(Voc/a) - e^(Isc Rs/a)); Rs stays below Voc/Isc.
        double shortV = Math.min(sheet.shortCircuitA() * ohm, sheet.openCircuitV() * (1 - 1e-9));
        double saturationA = sheet.shortCircuitA()
                / -StrictMath.expm1((shortV - sheet.openCircuitV()) / modifiedV)
                * StrictMath.exp(-sheet.openCircuitV() / modifiedV);
        double photoA = saturationA * StrictMath.expm1(sheet.openCircuitV() / modifiedV);
        return new SingleDiode(photoA, saturationA, ohm, Double.POSITIVE_INFINITY, modifiedV);
    }

    /** Meets the coefficient of power through the band gap where the ideality could not, as far as 0.3 to 2.5 times silicon's. */
    private static PanelCurve bent(PanelSheet sheet, PanelCurve curve) {
        PanelCurve low = curve.withGap(0.3, Fit.BAND_GAP_BENT);
        PanelCurve high = curve.withGap(2.5, Fit.BAND_GAP_BENT);
        Fit missed = curve.fit == Fit.BEST_POINT_MOVED ? Fit.BEST_POINT_MOVED : Fit.POWER_PER_K_MISSED;
        Fit met = curve.fit == Fit.BEST_POINT_MOVED ? Fit.BEST_POINT_MOVED : Fit.BAND_GAP_BENT;
        if (!between(low.powerPerK(), sheet.powerPerK(), high.powerPerK())) {
            PanelCurve nearest = nearer(low, high, sheet);
            return nearest.withGap(nearest.gapFactor, missed);
        }
        for (int i = 0; i < HALVINGS; i++) {
            PanelCurve middle = curve.withGap((low.gapFactor + high.gapFactor) / 2, met);
            if (between(low.powerPerK(), sheet.powerPerK(), middle.powerPerK())) {
                high = middle;
            } else {
                low = middle;
            }
        }
        return low;
    }

    private PanelCurve withGap(double factor, Fit with) {
        return new PanelCurve(rated, currentPerK, factor, ratedW, with);
    }

    /** The circuit at 1000 W/m2, 25 degC. */
    public SingleDiode rated() {
        return rated;
    }

    /** Watts at the best point at 1000 W/m2, 25 degC, as the sheet has them. */
    public double ratedW() {
        return ratedW;
    }

    public Fit fit() {
        return fit;
    }

    /** Mean change of the best watts from 25 to 65 degC at 1000 W/m2, a fraction of the rated watts per kelvin. */
    public double powerPerK() {
        double hotW = at(PanelPower.RATED_WM2, HOT_DEG_C).bestPoint().watts();
        return (hotW / ratedW - 1) / (HOT_DEG_C - PanelPower.RATED_CELL_DEG_C);
    }

    /**
     * The circuit in other light and at another cell temperature: {@code IL = G/Gr (IL + alpha (T - Tr))},
     * {@code I0 ~ T^3 e^(Er/kTr - E/kT)}, {@code E = 1.121 (1 - .0002677 (T - Tr))} eV, {@code Rsh ~ 1/G}, {@code a ~ T}, Rs stays.
     *
     * @param planeWm2 on the cells, 0 or more
     * @param cellDegC -100..150; what is outside is held to that
     */
    public SingleDiode at(double planeWm2, double cellDegC) {
        Require.atLeast(0, "planeWm2", planeWm2, "W/m2");
        double heldDegC = Math.max(-100, Math.min(150, cellDegC));
        double light = planeWm2 / PanelPower.RATED_WM2;
        return new SingleDiode(
                photoA(light, heldDegC),
                StrictMath.exp(lnSaturationA(heldDegC)),
                rated.seriesOhm(),
                light == 0 ? Double.POSITIVE_INFINITY : rated.shuntOhm() / light,
                modifiedV(heldDegC));
    }

    private double photoA(double light, double cellDegC) {
        return light * rated.photoA() * Math.max(0, 1 + currentPerK * (cellDegC - PanelPower.RATED_CELL_DEG_C));
    }

    private double modifiedV(double cellDegC) {
        return rated.modifiedV() * (cellDegC + Units.ZERO_CELSIUS_K) / RATED_CELL_K;
    }

    private double lnSaturationA(double cellDegC) {
        double share = (cellDegC + Units.ZERO_CELSIUS_K) / RATED_CELL_K;
        double gap = 1 + GAP_PER_K * (cellDegC - PanelPower.RATED_CELL_DEG_C);
        return lnSaturation + 3 * StrictMath.log(share) + gapAtRated * (1 - gap / share);
    }

    /**
     * Efficiency at 200 W/m2 over that at 1000 W/m2, cells at 25 degC. Real silicon panels lie from .92 to 1 (common practice, no
     * source); a sheet that leaves the diode an ideality below some .8, often by rounding, can come out above 1: too good.
     */
    public double weakLightShare() {
        return at(200, PanelPower.RATED_CELL_DEG_C).bestPoint().watts() / ratedW * (PanelPower.RATED_WM2 / 200);
    }

    /**
     * Amps out of the panel while a controller holds it at so many volts and lets none flow back: nothing above open circuit and
     * below 1 W/m2. Equals {@code at(planeWm2, cellDegC).currentA(volts)} there, with one exponential a step.
     */
    public double clampedA(double volts, double planeWm2, double cellDegC) {
        if (!(planeWm2 >= PanelTable.LEAST_WM2)) {
            return 0;
        }
        double heldDegC = Math.max(-100, Math.min(150, cellDegC));
        double light = planeWm2 / PanelPower.RATED_WM2;
        double photoA = photoA(light, heldDegC);
        double modifiedV = modifiedV(heldDegC);
        double lnSaturationA = lnSaturationA(heldDegC);
        double shuntS = light / rated.shuntOhm();
        double ohm = rated.seriesOhm();
        // Both are above the volts across the diode: IL through Rs, and the diode alone taking all of IL (plus I0, for
        // the -1).
        double saturationA = StrictMath.exp(lnSaturationA);
        double mostV = modifiedV * (StrictMath.log(photoA + saturationA) - lnSaturationA);
        if (volts >= mostV) {
            return 0;
        }
        double x = Math.min(volts + ohm * photoA, mostV);
        double amps = 0;
        for (int i = 0; i < 100; i++) {
            double diodeA = StrictMath.exp(x / modifiedV + lnSaturationA);
            amps = photoA - (diodeA - saturationA) - x * shuntS;
            double slopeS = diodeA / modifiedV + shuntS;
            double step = (x - ohm * amps - volts) / (1 + ohm * slopeS);
            if (step <= 1e-11 * x) {
                break;
            }
            x -= step;
        }
        return Math.max(0, amps);
    }

    /** I0 and 1/Rsh that put a curve of given a and Rs through the three points of the sheet. */
    private static final class Points {
        private final PanelSheet sheet;
        private final double modifiedV;
        private final double ohm;
        private final double bestX;
        /** I0 e^(Voc/a): in this scale nothing overflows. */
        private final double atOpenA;

        private final double shuntS;

        Points(PanelSheet sheet, double modifiedV, double ohm) {
            this.sheet = sheet;
            this.modifiedV = modifiedV;
            this.ohm = ohm;
            double openV = sheet.openCircuitV();
            double shortX = sheet.shortCircuitA() * ohm;
            bestX = sheet.bestV() + sheet.bestA() * ohm;
            double shortShare = -StrictMath.expm1((shortX - openV) / modifiedV);
            double bestShare = -StrictMath.expm1((bestX - openV) / modifiedV);
            double determinant = shortShare * (openV - bestX) - bestShare * (openV - shortX);
            atOpenA = (sheet.shortCircuitA() * (openV - bestX) - sheet.bestA() * (openV - shortX)) / determinant;
            shuntS = (shortShare * sheet.bestA() - bestShare * sheet.shortCircuitA()) / determinant;
        }

        /** Amps by which -V dI/dV at the best point is above the best amps; 0 where it is the best. */
        double unbalance() {
            double slopeS = atOpenA / modifiedV * StrictMath.exp((bestX - sheet.openCircuitV()) / modifiedV) + shuntS;
            return slopeS * (sheet.bestV() - sheet.bestA() * ohm) - sheet.bestA();
        }

        boolean physical() {
            return atOpenA > 0 && shuntS >= 0;
        }

        SingleDiode diode() {
            double openV = sheet.openCircuitV();
            double saturationA = atOpenA * StrictMath.exp(-openV / modifiedV);
            double photoA = -atOpenA * StrictMath.expm1(-openV / modifiedV) + openV * shuntS;
            double shuntOhm = shuntS > 0 ? 1 / shuntS : Double.POSITIVE_INFINITY;
            return new SingleDiode(photoA, saturationA, ohm, shuntOhm, modifiedV);
        }
    }
}
