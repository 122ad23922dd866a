package tideover.engine.wiring;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import tideover.engine.rig.FuelUse;
import tideover.engine.rig.Rig;
import tideover.engine.why.Basis;
import tideover.engine.why.Finding;
import tideover.engine.why.Verdict;

/**
 * A rig wired and counted to the last lug.
 *
 * @param rig     with the resistance of its cables
 * @param counted whether small parts and tools have prices of their own; else an allowance stands for them
 * @param fuel    what its own engine burns in one outage; null without one
 */
public record Build(
        Rig rig,
        Circuit circuit,
        PartsList partsList,
        boolean counted,
        @Nullable FuelUse fuel) {
    /** Of what burns none. */
    public Build(Rig rig, Circuit circuit, PartsList partsList, boolean counted) {
        this(rig, circuit, partsList, counted, null);
    }

    /** Price of that fuel, whole cents. */
    public long fuelCents() {
        return fuel == null ? 0 : fuel.cents();
    }

    /** The same with what an engine burns that feeds its loads itself. */
    public Build with(FuelUse burnt) {
        return new Build(rig, circuit, partsList, counted, burnt);
    }

    /** What the rules of wiring say: of the whole, then run by run. */
    public List<Finding> findings() {
        List<Finding> all = new ArrayList<>(circuit.findings());
        circuit.runs().forEach(wired -> all.addAll(wired.findings()));
        if (counted && !partsList.missing().isEmpty()) {
            all.add(Finding.inWords(
                    "not-priced",
                    Verdict.CAUTION,
                    Basis.YOURS,
                    "small parts of the plan",
                    "Needed and not in the list of small parts, so not in the price: %s.",
                    words(partsList.missing())));
        }
        return all;
    }

    private static String words(java.util.Map<String, Integer> missing) {
        List<String> words = new ArrayList<>();
        missing.forEach((what, count) -> words.add(count + " x " + what));
        return String.join(", ", words);
    }
}
