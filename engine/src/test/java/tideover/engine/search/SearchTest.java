package tideover.engine.search;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.Collections;
import java.util.HashSet;
import java.util.List;
import java.util.OptionalDouble;
import java.util.OptionalLong;
import java.util.Set;
import java.util.function.Predicate;
import java.util.stream.LongStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import tideover.engine.Invented;
import tideover.engine.load.Load;
import tideover.engine.outage.Outage;
import tideover.engine.part.Battery;
import tideover.engine.part.Charger;
import tideover.engine.part.Part;
import tideover.engine.proof.KeptBound;
import tideover.engine.proof.PlaneWeather;
import tideover.engine.proof.Prover;
import tideover.engine.quantity.Workers;
import tideover.engine.rig.Rig;
import tideover.engine.rig.Site;
import tideover.engine.site.Weather;
import tideover.engine.wiring.Allowances;
import tideover.engine.wiring.Bench;
import tideover.engine.wiring.Laying;
import tideover.engine.wiring.Stock;
import tideover.engine.wiring.Terms;

/** The search against a dumb one that walks every rig of the shelf through every outage. */
class SearchTest {
    private static final double NOON = Invented.PLACE.meanSolarNoonHour();

    /** Everything of one random shelf, walked. */
    private static final class Shelf {
        final Weather weather;
        final PlaneWeather plane;
        final List<Load> loads;
        final Outage outage;
        final Candidates candidates;
        final List<Rated> walked = new ArrayList<>();

        /** What the search asked to be walked. */
        final Set<Rig> askedFor = Collections.synchronizedSet(new HashSet<>());

        Shelf(long seed) {
            this(seed, false);
        }

        /** A small one for loads that switch themselves: every rig of it is walked in full. */
        static Shelf ofKept(long seed) {
            Invented invented = new Invented(seed);
            List<Load> loads = new ArrayList<>(invented.keptLoads());
            if (invented.chance(0.5)) {
                loads.addAll(invented.loads(true, true).subList(0, 2));
            }
            List<Part> parts = new ArrayList<>();
            for (int i = 0; i < 4; i++) {
                double usableWh = invented.between(50, 1500);
                parts.add(invented.battery("B" + i, usableWh, (long) (usableWh * invented.between(0.3, 0.6)) * 100));
            }
            double ratedAh = invented.between(20, 100);
            parts.add(new Battery(
                    Invented.listing("R", (long) (2 * ratedAh) * 100, 10), invented.ratedStore(ratedAh), 4));
            parts.add(Invented.panel("P", invented.between(40, 220), invented.whole(30, 250) * 100L));
            parts.add(invented.inverter("I", invented.between(0, 12), 9_000));
            parts.add(invented.controller("C", invented.between(6, 30), 4_000));
            int month = invented.whole(0, 11);
            Outage outage = new Outage(
                    List.of(month), invented.whole(24, 96), 0.9, invented.between(0.5, 1), invented.whole(0, 8), 1);
            return new Shelf(
                    invented.weather(1), loads, invented.chance(0.3) ? invented.maybeHelped(outage) : outage, parts);
        }

        private Shelf(Weather weather, List<Load> loads, Outage outage, List<Part> parts) {
            this.weather = weather;
            this.loads = loads;
            this.outage = outage;
            plane = Invented.plane(weather);
            candidates = Candidates.of(
                    parts,
                    new Grammar(1, 1),
                    loads,
                    new Site(-10, false),
                    bench(loads, outage),
                    new Allowances(0, 0, 0),
                    Terms.NONE,
                    OptionalLong.empty());
            walkAll();
        }

