package tideover.engine.wiring;

import java.util.stream.LongStream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** What must hold of every wired rig, on many more of them than an everyday check has time for. */
@Tag("deep")
class CircuitHuntTest {
    private final CircuitPropertyTest properties = new CircuitPropertyTest();

    static LongStream seeds() {
        return LongStream.range(10_000, 14_000);
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void everyPropertyHolds(long seed) {
        properties.theCheckerFindsNothing(seed);
        properties.longerCablesNeverCostLess(seed);
        properties.aHotterPlaceNeverBearsMore(seed);
        properties.moreToChooseFromNeverCostsMore(seed);
        properties.whatIsOwnedNeverRaisesThePrice(seed);
        properties.orderOfWiringChangesNothing(seed);
    }
}
