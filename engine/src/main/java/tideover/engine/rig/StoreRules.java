package tideover.engine.rig;

import static tideover.engine.why.Finding.atMost;
import static tideover.engine.why.Finding.inWords;

import java.util.List;
import tideover.engine.battery.CellTraits;
import tideover.engine.battery.Chemistry;
import tideover.engine.part.Battery;
import tideover.engine.part.Condition;
import tideover.engine.part.InverterRating;
import tideover.engine.part.Part;
import tideover.engine.part.PlainStore;
import tideover.engine.part.RatedStore;
import tideover.engine.part.ReadyBox;
import tideover.engine.part.Store;
import tideover.engine.why.Basis;
import tideover.engine.why.Finding;
import tideover.engine.why.Verdict;

/** What concerns the store and the rig as a thing that stands in a home: volts, numbers, chemistry. */
final class StoreRules {
    /** A 12.8 V store suits what is made for 12 V. Common practice, no source. */
    static final double NOMINAL_VOLT_SHARE = 0.10;

    /** Inverters switch off above so much of their nominal volts, 15 V for 12 V, where the maker tells nothing. Common practice, no source. */
    static final double USUAL_MOST_SHARE = 1.25;

    private static final double RATED_DEG_C = 25;
    private static final double FREEZING_DEG_C = 0;

    private StoreRules() {}

    static void find(Rig rig, Site site, List<Finding> found) {
        voltages(rig, found);
        inverterWindow(rig, found);
        parallel(rig, found);
        sleptIn(rig, site, found);
        atHand(rig, found);
    }

    private static void voltages(Rig rig, List<Finding> found) {
        controllerVolts(rig, found);
        double busV = rig.busV();
        if (rig.inverter() != null) {
            found.add(sameVolts("inverter", rig.inverter().inputV(), busV));
        }
        double enclosureV = Assembly.enclosureV(rig);
        if (!Double.isNaN(enclosureV)) {
            found.add(sameVolts("enclosure", enclosureV, busV));
        }
    }

    static void controllerVolts(Rig rig, List<Finding> found) {
        if (rig.controller() == null) {
            return;
        }
        double busV = rig.busV();
        boolean inside =
                busV >= rig.controller().leastBusV() && busV <= rig.controller().mostBusV();
        found.add(inWords(
                "bus-voltage",
                inside ? Verdict.PASS : Verdict.FAIL,
                Basis.MAKER,
                "parts file",
                "The store is %.1f V; the charge controller serves %.1f to %.1f V.",
                busV,
                rig.controller().leastBusV(),
                rig.controller().mostBusV()));
    }

    private static Finding sameVolts(String who, double wantedV, double busV) {
        boolean same = Math.abs(wantedV - busV) <= NOMINAL_VOLT_SHARE * wantedV;
        return inWords(
                "bus-voltage",
                same ? Verdict.PASS : Verdict.FAIL,
                Basis.MAKER,
                "parts file",
                "The %s wants %.1f V nominal; the store is %.1f V.",
                who,
                wantedV,
                busV);
    }

