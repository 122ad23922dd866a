package tideover.engine.search;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.BitSet;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.OptionalLong;
import java.util.PriorityQueue;
import org.jspecify.annotations.Nullable;
import tideover.engine.load.Load;
import tideover.engine.outage.Outage;
import tideover.engine.part.InverterRating;
import tideover.engine.part.Outlet;
import tideover.engine.part.Panel;
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
 * <p>Most rigs need no pass of their own, and no wiring either. Gains rise with every efficiency, with the controller's current,
 * with the array, and fall with the demand; so a made-up rig with the best of each carries no less than any real one. Two such
 * bounds are kept, for every size of store: with each array under the best electronics and the least demand, and with each demand
 * under the best of all arrays. A rig is judged, wired, priced and screened only where the lower of the two could still make it the
 * winner, a near tie, a step of the front, the cheapest of its way of building, or one of the nearest misses ({@link Offers}). What a
 * bound once rules out stays so: all that the lists ask only rises. Rigs are taken cheapest first, in rounds of fixed size, so
 * that the outcome does not depend on the number of threads.
 */
public final class Search {
    private static final double NEAR_TIE = 0.10;
    private static final double FRONT_TIMES = 2;
    private static final int MISSES = 8;

    /** So many near ties are walked that the screening can only bound. */
    private static final int NEAR_WALKS = 6;

    /** So many that the screening can only bound are walked for each way of building; then it is left untold. */
    private static final int ROUTE_WALKS = 6;

    /** The front begins here: what fails more often than not is nobody's answer. */
    private static final double FRONT_LEAST = 0.5;

    /** No panel gives this many times its rated watts, however bright and cold. */
    private static final double MOST_PER_RATED_W = 4;

    private static final int ROUND = 8;

    /** Part of the weeks that is asked first: enough that what fails the target by far fails within it. */
    private static final double DARK_PART = 0.15;

    /** To weigh sun against what is needed where weeks are put in order. */
    private static final double SOME_PANEL_W = 200;

    /** Where no rig of a way of building meets the target, so many that may be best are looked into. */
    private static final int MOST_DRAFTS = 1024;

    private static final Series NO_SUN = Series.constant(1, 0);

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

        /** What comes to light on the way. */
        default void found(Find find) {}

