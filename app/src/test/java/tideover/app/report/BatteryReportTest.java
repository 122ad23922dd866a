package tideover.app.report;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.OptionalLong;
import java.util.Set;
import org.junit.jupiter.api.Test;
import tideover.engine.Invented;
import tideover.engine.answer.Advisor;
import tideover.engine.answer.Answer;
import tideover.engine.answer.Options;
import tideover.engine.answer.Progress;
import tideover.engine.answer.ProvenRig;
import tideover.engine.answer.Question;
import tideover.engine.battery.Chemistry;
import tideover.engine.electronics.Tracking;
import tideover.engine.load.DayWindow;
import tideover.engine.load.Load;
import tideover.engine.load.Nature;
import tideover.engine.load.Need;
import tideover.engine.load.Start;
import tideover.engine.load.SteadyLoad;
import tideover.engine.outage.Outage;
import tideover.engine.part.Battery;
import tideover.engine.part.ChargeController;
import tideover.engine.part.ControllerRating;
import tideover.engine.part.Outlet;
import tideover.engine.part.RatedStore;
import tideover.engine.part.Surge;
import tideover.engine.proof.Ending;
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

/** A rig on a battery by its data sheet with a motor: every form of the answer tells what it is and why it fails. */
class BatteryReportTest {
    private static final Answer ANSWER = Advisor.prove(question(), rig(), new Options(7, 2, 3, 2, 1), Progress.SILENT);
    private static final ProvenRig PROVEN = Objects.requireNonNull(ANSWER.rig());
    private static final String TEXT = TextAnswer.of(ANSWER, "9.9").replaceAll("\\s+", " ");
    private static final String PAGE = HtmlReport.of(ANSWER, "9.9");
    private static final JsonNode JSON =
            JsonMapper.shared().readTree(JsonAnswer.of(ANSWER, "9.9")).path("rig");

    @Test
    void textAndPageTellTheBatteryItsColdItsWorthAndItsCost() {
        for (String form : List.of(TEXT, PAGE)) {
            assertThat(form)
                    .contains("lithium iron phosphate, 40 Ah at 12.8 V; 80 % of its label counted on (95 % likely)")
                    .contains("depth of 80 %", "degC in the asked months")
                    .contains("a year standing by (lasts 12.0 years)", "per kWh given; common practice, no source");
        }
    }

    /** 12.8 V, 40 Ah; inner resistance as usual, .375 ohm Ah by four cells over 40 Ah. */
    @Test
    void theDocumentHoldsTheBattery() {
        JsonNode battery = JSON.path("battery");
        assertThat(battery.path("chemistry").asString()).isEqualTo("lithium iron phosphate");
        assertThat(battery.path("rated_ah").asDouble()).isEqualTo(40);
        assertThat(battery.path("depth_share").asDouble()).isEqualTo(0.8);
        assertThat(battery.path("usable_wh").asDouble())
                .isCloseTo(0.8 * battery.path("full_wh").asDouble(), within(1e-6));
        assertThat(battery.path("inner_ohm").asDouble()).isCloseTo(0.0375, within(1e-9));
        assertThat(battery.path("inner_ohm_is_usual").asBoolean()).isTrue();
        assertThat(battery.path("cold_lock_out").asString()).isEqualTo("yes");
        assertThat(battery.path("lowest_in_asked_months_degc").asDouble())
                .isLessThan(battery.path("highest_in_asked_months_degc").asDouble());
        assertThat(battery.path("cost_over_the_years")
                        .path("standby_cents_per_year")
                        .asDouble())
                .isCloseTo(30_000 / 12.0, within(1e-6));
    }

    @Test
    void everyFailureHasAReasonInEveryForm() {
        int failed = PROVEN.proof().share().outages() - PROVEN.proof().share().carried();
        assertThat(failed).isPositive();
        int told = 0;
        int before = Integer.MAX_VALUE;
        for (JsonNode ending : JSON.path("endings")) {
            assertThat(ending.path("reason").asString()).matches("[a-z_]+");
            assertThat(ending.path("outages").asInt()).isBetween(1, before);
            before = ending.path("outages").asInt();
            told += before;
            for (String form : List.of(TEXT, PAGE.replace("&#39;", "'"))) {
                assertThat(form).contains(ending.path("words").asString());
            }
        }
        assertThat(told).isEqualTo(failed);
        assertThat(JSON.path("endings").findValuesAsString("reason"))
                .contains(JSON.path("worst_outage").path("ending").asString());
    }

