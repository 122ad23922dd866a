package tideover.engine.part;

/** What joins the main parts, keeps them safe, or puts them together, as a shop sells it. */
public sealed interface SmallPart
        permits Cable,
                Cord,
                Fuse,
                FuseHolder,
                Breaker,
                BatterySwitch,
                Lug,
                PanelLead,
                PanelBranch,
                Busbar,
                Fitting,
                Tool {
    Listing listing();

    /** Kind as a file of small parts writes it. */
    String kind();

    /** Pieces that its price buys; metres of what is sold by length. */
    default double perPrice() {
        return 1;
    }
}
