package tideover.engine.search;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import tideover.engine.Invented;
import tideover.engine.load.Load;
import tideover.engine.outage.Outage;
import tideover.engine.proof.PlaneWeather;
import tideover.engine.proof.Prover;
import tideover.engine.quantity.Series;
import tideover.engine.quantity.Workers;
import tideover.engine.rig.Rig;
import tideover.engine.site.Weather;

/** The screening of one rig against its walk. */
class ScreenTest {
    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8})
    void aPlainStoreIsScreenedExactlyAndARealOneFromAbove(long seed) {
        Invented invented = new Invented(seed);
        Weather weather = invented.weather(1);
        PlaneWeather plane = Invented.plane(weather);
        List<Load> loads = invented.loads(true, true);
        Outage outage = invented.outage(1);
        double noon = Invented.PLACE.meanSolarNoonHour();
        Prover prover = new Prover(weather, plane, Series.constant(weather.hours(), 12), noon, 2, seed, Workers.of(1));
        Screen screen = new Screen(plane, 1, noon, 2, outage, prover.keptBound(loads, outage), loads);
        for (int i = 0; i < 5; i++) {
            Rig plain = invented.rig();
            assertThat(screen.isExact(plain)).isTrue();
            assertThat(screen.atMost(plain))
                    .isEqualTo(prover.share(plain, loads, outage).share());
            Rig real = invented.ratedRig(invented.between(30, 300), 2, 15);
            assertThat(screen.isExact(real)).isFalse();
            assertThat(screen.atMost(real))
                    .isGreaterThanOrEqualTo(prover.share(real, loads, outage).share());
        }
    }
}
