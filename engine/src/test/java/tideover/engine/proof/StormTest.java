package tideover.engine.proof;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Objects;
import java.util.stream.IntStream;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import tideover.engine.Invented;
import tideover.engine.load.Load;
import tideover.engine.load.Nature;
import tideover.engine.load.PitLoad;
import tideover.engine.outage.Outage;
import tideover.engine.outage.Storm;
import tideover.engine.outage.StormDays;
import tideover.engine.quantity.Workers;
import tideover.engine.rig.Rig;
import tideover.engine.site.RoomKind;
import tideover.engine.site.Weather;

/** What storms do beside taking the grid, and to which starts. */
class StormTest {
    private static Prover prover(Weather weather) {
        return new Prover(weather, Invented.plane(weather), weather.airDegC(), 12, 4, 1, Workers.of(2));
    }

    private static Outage outage(int month, int hours, int panelsOutAfterHours, @Nullable Storm storm) {
        return new Outage(List.of(month), hours, 0.9, 0.9, panelsOutAfterHours, 1, null, List.of(), storm);
    }

    /** A pump that lifts the usual inflow and half of what a storm brings; 20 L of room are nothing to that. */
    private static PitLoad pump(double peakLPerH) {
        return new PitLoad(
                "pump",
                Invented.MAINS,
                100,
                new PitLoad.Pit(20, 40),
                new PitLoad.Inflow(50, peakLPerH, 1, 20),
                500,
                RoomKind.INDOORS,
                Nature.PLAIN);
    }

    private static int stormStarts(Weather weather, Outage outage) {
        StormDays storms = StormDays.of(weather, outage.months());
        return 24
                * (int) IntStream.range(0, weather.days())
                        .filter(storms::isEither)
                        .count();
    }

    @Test
    void inStormThePanelsComeOutLate() {
        assertThat(outage(1, 48, 2, new Storm(10, false)).inStorm().panelsOutAfterHours())
                .isEqualTo(10);
        assertThat(outage(1, 48, 12, new Storm(10, false)).inStorm().panelsOutAfterHours())
                .isEqualTo(12);
        assertThat(outage(1, 48, 2, null).inStorm()).isEqualTo(outage(1, 48, 2, null));
        Weather weather = new Invented(21).weather(1);
        Proof proof = prover(weather)
                .prove(
                        new Invented(22).rig(800, 2, 20),
                        new Invented(23).loads(true, true),
                        outage(5, 48, 2, new Storm(30, false)));
        StormProof storm = Objects.requireNonNull(proof.storm());
        for (TraceStep step : storm.worst().steps()) {
            assertThat(step.panelsOut()).isEqualTo(step.hour() >= 30);
        }
        for (TraceStep step : proof.worst().steps()) {
            assertThat(step.panelsOut()).isEqualTo(step.hour() >= 2);
        }
    }

    @Test
    void isStormyWhereAStormDoesSomething() {
        List<Load> lamp = new Invented(24).loads(false, false);
        assertThat(Prover.isStormy(lamp, outage(1, 48, 2, null))).isFalse();
        assertThat(Prover.isStormy(lamp, outage(1, 48, 2, new Storm(0, false)))).isTrue();
        assertThat(Prover.isStormy(List.of(pump(50)), outage(1, 48, 2, null))).isFalse();
        assertThat(Prover.isStormy(List.of(pump(1000)), outage(1, 48, 2, null))).isTrue();
    }

    /** The weak pump holds in every usual outage and in no storm; its pit swells in storm starts alone. */
    @Test
    void thePitSwellsInStormsAlone() {
        Weather weather = new Invented(25).weather(1);
        Prover prover = prover(weather);
        Rig rig = new Invented(26).rig(6000, 0, 10);
        Outage outage = outage(9, 24, 0, null);
        Proof proof = prover.prove(rig, List.of(pump(1000)), outage);
        assertThat(proof.share().share()).isEqualTo(1);
        StormProof storm = Objects.requireNonNull(proof.storm());
        assertThat(storm.share().share()).isZero();
        assertThat(proof.darkest().share()).isZero();
        assertThat(proof.coldest().share()).isZero();
        assertThat(storm.worst().ending()).isEqualTo(Ending.FLOODED);
        assertThat(proof.worst().ending()).isNull();
        assertThat(proof.endings()).isEmpty();
        assertThat(prover.stormShare(rig, List.of(pump(1000)), outage)).isEqualTo(storm.share());
        Proof calm = prover.prove(rig, List.of(pump(50)), outage);
        assertThat(calm.storm()).isNull();
        assertThat(calm.darkest().share()).isEqualTo(1);
    }

    /** The share over storm starts, one outage after the other: those of the darkest and coldest days and no others. */
    @ParameterizedTest
    @ValueSource(longs = {901, 902, 903, 904})
    void theStormShareIsOverStormStartsOnly(long seed) {
        Invented invented = new Invented(seed);
        Weather weather = invented.weather(1);
        Prover prover = prover(weather);
        Rig rig = invented.rig(invented.between(150, 900), 2, 20);
        List<Load> loads = invented.loads(true, false);
        Outage outage = outage(
                invented.whole(0, 11),
                invented.whole(12, 36),
                invented.whole(0, 4),
                new Storm(invented.whole(4, 20), false));
        StormDays storms = StormDays.of(weather, outage.months());
        int darkest = 0;
        int either = 0;
        int coldest = 0;
        for (int hour = 0; hour < weather.hours(); hour++) {
            if (storms.isEither(hour / 24)
                    && prover.trace(rig, loads, outage.inStorm(), hour).hoursCarried() >= outage.hours()) {
                either++;
                darkest += storms.isDarkest(hour / 24) ? 1 : 0;
                coldest += storms.isColdest(hour / 24) ? 1 : 0;
            }
        }
        CarriedShare share = prover.stormShare(rig, loads, outage);
        assertThat(share.outages()).isEqualTo(stormStarts(weather, outage));
        assertThat(share.carried()).as("seed %d", seed).isEqualTo(either);
        Proof proof = prover.prove(rig, loads, outage);
        assertThat(Objects.requireNonNull(proof.storm()).share()).isEqualTo(share);
        assertThat(proof.darkest().carried()).isEqualTo(darkest);
        assertThat(proof.coldest().carried()).isEqualTo(coldest);
    }
}
