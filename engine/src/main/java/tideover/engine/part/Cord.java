package tideover.engine.part;

import tideover.engine.electronics.ConductorSize;
import tideover.engine.quantity.Require;

/**
 * An extension cord with a plug and a socket of one kind.
 *
 * @param ratedA what it carries for hours
 * @param volts  that it is made for
 * @param plug   in words, as outlets name theirs
 */
public record Cord(Listing listing, ConductorSize size, double lengthM, double ratedA, double volts, String plug)
        implements SmallPart {
    public Cord {
        Require.above(0, "lengthM", lengthM, "m");
        Require.above(0, "ratedA", ratedA, "A");
        Require.above(0, "volts", volts, "V");
        Require.text("plug", plug);
    }

    @Override
    public String kind() {
        return "cord";
    }
}
