package tideover.engine.load;

import tideover.engine.quantity.Require;

/**
 * What is arranged around a load that somebody's health hangs on. Such a load is never called met on a share of outages.
 *
 * @param bridgeSeconds how long the person can be without it, by what their own care team says; 0 for not at all
 * @param alarm         what tells that it has stopped; empty where nothing does
 * @param whoActs       who does something then; empty where nobody was named
 * @param ableToAct     whether that person is always there and able to
 * @param secondPlan    what is done that does not depend on this rig; empty where nothing was named
 */
public record Medical(double bridgeSeconds, String alarm, String whoActs, boolean ableToAct, String secondPlan) {
    public Medical {
        Require.within(0, 86400 * 60.0, "bridgeSeconds", bridgeSeconds, "s");
    }

    /** Whether somebody is named who is always there and able to act. */
    public boolean someoneAble() {
        return ableToAct && !whoActs.isBlank();
    }

    public boolean hasAlarm() {
        return !alarm.isBlank();
    }

    public boolean hasSecondPlan() {
        return !secondPlan.isBlank();
    }
}
