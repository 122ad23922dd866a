package tideover.engine.sun;

/**
 * What a panel gives, taken at its best operating point: no loss in weak light, none from light at a slant, none from
 * uneven modules or wires. Whatever does not follow the best point (a plain controller) takes its own loss elsewhere.
 */
public final class PanelPower {
    /** Irradiance and cell temperature at which a panel is rated (IEC 61215). */
    static final double RATED_WM2 = 1000;

    static final double RATED_CELL_DEG_C = 25;

    /** Irradiance and air temperature at which the nominal operating cell temperature is stated, open rack, 1 m/s. */
    private static final double NOCT_WM2 = 800;

    private static final double NOCT_AIR_DEG_C = 20;

    private PanelPower() {}

    /**
     * Cell temperature by the nominal-operating-cell-temperature rule (IEC 61215 practice; Duffie &amp; Beckman, chapter
     * 23), degC: {@code air + (noct - 20)/800 * plane}. Steady, free-standing panel, about 1 m/s of wind; a panel laid
     * flat on a roof runs some 10 to 20 K hotter in full sun, one in wind cooler.
     */
    public static double cellDegC(double airDegC, double planeWm2, double noctDegC) {
        return airDegC + (noctDegC - NOCT_AIR_DEG_C) / NOCT_WM2 * planeWm2;
    }

    /**
     * DC watts per rated watt at the best operating point: {@code plane/1000 * (1 + powerPerK * (cell - 25))}, never
     * negative.
     *
     * @param powerPerK change of power per kelvin as a fraction, about -0.004
     */
    public static double wattsPerRatedWatt(double planeWm2, double cellDegC, double powerPerK) {
        return Math.max(0, planeWm2 / RATED_WM2 * (1 + powerPerK * (cellDegC - RATED_CELL_DEG_C)));
    }
}
