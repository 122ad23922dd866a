package tideover.engine.site;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import tideover.engine.quantity.ModelYear;
import tideover.engine.sun.SunYear;

/** Sun within the day against what is printed about it. */
class HourlySunPublishedTest {
    /** Hours with the sun lower than this are left out, as their clearness is a ratio of two small figures. */
    private static final double LOWEST_SINE = 0.1;

    /**
     * Collares-Pereira &amp; Rabl 1979: the hourly shares of the day, (pi/24)(a + b cos w)(cos w - cos ws)/(sin ws - ws cos
     * ws), add up to the day. Holding to 1 % from 8 to 16 hours of daylight, it vouches for coefficients taken from memory.
     */
    @Test
    void hourlySharesAddUpToTheDay() {
        for (double daylightH = 8; daylightH <= 16; daylightH += 1) {
            double sunset = daylightH * Math.PI / 24;
            double sum = 0;
            int steps = 2000;
            for (int i = 0; i < steps; i++) {
                double w = -sunset + (i + 0.5) * 2 * sunset / steps;
                double share = (Math.PI / 24)
                        * HourlySun.trend(w, sunset)
                        * (Math.cos(w) - Math.cos(sunset))
                        / (Math.sin(sunset) - sunset * Math.cos(sunset));
                sum += share * 2 * sunset / steps * (12 / Math.PI);
            }
            assertThat(sum).as(daylightH + " h of daylight").isCloseTo(1, within(0.01));
        }
    }

    /**
     * Graham &amp; Hollands 1990 (Solar Energy 44, 333), abstract: lag-1 correlation of hourly clearness .54 +- .14; spread
     * .16 sin(pi Kt / .90), from memory, asked of days of middling clearness, which the bounds touch little.
     */
    @Test
    void disturbanceWithinTheDay() {
        for (String name : new String[] {"Buffalo", "Fairbanks/Eielson", "Houston", "Phoenix"}) {
            Station station = TwentyStations.named(name);
            SunYear sun = SunYear.at(
                    station.place().latDeg(),
                    station.place().lonDeg(),
                    station.place().zoneH());
            Weather weather = WeatherGenerator.generate(station.place(), station.climate(), 20, 1990);
            double squares = 0;
            double expectedSquares = 0;
            double products = 0;
            int hours = 0;
            int pairs = 0;
            for (int day = 0; day < weather.days(); day++) {
                double[] off = new double[24];
                int dayOfYear = day % ModelYear.DAYS;
                double clearness = offTrend(weather, sun, station.place(), day, off);
                if (!(clearness > 0.3 && clearness < 0.6)) {
                    continue;
                }
                double expected = 0.16 * Math.sin(Math.PI * clearness / 0.90);
                for (int i = 0; i < 24; i++) {
                    if (sun.cosZenith(dayOfYear * 24 + i) > LOWEST_SINE) {
                        squares += off[i] * off[i];
                        expectedSquares += expected * expected;
                        hours++;
                        if (i < 23 && sun.cosZenith(dayOfYear * 24 + i + 1) > LOWEST_SINE) {
                            products += off[i] * off[i + 1];
                            pairs++;
                        }
                    }
                }
            }
            double variance = squares / hours;
            assertThat(products / pairs / variance).as(name + " lag 1").isCloseTo(0.54, within(0.14));
            assertThat(Math.sqrt(squares / expectedSquares))
                    .as(name + " spread")
                    .isCloseTo(1, within(0.12));
        }
    }

    /** Hourly clearness less the day's trend; returns the clearness of the day, NaN where the sun hardly rises. */
    private static double offTrend(Weather weather, SunYear sun, Place place, int day, double[] off) {
        int dayOfYear = day % ModelYear.DAYS;
        double noon = sun.solarNoonHour(dayOfYear);
        double sunset = (noon - sun.sunriseHour(dayOfYear)) * Math.PI / 12;
        double outsideWh = 0;
        double trendWh = 0;
        for (int i = 0; i < 24; i++) {
            double outside = sun.horizontalWm2(dayOfYear * 24 + i);
            outsideWh += outside;
            trendWh += outside * HourlySun.trend((i + 0.5 - noon) * Math.PI / 12, sunset);
        }
        if (!(outsideWh > 1000)) {
            return Double.NaN;
        }
        double clearness = weather.dayKwhM2(day) * 1000 / outsideWh;
        for (int i = 0; i < 24; i++) {
            double outside = sun.horizontalWm2(dayOfYear * 24 + i);
            if (outside > 0) {
                double trend =
                        clearness * HourlySun.trend((i + 0.5 - noon) * Math.PI / 12, sunset) * outsideWh / trendWh;
                off[i] = weather.ghiWm2().at(day * 24 + i) / outside - trend;
            }
        }
        return clearness;
    }
}
