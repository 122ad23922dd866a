package tideover.engine.cold;

import java.util.List;
import tideover.engine.quantity.Require;

/**
 * What is kept cold, by the kilogram. Thawing is taken to happen at the initial freezing point all at once; real food
 * thaws over some kelvins below it, so that its last frozen hours are a little warmer than told.
 *
 * <p>The constants are the ASHRAE Handbook's (Refrigeration, Thermal Properties of Foods, table 3; meat and fish from its
 * US units). An older metric table gives lower specific heats (beef of 75 % water 3.22 and 1.67 kJ/kgK): never mix the two.
 *
 * @param freezingDegC initial freezing point
 * @param aboveKjKgK   specific heat thawed
 * @param belowKjKgK   specific heat frozen
 * @param latentKjKg   heat of melting
 */
public record Food(String name, double freezingDegC, double aboveKjKgK, double belowKjKgK, double latentKjKg) {
    /** Beef sirloin, lean, 28.9 degF. Stands for mixed frozen food. */
    public static final Food LEAN_BEEF = new Food("lean beef", -1.7, 3.52, 2.09, 240);

    /** Beef round, lean. The table gives it no freezing point: sirloin's is taken. */
    public static final Food BEEF_ROUND = new Food("beef round", LEAN_BEEF.freezingDegC(), 3.52, 2.14, 237);

    public static final Food COD = new Food("cod", -2.2, 3.77, 2.14, 272);
    public static final Food SALMON = new Food("salmon", -2.2, 3.68, 2.18, 256);
    public static final Food SNAP_BEANS = new Food("snap beans", -0.7, 3.99, 1.85, 302);
    public static final Food BROCCOLI = new Food("broccoli", -0.6, 4.01, 1.82, 303);
    public static final Food CARROTS = new Food("carrots", -1.4, 3.92, 2.00, 293);
    public static final Food SWEET_CORN = new Food("sweet corn", -0.6, 3.62, 1.98, 254);

    /** Water and ice; prints give 2.05 to 2.1 for ice and 334 or 335 for its melting. */
    public static final Food WATER = new Food("water", 0, 4.19, 2.1, 334);

    /** All of them, in the order above. */
    public static final List<Food> TABLE =
            List.of(LEAN_BEEF, BEEF_ROUND, COD, SALMON, SNAP_BEANS, BROCCOLI, CARROTS, SWEET_CORN, WATER);

    private static final double KJ_PER_WH = 3.6;

    public Food {
        Require.text("name", name);
        Require.within(-30, 10, "freezingDegC", freezingDegC, "degC");
        Require.above(0, "aboveKjKgK", aboveKjKgK, "kJ/kgK");
        Require.above(0, "belowKjKgK", belowKjKgK, "kJ/kgK");
        Require.atLeast(0, "latentKjKg", latentKjKg, "kJ/kg");
    }

    /** Heat content of a kilogram in Wh, 0 where it is all frozen at its freezing point; so it counts at that very point. */
    public double whPerKg(double degC) {
        return degC <= freezingDegC
                ? belowKjKgK / KJ_PER_WH * (degC - freezingDegC)
                : latentKjKg / KJ_PER_WH + aboveKjKgK / KJ_PER_WH * (degC - freezingDegC);
    }

    public double meltWhPerKg() {
        return latentKjKg / KJ_PER_WH;
    }

    public double aboveWhPerKgK() {
        return aboveKjKgK / KJ_PER_WH;
    }

    public double belowWhPerKgK() {
        return belowKjKgK / KJ_PER_WH;
    }
}
