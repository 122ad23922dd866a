package tideover.app.report;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Objects;
import java.util.OptionalLong;
import org.junit.jupiter.api.Test;
import tideover.engine.Invented;
import tideover.engine.answer.Advisor;
import tideover.engine.answer.Answer;
import tideover.engine.answer.Beside;
import tideover.engine.answer.NextStep;
import tideover.engine.answer.Options;
import tideover.engine.answer.Progress;
import tideover.engine.answer.Question;
import tideover.engine.load.Load;
import tideover.engine.load.Need;
import tideover.engine.load.SteadyLoad;
import tideover.engine.outage.Outage;
import tideover.engine.search.Grammar;
import tideover.engine.site.RoomKind;
import tideover.engine.site.WeatherSource;
import tideover.engine.wiring.Allowances;
import tideover.engine.wiring.Laying;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** What stands beside the winner says the same in text, page and JSON. */
class BesideReportTest {
    private static final Options OPTIONS = new Options(7, 2, 3, 2, 1);
    private static final Answer MET =
            Advisor.size(question(0.5, OptionalLong.empty()), OPTIONS.withByMass(true), Progress.SILENT);

    @Test
    void everyFactIsInTextAndPage() {
        List<Page.Fact> facts = BesideWords.facts(MET);
        assertThat(facts.stream().map(Page.Fact::name)).contains("Other weather", "A fifth less", "Next step");
        String text = squeezed(TextAnswer.of(MET, "9.9"));
        String page = squeezed(HtmlReport.of(MET, "9.9").replaceAll("<[^>]*>", " "));
        for (Page.Fact fact : facts) {
            assertThat(text).contains(fact.name() + " " + squeezed(fact.words()));
            assertThat(page).contains(fact.name() + " " + squeezed(fact.words()));
        }
        assertThat(text).contains(BesideWords.MASS_FRONT);
        assertThat(page).contains(BesideWords.MASS_FRONT);
    }

    @Test
    void importedWeatherIsNotDrawnAgainAndThatIsSaid() {
        assertThat(BesideWords.facts(MET))
                .anySatisfy(fact -> assertThat(fact.words()).startsWith("these years cannot be drawn again"));
    }

    @Test
    void theDocumentHoldsTheSame() {
        JsonNode beside =
                JsonMapper.shared().readTree(JsonAnswer.of(MET, "9.9")).get("beside");
        Beside told = MET.beside();
        assertThat(beside.get("other_draws_of_weather").isNull()).isTrue();
        JsonNode lean = beside.get("with_less_sun_and_store");
        assertThat(lean.get("sun_left_share").asDouble()).isEqualTo(0.8);
        assertThat(lean.get("carried_share").get("carried").asInt())
                .isEqualTo(Objects.requireNonNull(told.lean()).carried());
        NextStep step = Objects.requireNonNull(told.nextStep());
        assertThat(beside.get("next_step").get("changes_tried").asInt()).isEqualTo(step.tried());
        assertThat(beside.get("next_step").get("change").get("total_cents").asLong())
                .isEqualTo(Objects.requireNonNull(step.found()).price().totalCents());
        assertThat(beside.get("mass_share_front").size())
                .isEqualTo(Objects.requireNonNull(told.massFront()).size())
                .isPositive();
    }

    @Test
    void aMissedTargetIsToldWithTheStepThatReachesIt() {
        long cents = Objects.requireNonNull(MET.rig()).price().totalCents();
        Answer poor = Advisor.size(question(0.5, OptionalLong.of(cents - 1)), OPTIONS, Progress.SILENT);
        assertThat(poor.meets()).isFalse();
        assertThat(BesideWords.facts(poor)).singleElement().satisfies(fact -> {
            assertThat(fact.name()).isEqualTo("Next step");
            assertThat(fact.words()).startsWith("of the nearest miss, ").contains("50.0 of 100 asked");
        });
    }

    private static String squeezed(String text) {
        return text.replace("&#39;", "'").replaceAll("\\s+", " ");
    }

    private static Question question(double target, OptionalLong budgetCents) {
        Load radio = new SteadyLoad("radio", Invented.MAINS, 35, true, new Need.AlwaysOn(), RoomKind.INDOORS);
        return new Question(
                "test",
                "",
                Invented.PLACE,
                new WeatherSource.Imported(new Invented(3).weather(2)),
                -12,
                Invented.MOUNT,
                false,
                RoomKind.INDOORS,
                false,
                List.of(radio),
                new Outage(List.of(0, 11), 48, target, 1, 0, 1),
                budgetCents,
                "USD",
                new Allowances(0, 3_500, 9_000),
                new Grammar(3, 3),
                new Invented(5).parts(),
                List.of(),
                Laying.ASSUMED,
                List.of(),
                List.of(),
                List.of());
    }
}
