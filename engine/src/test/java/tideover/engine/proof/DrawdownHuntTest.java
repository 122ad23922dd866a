package tideover.engine.proof;

import java.util.stream.LongStream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** The drawdown against the plain loop on many more random series. */
@Tag("deep")
class DrawdownHuntTest {
    private final DrawdownTest drawdown = new DrawdownTest();

    static LongStream series() {
        return LongStream.range(30_000, 30_400);
    }

    @ParameterizedTest
    @MethodSource("series")
    void equalsAPlainLoop(long seed) {
        drawdown.equalsAPlainLoopOnRandomSeries(seed);
    }
}
