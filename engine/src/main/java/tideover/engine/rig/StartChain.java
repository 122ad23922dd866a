package tideover.engine.rig;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeSet;
import java.util.function.Predicate;
import org.jspecify.annotations.Nullable;
import tideover.engine.load.Coincidence;
import tideover.engine.load.DayWindow;
import tideover.engine.load.Load;
import tideover.engine.load.Need;
import tideover.engine.load.Start;
import tideover.engine.load.TimedLoad;
import tideover.engine.part.InverterRating;
import tideover.engine.part.RatedStore;
import tideover.engine.part.Surge;
import tideover.engine.why.Verdict;

/**
 * The start of motors through the whole chain at once: the inverter's surge and its seconds, the current out of the store,
 * and the volts that are left at the inverter.
 *
 * <p>Which starts are judged: at every instant of the day the worst that may come. Motors that nothing keeps apart start
 * together, everything else that may run at that instant runs beside. Apparent powers are added as if in phase. The sun's
 * share of the current is neglected: a start must hold at night.
 */
public final class StartChain {
    /** Shorter stretches of the day are roundings of the clock, h. */
    private static final double LEAST_STRETCH_H = 1e-6;

    private static final double INSTANT_H = 1.0 / 60;

    private StartChain() {}

    /**
     * The starts that a rig must be judged by. First those of the essential loads among themselves; then, marked as not
     * essential, those in which something that is nice to have takes part. A load that may choose its hours may begin at any
     * instant of its window.
     */
    public static List<StartEvent> events(Rig rig, List<Load> loads) {
        return events(rig, loads, Double.NaN);
    }

    /**
     * The same for loads that keep the hours of a walk: one that may choose takes those nearest to noon and begins with them.
     *
     * @param noonHour clock hour of solar noon
     */
    public static List<StartEvent> events(Rig rig, List<Load> loads, double noonHour) {
        Sockets sockets = Sockets.of(rig, loads);
        List<Running> all = new ArrayList<>();
        for (Sockets.Plugged plugged : sockets.plugged()) {
            if (plugged.throughInverter(rig) || plugged.direct()) {
                all.add(Running.of(plugged, noonHour));
            }
        }
        boolean leftOn = sockets.leavesInverterOn(rig);
        List<Running> essential =
                all.stream().filter(one -> one.load().essential()).toList();
        List<StartEvent> events = new ArrayList<>();
        gather(rig, essential, leftOn, events);
        if (essential.size() < all.size()) {
            List<StartEvent> mixed = new ArrayList<>();
            gather(rig, all, leftOn, mixed);
            mixed.stream().filter(event -> !event.essential()).forEach(events::add);
        }
        return events;
    }

    /**
     * A load with the hours in which it runs.
     *
     * @param startsAnyTime whether it may start at any instant of them, such as by a thermostat; else only as they begin
     */
    private record Running(Sockets.Plugged plugged, List<DayWindow> hours, boolean startsAnyTime) {
        static Running of(Sockets.Plugged plugged, double noonHour) {
            Load load = plugged.load();
            if (load instanceof TimedLoad) {
                return new Running(plugged, Coincidence.mayRun(load), false);
            }
            if (load.need() instanceof Need.HoursInWindow && !Double.isNaN(noonHour)) {
                return new Running(plugged, load.onHours(noonHour), false);
            }
            return new Running(plugged, Coincidence.mayRun(load), true);
        }

        Load load() {
            return plugged.load();
        }

        boolean runsAt(double hour) {
            return hours.stream().anyMatch(window -> window.overlapHours(hour, LEAST_STRETCH_H) > 0);
        }

        boolean beginsAt(double hour) {
            return hours.stream().anyMatch(window -> Math.abs(window.fromHour() - hour) < LEAST_STRETCH_H);
        }

        @Nullable
        Start start() {
            return load().nature().start();
        }

        boolean keptApart() {
            Start start = start();
            return start != null && !start.alone().isEmpty();
        }
    }

    /** Who starts while who runs. */
    private record Group(List<Running> starting, List<Running> beside) {}

