package tideover.engine.rig;

import static tideover.engine.why.Finding.atMost;
import static tideover.engine.why.Finding.inWords;

import java.util.List;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import tideover.engine.load.Coincidence;
import tideover.engine.load.DayWindow;
import tideover.engine.load.Load;
import tideover.engine.part.Outlet;
import tideover.engine.part.SocketBoard;
import tideover.engine.why.Basis;
import tideover.engine.why.Finding;
import tideover.engine.why.Verdict;

/**
 * What a car's lighter socket carries for hours: its springs touch at two points and grow hot, whatever is printed beside it.
 * Looked at is the largest load alone, and all of them spread evenly over the sockets, which is the best that can be done: unlike
 * loads may leave one socket with more.
 */
final class SocketRules {
    /** Amps for hours; fuses of 10 to 15 A are for minutes. Common practice, no source. */
    static final double CAR_SOCKET_A = 8;

    /** Running so long in a day is no matter of minutes. Common practice, no source. */
    static final double LASTING_H = 1;

    /** A "12 V" socket on a 12.8 V battery. Common practice, no source. */
    private static final double BATTERY_VOLT_SHARE = 0.25;

    private static final String RULE = "car-socket-hours";
    private static final String SOURCE = "a car socket carries 8 A for hours, whatever is printed on it";
    private static final Pattern CAR = Pattern.compile("(?i)\\b(car|vehicle|lighter|cigar(ette)?)\\b");

    private SocketRules() {}

    static void find(Rig rig, Sockets sockets, List<Finding> found) {
        boards(rig, found);
        for (Outlet outlet : rig.outlets()) {
            if (outlet.supply().isAc() || !CAR.matcher(outlet.supply().plug()).find()) {
                continue;
            }
            List<Load> lasting = sockets.plugged().stream()
                    .filter(plugged -> plugged.outlet() == outlet)
                    .map(Sockets.Plugged::load)
                    .filter(SocketRules::lasts)
                    .toList();
            if (!lasting.isEmpty()) {
                loaded(outlet, lasting, found);
            }
        }
    }

    /** A socket without a converter gives the battery's volts, whatever is printed beside it. */
    private static void boards(Rig rig, List<Finding> found) {
        for (Chosen chosen : rig.chosen()) {
            if (!(chosen.part() instanceof SocketBoard board)) {
                continue;
            }
            for (Outlet outlet : board.outlets()) {
                double volts = outlet.supply().volts();
                boolean straight = outlet.efficiency() == 1;
                boolean same = Math.abs(rig.busV() - volts) <= BATTERY_VOLT_SHARE * volts;
                found.add(inWords(
                        "socket-volts",
                        !straight || same ? Verdict.PASS : Verdict.FAIL,
                        Basis.COMMON_PRACTICE,
                        "a socket without a converter gives the battery's own volts",
                        "%s: its outlet %s %s; the battery has %.1f V.",
                        board.listing().name(),
                        outlet.supply().words(),
                        straight ? "has no converter" : "has a converter",
                        rig.busV()));
            }
        }
    }

    private static void loaded(Outlet outlet, List<Load> lasting, List<Finding> found) {
        List<Load> essential = lasting.stream().filter(Load::essential).toList();
        double essentialA = mostA(outlet, essential);
        if (!essential.isEmpty()) {
            found.add(finding(outlet, essential, essentialA, Verdict.FAIL, ""));
        }
        double withNiceA = mostA(outlet, lasting);
        if (withNiceA > essentialA) {
            found.add(finding(outlet, lasting, withNiceA, Verdict.CAUTION, ", nice-to-have ones counted"));
        }
        double statedA = outlet.maxW() / outlet.count() / outlet.supply().volts();
        if (statedA > CAR_SOCKET_A) {
            found.add(atMost(
                    RULE,
                    Verdict.CAUTION,
                    statedA,
                    CAR_SOCKET_A,
                    "A",
                    Basis.COMMON_PRACTICE,
                    SOURCE,
                    "Each socket %s is stated for %.0f W, %.1f A: for hours draw no more than %.0f A, %.0f W, from it.",
                    outlet.supply().words(),
                    outlet.maxW() / outlet.count(),
                    statedA,
                    CAR_SOCKET_A,
                    CAR_SOCKET_A * outlet.supply().volts()));
        }
    }

    private static Finding finding(Outlet outlet, List<Load> loads, double amps, Verdict ifBroken, String also) {
        return atMost(
                RULE,
                ifBroken,
                amps,
                CAR_SOCKET_A,
                "A",
                Basis.COMMON_PRACTICE,
                SOURCE,
                "%s: up to %.1f A for hours on a socket %s%s; it carries %.0f A, %.0f W.",
                loads.stream().map(Load::name).collect(Collectors.joining(", ")),
                amps,
                outlet.supply().words(),
                also,
                CAR_SOCKET_A,
                CAR_SOCKET_A * outlet.supply().volts());
    }

    /** On one socket, A: at least the largest alone, at least the share of all that run together. */
    private static double mostA(Outlet outlet, List<Load> loads) {
        double largestW = loads.stream().mapToDouble(Load::runningW).max().orElse(0);
        double sharedW = Coincidence.peakW(loads, Load::runningW) / outlet.count();
        return Math.max(largestW, sharedW) / outlet.supply().volts();
    }

    private static boolean lasts(Load load) {
        return load.onHours(12).stream().mapToDouble(DayWindow::lengthHours).sum() >= LASTING_H;
    }
}
