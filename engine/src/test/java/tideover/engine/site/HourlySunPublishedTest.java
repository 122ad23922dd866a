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
                double clearness = offTrend(weather, sun, day, off);
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
    private static double offTrend(Weather weather, SunYear sun, int day, double[] off) {
        int dayOfYear = day % ModelYear.DAYS;
        double outsideWh = 0;
        for (int i = 0; i < 24; i++) {
            outsideWh += sun.horizontalWm2(dayOfYear * 24 + i);
        }
        if (!(outsideWh > 1000)) {
            return Double.NaN;
        }
        double dayWh = weather.dayKwhM2(day) * 1000;
        for (int i = 0; i < 24; i++) {
            double outside = sun.horizontalWm2(dayOfYear * 24 + i);
            if (outside > 0) {
                double trendWm2 = dayWh * sun.hourShare(dayOfYear * 24 + i);
                off[i] = (weather.ghiWm2().at(day * 24 + i) - trendWm2) / outside;
            }
        }
        double clearness = dayWh / outsideWh;
        return clearness;
    }
}
