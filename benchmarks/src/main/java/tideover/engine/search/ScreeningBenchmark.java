package tideover.engine.search;

import java.util.Arrays;
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
import tideover.engine.outage.Outage;
import tideover.engine.proof.BusDemand;
import tideover.engine.proof.Drawdown;
import tideover.engine.proof.NetGains;
import tideover.engine.proof.RigFigures;
import tideover.engine.quantity.Series;
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
    private double[] darkDayWh = {};

    @Setup
    public void draw() {
        hourlyWh = NetDemand.gainWh(1);
        quarterlyWh = NetDemand.gainWh(4);
        darkDayWh = new double[24 * 4];
        Arrays.fill(darkDayWh, -10);
    }

    /** The yardstick: a plain double loop. */
    @Benchmark
    public double[] plainLoop() {
        return NetDemand.plainLoop(hourlyWh, NetDemand.STARTS, NetDemand.LENGTH_HOURS);
    }

    /** The same question asked of our screening. */
    @Benchmark
    public double[] hourly() {
        return Drawdown.neededWh(NetDemand.NO_GLOOM, hourlyWh, NetDemand.STARTS, 1, 0, NetDemand.LENGTH_HOURS, 1);
    }

    /** As the search asks it: four steps an hour, a store not full at the start, the panels out after some hours. */
    @Benchmark
    public double[] quarterlyDarkFirst() {
        return Drawdown.neededWh(
                darkDayWh, quarterlyWh, NetDemand.STARTS, 4, DARK_HOURS, NetDemand.LENGTH_HOURS, CHARGE_AT_START);
    }

    /** A rig, its loads and its sun. */
    @State(Scope.Thread)
    public static class Asked {
        private final Invented invented = new Invented(1);
        private final Outage outage = new Outage(
                IntStream.range(0, 12).boxed().toList(), NetDemand.LENGTH_HOURS, 0.95, CHARGE_AT_START, DARK_HOURS, 1);
        private final NetGains.Starts starts = NetGains.Starts.all(outage, NetDemand.YEARS);
        private final Rig rig = invented.rig(3000, 2, 20);
        private final RigFigures figures = RigFigures.of(rig);
        private final double[] essentialBusW =
                BusDemand.of(rig, invented.loads(true, true), 12, 4).essentialBusW();
        private final Series sunPerRatedW = Invented.sun(Invented.plane(invented.weather(NetDemand.YEARS)));
        private final Series noKeptW = Series.constant(sunPerRatedW.length(), 0);
    }

    /** All that the search does for one series: net gains from sun and loads, the screening, the count for eight stores. */
    @Benchmark
    public double wholeSeries(Asked asked) {
        CapacityCounts counts = new CapacityCounts(new double[] {250, 500, 1000, 1500, 2000, 3000, 4000, 6000});
        NetGains.visit(
                asked.sunPerRatedW,
                asked.starts,
                asked.figures,
                asked.essentialBusW,
                asked.noKeptW,
                4,
                (sunnyWh, darkDayWh, starts) -> counts.add(Drawdown.neededWh(
                        darkDayWh, sunnyWh, starts, 4, DARK_HOURS, NetDemand.LENGTH_HOURS, CHARGE_AT_START)));
        return counts.share(1000);
    }
}
