package tideover.engine.answer;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalLong;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import tideover.engine.Invented;
import tideover.engine.outage.Outage;
import tideover.engine.part.Battery;
import tideover.engine.part.Panel;
import tideover.engine.part.Part;
import tideover.engine.part.PlainStore;
import tideover.engine.proof.PlaneWeather;
import tideover.engine.proof.Prover;
import tideover.engine.quantity.Series;
import tideover.engine.quantity.Stopped;
import tideover.engine.quantity.Workers;
import tideover.engine.rig.Chosen;
import tideover.engine.rig.Rig;
import tideover.engine.search.Find;
import tideover.engine.search.Grammar;
import tideover.engine.search.Rated;
import tideover.engine.site.MonthlyClimate;
import tideover.engine.site.Room;
import tideover.engine.site.RoomKind;
import tideover.engine.site.Weather;
import tideover.engine.site.WeatherSource;
import tideover.engine.wiring.Allowances;
import tideover.engine.wiring.Laying;

/** What stands beside the winner, against plain walks of every rig that it is about. */
class BesideTest {
    private static final Options OPTIONS = new Options(7, 2, 3, 2, 2);
    private static final WeatherSource DRAWN = new WeatherSource.Generated(Invented.PLACE, climate());

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4})
    void otherDrawsAreWonByTheCheapestThatCarries(long seed) {
        Question question = question(seed, 0.9, DRAWN);
        Answer answer = Advisor.size(question, OPTIONS, Progress.SILENT);
        Steadiness steadiness = Objects.requireNonNull(answer.beside().steadiness());
        Rated winner = Objects.requireNonNull(
                Objects.requireNonNull(answer.shortlist()).winner());
        assertThat(steadiness.draws()).hasSize(10);
        assertThat(steadiness.years()).isEqualTo(2);
        int won = 0;
        for (int number = 0; number < 10; number++) {
            Steadiness.Draw draw = steadiness.draws().get(number);
            assertThat(draw.seed()).isEqualTo(9 + number);
            Prover prover = prover(question, draw.seed());
            Optional<Rated> cheapest = asked(answer, winner)
                    .filter(one -> prover.share(one.rig(), question.loads(), question.outage())
                                    .share()
                            >= 0.9)
                    .min(Choice.BY_PRICE);
            assertThat(Optional.ofNullable(draw.cheapest()).map(Rated::number)).isEqualTo(cheapest.map(Rated::number));
            won += cheapest.isPresent() && cheapest.get().number() == winner.number() ? 1 : 0;
        }
        assertThat(steadiness.wins(winner)).isEqualTo(won);
        assertThat(steadiness.winners().stream().mapToInt(steadiness::wins).sum() + steadiness.without())
                .isEqualTo(10);
    }

    private static Stream<Rated> asked(Answer answer, Rated winner) {
        var list = Objects.requireNonNull(answer.shortlist());
        return Stream.of(
                        Stream.of(winner),
                        list.nearTies().stream().limit(6),
                        list.unconfirmed().stream().limit(6),
                        list.misses().stream().limit(6))
                .flatMap(some -> some);
    }

    @Test
    void whereWeatherCannotBeDrawnAgainThereAreNoOtherDraws() {
        WeatherSource imported = new WeatherSource.Imported(new Invented(3).weather(2));
        Answer answer = Advisor.size(question(1, 0.9, imported), OPTIONS, Progress.SILENT);
        assertThat(answer.rig()).isNotNull();
        assertThat(answer.beside().steadiness()).isNull();
        assertThat(answer.beside().lean()).isNotNull();
    }

    /** Against every rig that the search would number, told apart by the kinds in which it differs. */
    @Test
    void theNextStepIsTheCheapestSingleChange() {
        int found = 0;
        for (long seed = 1; seed <= 8; seed++) {
            Question question = question(seed, 0.5, DRAWN);
            Answer answer = Advisor.size(question, OPTIONS, Progress.SILENT);
            found += answer.rig() != null && isCheapestSingleChange(question, answer, answer.rig()) ? 1 : 0;
        }
        assertThat(found).isGreaterThanOrEqualTo(3);
    }

    private static boolean isCheapestSingleChange(Question question, Answer answer, ProvenRig winner) {
        NextStep step = answer.beside().nextStep();
        double share = winner.proof().share().share();
        if (share == 1) {
            assertThat(step).isNull();
            return false;
        }
        double goal = Math.min(1, share + Math.max(0.01, (1 - share) / 2));
        assertThat(Objects.requireNonNull(step).goalShare()).isEqualTo(goal);
        Prover prover = prover(question, OPTIONS.seed());
        OptionalLong cheapest = Advisor.candidates(wider(question)).kept().stream()
                .filter(one -> one.price().totalCents() > winner.price().totalCents())
                .filter(one -> isOneStep(winner.rig(), one.rig(), question.grammar()))
                .filter(one -> prover.share(one.rig(), question.loads(), question.outage())
                                .share()
                        >= goal)
                .mapToLong(one -> one.price().totalCents())
                .min();
        NextStep.Change found = step.found();
        assertThat(
                        found == null
                                ? OptionalLong.empty()
                                : OptionalLong.of(found.price().totalCents()))
                .isEqualTo(cheapest);
        if (found != null) {
            assertThat(prover.share(found.rig(), question.loads(), question.outage())
                            .share())
                    .isEqualTo(found.share());
        }
        return found != null;
    }

    private static Question wider(Question question) {
        return with(
                question,
                new Grammar(
                        question.grammar().mostPanels() + 1, question.grammar().mostBatteries() + 1));
    }

    private static boolean isOneStep(Rig from, Rig to, Grammar grammar) {
        Map<String, Chosen> before = byKind(from);
        Map<String, Chosen> after = byKind(to);
        List<String> changed = Stream.concat(before.keySet().stream(), after.keySet().stream())
                .distinct()
                .filter(kind -> !Objects.equals(before.get(kind), after.get(kind)))
                .toList();
        if (changed.size() != 1) {
            return false;
        }
        Chosen old = before.get(changed.get(0));
        Chosen now = after.get(changed.get(0));
        if (old == null || now == null) {
            return now == null || now.count() <= 2;
        }
        return old.part() == now.part()
                ? Math.abs(old.count() - now.count()) == 1
                : now.count() <= Math.max(old.count(), grammar.mostPanels());
    }

    private static Map<String, Chosen> byKind(Rig rig) {
        Map<String, Chosen> byKind = new HashMap<>();
        rig.chosen().forEach(one -> byKind.put(one.part().kind(), one));
        return byKind;
    }

    /** Where nothing will do, one change of the nearest is named that does, even beyond the budget. */
    @Test
    void aMissedTargetIsReachedByOneChange() {
        Question question = question(2, 0.9, DRAWN);
        Answer rich = Advisor.size(question, OPTIONS, Progress.SILENT);
        long cents = Objects.requireNonNull(rich.rig()).price().totalCents();
        Answer poor = Advisor.size(within(question, cents - 1), OPTIONS, Progress.SILENT);
        assertThat(poor.rig()).isNull();
        NextStep step = Objects.requireNonNull(poor.beside().nextStep());
        assertThat(step.goalShare()).isEqualTo(0.9);
        NextStep.Change found = Objects.requireNonNull(step.found());
        assertThat(found.overBudget()).isTrue();
        assertThat(found.price().totalCents()).isGreaterThanOrEqualTo(cents);
        assertThat(prover(question, OPTIONS.seed())
                        .share(found.rig(), question.loads(), question.outage())
                        .share())
                .isGreaterThanOrEqualTo(0.9);
    }

    @Test
    void lessSunIsFewerPanelsAndLessStoreASmallerOne() {
        Question question = question(1, 0.9, DRAWN);
        Prover prover = prover(question, 3);
        Outage outage = question.outage();
        int between = 0;
        for (double usableWh = 500; usableWh < 20_000; usableWh *= 1.5) {
            double halved = prover.share(new Invented(11).rig(usableWh, 2, 12), question.loads(), outage, 0.5, 0.5)
                    .share();
            assertThat(halved)
                    .isEqualTo(prover.share(new Invented(11).rig(usableWh / 2, 1, 12), question.loads(), outage)
                            .share());
            between += halved > 0 && halved < 1 ? 1 : 0;
        }
        assertThat(between).isPositive();
        int less = 0;
        for (double ratedAh : new double[] {100, 300, 900}) {
            Rig rated = new Invented(11).ratedRig(ratedAh, 2, 12);
            var whole = prover.share(rated, question.loads(), outage);
            assertThat(prover.share(rated, question.loads(), outage, 1, 1)).isEqualTo(whole);
            double lean =
                    prover.share(rated, question.loads(), outage, 0.8, 0.8).share();
            assertThat(lean).isLessThanOrEqualTo(whole.share());
            less += lean < whole.share() ? 1 : 0;
        }
        assertThat(less).isPositive();
    }

    /** Against every rig that keeps the rules, walked. */
    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3})
    void byMassNothingLighterIsBetter(long seed) {
        Question question = plain(question(seed, 0.8, DRAWN));
        Answer answer = Advisor.size(question, OPTIONS.withByMass(true), Progress.SILENT);
        List<Rated> front = Objects.requireNonNull(answer.beside().massFront());
        Prover prover = prover(question, OPTIONS.seed());
        List<double[]> all = new ArrayList<>();
        for (var one : Advisor.candidates(question).kept()) {
            all.add(new double[] {
                Math.rint(1000 * one.rig().massKg()),
                prover.share(one.rig(), question.loads(), question.outage()).share()
            });
        }
        all.sort(Comparator.<double[]>comparingDouble(one -> one[0]).thenComparingDouble(one -> -one[1]));
        List<List<Double>> expected = new ArrayList<>();
        double best = 0;
        for (double[] one : all) {
            if (one[1] > best) {
                best = one[1];
                expected.add(List.of(one[0], one[1]));
            }
        }
        assertThat(expected).hasSizeGreaterThan(1);
        assertThat(front.stream()
                        .map(one -> List.of(Math.rint(1000 * one.rig().massKg()), one.share()))
                        .toList())
                .isEqualTo(expected);
        assertThat(Advisor.size(question, OPTIONS, Progress.SILENT).beside().massFront())
                .isNull();
    }

    @Test
    void theSaferAndTheLighterAreAmongTheNearTies() {
        for (long seed = 1; seed <= 4; seed++) {
            Answer answer = Advisor.size(question(seed, 0.8, DRAWN), OPTIONS, Progress.SILENT);
            var list = Objects.requireNonNull(answer.shortlist());
            Choice choice = answer.beside().choice();
            if (choice == null) {
                assertThat(list.nearTies()).isEmpty();
                continue;
            }
            double lightest = Stream.concat(Stream.of(choice.winner()), list.nearTies().stream())
                    .mapToDouble(one -> one.rig().massKg())
                    .min()
                    .orElseThrow();
            assertThat(choice.lighter().rig().massKg()).isEqualTo(lightest);
            assertThat(choice.winnerIsLighter()).isEqualTo(choice.winner().rig().massKg() == lightest);
        }
    }

    /** Stopped once a winner and two steps of the front are known; both were told by then. */
    @Test
    void whoeverStopsItKnowsWhatWasFound() {
        Known[] known = {Known.NOTHING};
        Progress stopping = new Progress() {
            @Override
            public void at(String stage, double share) {
                known[0] = known[0].at(stage, share);
            }

            @Override
            public void found(Find find) {
                known[0] = known[0].with(find);
            }

            @Override
            public void judgedBelow(long cents) {
                known[0] = known[0].judgedBelow(cents);
            }

            @Override
            public boolean stop() {
                return known[0].winner() != null && known[0].front().size() >= 2;
            }
        };
        Question question = question(4, 0.9, DRAWN);
        assertThatThrownBy(() -> Advisor.size(question, OPTIONS, stopping)).isInstanceOf(Stopped.class);
        Rated winner = Objects.requireNonNull(known[0].winner());
        assertThat(winner.share()).isGreaterThanOrEqualTo(0.9);
        assertThat(known[0].confirming()).isNull();
        List<Rated> front = known[0].front();
        assertThat(front).hasSizeGreaterThan(1).isSortedAccordingTo(Comparator.comparingDouble(Rated::share));

        Answer whole = Advisor.size(question, OPTIONS, Progress.SILENT);
        assertThat(Objects.requireNonNull(whole.shortlist()).front().stream().map(Rated::number))
                .startsWith(front.stream().map(Rated::number).toArray(Long[]::new));
        assertThat(Objects.requireNonNull(whole.shortlist().winner()).number()).isEqualTo(winner.number());
    }

    private static Prover prover(Question question, long seed) {
        Weather weather = question.weather().weather(seed, OPTIONS.years());
        return new Prover(
                weather,
                PlaneWeather.of(weather, Invented.SUN, question.mount(), question.snow()),
                Room.degC(question.batteryRoom(), weather),
                Invented.PLACE.meanSolarNoonHour(),
                OPTIONS.stepsPerHour(),
                seed,
                Workers.of(1));
    }

    private static Question question(long seed, double target, WeatherSource weather) {
        Invented invented = new Invented(seed);
        List<Part> parts = new ArrayList<>(invented.parts());
        for (int i = 0; i < 2; i++) {
            double ratedAh = invented.between(20, 120);
            parts.add(new Battery(
                    Invented.listing("R" + i, (long) (2 * ratedAh) * 100, 10), invented.ratedStore(ratedAh), 4));
        }
        return new Question(
                "test",
                "",
                Invented.PLACE,
                weather,
                -12,
                Invented.MOUNT,
                false,
                RoomKind.INDOORS,
                false,
                invented.loads(false, false),
                new Outage(List.of(0, 11), 48, target, 1, 0, 1),
                OptionalLong.empty(),
                "USD",
                new Allowances(0, 3_500, 9_000),
                new Grammar(2, 2),
                parts,
                List.of(),
                Laying.ASSUMED,
                List.of(),
                List.of(),
                List.of());
    }

    /** Without the batteries that must be walked, and of panels of unlike mass. */
    private static Question plain(Question question) {
        List<Part> parts = new ArrayList<>();
        double kg = 2;
        for (Part part : question.parts()) {
            if (part instanceof Panel panel) {
                kg *= 1.7;
                parts.add(new Panel(
                        Invented.listing(panel.listing().id(), panel.listing().priceCents(), kg),
                        panel.ratedW(),
                        22,
                        -0.004,
                        -0.003,
                        45));
            } else if (!(part instanceof Battery battery) || battery.store() instanceof PlainStore) {
                parts.add(part);
            }
        }
        return changed(question, question.grammar(), question.budgetCents(), parts);
    }

    private static Question with(Question question, Grammar grammar) {
        return changed(question, grammar, question.budgetCents(), question.parts());
    }

    private static Question within(Question question, long cents) {
        return changed(question, question.grammar(), OptionalLong.of(cents), question.parts());
    }

    private static Question changed(Question question, Grammar grammar, OptionalLong budgetCents, List<Part> parts) {
        return new Question(
                question.title(),
                question.about(),
                question.place(),
                question.weather(),
                question.lowestDegC(),
                question.mount(),
                question.snow(),
                question.batteryRoom(),
                question.sleptIn(),
                question.loads(),
                question.outage(),
                budgetCents,
                question.currency(),
                question.allowances(),
                grammar,
                parts,
                question.smallParts(),
                question.laying(),
                question.doubts(),
                question.notes(),
                question.cautions());
    }

    /** Invented, with dull winters. */
    private static MonthlyClimate climate() {
        double[] clearness = new double[12];
        double[] spread = new double[12];
        double[] ghi = new double[12];
        double[] degC = new double[12];
        double[] anomaly = new double[12];
        for (int month = 0; month < 12; month++) {
            double summer = Math.sin(Math.PI * month / 11);
            clearness[month] = 0.32 + 0.25 * summer;
            spread[month] = 0.15;
            ghi[month] = 1 + 5 * summer;
            degC[month] = 3 + 15 * summer;
            anomaly[month] = 3;
        }
        return new MonthlyClimate(
                Series.of(ghi),
                Series.of(clearness),
                Series.of(spread),
                0.4,
                Collections.nCopies(12, false),
                Series.of(degC),
                Series.of(degC),
                Series.of(degC),
                Series.of(anomaly),
                0.7,
                Series.of(0, 0, 0, 0),
                Series.of(0, 0, 0, 0),
                -20,
                "invented");
    }
}
