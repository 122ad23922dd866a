package tideover.engine.site;

/** Placeholder replaced by the site work. */
public final class WeatherGenerator {
    static final String KNOWN_ERROR = "";

    private WeatherGenerator() {}

    static Weather generate(Place place, MonthlyClimate climate, int years, long seed) {
        throw new IllegalStateException();
    }
}
