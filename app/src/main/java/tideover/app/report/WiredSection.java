package tideover.app.report;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import tideover.engine.answer.ProvenRig;
import tideover.engine.load.Load;
import tideover.engine.rig.Route;
import tideover.engine.wiring.Build;
import tideover.engine.wiring.OneLine;

/** How a rig is wired and what that takes, as text and page show it. */
final class WiredSection {
    private WiredSection() {}

    static Page.Wired of(ProvenRig rig, List<Load> loads, String currency) {
        Build build = rig.build();
        boolean runs = !build.circuit().runs().isEmpty();
        Table protections = runs ? WireSchedule.protections(build) : null;
        boolean guarded = protections != null && !protections.rows().isEmpty();
        return new Page.Wired(
                inside(build),
                runs ? WireSchedule.wires(build) : null,
                runs ? wiresNote(build) : "",
                guarded ? protections : null,
                protectionsNote(build, guarded),
                OneLineTree.of(OneLine.of(build, loads), build.circuit().runs()),
                mind(build),
                smallParts(build, currency),
                smallPartsNote(build));
    }

    /** What nobody wires by hand. */
    private static String inside(Build build) {
        return switch (build.rig().route()) {
            case READY_BOX ->
                "Inside a ready-made box everything is wired and protected by its maker: nothing in there is opened or"
                        + " changed.";
            case ENCLOSURE -> "Inside the enclosure everything but the battery is its maker's.";
            case SEPARATE_PARTS -> "";
        };
    }

    private static String wiresNote(Build build) {
        return build.counted()
                ? WireSchedule.WIRES_NOTE
                : "The plan names no file of small parts: these are the standard sizes that would do. "
                        + WireSchedule.WIRES_NOTE;
    }

    private static String protectionsNote(Build build, boolean guarded) {
        String open = WireSchedule.unprotected(build);
        boolean atBattery = build.circuit().runs().stream()
                .anyMatch(wired -> wired.run().amps().fault() > 0);
        String note = guarded && atBattery ? WireSchedule.PROTECTIONS_NOTE : "";
        return note.isEmpty() || open.isEmpty() ? note + open : note + " " + open;
    }

    /** The usual cautions of wiring; what this rig's own findings warn of stands with all the others. */
    private static List<String> mind(Build build) {
        List<String> mind = new ArrayList<>();
        if (build.rig().route() != Route.READY_BOX) {
            mind.add(
                    "By a licensed electrician where the local code asks for one; the code and the makers' instructions go before"
                            + " these tables.");
            mind.add(
                    "What carries mains volts, inverter, charger, cords and strips, is listed by a testing laboratory, and so are fuses"
                            + " and breakers, for direct current.");
            mind.add(
                    "Rings and watches off, tools insulated, eyes covered. The fuse goes in last and comes out first.");
        }
        if (build.rig().panel() != null) {
            mind.add("Never open the panels' plugs in the sun or under load: cover the panels first.");
        }
        return mind;
    }

    private static @Nullable Table smallParts(Build build, String currency) {
        if (build.partsList().lines().isEmpty()) {
            return null;
        }
        return build.counted()
                ? SmallPartsTable.priced(build.partsList(), currency)
                : SmallPartsTable.sizes(build.partsList());
    }

    private static String smallPartsNote(Build build) {
        String missing = SmallPartsTable.missing(build);
        if (build.counted()) {
            return missing;
        }
        String unpriced = "They have no price here: the plan's allowance stands for them.";
        return missing.isEmpty() ? unpriced : missing + " " + unpriced;
    }
}
