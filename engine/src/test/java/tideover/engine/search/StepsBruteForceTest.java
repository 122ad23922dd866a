package tideover.engine.search;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalLong;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import tideover.engine.Invented;
import tideover.engine.outage.Outage;
import tideover.engine.proof.Prover;
import tideover.engine.quantity.Workers;
import tideover.engine.rig.Chosen;
import tideover.engine.rig.Rig;
import tideover.engine.rig.Route;
import tideover.engine.wiring.Allowances;
import tideover.engine.wiring.Bench;
import tideover.engine.wiring.Build;
import tideover.engine.wiring.Laying;
import tideover.engine.wiring.PartsList;
import tideover.engine.wiring.Terms;

/**
 * Buying in two steps against every pair of rigs: all of them listed by loops of their own, walked from every start and priced line
 * by line, what was bought before taken off by hand.
 */
class StepsBruteForceTest {
    private static final Comparator<Bought> BEST = Comparator.comparingDouble(
                    (Bought one) -> one.way().share())
            .reversed()
            .thenComparingLong(Bought::cents)
            .thenComparingDouble(one -> one.way().rig().massKg())
            .thenComparing(one -> one.way().rig().id());

    /** More take long, walked one by one. */
    private static final int FEW_RIGS = 110;

    private int steps;
    private int grown;
    private int counted;
    private int panelsAdded;
    private int smallPartsOwned;

    private record Bought(BruteForce.Way way, long cents) {}

    @Test
    void eachStepIsTheBestOfAllPairs() {
        List<String> faults = new ArrayList<>();
        for (long seed = 70_000; seed < 70_070; seed++) {
            SmallCase one = SmallCase.plain(seed);
            if (Shelf.of(one.parts(), one.grammar(), one.loads()).rigs() <= FEW_RIGS) {
                compare(seed, faults);
            }
        }
        assertThat(faults).isEmpty();
        assertThat(steps).as("cases with both steps").isGreaterThanOrEqualTo(12);
        assertThat(grown).as("second steps that add something").isGreaterThanOrEqualTo(4);
        assertThat(counted).as("cases with counted small parts").isPositive();
        assertThat(panelsAdded).as("panels added to panels").isPositive();
        assertThat(smallPartsOwned).as("small parts used again").isPositive();
    }

    private void compare(long seed, List<String> faults) {
        SmallCase one = SmallCase.plain(seed);
        one = withBudget(one, OptionalLong.empty());
        List<BruteForce.Way> ways = BruteForce.ways(one);
        if (ways.isEmpty()) {
            return;
        }
        Invented drawn = new Invented(seed + 2_000_000);
        long cheapest = ways.get(0).cents();
        long dearest = ways.get(ways.size() - 1).cents();
        long now = cheapest + Math.round(drawn.between(-0.02, 0.4) * (dearest - cheapest));
        long later = Math.round(drawn.between(0.1, 0.9) * (dearest - cheapest));

        Bought first = ways.stream()
                .filter(way -> way.cents() <= now && way.share() > 0)
                .map(way -> new Bought(way, way.cents()))
                .min(BEST)
                .orElse(null);
        Rated firstFound = best(one, Owned.NOTHING, now);
        said(seed, "first", first, firstFound, faults);
        if (first == null || firstFound == null) {
            return;
        }
        Build before = bench(one).wire(first.way().rig());
        Bought second = null;
        for (BruteForce.Way way : ways) {
            if (contains(way.rig(), first.way().rig())) {
                Bought more = new Bought(way, added(one, bench(one).wire(way.rig()), before));
                if (more.cents() <= later && (second == null || BEST.compare(more, second) < 0)) {
                    second = more;
                }
            }
        }
        Rated secondFound = best(one, Owned.of(bench(one).wire(firstFound.rig())), later);
        said(seed, "second", second, secondFound, faults);
        if (second != null) {
            tally(one, first, second);
        }
    }

    private void tally(SmallCase one, Bought first, Bought second) {
        steps++;
        boolean grows = !second.way().rig().id().equals(first.way().rig().id());
        grown += grows ? 1 : 0;
        boolean priced = !one.smallParts().isEmpty();
        counted += priced ? 1 : 0;
        smallPartsOwned += grows && priced ? 1 : 0;
        panelsAdded += grows && first.way().rig().id().contains("P") ? 1 : 0;
    }

