package tideover.engine.search;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import org.jspecify.annotations.Nullable;
import tideover.engine.outage.Outage;
import tideover.engine.proof.KeptBound;
import tideover.engine.proof.Prover;
import tideover.engine.quantity.Workers;
import tideover.engine.rig.Aids;
import tideover.engine.rig.Rig;

/**
 * What the search says to a small question, in plain figures.
 *
 * @param id    of the winner; null where there is none, and then cents and share mean nothing
 * @param front best share for the price, cheapest first
 */
record SearchAnswer(@Nullable String id, long cents, double share, List<BruteForce.Step> front) {
    /** The one place that knows how the search is asked. */
    static SearchAnswer of(SmallCase one, int threads) {
        Outage outage = one.outage();
        Offers offers = Offers.of(
                Shelf.of(one.parts(), one.grammar(), one.loads()),
                one.loads(),
                one.site(),
                one.bench(),
                one.allowances(),
                one.terms(),
                one.budgetCents(),
                Workers.of(threads));
        Prover prover = prover(one, threads);
        Search.Judge judge = new Search.Judge() {
            @Override
            public boolean holds(Rated rated) {
                return outage.keepBack() == 1
                        || prover.share(rated.rig(), one.loads(), outage).share() >= outage.targetShare();
            }

            @Override
            public OptionalDouble walkedShare(Rig rig, double threshold) {
                return prover.shareFrom(threshold, rig, one.loads(), outage);
            }
        };
        KeptBound kept = KeptBound.easiest(one.grammar().aids().stream()
                .map(set -> prover.keptBound(Aids.served(set, one.loads()), outage))
                .toList());
        Shortlist list = new Search(
                        one.plane(),
                        one.weather().years(),
                        SmallCase.NOON,
                        one.stepsPerHour(),
                        outage,
                        kept,
                        Workers.of(threads))
                .shortlist(offers, one.loads(), judge, share -> {});
        Rated winner = list.winner();
        List<BruteForce.Step> front = front(list.front());
        return winner == null
                ? new SearchAnswer(null, 0, 0, front)
                : new SearchAnswer(winner.rig().id(), winner.price().totalCents(), winner.share(), front);
    }

    static Prover prover(SmallCase one, int threads) {
        return new Prover(
                one.weather(),
                one.plane(),
                one.weather().airDegC(),
                SmallCase.NOON,
                one.stepsPerHour(),
                1,
                Workers.of(threads));
    }

    /** The best of each price. */
    private static List<BruteForce.Step> front(List<Rated> rated) {
        List<BruteForce.Step> front = new ArrayList<>();
        for (Rated step : rated) {
            long cents = step.price().totalCents();
            if (!front.isEmpty() && front.get(front.size() - 1).cents() == cents) {
                front.remove(front.size() - 1);
            }
            front.add(new BruteForce.Step(cents, step.share()));
        }
        return front;
    }
}
