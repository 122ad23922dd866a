package tideover.engine.rig;

import static tideover.engine.why.Finding.atMost;
import static tideover.engine.why.Finding.inWords;

import java.util.List;
import java.util.Set;
import tideover.engine.battery.Chemistry;
import tideover.engine.part.Charger;
import tideover.engine.part.ControllerRating;
import tideover.engine.part.RatedStore;
import tideover.engine.why.Basis;
import tideover.engine.why.Finding;
import tideover.engine.why.Stated;
import tideover.engine.why.Verdict;

/** Whether what charges the store suits it: chemistry, cold, volts and amps. */
final class ChargeRules {
    private ChargeRules() {}

    static void find(Rig rig, List<Finding> found) {
        Charger charger = Assembly.charger(rig);
        if (rig.store() instanceof RatedStore bank) {
            ControllerRating controller = rig.controller();
            // A ready-made box charges its own battery as its maker means it.
            if (controller != null && rig.panel() != null && rig.route() != Route.READY_BOX) {
                found.add(chemistry("charge controller", controller.charges(), bank.chemistry()));
            }
            if (charger != null) {
                found.add(chemistry("charger", charger.charges(), bank.chemistry()));
            }
            coldCharge(bank, found);
        }
        deadController(rig, found);
        sunCurrent(rig, found);
        if (charger != null) {
            charger(rig, charger, found);
        }
    }

    private static Finding chemistry(String who, Set<Chemistry> charges, Chemistry chemistry) {
        boolean told = !charges.isEmpty();
        Verdict verdict = charges.contains(chemistry) ? Verdict.PASS : told ? Verdict.FAIL : Verdict.CAUTION;
        return inWords(
                "chemistry-charge",
                verdict,
                told ? Basis.MAKER : Basis.GUESS,
                told ? "parts file" : "not told in the parts file",
                "The store is %s; the %s %s.",
                chemistry.words(),
                who,
                verdict == Verdict.PASS
                        ? "has a programme for it"
                        : told ? "has none for it" : "may have none for it: the maker does not tell");
    }

    private static void coldCharge(RatedStore bank, List<Finding> found) {
        if (!bank.chemistry().isLithium()) {
            return;
        }
        Stated keepsOut = bank.guard().coldLockOut();
        boolean heated = bank.heater().watts() > 0;
        found.add(inWords(
                "cold-charge",
                keepsOut == Stated.YES ? Verdict.PASS : Verdict.CAUTION,
                keepsOut == Stated.UNKNOWN ? Basis.GUESS : Basis.MAKER,
                keepsOut == Stated.UNKNOWN ? "not told in the parts file" : "parts file",
                "%s %s",
                switch (keepsOut) {
                    case YES -> "The battery's electronics keep charge out below 0 degC.";
                    case NO ->
                        "Nothing keeps charge out of the battery below 0 degC, which ruins it and can make it burn.";
                    case UNKNOWN ->
                        "Whether the battery's electronics keep charge out below 0 degC is not known; charging it"
                                + " then ruins it and can make it burn.";
                },
                keepsOut == Stated.YES
                        ? "It takes no sun while it is so cold."
                        : heated
                                ? "Its heater has to hold it above; charging below 0 degC fails in the simulation."
                                : "Charging below 0 degC fails in the simulation."));
    }

    /**
     * A battery with electronics cuts itself off when flat. A controller that lives on the battery's volts then never wakes to
     * charge it.
     */
    private static void deadController(Rig rig, List<Finding> found) {
        ControllerRating controller = rig.controller();
        if (controller == null || rig.panel() == null || rig.route() == Route.READY_BOX) {
            return;
        }
        Stated starts = controller.input().startsWithoutBattery();
        boolean cutsItselfOff = rig.store() instanceof RatedStore bank
                && (bank.chemistry().isLithium() || !Double.isNaN(bank.guard().cutOffV()));
        if (!cutsItselfOff) {
            return;
        }
        found.add(inWords(
                "dead-controller",
                starts == Stated.YES ? Verdict.PASS : Verdict.CAUTION,
                starts == Stated.UNKNOWN ? Basis.GUESS : Basis.MAKER,
                starts == Stated.UNKNOWN ? "not told in the parts file" : "parts file",
                switch (starts) {
                    case YES ->
                        "The controller starts from the panels alone, so that a battery that cut itself off comes back.";
                    case NO ->
                        "The controller does not start without a battery: one that ran flat and cut itself off is not"
                                + " brought back by the sun. Have a charger at hand.";
                    case UNKNOWN ->
                        "Whether the controller starts without a battery is not known; if not, one that ran flat and"
                                + " cut itself off is not brought back by the sun.";
                }));
    }

    /** The simulation cuts charging off at what the store takes; a real controller does so only where it can be told to. */
    private static void sunCurrent(Rig rig, List<Finding> found) {
        ControllerRating controller = rig.controller();
        if (controller == null || rig.panel() == null || rig.route() == Route.READY_BOX) {
            return;
        }
        double sunA = Math.min(controller.maxOutputA(), rig.arrayRatedW() / rig.busV());
        found.add(atMost(
                "charge-current",
                Verdict.CAUTION,
                sunA,
                rig.store().maxChargeA(),
                "A",
                Basis.MAKER,
                "charging current in the parts file",
                "The panels can charge with up to %.0f A; the store takes %.0f A. The simulation lets no more in: set the"
                        + " controller to that, or take one that can be.",
                sunA,
                rig.store().maxChargeA()));
    }

    private static void charger(Rig rig, Charger charger, List<Finding> found) {
        double busV = rig.busV();
        boolean inside = busV >= charger.leastBusV() && busV <= charger.mostBusV();
        found.add(inWords(
                "charger-volts",
                inside ? Verdict.PASS : Verdict.FAIL,
                Basis.MAKER,
                "parts file",
                "The store is %.1f V; the charger serves %.1f to %.1f V.",
                busV,
                charger.leastBusV(),
                charger.mostBusV()));
        found.add(atMost(
                "charger-current",
                Verdict.FAIL,
                charger.maxOutputA(),
                rig.store().maxChargeA(),
                "A",
                Basis.MAKER,
                "charging current in the parts file",
                "The charger gives up to %.0f A; the store takes %.0f A.",
                charger.maxOutputA(),
                rig.store().maxChargeA()));
    }
}
