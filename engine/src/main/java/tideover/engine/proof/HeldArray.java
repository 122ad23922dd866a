package tideover.engine.proof;

import java.util.ArrayList;
import java.util.List;
import tideover.engine.part.Panel;
import tideover.engine.quantity.Series;
import tideover.engine.sun.PanelCurve;
import tideover.engine.sun.PanelPower;

/**
 * Amps of a whole array that a controller holds at the volts of its battery, hour by hour, at even steps of those volts.
 * Between the steps the current is straight: it bends only past a panel's best point, where a battery seldom stands.
 *
 * @param leastV  store volts of the first series
 * @param stepV   between two series
 */
record HeldArray(double leastV, double stepV, List<Series> amps) {
    private static final int STEPS = 5;

    HeldArray {
        amps = List.copyOf(amps);
    }

    HeldArray times(double factor) {
        return new HeldArray(
                leastV, stepV, amps.stream().map(one -> one.times(factor)).toList());
    }

    /**
     * @param leastV lowest store volts looked at
     * @param mostV  highest
     */
    static HeldArray of(PlaneWeather plane, Panel panel, int inSeries, int strings, double leastV, double mostV) {
        PanelCurve curve = PanelCurve.of(panel.sheet());
        double stepV = (mostV - leastV) / (STEPS - 1);
        List<Series> amps = new ArrayList<>();
        for (int i = 0; i < STEPS; i++) {
            double panelV = (leastV + i * stepV) / inSeries;
            double[] byHour = new double[plane.planeWm2().length()];
            for (int hour = 0; hour < byHour.length; hour++) {
                double onPlaneWm2 = plane.planeWm2().at(hour);
                if (onPlaneWm2 > 0) {
                    double cellDegC = PanelPower.cellDegC(plane.airDegC().at(hour), onPlaneWm2, panel.noctDegC());
                    byHour[hour] = strings * curve.clampedA(panelV, onPlaneWm2, cellDegC);
                }
            }
            amps.add(Series.owning(byHour));
        }
        return new HeldArray(leastV, stepV, amps);
    }
}
