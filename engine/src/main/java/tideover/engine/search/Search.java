package tideover.engine.search;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.stream.IntStream;
import org.jspecify.annotations.Nullable;
import tideover.engine.load.Load;
import tideover.engine.outage.Outage;
import tideover.engine.part.InverterRating;
import tideover.engine.part.Outlet;
import tideover.engine.part.PlainStore;
import tideover.engine.proof.ArraySun;
import tideover.engine.proof.BusDemand;
import tideover.engine.proof.KeptBound;
import tideover.engine.proof.NetGains;
import tideover.engine.proof.PlaneWeather;
import tideover.engine.proof.RigFigures;
import tideover.engine.quantity.Series;
import tideover.engine.quantity.Workers;
import tideover.engine.rig.Rig;
import tideover.engine.rig.Route;

/**
 * Finds the cheapest rig that meets the target, by drawdown screening.
 *
 * <p>Rigs that differ only in the size of their store share one series of net gains; one pass over it gives the capacity
 * that each outage needs, and so the carried share of every size. For a plain store and loads that follow the clock this
 * is no estimate: it is what the full walk finds. Nice-to-have loads that may draw on the store make it a bound from
 * above, and then the confirmation decides.
 *
 * <p>A battery by its data sheet, or an outage with help in it, can only be bounded so: the series is that of the best plain
 * store it could be, and of the hours before help comes. So can loads that switch themselves: the series then holds the least that
 * they can live on ({@link KeptBound}). Such a rig is walked in full, cheapest first, where its bound could
 * make it the winner; for the front where it may gain a hundredth; and as a near tie, the first few.
 *
 * <p>Most rigs need no pass of their own. Gains rise with every efficiency, with the controller's current, with the
 * array, and fall with the demand; so a made-up rig with the best of each carries no less than any real one. Two such
 * bounds are kept: for each array under the best electronics, and for each electronics under the best array. A rig is
 * screened exactly only where the better of what they allow could still make it the winner, a near tie, a step of the
 * front, or one of the nearest misses. Rigs are taken cheapest first, in rounds of fixed size, so that the outcome does
 * not depend on the number of threads.
 */
public final class Search {
    private static final double NEAR_TIE = 0.10;
    private static final double FRONT_TIMES = 2;
    private static final int MISSES = 8;

    /** So many near ties are walked that the screening can only bound. */
    private static final int NEAR_WALKS = 6;

    /** So many that the screening can only bound are walked for each way of building; then it is left untold. */
    private static final int ROUTE_WALKS = 6;

    /** A rig that the screening can only bound is walked for the front where it may be better by so much. */
    private static final double FRONT_STEP = 0.01;

    /** And only if it carries so much at all: what fails more often than not is nobody's answer. */
    private static final double FRONT_LEAST = 0.5;

    /** No panel gives this many times its rated watts, however bright and cold. */
    private static final double MOST_PER_RATED_W = 4;

    private static final int ROUND = 8;

    private final PlaneWeather plane;
    private final int years;
    private final double noonHour;
    private final int stepsPerHour;
    private final Outage outage;
    private final KeptBound kept;
    private final Workers workers;

    /**
     * @param noonHour clock hour of solar noon at the place
     * @param kept     what the loads that switch themselves need at least
     */
    public Search(
            PlaneWeather plane,
            int years,
            double noonHour,
            int stepsPerHour,
            Outage outage,
            KeptBound kept,
            Workers workers) {
        this.kept = kept;
        this.plane = plane;
        this.years = years;
        this.noonHour = noonHour;
        this.stepsPerHour = stepsPerHour;
        this.outage = outage;
        this.workers = workers;
    }

    /** Told how far the search is, from 0 to 1. */
    public interface Progress {
        void at(double share);
    }

    /** Simulates rigs in full. */
    public interface Judge {
        /** Has the last word on a rig that meets the target. */
        boolean holds(Rated rated);

        /** The carried share of a rig that the screening can only bound, if it reaches a threshold; else empty. */
        OptionalDouble walkedShare(Rig rig, double threshold);
    }

