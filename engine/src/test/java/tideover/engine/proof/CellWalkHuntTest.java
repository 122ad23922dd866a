package tideover.engine.proof;

import java.util.stream.LongStream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** The properties of the walk with every model on many more random rigs. */
@Tag("deep")
class CellWalkHuntTest {
    private final CellWalkTest properties = new CellWalkTest();

    static LongStream seeds() {
        return LongStream.range(40_000, 40_050);
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void aPlainStoreWalksAsInThePlainWalk(long seed) {
        properties.aPlainStoreWalksAsInThePlainWalk(seed);
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void energyClosesAndNoLimitIsPassed(long seed) {
        properties.energyClosesAndNoLimitIsPassed(seed);
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void energyClosesWithHelp(long seed) {
        properties.energyClosesWithHelp(seed);
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void energyClosesWithAnEngineOfItsOwn(long seed) {
        properties.energyClosesWithAnEngineOfItsOwn(seed);
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void agreesWithTheDumbWalkerInSecondsSteps(long seed) {
        properties.agreesWithTheDumbWalkerInSecondsSteps(seed);
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void withoutSunMoreNeverCarriesLess(long seed) {
        properties.withoutSunMoreNeverCarriesLess(seed);
    }
}
