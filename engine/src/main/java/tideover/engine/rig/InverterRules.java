package tideover.engine.rig;

import static tideover.engine.why.Finding.inWords;

import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import tideover.engine.load.Coincidence;
import tideover.engine.load.DayWindow;
import tideover.engine.load.Load;
import tideover.engine.load.Need;
import tideover.engine.part.InverterRating;
import tideover.engine.why.Basis;
import tideover.engine.why.Finding;
import tideover.engine.why.Stated;
import tideover.engine.why.Verdict;

/** Whether an inverter's habits suit the loads behind it: its wave, its sleep, what it does after running flat. */
final class InverterRules {
    /** Long enough to tell a window from its end, h. */
    private static final double MOMENT_H = 1e-6;

    private InverterRules() {}

    static void find(Rig rig, Sockets sockets, List<Finding> found) {
        InverterRating inverter = rig.inverter();
        if (inverter == null) {
            return;
        }
        List<Load> fed = sockets.plugged().stream()
                .filter(plugged -> plugged.throughInverter(rig))
                .map(Sockets.Plugged::load)
                .toList();
        wave(inverter, fed, found);
        List<Load> essential = fed.stream().filter(Load::essential).toList();
        List<Load> unattended =
                essential.stream().filter(load -> !load.nature().attended()).toList();
        if (!unattended.isEmpty()) {
            sleeps(inverter.habits(), essential, unattended, found);
            afterFlat(inverter.habits(), unattended, found);
        }
    }

    private static void wave(InverterRating inverter, List<Load> fed, List<Finding> found) {
        for (Load load : fed) {
            if (!load.nature().needsSine()) {
                continue;
            }
            Verdict verdict = switch (inverter.wave()) {
                case SINE -> Verdict.PASS;
                case MODIFIED -> load.essential() ? Verdict.FAIL : Verdict.CAUTION;
                case UNKNOWN -> Verdict.CAUTION;
            };
            found.add(inWords(
                    "wave",
                    verdict,
                    Basis.MAKER,
                    "wave in the parts file",
                    "%s needs a sine wave; of the inverter: %s.",
                    load.name(),
                    inverter.wave().words()));
        }
    }

    /**
     * A box that sleeps below some watts harms in two ways: a small load alone never keeps it awake; and where everything
     * pauses, the next load finds it asleep. Counted on to be drawing are only essential loads without a motor inside their
     * hours: a motor pauses by its thermostat, and what is nice to have may be off.
     */
    private static void sleeps(
            InverterRating.Habits habits, List<Load> essential, List<Load> unattended, List<Finding> found) {
        double belowW = habits.sleepsBelowW();
        if (belowW == 0) {
            found.add(inWords(
                    "sleeps", Verdict.PASS, Basis.MAKER, "parts file", "The inverter never puts itself to sleep."));
            return;
        }
        double pauseW = leastW(essential);
        if (Double.isNaN(belowW)) {
            found.add(inWords(
                    "sleeps",
                    Verdict.CAUTION,
                    Basis.GUESS,
                    "not told in the parts file",
                    "Whether the inverter puts itself to sleep under a small load is not known; with nobody by, %s could"
                            + " stay off. The least they may draw together is %.0f W: try it before trusting it.",
                    names(unattended),
                    pauseW));
            return;
        }
        Load smallest = unattended.get(0);
        double smallestW = Double.POSITIVE_INFINITY;
        for (Load load : unattended) {
            double onW = leastWhileOnW(load, essential);
            if (onW < smallestW) {
                smallest = load;
                smallestW = onW;
            }
        }
        if (smallestW < belowW) {
            found.add(Finding.atLeast(
                    "sleeps",
                    Verdict.FAIL,
                    smallestW,
                    belowW,
                    "W",
                    Basis.MAKER,
                    "sleep threshold in the parts file",
                    "The inverter sleeps below %2$.0f W, and with %3$s on there may be no more than %1$.1f W.",
                    smallestW,
                    belowW,
                    smallest.name()));
            return;
        }
        Verdict ifAsleep = switch (habits.wakesByItself()) {
            case YES -> Verdict.PASS;
            case NO -> Verdict.FAIL;
            case UNKNOWN -> Verdict.CAUTION;
        };
        found.add(Finding.atLeast(
                "sleeps",
                ifAsleep,
                pauseW,
                belowW,
                "W",
                Basis.MAKER,
                "sleep threshold in the parts file",
                "The inverter sleeps below %2$.0f W; there may be moments with no more than %1$.1f W, from which it %3$s.",
                pauseW,
                belowW,
                switch (habits.wakesByItself()) {
                    case YES -> "wakes by itself";
                    case NO -> "does not wake by itself";
                    case UNKNOWN -> "may not wake by itself: the maker does not tell";
                }));
    }

    /** Least that essential loads surely draw at any instant of the day, W. */
    private static double leastW(List<Load> essential) {
        double least = Double.POSITIVE_INFINITY;
        for (double hour : instants(essential)) {
            least = Math.min(least, sureW(essential, hour));
        }
        return least;
    }

    /** The same over the instants at which one load may be on, itself counted. */
    private static double leastWhileOnW(Load load, List<Load> essential) {
        double least = Double.POSITIVE_INFINITY;
        for (double hour : instants(essential)) {
            if (mayRunAt(load, hour)) {
                double aloneW = sure(load) ? 0 : load.runningW();
                least = Math.min(least, aloneW + sureW(essential, hour));
            }
        }
        return least;
    }

    private static double sureW(List<Load> essential, double hour) {
        double watts = 0;
        for (Load load : essential) {
            watts += sure(load) && mayRunAt(load, hour) ? load.runningW() : 0;
        }
        return watts;
    }

    private static boolean sure(Load load) {
        return load.nature().start() == null && load.need() instanceof Need.AlwaysOn;
    }

    private static boolean mayRunAt(Load load, double hour) {
        return Coincidence.mayRun(load).stream().anyMatch(window -> window.overlapHours(hour, MOMENT_H) > 0);
    }

    private static Set<Double> instants(List<Load> loads) {
        Set<Double> hours = new TreeSet<>(Set.of(0.0));
        for (Load load : loads) {
            for (DayWindow window : Coincidence.mayRun(load)) {
                hours.add(window.fromHour());
                hours.add(window.toHour() % 24);
            }
        }
        return hours;
    }

    private static void afterFlat(InverterRating.Habits habits, List<Load> unattended, List<Finding> found) {
        Stated restarts = habits.restartsAfterFlat();
        found.add(inWords(
                "after-flat",
                restarts == Stated.YES ? Verdict.PASS : Verdict.CAUTION,
                restarts == Stated.UNKNOWN ? Basis.GUESS : Basis.MAKER,
                restarts == Stated.UNKNOWN ? "not told in the parts file" : "parts file",
                switch (restarts) {
                    case YES -> "Once a battery that ran flat is charged again the inverter comes back by itself.";
                    case NO ->
                        "Once the battery has run flat the inverter stays off until somebody presses a button. The outage"
                                + " has failed by then, but %s would stay off through the next day's sun too.";
                    case UNKNOWN ->
                        "Whether the inverter comes back by itself after the battery has run flat is not known; if"
                                + " not, %s would stay off although it is charged again.";
                },
                names(unattended)));
    }

    private static String names(List<Load> loads) {
        return loads.stream().map(Load::name).collect(Collectors.joining(", "));
    }
}