    /** Searches the candidates; the judge is asked cheapest first until a rig holds. */
    public Shortlist shortlist(Candidates candidates, List<Load> loads, Judge judge, Progress progress) {
        return new Run(candidates, loads, judge, progress).shortlist();
    }

    /** One series of net gains, all but the store's size. */
    private record Key(ArraySun panel, RigFigures withoutCapacity, Profile demand) {}

    /** Essential demand by the step of the day; compared by value. */
    private static final class Profile {
        private final double[] busW;
        private final int hash;

        Profile(double[] busW) {
            this.busW = busW;
            this.hash = Arrays.hashCode(busW);
        }

        @Override
        public boolean equals(Object other) {
            return other instanceof Profile that && Arrays.equals(busW, that.busW);
        }

        @Override
        public int hashCode() {
            return hash;
        }
    }

    /** A pass over one series for the rigs, by their index, whose share it gives or bounds. */
    private record Job(Key key, Series sun, List<Integer> members) {}

    /** One search from beginning to end. */
    private final class Run {
        private final Candidates candidates;
        private final List<Load> byTheClock;
        private final Judge judge;
        private final Progress progress;
        private final double target = outage.targetShare();

        /** What the screening looks at: the outage, or its hours before help comes, which have to be carried first. */
        private final Outage screened = screened();

        private final List<Key> keys = new ArrayList<>();
        private final Map<Key, List<Integer>> byKey = new LinkedHashMap<>();
        private final Map<ArraySun, Series> suns = new LinkedHashMap<>();
        private final double[] capacityWh;
        private final double[] share;
        private final double[] atMost;
        private int series;
        private int walked;
        private int nearTiesWalked;

        private @Nullable Rated winner;
        private final List<Rated> nearTies = new ArrayList<>();
        private final List<Rated> unconfirmed = new ArrayList<>();
        private final List<Rated> front = new ArrayList<>();
        private final List<Rated> misses = new ArrayList<>();

        Run(Candidates candidates, List<Load> loads, Judge judge, Progress progress) {
            this.candidates = candidates;
            this.byTheClock = loads.stream().filter(load -> !load.keeps()).toList();
            this.judge = judge;
            this.progress = progress;
            this.share = new double[candidates.kept().size()];
            this.atMost = new double[share.length];
            this.capacityWh = new double[share.length];
            Arrays.fill(share, Double.NaN);
            Arrays.fill(atMost, 1);
        }

        private Outage screened() {
            Outage first = outage.first(Math.max(1, outage.unhelpedHours()));
            return kept.isNothing() ? first : first.fullAtStart();
        }

        Shortlist shortlist() {
            makeKeys();
            bound();
            int next = 0;
            while (next < share.length && !done(next)) {
                next = round(next);
                progress.at((double) next / share.length);
            }
            List<OfRoute> byRoute = byRoute();
            int screened = (int) IntStream.range(0, share.length)
                    .filter(index -> isExact(index) && !Double.isNaN(share[index]))
                    .count();
            return new Shortlist(
                    winner,
                    nearTies,
                    unconfirmed,
                    front,
                    misses,
                    byRoute,
                    candidates.looked(),
                    share.length,
                    share.length - screened - walked,
                    screened,
                    series,
                    walked,
                    candidates.rejected(),
                    candidates.overBudget(),
                    candidates.leastOverBudgetCents());
        }

        private Rig rig(int index) {
            return candidates.kept().get(index).rig();
        }

        private long cents(int index) {
            return candidates.kept().get(index).price().totalCents();
        }

