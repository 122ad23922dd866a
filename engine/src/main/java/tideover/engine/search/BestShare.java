package tideover.engine.search;

import java.util.List;
import java.util.OptionalDouble;
import org.jspecify.annotations.Nullable;
import tideover.engine.load.Load;
import tideover.engine.outage.Outage;
import tideover.engine.proof.KeptBound;
import tideover.engine.proof.PlaneWeather;
import tideover.engine.quantity.Workers;
import tideover.engine.rig.Rig;

/**
 * The best share for the money: of the rigs within a budget the one that carries most; of equals the cheapest, then the lightest, then
 * by id. It is the search for a target of every outage: the cheapest that carries them all, else the last step of the front.
 */
public final class BestShare {
    private final Search search;
    private final List<Load> loads;
    private final Walk walk;

    /** Walks a rig in full. */
    public interface Walk {
        /** Its carried share if that reaches a threshold; else empty. */
        OptionalDouble share(Rig rig, double threshold);
    }

    /** The arguments of {@link Search}; the target of the outage is not looked at. */
    public BestShare(
            PlaneWeather plane,
            int years,
            double noonHour,
            int stepsPerHour,
            Outage outage,
            KeptBound kept,
            Workers workers,
            List<Load> loads,
            Walk walk) {
        this.search = new Search(plane, years, noonHour, stepsPerHour, outage.withTarget(1), kept, workers);
        this.loads = List.copyOf(loads);
        this.walk = walk;
    }

    /** Null where none carries any outage within the budget of the offers. */
    public @Nullable Rated of(Offers offers, Search.Progress progress) {
        Search.Judge judge = new Search.Judge() {
            @Override
            public boolean holds(Rated rated) {
                return walk.share(rated.rig(), 1).orElse(0) >= 1;
            }

            @Override
            public OptionalDouble walkedShare(Rig rig, double threshold) {
                return walk.share(rig, threshold);
            }
        };
        Shortlist list = search.shortlist(offers, loads, judge, progress);
        if (list.winner() != null) {
            return list.winner();
        }
        List<Rated> front = list.front();
        Rated last = front.isEmpty() ? null : front.get(front.size() - 1);
        return last == null || last.share() <= 0 ? null : last;
    }
}
