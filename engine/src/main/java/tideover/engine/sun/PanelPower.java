package tideover.engine.sun;

/** What a panel gives. */
public final class PanelPower {
    private PanelPower() {}

    /** Cell temperature by the nominal-operating-cell-temperature rule. */
    public static double cellDegC(double airDegC, double planeWm2, double noctDegC) {
        return airDegC;
    }

    /** DC watts per rated watt at the best operating point. */
    public static double wattsPerRatedWatt(double planeWm2, double cellDegC, double powerPerK) {
        return 0;
    }
}
