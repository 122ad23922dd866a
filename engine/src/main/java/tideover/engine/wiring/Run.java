package tideover.engine.wiring;

import tideover.engine.quantity.Require;

/**
 * A pair of conductors of a rig, before anything is chosen for it.
 *
 * @param what    of a cord: the load at its end; else empty
 * @param count   how many alike
 * @param oneWayM length of one conductor
 * @param systemV volts that drops are held against
 * @param mostV   highest volts that protection must part
 */
public record Run(Kind kind, String what, int count, double oneWayM, double systemV, double mostV, Amps amps) {
    /** Between what and what, and what that means for its protection. */
    public enum Kind {
        LINK("battery", "bars where the batteries meet", true, true, 2),
        SERIES("battery", "next battery in the row", false, true, 2),
        MAIN("battery", "electronics of the enclosure", true, true, 2),
        INVERTER("battery", "inverter", true, false, 2),
        CONTROLLER("battery", "charge controller", true, true, 0),
        CHARGER("battery", "charger", true, true, 0),
        SOCKETS("battery", "sockets", true, false, 0),
        PANELS("panels", "charge controller", false, false, 0),
        ENGINE("engine", "charger", false, false, 0),
        CORD("outlet", "load", false, false, 0);

        private final String from;
        private final String to;
        private final boolean fused;
        private final boolean bothWays;
        private final int deviceLugs;

        Kind(String from, String to, boolean fused, boolean bothWays, int deviceLugs) {
            this.from = from;
            this.to = to;
            this.fused = fused;
            this.bothWays = bothWays;
            this.deviceLugs = deviceLugs;
        }

        public String from() {
            return from;
        }

        public String to() {
            return to;
        }

        /** Whether it begins at a battery, whose current nothing but a fuse or breaker of its own limits. */
        public boolean fused() {
            return fused;
        }

        /** Whether current or a fault may come from either end, so that a polarised breaker would burn. */
        public boolean bothWays() {
            return bothWays;
        }

        /** Bolted ends away from the battery; what clamps cables by screws has none. */
        int deviceLugs() {
            return deviceLugs;
        }
    }

    public Run {
        Require.within(1, 1000, "count", count);
        Require.atLeast(0, "oneWayM", oneWayM, "m");
        Require.above(0, "systemV", systemV, "V");
        Require.above(0, "mostV", mostV, "V");
    }

    /** Such as "battery to inverter", or "outlet to Chest freezer". */
    public String words() {
        return kind.from() + " to " + (what.isEmpty() ? kind.to() : what);
    }
}