        /** @param real batteries by their data sheet among the plain ones, and now and then help in the outage */
        Shelf(long seed, boolean real) {
            Invented invented = new Invented(seed);
            weather = invented.weather(2);
            plane = Invented.plane(weather);
            loads = invented.loads(true, true);
            outage = real ? invented.maybeHelped(invented.outage(1)) : invented.outage(1);
            List<Part> parts = new ArrayList<>(invented.parts());
            for (int i = 0; real && i < 4; i++) {
                double ratedAh = invented.between(20, 200);
                parts.add(new Battery(
                        Invented.listing("R" + i, (long) (2 * ratedAh) * 100, 10), invented.ratedStore(ratedAh), 4));
            }
            if (real) {
                parts.add(new Charger(Invented.listing("M", 3_000, 1), 10, 12, 14.6, 0.88, Set.of()));
            }
            candidates = Candidates.of(
                    parts,
                    new Grammar(2, 1, outage.isHelped()),
                    loads,
                    new Site(-10, false),
                    bench(loads, outage),
                    new Allowances(0, 0, 0),
                    Terms.NONE,
                    OptionalLong.of(invented.whole(400, 1200) * 100L));
            walkAll();
        }

        private static Bench bench(List<Load> loads, Outage outage) {
            return new Bench(Stock.of(List.of(), false), Laying.ASSUMED, loads, outage.help(), -10);
        }

        private void walkAll() {
            Prover prover = new Prover(weather, plane, weather.airDegC(), NOON, 4, 1, Workers.of(2));
            for (int i = 0; i < candidates.kept().size(); i++) {
                Candidates.Priced one = candidates.kept().get(i);
                double share = prover.share(one.rig(), loads, outage).share();
                walked.add(new Rated(i + 1, one.rig(), one.price(), share));
            }
        }

        Shortlist search(int threads, Predicate<Rated> confirm) {
            Prover prover = new Prover(weather, plane, weather.airDegC(), NOON, 4, 1, Workers.of(2));
            Search.Judge judge = new Search.Judge() {
                @Override
                public boolean holds(Rated rated) {
                    return confirm.test(rated);
                }

                @Override
                public OptionalDouble walkedShare(Rig rig, double threshold) {
                    askedFor.add(rig);
                    return prover.shareFrom(threshold, rig, loads, outage);
                }
            };
            return new Search(
                            plane,
                            weather.years(),
                            NOON,
                            4,
                            outage,
                            KeptBound.of(loads, weather, outage.months(), outage.hours()),
                            Workers.of(threads))
                    .shortlist(candidates, loads, judge, share -> {});
        }
    }

    @ParameterizedTest
    @ValueSource(longs = {301, 302, 303, 304, 305, 306, 307, 308})
    void listsAreThoseOfTheDumbSearch(long seed) {
        Shelf shelf = new Shelf(seed);
        double target = shelf.outage.targetShare();
        Shortlist list = shelf.search(2, rated -> true);
        Rated cheapest = shelf.walked.stream()
                .filter(r -> r.share() >= target)
                .findFirst()
                .orElse(null);
        assertThat(list.winner()).as("winner, seed %d", seed).isEqualTo(cheapest);
        double tieCents = cheapest == null
                ? Double.POSITIVE_INFINITY
                : 1.1 * cheapest.price().totalCents();
        assertThat(list.nearTies())
                .as("near ties, seed %d", seed)
                .isEqualTo(shelf.walked.stream()
                        .filter(r -> cheapest != null && r.number() > cheapest.number())
                        .filter(r -> r.share() >= target && r.price().totalCents() <= tieCents)
                        .toList());
        assertThat(list.misses())
                .as("misses, seed %d", seed)
                .isEqualTo(shelf.walked.stream()
                        .filter(r -> r.share() < target && r.price().totalCents() <= tieCents)
                        .sorted((a, b) -> a.share() != b.share()
                                ? Double.compare(b.share(), a.share())
                                : Integer.compare(a.number(), b.number()))
                        .limit(8)
                        .toList());
        List<Rated> front = new ArrayList<>();
        for (Rated rated : shelf.walked) {
            boolean beyond = cheapest != null
                    && rated.price().totalCents() > 2 * cheapest.price().totalCents();
            if (!beyond
                    && (front.isEmpty()
                            || rated.share() > front.get(front.size() - 1).share())) {
                front.add(rated);
            }
        }
        assertThat(list.front()).as("front, seed %d", seed).isEqualTo(front);
        assertThat(list.screened() + list.ruledOut()).isEqualTo(shelf.walked.size());
    }

