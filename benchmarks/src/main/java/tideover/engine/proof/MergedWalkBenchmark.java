package tideover.engine.proof;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.concurrent.TimeUnit;
import org.jspecify.annotations.Nullable;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;
import tideover.engine.answer.DemoShelf;
import tideover.engine.answer.Question;
import tideover.engine.outage.Outage;
import tideover.engine.part.Part;
import tideover.engine.rig.Assembly;
import tideover.engine.rig.Chosen;
import tideover.engine.rig.Rig;
import tideover.engine.site.Room;
import tideover.engine.site.Weather;
import tideover.engine.sun.SunYear;

/**
 * Every outage of a front rig of the demo walked with all short cuts (outages that come to where another has been go on as it did; what
 * bounds tell is not walked), and step by step with none; the counts must agree.
 */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.SingleShotTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Warmup(iterations = 1)
@Measurement(iterations = 3)
@Fork(
        value = 1,
        jvmArgsAppend = {"-Xmx768m", "-XX:+UseSerialGC"})
public class MergedWalkBenchmark {
    private static final int YEARS = 30;

    @Param({
        "cs-dc-long+hb-150+tw-i150+gd-300-used",
        "2xhb-100-used+tw-i150+tw-15t+gd-300-used",
        "cs-dc+2xhb-100+tw-i150+boat-50",
        "2xhb-100+tw-i150+tw-15t+boat-50",
        "cs-dc+2xhb-100+tw-i150+on-50",
        "cs-dc+2xhb-100+tw-i150+on-100-used",
        "2xsd-120c-used+ga-plate+tw-i150"
    })
    public String rig = "";

    @Param({"72", "336"})
    public int hours = 72;

    private tideover.engine.proof.@Nullable Setup made;
    private List<Stretch> weeks = List.of();

    private tideover.engine.proof.Setup setup() {
        return Objects.requireNonNull(made);
    }

    private tideover.engine.proof.Setup make() {
        Question question = DemoShelf.question(7);
        Outage asked = question.asked();
        Outage outage = new Outage(
                asked.months(),
                hours,
                asked.targetShare(),
                asked.chargeAtStart(),
                asked.panelsOutAfterHours(),
                asked.keepBack());
        Weather weather = question.weather().weather(1, YEARS);
        SunYear sun = SunYear.at(
                question.place().latDeg(),
                question.place().lonDeg(),
                question.place().zoneH());
        YearsShelf shelf = new YearsShelf(
                weather,
                PlaneWeather.of(weather, sun, question.mount(), question.snow()),
                Room.degC(question.batteryRoom(), weather));
        return tideover.engine.proof.Setup.of(
                assembled(question.parts()),
                question.loads(),
                shelf,
                question.place().meanSolarNoonHour(),
                4,
                outage);
    }

    private Rig assembled(List<Part> parts) {
        List<Chosen> chosen = new ArrayList<>();
        for (String piece : rig.split("\\+")) {
            int count = piece.matches("[1-9]x.*") ? piece.charAt(0) - '0' : 1;
            String id = count > 1 || piece.startsWith("1x") ? piece.substring(2) : piece;
            Part part = parts.stream()
                    .filter(one -> one.listing().id().equals(id))
                    .findFirst()
                    .orElseThrow();
            chosen.add(new Chosen(part, count));
        }
        Rig made = Assembly.of(chosen).rig();
        if (made == null) {
            throw new IllegalStateException("no rig: " + rig);
        }
        return made;
    }

    @org.openjdk.jmh.annotations.Setup
    public void sameCounts() {
        made = make();
        weeks = new ArrayList<>();
        Stretch.of(setup().outage().months(), YEARS, hours).forEach(all -> weeks.addAll(all.pieces(7)));
        if (merged() != unmerged()) {
            throw new IllegalStateException(rig + ": " + merged() + " failures merged, " + unmerged() + " unmerged");
        }
    }

    /** Failures, with every short cut; one thread. */
    @Benchmark
    public int merged() {
        int failures = 0;
        for (Stretch week : weeks) {
            int[] fates = Fates.in(setup(), week);
            Walk walk = setup().walks(hours).get();
            walk.onto(week);
            double[] lowest = {0};
            for (int start = week.starts() - 1; start >= 0; start--) {
                boolean failed = fates[start] > 0
                        || (fates[start] == 0 && walk.hoursCarried(start, hours, hours, lowest) < hours);
                failures += failed ? 1 : 0;
            }
        }
        return failures;
    }

    /** Failures, every step of every outage; one thread. */
    @Benchmark
    public int unmerged() {
        int failures = 0;
        for (Stretch week : weeks) {
            Walk walk = setup().walks(hours).get();
            walk.onto(week);
            for (int start = 0; start < week.starts(); start++) {
                failures += walk.account(start, hours, new Ledger(), null) < hours ? 1 : 0;
            }
        }
        return failures;
    }
}
