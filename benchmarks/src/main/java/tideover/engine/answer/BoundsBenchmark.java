package tideover.engine.answer;

import java.util.List;
import java.util.Objects;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;
import tideover.engine.proof.PlaneWeather;
import tideover.engine.proof.Prover;
import tideover.engine.quantity.Stopped;
import tideover.engine.quantity.Workers;
import tideover.engine.search.Find;
import tideover.engine.search.Priced;
import tideover.engine.site.Room;
import tideover.engine.site.Weather;
import tideover.engine.sun.SunYear;

/** The winner found with bounds, and by walking every rig that keeps the rules from the cheapest on; on a cut of the demo's list. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.SingleShotTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Warmup(iterations = 1)
@Measurement(iterations = 3)
@Fork(
        value = 1,
        jvmArgsAppend = {"-Xmx768m", "-XX:+UseSerialGC"})
public class BoundsBenchmark {
    private static final int PARTS = 45;
    private static final Options OPTIONS = new Options(1, 10, 10, 4, 2);

    private Question question = DemoShelf.question(7);

    @Setup
    public void sameWinner() {
        Question demo = DemoShelf.question(7);
        question = demo.with(List.copyOf(DemoShelf.parts(demo.parts(), PARTS)));
        String bounded = withBounds();
        String walked = withoutBounds();
        if (!bounded.equals(walked)) {
            throw new IllegalStateException("with bounds " + bounded + ", without " + walked);
        }
    }

    /** Until the winner is confirmed. */
    @Benchmark
    public String withBounds() {
        Winner winner = new Winner();
        try {
            Advisor.size(question, OPTIONS, new Skies(), winner);
        } catch (Stopped stopped) {
            return winner.id;
        }
        return "none";
    }

    /** Stops the asking at the confirmed winner. */
    private static final class Winner implements Progress {
        private volatile String id = "";

        @Override
        public void at(String stage, double share) {}

        @Override
        public void found(Find find) {
            if (find.kind() == Find.Kind.CONFIRMED) {
                id = find.rated().rig().id();
            }
        }

        @Override
        public boolean stop() {
            return !id.isEmpty();
        }
    }

    /** The first that carries the target and does so again. */
    @Benchmark
    public String withoutBounds() {
        Weather weather = question.weather().weather(OPTIONS.seed(), OPTIONS.years());
        Weather other = question.weather().weather(OPTIONS.confirmSeed(), OPTIONS.confirmYears());
        Prover prover = prover(weather, OPTIONS.seed());
        Prover confirming = prover(other, OPTIONS.confirmSeed());
        double target = question.asked().targetShare();
        for (Priced one : Advisor.candidates(question).kept()) {
            boolean carries =
                    prover.share(one.rig(), question.loads(), question.outage()).share() >= target;
            if (carries
                    && confirming
                                    .share(one.rig(), question.loads(), question.outage())
                                    .share()
                            >= target) {
                return one.rig().id();
            }
        }
        return "none";
    }

    private Prover prover(Weather weather, long seed) {
        SunYear sun = SunYear.at(
                question.place().latDeg(),
                question.place().lonDeg(),
                question.place().zoneH());
        return new Prover(
                weather,
                PlaneWeather.of(weather, sun, question.mount(), question.snow()),
                Objects.requireNonNull(Room.degC(question.batteryRoom(), weather)),
                question.place().meanSolarNoonHour(),
                OPTIONS.stepsPerHour(),
                seed,
                Workers.of(2));
    }
}
