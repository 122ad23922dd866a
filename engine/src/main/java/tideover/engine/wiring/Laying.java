package tideover.engine.wiring;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;
import tideover.engine.quantity.Require;

/**
 * How a household's cables lie: one-way lengths in m, and what is about them.
 *
 * @param panelsM     panels to the charge controller, or to the box that has one
 * @param controllerM charge controller to the battery
 * @param inverterM   battery to the inverter, or to the electronics of an enclosure
 * @param socketsM    battery to sockets of direct current
 * @param chargerM    charger to the battery
 * @param engineM     engine to the charger
 * @param linkM       each link between batteries, or from one to the bars where they meet
 * @param linkOtherM  the longest of these where they were cut unlike; else {@code linkM}
 * @param hottestDegC hottest air about the cables
 * @param sideBySide  current-carrying wires that lie together
 * @param cordM       by name of a load, how far its plug is from the outlet beyond its own cord
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
        Map<String, Double> cordM) {
    /** What is taken where a household tells nothing. */
    public static final Laying ASSUMED = new Laying(8, .5, .5, .5, 1, 8, .3, .3, 40, 2, Map.of());

    private static final double LONGEST_M = 200;

    public Laying {
        length("panelsM", panelsM);
        length("controllerM", controllerM);
        length("inverterM", inverterM);
        length("socketsM", socketsM);
        length("chargerM", chargerM);
        length("engineM", engineM);
        length("linkM", linkM);
        length("linkOtherM", linkOtherM);
        Require.within(-20, 70, "hottestDegC", hottestDegC, "degC");
        Require.within(2, 40, "sideBySide", sideBySide);
        cordM.forEach((load, metres) -> length("cord of " + load, metres));
        cordM = Collections.unmodifiableMap(new LinkedHashMap<>(cordM));
    }

    private static void length(String name, double metres) {
        Require.within(0, LONGEST_M, name, metres, "m");
    }
}
