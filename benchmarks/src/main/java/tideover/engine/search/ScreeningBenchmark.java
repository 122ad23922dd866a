package tideover.engine.search;

import java.util.Arrays;
import java.util.List;
import java.util.concurrent.TimeUnit;
import java.util.stream.IntStream;
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
import tideover.engine.Invented;
import tideover.engine.load.Load;
import tideover.engine.outage.Outage;
import tideover.engine.proof.PlaneWeather;
import tideover.engine.quantity.Series;
import tideover.engine.quantity.Workers;
import tideover.engine.rig.Rig;

/** Screening of one net-demand series: an outage of 72 h begun at each of 262,800 hours, on one core. */
@State(Scope.Thread)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Fork(value = 1, jvmArgsAppend = "-XX:+UseSerialGC")
@Warmup(iterations = 3, time = 1)
@Measurement(iterations = 5, time = 1)
public class ScreeningBenchmark {
    private static final int DARK_HOURS = 2;
    private static final double CHARGE_AT_START = 0.9;

    private double[] hourlyWh = {};
    private double[] quarterlyWh = {};
    private double[] darkWh = {};

    @Setup
    public void draw() {
        hourlyWh = NetDemand.gainWh(1);
        quarterlyWh = NetDemand.gainWh(4);
        darkWh = new double[quarterlyWh.length];
        Arrays.fill(darkWh, -10);
    }

    /** The yardstick: a plain double loop. */
    @Benchmark
    public double[] plainLoop() {
        return NetDemand.plainLoop(hourlyWh, NetDemand.STARTS, NetDemand.LENGTH_HOURS);
    }

    /** The same question asked of our screening. */
    @Benchmark
    public double[] hourly() {
        return Drawdown.neededWh(hourlyWh, hourlyWh, 0, NetDemand.STARTS, 1, 0, NetDemand.LENGTH_HOURS, 1);
    }

    /** As the search asks it: four steps an hour, a store not full at the start, the panels out after some hours. */
    @Benchmark
    public double[] quarterlyDarkFirst() {
        return Drawdown.neededWh(
                darkWh, quarterlyWh, 0, NetDemand.STARTS, 4, DARK_HOURS, NetDemand.LENGTH_HOURS, CHARGE_AT_START);
    }

    /** All that the search does for one series of net demand. */
    @State(Scope.Thread)
    public static class Asked {
        private final Invented invented = new Invented(1);
        private final Outage outage = new Outage(
                IntStream.range(0, 12).boxed().toList(), NetDemand.LENGTH_HOURS, 0.95, CHARGE_AT_START, DARK_HOURS, 1);
        private final Rig rig = invented.rig(3000, 2, 20);
        private final List<Load> loads = invented.loads(true, true);
        private final PlaneWeather plane = Invented.plane(invented.weather(NetDemand.YEARS));
        private final Series sunPerRatedW = plane.wattsPerRatedWatt(45, -0.004);
        private final Search search = new Search(plane, NetDemand.YEARS, 4, Workers.of(1));
    }

    /** Net demand of each step from sun and loads, then the screening, then the needs in rising order. */
    @Benchmark
    public double[] wholeSeries(Asked asked) {
        return asked.search.neededWh(asked.rig, asked.sunPerRatedW, asked.loads, asked.outage);
    }
}
