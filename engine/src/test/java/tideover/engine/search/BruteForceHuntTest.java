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
            "part cooler",
            "part enclosure",
            "part engine",
            "part inverter",
            "part jug",
            "part panel",
            "part sockets",
            "part stand-in",
            "part vehicle",
            "box with its own charger and an engine",
            "several of a battery",
            "several of a jug",
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
            "cold box chest freezer",
            "cold box upright freezer",
            "cold box refrigerator",
            "cold box medicine fridge",
            "need HoursInWindow",
            "start alone",
            "start with others",
            "start of what switches itself",
            "nice to have",
            "borrowed engine",
            "rolling",
            "small parts counted",
            "volume price",
            "more bought than used",
            "tax",
            "order shipped",
            "tie settled by share",
            "tie settled by mass",
            "tie settled by id");

    @Test
    void searchFindsWhatTheBruteForceFinds() {
        BruteForceTest.Tally tally = new BruteForceTest.Tally();
        LongStream.range(80_000, 80_300).forEach(seed -> tally.take(SmallCase.of(seed)));
        assertThat(tally.faults).as(tally.toString()).isEmpty();
        assertThat(tally.seen.keySet()).as(tally.toString()).containsAll(KINDS);
        assertThat(tally.misledBounds)
                .as("seeds in which the bound alone picks another rig: " + tally)
                .isGreaterThanOrEqualTo(50);
    }
}
