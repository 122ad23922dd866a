package tideover.engine.part;

import tideover.engine.quantity.Require;
import tideover.engine.sun.PanelSheet;

/**
 * A solar panel by its data sheet.
 *
 * @param noctDegC cell temperature at 800 W/m2, 20 degC, 1 m/s
 */
public record Panel(Listing listing, PanelSheet sheet, double noctDegC) implements Part {
    public Panel {
        Require.within(20, 90, "noctDegC", noctDegC, "degC");
    }

    /** One whose sheet gives no more than the least; see {@link PanelSheet#of} for what is then assumed. */
    public Panel(
            Listing listing, double ratedW, double openCircuitV, double powerPerK, double voltPerK, double noctDegC) {
        this(
                listing,
                PanelSheet.of(ratedW, openCircuitV, Double.NaN, Double.NaN, 0, Double.NaN, voltPerK, powerPerK),
                noctDegC);
    }

    public double ratedW() {
        return sheet.ratedW();
    }

    public double openCircuitV() {
        return sheet.openCircuitV();
    }

    /** Open-circuit volts with the cell at a temperature. */
    public double openCircuitV(double cellDegC) {
        return sheet.openCircuitV() * (1 + sheet.voltPerK() * (cellDegC - 25));
    }

    @Override
    public String kind() {
        return "panel";
    }
}
