package tideover.engine.part;

import tideover.engine.quantity.Require;

/**
 * A solar panel by its data sheet.
 *
 * @param ratedW       at 1000 W/m2, cell at 25 degC
 * @param openCircuitV at the same
 * @param powerPerK    change of power per kelvin as a fraction, about -0.004
 * @param voltPerK     change of open-circuit voltage per kelvin as a fraction, about -0.003
 * @param noctDegC     cell temperature at 800 W/m2, 20 degC, 1 m/s
 */
public record Panel(
        Listing listing, double ratedW, double openCircuitV, double powerPerK, double voltPerK, double noctDegC)
        implements Part {
    public Panel {
        Require.above(0, "ratedW", ratedW, "W");
        Require.above(0, "openCircuitV", openCircuitV, "V");
        Require.within(-0.02, 0, "powerPerK", powerPerK, "1/K");
        Require.within(-0.02, 0, "voltPerK", voltPerK, "1/K");
        Require.within(20, 90, "noctDegC", noctDegC, "degC");
    }

    /** Open-circuit volts with the cell at a temperature. */
    public double openCircuitV(double cellDegC) {
        return openCircuitV * (1 + voltPerK * (cellDegC - 25));
    }

    @Override
    public String kind() {
        return "panel";
    }
}
