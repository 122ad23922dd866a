package tideover.engine.rig;

import static tideover.engine.why.Finding.atLeast;
import static tideover.engine.why.Finding.inWords;

import java.util.List;
import tideover.engine.battery.Chemistry;
import tideover.engine.battery.Hydrogen;
import tideover.engine.part.Enclosure;
import tideover.engine.part.RatedStore;
import tideover.engine.site.RoomKind;
import tideover.engine.why.Basis;
import tideover.engine.why.Finding;
import tideover.engine.why.Verdict;

/**
 * Air for lead batteries, which give off hydrogen while they are charged, counted at hard charging. A ready-made box is aired as its
 * maker means it; its room is looked at where it is known to hold lead.
 */
final class AirRules {
    private static final String SOURCE = "EN 50272-2 / IEC 62485-2 section 7, charged hard; check the edition in force";
    private static final String VENTS =
            " Within a hand's breadth of its vents take the air for explosive, however well it is aired: nothing there that"
                    + " sparks or burns.";

    /** The volts of a lead cell. */
    private static final double LEAD_CELL_V = 2;

    private static final double EACH_AH = 100;

    private AirRules() {}

    static void find(Rig rig, Site site, List<Finding> found) {
        if (rig.store() instanceof RatedStore bank) {
            if (bank.chemistry().isLead()) {
                lead(rig, bank, site, found);
            }
        } else if (rig.route() != Route.READY_BOX) {
            perhapsLead(rig, found);
        }
    }

    private static void lead(Rig rig, RatedStore bank, Site site, List<Finding> found) {
        Chemistry chemistry = bank.chemistry();
        double airM3PerH = Hydrogen.airM3PerH(
                chemistry.traits().cells(bank.nominalV()),
                Hydrogen.boostMilliampPerAh(chemistry),
                bank.capacity().ratedAh());
        double openingCm2 = Hydrogen.openingCm2(airM3PerH);
        Enclosure enclosure = Assembly.enclosure(rig);
        if (enclosure != null) {
            enclosed(enclosure, chemistry, openingCm2, found);
        }
        boolean outdoors = site.storeRoom() == RoomKind.OUTDOORS;
        found.add(inWords(
                "ventilation",
                Verdict.CAUTION,
                Basis.PUBLISHED,
                SOURCE,
                (outdoors
                                ? "A %s battery gives off hydrogen while it is charged."
                                : "A %s battery gives off hydrogen while it is charged: where it stands %.2f m3 of fresh air an hour"
                                        + " are needed, by an opening of %.0f cm2 for air to come in and as much for it to go out.")
                        + VENTS,
                chemistry.words(),
                airM3PerH,
                Math.ceil(openingCm2)));
        if (chemistry == Chemistry.FLOODED_LEAD && site.sleptIn()) {
            found.add(
                    inWords(
                            "flooded-slept-in",
                            Verdict.FAIL,
                            Basis.COMMON_PRACTICE,
                            "flooded lead is charged where nobody sleeps",
                            "The battery is flooded lead, and people sleep there: while it is charged it gives off hydrogen and acid mist."));
        }
    }

    /** Small and shut, so that what the maker does not tell is taken as tight where the battery gasses freely. */
    private static void enclosed(Enclosure enclosure, Chemistry chemistry, double openingCm2, List<Finding> found) {
        double ventCm2 = enclosure.housing().ventCm2();
        if (!Double.isNaN(ventCm2)) {
            found.add(atLeast(
                    "ventilation",
                    Verdict.FAIL,
                    ventCm2,
                    openingCm2,
                    "cm2",
                    Basis.PUBLISHED,
                    SOURCE,
                    "A %s battery of that size wants openings of %.1f cm2 in its enclosure; %s has %.1f cm2.",
                    chemistry.words(),
                    openingCm2,
                    enclosure.listing().name(),
                    ventCm2));
            return;
        }
        found.add(inWords(
                "ventilation",
                chemistry == Chemistry.FLOODED_LEAD ? Verdict.FAIL : Verdict.CAUTION,
                Basis.GUESS,
                "not told in the parts file",
                "A %s battery of that size wants openings of %.1f cm2 in its enclosure, in and out; of %s it is not told what it"
                        + " has.",
                chemistry.words(),
                openingCm2,
                enclosure.listing().name()));
    }

    /** A label that does not say what is inside: what each hundred ampere-hours want if it is flooded lead. */
    private static void perhapsLead(Rig rig, List<Finding> found) {
        int cells = (int) Math.max(1, Math.round(rig.busV() / LEAD_CELL_V));
        double airM3PerH = Hydrogen.airM3PerH(cells, Hydrogen.boostMilliampPerAh(Chemistry.FLOODED_LEAD), EACH_AH);
        found.add(inWords(
                "ventilation",
                Verdict.CAUTION,
                Basis.PUBLISHED,
                SOURCE,
                "The parts file does not tell what the battery is made of. If it is lead it gives off hydrogen while it is charged:"
                        + " each 100 Ah at %.1f V then want up to %.1f m3 of fresh air an hour, openings of %.0f cm2 in and out, in"
                        + " its room and in any enclosure, and flooded lead must not be where people sleep."
                        + VENTS,
                rig.busV(),
                airM3PerH,
                Math.ceil(Hydrogen.openingCm2(airM3PerH))));
    }
}
