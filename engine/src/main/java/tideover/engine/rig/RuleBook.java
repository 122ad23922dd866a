package tideover.engine.rig;

import java.util.ArrayList;
import java.util.List;
import tideover.engine.load.Load;
import tideover.engine.why.Finding;

/**
 * The rules a rig must keep before it is worth simulating. Each gives one finding or several; only a failed one rejects.
 * What a part does not state is taken as the bad case where people or the battery are at stake, and is a caution elsewhere.
 */
public final class RuleBook {
    private RuleBook() {}

    /** Everything the rules find. */
    public static List<Finding> findings(Rig rig, List<Load> loads, Site site) {
        List<Finding> found = new ArrayList<>(loadFindings(rig, loads));
        found.addAll(partFindings(rig, site));
        return found;
    }

    /** What the rules find between loads, outlets, inverter and store; panels make no difference to it. */
    public static List<Finding> loadFindings(Rig rig, List<Load> everyDay) {
        List<Load> loads = rig.served(everyDay);
        List<Finding> found = new ArrayList<>();
        Sockets sockets = Sockets.of(rig, loads);
        LoadRules.find(rig, loads, sockets, found);
        SocketRules.find(rig, sockets, found);
        InverterRules.find(rig, sockets, found);
        StartRules.find(rig, loads, found);
        HardWireRules.find(sockets, found);
        MedicalRules.find(rig, loads, found);
        EngineRules.medical(rig, loads, found);
        return found;
    }

    /**
     * What the rules find between the loads that take alternating current, their outlets and the inverter alone; neither store nor
     * controller nor panels make a difference to it.
     */
    public static List<Finding> alternatingFindings(Rig rig, List<Load> everyDay) {
        List<Load> loads = rig.served(everyDay);
        List<Load> alternating =
                loads.stream().filter(load -> load.supply().isAc()).toList();
        List<Finding> found = new ArrayList<>();
        Sockets sockets = Sockets.of(rig, alternating);
        LoadRules.findAlternating(rig, alternating, sockets, found);
        InverterRules.find(rig, sockets, found);
        return found;
    }

    /** What the rules find between controller, the store's volts and panels; nothing else makes a difference to it. */
    public static List<Finding> sunFindings(Rig rig, Site site) {
        List<Finding> found = new ArrayList<>();
        StoreRules.controllerVolts(rig, found);
        PanelRules.find(rig, site, found);
        return found;
    }

    /** What the rules find in the arrangements around medical loads; no rig makes a difference to it. */
    public static List<Finding> medicalFindings(List<Load> loads) {
        List<Finding> found = new ArrayList<>();
        MedicalRules.arrangements(loads, found);
        return found;
    }

    /** What the rules find between the parts themselves; loads make no difference to it. */
    public static List<Finding> partFindings(Rig rig, Site site) {
        List<Finding> found = new ArrayList<>();
        StoreRules.find(rig, site, found);
        PanelRules.find(rig, site, found);
        ChargeRules.find(rig, found);
        FitRules.find(rig, found);
        AirRules.find(rig, site, found);
        PlaceRules.find(rig, site, found);
        EngineRules.find(rig, site, found);
        LiftRules.find(rig, found);
        return found;
    }
}
