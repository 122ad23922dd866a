package tideover.engine.sun;

import tideover.engine.quantity.Require;

/**
 * A {@link PanelCurve} worked out beforehand for hourly use: efficiency at the best point, relative to the rated, over light and cell
 * temperature, straight lines between. The light's steps are even in its root, so that weak light, where the curve bends most, has the
 * most of them. Within .05 % of the rated watts of the direct solution (measured, and held by a test). Immutable.
 */
public final class PanelTable {
    /** Below this there is no power: the sky of dusk, where no electronics wake. */
    public static final double LEAST_WM2 = 1;

    // Light and cell temperature are held to the table: 1 to 1681 W/m2; in brighter light the efficiency of the last
    // row stays.
    private static final double COLDEST_DEG_C = -60;
    private static final double HOTTEST_DEG_C = 110;
    private static final double STEP_K = 5;
    private static final int TEMPERATURES = (int) ((HOTTEST_DEG_C - COLDEST_DEG_C) / STEP_K) + 1;
    private static final double STEPS_PER_ROOT = 1.5;
    private static final int LIGHTS = 61;

    private final PanelCurve curve;
    private final double[] efficiency;

    private PanelTable(PanelCurve curve) {
        this.curve = curve;
        this.efficiency = new double[LIGHTS * TEMPERATURES];
        for (int i = 0; i < LIGHTS; i++) {
            double root = 1 + i / STEPS_PER_ROOT;
            double planeWm2 = root * root;
            for (int j = 0; j < TEMPERATURES; j++) {
                efficiency[i * TEMPERATURES + j] = curve.at(planeWm2, COLDEST_DEG_C + j * STEP_K)
                                .bestPoint()
                                .watts()
                        / curve.ratedW()
                        * (PanelPower.RATED_WM2 / planeWm2);
            }
        }
    }

    public static PanelTable of(PanelCurve curve) {
        return new PanelTable(curve);
    }

    public PanelCurve curve() {
        return curve;
    }

    /**
     * DC watts per rated watt at the best operating point; nothing below 1 W/m2.
     *
     * @param planeWm2 on the cells
     */
    public double wattsPerRatedWatt(double planeWm2, double cellDegC) {
        if (!(planeWm2 >= LEAST_WM2)) {
            return 0;
        }
        Require.within(-273.15, 1000, "cellDegC", cellDegC, "degC");
        double atLight = Math.min((StrictMath.sqrt(planeWm2) - 1) * STEPS_PER_ROOT, LIGHTS - 1.0);
        double atHeat = Math.max(0, Math.min((cellDegC - COLDEST_DEG_C) / STEP_K, TEMPERATURES - 1.0));
        int i = Math.min((int) atLight, LIGHTS - 2);
        int j = Math.min((int) atHeat, TEMPERATURES - 2);
        int cell = i * TEMPERATURES + j;
        double part = atLight - i;
        double heat = atHeat - j;
        double cool = efficiency[cell] + part * (efficiency[cell + TEMPERATURES] - efficiency[cell]);
        double warm = efficiency[cell + 1] + part * (efficiency[cell + TEMPERATURES + 1] - efficiency[cell + 1]);
        return planeWm2 / PanelPower.RATED_WM2 * (cool + heat * (warm - cool));
    }

    /** Amps of one panel held at so many volts by a controller that lets none flow back; see {@link PanelCurve#clampedA}. */
    public double ampsAt(double volts, double planeWm2, double cellDegC) {
        return curve.clampedA(volts, planeWm2, cellDegC);
    }
}
