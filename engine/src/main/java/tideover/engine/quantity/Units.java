package tideover.engine.quantity;

/** The few conversions that happen inside the engine; what people type is converted at the edge. */
public final class Units {
    public static final double ZERO_CELSIUS_K = 273.15;
    public static final double KILO = 1000;

    private Units() {}

    public static double radians(double degrees) {
        return degrees * (Math.PI / 180);
    }

    public static double degrees(double radians) {
        return radians * (180 / Math.PI);
    }
}
