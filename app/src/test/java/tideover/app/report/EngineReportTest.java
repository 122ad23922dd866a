package tideover.app.report;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.OptionalLong;
import java.util.Set;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import tideover.engine.Invented;
import tideover.engine.answer.Advisor;
import tideover.engine.answer.Answer;
import tideover.engine.answer.Options;
import tideover.engine.answer.Progress;
import tideover.engine.answer.Question;
import tideover.engine.load.Load;
import tideover.engine.load.Need;
import tideover.engine.load.SteadyLoad;
import tideover.engine.outage.Outage;
import tideover.engine.part.Battery;
import tideover.engine.part.Charger;
import tideover.engine.part.Engine;
import tideover.engine.part.Fuel;
import tideover.engine.part.Outlet;
import tideover.engine.part.Part;
import tideover.engine.part.PlainStore;
import tideover.engine.part.ReadyBox;
import tideover.engine.part.SocketBoard;
import tideover.engine.part.Surge;
import tideover.engine.rig.Assembly;
import tideover.engine.rig.Chosen;
import tideover.engine.rig.Rig;
import tideover.engine.search.Grammar;
import tideover.engine.site.RoomKind;
import tideover.engine.site.WeatherSource;
import tideover.engine.why.Stated;
import tideover.engine.wiring.Allowances;
import tideover.engine.wiring.Laying;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** A battery too small for an outage of 48 h by itself, and what an engine in its hours makes of it. */
class EngineReportTest {
    private static final Options OPTIONS = new Options(1, 2, 2, 4, 2);
    private static Answer sized;
    private static JsonNode json;
    private static String text;

    @BeforeAll
    static void ask() {
        sized = Advisor.size(question(true), OPTIONS, Progress.SILENT);
        json = JsonMapper.builder().build().readTree(JsonAnswer.of(sized, "0"));
        text = TextAnswer.of(sized, "0");
    }

    /** 400 Wh of store, 15 W for 48 h are 720 Wh; each day the engine's five hours put back up to 640. */
    private static Question question(boolean engine) {
        List<Load> loads =
                List.of(new SteadyLoad("radio", Invented.SOCKET, 15, true, new Need.AlwaysOn(), RoomKind.INDOORS));
        List<Part> parts = new ArrayList<>(List.of(
                new Battery(Invented.listing("B", 9_000, 5), new PlainStore(400, .96, .96, 12.8, 20, 40), 1),
                new SocketBoard(Invented.listing("S", 1_500, .2), List.of(new Outlet(Invented.SOCKET, 2, 150, 1))),
                new Charger(Invented.listing("M", 3_000, 1), 10, 12, 14.6, .80, Set.of(), Invented.MAINS)));
        if (engine) {
            parts.add(new Engine(
                    Invented.listing("E", 20_000, 14),
                    false,
                    1000,
                    Surge.UNKNOWN,
                    List.of(new Outlet(Invented.MAINS, 2, 1000, 1)),
                    new Fuel(Fuel.Kind.PETROL, 2.6, 105, 6),
                    new Engine.Burn(.28, .45, .72),
                    new Engine.Habits(58, 60, Stated.NO, 100, 1800)));
        }
        return new Question(
                "Radio house",
                "Invented.",
                Invented.PLACE,
                new WeatherSource.Imported(new Invented(3).weather(2)),
                -12,
                Invented.MOUNT,
                false,
                RoomKind.SHED,
                false,
                loads,
                new Outage(List.of(0, 11), 48, 0.9, 0.9, 3, 1),
                OptionalLong.empty(),
                "USD",
                new Allowances(0, 3_500, 9_000),
                new Grammar(2, 1),
                parts,
                List.of(),
                Laying.ASSUMED,
                List.of(),
                List.of(),
                List.of());
    }

    @Test
    void withoutTheEngineNothingCarriesIt() {
        assertThat(Advisor.size(question(false), OPTIONS, Progress.SILENT).rig())
                .isNull();
        assertThat(Objects.requireNonNull(sized.rig()).rig().id()).isEqualTo("B+S+M+E");
        assertThat(sized.meets()).isTrue();
    }

    /** Ten hours in 48, at .3344 L/h: 3.344 L, 3.52 at 1.05 a litre; 90, 15, 30 and 200 for parts, 90 for small ones. */
    @Test
    void fuelIsInThePriceAndInTheJson() {
        JsonNode rig = json.path("rig");
        JsonNode engine = rig.path("engine");
        assertThat(engine.path("runs_h").asDouble()).isCloseTo(10, within(1e-9));
        assertThat(engine.path("charger_draws_w").asDouble()).isCloseTo(160, within(1e-9));
        assertThat(engine.path("burnt_l").asDouble()).isCloseTo(3.344, within(1e-9));
        assertThat(engine.path("refills").asInt()).isEqualTo(1);
        assertThat(engine.path("fuel_cents").asLong()).isEqualTo(352);
        assertThat(engine.path("standby_cents_per_year").asDouble()).isCloseTo(2 * 3.344 * 105 + 1800, within(1e-6));
        assertThat(rig.path("price").path("total_cents").asLong())
                .isEqualTo(9_000 + 1_500 + 3_000 + 20_000 + 9_000 + 352);
        assertThat(rig.path("energy_per_outage").path("help_wh").asDouble()).isPositive();
        assertThat(json.path("question")
                        .path("outage")
                        .path("engine_hours_of_day")
                        .path(0)
                        .asString())
                .isEqualTo("07:00-09:00");
    }

    @Test
    void theTextTellsWhatItBurnsAndWhatKills() {
        String flat = text.replaceAll("\\s+", " ");
        assertThat(flat)
                .contains("runs up to 10.0 h of an outage")
                .contains("burns up to 3.3 L of petrol, 3.52 USD")
                .contains("fuel of one outage")
                .contains("The engine runs outdoors only, at least 6.1 m (20 ft)")
                .contains("Local codes and insurers limit how much petrol")
                .contains("switched off, cooled down")
                .contains("1 x carbon monoxide alarm")
                .contains("Never feed a house circuit")
                .contains("Exhaust kills within minutes")
                .contains("Never plug an engine or an inverter into a wall outlet")
                .contains("never in a garage, on a porch");
    }

    /** A box that has its own charger stands at the other end of the engine's cord. */
    @Test
    void aBoxWithAnEngineIsDrawn() {
        ReadyBox box = new ReadyBox(
                Invented.listing("BX", 20_000, 8),
                new PlainStore(500, .97, .96, 12.8, 20, 45),
                null,
                null,
                List.of(new Outlet(Invented.SOCKET, 2, 150, 1)),
                200,
                Stated.UNKNOWN);
        Question question = question(true);
        Rig rig = Objects.requireNonNull(Assembly.of(List.of(
                        new Chosen(box, 1),
                        new Chosen(question.parts().get(question.parts().size() - 1), 1)))
                .rig());
        Answer proven = Advisor.prove(question, rig, OPTIONS, Progress.SILENT);
        assertThat(TextAnswer.of(proven, "0")).contains("engine to ", "invented E, outdoors");
        assertThat(HtmlReport.of(proven, "0")).contains("invented E");
    }
}
