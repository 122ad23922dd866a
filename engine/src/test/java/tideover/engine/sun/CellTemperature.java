package tideover.engine.sun;

/** Two other models of a panel's temperature, which know the wind, to hold the program's against. */
final class CellTemperature {
    private CellTemperature() {}

    /** Faiman 2008 (Progress in Photovoltaics 16, 307), U0 25, U1 6.84 (coefficients from memory). */
    static double faimanDegC(double airDegC, double planeWm2, double windMs) {
        return airDegC + planeWm2 / (25 + 6.84 * windMs);
    }

    /** King, Boyson &amp; Kratochvil 2004 (SAND2004-3535), equations 11 and 12. */
    static double kingDegC(double airDegC, double planeWm2, double windMs, double a, double b, double rise) {
        double back = airDegC + planeWm2 * StrictMath.exp(a + b * windMs);
        return back + rise * planeWm2 / 1000;
    }

    /** Duffie &amp; Beckman, equation 23.3: the nominal rule less what leaves as electricity. */
    static double runningDegC(double airDegC, double planeWm2, double noctDegC, double efficiency, double absorbed) {
        double rise = PanelPower.cellDegC(airDegC, planeWm2, noctDegC) - airDegC;
        return airDegC + rise * (1 - efficiency / absorbed);
    }
}
