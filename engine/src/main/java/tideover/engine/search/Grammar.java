package tideover.engine.search;

import tideover.engine.quantity.Require;

/**
 * Which rigs are looked at: every one that the parts allow with at most so many alike panels and alike batteries.
 *
 * @param chargers whether a charger of its own is tried too: where something could feed it
 */
public record Grammar(int mostPanels, int mostBatteries, boolean chargers) {
    public Grammar(int mostPanels, int mostBatteries) {
        this(mostPanels, mostBatteries, false);
    }

    public Grammar withChargers() {
        return new Grammar(mostPanels, mostBatteries, true);
    }

    public Grammar {
        Require.within(0, 20, "mostPanels", mostPanels);
        Require.within(1, 20, "mostBatteries", mostBatteries);
    }
}
