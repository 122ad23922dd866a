package tideover.engine.quantity;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.concurrent.atomic.AtomicInteger;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class WorkersStopTest {
    /** Whoever asks for a stop waits for no more than the pieces that are begun. */
    @ParameterizedTest
    @ValueSource(ints = {1, 3})
    void noPieceIsBegunOnceItWasAskedToStop(int threads) {
        AtomicInteger done = new AtomicInteger();
        Workers workers = Workers.of(threads, () -> done.get() >= 5);
        assertThatThrownBy(() -> workers.forEach(1000, number -> done.incrementAndGet()))
                .isInstanceOf(Stopped.class);
        assertThat(done.get()).isBetween(5, 5 + threads);
    }

    @ParameterizedTest
    @ValueSource(ints = {1, 3})
    void withoutThatAllAreDone(int threads) {
        AtomicInteger done = new AtomicInteger();
        Workers.of(threads, () -> false).forEach(100, number -> done.incrementAndGet());
        assertThat(done.get()).isEqualTo(100);
    }
}
