package tideover.engine.answer;

import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Level;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;
import tideover.engine.quantity.Stopped;
import tideover.engine.search.Find;

/** The demo asked in a warm program on two threads, 768 MB of heap at the most. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.SingleShotTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Warmup(iterations = 4)
@Measurement(iterations = 7)
@Fork(
        value = 1,
        jvmArgsAppend = {"-Xmx768m", "-XX:+UseSerialGC"})
public class AskBenchmark {
    private final Skies skies = new Skies();
    private Question question = DemoShelf.question(7);
    private int turn;

    /** Every time with another load, so that nothing but the weather is known from before. */
    @Setup(Level.Iteration)
    public void anotherLoad() {
        turn++;
        question = DemoShelf.question(7 + 0.01 * turn);
    }

    /** Until the cheapest rig is confirmed, the weather drawn anew. */
    @Benchmark
    public boolean confirmed() {
        return until(new Skies(), new Mark(true));
    }

    /** The same asked again about the same place. */
    @Benchmark
    public boolean confirmedAgain() {
        return until(skies, new Mark(true));
    }

    /** Until the front of price against share is complete. */
    @Benchmark
    public boolean front() {
        return until(new Skies(), new Mark(false));
    }

    /** Everything. */
    @Benchmark
    public Answer whole() {
        return Advisor.size(question, Options.USUAL, new Skies(), Progress.SILENT);
    }

    private boolean until(Skies known, Mark mark) {
        try {
            Advisor.size(question, Options.USUAL, known, mark);
        } catch (Stopped stopped) {
            return mark.reached;
        }
        throw new IllegalStateException("the mark was not reached");
    }

    /** Stops the asking once what is waited for has come. */
    private static final class Mark implements Progress {
        private final boolean atConfirmed;
        private volatile boolean reached;

        Mark(boolean atConfirmed) {
            this.atConfirmed = atConfirmed;
        }

        @Override
        public void at(String stage, double share) {
            reached |= !atConfirmed && stage.equals("other ways");
        }

        @Override
        public void found(Find find) {
            reached |= atConfirmed && find.kind() == Find.Kind.CONFIRMED;
        }

        @Override
        public boolean stop() {
            return reached;
        }
    }
}
