package tideover.engine.rig;

import tideover.engine.part.Part;
import tideover.engine.quantity.Require;

/** So many of one part. */
public record Chosen(Part part, int count) {
    public Chosen {
        Require.within(1, 1000, "count", count);
    }

    public String words() {
        return (count == 1 ? "" : count + " x ") + part.listing().name();
    }
}