        private void makeKeys() {
            record Electronics(
                    @Nullable InverterRating inverter, List<Outlet> outlets, Rig.@Nullable MainsCharge mainsCharge) {}
            Map<Electronics, Profile> profiles = new HashMap<>();
            for (int i = 0; i < share.length; i++) {
                Rig rig = rig(i);
                RigFigures figures = RigFigures.of(rig);
                if (!kept.isNothing()) {
                    // Stored cold and stored charge in one pool, at nobody's loss.
                    figures = figures.pooledWith(kept.storeWh());
                }
                capacityWh[i] = figures.capacityWh();
                figures = figures.withCapacityWh(1).withMaxDischargeW(Double.MAX_VALUE);
                // The walk never reaches these where they cannot bind; without them more rigs share a series.
                if (figures.maxChargeW()
                        >= Math.min(figures.controllerMaxW(), MOST_PER_RATED_W * figures.arrayRatedW())) {
                    figures = figures.withMaxChargeW(Double.MAX_VALUE);
                }
                // All that a rig's demand depends on; the day's steps are worked out once for each.
                Profile profile = profiles.computeIfAbsent(
                        new Electronics(rig.inverter(), rig.outlets(), rig.engineCharge(outage)),
                        same -> new Profile(BusDemand.of(rig, byTheClock, noonHour, stepsPerHour)
                                .essentialLessEngineW(rig, outage)));
                Key key = new Key(ArraySun.of(rig), figures, profile);
                keys.add(key);
                byKey.computeIfAbsent(key, k -> new ArrayList<>()).add(i);
            }
        }

        private Series sunOf(ArraySun kind) {
            return suns.computeIfAbsent(kind, k -> k.wattsPerRatedW(plane));
        }

        /** What each rig can carry at most, from made-up rigs with the best of everything else. */
        private void bound() {
            if (share.length == 0) {
                return;
            }
            RigFigures best = keys.get(0).withoutCapacity();
            double[] leastBusW = keys.get(0).demand().busW.clone();
            for (Key key : byKey.keySet()) {
                best = better(best, key.withoutCapacity());
                for (int step = 0; step < leastBusW.length; step++) {
                    leastBusW[step] = Math.min(leastBusW[step], key.demand().busW[step]);
                }
            }
            Profile least = new Profile(leastBusW);
            Series brightest = brightest();
            Map<Object, Job> jobs = new LinkedHashMap<>();
            for (int i = 0; i < share.length; i++) {
                Key key = keys.get(i);
                record Array(ArraySun panel, double ratedW) {}
                Array array = new Array(key.panel(), key.withoutCapacity().arrayRatedW());
                Key bestElectronics = new Key(key.panel(), best.withArrayRatedW(array.ratedW()), least);
                jobs.computeIfAbsent(array, a -> new Job(bestElectronics, sunOf(key.panel()), new ArrayList<>()))
                        .members()
                        .add(i);
                Key bestArray = new Key(key.panel(), best, key.demand());
                jobs.computeIfAbsent(key.demand(), d -> new Job(bestArray, brightest, new ArrayList<>()))
                        .members()
                        .add(i);
            }
            List<Job> list = new ArrayList<>(jobs.values());
            double[][] found = sharesOf(list);
            for (int number = 0; number < found.length; number++) {
                List<Integer> members = list.get(number).members();
                for (int m = 0; m < members.size(); m++) {
                    int index = members.get(m);
                    atMost[index] = Math.min(atMost[index], found[number][m]);
                }
            }
        }

        private double[][] sharesOf(List<Job> jobs) {
            double[][] found = new double[jobs.size()][];
            workers.forEach(found.length, number -> found[number] = shares(jobs.get(number)));
            series += found.length;
            return found;
        }

        /** The highest watts per rated watt of any panel, hour by hour. */
        private Series brightest() {
            double[] most = new double[plane.planeWm2().length()];
            for (Key key : byKey.keySet()) {
                sunOf(key.panel());
            }
            for (Series sun : suns.values()) {
                for (int hour = 0; hour < most.length; hour++) {
                    most[hour] = Math.max(most[hour], sun.at(hour));
                }
            }
            return Series.owning(most);
        }

        private static RigFigures better(RigFigures a, RigFigures b) {
            return new RigFigures(
                    1,
                    Math.max(a.chargeEff(), b.chargeEff()),
                    Math.max(a.dischargeEff(), b.dischargeEff()),
                    Double.MAX_VALUE,
                    Double.MAX_VALUE,
                    Math.max(a.arrayRatedW(), b.arrayRatedW()),
                    Math.max(a.controllerMaxW(), b.controllerMaxW()),
                    Math.max(a.controllerEff(), b.controllerEff()));
        }

