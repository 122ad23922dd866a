package tideover.engine.wiring;

import tideover.engine.electronics.ConductorSize;
import tideover.engine.quantity.Require;

/**
 * Volts lost along a run of two conductors: {@code V = 2 L r(T) I}, L one-way length m, r ohm/m of one conductor at T, I
 * current A. Direct current, or one phase at unity power factor. Left out: contacts, fuses and, for alternating
 * current, the reactance of thick wires.
 */
public final class VoltageDrop {
    /**
     * Most of the system's volts that a run may lose where the load minds it, out and back: boat practice, ABYC E-11 and ISO
     * 13297; the share from memory. NFPA 70 recommends the same for a branch circuit and .05 with its feeder, in a note that
     * does not bind. Check the editions in force.
     */
    public static final double CRITICAL_SHARE = .03;

    /** The same for what does not mind: ABYC E-11 and ISO 13297, from memory. Check the editions in force. */
    public static final double OTHER_SHARE = .10;

    /** Ohm circular mil per foot: copper a little above 20 degC. */
    private static final double OHM_CIRCULAR_MIL_PER_FT = 10.75;

    private VoltageDrop() {}

    /** Out and back. */
    public static double volts(ConductorSize size, double oneWayM, double amps, double conductorDegC) {
        Require.atLeast(0, "oneWayM", oneWayM, "m");
        Require.atLeast(0, "amps", amps, "A");
        return 2 * oneWayM * size.ohmPerM(conductorDegC) * amps;
    }

    /**
     * The boat formula, a second model of the same: {@code K I L / E} circular mils of copper, K 10.75 (ABYC E-11, from
     * memory). It takes the wire as cool; one that works near its limit has about a fifth more ohms.
     *
     * @param roundTripFt out and back
     * @param dropV       that may be lost on it
     */
    public static double circularMils(double amps, double roundTripFt, double dropV) {
        Require.atLeast(0, "amps", amps, "A");
        Require.atLeast(0, "roundTripFt", roundTripFt, "ft");
        Require.above(0, "dropV", dropV, "V");
        return OHM_CIRCULAR_MIL_PER_FT * amps * roundTripFt / dropV;
    }
}
