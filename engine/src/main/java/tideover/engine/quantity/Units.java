package tideover.engine.quantity;

/** The few conversions that happen inside the engine; what people type is converted at the edge. */
public final class Units {
    public static final double ZERO_CELSIUS_K = 273.15;
    public static final double KILO = 1000;

    /** 0.3048 m cubed, exactly. */
    private static final double LITRES_PER_FT3 = 28.316846592;

    private Units() {}

    public static double radians(double degrees) {
        return degrees * (Math.PI / 180);
    }

    public static double degrees(double radians) {
        return radians * (180 / Math.PI);
    }

    public static double cubicFeet(double litres) {
        return litres / LITRES_PER_FT3;
    }

    public static double litres(double cubicFeet) {
        return cubicFeet * LITRES_PER_FT3;
    }

    public static double degC(double degF) {
        return (degF - 32) / 1.8;
    }
}
