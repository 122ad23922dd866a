package tideover.engine.cold;

import tideover.engine.quantity.Require;

/**
 * What is kept cold, by the kilogram. Thawing is taken to happen at the initial freezing point all at once; real food
 * thaws over some kelvins below it, so that its last frozen hours are a little warmer than told.
 *
 * @param freezingDegC initial freezing point
 * @param aboveKjKgK   specific heat thawed
 * @param belowKjKgK   specific heat frozen
 * @param latentKjKg   heat of melting
 */
public record Food(String name, double freezingDegC, double aboveKjKgK, double belowKjKgK, double latentKjKg) {
    /** ASHRAE Handbook Refrigeration, Thermal Properties of Foods, table 3: beef sirloin, lean. Stands for mixed frozen food. */
    public static final Food LEAN_BEEF = new Food("lean beef", -1.7, 3.52, 2.09, 240);

    /** The same table: water and ice. */
    public static final Food WATER = new Food("water", 0, 4.19, 2.1, 334);

    private static final double KJ_PER_WH = 3.6;

    public Food {
        Require.text("name", name);
        Require.within(-30, 10, "freezingDegC", freezingDegC, "degC");
        Require.above(0, "aboveKjKgK", aboveKjKgK, "kJ/kgK");
        Require.above(0, "belowKjKgK", belowKjKgK, "kJ/kgK");
        Require.atLeast(0, "latentKjKg", latentKjKg, "kJ/kg");
    }

    /** Heat content of a kilogram in Wh, 0 where it is all frozen at its freezing point; at that point thawed. */
    public double whPerKg(double degC) {
        return degC < freezingDegC
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
