package tideover.engine.search;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.stream.LongStream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/** The search against the brute force on 300 parts files, in which everything that a rig can be made of occurs. */
@Tag("deep")
class BruteForceHuntTest {
    private static final List<String> KINDS = List.of(
            "part battery",
            "part box",
            "part charger",
            "part controller",
            "part enclosure",
            "part inverter",
            "part panel",
            "part sockets",
            "several of a battery",
            "several of a panel",
            "store PlainStore",
            "store RatedStore",
            "controller AT_STORE_VOLTS",
            "controller BEST_POINT",
            "load ColdLoad",
            "load HeatLoad",
            "load PitLoad",
            "load SteadyLoad",
            "load TimedLoad",
            "need HoursInWindow",
            "start",
            "start of what switches itself",
            "nice to have",
            "engine",
            "rolling",
            "small parts counted",
            "tie settled by share",
            "tie settled by mass",
            "tie settled by id");

    @Test
    void searchFindsWhatTheBruteForceFinds() {
        BruteForceTest.Tally tally = new BruteForceTest.Tally();
        LongStream.range(80_000, 80_300).forEach(seed -> tally.take(SmallCase.of(seed)));
        System.out.println(
                tally.seen + ", rigs " + tally.rigs + ", answers " + tally.answers + ", misled " + tally.misledBounds);
        assertThat(tally.faults).isEmpty();
        assertThat(tally.seen.keySet()).containsAll(KINDS);
        assertThat(tally.misledBounds)
                .as("seeds in which the bound alone picks another rig")
                .isGreaterThanOrEqualTo(50);
    }
}
