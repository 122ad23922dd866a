package tideover.engine.proof;

import org.jspecify.annotations.Nullable;
import tideover.engine.electronics.Tracking;
import tideover.engine.part.Panel;
import tideover.engine.part.PlainStore;
import tideover.engine.quantity.Series;
import tideover.engine.rig.Rig;
import tideover.engine.sun.PanelCurve;
import tideover.engine.sun.PanelPower;
import tideover.engine.sun.PanelSheet;
import tideover.engine.sun.PanelTable;

/**
 * What panels of one kind give, hour by hour, for each rated watt: at their best point, or held at the volts of a store that
 * does not change its own. Two rigs with equal ones share a series.
 *
 * @param sheet    of one panel; null where there is none
 * @param noctDegC of the same
 * @param heldV    volts that each panel is held at; NaN at the best point
 */
public record ArraySun(@Nullable PanelSheet sheet, double noctDegC, double heldV) {
    /** What a rig's panels can give. A battery known by its data sheet has volts of its own, which the walk sees to. */
    public static ArraySun of(Rig rig) {
        Panel panel = rig.panel();
        if (panel == null || rig.controller() == null) {
            return new ArraySun(null, 0, Double.NaN);
        }
        boolean held = rig.controller().tracking() == Tracking.AT_STORE_VOLTS && rig.store() instanceof PlainStore;
        return new ArraySun(panel.sheet(), panel.noctDegC(), held ? rig.busV() / rig.panelsInSeries() : Double.NaN);
    }

    /** DC watts per rated watt, hour by hour. */
    public Series wattsPerRatedW(PlaneWeather plane) {
        double[] watts = new double[plane.planeWm2().length()];
        if (sheet == null) {
            return Series.owning(watts);
        }
        PanelTable table = PanelTable.of(PanelCurve.of(sheet));
        for (int hour = 0; hour < watts.length; hour++) {
            double onPlaneWm2 = plane.planeWm2().at(hour);
            if (onPlaneWm2 > 0) {
                double cellDegC = PanelPower.cellDegC(plane.airDegC().at(hour), onPlaneWm2, noctDegC);
                watts[hour] = Double.isNaN(heldV)
                        ? table.wattsPerRatedWatt(onPlaneWm2, cellDegC)
                        : heldV * table.ampsAt(heldV, onPlaneWm2, cellDegC) / sheet.ratedW();
            }
        }
        return Series.owning(watts);
    }
}
