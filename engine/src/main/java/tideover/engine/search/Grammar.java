package tideover.engine.search;

import tideover.engine.quantity.Require;

/** Which rigs are looked at: every one that the parts allow with at most so many alike panels and alike batteries. */
public record Grammar(int mostPanels, int mostBatteries) {
    public Grammar {
        Require.within(0, 20, "mostPanels", mostPanels);
        Require.within(1, 20, "mostBatteries", mostBatteries);
    }
}