        private double[] shares(Job job) {
            if (outage.unhelpedHours() == 0) {
                // Help is there at once: nothing can be ruled out before a walk.
                double[] unknown = new double[job.members().size()];
                Arrays.fill(unknown, 1);
                return unknown;
            }
            CapacityCounts counts = new CapacityCounts(job.members().stream()
                    .mapToDouble(index -> capacityWh[index])
                    .toArray());
            NetGains.visit(
                    job.sun(),
                    years,
                    job.key().withoutCapacity(),
                    job.key().demand().busW,
                    kept.needW(),
                    stepsPerHour,
                    screened,
                    (sunnyWh, darkDayWh, starts) -> counts.add(Drawdown.neededWh(
                            darkDayWh,
                            sunnyWh,
                            starts,
                            stepsPerHour,
                            screened.panelsOutAfterHours(),
                            screened.hours(),
                            screened.chargeAtStart())));
            return job.members().stream()
                    .mapToDouble(index -> counts.share(capacityWh[index]))
                    .toArray();
        }

        /** Screens the next rigs worth it, a round of different series at the most, and takes them in, cheapest first. */
        private int round(int from) {
            Map<Key, Job> wanted = new LinkedHashMap<>();
            int next = from;
            while (next < share.length && wanted.size() < ROUND && !done(next)) {
                if (Double.isNaN(share[next]) && matters(next, atMost[next])) {
                    wanted.computeIfAbsent(
                            keys.get(next),
                            key -> new Job(key, sunOf(key.panel()), byKey.getOrDefault(key, List.of())));
                }
                next++;
            }
            pass(wanted);
            for (int index = from; index < next; index++) {
                if (!Double.isNaN(share[index])) {
                    take(index);
                }
            }
            return next;
        }

        private boolean done(int index) {
            boolean frontEnds = bestOfFront() >= 1 || (winner != null && cents(index) > FRONT_TIMES * winnerCents());
            return winner != null && !nearTie(index) && frontEnds;
        }

        private boolean nearTie(int index) {
            return winner != null && cents(index) <= (1 + NEAR_TIE) * winnerCents();
        }

        private long winnerCents() {
            return winner == null ? Long.MAX_VALUE : winner.price().totalCents();
        }

        private double bestOfFront() {
            return front.isEmpty() ? -1 : front.get(front.size() - 1).share();
        }

        /** Whether a rig with at most this share could still enter any of the lists. */
        private boolean matters(int index, double shareAtMost) {
            boolean inPlay = winner == null || nearTie(index);
            boolean miss = misses.size() < MISSES
                    || shareAtMost > misses.get(MISSES - 1).share();
            return shareAtMost > bestOfFront() || (inPlay && (shareAtMost >= target || miss));
        }

        /** Whether the screening tells the share itself and no bound: a plain store, fed by nothing but the sun. */
        private boolean isExact(int index) {
            return rig(index).store() instanceof PlainStore && !rig(index).isHelped(outage) && kept.isNothing();
        }

        /** Puts the walked share in the place of a bound; false where the walk is not worth its time. */
        private boolean walk(int index) {
            boolean mayWin = winner == null && share[index] >= target;
            boolean mayTie = winner != null && nearTie(index) && share[index] >= target && nearTiesWalked < NEAR_WALKS;
            double forFront = Math.max(FRONT_LEAST, bestOfFront() + FRONT_STEP);
            if (!mayWin && !mayTie && share[index] <= forFront) {
                return false;
            }
            nearTiesWalked += mayTie ? 1 : 0;
            walked++;
            double threshold = mayWin || mayTie ? Math.min(target, forFront) : forFront;
            OptionalDouble found = judge.walkedShare(rig(index), threshold);
            share[index] = found.orElse(Double.NaN);
            return found.isPresent();
        }

        /** For each way of building the cheapest that meets the target; where none does, the nearest to it. */
        private List<OfRoute> byRoute() {
            List<OfRoute> ways = new ArrayList<>();
            for (Route route : Route.values()) {
                Rated found = winner != null && winner.rig().route() == route ? winner : cheapestOf(route);
                Rated nearest = found == null ? nearestOf(route) : null;
                if (found != null) {
                    ways.add(new OfRoute(found, true));
                } else if (nearest != null) {
                    ways.add(new OfRoute(nearest, false));
                }
            }
            return ways;
        }