    @Test
    void theMostFrequentReasonStandsFirst() {
        assertThat(Words.mostFrequent(Map.of(Ending.EMPTY, 3, Ending.START, 9, Ending.VOLTS, 4)))
                .extracting(Map.Entry::getKey)
                .containsExactly(Ending.START, Ending.VOLTS, Ending.EMPTY);
    }

    /** The books of the document close as those of the engine do. */
    @Test
    void theEnergyOfTheDocumentAddsUp() {
        JsonNode energy = JSON.path("energy_per_outage");
        double in = sum(energy, "panels_could_give_wh", "help_wh", "store_at_start_wh");
        double out = sum(
                energy,
                "served_essential_wh",
                "served_nice_to_have_wh",
                "controller_loss_wh",
                "controller_current_limit_wh",
                "store_charge_limit_wh",
                "no_room_in_store_wh",
                "heater_wh",
                "self_discharge_wh",
                "charge_loss_wh",
                "discharge_loss_wh",
                "inverter_loss_wh",
                "inverter_standing_wh",
                "outlet_loss_wh",
                "store_at_end_wh");
        assertThat(energy.path("self_discharge_wh").asDouble()).isPositive();
        assertThat(out).isCloseTo(in, within(1e-6 * in));
    }

    private static double sum(JsonNode node, String... names) {
        double sum = 0;
        for (String name : names) {
            assertThat(node.has(name)).as(name).isTrue();
            sum += node.path(name).asDouble();
        }
        return sum;
    }

    @Test
    void theHardestStartIsToldWithItsWeakestLink() {
        assertThat(JSON.path("hardest_start").asString()).isEqualTo("workshop pump");
        JsonNode start = JSON.path("start").path(0);
        assertThat(start.path("lasts_s").asDouble()).isEqualTo(0.4);
        assertThat(start.path("links").size()).isPositive();
        String weakest = start.path("weakest").asString();
        for (String form : List.of(TEXT, PAGE.replace("&#39;", "'"))) {
            assertThat(form).contains("workshop pump: ", " VA for 0.4 s", "weakest link: " + weakest);
        }
        assertThat(TEXT).doesNotContain("Not judged is the start").doesNotContain("plain store knows no cold");
    }

    @Test
    void theFiguresShowTheBatterysTemperature() {
        assertThat(PAGE.split("class=\"warmth\"", -1)).hasSize(3);
        assertThat(PAGE).doesNotContain("NaN", "Infinity", "null");
        assertThat(JSON.path("worst_outage").path("battery_degc").size())
                .isEqualTo(JSON.path("worst_outage").path("stored_wh").size());
    }

    private static Rig rig() {
        Invented invented = new Invented(9);
        RatedStore store = new RatedStore(
                Chemistry.IRON_PHOSPHATE,
                RatedStore.Capacity.of(40, 5),
                12.8,
                Double.NaN,
                20,
                60,
                new RatedStore.Guard(Surge.UNKNOWN, Double.NaN, Stated.YES),
                RatedStore.Heater.NONE,
                0.8,
                new RatedStore.Worth(0.80, 0.95),
                5);
        ControllerRating controller = new ControllerRating(
                15, 100, 12, 24, 0.96, Tracking.BEST_POINT, ControllerRating.PanelInput.UNKNOWN, Set.of());
        return Objects.requireNonNull(Assembly.of(List.of(
                        new Chosen(new Battery(Invented.listing("B", 30_000, 5), store, 4), 1),
                        new Chosen(invented.inverter("I", 4, 9_000), 1),
                        new Chosen(
                                new ChargeController(
                                        Invented.listing("C", 4_000, 1),
                                        controller,
                                        List.of(new Outlet(Invented.SOCKET, 3, 600, 1))),
                                1),
                        new Chosen(Invented.panel("P", 60, 8_000), 1)))
                .rig());
    }

    private static Question question() {
        List<Load> loads = List.of(
                new SteadyLoad("lamp", Invented.SOCKET, 9, true, new Need.AlwaysOn(), RoomKind.INDOORS),
                new SteadyLoad(
                        "workshop pump",
                        Invented.MAINS,
                        60,
                        true,
                        new Need.HoursInWindow(1, new DayWindow(8, 16)),
                        RoomKind.SHED,
                        new Nature(0.8, new Start(300, 0.6, 0.4, false, ""), false, false)));
        return new Question(
                "Pump house",
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
                new Grammar(2, 2),
                new Invented(5).parts(),
                List.of(),
                Laying.ASSUMED,
                List.of(),
                List.of(),
                List.of());
    }
}