    /** What charges the store also lifts the inverter's volts; what switches off first decides how much of a charge is used. */
    private static void inverterWindow(Rig rig, List<Finding> found) {
        InverterRating inverter = rig.inverter();
        if (inverter == null || !(rig.store() instanceof RatedStore bank) || rig.route() == Route.READY_BOX) {
            return;
        }
        CellTraits traits = bank.chemistry().traits();
        int cells = traits.cells(bank.nominalV());
        double toldV = inverter.window().mostV();
        boolean told = !Double.isNaN(toldV);
        double mostV = told ? toldV : USUAL_MOST_SHARE * inverter.inputV();
        double chargeV = cells * traits.absorbV(RATED_DEG_C);
        double coldV = cells * traits.absorbV(FREEZING_DEG_C);
        if (told && chargeV <= mostV && coldV > chargeV) {
            found.add(atMost(
                    "inverter-window",
                    Verdict.CAUTION,
                    coldV,
                    mostV,
                    "V",
                    Basis.COMMON_PRACTICE,
                    "usual charging volts of the chemistry, raised in the cold",
                    "At 0 degC the store is charged at about %.1f V; above %.1f V the inverter switches off.",
                    coldV,
                    mostV));
        } else {
            found.add(atMost(
                    "inverter-window",
                    told ? Verdict.FAIL : Verdict.CAUTION,
                    chargeV,
                    mostV,
                    "V",
                    told ? Basis.MAKER : Basis.COMMON_PRACTICE,
                    told
                            ? "inverter's most volts in the parts file"
                            : "usual most volts of an inverter; not told in the parts file",
                    "The store is charged at about %.1f V; above %.1f V the inverter switches off or is harmed.",
                    chargeV,
                    mostV));
        }
        double offV = rig.inverterOffV();
        double fullV = cells * traits.openVByFill().at(1);
        double lastV = cells * traits.openVByFill().at(1 - bank.depth());
        found.add(atMost(
                "inverter-window",
                offV > fullV ? Verdict.FAIL : Verdict.CAUTION,
                offV,
                lastV,
                "V",
                Double.isNaN(inverter.window().cutOffV()) ? Basis.COMMON_PRACTICE : Basis.MAKER,
                "inverter's cut-off against the volts of the chemistry at rest",
                "The inverter switches off below %.1f V; at rest the store shows %.1f V full and %.1f V at the end of the"
                        + " charge that may be used.",
                offV,
                fullV,
                lastV));
    }

    private static void parallel(Rig rig, List<Finding> found) {
        int count = rig.storeRows();
        int most = Assembly.parallelLimit(rig);
        found.add(atMost(
                "parallel-limit",
                Verdict.FAIL,
                count,
                most,
                "batteries",
                Basis.MAKER,
                "most_in_parallel in the parts file",
                "Batteries side by side: %d; the maker allows %d.",
                count,
                most));
        int mostInSeries = Assembly.seriesLimit(rig);
        found.add(atMost(
                "series-limit",
                Verdict.FAIL,
                rig.storesInSeries(),
                mostInSeries,
                "batteries",
                Basis.MAKER,
                "most_in_series in the parts file",
                "Batteries in a row: %d; the maker allows %d.",
                rig.storesInSeries(),
                mostInSeries));
    }

    /** Old cells of the livelier lithium kinds burn without warning. Used and home-made packs of them do not belong where people sleep. */
    private static void sleptIn(Rig rig, Site site, List<Finding> found) {
        if (!site.sleptIn()) {
            return;
        }
        for (Chosen chosen : rig.chosen()) {
            Part part = chosen.part();
            Condition condition = part.listing().condition();
            Store store = part instanceof Battery battery
                    ? battery.store()
                    : part instanceof ReadyBox box ? box.store() : null;
            if (store == null || condition == Condition.NEW) {
                continue;
            }
            boolean other = store instanceof RatedStore rated && rated.chemistry() == Chemistry.OTHER_LITHIUM;
            if (!other && !(store instanceof PlainStore)) {
                continue;
            }
            // What stands on the shelf already may have been bought new: a sealed box of one's own is left to its
            // owner.
            boolean refused = other && (condition == Condition.USED || part instanceof Battery);
            found.add(inWords(
                    "slept-in",
                    refused ? Verdict.FAIL : Verdict.CAUTION,
                    Basis.COMMON_PRACTICE,
                    "used lithium cells other than iron phosphate are kept out of where people sleep",
                    "%s is not new%s, and people sleep there: %s.",
                    part.listing().name(),
                    other ? " and of lithium cells other than iron phosphate" : "",
                    refused
                            ? "such cells may burn without warning"
                            : other
                                    ? "if it was not bought new, or was opened, dropped or swollen, it must not stand there"
                                    : "if it holds lithium cells other than iron phosphate it must not stand there"));
        }
    }

    private static void atHand(Rig rig, List<Finding> found) {
        for (Chosen chosen : rig.chosen()) {
            int there = chosen.part().listing().atHand();
            if (chosen.count() > there) {
                found.add(atMost(
                        "at-hand",
                        Verdict.FAIL,
                        chosen.count(),
                        there,
                        "pieces",
                        Basis.YOURS,
                        "at_hand in the parts file",
                        "%s: %d wanted, %d to be had.",
                        chosen.part().listing().name(),
                        chosen.count(),
                        there));
            }
        }
    }
}
