package tideover.engine.part;

import tideover.engine.quantity.Require;

/** A bar of one pole with studs, under a cover, where several cables meet. */
public record Busbar(Listing listing, double ratedA) implements SmallPart {
    public Busbar {
        Require.above(0, "ratedA", ratedA, "A");
    }

    @Override
    public String kind() {
        return "busbar";
    }
}
