package tideover.engine.site;

import java.util.Collections;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OperationsPerInvocation;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;
import tideover.engine.Invented;
import tideover.engine.proof.PlaneWeather;
import tideover.engine.quantity.Series;

/** Weather years of 8760 hours a second on one core: sun, diffuse part and temperature; then the same on the panels. */
@State(Scope.Thread)
@BenchmarkMode(Mode.Throughput)
@OutputTimeUnit(TimeUnit.SECONDS)
@Fork(value = 1, jvmArgsAppend = "-XX:+UseSerialGC")
@Warmup(iterations = 3, time = 1)
@Measurement(iterations = 5, time = 1)
public class WeatherBenchmark {
    private static final int YEARS = 30;

    /** Invented figures of a dark, wet winter; the seed changes with every call. */
    private final WeatherSource source = new WeatherSource.Generated(
            Invented.PLACE,
            new MonthlyClimate(
                    Series.of(0.9, 1.7, 3.0, 4.3, 5.4, 5.9, 6.2, 5.2, 3.9, 2.2, 1.1, 0.7),
                    Series.of(0.32, 0.37, 0.41, 0.45, 0.48, 0.51, 0.55, 0.53, 0.49, 0.40, 0.33, 0.29),
                    Series.of(0.15, 0.16, 0.17, 0.18, 0.18, 0.18, 0.17, 0.17, 0.18, 0.17, 0.15, 0.14),
                    0.35,
                    Collections.nCopies(12, false),
                    Series.of(2, 2, 3, 5, 8, 11, 13, 13, 11, 8, 5, 2),
                    Series.of(8, 9, 12, 15, 19, 21, 25, 25, 21, 15, 10, 7),
                    Series.of(5, 6, 8, 10, 13, 16, 19, 19, 16, 11, 7, 5),
                    Series.of(3.5, 3.3, 2.8, 2.8, 3.0, 2.9, 2.9, 2.6, 2.7, 2.6, 3.0, 3.5),
                    0.7,
                    Series.of(-0.2, 0.3, 0.5, 0.3),
                    Series.of(1.4, 2.2, 2.2, 2.0),
                    -12,
                    "invented monthly figures"));

    private final Weather weather = source.weather(1, YEARS);
    private long seed;

    @Benchmark
    @OperationsPerInvocation(YEARS)
    public Weather generate() {
        return source.weather(++seed, YEARS);
    }

    /** Sun of generated years put on a tilted panel, snow taken off, and the panel's watts from it. */
    @Benchmark
    @OperationsPerInvocation(YEARS)
    public Series panelWatts() {
        return Invented.sun(PlaneWeather.of(weather, Invented.SUN, Invented.MOUNT, true));
    }
}
