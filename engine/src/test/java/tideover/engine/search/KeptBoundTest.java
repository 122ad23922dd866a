package tideover.engine.search;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.LongStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import tideover.engine.Invented;
import tideover.engine.load.HeatLoad;
import tideover.engine.load.Load;
import tideover.engine.load.Nature;
import tideover.engine.load.Need;
import tideover.engine.outage.Outage;
import tideover.engine.proof.ArraySun;
import tideover.engine.proof.BusDemand;
import tideover.engine.proof.Drawdown;
import tideover.engine.proof.KeptBound;
import tideover.engine.proof.NetGains;
import tideover.engine.proof.PlaneWeather;
import tideover.engine.proof.Prover;
import tideover.engine.proof.RigFigures;
import tideover.engine.quantity.ModelYear;
import tideover.engine.quantity.Series;
import tideover.engine.quantity.Workers;
import tideover.engine.rig.Rig;
import tideover.engine.site.RoomKind;
import tideover.engine.site.Weather;

/** The bound for loads that switch themselves against the walk: one pool of charge and cold never carries less than the rig. */
class KeptBoundTest {
    private static final double NOON = Invented.PLACE.meanSolarNoonHour();
    private static final int STEPS = 4;

    static LongStream seeds() {
        return LongStream.range(501, 511);
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void neverBelowTheWalkedShare(long seed) {
        Case one = new Case(seed);
        double bound = one.bound();
        double walked = one.walked();
        assertThat(bound)
                .as("seed %d, walked %.4f, %s", seed, walked, one.loads)
                .isGreaterThanOrEqualTo(walked);
    }

    /** A bound that rules nothing out is none: over all seeds it does, for rigs that are poor enough. */
    @Test
    void rulesOutWhatIsPoorEnough() {
        assertThat(LongStream.range(501, 541)
                        .filter(seed -> new Case(seed).bound() < 0.9)
                        .count())
                .isGreaterThan(3);
    }

    /** Random loads on a random rig, poor ones among them, through outages in a month or two. */
    private static final class Case {
        final Weather weather;
        final PlaneWeather plane;
        final List<Load> loads;
        final Rig rig;
        final Outage outage;

        Case(long seed) {
            Invented invented = new Invented(seed);
            weather = invented.weather(1);
            plane = Invented.plane(weather);
            loads = new ArrayList<>(invented.keptLoads());
            if (invented.chance(0.4)) {
                loads.addAll(invented.loads(true, true));
            }
            int panels = invented.whole(0, 3);
            double amps = invented.between(4, 30);
            rig = invented.chance(0.6)
                    ? invented.rig(invented.between(50, 3000), panels, amps)
                    : invented.ratedRig(invented.between(10, 200), panels, amps);
            int first = invented.whole(0, 11);
            Outage bare = new Outage(
                    IntStream.rangeClosed(first, Math.min(11, first + invented.whole(0, 1)))
                            .boxed()
                            .toList(),
                    invented.whole(12, 240),
                    0.9,
                    invented.between(0.4, 1),
                    invented.whole(0, 8),
                    1);
            outage = invented.chance(0.3) ? invented.maybeHelped(bare) : bare;
        }

        double walked() {
            return prover(weather, plane).share(rig, loads, outage).share();
        }

        double bound() {
            return KeptBoundTest.bound(weather, plane, loads, rig, outage);
        }
    }

    private static Prover prover(Weather weather, PlaneWeather plane) {
        return new Prover(weather, plane, weather.airDegC(), NOON, STEPS, 1, Workers.of(2));
    }

    /** The share that the screening finds, as the search asks for it. */
    private static double bound(Weather weather, PlaneWeather plane, List<Load> loads, Rig rig, Outage outage) {
        KeptBound kept = KeptBound.of(loads, weather, outage.months(), outage.hours());
        RigFigures figures = RigFigures.of(rig).pooledWith(kept.storeWh());
        Outage screened = outage.first(Math.max(1, outage.unhelpedHours())).fullAtStart();
        if (outage.unhelpedHours() == 0) {
            return 1;
        }
        List<Load> byTheClock = loads.stream().filter(load -> !load.keeps()).toList();
        CapacityCounts counts = new CapacityCounts(new double[] {figures.capacityWh()});
        NetGains.visit(
                ArraySun.of(rig).wattsPerRatedW(plane),
                NetGains.Starts.all(screened, weather.years()),
                figures,
                BusDemand.of(rig, byTheClock, NOON, STEPS).essentialLessEngineW(rig, outage),
                kept.needW(),
                STEPS,
                (sunnyWh, darkDayWh, starts) -> counts.add(Drawdown.neededWh(
                        darkDayWh,
                        sunnyWh,
                        starts,
                        STEPS,
                        screened.panelsOutAfterHours(),
                        screened.hours(),
                        screened.chargeAtStart())));
        return counts.share(figures.capacityWh());
    }

    /**
     * Days that swing about what a heavy home may fall to: the warmth of the day keeps it through the night without a watt,
     * however long that goes on.
     */
    @Test
    void warmDaysCountForColdNights() {
        double[] air = new double[ModelYear.HOURS];
        for (int hour = 0; hour < air.length; hour++) {
            air[hour] = 12 - HeatLoad.Home.GAIN_K + 1 - 9 * Math.cos(2 * Math.PI * (hour % 24 - 3) / 24);
        }
        Series dark = Series.constant(air.length, 0);
        Weather weather = new Weather(1, dark, dark, Series.owning(air), "invented");
        PlaneWeather plane = Invented.plane(weather);
        List<Load> loads = List.of(new HeatLoad(
                "home",
                Invented.MAINS,
                100,
                0,
                new HeatLoad.Home(30, 80, 18, 1),
                new Need.Above(12),
                RoomKind.INDOORS,
                Nature.PLAIN));
        Outage outage = new Outage(List.of(3), 60 * 24, 0.9, 1, 0, 1);
        Rig rig = new Invented(1).rig(50, 0, 10);
        double walked = prover(weather, plane).share(rig, loads, outage).share();
        assertThat(walked).isEqualTo(1);
        assertThat(bound(weather, plane, loads, rig, outage)).isEqualTo(1);
    }
}
