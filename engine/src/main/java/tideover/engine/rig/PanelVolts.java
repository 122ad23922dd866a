package tideover.engine.rig;

import tideover.engine.electronics.Tracking;
import tideover.engine.part.ControllerRating;
import tideover.engine.part.Panel;

/** Volts that a string of panels must have for its controller to charge the store. */
final class PanelVolts {
    /**
     * Open volts of a string for each nominal volt of the store that let it charge through a controller that only steps
     * down: a panel works at some 0.8 of its open volts, a store is charged at some 1.1 of its nominal ones. Common
     * practice, no source.
     */
    static final double OPEN_V_PER_STORE_V = 1.4;

    private PanelVolts() {}

    /** Open volts that a string needs at least. */
    static double neededV(ControllerRating controller, double busV) {
        return startTold(controller) ? busV + controller.input().startV() : busV * OPEN_V_PER_STORE_V;
    }

    /** Whether the maker tells from which volts on it begins. */
    static boolean startTold(ControllerRating controller) {
        return controller.tracking() == Tracking.BEST_POINT
                && !Double.isNaN(controller.input().startV());
    }

    static boolean reach(Panel panel, int inSeries, ControllerRating controller, double busV) {
        return panel.openCircuitV() * inSeries >= neededV(controller, busV);
    }
}
