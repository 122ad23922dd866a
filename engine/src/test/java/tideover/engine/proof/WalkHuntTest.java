package tideover.engine.proof;

import java.util.stream.LongStream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** The walk's properties over many more random plans than an everyday check has time for. */
@Tag("deep")
class WalkHuntTest {
    private final WalkTest properties = new WalkTest();

    static LongStream seeds() {
        return LongStream.range(10_000, 10_200);
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void everyPropertyHolds(long seed) {
        properties.energyClosesInEveryOutageOfRandomPlans(seed);
        properties.shortWalkAgreesWithAccountingWalk(seed);
        properties.moreNeverCarriesLess(seed);
        properties.niceLoadsCostNothingAtFullKeepBack(seed);
    }
}
