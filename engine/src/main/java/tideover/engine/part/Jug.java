package tideover.engine.part;

import tideover.engine.load.ColdLoad;
import tideover.engine.load.Load;
import tideover.engine.load.Need;
import tideover.engine.quantity.Require;

/**
 * Water frozen in a jug. In a box that freezes it lies all the time, as cold as the box; into any other it is put as the outage
 * begins.
 *
 * @param forLoad name of a cold box in the plan, or a kind of box
 * @param iceKg   of water in one
 */
public record Jug(Listing listing, String forLoad, double iceKg) implements Aid {
    public Jug {
        Require.text("forLoad", forLoad);
        Require.above(0, "iceKg", iceKg, "kg");
    }

    /** Frost spoils what is kept in a band. */
    @Override
    public boolean suits(Load load) {
        return load instanceof ColdLoad cold
                && cold.nature().medical() == null
                && !(cold.need() instanceof Need.Band)
                && (isNamed(load) || forLoad.equalsIgnoreCase(cold.box().kind().words()));
    }

    @Override
    public String kind() {
        return "jug";
    }
}
