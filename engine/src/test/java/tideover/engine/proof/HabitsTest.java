package tideover.engine.proof;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import tideover.engine.Invented;
import tideover.engine.cold.BoxKind;
import tideover.engine.load.ColdLoad;
import tideover.engine.load.Load;
import tideover.engine.outage.Outage;
import tideover.engine.quantity.Workers;
import tideover.engine.site.RoomKind;
import tideover.engine.site.Weather;

/** What owners of cold boxes could do otherwise. */
class HabitsTest {
    private static List<Lift> habits(Invented invented, List<Load> loads) {
        Weather weather = invented.weather(1);
        Prover prover = new Prover(weather, Invented.plane(weather), weather.airDegC(), 12, 4, 5, Workers.of(2));
        Outage outage = new Outage(List.of(invented.whole(0, 11)), invented.whole(8, 36), 0.9, 1, 0, 1);
        return prover.prove(invented.rig(invented.between(100, 1500), invented.whole(0, 2), 20), loads, outage)
                .habits();
    }

    /** Less heat comes in: for a freezer that is all the rig has to care for, that never carries less. */
    @ParameterizedTest
    @ValueSource(longs = {1101, 1102, 1103, 1104})
    void aShutDoorNeverLoses(long seed) {
        Invented invented = new Invented(seed);
        ColdLoad cold = invented.coldLoad("freezer", Invented.MAINS, RoomKind.INDOORS, BoxKind.CHEST_FREEZER);
        ColdLoad opened = cold.with(cold.box().withOpenings(8));
        Lift shut = habits(invented, List.of(opened)).stream()
                .filter(habit -> habit.limit().endsWith("door shut"))
                .findFirst()
                .orElseThrow();
        assertThat(shut.shareGain()).as("seed %d, %s", seed, opened).isNotNegative();
        assertThat(shut.meanHoursGain()).as("seed %d, %s", seed, opened).isNotNegative();
    }

    /** A reader must be able to tell them apart, with two boxes as with one, and to see the greatest gain first. */
    @ParameterizedTest
    @ValueSource(longs = {1111, 1112})
    void namesAreUniqueAndTheGreatestGainComesFirst(long seed) {
        Invented invented = new Invented(seed);
        List<Load> two = Stream.of("one", "other")
                .<Load>map(name -> {
                    ColdLoad cold = invented.coldLoad(name, Invented.MAINS, RoomKind.GARAGE, BoxKind.CHEST_FREEZER);
                    return cold.with(cold.box().withOpenings(4));
                })
                .toList();
        List<Lift> habits = habits(invented, two);
        assertThat(habits).hasSizeGreaterThan(4);
        assertThat(habits.stream().map(habit -> habit.limit() + ": " + habit.words()))
                .doesNotHaveDuplicates();
        assertThat(habits)
                .isSortedAccordingTo((a, b) -> a.shareGain() != b.shareGain()
                        ? Double.compare(b.shareGain(), a.shareGain())
                        : Double.compare(b.meanHoursGain(), a.meanHoursGain()));
    }
}
