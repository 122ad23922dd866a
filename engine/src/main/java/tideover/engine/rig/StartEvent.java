package tideover.engine.rig;

import java.util.List;
import java.util.stream.Collectors;
import tideover.engine.load.DayWindow;
import tideover.engine.load.Load;

/**
 * Motors that may start at one instant, with everything that may be running then.
 *
 * @param starting     the motors
 * @param beside       what runs meanwhile
 * @param when         stretches of the day in which it may come; a minute stands for an instant
 * @param surgeVa      through the inverter: apparent powers added as if in phase, which is the safe side
 * @param acW          real watts of the same
 * @param directW      taken from the bus past the inverter, losses of outlets included
 * @param dcW          all that is taken from the bus, the inverter's losses included
 * @param seconds      until the slowest has run up
 * @param inverterOn   whether the inverter is on and can trip
 * @param essential    whether only essential loads take part; else its failing is a caution
 */
public record StartEvent(
        List<Load> starting,
        List<Load> beside,
        List<DayWindow> when,
        double surgeVa,
        double acW,
        double directW,
        double dcW,
        double seconds,
        boolean inverterOn,
        boolean essential) {
    public StartEvent {
        starting = List.copyOf(starting);
        beside = List.copyOf(beside);
        when = List.copyOf(when);
    }

    /** Whether it may come in a stretch of the day; {@code startHour} within one day. */
    public boolean mayCome(double startHour, double lengthHours) {
        return when.stream().anyMatch(window -> window.overlapHours(startHour, lengthHours) > 0);
    }

    /** Whether a motor behind the inverter starts. */
    public boolean startsAc() {
        return starting.stream().anyMatch(load -> load.supply().isAc());
    }

    /** Such as "fridge and pump together". */
    public String words() {
        String names = starting.stream().map(Load::name).collect(Collectors.joining(" and "));
        return starting.size() == 1 ? names : names + " together";
    }
}
