package tideover.engine.rig;

import static tideover.engine.why.Finding.atLeast;
import static tideover.engine.why.Finding.atMost;

import java.util.List;
import tideover.engine.electronics.Tracking;
import tideover.engine.part.ControllerRating;
import tideover.engine.part.Panel;
import tideover.engine.why.Basis;
import tideover.engine.why.Finding;
import tideover.engine.why.Verdict;

/** Whether the panels suit the input of their controller: volts when cold, volts enough when warm, amps. */
final class PanelRules {
    /** An array of this many times the controller's output is mostly clipped. Common practice, no source. */
    static final double OVERSIZED_ARRAY = 1.5;

    /** A cell in summer sun; open volts fall as it warms. Common practice, no source. */
    static final double HOT_CELL_DEG_C = 65;

    /** NFPA 70 690.8(A): short-circuit amps are counted so many times, for light above the rated. */
    static final double BRIGHT_TIMES = 1.25;

    private PanelRules() {}

    static void find(Rig rig, Site site, List<Finding> found) {
        Panel panel = rig.panel();
        ControllerRating controller = rig.controller();
        if (panel == null || controller == null) {
            return;
        }
        tooHigh(rig, panel, controller, site, found);
        tooLow(rig, panel, controller, found);
        inputAmps(rig, panel, controller, found);
        controllerCurrent(rig, controller, found);
    }

    private static String givers(Rig rig) {
        int inSeries = rig.panelsInSeries();
        return inSeries == 1 ? "A panel gives" : "A string of " + inSeries + " panels gives";
    }

    private static void tooHigh(Rig rig, Panel panel, ControllerRating controller, Site site, List<Finding> found) {
        double coldDegC = site.coldDegC();
        double volts = rig.panelsInSeries() * panel.openCircuitV(coldDegC);
        double byTableV = rig.panelsInSeries() * panel.openCircuitV() * ColdTable.factor(coldDegC);
        double mostV = controller.maxInputV();
        found.add(atMost(
                "panel-voltage",
                Verdict.FAIL,
                volts,
                mostV,
                "V",
                Basis.PUBLISHED,
                "NFPA 70 690.7(A)(1) with the maker's coefficient; check the edition in force",
                "%s %.1f V open at %.0f degC by the maker's coefficient, %.1f V by the code's table for panels that state none;"
                        + " the controller's input takes %.0f V.",
                givers(rig),
                volts,
                coldDegC,
                byTableV,
                mostV));
    }

    private static void tooLow(Rig rig, Panel panel, ControllerRating controller, List<Finding> found) {
        double ratedV = rig.panelsInSeries() * panel.openCircuitV();
        double neededV = PanelVolts.neededV(controller, rig.busV());
        if (!PanelVolts.startTold(controller)) {
            found.add(atMost(
                    "panel-voltage-low",
                    Verdict.FAIL,
                    neededV,
                    ratedV,
                    "V",
                    Basis.COMMON_PRACTICE,
                    "volts that a controller which only steps down needs above the store's",
                    "%s %.1f V open; a controller that only lowers volts needs %.1f V to charge a store of %.1f V.",
                    givers(rig),
                    ratedV,
                    neededV,
                    rig.busV()));
            return;
        }
        double hotV = rig.panelsInSeries() * panel.openCircuitV(HOT_CELL_DEG_C);
        boolean rated = ratedV >= neededV;
        found.add(atLeast(
                "panel-start-volts",
                rated ? Verdict.CAUTION : Verdict.FAIL,
                rated ? hotV : ratedV,
                neededV,
                "V",
                Basis.MAKER,
                "start volts in the parts file",
                "%s %.1f V open with the cells at 25 degC and %.1f V at %.0f degC; the controller begins at %.1f V with a store"
                        + " of %.1f V.",
                givers(rig),
                ratedV,
                hotV,
                HOT_CELL_DEG_C,
                neededV,
                rig.busV()));
    }

    private static void inputAmps(Rig rig, Panel panel, ControllerRating controller, List<Finding> found) {
        double toldA = controller.input().maxA();
        boolean told = !Double.isNaN(toldA);
        // One that joins the panels to the store straight passes what comes in: its output current is then its limit.
        if (!told && controller.tracking() != Tracking.AT_STORE_VOLTS) {
            return;
        }
        double shortA = panel.sheet().shortCircuitA() * rig.panelStrings();
        double mostA = told ? toldA : controller.maxOutputA();
        found.add(atMost(
                "panel-input-amps",
                told ? Verdict.FAIL : Verdict.CAUTION,
                BRIGHT_TIMES * shortA,
                mostA,
                "A",
                Basis.PUBLISHED,
                "NFPA 70 690.8(A), 1.25 times the short-circuit amps"
                        + (panel.sheet().assumed().contains("shortCircuitA")
                                ? ", which the sheet does not give and are taken as usual"
                                : "")
                        + "; check the edition in force",
                "Strings side by side: %d, about %.1f A shorted, %.1f A with the code's quarter for bright light; the"
                        + " controller's %s %.0f A.",
                rig.panelStrings(),
                shortA,
                BRIGHT_TIMES * shortA,
                told ? "input takes" : "output current, which stands for its input, is",
                mostA));
    }

    private static void controllerCurrent(Rig rig, ControllerRating controller, List<Finding> found) {
        double limitW = controller.maxOutputW(rig.busV());
        found.add(atMost(
                "controller-current",
                Verdict.CAUTION,
                rig.arrayRatedW(),
                limitW * OVERSIZED_ARRAY,
                "W",
                Basis.COMMON_PRACTICE,
                "an array much above the limit is mostly clipped",
                "%.0f W of panel on a controller whose %.0f A carry %.0f W into this store.",
                rig.arrayRatedW(),
                controller.maxOutputA(),
                limitW));
    }
}
