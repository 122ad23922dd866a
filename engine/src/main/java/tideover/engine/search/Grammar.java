package tideover.engine.search;

import java.util.ArrayList;
import java.util.List;
import tideover.engine.quantity.Require;
import tideover.engine.rig.Chosen;

/**
 * Which rigs are looked at: every one that the parts allow with at most so many alike panels and alike batteries.
 *
 * @param chargers whether a charger of its own is tried too: where something could feed it
 * @param mostJugs of one kind, frozen
 * @param aids     sets of aids that each rig is tried with; the first is the empty one
 */
public record Grammar(int mostPanels, int mostBatteries, boolean chargers, int mostJugs, List<List<Chosen>> aids) {
    /** Where a plan does not tell. */
    public static final int USUAL_MOST_JUGS = 4;

    public Grammar(int mostPanels, int mostBatteries) {
        this(mostPanels, mostBatteries, false);
    }

    public Grammar(int mostPanels, int mostBatteries, boolean chargers) {
        this(mostPanels, mostBatteries, chargers, USUAL_MOST_JUGS, List.of(List.of()));
    }

    public Grammar withChargers() {
        return new Grammar(mostPanels, mostBatteries, true, mostJugs, aids);
    }

    public Grammar withMostJugs(int most) {
        return new Grammar(mostPanels, mostBatteries, chargers, most, aids);
    }

    /** With sets of aids to try beside that of none. */
    public Grammar withAids(List<List<Chosen>> sets) {
        List<List<Chosen>> all = new ArrayList<>();
        all.add(List.of());
        sets.stream().filter(set -> !set.isEmpty()).forEach(all::add);
        return new Grammar(mostPanels, mostBatteries, chargers, mostJugs, all);
    }

    public Grammar {
        Require.within(0, 20, "mostPanels", mostPanels);
        Require.within(1, 20, "mostBatteries", mostBatteries);
        Require.within(0, 20, "mostJugs", mostJugs);
        aids = aids.stream().map(List::copyOf).toList();
    }
}
