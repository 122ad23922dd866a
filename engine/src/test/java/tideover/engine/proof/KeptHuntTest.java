package tideover.engine.proof;

import java.util.stream.LongStream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** What switches itself, what waits, storms, doubts and habits on many more random plans. */
@Tag("deep")
class KeptHuntTest {
    static LongStream seeds() {
        return LongStream.range(60_000, 60_040);
    }

    static LongStream fewer() {
        return LongStream.range(60_000, 60_012);
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void energyClosesAndNeedsAreJudgedRight(long seed) {
        new KeptWalkTest().energyClosesAndNeedsAreJudgedRight(seed);
    }

    @ParameterizedTest
    @MethodSource("fewer")
    void threadsChangeNothing(long seed) {
        new KeptWalkTest().threadsChangeNothing(seed);
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void pitsKeepStepWithSeconds(long seed) {
        new PitKeeperTest().keepsStepWithSeconds(seed);
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void homesKeepStepWithSmallSteps(long seed) {
        new HomeKeeperTest().keepsStepWithSmallSteps(seed);
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void niceLoadsTakeNothingFromEssentials(long seed) {
        new HeldBackTest().niceLoadsTakeNothingFromEssentials(seed);
    }

    @ParameterizedTest
    @MethodSource("fewer")
    void theStormShareIsOverStormStartsOnly(long seed) {
        new StormTest().theStormShareIsOverStormStartsOnly(seed);
    }

    @ParameterizedTest
    @MethodSource("fewer")
    void aDoubtTimesOneIsTheBase(long seed) {
        new DoubtsTest().timesOneIsTheBase(seed);
    }

    @ParameterizedTest
    @MethodSource("fewer")
    void widerRangesDoNoLess(long seed) {
        new DoubtsTest().widerRangesDoNoLess(seed);
    }

    @ParameterizedTest
    @MethodSource("fewer")
    void aShutDoorNeverLoses(long seed) {
        new HabitsTest().aShutDoorNeverLoses(seed);
    }
}
