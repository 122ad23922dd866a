package tideover.engine.part;

import tideover.engine.cold.BoxKind;
import tideover.engine.cold.Food;
import tideover.engine.load.ColdLoad;
import tideover.engine.load.Load;
import tideover.engine.load.Need;
import tideover.engine.quantity.Require;

/**
 * A chest without a plug that takes a refrigerator's contents, with ice, as the outage begins. Frozen food does not stay frozen beside
 * melting ice, and medicine may freeze beside it: neither goes in.
 *
 * @param forLoad   name of the refrigerator in the plan, or that kind of box
 * @param wallWPerK heat through walls and lid
 * @param iceKg     that goes in once, at the beginning
 */
public record Cooler(Listing listing, String forLoad, double litres, double wallWPerK, double iceKg) implements Aid {
    /** Of 50 L, growing as the surface does; common practice, no source. */
    private static final double USUAL_W_PER_K = 0.6;

    private static final double USUAL_L = 50;
    private static final double HOURS_PER_DAY = 24;

    public Cooler {
        Require.text("forLoad", forLoad);
        Require.within(1, 2000, "litres", litres, "L");
        Require.above(0, "wallWPerK", wallWPerK, "W/K");
        Require.above(0, "iceKg", iceKg, "kg");
    }

    public static double usualWallWPerK(double litres) {
        return USUAL_W_PER_K * StrictMath.pow(litres / USUAL_L, 2.0 / 3);
    }

    /**
     * From the days that its maker lets so much ice last: all that comes through the walls melts ice at 0 degC.
     *
     * @param roomDegC of that test
     */
    public static double wallWPerK(double iceKg, double iceDays, double roomDegC) {
        return iceKg * Food.WATER.meltWhPerKg() / (iceDays * HOURS_PER_DAY * (roomDegC - Food.WATER.freezingDegC()));
    }

    @Override
    public boolean suits(Load load) {
        return load instanceof ColdLoad cold
                && cold.nature().medical() == null
                && cold.box().kind() == BoxKind.REFRIGERATOR
                && cold.need() instanceof Need.HoursAbove
                && (isNamed(load) || forLoad.equalsIgnoreCase(cold.box().kind().words()));
    }

    @Override
    public String kind() {
        return "cooler";
    }
}
