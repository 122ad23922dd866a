package tideover.engine.answer;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalLong;
import org.jspecify.annotations.Nullable;
import tideover.engine.load.ColdLoad;
import tideover.engine.load.Load;
import tideover.engine.part.Cooler;
import tideover.engine.part.StandIn;
import tideover.engine.rig.Aids;
import tideover.engine.rig.Chosen;
import tideover.engine.rig.Gap;
import tideover.engine.rig.Rig;
import tideover.engine.wiring.Bench;
import tideover.engine.wiring.Price;

/**
 * Getting through with nothing to plug into: by jugs, coolers and stand-ins, or by nothing at all. Cold boxes are followed as
 * with a rig, but never get power; what follows the clock must be stood in for, else no outage is carried.
 *
 * <p>The hours that the food-safety agencies allow behind a shut door end a box here as everywhere: ice makes them no longer, except
 * that a freezer filled up with jugs is as full as it is. In a cooler, of which the agencies tell no hours, the food's temperature
 * alone counts, which a thermometer in its warmest place must show. So a thermometer for each cold box belongs to the price.
 */
final class WithoutPower {
    private final Question question;
    private final Bench bench;
    private final Walks walks;
    private final Map<List<Load>, Double> shares = new HashMap<>();

    private WithoutPower(Question question, Bench bench, Walks walks) {
        this.question = question;
        this.bench = bench;
        this.walks = walks;
    }

    /** Simulates in full. */
    interface Walks {
        /** Carried share on the weather years. */
        double share(Rig rig, List<Load> loads);

        /** Whether the question's loads meet the target, in storms and on other years too. */
        boolean holds(Rig rig);
    }

    /** The cheapest with aids that meets the target, or the nearest to it, where there is any; then nothing. */
    static List<Way> of(Question question, Bench bench, Walks walks) {
        WithoutPower without = new WithoutPower(question, bench, walks);
        List<Way> ways = new ArrayList<>();
        Way aided = without.cheapest();
        if (aided != null) {
            ways.add(aided);
        }
        ways.add(without.way(List.of(), true));
        return ways;
    }

    private @Nullable Way cheapest() {
        List<List<Chosen>> sets = Aids.sets(
                        question.parts(),
                        question.loads(),
                        question.grammar().mostJugs(),
                        question.outage().hours())
                .stream()
                .filter(set -> !set.isEmpty() && keepsByItself(Aids.served(set, question.loads())))
                .sorted(Comparator.comparingLong(
                                (List<Chosen> set) -> price(set).totalCents())
                        .thenComparingInt(List::size)
                        .thenComparing(set -> Rig.nothing(set).id()))
                .toList();
        List<Chosen> nearest = null;
        double most = -1;
        for (List<Chosen> set : sets) {
            double share = share(set);
            if (share >= question.asked().targetShare() && meets(set)) {
                return way(set, true);
            }
            if (share > most) {
                nearest = set;
                most = share;
            }
        }
        return nearest == null ? null : way(nearest, false);
    }

    /** Whether everything essential could be kept without power. */
    private static boolean keepsByItself(List<Load> loads) {
        return loads.stream().allMatch(load -> load.keeps() || !load.essential());
    }

    private Price price(List<Chosen> set) {
        return bench.withoutRig(set, question.terms()).price();
    }

    private double share(List<Chosen> set) {
        List<Load> served = Aids.served(set, question.loads());
        if (!keepsByItself(served) || Aids.lastHours(set) < question.outage().hours()) {
            return 0;
        }
        return shareOf(served);
    }

    /** @param loads with the aids that they have */
    private double shareOf(List<Load> loads) {
        List<Load> kept = loads.stream().filter(Load::keeps).toList();
        Double known = shares.get(kept);
        if (known == null) {
            known = kept.isEmpty() ? 1 : walks.share(Rig.nothing(List.of()), kept);
            shares.put(kept, known);
        }
        return known;
    }

    /** No share is good enough where somebody's health hangs on it. */
    private boolean meets(List<Chosen> set) {
        OptionalLong budget = question.budgetCents();
        boolean affordable = budget.isEmpty() || price(set).totalCents() <= budget.getAsLong();
        return affordable && !question.medical() && walks.holds(Rig.nothing(set));
    }

    private Way way(List<Chosen> set, boolean mayMeet) {
        double share = share(set);
        boolean meets = mayMeet && share >= question.asked().targetShare() && meets(set);
        return new Way(
                set.isEmpty() ? Way.Kind.NOTHING : Way.Kind.COLD_ALONE,
                set,
                price(set),
                share,
                meets,
                figures(set),
                expectedLossCents(set));
    }

    private Way.Figures figures(List<Chosen> set) {
        List<Way.Act> acts = new ArrayList<>();
        List<Load> served = Aids.served(set, question.loads());
        double kg = 0;
        for (Chosen one : set) {
            kg += one.count() * one.part().listing().massKg();
        }
        if (has(set, Cooler.class)) {
            acts.add(Way.Act.MOVE_FOOD);
        }
        if (served.stream()
                .anyMatch(load -> load instanceof ColdLoad cold
                        && !cold.aids().isEmpty()
                        && cold.box().takesIceIn())) {
            acts.add(Way.Act.PUT_ICE_IN);
        }
        if (has(set, StandIn.class)) {
            acts.add(Way.Act.TAKE_STAND_IN);
        }
        if (served.stream().anyMatch(ColdLoad.class::isInstance)) {
            acts.add(Way.Act.READ_THERMOMETER);
            acts.add(Way.Act.THROW_OUT);
        }
        boolean agesUnknown = has(set, StandIn.class);
        return new Way.Figures(
                Double.NaN,
                agesUnknown ? Double.NaN : 0,
                kg,
                0,
                0,
                false,
                keepsByItself(served) ? (has(set, StandIn.class) ? Gap.BY_HAND_SECONDS : 0) : Double.NaN,
                acts);
    }

    private static boolean has(List<Chosen> set, Class<?> kind) {
        return set.stream().anyMatch(one -> kind.isInstance(one.part()));
    }

    /** Each box by itself: one that spoils does not spoil the other. */
    private double expectedLossCents(List<Chosen> set) {
        double cents = 0;
        boolean told = false;
        for (Load load : Aids.served(set, question.loads())) {
            if (load instanceof ColdLoad cold && cold.worthCents() > 0) {
                told = true;
                cents += (1 - shareOf(List.of(cold))) * cold.worthCents();
            }
        }
        return told ? cents : Double.NaN;
    }
}
