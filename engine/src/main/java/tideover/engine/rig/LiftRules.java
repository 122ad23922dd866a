package tideover.engine.rig;

import static tideover.engine.why.Finding.atMost;

import java.util.List;
import tideover.engine.part.Enclosure;
import tideover.engine.why.Basis;
import tideover.engine.why.Finding;
import tideover.engine.why.Verdict;

/** What somebody must lift. Never divided between people. */
final class LiftRules {
    private LiftRules() {}

    static void find(Rig rig, List<Finding> found) {
        Enclosure enclosure = Assembly.enclosure(rig);
        Chosen bank = Assembly.bank(rig);
        double movedKg = rig.heaviestMovedKg();
        String what = enclosure == null || bank == null || rig.heaviestKg() > rig.movedWholeKg()
                ? "The heaviest single piece is %1$.1f kg."
                : "Each battery is %4$.1f kg; moved whole, %5$s with its batteries inside is %1$.1f kg: put them in where it stands.";
        found.add(atMost(
                "lift",
                Verdict.CAUTION,
                movedKg,
                Lifting.floorToBenchKg(),
                "kg",
                Basis.PUBLISHED,
                "NIOSH 94-110, revised lifting equation; the posture is common practice, no source",
                what
                        + " From the floor to a bench %2$.1f kg is the most for one person, %3$.0f kg in the best posture. Above that"
                        + " use wheels or a hoist; a second person does not halve a lift.",
                movedKg,
                Lifting.floorToBenchKg(),
                Lifting.LOAD_CONSTANT_KG,
                bank == null ? 0.0 : bank.part().listing().massKg(),
                enclosure == null ? "" : enclosure.listing().name()));
    }
}
