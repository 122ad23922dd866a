package tideover.engine.rig;

import static tideover.engine.why.Finding.atMost;
import static tideover.engine.why.Finding.inWords;

import java.util.List;
import java.util.function.ToDoubleFunction;
import java.util.stream.Collectors;
import tideover.engine.load.Coincidence;
import tideover.engine.load.Load;
import tideover.engine.part.Outlet;
import tideover.engine.why.Basis;
import tideover.engine.why.Finding;
import tideover.engine.why.Verdict;

/** What running loads ask of outlets, inverter and store. */
final class LoadRules {
    private LoadRules() {}

    static void find(Rig rig, List<Load> loads, Sockets sockets, List<Finding> found) {
        findAlternating(rig, loads, sockets, found);
        outletLoads(rig, sockets, found);
        storeCurrent(rig, sockets, essential(loads), found);
    }

    /** Of whatever loads are given, those rules in which no direct current counts beyond its outlet. */
    static void findAlternating(Rig rig, List<Load> loads, Sockets sockets, List<Finding> found) {
        outlets(rig, sockets, found);
        inverterLoad(rig, essential(loads), loads, found);
        apparentLoad(rig, essential(loads), loads, found);
    }

    private static List<Load> essential(List<Load> loads) {
        return loads.stream().filter(Load::essential).toList();
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
        double peakW = acPeak(essential, Load::runningW);
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
        double withNiceW = acPeak(all, Load::runningW);
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

    /** Judged only where it says more than the watts do. */
    private static void apparentLoad(Rig rig, List<Load> essential, List<Load> all, List<Finding> found) {
        if (rig.inverter() == null) {
            return;
        }
        double peakVa = acPeak(essential, Load::runningVa);
        double ratedVa = rig.inverter().ratedW();
        if (peakVa > acPeak(essential, Load::runningW)) {
            found.add(atMost(
                    "apparent-load",
                    Verdict.FAIL,
                    peakVa,
                    ratedVa,
                    "VA",
                    Basis.COMMON_PRACTICE,
                    "an inverter's watts taken as its volt-amperes",
                    "Essential AC loads that can run together draw %.0f VA, counted by their power factors; the inverter's"
                            + " %.0f W stand for as many VA.",
                    peakVa,
                    ratedVa));
        }
        double withNiceVa = acPeak(all, Load::runningVa);
        if (withNiceVa > peakVa && withNiceVa > acPeak(all, Load::runningW)) {
            found.add(atMost(
                    "apparent-load",
                    Verdict.CAUTION,
                    withNiceVa,
                    ratedVa,
                    "VA",
                    Basis.COMMON_PRACTICE,
                    "an inverter's watts taken as its volt-amperes",
                    "With what is nice to have, AC loads draw up to %.0f VA at once; the inverter's %.0f W stand for as many"
                            + " VA.",
                    withNiceVa,
                    ratedVa));
        }
    }

    private static double acPeak(List<Load> loads, ToDoubleFunction<Load> figure) {
        return Coincidence.peakW(loads, load -> load.supply().isAc() ? figure.applyAsDouble(load) : 0);
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
}
