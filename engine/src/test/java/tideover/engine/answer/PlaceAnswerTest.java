package tideover.engine.answer;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Objects;
import java.util.OptionalLong;
import java.util.stream.DoubleStream;
import org.junit.jupiter.api.Test;
import tideover.engine.Invented;
import tideover.engine.load.DayWindow;
import tideover.engine.load.Need;
import tideover.engine.load.SteadyLoad;
import tideover.engine.outage.Help;
import tideover.engine.outage.Outage;
import tideover.engine.quantity.Series;
import tideover.engine.search.Grammar;
import tideover.engine.site.RoomKind;
import tideover.engine.site.Weather;
import tideover.engine.site.WeatherSource;
import tideover.engine.why.Finding;
import tideover.engine.why.Verdict;
import tideover.engine.wiring.Allowances;
import tideover.engine.wiring.Laying;

/** What plan and weather say of the place comes before the rules, and so beside the answer. */
class PlaceAnswerTest {
    private static final Options OPTIONS = new Options(7, 2, 3, 2, 1);

    /** Outages are asked for in January; the heat is July's. */
    private static List<Finding> findings(RoomKind room, double warmerK, List<Help> help) {
        Weather mild = new Invented(3).weather(2);
        Series air = Series.owning(DoubleStream.iterate(0, hour -> hour + 1)
                .limit(mild.hours())
                .map(hour -> mild.airDegC().at((int) hour) + warmerK)
                .toArray());
        Weather weather = new Weather(2, mild.ghiWm2(), mild.diffuseWm2(), air, "invented");
        Question question = new Question(
                "test",
                "",
                Invented.PLACE,
                new WeatherSource.Imported(weather),
                -12,
                Invented.MOUNT,
                false,
                room,
                false,
                List.of(new SteadyLoad("lamp", Invented.MAINS, 4, true, new Need.AlwaysOn(), RoomKind.INDOORS)),
                new Outage(List.of(0), 24, .5, 1, 0, 1, null, help),
                OptionalLong.empty(),
                "USD",
                new Allowances(0, 0, 0),
                new Grammar(3, 3),
                new Invented(5).parts(),
                List.of(),
                Laying.ASSUMED,
                List.of(),
                List.of(),
                List.of());
        Answer answer = Advisor.prove(question, new Invented(11).rig(1500, 2, 12), OPTIONS, Progress.SILENT);
        return Objects.requireNonNull(answer.rig()).findings();
    }

    private static List<Verdict> verdicts(List<Finding> findings, String rule) {
        return findings.stream()
                .filter(finding -> finding.rule().equals(rule))
                .map(Finding::verdict)
                .toList();
    }

    @Test
    void theHottestHourOfTheYearIsLookedAt() {
        assertThat(verdicts(findings(RoomKind.SHED, 0, List.of()), "room-warmth"))
                .containsExactly(Verdict.PASS);
        assertThat(verdicts(findings(RoomKind.SHED, 20, List.of()), "room-warmth"))
                .containsExactly(Verdict.CAUTION);
    }

    @Test
    void outdoorsItRains() {
        assertThat(verdicts(findings(RoomKind.OUTDOORS, 0, List.of()), "rain")).containsExactly(Verdict.CAUTION);
        assertThat(verdicts(findings(RoomKind.SHED, 0, List.of()), "rain")).isEmpty();
    }

    @Test
    void anEngineAmongTheHelpIsMinded() {
        Help engine = new Help.Engine(List.of(new DayWindow(10, 12)), 500);
        Help brought = new Help.Handover(6, 300, 100);
        assertThat(verdicts(findings(RoomKind.SHED, 0, List.of(brought, engine)), "engine-outdoors"))
                .containsExactly(Verdict.CAUTION);
        assertThat(verdicts(findings(RoomKind.SHED, 0, List.of(brought)), "engine-outdoors"))
                .isEmpty();
    }
}
