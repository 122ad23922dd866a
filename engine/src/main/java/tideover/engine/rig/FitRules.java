package tideover.engine.rig;

import static tideover.engine.why.Finding.atLeast;
import static tideover.engine.why.Finding.atMost;
import static tideover.engine.why.Finding.inWords;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import tideover.engine.part.Battery;
import tideover.engine.part.BatteryCase;
import tideover.engine.part.Dimensions;
import tideover.engine.part.Enclosure;
import tideover.engine.part.Housing;
import tideover.engine.why.Basis;
import tideover.engine.why.Finding;
import tideover.engine.why.Verdict;

/**
 * Whether the batteries go into the enclosure: size, terminals, mass. What both makers tell is judged; what one of them does not is
 * gathered in one caution, for a tape measure settles it and nobody is hurt by a battery that does not go in.
 */
final class FitRules {
    private FitRules() {}

    static void find(Rig rig, List<Finding> found) {
        Enclosure enclosure = Assembly.enclosure(rig);
        Chosen bank = Assembly.bank(rig);
        if (enclosure == null || bank == null) {
            return;
        }
        BatteryCase casing = ((Battery) bank.part()).casing();
        Housing housing = enclosure.housing();
        List<String> untold = new ArrayList<>();
        inside(bank, enclosure, casing.size(), housing.room(), untold, found);
        terminals(bank, enclosure, casing, housing, untold, found);
        mass(bank, enclosure, housing, untold, found);
        if (!untold.isEmpty()) {
            found.add(inWords(
                    "fits-unknown",
                    Verdict.CAUTION,
                    Basis.GUESS,
                    "not told in the parts file",
                    "Whether %s fits %s is not told (%s): measure before you buy.",
                    bank.words(),
                    enclosure.listing().name(),
                    String.join(", ", untold)));
        }
    }

    private static void inside(
            Chosen bank,
            Enclosure enclosure,
            @Nullable Dimensions size,
            @Nullable Dimensions room,
            List<String> untold,
            List<Finding> found) {
        if (size == null || room == null) {
            untold.add("size");
            return;
        }
        found.add(atLeast(
                "fits-inside",
                Verdict.FAIL,
                room.spareMm(size, bank.count()),
                0,
                "mm",
                Basis.MAKER,
                "size_mm and room_mm in the parts file",
                "%s, each %s, in one row: %s has room for %s.",
                bank.words(),
                size.words(),
                enclosure.listing().name(),
                room.words()));
    }

    private static void terminals(
            Chosen bank,
            Enclosure enclosure,
            BatteryCase casing,
            Housing housing,
            List<String> untold,
            List<Finding> found) {
        if (casing.terminals().isEmpty() || housing.terminals().isEmpty()) {
            untold.add("terminals");
            return;
        }
        found.add(inWords(
                "fits-terminals",
                housing.takes(casing.terminals()) ? Verdict.PASS : Verdict.FAIL,
                Basis.MAKER,
                "terminals and takes_terminals in the parts file",
                "%s has terminals of kind %s; %s takes %s.",
                bank.part().listing().name(),
                casing.terminals(),
                enclosure.listing().name(),
                String.join(", ", housing.terminals())));
    }

    private static void mass(
            Chosen bank, Enclosure enclosure, Housing housing, List<String> untold, List<Finding> found) {
        if (Double.isNaN(housing.holdsKg())) {
            untold.add("mass");
            return;
        }
        double kg = bank.count() * bank.part().listing().massKg();
        found.add(atMost(
                "fits-mass",
                Verdict.FAIL,
                kg,
                housing.holdsKg(),
                "kg",
                Basis.MAKER,
                "holds_kg in the parts file",
                "%s weigh %.1f kg; %s holds %.1f kg.",
                bank.words(),
                kg,
                enclosure.listing().name(),
                housing.holdsKg()));
    }
}