    private static void gather(Rig rig, List<Running> loads, boolean leftOn, List<StartEvent> events) {
        TreeSet<Double> hours = new TreeSet<>(List.of(0.0));
        for (Running one : loads) {
            for (DayWindow window : one.hours()) {
                hours.add(window.fromHour());
                hours.add(window.toHour() % 24);
            }
        }
        Map<Group, List<DayWindow>> groups = new LinkedHashMap<>();
        for (double hour : hours) {
            Double after = hours.higher(hour);
            double next = after == null ? 24 : after;
            if (next - hour < LEAST_STRETCH_H) {
                continue;
            }
            List<Running> on = loads.stream().filter(one -> one.runsAt(hour)).toList();
            DayWindow instant = new DayWindow(hour, Math.min(next, hour + INSTANT_H));
            groupsOf(on, one -> one.startsAnyTime() || one.beginsAt(hour), instant, groups);
            groupsOf(on, Running::startsAnyTime, new DayWindow(hour, next), groups);
        }
        groups.forEach((group, when) -> events.add(event(rig, group, when, leftOn)));
    }

    private static void groupsOf(
            List<Running> on, Predicate<Running> mayStart, DayWindow when, Map<Group, List<DayWindow>> groups) {
        List<Running> motors = on.stream()
                .filter(one -> one.start() != null && mayStart.test(one))
                .toList();
        List<List<Running>> sets = new ArrayList<>();
        List<Running> together = motors.stream().filter(one -> !one.keptApart()).toList();
        if (!together.isEmpty()) {
            sets.add(together);
        }
        motors.stream().filter(Running::keptApart).forEach(one -> sets.add(List.of(one)));
        for (List<Running> starting : sets) {
            List<Running> beside = new ArrayList<>(on);
            // By identity: two loads may be equal in every figure.
            beside.removeIf(one -> starting.stream().anyMatch(other -> other == one));
            groups.computeIfAbsent(new Group(starting, beside), key -> new ArrayList<>())
                    .add(when);
        }
    }

    private static StartEvent event(Rig rig, Group group, List<DayWindow> when, boolean leftOn) {
        double surgeVa = 0;
        double acW = 0;
        double directW = 0;
        double seconds = 0;
        boolean essential = true;
        for (Running one : group.starting()) {
            Load load = one.load();
            Start start = one.start();
            if (start == null) {
                continue;
            }
            // One that starts softly still takes what it takes when running.
            double va = Math.max(load.runningVa(), start.va(load.runningVa()));
            if (load.supply().isAc()) {
                surgeVa += va;
                acW += Math.max(load.runningW(), start.watts(load.runningVa()));
            } else {
                directW += va * one.plugged().busPerPlugW();
            }
            seconds = Math.max(seconds, start.seconds());
            essential &= load.essential();
        }
        for (Running one : group.beside()) {
            Load load = one.load();
            if (load.supply().isAc()) {
                surgeVa += load.runningVa();
                acW += load.runningW();
            } else {
                directW += load.runningW() * one.plugged().busPerPlugW();
            }
            essential &= load.essential();
        }
        InverterRating inverter = rig.inverter();
        boolean on = inverter != null && (leftOn || surgeVa > 0);
        double dcW = directW + (inverter != null && on ? inverter.loss().dcW(acW) : 0);
        return new StartEvent(
                group.starting().stream().map(Running::load).toList(),
                group.beside().stream().map(Running::load).toList(),
                when,
                surgeVa,
                acW,
                directW,
                dcW,
                seconds,
                on,
                essential);
    }

