package tideover.engine.part;

import tideover.engine.quantity.Require;
import tideover.engine.sun.PanelSheet;

/**
 * A solar panel by its data sheet.
 *
 * @param noctDegC cell temperature at 800 W/m2, 20 degC, 1 m/s
 * @param tail     how its own cables end
 */
public record Panel(Listing listing, PanelSheet sheet, double noctDegC, Tail tail) implements Part {
    /**
     * A panel's own cables.
     *
     * @param connector   make of their plugs; empty where not told
     * @param mostFuseA   the largest fuse that the sheet allows in series with it; NaN where not told
     */
    public record Tail(String connector, double mostFuseA) {
        public static final Tail UNKNOWN = new Tail("", Double.NaN);

        public Tail {
            if (!Double.isNaN(mostFuseA)) {
                Require.above(0, "mostFuseA", mostFuseA, "A");
            }
        }
    }

    public Panel {
        Require.within(20, 90, "noctDegC", noctDegC, "degC");
    }

    public Panel(Listing listing, PanelSheet sheet, double noctDegC) {
        this(listing, sheet, noctDegC, Tail.UNKNOWN);
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
