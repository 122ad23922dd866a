package tideover.engine.answer;

import java.util.List;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.AuxCounters;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;
import tideover.engine.search.Shortlist;

/** How the whole answer's time grows with the parts on the list and with the weather years. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.SingleShotTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Warmup(iterations = 1)
@Measurement(iterations = 3)
@Fork(
        value = 1,
        jvmArgsAppend = {"-Xmx768m", "-XX:+UseSerialGC"})
public class GrowthBenchmark {
    /** Parts on the list, a slash, weather years. */
    @Param({"50/30", "100/30", "200/30", "400/30", "200/10", "200/100"})
    public String size = "";

    private Question question = DemoShelf.question(7);
    private Options options = Options.USUAL;

    /** Rigs of the last answer. */
    @State(Scope.Thread)
    @AuxCounters(AuxCounters.Type.EVENTS)
    public static class Rigs {
        public long lookedAt;
        public long priced;
        public long walked;
        public long netGainSeries;
    }

    @Setup
    public void parts() {
        String[] asked = size.split("/");
        Question demo = DemoShelf.question(7);
        question = demo.with(List.copyOf(DemoShelf.parts(demo.parts(), Integer.parseInt(asked[0]))));
        options = new Options(1, Integer.parseInt(asked[1]), 100, 4, 2);
    }

    @Benchmark
    public Answer answer(Rigs rigs) {
        Answer answer = Advisor.size(question, options, new Skies(), Progress.SILENT);
        Shortlist list = answer.shortlist();
        if (list != null) {
            rigs.lookedAt = list.counts().looked();
            rigs.priced = list.counts().priced();
            rigs.walked = list.counts().walked();
            rigs.netGainSeries = list.counts().series();
        }
        return answer;
    }
}
