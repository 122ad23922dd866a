package tideover.engine.rig;

import static tideover.engine.why.Finding.atMost;
import static tideover.engine.why.Finding.inWords;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import tideover.engine.load.Coincidence;
import tideover.engine.load.Load;
import tideover.engine.part.Outlet;
import tideover.engine.why.Basis;
import tideover.engine.why.Finding;
import tideover.engine.why.Verdict;

/**
 * The rules a rig must keep before it is worth simulating. Each gives one finding or several; only a failed one rejects.
 */
public final class RuleBook {
    /**
     * The load constant of the revised lifting equation (Waters, Putz-Anderson &amp; Garg 1994, NIOSH 94-110): the most
     * one person should lift in the best posture. Never divided between people.
     */
    static final double LIFT_LIMIT_KG = 23;

    /** An array of this many times the controller's output is mostly clipped. Common practice, no source. */
    static final double OVERSIZED_ARRAY = 1.5;

    static final double COLD_WHERE_UNKNOWN_DEG_C = -40;

    /** A 12.8 V store suits what is made for 12 V. Common practice, no source. */
    static final double NOMINAL_VOLT_SHARE = 0.10;

    private RuleBook() {}

    /**
     * Everything the rules find.
     *
     * @param lowestDegC lowest outdoor temperature to design for; NaN where unknown, then the coldest band of
     *     NFPA 70 table 690.7(A) stands in
     */
    public static List<Finding> findings(Rig rig, List<Load> loads, double lowestDegC) {
        List<Finding> found = new ArrayList<>(loadFindings(rig, loads));
        found.addAll(partFindings(rig, lowestDegC));
        return found;
    }

    /** What the rules find between loads, outlets, inverter and store; panels make no difference to it. */
    public static List<Finding> loadFindings(Rig rig, List<Load> loads) {
        List<Finding> found = new ArrayList<>();
        Sockets sockets = Sockets.of(rig, loads);
        List<Load> essential = loads.stream().filter(Load::essential).toList();
        outlets(rig, sockets, found);
        inverterLoad(rig, essential, loads, found);
        outletLoads(rig, sockets, found);
        storeCurrent(rig, sockets, essential, found);
        return found;
    }

    /** What the rules find between the parts themselves; loads make no difference to it. */
    public static List<Finding> partFindings(Rig rig, double lowestDegC) {
        List<Finding> found = new ArrayList<>();
        voltages(rig, found);
        panelVolts(rig, lowestDegC, found);
        controllerCurrent(rig, found);
        parallel(rig, found);
        atHand(rig, found);
        lifting(rig, found);
        return found;
    }

    private static void outlets(Rig rig, Sockets sockets, List<Finding> found) {
        for (Sockets.Plugged plugged : sockets.plugged()) {
            Load load = plugged.load();
            if (plugged.outlet() == null) {
                found.add(inWords(
                        "no-outlet",
                        load.essential() ? Verdict.FAIL : Verdict.CAUTION,
                        Basis.MAKER,
                        "outlets in the parts file",
                        "%s wants %s: no outlet of the rig gives that%s.",
                        load.name(),
                        load.supply().words(),
                        load.essential() ? "" : "; it is nice to have and goes without"));
            } else if (load.supply().isAc() && rig.inverter() == null) {
                found.add(inWords(
                        "no-inverter",
                        load.essential() ? Verdict.FAIL : Verdict.CAUTION,
                        Basis.MAKER,
                        "parts file",
                        "%s wants AC, and there is no inverter.",
                        load.name()));
            }
        }
    }

    private static void inverterLoad(Rig rig, List<Load> essential, List<Load> all, List<Finding> found) {
        if (rig.inverter() == null) {
            return;
        }
        double peakW = acPeakW(essential);
        double ratedW = rig.inverter().ratedW();
        found.add(atMost(
                "inverter-load",
                Verdict.FAIL,
                peakW,
                ratedW,
                "W",
                Basis.MAKER,
                "inverter rating in the parts file",
                "Essential AC loads that can run together draw %.0f W; the inverter gives %.0f W.",
                peakW,
                ratedW));
        double withNiceW = acPeakW(all);
        if (withNiceW > peakW) {
            found.add(atMost(
                    "inverter-load",
                    Verdict.CAUTION,
                    withNiceW,
                    ratedW,
                    "W",
                    Basis.MAKER,
                    "inverter rating in the parts file",
                    "With what is nice to have, AC loads draw up to %.0f W at once; the inverter gives %.0f W, and when it"
                            + " trips the essential loads go out too.",
                    withNiceW,
                    ratedW));
        }
    }

    private static double acPeakW(List<Load> loads) {
        return Coincidence.peakW(loads, load -> load.supply().isAc() ? load.runningW() : 0);
    }