        /** Every rig that costs less has been judged. */
        default void judgedBelow(long cents) {}
    }

    /** Simulates rigs in full. */
    public interface Judge {
        /** Has the last word on a rig that meets the target. */
        boolean holds(Rated rated);

        /** The carried share of a rig that the screening can only bound, if it reaches a threshold; else empty. */
        OptionalDouble walkedShare(Rig rig, double threshold);
    }

    /** Searches the offers; the judge is asked cheapest first until a rig holds. */
    public Shortlist shortlist(Offers offers, List<Load> loads, Judge judge, Progress progress) {
        return new Run(offers, loads, judge, progress).shortlist();
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

    /** Whether a rig with at most this share is still of interest. */
    private interface Mattering {
        boolean matters(Route route, long cents, double shareAtMost);
    }

    /** A demand and an array, by their places. */
    private record Pair(int profile, int array) {}

    /** A rig that was not asked for, with the most that it can carry. */
    private record Draft(Strand strand, Shelf.@Nullable Array array, double atMost) {
        static final Comparator<Draft> WORST_FIRST = Comparator.comparingDouble(Draft::atMost)
                .thenComparing(
                        Comparator.comparingLong((Draft draft) -> draft.strand().number(draft.array()))
                                .reversed());
    }

    /** One search from beginning to end. */
    private final class Run {
        private final Offers offers;
        private final List<Load> byTheClock;
        private final Judge judge;
        private final Progress progress;
        private final double target = outage.targetShare();

        /** What the screening looks at: the outage, or its hours before help comes, which have to be carried first. */
        private final Outage screened = screened();

        private final Map<Object, Profile> profileOf = new HashMap<>();
        private final Map<Profile, Integer> profiles = new LinkedHashMap<>();
        private final Map<ArraySun, Series> suns = new LinkedHashMap<>();

        /** All capacities of the shelf, rising. */
        private double[] capacitiesWh = {};

        /** What carries at most, by the place of the capacity: with each array, the last for none, and with each demand. */
        private double[][] atMostByArray = {};

        private double[][] atMostByProfile = {};
        private final Map<Pair, double[]> atMostByPair = new HashMap<>();
        private final Map<Key, double[]> atMostInDark = new HashMap<>();
        private final Map<Key, double[]> atMostByKey = new HashMap<>();
        private final NetGains.Starts everyStart = NetGains.Starts.all(screened, years);
        private final NetGains.Starts darkest =
                NetGains.Starts.darkest(screened, years, plane, kept.needW(), SOME_PANEL_W, DARK_PART);
        private final int allStarts = everyStart.count();
        private List<Profile> demands = List.of();

        /** A made-up rig with the best of all electronics. */
        private RigFigures best = new RigFigures(1, 1, 1, 0, 0, 0, 0, 1);

        private final Series noSun = Series.constant(plane.planeWm2().length(), 0);
        private final Map<Key, double[]> shares = new HashMap<>();

        private int series;
        private long ruledOutByDemand;
        private long ruledOutByArray;
        private long ruledOutBySeries;
        private long screenedExactly;
        private int walked;
        private int walkedInVain;
        private int nearTiesWalked;
        private final Map<Long, OptionalDouble> walkedShares = new HashMap<>();

        /** First the winner is sought and nothing else; then, from the cheapest again, what stands beside it. */
        private boolean seeksWinner = true;

        private @Nullable Rated winner;
        private final Map<Route, Rated> meeting = new EnumMap<>(Route.class);
        private final Map<Route, Integer> routeWalks = new EnumMap<>(Route.class);
        private final List<Rated> nearTies = new ArrayList<>();
        private final List<Rated> unconfirmed = new ArrayList<>();
        private final List<Rated> front = new ArrayList<>();
        private final List<Rated> misses = new ArrayList<>();

        Run(Offers offers, List<Load> loads, Judge judge, Progress progress) {
            this.offers = offers;
            this.byTheClock = loads.stream().filter(load -> !load.keeps()).toList();
            this.judge = judge;
            this.progress = progress;
        }

        private Outage screened() {
            Outage first = outage.first(Math.max(1, outage.unhelpedHours()));
            return kept.isNothing() ? first : first.fullAtStart();
        }

        Shortlist shortlist() {
            bound();
            while (winner == null && offers.leastCents() != Long.MAX_VALUE && round(forWinner)) {
                progress.judgedBelow(offers.leastCents());
            }
            seeksWinner = false;
            offers.rewind();
            while (!done(offers.leastCents()) && round(forLists)) {
                progress.at(Math.min(1, (double) offers.leastCents() / endCents()));
            }
            List<OfRoute> byRoute = byRoute();
            return new Shortlist(
                    winner,
                    nearTies,
                    unconfirmed,
                    front,
                    misses,
                    byRoute,
                    new Shortlist.Counts(
                            offers.shelf().rigs(),
                            offers.rejected(),
                            offers.overBudget(),
                            winner == null ? offers.leastOverBudgetCents() : OptionalLong.empty(),
                            offers.priced(),
                            ruledOutByDemand,
                            ruledOutByArray,
                            ruledOutBySeries,
                            screenedExactly,
                            series,
                            walked,
                            walkedInVain));
        }

        /** For the progress alone. */
        private long endCents() {
            return winner == null ? offers.mostCents() : (long) (FRONT_TIMES * winner.cents());
        }

        // --- bounds

        /** What each rig can carry at most, from made-up rigs with the best of everything else. */
        private void bound() {
            List<Strand> strands = offers.all();
            if (strands.isEmpty()) {
                return;
            }
            RigFigures[] figures = new RigFigures[strands.size()];
            BitSet used = new BitSet();
            for (int i = 0; i < figures.length; i++) {
                Strand strand = strands.get(i);
                figures[i] = figures(strand.bare);
                used.or(strand.suits);
                Profile profile = profile(strand.bare);
                strand.profile = profiles.computeIfAbsent(profile, same -> profiles.size());
            }
            capacitiesWh = Arrays.stream(figures)
                    .mapToDouble(RigFigures::capacityWh)
                    .sorted()
                    .distinct()
                    .toArray();
            best = better(figures[0], figures[0]);
            for (int i = 0; i < figures.length; i++) {
                strands.get(i).capacity = Arrays.binarySearch(capacitiesWh, figures[i].capacityWh());
                best = better(best, figures[i]);
            }
            passBounds(used);
        }

        private void passBounds(BitSet used) {
            List<Shelf.Array> arrays = offers.shelf().arrays();
            double[] leastBusW = null;
            for (Profile profile : profiles.keySet()) {
                leastBusW = leastBusW == null ? profile.busW.clone() : least(leastBusW, profile.busW);
            }
            Profile least = new Profile(leastBusW == null ? new double[0] : leastBusW);
            List<Series> sunOfArray = new ArrayList<>();
            for (Shelf.Array array : arrays) {
                sunOfArray.add(used.get(array.place()) ? sunOf(bestPoint(array.panel())) : noSun);
            }
            Series brightest = brightest();
            double mostW = used.stream()
                    .mapToDouble(place -> ratedW(arrays.get(place)))
                    .max()
                    .orElse(0);
            demands = List.copyOf(profiles.keySet());
            int all = arrays.size() + 1 + demands.size();
            double[][] found = new double[all][];
            workers.forEach(all, number -> {
                if (number < arrays.size()) {
                    Shelf.Array array = arrays.get(number);
                    found[number] = used.get(number)
                            ? pass(sunOfArray.get(number), best.withArrayRatedW(ratedW(array)), least)
                            : new double[0];
                } else if (number == arrays.size()) {
                    found[number] = pass(noSun, best.withArrayRatedW(0), least);
                } else {
                    found[number] =
                            pass(brightest, best.withArrayRatedW(mostW), demands.get(number - arrays.size() - 1));
                }
            });
            series += used.cardinality() + 1 + demands.size();
            atMostByArray = Arrays.copyOf(found, arrays.size() + 1);
            atMostByProfile = Arrays.copyOfRange(found, arrays.size() + 1, all);
        }

        private double[] least(double[] some, double[] others) {
            for (int step = 0; step < some.length; step++) {
                some[step] = Math.min(some[step], others[step]);
            }
            return some;
        }

        private static double ratedW(Shelf.Array array) {
            return array.count() * array.panel().ratedW();
        }

        private static ArraySun bestPoint(Panel panel) {
            return new ArraySun(panel.sheet(), panel.noctDegC(), Double.NaN);
        }

        /** The highest watts per rated watt of any panel, hour by hour. */
        private Series brightest() {
            double[] most = new double[noSun.length()];
            for (Series sun : suns.values()) {
                for (int hour = 0; hour < most.length; hour++) {
                    most[hour] = Math.max(most[hour], sun.at(hour));
                }
            }
            return Series.owning(most);
        }

        private Series sunOf(ArraySun kind) {
            return suns.computeIfAbsent(kind, k -> k.wattsPerRatedW(plane));
        }

        private static RigFigures better(RigFigures a, RigFigures b) {
            return new RigFigures(
                    1,
                    Math.max(a.chargeEff(), b.chargeEff()),
                    Math.max(a.dischargeEff(), b.dischargeEff()),
                    Double.MAX_VALUE,
                    Double.MAX_VALUE,
                    0,
                    Math.max(a.controllerMaxW(), b.controllerMaxW()),
                    Math.max(a.controllerEff(), b.controllerEff()));
        }

        private RigFigures figures(Rig rig) {
            RigFigures figures = RigFigures.of(rig);
            // Stored cold and stored charge in one pool, at nobody's loss.
            return kept.isNothing() ? figures : figures.pooledWith(kept.storeWh());
        }

        /** All that a rig's demand depends on; the day's steps are worked out once for each. */
        private Profile profile(Rig rig) {
            record Electronics(
                    @Nullable InverterRating inverter, List<Outlet> outlets, Rig.@Nullable MainsCharge mainsCharge) {}
            Electronics same =
                    new Electronics(rig.inverter(), rig.outlets(), outage.help().isEmpty() ? null : rig.mainsCharge());
            return profileOf.computeIfAbsent(
                    same,
                    key -> new Profile(BusDemand.of(rig, byTheClock, noonHour, stepsPerHour)
                            .essentialLessEngineW(rig, outage)));
        }

        private double atMostOfAny(Strand strand) {
            return atMostByProfile[strand.profile][strand.capacity];
        }

        private double atMost(Strand strand, Shelf.@Nullable Array array) {
            return Math.min(atMostOfAny(strand), atMostByArray[placeOf(array)][strand.capacity]);
        }

        private int placeOf(Shelf.@Nullable Array array) {
            return array == null ? atMostByArray.length - 1 : array.place();
        }

        /** What a demand carries at most with an array, under the best of all electronics. */
        private double atMostOfPair(Strand strand, Shelf.@Nullable Array array) {
            return atMostByPair
                    .computeIfAbsent(
                            new Pair(strand.profile, placeOf(array)),
                            pair -> hourlyPass(
                                    darkest,
                                    array == null ? noSun : sunOf(bestPoint(array.panel())),
                                    best.withArrayRatedW(array == null ? 0 : ratedW(array)),
                                    demands.get(strand.profile)))[strand.capacity];
        }

        /**
         * A pass by whole hours: never below the one by steps. What a store gains in an hour is at most what it would gain from
         * the mean of its steps, since a Wh in is worth no more than one out; and it is looked at between hours alone.
         */
        private double[] hourlyPass(NetGains.Starts from, Series sun, RigFigures withoutCapacity, Profile demand) {
            double[] hourlyW = new double[24];
            for (int step = 0; step < demand.busW.length; step++) {
                hourlyW[step / stepsPerHour] += demand.busW[step] / stepsPerHour;
            }
            series++;
            return pass(from, sun, withoutCapacity, hourlyW, 1);
        }

        private double[] pass(Series sun, RigFigures withoutCapacity, Profile demand) {
            return pass(everyStart, sun, withoutCapacity, demand.busW, stepsPerHour);
        }

        /** Share of all outages that each capacity of the shelf carries over one series; those not asked about count as carried. */
        private double[] pass(
                NetGains.Starts from, Series sun, RigFigures withoutCapacity, double[] busW, int perHour) {
            double[] carried = new double[capacitiesWh.length];
            if (outage.unhelpedHours() == 0) {
                // Help is there at once: nothing can be ruled out before a walk.
                Arrays.fill(carried, 1);
                return carried;
            }
            CapacityCounts counts = new CapacityCounts(capacitiesWh);
            NetGains.visit(
                    sun,
                    from,
                    withoutCapacity,
                    busW,
                    kept.needW(),
                    perHour,
                    (sunnyWh, darkDayWh, starts) -> counts.add(Drawdown.neededWh(
                            darkDayWh,
                            sunnyWh,
                            starts,
                            perHour,
                            screened.panelsOutAfterHours(),
                            screened.hours(),
                            screened.chargeAtStart())));
            for (int i = 0; i < carried.length; i++) {
                carried[i] = counts.share(capacitiesWh[i], allStarts);
            }
            return carried;
        }

        // --- rounds

        private final Offers.Sieve forWinner = new Sifter((route, cents, shareAtMost) -> shareAtMost >= target);
        private final Offers.Sieve forLists = new Sifter(this::matters);

        /** Lets through what may still matter, as far as bounds tell. */
        private final class Sifter implements Offers.Sieve {
            private final Mattering mattering;

            Sifter(Mattering mattering) {
                this.mattering = mattering;
            }

            @Override
            public boolean wantsAny(Strand strand, long leastCents) {
                if (mattering.matters(strand.bare.route(), leastCents, atMostOfAny(strand))) {
                    return true;
                }
                ruledOutByDemand += offers.left(strand);
                return false;
            }

            @Override
            public boolean wants(Strand strand, Shelf.@Nullable Array array, long leastCents) {
                Route route = strand.bare.route();
                if (!mattering.matters(route, leastCents, atMost(strand, array))) {
                    ruledOutByArray++;
                    return false;
                }
                if (!mattering.matters(route, leastCents, atMostOfPair(strand, array))
                        || !mattersUnwired(strand, array, leastCents)) {
                    ruledOutBySeries++;
                    return false;
                }
                return true;
            }

            /** Before it is wired, when nothing is lost on its leads; first by the darkest weeks alone. */
            private boolean mattersUnwired(Strand strand, Shelf.@Nullable Array array, long leastCents) {
                Route route = strand.bare.route();
                Key key = key(Shelf.assembled(Shelf.with(strand.bare.chosen(), array)));
                double[] dark = atMostInDark.computeIfAbsent(
                        key, k -> hourlyPass(darkest, sunOf(k.panel()), k.withoutCapacity(), k.demand()));
                if (!mattering.matters(route, leastCents, dark[strand.capacity])) {
                    return false;
                }
                double[] ever = atMostByKey.computeIfAbsent(
                        key, k -> hourlyPass(everyStart, sunOf(k.panel()), k.withoutCapacity(), k.demand()));
                return mattering.matters(route, leastCents, ever[strand.capacity]);
            }
        }

        /**
         * Takes in the next rigs, cheapest first; those of a round need at most so many different series. False where none
         * is left.
         */
        private boolean round(Offers.Sieve sieve) {
            List<Priced> taken = new ArrayList<>();
            Map<Key, Series> wanted = new LinkedHashMap<>();
            boolean more = true;
            while (wanted.size() < ROUND && more && (seeksWinner || !done(offers.leastCents()))) {
                Priced next = offers.next(sieve);
                more = next != null;
                if (next != null) {
                    taken.add(next);
                    want(next.rig(), wanted);
                }
            }
            pass(wanted);
            for (Priced one : taken) {
                take(one);
            }
            return more;
        }

        private void want(Rig rig, Map<Key, Series> wanted) {
            Key key = key(rig);
            if (!shares.containsKey(key)) {
                wanted.put(key, sunOf(key.panel()));
            }
        }

        private Key key(Rig rig) {
            RigFigures figures = figures(rig).withCapacityWh(1).withMaxDischargeW(Double.MAX_VALUE);
            // The walk never reaches these where they cannot bind; without them more rigs share a series.
            if (figures.maxChargeW() >= Math.min(figures.controllerMaxW(), MOST_PER_RATED_W * figures.arrayRatedW())) {
                figures = figures.withMaxChargeW(Double.MAX_VALUE);
            }
            return new Key(ArraySun.of(rig), figures, profile(rig));
        }

        private void pass(Map<Key, Series> wanted) {
            List<Key> list = new ArrayList<>(wanted.keySet());
            double[][] found = new double[list.size()][];
            workers.forEach(found.length, number -> {
                Key key = list.get(number);
                found[number] = pass(wanted.getOrDefault(key, NO_SUN), key.withoutCapacity(), key.demand());
            });
            series += found.length;
            for (int number = 0; number < found.length; number++) {
                shares.put(list.get(number), found[number]);
            }
        }

        /** What a rig carries as its series tells; its pass has been made. */
        private double screenedShare(Rig rig) {
            double[] byCapacity = shares.get(key(rig));
            if (byCapacity == null) {
                throw new IllegalStateException("no pass for " + rig.id());
            }
            return byCapacity[Arrays.binarySearch(capacitiesWh, figures(rig).capacityWh())];
        }

        private boolean done(long leastCents) {
            if (leastCents == Long.MAX_VALUE) {
                return true;
            }
            boolean frontEnds = bestOfFront() >= 1 || (winner != null && leastCents > FRONT_TIMES * winner.cents());
            return winner != null
                    && !nearTie(leastCents)
                    && frontEnds
                    && meeting.size() + given() == Route.values().length;
        }

        /** Ways of building that have had their walks. */
        private int given() {
            return (int) routeWalks.entrySet().stream()
                    .filter(entry -> entry.getValue() >= ROUTE_WALKS && !meeting.containsKey(entry.getKey()))
                    .count();
        }

        private boolean nearTie(long cents) {
            return winner != null && cents <= (1 + NEAR_TIE) * winner.cents();
        }

        /** What the next step of the front must be better than. */
        private double leastOfFront() {
            return Math.max(Math.nextDown(FRONT_LEAST), bestOfFront());
        }

        private double bestOfFront() {
            return front.isEmpty() ? -1 : front.get(front.size() - 1).share();
        }

        private boolean frontIsOpen(long cents) {
            return winner == null || cents <= FRONT_TIMES * winner.cents();
        }

        /** Whether a rig with at most this share could still enter any of the lists. */
        private boolean matters(Route route, long cents, double shareAtMost) {
            boolean inPlay = winner == null || nearTie(cents);
            boolean miss = misses.size() < MISSES
                    || shareAtMost > misses.get(MISSES - 1).share();
            return (frontIsOpen(cents) && shareAtMost > leastOfFront())
                    || (inPlay && (shareAtMost >= target || miss))
                    || (shareAtMost >= target && wantsRoute(route));
        }

        /** Whether it is still to be told what the cheapest of a way of building is that meets the target. */
        private boolean wantsRoute(Route route) {
            return winner != null && !meeting.containsKey(route) && routeWalks.getOrDefault(route, 0) < ROUTE_WALKS;
        }

        /** Whether the screening tells the share itself and no bound: a plain store, fed by nothing but the sun. */
        private boolean isExact(Rig rig) {
            return rig.store() instanceof PlainStore && !outage.isHelped() && kept.isNothing();
        }

        private void take(Priced one) {
            double bound = screenedShare(one.rig());
            if (isExact(one.rig())) {
                screenedExactly++;
                take(Rated.of(one, bound));
                return;
            }
            OptionalDouble found =
                    matters(one.rig().route(), one.cents(), bound) ? walk(one, bound) : OptionalDouble.empty();
            if (found.isPresent()) {
                take(Rated.of(one, found.getAsDouble()));
            }
        }

        /** The walked share in the place of a bound; empty where the walk is not worth its time. */
        private OptionalDouble walk(Priced one, double bound) {
            OptionalDouble known = walkedShares.getOrDefault(one.number(), OptionalDouble.empty());
            if (known.isPresent()) {
                return known;
            }
            double threshold = worth(one, bound);
            if (bound < threshold) {
                ruledOutBySeries++;
                return OptionalDouble.empty();
            }
            walked++;
            OptionalDouble found = judge.walkedShare(one.rig(), threshold);
            walkedInVain += found.isPresent() ? 0 : 1;
            walkedShares.put(one.number(), found);
            return found;
        }

        /** The share from which a walk is worth its time. */
        private double worth(Priced one, double bound) {
            if (seeksWinner) {
                return target;
            }
            double forFront = frontIsOpen(one.cents()) ? Math.nextUp(leastOfFront()) : 2;
            boolean mayTie = nearTie(one.cents()) && bound >= target && nearTiesWalked < NEAR_WALKS;
            boolean mayMeet = bound >= target && wantsRoute(one.rig().route());
            nearTiesWalked += mayTie ? 1 : 0;
            if (mayMeet && !mayTie) {
                routeWalks.merge(one.rig().route(), 1, Integer::sum);
            }
            return mayTie || mayMeet ? Math.min(target, forFront) : forFront;
        }

        private void take(Rated rated) {
            if (seeksWinner) {
                takeForWinner(rated);
                return;
            }
            if (rated.share() > leastOfFront() && frontIsOpen(rated.cents())) {
                front.add(rated);
                progress.found(new Find(Find.Kind.STEP, rated));
            }
            if (rated.share() < target) {
                if (winner == null || nearTie(rated.cents())) {
                    miss(rated);
                }
            } else if (winner != null && winner.number() != rated.number() && !unconfirmed.contains(rated)) {
                if (nearTie(rated.cents())) {
                    nearTies.add(rated);
                }
                if (wantsRoute(rated.rig().route()) && judge.holds(rated)) {
                    meeting.put(rated.rig().route(), rated);
                }
            }
        }

        private void takeForWinner(Rated rated) {
            if (winner != null || rated.share() < target) {
                return;
            }
            progress.found(new Find(Find.Kind.MEETS, rated));
            if (judge.holds(rated)) {
                winner = rated;
                meeting.put(rated.rig().route(), rated);
                progress.found(new Find(Find.Kind.CONFIRMED, rated));
            } else {
                unconfirmed.add(rated);
                progress.found(new Find(Find.Kind.NOT_CONFIRMED, rated));
            }
        }

        private void miss(Rated rated) {
            misses.add(rated);
            misses.sort(Comparator.comparingDouble(Rated::share)
                    .reversed()
                    .thenComparingLong(Rated::cents)
                    .thenComparing(one -> one.rig().id()));
            if (misses.size() > MISSES) {
                misses.remove(MISSES);
            }
        }

        // --- ways of building

        /** For each way of building the cheapest that meets the target; where none does, the nearest to it. */
        private List<OfRoute> byRoute() {
            List<OfRoute> ways = new ArrayList<>();
            for (Route route : Route.values()) {
                Rated found = meeting.get(route);
                Rated nearest = found == null ? nearestOf(route) : null;
                if (found != null) {
                    ways.add(new OfRoute(found, true));
                } else if (nearest != null) {
                    ways.add(new OfRoute(nearest, false));
                }
            }
            return ways;
        }

        /** Among those whose share the screening tells itself and that may be best; the cheapest of the best. */
        private @Nullable Rated nearestOf(Route route) {
            PriorityQueue<Draft> brightest = new PriorityQueue<>(Draft.WORST_FIRST);
            for (Strand strand : offers.all()) {
                if (strand.bare.route() == route && isExact(strand.bare)) {
                    offers.forEachOf(strand, array -> {
                        brightest.add(new Draft(strand, array, atMost(strand, array)));
                        if (brightest.size() > MOST_DRAFTS) {
                            brightest.remove();
                        }
                    });
                }
            }
            List<Draft> able = new ArrayList<>(brightest);
            able.sort(Draft.WORST_FIRST.reversed());
            Rated best = null;
            for (int from = 0; from < able.size(); from += ROUND) {
                if (best != null && able.get(from).atMost() < best.share()) {
                    break;
                }
                List<Priced> some = new ArrayList<>();
                Map<Key, Series> wanted = new LinkedHashMap<>();
                for (Draft draft : able.subList(from, Math.min(able.size(), from + ROUND))) {
                    Priced one = offers.priced(draft.strand(), draft.array());
                    if (one != null && one.cents() <= offers.mostCents()) {
                        some.add(one);
                        want(one.rig(), wanted);
                    }
                }
                pass(wanted);
                for (Priced one : some) {
                    double share = screenedShare(one.rig());
                    boolean better = best == null
                            || share > best.share()
                            || (share == best.share() && one.cents() < best.cents());
                    best = better ? Rated.of(one, share) : best;
                }
            }
            return best;
        }
    }
}
