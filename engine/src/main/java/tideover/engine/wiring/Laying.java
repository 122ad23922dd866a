package tideover.engine.wiring;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;
import tideover.engine.quantity.Require;

/**
 * How far apart things stand, and what the cables between them lie in. Lengths are one way, in metres along the cable: a
 * circuit has twice as much copper.
 *
 * @param panelsM     panels to charge controller, or to the box that holds one
 * @param controllerM charge controller to battery
 * @param inverterM   battery to inverter, or to the electronics of an enclosure
 * @param socketsM    battery to the sockets of direct current
 * @param chargerM    charger to battery
 * @param engineM     engine to charger; see {@link #LEAST_ENGINE_M}
 * @param linkM       each link between two batteries; the shortest where they are cut unlike
 * @param linkOtherM  the longest such link; the same as {@code linkM} where all are cut alike
 * @param hottestDegC hottest air about the cables
 * @param sideBySide  wires with current in them that lie together
 * @param leadsOnRoof whether panel leads lie closer than a finger's breadth above a sunlit roof, and so far hotter than the air
 * @param cordM       by the name of a load: how far its plug is from the outlet, beyond its own cord; in the order of the map
 *                    that was given
 */
public record Laying(
        double panelsM,
        double controllerM,
        double inverterM,
        double socketsM,
        double chargerM,
        double engineM,
        double linkM,
        double linkOtherM,
        double hottestDegC,
        int sideBySide,
        boolean leadsOnRoof,
        Map<String, Double> cordM) {
    /**
     * An engine runs outdoors at least so far from any door, window or vent: 20 ft, US Consumer Product Safety Commission.
     * Nothing that it feeds indoors can be nearer.
     */
    public static final double LEAST_ENGINE_M = 20 * 0.3048;

    public static final double LONGEST_M = 200;
    public static final double LEAST_DEG_C = -20;
    public static final double MOST_DEG_C = 70;
    /** Two, plus and minus, are the least that a circuit has. */
    public static final int FEWEST_SIDE_BY_SIDE = 2;

    public static final int MOST_SIDE_BY_SIDE = 40;

    /** Of a plan that tells nothing: a small rig in one corner, its panels in the yard. A guess. */
    public static final Laying ASSUMED = new Laying(8, 0.5, 0.5, 0.5, 1, 8, 0.3, 0.3, 40, 2, false, Map.of());

    public Laying {
        length("panelsM", panelsM);
        length("controllerM", controllerM);
        length("inverterM", inverterM);
        length("socketsM", socketsM);
        length("chargerM", chargerM);
        length("engineM", engineM);
        length("linkM", linkM);
        Require.within(linkM, LONGEST_M, "linkOtherM", linkOtherM, "m");
        Require.within(LEAST_DEG_C, MOST_DEG_C, "hottestDegC", hottestDegC, "degC");
        Require.within(FEWEST_SIDE_BY_SIDE, MOST_SIDE_BY_SIDE, "sideBySide", sideBySide);
        cordM.forEach((load, metres) -> length("cord of " + load, metres));
        cordM = Collections.unmodifiableMap(new LinkedHashMap<>(cordM));
    }

    /** Of leads that lie free. */
    public Laying(
            double panelsM,
            double controllerM,
            double inverterM,
            double socketsM,
            double chargerM,
            double engineM,
            double linkM,
            double linkOtherM,
            double hottestDegC,
            int sideBySide,
            Map<String, Double> cordM) {
        this(
                panelsM,
                controllerM,
                inverterM,
                socketsM,
                chargerM,
                engineM,
                linkM,
                linkOtherM,
                hottestDegC,
                sideBySide,
                false,
                cordM);
    }

    private static void length(String name, double metres) {
        Require.within(0, LONGEST_M, name, metres, "m");
    }
}