    /**
     * What the chain says to a start from a store so full and so warm. A store known by its label alone shows no volts: it is
     * judged by its current at nominal volts, and there is no link for the sag.
     *
     * @param fill of the well that the volts follow, 0..1
     */
    public static StartVerdict judge(Rig rig, StartEvent event, double fill, double degC) {
        List<StartVerdict.Link> links = new ArrayList<>();
        inverterLinks(rig, event, links);
        if (!(rig.store() instanceof RatedStore bank)) {
            double amps = event.dcW() / rig.busV();
            links.add(link(StartVerdict.Kind.STORE_AMPS, amps, rig.store().maxDischargeA(), "A", true, Verdict.FAIL));
            return new StartVerdict(links, Double.NaN);
        }
        SagPath path = path(rig, bank, event);
        double mostW = path.mostW(fill, degC);
        double ableA = path.amps(event.dcW(), fill, degC);
        // Asked for more than it can give at any volts, it falls to half its open volts, where it gives the most.
        double amps =
                Double.isNaN(ableA) ? path.openV().at(fill) / 2 / (path.innerOhm(fill, degC) + path.leadOhm()) : ableA;
        Surge surge = bank.guard().surge();
        double surgeA = surgeA(bank);
        links.add(link(StartVerdict.Kind.STORE_AMPS, amps, surgeA, "A", surge.known(), Verdict.FAIL));
        if (surge.known() && amps > bank.maxDischargeA()) {
            links.add(seconds(StartVerdict.Kind.STORE_SECONDS, event, surge));
        }
        links.add(link(StartVerdict.Kind.SAG, event.dcW(), mostW, "W", true, Verdict.FAIL));
        return new StartVerdict(links, path.endV(event.dcW(), fill, degC));
    }

    private static void inverterLinks(Rig rig, StartEvent event, List<StartVerdict.Link> links) {
        InverterRating inverter = rig.inverter();
        if (inverter == null || !event.startsAc()) {
            return;
        }
        Surge surge = inverter.surge();
        double mostVa = inverter.mostVa();
        links.add(link(StartVerdict.Kind.INVERTER_VA, event.surgeVa(), mostVa, "VA", surge.known(), Verdict.FAIL));
        if (surge.known() && event.surgeVa() > inverter.ratedW()) {
            links.add(seconds(StartVerdict.Kind.INVERTER_SECONDS, event, surge));
        }
    }

    /** Seconds that nobody tells count as too few, which is a caution: most makers give their surge for long enough. */
    private static StartVerdict.Link seconds(StartVerdict.Kind kind, StartEvent event, Surge surge) {
        boolean told = !Double.isNaN(surge.seconds());
        return link(kind, event.seconds(), surge.seconds(), "s", told, told ? Verdict.FAIL : Verdict.CAUTION);
    }

    private static StartVerdict.Link link(
            StartVerdict.Kind kind, double value, double limit, String unit, boolean told, Verdict ifBroken) {
        return new StartVerdict.Link(kind, value, limit, unit, told, value <= limit ? Verdict.PASS : ifBroken);
    }

    /**
     * The lowest filling, 0..1, from which the start holds in a store so warm; 0 where any does, infinity where none. For a
     * store known by its label alone it is one or the other.
     */
    public static double fillNeeded(Rig rig, StartEvent event, double degC) {
        List<StartVerdict.Link> links = new ArrayList<>();
        inverterLinks(rig, event, links);
        if (links.stream().anyMatch(link -> link.verdict() == Verdict.FAIL)) {
            return Double.POSITIVE_INFINITY;
        }
        if (!(rig.store() instanceof RatedStore bank)) {
            return judge(rig, event, 1, degC).holds() ? 0 : Double.POSITIVE_INFINITY;
        }
        Surge surge = bank.guard().surge();
        boolean tooShort = surge.known() && event.seconds() > surge.seconds();
        double mostA = tooShort ? bank.maxDischargeA() : surgeA(bank);
        return path(rig, bank, event).fillNeeded(event.dcW(), mostA, degC);
    }

    /** Unknown surge: no more than what it gives for hours. */
    private static double surgeA(RatedStore bank) {
        Surge surge = bank.guard().surge();
        return surge.known() ? Math.max(surge.most(), bank.maxDischargeA()) : bank.maxDischargeA();
    }

    /** The way out of a rig's battery in a start, with what may let go on it. */
    public static SagPath path(Rig rig, RatedStore bank, StartEvent event) {
        double endOffV = event.inverterOn() ? rig.inverterOffV() : 0;
        double told = bank.guard().cutOffV();
        double usual =
                bank.chemistry().traits().cutOffV() * bank.chemistry().traits().cells(bank.nominalV());
        // A lead battery without electronics lets go of nothing; where there is no inverter either, its end of
        // discharge counts.
        boolean letsGo = bank.chemistry().isLithium() || !event.inverterOn();
        double postOffV = !Double.isNaN(told) ? told : letsGo ? usual : 0;
        return SagPath.of(bank, rig.leadOhm(), endOffV, postOffV);
    }
}
