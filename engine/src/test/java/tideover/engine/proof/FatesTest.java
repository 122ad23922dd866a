package tideover.engine.proof;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import tideover.engine.Invented;
import tideover.engine.load.Load;
import tideover.engine.outage.Outage;
import tideover.engine.quantity.Workers;
import tideover.engine.rig.Rig;
import tideover.engine.site.Weather;

/** What bounds call lost or carried, walked. */
class FatesTest {
    private static final double NOON = Invented.PLACE.meanSolarNoonHour();

    /** How many starts were called lost, carried and open. */
    private final int[] told = new int[3];

    @Test
    void noStartFaresOtherwiseThanTold() {
        for (long seed = 61_000; seed < 61_040; seed++) {
            compare(seed);
        }
        assertThat(told[0]).as("lost").isPositive();
        assertThat(told[2]).as("carried").isGreaterThan(told[1] / 8);
    }

    void compare(long seed) {
        Invented invented = new Invented(seed);
        Weather weather = invented.weather(1);
        PlaneWeather plane = Invented.plane(weather);
        List<Load> loads = invented.loads(true, invented.chance(0.5));
        int month = invented.whole(0, 11);
        Outage outage = new Outage(
                List.of(month), invented.whole(12, 96), 0.9, invented.between(0.4, 1), invented.whole(0, 30), 1);
        YearsShelf shelf = new YearsShelf(weather, plane, weather.airDegC());
        Prover prover = new Prover(weather, plane, weather.airDegC(), NOON, 4, 1, Workers.of(1));
        Rig rig = invented.ratedRig(invented.between(20, 250), invented.whole(0, 3), invented.between(4, 30));
        Setup setup = Setup.of(rig, loads, shelf, NOON, 4, outage);
        int failed = 0;
        int starts = 0;
        for (Stretch all : Stretch.of(outage.months(), weather.years(), outage.hours())) {
            for (Stretch week : all.pieces(7)) {
                int[] fates = Fates.in(setup, week);
                Walk walk = setup.walks(outage.hours()).get();
                walk.onto(week);
                double[] lowest = {0};
                for (int start = week.starts() - 1; start >= 0; start--) {
                    double hours = walk.hoursCarried(start, outage.hours(), outage.hours(), lowest);
                    boolean carried = hours >= outage.hours();
                    told[1 - fates[start]]++;
                    if (fates[start] != 0) {
                        assertThat(carried)
                                .as("seed %d, start %d of %s, %.2f h", seed, start, week, hours)
                                .isEqualTo(fates[start] < 0);
                    }
                    failed += carried ? 0 : 1;
                    starts++;
                }
            }
        }
        double share = (double) (starts - failed) / starts;
        assertThat(prover.share(rig, loads, outage).share()).isEqualTo(share);
        assertThat(prover.shareFrom(share, rig, loads, outage)).hasValue(share);
        assertThat(prover.shareFrom(Math.nextUp(share), rig, loads, outage)).isEmpty();
    }
}
