package tideover.engine.site;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

/** Our own digits: another figure here means that every drawn year has changed. Look at the acceptance tests before moving one. */
class WeatherPinnedTest {
    @Test
    void firstYearsOfBuffalo() {
        Station station = TwentyStations.named("Buffalo");
        Weather weather = WeatherGenerator.generate(station.place(), station.climate(), 2, 1);
        assertThat(weather.dayKwhM2(0)).isCloseTo(1.3751755026362829, within(1e-12));
        assertThat(weather.ghiWm2().at(12)).isCloseTo(281.29142656953286, within(1e-9));
        assertThat(weather.diffuseWm2().at(12)).isCloseTo(191.28921300280442, within(1e-9));
        assertThat(weather.airDegC().at(12)).isCloseTo(-1.778077553367254, within(1e-9));
        assertThat(weather.ghiWm2().sum()).isCloseTo(2766445.1727285683, within(1e-5));
        assertThat(weather.diffuseWm2().sum()).isCloseTo(1212499.2648867131, within(1e-5));
        assertThat(weather.airDegC().sum()).isCloseTo(158564.53744188836, within(1e-6));
    }
}