    /** The bound of a battery by its data sheet, or of a helped outage, is one: what it rules out could not have won. */
    @ParameterizedTest
    @ValueSource(longs = {401, 402, 403, 404})
    void cheapestAmongRealBatteriesIsThatOfTheDumbSearch(long seed) {
        Shelf shelf = new Shelf(seed, true);
        Rated cheapest = shelf.walked.stream()
                .filter(r -> r.share() >= shelf.outage.targetShare())
                .findFirst()
                .orElse(null);
        Shortlist list = shelf.search(2, rated -> true);
        assertThat(list.winner()).as("winner, seed %d", seed).isEqualTo(cheapest);
        assertThat(shelf.walked).containsAll(list.front()).containsAll(list.nearTies());
    }

    /** Loads that switch themselves: the pooled bound rules out nothing that could have won, yet some of what could not. */
    @Test
    void cheapestForWhatSwitchesItselfIsThatOfTheDumbSearch() {
        assertThat(LongStream.range(421, 429).map(this::ruledOutByTheBound).sum())
                .isPositive();
    }

    /** Compares the winners; returns how many rigs cheaper than it were not walked. */
    long ruledOutByTheBound(long seed) {
        Shelf shelf = Shelf.ofKept(seed);
        double target = shelf.outage.targetShare();
        Rated cheapest = shelf.walked.stream()
                .filter(r -> r.share() >= target)
                .findFirst()
                .orElse(null);
        Shortlist list = shelf.search(2, rated -> true);
        assertThat(list.winner()).as("winner, seed %d, %s", seed, shelf.loads).isEqualTo(cheapest);
        assertThat(shelf.walked).containsAll(list.front()).containsAll(list.nearTies());
        return shelf.walked.stream()
                .filter(r -> cheapest == null || r.number() < cheapest.number())
                .filter(r -> !shelf.askedFor.contains(r.rig()))
                .count();
    }

    @Test
    void refusedConfirmationGoesOnToTheNext() {
        Shelf shelf = new Shelf(303);
        double target = shelf.outage.targetShare();
        List<Rated> meeting =
                shelf.walked.stream().filter(r -> r.share() >= target).toList();
        assertThat(meeting).hasSizeGreaterThan(3);
        Shortlist list =
                shelf.search(1, rated -> rated.number() >= meeting.get(2).number());
        assertThat(list.winner()).isEqualTo(meeting.get(2));
        assertThat(list.unconfirmed()).isEqualTo(meeting.subList(0, 2));
        assertThat(shelf.search(1, rated -> false).winner()).isNull();
        assertThat(shelf.search(1, rated -> false).unconfirmed()).isEqualTo(meeting);
    }

    @Test
    void threadsChangeNothing() {
        Shelf shelf = new Shelf(304);
        assertThat(shelf.search(2, rated -> true)).isEqualTo(shelf.search(1, rated -> true));
    }

    @Test
    void rejectionsAreCountedByRule() {
        Invented invented = new Invented(305);
        Candidates candidates = Candidates.of(
                invented.parts(),
                new Grammar(2, 2),
                invented.loads(false, false),
                new Site(-10, false),
                new Bench(Stock.of(List.of(), false), Laying.ASSUMED, List.of(), List.of(), -10),
                new Allowances(0, 0, 0),
                Terms.NONE,
                OptionalLong.of(1));
        assertThat(candidates.kept()).isEmpty();
        assertThat(candidates.overBudget()).isPositive();
        assertThat(candidates.rejected()).containsKey("no-outlet");
        int fell = Stream.of(candidates.overBudget()).mapToInt(n -> n).sum()
                + candidates.rejected().values().stream().mapToInt(n -> n).max().orElse(0);
        assertThat(fell).isLessThanOrEqualTo(candidates.looked());
    }
}