        /** Dearer than the winner, if there is one at all: what is cheaper and holds would be the winner. */
        private @Nullable Rated cheapestOf(Route route) {
            List<Integer> able = IntStream.range(winner == null ? share.length : winner.number(), share.length)
                    .filter(index -> rig(index).route() == route && atMost[index] >= target)
                    .boxed()
                    .toList();
            int walks = 0;
            for (int from = 0; from < able.size(); from += ROUND) {
                List<Integer> some = able.subList(from, Math.min(able.size(), from + ROUND));
                screen(some.stream()
                        .filter(index -> isExact(index) && Double.isNaN(share[index]))
                        .toList());
                for (int index : some) {
                    boolean exact = isExact(index);
                    if (!exact && ++walks > ROUTE_WALKS) {
                        return null;
                    }
                    double carried = exact
                            ? share[index]
                            : judge.walkedShare(rig(index), target).orElse(0);
                    Rated rated = rated(index, carried);
                    if (carried >= target && judge.holds(rated)) {
                        return rated;
                    }
                }
            }
            return null;
        }

        /** Among those whose share the screening tells itself; the cheapest of the best. */
        private @Nullable Rated nearestOf(Route route) {
            List<Integer> able = IntStream.range(0, share.length)
                    .filter(index -> rig(index).route() == route && isExact(index))
                    .boxed()
                    .sorted(Comparator.comparingDouble((Integer index) -> -atMost[index])
                            .thenComparing(index -> index))
                    .toList();
            Rated best = null;
            for (int from = 0; from < able.size(); from += ROUND) {
                if (best != null && atMost[able.get(from)] < best.share()) {
                    break;
                }
                List<Integer> some = able.subList(from, Math.min(able.size(), from + ROUND));
                screen(some.stream().filter(index -> Double.isNaN(share[index])).toList());
                for (int index : some) {
                    boolean better = best == null
                            || share[index] > best.share()
                            || (share[index] == best.share() && index + 1 < best.number());
                    best = better ? rated(index, share[index]) : best;
                }
            }
            return best;
        }

        private Rated rated(int index, double carried) {
            Candidates.Priced priced = candidates.kept().get(index);
            return new Rated(index + 1, priced.rig(), priced.price(), carried);
        }

        /** One pass for each series of the rigs. */
        private void screen(List<Integer> indices) {
            Map<Key, Job> wanted = new LinkedHashMap<>();
            for (int index : indices) {
                wanted.computeIfAbsent(
                        keys.get(index), key -> new Job(key, sunOf(key.panel()), byKey.getOrDefault(key, List.of())));
            }
            pass(wanted);
        }

        private void pass(Map<Key, Job> wanted) {
            List<Job> list = new ArrayList<>(wanted.values());
            double[][] found = sharesOf(list);
            for (int number = 0; number < found.length; number++) {
                List<Integer> members = list.get(number).members();
                for (int m = 0; m < members.size(); m++) {
                    share[members.get(m)] = found[number][m];
                }
            }
        }

        private void take(int index) {
            if (!isExact(index) && !walk(index)) {
                return;
            }
            Rated rated = rated(index, share[index]);
            boolean inPlay = winner == null || nearTie(index);
            if (rated.share() > bestOfFront()) {
                front.add(rated);
            }
            if (rated.share() < target) {
                if (inPlay) {
                    misses.add(rated);
                    misses.sort(
                            Comparator.comparingDouble(Rated::share).reversed().thenComparingInt(Rated::number));
                    if (misses.size() > MISSES) {
                        misses.remove(MISSES);
                    }
                }
            } else if (winner == null) {
                if (judge.holds(rated)) {
                    winner = rated;
                } else {
                    unconfirmed.add(rated);
                }
            } else if (nearTie(index)) {
                nearTies.add(rated);
            }
        }
    }
}
