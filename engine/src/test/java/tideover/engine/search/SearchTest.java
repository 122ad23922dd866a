package tideover.engine.search;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.OptionalLong;
import java.util.Set;
import java.util.function.Predicate;
import java.util.stream.LongStream;
import org.jspecify.annotations.Nullable;
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
    /** Every single one of real batteries would be walked against all the cheaper ones, which takes hours. */
    private static final int MANY = 20;

    private static final double NOON = Invented.PLACE.meanSolarNoonHour();
    private static final Site SITE = new Site(-10, false);
    private static final Allowances ALLOWANCES = new Allowances(0, 0, 0);

    /** Where the front and the misses begin, if anything gets there. */
    private static final double TOLD = 0.5;

    /** Everything of one random shelf, walked. */
    private static final class Case {
        final Weather weather;
        final PlaneWeather plane;
        final List<Load> loads;
        final Outage outage;
        final Shelf shelf;
        final OptionalLong budgetCents;

        /** Cheapest first; of one price the best first, then the lightest, then by id. */
        final List<Rated> walked = new ArrayList<>();

        /** What the search asked to be walked. */
        final Set<Rig> askedFor = Collections.synchronizedSet(new HashSet<>());

        Case(long seed) {
            this(seed, false);
        }

        /** A small one for loads that switch themselves: every rig of it is walked in full. */
        static Case ofKept(long seed) {
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
            return new Case(
                    invented.weather(1), loads, invented.chance(0.3) ? invented.maybeHelped(outage) : outage, parts);
        }

        private Case(Weather weather, List<Load> loads, Outage outage, List<Part> parts) {
            this.weather = weather;
            this.loads = loads;
            this.outage = outage;
            plane = Invented.plane(weather);
            shelf = Shelf.of(parts, new Grammar(1, 1), loads);
            budgetCents = OptionalLong.empty();
            walkAll(parts, new Grammar(1, 1));
        }

        /** @param real batteries by their data sheet among the plain ones, and now and then help in the outage */
        Case(long seed, boolean real) {
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
            Grammar grammar = new Grammar(2, 1, outage.isHelped());
            shelf = Shelf.of(parts, grammar, loads);
            budgetCents = OptionalLong.of(invented.whole(400, 1200) * 100L);
            walkAll(parts, grammar);
        }

        private Bench bench() {
            return new Bench(Stock.of(List.of(), false), Laying.ASSUMED, loads, outage.help(), -10);
        }

        private void walkAll(List<Part> parts, Grammar grammar) {
            Prover prover = prover();
            for (Priced one : Candidates.of(parts, grammar, loads, SITE, bench(), ALLOWANCES, Terms.NONE, budgetCents)
                    .kept()) {
                walked.add(Rated.of(one, prover.share(one.rig(), loads, outage).share()));
            }
            walked.sort(Comparator.comparingLong(Rated::cents)
                    .thenComparing(Comparator.comparingDouble(Rated::share).reversed())
                    .thenComparingDouble(rated -> rated.rig().massKg())
                    .thenComparing(rated -> rated.rig().id()));
        }

        private Prover prover() {
            return new Prover(weather, plane, weather.airDegC(), NOON, 4, 1, Workers.of(2));
        }

        /** From the cheapest. */
        List<Rated> meeting(double target) {
            return walked.stream().filter(rated -> rated.share() >= target).toList();
        }

        @Nullable
        Rated cheapest() {
            return meeting(outage.targetShare()).stream().findFirst().orElse(null);
        }

        /** All before a rig; everything where there is none. */
        List<Rated> cheaperThan(@Nullable Rated rated) {
            return rated == null ? walked : walked.subList(0, walked.indexOf(rated));
        }

        Shortlist search(int threads, Predicate<Rated> confirm) {
            return search(threads, outage.targetShare(), confirm);
        }

        Shortlist search(int threads, double target, Predicate<Rated> confirm) {
            Outage wanted = outage.withTarget(target);
            Prover prover = prover();
            Search.Judge judge = new Search.Judge() {
                @Override
                public boolean holds(Rated rated) {
                    return confirm.test(rated);
                }

                @Override
                public OptionalDouble walkedShare(Rig rig, double threshold) {
                    askedFor.add(rig);
                    return prover.shareFrom(threshold, rig, loads, wanted);
                }
            };
            Offers offers =
                    Offers.of(shelf, loads, SITE, bench(), ALLOWANCES, Terms.NONE, budgetCents, Workers.of(threads));
            return new Search(
                            plane,
                            weather.years(),
                            NOON,
                            4,
                            wanted,
                            KeptBound.of(loads, weather, outage.months(), outage.hours()),
                            Workers.of(threads))
                    .shortlist(offers, loads, judge, share -> {});
        }
    }

    @ParameterizedTest
    @ValueSource(longs = {301, 302, 303, 304, 305, 306, 307, 308})
    void listsAreThoseOfTheDumbSearch(long seed) {
        Case one = new Case(seed);
        double target = one.outage.targetShare();
        Shortlist list = one.search(2, rated -> true);
        Rated cheapest = one.cheapest();
        assertThat(list.winner()).as("winner, seed %d", seed).isEqualTo(cheapest);
        double tieCents = cheapest == null ? Double.POSITIVE_INFINITY : 1.1 * cheapest.cents();
        assertThat(list.nearTies())
                .as("near ties, seed %d", seed)
                .isEqualTo(one.meeting(target).stream()
                        .filter(r -> cheapest != null && !r.equals(cheapest))
                        .filter(r -> r.cents() <= tieCents)
                        .toList());
        double told = one.meeting(TOLD).isEmpty() ? 0 : TOLD;
        assertThat(list.misses())
                .as("misses, seed %d", seed)
                .isEqualTo(one.walked.stream()
                        .filter(r -> r.share() < target && r.share() >= told && r.cents() <= tieCents)
                        .sorted(Comparator.comparingDouble(Rated::share)
                                .reversed()
                                .thenComparingLong(Rated::cents)
                                .thenComparing(r -> r.rig().id()))
                        .limit(8)
                        .toList());
        List<Rated> front = new ArrayList<>();
        for (Rated rated : one.meeting(told)) {
            boolean beyond = cheapest != null && rated.cents() > 2 * cheapest.cents();
            if (!beyond
                    && (front.isEmpty()
                            || rated.share() > front.get(front.size() - 1).share())) {
                front.add(rated);
            }
        }
        assertThat(list.front()).as("front, seed %d", seed).isEqualTo(front);
    }

    /** Lists are filled in several passes over the same rigs; each is counted once all the same. */
    @ParameterizedTest
    @ValueSource(longs = {301, 302, 303, 304, 305, 306, 307, 308, 401, 403})
    void noRigIsCountedTwice(long seed) {
        Shortlist.Counts counts =
                new Case(seed, seed > 400).search(2, rated -> true).counts();
        long told = counts.screened() + counts.walked() + counts.ruledOutBySeries();
        assertThat(told).as("priced, seed %d, %s", seed, counts).isLessThanOrEqualTo(counts.priced());
        assertThat(told + counts.ruledOutByDemand() + counts.ruledOutByArray() + counts.ruledOutBySort())
                .as("looked, seed %d, %s", seed, counts)
                .isLessThanOrEqualTo(counts.looked());
        assertThat(counts.overBudget() + mostOf(counts.rejected()))
                .as("over the budget, seed %d, %s", seed, counts)
                .isLessThanOrEqualTo(counts.looked());
    }

    private static long mostOf(Map<String, Long> rejected) {
        return rejected.values().stream().mapToLong(Long::longValue).max().orElse(0);
    }

    /** The bound of a battery by its data sheet, or of a helped outage, is one: what it rules out could not have won. */
    @ParameterizedTest
    @ValueSource(longs = {401, 402, 403, 404})
    void cheapestAmongRealBatteriesIsThatOfTheDumbSearch(long seed) {
        Case one = new Case(seed, true);
        Shortlist list = one.search(2, rated -> true);
        assertThat(list.winner()).as("winner, seed %d", seed).isEqualTo(one.cheapest());
        assertThat(one.walked).containsAll(list.front()).containsAll(list.nearTies());
    }

    /** Loads that switch themselves: the pooled bound rules out nothing that could have won, yet some of what could not. */
    @Test
    void cheapestForWhatSwitchesItselfIsThatOfTheDumbSearch() {
        assertThat(LongStream.range(421, 429).map(this::ruledOutByTheBound).sum())
                .isPositive();
    }

    /** Compares the winners; returns how many rigs cheaper than it were not walked. */
    long ruledOutByTheBound(long seed) {
        Case one = Case.ofKept(seed);
        Rated cheapest = one.cheapest();
        Shortlist list = one.search(2, rated -> true);
        assertThat(list.winner()).as("winner, seed %d, %s", seed, one.loads).isEqualTo(cheapest);
        assertThat(one.walked).containsAll(list.front()).containsAll(list.nearTies());
        return one.cheaperThan(cheapest).stream()
                .filter(r -> !one.askedFor.contains(r.rig()))
                .count();
    }

    @Test
    void refusedConfirmationGoesOnToTheNext() {
        Case one = new Case(303);
        List<Rated> meeting = one.meeting(one.outage.targetShare());
        assertThat(meeting).hasSizeGreaterThan(3);
        Shortlist list = one.search(1, rated -> one.walked.indexOf(rated) >= one.walked.indexOf(meeting.get(2)));
        assertThat(list.winner()).isEqualTo(meeting.get(2));
        assertThat(list.unconfirmed()).isEqualTo(meeting.subList(0, 2));
        assertThat(one.search(1, rated -> false).winner()).isNull();
        assertThat(one.search(1, rated -> false).unconfirmed()).isEqualTo(meeting);
    }

    /**
     * Every bound is one, whichever it is and whichever rig it is of: asked for exactly what a rig carries, and with everything
     * cheaper refused, the search comes to that rig; had any bound claimed less than the walk finds, it would pass it over.
     */
    @Test
    void whatAnyBoundClaimsIsNotBelowTheWalk() {
        RuledOut all = new RuledOut();
        for (long seed : new long[] {311, 312, 313}) {
            comesToEveryRig(new Case(seed), "plain, seed " + seed, 20, all);
        }
        for (long seed : new long[] {411, 412}) {
            comesToEveryRig(new Case(seed, true), "real, seed " + seed, 10, all);
        }
        for (long seed : new long[] {431, 432, 433}) {
            comesToEveryRig(Case.ofKept(seed), "kept, seed " + seed, 10, all);
        }
        assertThat(all.byDemand).as("by demand").isPositive();
        assertThat(all.byArray).as("by array").isPositive();
        assertThat(all.bySort).as("by sort").isPositive();
        assertThat(all.bySeries).as("by series").isPositive();
    }

    /** How many rigs each bound had its say on. */
    static final class RuledOut {
        long byDemand;
        long byArray;
        long bySort;
        long bySeries;
    }

    static void comesToManyRealRigs(long seed) {
        comesToEveryRig(new Case(seed, true), "real, seed " + seed, MANY, new RuledOut());
    }

    static void comesToEveryPlainRig(long seed) {
        comesToEveryRig(new Case(seed), "plain, seed " + seed, Integer.MAX_VALUE, new RuledOut());
    }

    static void comesToManyRigsForWhatSwitchesItself(long seed) {
        comesToEveryRig(Case.ofKept(seed), "kept, seed " + seed, MANY, new RuledOut());
    }

    /** @param most so many of its rigs, evenly from the cheapest to the dearest */
    private static void comesToEveryRig(Case one, String words, int most, RuledOut all) {
        List<Rated> some =
                one.walked.stream().filter(rated -> rated.share() > 0).toList();
        int step = Math.max(1, some.size() / most);
        for (int i = step / 2; i < some.size(); i += step) {
            Rated wanted = some.get(i);
            Shortlist list = one.search(2, wanted.share(), rated -> rated.number() == wanted.number());
            assertThat(list.winner()).as("%s, %s", words, wanted.rig().id()).isEqualTo(wanted);
            assertThat(list.unconfirmed())
                    .as("%s, before %s", words, wanted.rig().id())
                    .isEqualTo(one.cheaperThan(wanted).stream()
                            .filter(rated -> rated.share() >= wanted.share())
                            .toList());
            all.byDemand += list.counts().ruledOutByDemand();
            all.byArray += list.counts().ruledOutByArray();
            all.bySort += list.counts().ruledOutBySort();
            all.bySeries += list.counts().ruledOutBySeries();
        }
    }

    /** Of plain stores, of real ones, and of loads that switch themselves: every list and every count. */
    @Test
    void threadsChangeNothing() {
        for (Case one : List.of(new Case(304), new Case(404, true), Case.ofKept(422))) {
            assertThat(one.search(2, rated -> true)).isEqualTo(one.search(1, rated -> true));
        }
    }

    /** The number of a listed rig is enough to put it together again, and no two rigs share one. */
    @ParameterizedTest
    @ValueSource(longs = {303, 306, 403})
    void numbersDecode(long seed) {
        Case one = new Case(seed, seed > 400);
        Set<String> ids = new HashSet<>();
        for (long number = 1; number <= one.shelf.rigs(); number++) {
            ids.add(one.shelf.rig(number).id());
        }
        assertThat(ids).hasSize((int) one.shelf.rigs());
        assertThat(one.walked).isNotEmpty();
        for (Rated rated : one.walked) {
            assertThat(one.shelf.rig(rated.number()).id()).isEqualTo(rated.rig().id());
        }
        Shortlist list = one.search(2, rated -> true);
        List<Rated> listed = new ArrayList<>(list.front());
        listed.addAll(list.nearTies());
        listed.addAll(list.misses());
        list.byRoute().forEach(way -> listed.add(way.rated()));
        assertThat(listed).isNotEmpty();
        for (Rated rated : listed) {
            assertThat(one.shelf.rig(rated.number()).id()).isEqualTo(rated.rig().id());
        }
    }

    @Test
    void rejectionsAreCountedByRule() {
        Invented invented = new Invented(305);
        Candidates candidates = Candidates.of(
                invented.parts(),
                new Grammar(2, 2),
                invented.loads(false, false),
                SITE,
                new Bench(Stock.of(List.of(), false), Laying.ASSUMED, List.of(), List.of(), -10),
                ALLOWANCES,
                Terms.NONE,
                OptionalLong.of(1));
        assertThat(candidates.kept()).isEmpty();
        assertThat(candidates.overBudget()).isPositive();
        assertThat(candidates.rejected()).containsKey("no-outlet");
        assertThat(candidates.overBudget() + mostOf(candidates.rejected())).isLessThanOrEqualTo(candidates.looked());
    }
}
