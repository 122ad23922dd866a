package tideover.engine.site;

/** Where weather years come from: generated from monthly figures, or read from a file. */
public sealed interface WeatherSource permits WeatherSource.Generated, WeatherSource.Imported {
    /** Years of weather; a generated source gives as many as asked, an imported one what it has. */
    Weather weather(long seed, int years);

    /** True where another seed gives other years. */
    boolean canDrawAgain();

    /** One sentence for the answer: what the weather rests on and what is known to be wrong with it. */
    String words();

    /** Generated from monthly climate figures. */
    record Generated(Place place, MonthlyClimate climate) implements WeatherSource {
        @Override
        public Weather weather(long seed, int years) {
            return WeatherGenerator.generate(place, climate, years, seed);
        }

        @Override
        public boolean canDrawAgain() {
            return true;
        }

        @Override
        public String words() {
            return "Weather generated from " + climate.source() + ". " + WeatherGenerator.KNOWN_ERROR;
        }
    }

    /** Read from an hourly file. */
    record Imported(Weather weather) implements WeatherSource {
        @Override
        public Weather weather(long seed, int years) {
            return weather;
        }

        @Override
        public boolean canDrawAgain() {
            return false;
        }

        @Override
        public String words() {
            return "Weather " + weather.origin() + ", " + weather.years() + (weather.years() == 1 ? " year" : " years")
                    + ". A typical-year file holds no extreme spells; a share from few years is a weak one.";
        }
    }
}