    private static void outletLoads(Rig rig, Sockets sockets, List<Finding> found) {
        for (Outlet outlet : rig.outlets()) {
            List<Load> here = sockets.plugged().stream()
                    .filter(plugged ->
                            plugged.outlet() == outlet && plugged.load().essential())
                    .map(Sockets.Plugged::load)
                    .toList();
            if (here.isEmpty()) {
                continue;
            }
            String names = here.stream().map(Load::name).collect(Collectors.joining(", "));
            double peakW = Coincidence.peakW(here, Load::runningW);
            found.add(atMost(
                    "outlet-load",
                    Verdict.FAIL,
                    peakW,
                    outlet.maxW(),
                    "W",
                    Basis.MAKER,
                    "outlet rating in the parts file",
                    "%s: together %.0f W on the outlets %s, which give %.0f W.",
                    names,
                    peakW,
                    outlet.supply().words(),
                    outlet.maxW()));
            List<String> all = sockets.plugged().stream()
                    .filter(plugged -> plugged.outlet() == outlet)
                    .map(plugged -> plugged.load().name())
                    .toList();
            if (all.size() > outlet.count()) {
                found.add(inWords(
                        "socket-count",
                        Verdict.CAUTION,
                        Basis.MAKER,
                        "outlet count in the parts file",
                        "%s share %s %s: a listed strip or splitter is needed.",
                        String.join(", ", all),
                        outlet.count() == 1 ? "one outlet" : outlet.count() + " outlets",
                        outlet.supply().words()));
            }
        }
    }

    private static void storeCurrent(Rig rig, Sockets sockets, List<Load> essential, List<Finding> found) {
        double amps = Coincidence.peak(essential, on -> sockets.busW(rig, on)) / rig.busV();
        double mostA = rig.store().maxDischargeA();
        found.add(atMost(
                "store-current",
                Verdict.FAIL,
                amps,
                mostA,
                "A",
                Basis.MAKER,
                "discharge current in the parts file",
                "All essential loads together, losses included, take %.1f A from the store; it gives %.0f A.",
                amps,
                mostA));
    }

    private static void voltages(Rig rig, List<Finding> found) {
        double busV = rig.busV();
        if (rig.controller() != null) {
            boolean inside = busV >= rig.controller().leastBusV()
                    && busV <= rig.controller().mostBusV();
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
        if (rig.inverter() != null) {
            found.add(sameVolts("inverter", rig.inverter().inputV(), busV));
        }
        double enclosureV = Assembly.enclosureV(rig);
        if (!Double.isNaN(enclosureV)) {
            found.add(sameVolts("enclosure", enclosureV, busV));
        }
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

    private static void panelVolts(Rig rig, double lowestDegC, List<Finding> found) {
        if (rig.panel() == null || rig.controller() == null) {
            return;
        }
        double coldDegC = Double.isNaN(lowestDegC) ? COLD_WHERE_UNKNOWN_DEG_C : lowestDegC;
        int inSeries = rig.panelsInSeries();
        double volts = inSeries * rig.panel().openCircuitV(coldDegC);
        double mostV = rig.controller().maxInputV();
        found.add(atMost(
                "panel-voltage",
                Verdict.FAIL,
                volts,
                mostV,
                "V",
                Basis.PUBLISHED,
                "NFPA 70 690.7(A)(1) with the maker's coefficient; check the edition in force",
                "%s %.1f V open at %.0f degC; the controller's input takes %.0f V.",
                inSeries == 1 ? "A panel gives" : "A string of " + inSeries + " panels gives",
                volts,
                coldDegC,
                mostV));
        double ratedV = inSeries * rig.panel().openCircuitV();
        double neededV = PanelVolts.neededV(rig.controller(), rig.busV());
        found.add(atMost(
                "panel-voltage-low",
                Verdict.FAIL,
                neededV,
                ratedV,
                "V",
                Basis.COMMON_PRACTICE,
                "volts that a controller which only steps down needs above the store's",
                "%s %.1f V open; a controller that only lowers volts needs %.1f V to charge a store of %.1f V.",
                inSeries == 1 ? "A panel gives" : "A string of " + inSeries + " panels gives",
                ratedV,
                neededV,
                rig.busV()));
    }

    private static void controllerCurrent(Rig rig, List<Finding> found) {
        if (rig.panel() == null || rig.controller() == null) {
            return;
        }
        double limitW = rig.controller().maxOutputW(rig.busV());
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
                rig.controller().maxOutputA(),
                limitW));
    }

    private static void parallel(Rig rig, List<Finding> found) {
        int count = Assembly.batteriesIn(rig) / rig.storesInSeries();
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

    private static void lifting(Rig rig, List<Finding> found) {
        found.add(atMost(
                "lift",
                Verdict.CAUTION,
                rig.heaviestKg(),
                LIFT_LIMIT_KG,
                "kg",
                Basis.PUBLISHED,
                "NIOSH 94-110, load constant",
                "The heaviest single piece is %.1f kg; %.0f kg is the most for one person in the best posture. Use wheels"
                        + " or a hoist; a second person does not halve a lift.",
                rig.heaviestKg(),
                LIFT_LIMIT_KG));
    }
}
