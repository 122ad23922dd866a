package tideover.engine.search;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.BitSet;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.HashMap;
import java.util.IdentityHashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.OptionalLong;
import java.util.PriorityQueue;
import java.util.Set;
import java.util.stream.IntStream;
import org.jspecify.annotations.Nullable;
import tideover.engine.load.Load;
import tideover.engine.outage.Outage;
import tideover.engine.part.InverterRating;
import tideover.engine.part.Outlet;
import tideover.engine.part.Panel;
import tideover.engine.part.PlainStore;
import tideover.engine.proof.ArraySun;
import tideover.engine.proof.BusDemand;
import tideover.engine.proof.Drawdown;
import tideover.engine.proof.KeptBound;
import tideover.engine.proof.NetGains;
import tideover.engine.proof.PlaneWeather;
import tideover.engine.proof.RigFigures;
import tideover.engine.quantity.Series;
import tideover.engine.quantity.Workers;
import tideover.engine.rig.Aids;
import tideover.engine.rig.Chosen;
import tideover.engine.rig.Manner;
import tideover.engine.rig.Rig;

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
 * make it the winner or a step of the front; and as a near tie, the first few.
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
    private static final int MANNER_WALKS = 6;

    /** Front and misses begin here, if anything gets so far: what fails more often than not is nobody's answer. */
    private static final double TOLD = 0.5;

    /** No panel gives this many times its rated watts, however bright and cold. */
    private static final double MOST_PER_RATED_W = 4;

    private static final int ROUND = 8;

    /** Where no rig of a way of building meets the target, so many that may be best are looked into. */
    private static final int MOST_DRAFTS = 1024;

    /** Demands are alike whose mean is so near to that of their common least. */
    private static final double LIKE = 0.1;

    /** Watts of panel are alike within this factor. */
    private static final double BIN = 1.3;

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

    /**
     * Rigs than which none is both lighter and better, lightest first, to the first that carries everything; as far as the search knows
     * shares: what it can only bound is walked where it may gain a hundredth.
     */
    public List<Rated> massFront(Offers offers, List<Load> loads, Judge judge) {
        return new Run(offers, loads, judge, share -> {}).massFront();
    }

    /** One series of net gains, all but the store's size. */
    private record Key(ArraySun panel, RigFigures withoutCapacity, Profile demand) {}

    /** Essential demand by the step of the day; compared by value. */
    private static final class Profile {
        private final double[] busW;

        /** Means of whole hours. */
        private final double[] hourlyW = new double[24];

        private final int hash;

        Profile(double[] busW) {
            this.busW = busW;
            for (int step = 0; step < busW.length; step++) {
                hourlyW[step * 24 / busW.length] += busW[step] * 24 / busW.length;
            }
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

    /** Rigs much alike in all that a bound looks at. */
    private record Sort(int cluster, int bin, double chargeEff, double dischargeEff) {
        Sort brighter() {
            return new Sort(cluster, bin + 1, chargeEff, dischargeEff);
        }
    }

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
        private final boolean niceDraws;
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

        private final Map<Sort, double[]> atMostBySort = new HashMap<>();
        private final RigFigures.Known flattened = new RigFigures.Known();
        private final Map<Strand, RigFigures> figuresOf = new IdentityHashMap<>();

        /** Hourly watts. */
        private final List<double[]> clusters = new ArrayList<>();

        private int[] clusterOf = {};
        private Series brightest = NO_SUN;
        private final NetGains.Starts everyStart = NetGains.Starts.all(screened, years);
        private final Series noSun = Series.constant(plane.planeWm2().length(), 0);
        private final Map<Key, double[]> shares = new HashMap<>();

        private int series;
        private long ruledOutBySeries;
        private long screenedExactly;
        private int nearTiesWalked;
        private final Map<Long, OptionalDouble> walkedShares = new HashMap<>();

        /** First the winner is sought and nothing else; then, from the cheapest again, what stands beside it. */
        private boolean seeksWinner = true;

        private double leastTold = TOLD;

        private @Nullable Rated winner;
        private final Map<Manner, Rated> meeting = new EnumMap<>(Manner.class);
        private final Map<Manner, Integer> mannerWalks = new EnumMap<>(Manner.class);

        /** Those that some rig of the shelf has. */
        private final Set<Manner> manners = EnumSet.noneOf(Manner.class);

        private final List<Rated> nearTies = new ArrayList<>();
        private final List<Rated> unconfirmed = new ArrayList<>();
        private final List<Rated> front = new ArrayList<>();
        private final List<Rated> misses = new ArrayList<>();

        Run(Offers offers, List<Load> loads, Judge judge, Progress progress) {
            this.offers = offers;
            this.byTheClock = loads.stream().filter(load -> !load.keeps()).toList();
            this.judge = judge;
            this.progress = progress;
            this.niceDraws = outage.keepBack() < 1 && !loads.stream().allMatch(Load::essential);
        }

        private Outage screened() {
            Outage first = outage.first(Math.max(1, outage.unhelpedHours()));
            return kept.isNothing() ? first : first.fullAtStart();
        }

        Shortlist shortlist() {
            bound();
            while (winner == null && offers.leastCents() != Long.MAX_VALUE && round()) {
                progress.judgedBelow(offers.leastCents());
            }
            seeksWinner = false;
            fillLists();
            if (winner == null && front.isEmpty() && misses.isEmpty()) {
                leastTold = 0;
                fillLists();
            }
            Shortlist.Counts counts = counts();
            return new Shortlist(winner, nearTies, unconfirmed, front, misses, byRoute(), counts);
        }

        /** Before the ways of building are looked for among those ruled out. */
        private Shortlist.Counts counts() {
            Map<String, Long> rejected = Map.copyOf(offers.rejected());
            long fell = offers.fell();
            long overBudget = offers.overBudget();
            long priced = offers.priced();
            long notReached = offers.notReached();
            return new Shortlist.Counts(
                    offers.shelf().rigs(),
                    rejected,
                    fell,
                    overBudget,
                    winner == null ? offers.leastOverBudgetCents() : OptionalLong.empty(),
                    priced,
                    offers.ruledOut(strand -> strand.ruledOutByDemand),
                    offers.ruledOut(strand -> strand.ruledOutByArray),
                    offers.ruledOut(strand -> strand.ruledOutBySort),
                    notReached,
                    ruledOutBySeries,
                    screenedExactly,
                    series,
                    walkedShares.size(),
                    (int) walkedShares.values().stream()
                            .filter(OptionalDouble::isEmpty)
                            .count());
        }

        private void fillLists() {
            offers.rewind();
            ruledOutBySeries = 0;
            screenedExactly = 0;
            while (!done(offers.leastCents()) && round()) {
                progress.at(Math.min(1, (double) offers.leastCents() / endCents()));
            }
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
                manners.add(Manner.of(strand.bare));
                Profile profile = profile(strand.bare);
                strand.profile = profiles.computeIfAbsent(profile, same -> profiles.size());
            }
            capacitiesWh = Arrays.stream(figures)
                    .mapToDouble(RigFigures::capacityWh)
                    .sorted()
                    .distinct()
                    .toArray();
            RigFigures best = better(figures[0], figures[0]);
            for (int i = 0; i < figures.length; i++) {
                strands.get(i).capacity = Arrays.binarySearch(capacitiesWh, figures[i].capacityWh());
                best = better(best, figures[i]);
            }
            passBounds(best, used);
        }

        private void passBounds(RigFigures best, BitSet used) {
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
            brightest = brightest();
            cluster(List.copyOf(profiles.keySet()));
            double mostW = used.stream()
                    .mapToDouble(place -> ratedW(arrays.get(place)))
                    .max()
                    .orElse(0);
            List<Profile> demands = List.copyOf(profiles.keySet());
            int all = arrays.size() + 1 + demands.size();
            double[][] found = new double[all][];
            workers.forEach(all, number -> {
                if (number < arrays.size()) {
                    Shelf.Array array = arrays.get(number);
                    found[number] = used.get(number)
                            ? pass(sunOfArray.get(number), best.withArrayRatedW(ratedW(array)), least.hourlyW, 1)
                            : new double[0];
                } else if (number == arrays.size()) {
                    found[number] = pass(noSun, best.withArrayRatedW(0), least.hourlyW, 1);
                } else {
                    found[number] = pass(
                            brightest, best.withArrayRatedW(mostW), demands.get(number - arrays.size() - 1).hourlyW, 1);
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
            RigFigures figures = flattened.of(rig);
            // Stored cold and stored charge in one pool, at nobody's loss.
            return kept.isNothing() ? figures : figures.pooledWith(kept.storeWh());
        }

        /** All that a rig's demand depends on; the day's steps are worked out once for each. */
        private Profile profile(Rig rig) {
            record Electronics(
                    @Nullable InverterRating inverter,
                    List<Outlet> outlets,
                    Rig.@Nullable MainsCharge mainsCharge,
                    List<Chosen> aids) {}
            Electronics same =
                    new Electronics(rig.inverter(), rig.outlets(), rig.engineCharge(outage), Aids.in(rig.chosen()));
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

        /**
         * What a rig carries at most before it is wired, of the sort that it belongs to: those of like demand, like efficiencies of
         * the store and like watts of panel behind the controller's efficiency, each taken at its best.
         */
        private double atMostOfSort(Strand strand, Shelf.@Nullable Array array) {
            RigFigures figures = figuresOf.computeIfAbsent(strand, s -> figures(s.bare));
            double sunW = array == null ? 0 : ratedW(array) * figures.controllerEff();
            int bin = sunW == 0 ? 0 : (int) Math.ceil(StrictMath.log(1 + sunW) / StrictMath.log(BIN));
            Sort sort = new Sort(clusterOf[strand.profile], bin, figures.chargeEff(), figures.dischargeEff());
            double[] known = atMostBySort.get(sort);
            if (known == null) {
                // Two at a time, for two threads: who asks for one will mostly ask for the next.
                List<Sort> two = List.of(sort, sort.brighter());
                double[][] found = new double[2][];
                workers.forEach(2, number -> found[number] = pass(two.get(number)));
                series += 2;
                atMostBySort.putIfAbsent(two.get(0), found[0]);
                atMostBySort.putIfAbsent(two.get(1), found[1]);
                known = found[0];
            }
            return known[strand.capacity];
        }

        /**
         * By whole hours, in which a share is never below the one by steps: what a store gains in an hour is at most what it would
         * gain from the mean of its steps, since a Wh in is worth no more than one out; and it is looked at between hours alone.
         */
        private double[] pass(Sort sort) {
            double mostW = sort.bin() == 0 ? 0 : StrictMath.pow(BIN, sort.bin()) - 1;
            RigFigures atBest = new RigFigures(
                    1,
                    sort.chargeEff(),
                    sort.dischargeEff(),
                    Double.MAX_VALUE,
                    Double.MAX_VALUE,
                    mostW,
                    Double.MAX_VALUE,
                    1);
            return pass(brightest, atBest, clusters.get(sort.cluster()), 1);
        }

        /** Demands in order of their mean, each cluster held to its least in every hour, which is hardly below any of them. */
        private void cluster(List<Profile> demands) {
            clusterOf = new int[demands.size()];
            List<Integer> rising = IntStream.range(0, demands.size())
                    .boxed()
                    .sorted(Comparator.comparingDouble((Integer i) -> mean(demands.get(i).hourlyW))
                            .thenComparing(i -> i))
                    .toList();
            for (int i : rising) {
                double[] hourlyW = demands.get(i).hourlyW;
                double[] last = clusters.isEmpty() ? null : clusters.get(clusters.size() - 1);
                double[] joined = last == null ? hourlyW.clone() : least(last.clone(), hourlyW);
                if (last != null && mean(joined) >= mean(hourlyW) - LIKE * Math.abs(mean(hourlyW))) {
                    clusters.set(clusters.size() - 1, joined);
                } else {
                    clusters.add(hourlyW.clone());
                }
                clusterOf[i] = clusters.size() - 1;
            }
        }

        private static double mean(double[] watts) {
            return Arrays.stream(watts).average().orElse(0);
        }

        private double[] pass(Series sun, RigFigures withoutCapacity, Profile demand) {
            return pass(sun, withoutCapacity, demand.busW, stepsPerHour);
        }

        /** Share of outages that each capacity of the shelf carries over one series. */
        private double[] pass(Series sun, RigFigures withoutCapacity, double[] busW, int perHour) {
            double[] carried = new double[capacitiesWh.length];
            if (outage.unhelpedHours() == 0) {
                // Help is there at once: nothing can be ruled out before a walk.
                Arrays.fill(carried, 1);
                return carried;
            }
            CapacityCounts counts = new CapacityCounts(capacitiesWh);
            NetGains.visit(
                    sun,
                    everyStart,
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
                carried[i] = counts.share(capacitiesWh[i]);
            }
            return carried;
        }

        // --- rounds

        /** Lets through what may still be of interest, as far as bounds tell. */
        private final Offers.Sieve sieve = new Offers.Sieve() {
            @Override
            public boolean wantsAny(Strand strand, long leastCents) {
                if (atMostOfAny(strand) >= ofInterest(Manner.of(strand.bare), leastCents)) {
                    return true;
                }
                strand.ruledOutByDemand += offers.left(strand);
                return false;
            }

            @Override
            public boolean wants(Strand strand, Shelf.@Nullable Array array, long leastCents) {
                double least = ofInterest(Manner.of(strand.bare), leastCents);
                if (atMost(strand, array) < least) {
                    strand.ruledOutByArray += offers.isPriced(strand, array) ? 0 : 1;
                    return false;
                }
                if (atMostOfSort(strand, array) < least) {
                    strand.ruledOutBySort += offers.isPriced(strand, array) ? 0 : 1;
                    return false;
                }
                return true;
            }
        };

        /**
         * Takes in the next rigs, cheapest first; those of a round need at most so many different series. False where none
         * is left.
         */
        private boolean round() {
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
            // All of one price are weighed together.
            while (!taken.isEmpty() && offers.leastCents() <= lastOf(taken).cents()) {
                Priced next = offers.next(sieve);
                if (next == null) {
                    break;
                }
                taken.add(next);
                want(next.rig(), wanted);
            }
            pass(wanted);
            for (int from = 0; from < taken.size() && !(seeksWinner && winner != null); ) {
                int to = from + 1;
                while (to < taken.size()
                        && taken.get(to).cents() == taken.get(from).cents()) {
                    to++;
                }
                takeAlike(taken.subList(from, to));
                from = to;
            }
            return more;
        }

        private static Priced lastOf(List<Priced> taken) {
            return taken.get(taken.size() - 1);
        }

        /** Of one price the best first, then the lightest, then by id. */
        private void takeAlike(List<Priced> ofOnePrice) {
            List<Rated> found = new ArrayList<>();
            for (Priced one : ofOnePrice) {
                double bound = screenedShare(one.rig());
                if (isExact(one.rig())) {
                    screenedExactly++;
                    found.add(Rated.of(one, bound));
                } else {
                    walk(one, bound).ifPresent(share -> found.add(Rated.of(one, share)));
                }
            }
            found.sort(Comparator.comparingDouble(Rated::share)
                    .reversed()
                    .thenComparingDouble(rated -> rated.rig().massKg())
                    .thenComparing(rated -> rated.rig().id()));
            found.forEach(this::take);
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
            return winner != null && !nearTie(leastCents) && frontEnds && meeting.size() + given() == manners.size();
        }

        /** Ways of building that have had their walks. */
        private int given() {
            return (int) mannerWalks.entrySet().stream()
                    .filter(entry -> entry.getValue() >= MANNER_WALKS && !meeting.containsKey(entry.getKey()))
                    .count();
        }

        private boolean nearTie(long cents) {
            return winner != null && cents <= (1 + NEAR_TIE) * winner.cents();
        }

        /** What the next step of the front must be better than. */
        private double leastOfFront() {
            return Math.max(Math.nextDown(leastTold), bestOfFront());
        }

        private double bestOfFront() {
            return front.isEmpty() ? -1 : front.get(front.size() - 1).share();
        }

        private boolean frontIsOpen(long cents) {
            return winner == null || cents <= FRONT_TIMES * winner.cents();
        }

        /** The least share with which a rig of a price could still enter a list. */
        private double ofInterest(Manner manner, long cents) {
            if (seeksWinner) {
                return target;
            }
            double least = frontIsOpen(cents) ? Math.nextUp(leastOfFront()) : 2;
            if (winner == null || nearTie(cents)) {
                least = Math.min(least, Math.min(target, leastOfMisses()));
            }
            return wantsManner(manner) ? Math.min(least, target) : least;
        }

        private double leastOfMisses() {
            return misses.size() < MISSES
                    ? leastTold
                    : Math.nextUp(misses.get(MISSES - 1).share());
        }

        /** Whether it is still to be told what the cheapest of a way of building is that meets the target. */
        private boolean wantsManner(Manner manner) {
            return winner != null && !meeting.containsKey(manner) && mannerWalks.getOrDefault(manner, 0) < MANNER_WALKS;
        }

        /**
         * Whether the screening tells the share itself and no bound: a plain store, fed by nothing but the sun, of which nothing
         * nice to have draws.
         */
        private boolean isExact(Rig rig) {
            return rig.store() instanceof PlainStore && !rig.isHelped(outage) && kept.isNothing() && !niceDraws;
        }

        /** The walked share in the place of a bound; empty where the walk is not worth its time. */
        private OptionalDouble walk(Priced one, double bound) {
            OptionalDouble known = walkedShares.getOrDefault(one.number(), OptionalDouble.empty());
            if (known.isPresent()) {
                return known;
            }
            double threshold = worth(one, bound);
            if (bound < threshold) {
                ruledOutBySeries += walkedShares.containsKey(one.number()) ? 0 : 1;
                return OptionalDouble.empty();
            }
            OptionalDouble found = judge.walkedShare(one.rig(), threshold);
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
            boolean mayMeet = bound >= target && wantsManner(Manner.of(one.rig()));
            nearTiesWalked += mayTie ? 1 : 0;
            if (mayMeet && !mayTie) {
                mannerWalks.merge(Manner.of(one.rig()), 1, Integer::sum);
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
                if ((winner == null || nearTie(rated.cents())) && rated.share() >= leastTold) {
                    miss(rated);
                }
            } else if (winner != null && winner.number() != rated.number() && !unconfirmed.contains(rated)) {
                if (nearTie(rated.cents())) {
                    nearTies.add(rated);
                }
                if (!meeting.containsKey(Manner.of(rated.rig())) && judge.holds(rated)) {
                    meeting.put(Manner.of(rated.rig()), rated);
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
                meeting.put(Manner.of(rated.rig()), rated);
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

        // --- mass against share

        private List<Rated> massFront() {
            bound();
            record Weighed(Draft draft, long grams) {}
            List<Weighed> all = new ArrayList<>();
            for (Strand strand : offers.all()) {
                double bareKg = strand.bare.massKg();
                offers.forEachOf(strand, array -> {
                    double panelsKg = array == null
                            ? 0
                            : array.count() * array.panel().listing().massKg();
                    all.add(new Weighed(
                            new Draft(strand, array, atMost(strand, array)), MassFront.grams(bareKg + panelsKg)));
                });
            }
            all.sort(Comparator.comparingLong(Weighed::grams)
                    .thenComparing(Weighed::draft, Draft.WORST_FIRST.reversed()));
            MassFront front = new MassFront();
            for (Weighed one : all) {
                Draft draft = one.draft();
                if (front.best() >= 1) {
                    break;
                }
                if (draft.atMost() <= front.best() || atMostOfSort(draft.strand(), draft.array()) <= front.best()) {
                    continue;
                }
                Priced priced = offers.priced(draft.strand(), draft.array());
                if (priced != null && priced.cents() <= offers.mostCents()) {
                    shareAbove(priced, front.best()).ifPresent(share -> front.add(Rated.of(priced, share)));
                }
            }
            return front.rigs();
        }

        /** The share where it is above another's; of what is walked, where it is so by a step. */
        private OptionalDouble shareAbove(Priced one, double than) {
            Map<Key, Series> wanted = new LinkedHashMap<>();
            want(one.rig(), wanted);
            pass(wanted);
            double bound = screenedShare(one.rig());
            if (isExact(one.rig())) {
                return bound > than ? OptionalDouble.of(bound) : OptionalDouble.empty();
            }
            double least = Math.max(TOLD, Math.nextUp(than));
            return bound >= least ? judge.walkedShare(one.rig(), least) : OptionalDouble.empty();
        }

        // --- ways of building

        /** For each way of building the cheapest that meets the target; where none does, the nearest to it. */
        private List<OfRoute> byRoute() {
            List<OfRoute> ways = new ArrayList<>();
            for (Manner manner : manners) {
                Rated found = meeting.get(manner);
                Rated nearest = found == null ? nearestOf(manner) : null;
                if (found != null) {
                    ways.add(new OfRoute(found, true));
                } else if (nearest != null) {
                    ways.add(new OfRoute(nearest, false));
                }
            }
            return ways;
        }

        /** Among those whose share the screening tells itself and that may be best; the cheapest of the best. */
        private @Nullable Rated nearestOf(Manner manner) {
            PriorityQueue<Draft> brightest = new PriorityQueue<>(Draft.WORST_FIRST);
            for (Strand strand : offers.all()) {
                if (Manner.of(strand.bare) == manner && isExact(strand.bare)) {
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
