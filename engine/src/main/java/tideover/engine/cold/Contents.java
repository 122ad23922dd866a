package tideover.engine.cold;

import tideover.engine.quantity.Require;

/**
 * One lump of what lies in a box, at one temperature.
 *
 * @param airWPerK heat that passes between it and the air around it
 */
public record Contents(Food food, double kg, double airWPerK) {
    /** A full freezer holds so many kilograms in a litre; common practice, no source. */
    public static final double FULL_KG_PER_L = 0.5;

    /**
     * Heat that a lump of {@link #LUMP_L} exchanges with air and liner: about 2 m2 at 8 to 10 W/m2K, convection and radiation
     * together; common practice, no source.
     */
    private static final double LUMP_W_PER_K = 20;

    private static final double LUMP_L = 200;

    public Contents {
        Require.above(0, "kg", kg, "kg");
        Require.above(0, "airWPerK", airWPerK, "W/K");
    }

    /** Its surface grows with two thirds of a power of its size. */
    public static Contents of(Food food, double kg) {
        double litres = kg / FULL_KG_PER_L;
        return new Contents(food, kg, LUMP_W_PER_K * surface(litres / LUMP_L));
    }

    /** So many times as much of it, lying the same way. */
    public Contents times(double times) {
        return new Contents(food, kg * times, airWPerK * surface(times));
    }

    private static double surface(double size) {
        return StrictMath.pow(size, 2.0 / 3);
    }

    /** Heat content in Wh, 0 where all of it is frozen at its freezing point; so it counts at that very point. */
    public double heatWh(double degC) {
        return kg * food.whPerKg(degC);
    }

    public double degC(double heatWh) {
        double perKg = heatWh / kg;
        double melt = food.meltWhPerKg();
        if (perKg < 0) {
            return food.freezingDegC() + perKg / food.belowWhPerKgK();
        }
        return perKg <= melt ? food.freezingDegC() : food.freezingDegC() + (perKg - melt) / food.aboveWhPerKgK();
    }
}
