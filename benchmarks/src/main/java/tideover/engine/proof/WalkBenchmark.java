package tideover.engine.proof;

import java.util.Arrays;
import java.util.List;
import java.util.concurrent.TimeUnit;
import java.util.stream.IntStream;
import org.openjdk.jmh.annotations.AuxCounters;
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
import tideover.engine.Invented;
import tideover.engine.outage.Outage;
import tideover.engine.quantity.Series;
import tideover.engine.rig.Rig;

/**
 * Outages walked on one core, 15 min steps, an invented rig, loads and weather year, an outage of 72 h begun at every
 * hour of the year. The figure to read is {@code outageHours}: simulated hours of outage a second, counting only the
 * hours that were really walked, since the short walks stop where the store runs dry.
 */
@State(Scope.Thread)
@BenchmarkMode(Mode.Throughput)
@OutputTimeUnit(TimeUnit.SECONDS)
@Fork(value = 1, jvmArgsAppend = "-XX:+UseSerialGC")
@Warmup(iterations = 3, time = 1)
@Measurement(iterations = 5, time = 1)
public class WalkBenchmark {
    private static final int STEPS_PER_HOUR = 4;
    private static final int HOURS = 72;
    private static final int DARK_HOURS = 2;
    private static final double CHARGE_AT_START = 0.9;

    /** Hours of outage walked. */
    @State(Scope.Thread)
    @AuxCounters(AuxCounters.Type.OPERATIONS)
    public static class Walked {
        public double outageHours;

        @Setup(Level.Iteration)
        public void none() {
            outageHours = 0;
        }
    }

    private final double[] lowestWh = {0};
    private double[] demandW = {};
    private double[] sunW = {};
    private double[] storedWh = {};
    private int starts;
    private final Invented invented = new Invented(1);

    /** A store that carries most outages of the year but not all, as a rig worth walking does. */
    private final Rig rig = invented.rig(3000, 2, 20);

    private final RigFigures figures = RigFigures.of(rig);
    private final BusDemand demand = BusDemand.of(rig, invented.loads(true, true), 12, STEPS_PER_HOUR);
    private final StretchFlows flows = new StretchFlows(figures, demand);
    private final Series sun = Invented.sun(Invented.plane(invented.weather(1)));
    private final PlainWalk walk =
            new PlainWalk(figures, demand, sun, new Outage(List.of(0), HOURS, 0.9, CHARGE_AT_START, DARK_HOURS, 1));

    private Walk cellWalk = walk;
    private Walk freezerWalk = walk;

    @Setup
    public void draw() {
        cellWalk = ReferenceRig.walk(HOURS, DARK_HOURS, CHARGE_AT_START);
        freezerWalk = ReferenceRig.walkWithFreezer(HOURS, DARK_HOURS, CHARGE_AT_START);
        Stretch stretch =
                Stretch.of(IntStream.range(0, 12).boxed().toList(), 1, HOURS).get(0);
        flows.fill(stretch, sun);
        walk.onto(stretch);
        cellWalk.onto(stretch);
        freezerWalk.onto(stretch);
        starts = stretch.starts();
        demandW = new double[stretch.hours() * STEPS_PER_HOUR];
        Arrays.setAll(demandW, step -> flows.essential.busW[step % flows.stepsPerDay]);
        sunW = new double[demandW.length];
        Arrays.setAll(sunW, step -> flows.sunBusW[step / STEPS_PER_HOUR]);
        storedWh = new double[HOURS * STEPS_PER_HOUR];
    }

    /** The yardstick: the plainest walk, no losses, no limits, the sun there from the start. */
    @Benchmark
    public double plainest(Walked walked) {
        double sum = 0;
        for (int start = 0; start < starts; start++) {
            int steps = firstUnservedStep(
                    demandW,
                    sunW,
                    start * STEPS_PER_HOUR,
                    HOURS * STEPS_PER_HOUR,
                    figures.capacityWh(),
                    CHARGE_AT_START * figures.capacityWh(),
                    1.0 / STEPS_PER_HOUR,
                    storedWh);
            sum += (double) steps / STEPS_PER_HOUR;
        }
        walked.outageHours += sum;
        return sum;
    }

    /** The walk that the carried share and the tide line rest on: efficiencies, limits, dark hours, lowest store. */
    @Benchmark
    public double shortWalk(Walked walked) {
        double sum = 0;
        for (int start = 0; start < starts; start++) {
            sum += walk.essentialHours(start, HOURS, HOURS, lowestWh);
        }
        walked.outageHours += sum;
        return sum;
    }

    /** The walk with every flow booked, on past an interruption. */
    @Benchmark
    public double accountingWalk(Walked walked) {
        double sum = 0;
        Ledger ledger = new Ledger();
        for (int start = 0; start < starts; start++) {
            sum += walk.account(start, HOURS, ledger, null);
        }
        walked.outageHours += (double) HOURS * starts;
        return sum;
    }

    /** Every model on: two wells, volts, cold, a held array, a heater, a motor's start; a rig that carries most outages. */
    @Benchmark
    public double everyModel(Walked walked) {
        return carried(cellWalk, walked);
    }

    /** The same with a freezer, its thermostat, walls and food. */
    @Benchmark
    public double everyModelAndFreezer(Walked walked) {
        return carried(freezerWalk, walked);
    }

    private double carried(Walk any, Walked walked) {
        double sum = 0;
        for (int start = 0; start < starts; start++) {
            sum += any.hoursCarried(start, HOURS, HOURS, lowestWh);
        }
        walked.outageHours += sum;
        return sum;
    }

    private static int firstUnservedStep(
            double[] demandW,
            double[] sunW,
            int from,
            int steps,
            double capacityWh,
            double startWh,
            double stepHours,
            double[] storedWh) {
        double wh = startWh;
        for (int i = 0; i < steps; i++) {
            wh = Math.min(capacityWh, wh + (sunW[from + i] - demandW[from + i]) * stepHours);
            if (wh < 0) {
                return i;
            }
            storedWh[i] = wh;
        }
        return steps;
    }
}