    private static void said(
            long seed, String step, @Nullable Bought dumb, @Nullable Rated found, List<String> faults) {
        String expected = dumb == null
                ? "none"
                : dumb.way().rig().id() + " " + dumb.cents() + " " + dumb.way().share();
        String said = found == null ? "none" : found.rig().id() + " " + found.cents() + " " + found.share();
        if (!expected.equals(said)) {
            faults.add("seed " + seed + ", " + step + ": " + expected + " but found " + said);
        }
    }

    private static boolean contains(Rig rig, Rig other) {
        Map<String, Integer> counts = counts(rig);
        return counts(other).entrySet().stream()
                .allMatch(part -> counts.getOrDefault(part.getKey(), 0) >= part.getValue());
    }

    private static Map<String, Integer> counts(Rig rig) {
        Map<String, Integer> counts = new HashMap<>();
        for (Chosen chosen : rig.chosen()) {
            counts.put(chosen.part().listing().id(), chosen.count());
        }
        return counts;
    }

    /** By hand; nothing here is taxed, shipped or cheaper by the dozen, and no load is hard-wired or burns fuel. */
    private static long added(SmallCase one, Build whole, Build before) {
        long cents = 0;
        Map<String, Integer> there = counts(before.rig());
        for (Chosen chosen : whole.rig().chosen()) {
            int more =
                    chosen.count() - there.getOrDefault(chosen.part().listing().id(), 0);
            cents += more * chosen.part().listing().priceCents();
        }
        if (!whole.counted()) {
            return cents
                    + Math.max(
                            0,
                            allowance(one.allowances(), whole.rig().route())
                                    - allowance(one.allowances(), before.rig().route()));
        }
        for (PartsList.Line line : whole.partsList().lines()) {
            double left = 0;
            for (PartsList.Line owned : before.partsList().lines()) {
                if (owned.part().listing().id().equals(line.part().listing().id())) {
                    left += owned.bought() * owned.part().perPrice();
                }
            }
            double missing = line.needed() - left;
            if (missing > 1e-9) {
                cents += (long) Math.ceil(missing / line.part().perPrice() - 1e-9)
                        * line.part().listing().priceCents();
            }
        }
        return cents;
    }

    private static long allowance(Allowances allowances, Route route) {
        return switch (route) {
            case READY_BOX -> allowances.readyBoxCents();
            case ENCLOSURE -> allowances.enclosureCents();
            case SEPARATE_PARTS -> allowances.separatePartsCents();
        };
    }

    private static @Nullable Rated best(SmallCase one, Owned owned, long budgetCents) {
        Outage outage = one.outage();
        Prover prover = SearchAnswer.prover(one, 1);
        Offers offers = Offers.of(
                Shelf.of(one.parts(), one.grammar(), one.loads(), owned),
                one.loads(),
                one.site(),
                bench(one),
                one.allowances(),
                Terms.NONE,
                OptionalLong.of(budgetCents),
                Workers.of(1));
        return new BestShare(
                        one.plane(),
                        one.weather().years(),
                        SmallCase.NOON,
                        one.stepsPerHour(),
                        outage,
                        prover.keptBound(one.loads(), outage),
                        Workers.of(1),
                        one.loads(),
                        (rig, threshold) -> prover.shareFrom(threshold, rig, one.loads(), outage))
                .of(offers, share -> {});
    }

    private static Bench bench(SmallCase one) {
        return new Bench(one.stock(), Laying.ASSUMED, one.loads(), one.outage().help(), SmallCase.COLD_DEG_C);
    }

    private static SmallCase withBudget(SmallCase one, OptionalLong cents) {
        return new SmallCase(
                one.seed(),
                one.weather(),
                one.plane(),
                one.stepsPerHour(),
                one.loads(),
                one.outage(),
                one.parts(),
                one.grammar(),
                one.smallParts(),
                one.allowances(),
                one.terms(),
                cents);
    }
}
