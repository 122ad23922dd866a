package tideover.engine.rig;

import static tideover.engine.why.Finding.atLeast;
import static tideover.engine.why.Finding.atMost;
import static tideover.engine.why.Finding.inWords;

import java.util.List;
import tideover.engine.battery.FreezingPoint;
import tideover.engine.part.Enclosure;
import tideover.engine.part.Part;
import tideover.engine.part.RatedStore;
import tideover.engine.part.ReadyBox;
import tideover.engine.site.Room;
import tideover.engine.site.RoomKind;
import tideover.engine.why.Basis;
import tideover.engine.why.Finding;
import tideover.engine.why.Stated;
import tideover.engine.why.Verdict;

/**
 * What concerns the place: heat and frost all through the year, for a battery waits there longer than it works; rain; and an engine.
 * None of it rejects a rig: what cold does within an outage is walked, and a place can be changed.
 */
final class PlaceRules {
    /** Above it batteries age fast, and many stop charging soon. Common practice, no source. */
    static final double HOT_DEG_C = 40;

    /** An empty lead battery freezes at {@link FreezingPoint}; one run flat is thinner still. Common practice, no source. */
    static final double FLAT_MARGIN_K = 4;

    /** 20 ft, US Consumer Product Safety Commission and health departments. */
    static final double ENGINE_AWAY_M = 6.1;

    private PlaceRules() {}

    static void find(Rig rig, Site site, List<Finding> found) {
        Room.Extremes degC = site.storeDegC();
        if (degC != null) {
            heat(site, degC.highestDegC(), found);
            if (rig.store() instanceof RatedStore bank && bank.chemistry().isLead()) {
                frost(site, degC.lowestDegC(), found);
            }
        }
        if (site.storeRoom() == RoomKind.OUTDOORS) {
            rain(rig, found);
        }
        if (site.engine() || rig.engine() != null) {
            found.add(inWords(
                    "engine-outdoors",
                    Verdict.CAUTION,
                    Basis.PUBLISHED,
                    "US Consumer Product Safety Commission and health departments",
                    "The engine%s runs outdoors only, at least %.1f m (20 ft) from the house, its doors, windows and vents, with the"
                            + " exhaust pointing away; never in a garage, on a porch or under a carport, open doors or not. Its"
                            + " carbon monoxide has no smell and kills: keep an alarm for it that runs on batteries.",
                    rig.engine() != null && rig.engine().vehicle() ? " of the vehicle" : "",
                    ENGINE_AWAY_M));
        }
    }

    private static void heat(Site site, double highestDegC, List<Finding> found) {
        found.add(atMost(
                "room-warmth",
                Verdict.CAUTION,
                highestDegC,
                HOT_DEG_C,
                "degC",
                Basis.COMMON_PRACTICE,
                "batteries age two to three times as fast at 40 degC as at 25 degC",
                "Where the store stands (%s) it gets up to %.0f degC in these weather years, more under a roof in the sun; above %.0f"
                        + " degC a battery ages fast, and many do not charge: find it a cooler place in summer.",
                site.storeRoom().words(),
                highestDegC,
                HOT_DEG_C));
    }

    private static void frost(Site site, double lowestDegC, List<Finding> found) {
        double flatFreezesDegC = FreezingPoint.degC(0) + FLAT_MARGIN_K;
        found.add(atLeast(
                "room-warmth",
                Verdict.CAUTION,
                lowestDegC,
                flatFreezesDegC,
                "degC",
                Basis.COMMON_PRACTICE,
                "freezing point of the acid of an empty battery, less a margin for one run flat",
                "Where the store stands (%s) it gets down to %.0f degC in these weather years; run flat, lead may freeze from %.0f"
                        + " degC on. Charge it at once after an outage and keep it full all winter; a frozen one must not be charged.",
                site.storeRoom().words(),
                lowestDegC,
                flatFreezesDegC));
    }

    private static void rain(Rig rig, List<Finding> found) {
        Part shell = null;
        Stated keepsOut = Stated.UNKNOWN;
        for (Chosen chosen : rig.chosen()) {
            if (chosen.part() instanceof ReadyBox box) {
                shell = box;
                keepsOut = box.keepsRainOut();
            } else if (chosen.part() instanceof Enclosure enclosure) {
                shell = enclosure;
                keepsOut = enclosure.housing().keepsRainOut();
            }
        }
        boolean told = shell != null && keepsOut != Stated.UNKNOWN;
        found.add(inWords(
                "rain",
                keepsOut == Stated.YES ? Verdict.PASS : Verdict.CAUTION,
                told ? Basis.MAKER : Basis.COMMON_PRACTICE,
                told ? "keeps_rain_out in the parts file" : "what is not told to keep rain out does not",
                "The store stands outdoors; %s%s",
                shell == null
                        ? "nothing is around battery and electronics"
                        : shell.listing().name(),
                keepsOut == Stated.YES
                        ? " keeps rain out, as its maker tells; plugs and cords must, too."
                        : shell == null
                                ? ". Rain, dew and animals must not reach them: bring them under a roof."
                                : (keepsOut == Stated.NO ? " does not keep rain out" : " is not told to keep rain out")
                                        + ". Bring it under a roof."));
    }
}
