package tideover.engine.search;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.Collections;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalLong;
import java.util.PriorityQueue;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.Consumer;
import java.util.function.ToLongFunction;
import org.jspecify.annotations.Nullable;
import tideover.engine.load.Load;
import tideover.engine.part.Battery;
import tideover.engine.part.ChargeController;
import tideover.engine.part.Charger;
import tideover.engine.part.ControllerRating;
import tideover.engine.quantity.Workers;
import tideover.engine.rig.Chosen;
import tideover.engine.rig.Rig;
import tideover.engine.rig.RuleBook;
import tideover.engine.rig.Site;
import tideover.engine.search.Shelf.Array;
import tideover.engine.why.Finding;
import tideover.engine.why.Verdict;
import tideover.engine.wiring.Allowances;
import tideover.engine.wiring.Bench;
import tideover.engine.wiring.Build;
import tideover.engine.wiring.Price;
import tideover.engine.wiring.Terms;

/**
 * The rigs of a shelf that keep every rule, in the order of their final price; ties by mass, then id. A rig is judged, wired and
 * priced only when somebody wants it.
 *
 * <p>What can be told from a core alone is told first and for all its rigs at once: whether its parts suit each other, whether
 * each alternating load finds an outlet. So are the rules between a controller, a store's volts and panels, which many cores share.
 * The rest wait in a queue by the least that they can cost: main parts, then, once it is wired without its panels, also the small
 * parts of that, since panels only add to them. The first of the queue is handed on when nothing in it can cost less than the
 * final price of what is ready.
 *
 * <p>A rule's count holds every rig that is known to fall to it; rules are asked from the store outward, and what fell is asked no
 * more.
 */
public final class Offers {
    private static final Comparator<Priced> BY_PRICE = Comparator.comparingLong(
                    (Priced one) -> one.price().totalCents())
            .thenComparingDouble(one -> one.rig().massKg())
            .thenComparing(one -> one.rig().id());

    /** Cores that one thread judges at a time. */
    private static final int PIECE = 256;

    /** Where nothing is found within the budget, so many strands over it are looked into. */
    private static final int MOST_LOOKS = 2000;

    private static final BitSet NONE = new BitSet();

    private final Shelf shelf;
    private final List<Load> loads;
    private final Site site;
    private final Bench bench;
    private final Allowances allowances;
    private final Terms terms;
    private final long mostCents;
    private final List<Strand> all = new ArrayList<>();
    private final PriorityQueue<Strand> strands =
            new PriorityQueue<>(Comparator.comparingLong((Strand strand) -> leastCents(strand))
                    .thenComparingLong(strand -> strand.firstNumber));
    /** By its number, every rig that was priced; empty where it broke a rule. */
    private final Map<Long, Optional<Priced>> known = new HashMap<>();

    private final PriorityQueue<Priced> ready = new PriorityQueue<>(BY_PRICE);
    private final Map<String, Set<String>> alternating = new ConcurrentHashMap<>();
    private final Map<String, Long> rejected = new TreeMap<>();
    private long fell;
    private long overBudget;
    private long leastOverBudgetCents = Long.MAX_VALUE;
    private long priced;

    private Offers(
            Shelf shelf,
            List<Load> loads,
            Site site,
            Bench bench,
            Allowances allowances,
            Terms terms,
            OptionalLong budgetCents) {
        this.shelf = shelf;
        this.loads = loads;
        this.site = site;
        this.bench = bench;
        this.allowances = allowances;
        this.terms = terms;
        this.mostCents = budgetCents.orElse(Long.MAX_VALUE);
    }

    /** Says which rigs are worth their wiring; what it once refuses it would refuse later too. */
    interface Sieve {
        /** Whether any of a strand's rigs from its present one on is. */
        boolean wantsAny(Strand strand, long leastCents);

        /** @param leastCents that the rig can cost */
        boolean wants(Strand strand, @Nullable Array array, long leastCents);
    }

    static final Sieve ALL = new Sieve() {
        @Override
        public boolean wantsAny(Strand strand, long leastCents) {
            return true;
        }

        @Override
        public boolean wants(Strand strand, @Nullable Array array, long leastCents) {
            return true;
        }
    };

    /** @param bench where each is wired before its price is known */
    public static Offers of(
            Shelf shelf,
            List<Load> loads,
            Site site,
            Bench bench,
            Allowances allowances,
            Terms terms,
            OptionalLong budgetCents,
            Workers workers) {
        Offers offers = new Offers(shelf, loads, site, bench, allowances, terms, budgetCents);
        offers.lay(workers);
        return offers;
    }

    /** The strands of every core whose parts suit each other. */
    private void lay(Workers workers) {
        List<Cores.Core> cores = shelf.cores();
        Rig[] bare = new Rig[cores.size()];
        List<Set<String>> failed = new ArrayList<>(Collections.nCopies(cores.size(), Set.of()));
        int pieces = (cores.size() + PIECE - 1) / PIECE;
        workers.forEach(pieces, piece -> {
            int end = Math.min(cores.size(), (piece + 1) * PIECE);
            for (int i = piece * PIECE; i < end; i++) {
                bare[i] = Shelf.assembled(cores.get(i).chosen());
                failed.set(i, coreFailures(bare[i]));
            }
        });
        Suits suits = new Suits();
        long number = 1;
        for (int i = 0; i < bare.length; i++) {
            Cores.Core core = cores.get(i);
            if (failed.get(i).isEmpty()) {
                lay(core, bare[i], number, suits);
            } else {
                reject(failed.get(i), shelf.rigsOf(core));
            }
            number += shelf.rigsOf(core);
        }
        strands.addAll(all);
    }

    private Set<String> coreFailures(Rig bare) {
        Set<String> failed = failures(RuleBook.partFindings(bare, site));
        failed.addAll(alternating.computeIfAbsent(
                servers(bare), same -> failures(RuleBook.alternatingFindings(bare, loads))));
        return failed;
    }

    /** The parts that make a difference to alternating current, by their ids. */
    private static String servers(Rig bare) {
        StringBuilder ids = new StringBuilder();
        for (Chosen one : bare.chosen()) {
            if (!(one.part() instanceof Battery) && !(one.part() instanceof Charger)) {
                ids.append(one.count())
                        .append('x')
                        .append(one.part().listing().id())
                        .append('+');
            }
        }
        return ids.toString();
    }

    private void lay(Cores.Core core, Rig bare, long number, Suits suits) {
        Owned owned = shelf.owned();
        if (!owned.withinButPanelsAndController(core.chosen())) {
            return;
        }
        long cents = cents(core.chosen());
        if (core.builtIn() != null) {
            if (owned.withinButPanels(core.chosen())) {
                BitSet suited = suits.of(core.builtIn(), bare, core.chosen()).arrays();
                lay(core, null, bare, true, suited, number, cents);
            }
            return;
        }
        lay(core, null, bare, true, NONE, number, cents);
        long first = number + 1;
        for (ChargeController controller : shelf.controllers()) {
            List<Chosen> chosen = Cores.with(core.chosen(), controller);
            if (owned.withinButPanels(chosen)) {
                Suited suited = suits.of(controller.rating(), bare, chosen);
                boolean alone = Shelf.standsAlone(controller) && suited.volts();
                if (alone || !suited.arrays().isEmpty()) {
                    lay(core, controller, Shelf.assembled(chosen), alone, suited.arrays(), first, cents(chosen));
                }
            }
            first += shelf.rigsOf(controller);
        }
    }

    /** One strand, if any of its rigs contains what is owned. */
    private void lay(
            Cores.Core core,
            @Nullable ChargeController controller,
            Rig bare,
            boolean alone,
            BitSet suited,
            long number,
            long cents) {
        Owned owned = shelf.owned();
        boolean bareCounts = alone && owned.within(bare.chosen());
        BitSet containing = owned.isNothing() ? suited : new BitSet();
        if (!owned.isNothing()) {
            suited.stream()
                    .filter(place -> owned.within(
                            Shelf.with(bare.chosen(), shelf.arrays().get(place))))
                    .forEach(containing::set);
        }
        if (bareCounts || !containing.isEmpty()) {
            all.add(new Strand(core, controller, bare, bareCounts, containing, number, cents));
        }
    }

    private long cents(List<Chosen> chosen) {
        long cents = 0;
        for (Chosen one : chosen) {
            cents += shelf.owned().leastCents(one);
        }
        return cents;
    }

    /**
     * What a controller at a store's volts takes.
     *
     * @param arrays   by their places
     * @param volts    whether it takes the store's
     * @param rejected rigs that fell to each rule
     * @param fell     rigs that fell to any of them
     */
    private record Suited(BitSet arrays, boolean volts, Map<String, Long> rejected, long fell) {}

    /** Which arrays keep the rules between a controller, the store's volts and panels; told once for all stores alike in volts. */
    private final class Suits {
        private final Map<List<Object>, Suited> known = new HashMap<>();

        /** @param chosen the core with its controller */
        Suited of(ControllerRating controller, Rig bare, List<Chosen> chosen) {
            Suited suited =
                    known.computeIfAbsent(List.of(controller, bare.busV(), hasOutlets(chosen)), key -> suited(chosen));
            suited.rejected().forEach((rule, rigs) -> rejected.merge(rule, rigs, Long::sum));
            fell += suited.fell();
            return suited;
        }

        private boolean hasOutlets(List<Chosen> chosen) {
            Chosen last = chosen.get(chosen.size() - 1);
            return last.part() instanceof ChargeController controller && Shelf.standsAlone(controller);
        }

        private Suited suited(List<Chosen> chosen) {
            BitSet arrays = new BitSet();
            Map<String, Long> rejections = new TreeMap<>();
            Rig without = Shelf.assembled(chosen);
            Set<String> alone = failures(RuleBook.sunFindings(without, site));
            // Where the volts do not suit, so it is for every array and, with sockets, for none.
            long asMany = shelf.arrays().size() + (hasOutlets(chosen) ? 1 : 0);
            if (!alone.isEmpty()) {
                alone.forEach(rule -> rejections.put(rule, asMany));
                return new Suited(arrays, false, rejections, asMany);
            }
            for (Array array : shelf.arrays()) {
                Set<String> failed = failures(RuleBook.sunFindings(Shelf.assembled(Shelf.with(chosen, array)), site));
                failed.forEach(rule -> rejections.merge(rule, 1L, Long::sum));
                arrays.set(array.place(), failed.isEmpty());
            }
            return new Suited(arrays, true, rejections, shelf.arrays().size() - arrays.cardinality());
        }
    }

    private @Nullable Array array(Strand strand) {
        return strand.at < 0 ? null : shelf.arraysByPrice().get(strand.at);
    }

    private long leastCents(Strand strand) {
        Array array = array(strand);
        return strand.cents + (array == null ? 0 : array.cents());
    }

    /** Moves on to the next array that suits; false where there is none. */
    private boolean advance(Strand strand) {
        List<Array> arrays = shelf.arraysByPrice();
        do {
            strand.at++;
        } while (strand.at < arrays.size()
                && !strand.suits.get(arrays.get(strand.at).place()));
        return strand.at < arrays.size();
    }

    Shelf shelf() {
        return shelf;
    }

    /** {@code Long.MAX_VALUE} where there is no budget. */
    long mostCents() {
        return mostCents;
    }

    /** Every strand there was at the beginning, in the grammar's order. */
    List<Strand> all() {
        return all;
    }

    /** Every rig of a strand, by its panels; null for none. */
    void forEachOf(Strand strand, Consumer<@Nullable Array> use) {
        if (strand.alone) {
            use.accept(null);
        }
        for (Array array : shelf.arrays()) {
            if (strand.suits.get(array.place())) {
                use.accept(array);
            }
        }
    }

    /** The least that any rig not handed on yet can cost; {@code Long.MAX_VALUE} where there is none within the budget. */
    long leastCents() {
        long least = ready.isEmpty() ? Long.MAX_VALUE : ready.element().cents();
        Strand first = strands.peek();
        long queued = first == null ? Long.MAX_VALUE : leastCents(first);
        return Math.min(least, queued > mostCents ? Long.MAX_VALUE : queued);
    }

    /** Back to the cheapest; what is known stays known. */
    void rewind() {
        strands.clear();
        ready.clear();
        for (Strand strand : all) {
            if (!strand.fell) {
                strand.at = strand.alone ? -1 : 0;
                strand.ruledOutByDemand = 0;
                strand.ruledOutByArray = 0;
                strand.ruledOutBySort = 0;
                strands.add(strand);
            }
        }
    }

    /** Rigs that bounds ruled out; what turned out to break a rule is counted there alone. */
    long ruledOut(ToLongFunction<Strand> by) {
        return all.stream().filter(strand -> !strand.fell).mapToLong(by).sum();
    }

    /** The next rig by its final price; null where none is left within the budget. */
    @Nullable
    Priced next(Sieve sieve) {
        while (true) {
            Strand strand = strands.peek();
            long least = strand == null ? Long.MAX_VALUE : leastCents(strand);
            if (!ready.isEmpty() && ready.element().cents() < least) {
                return ready.remove();
            }
            if (strand == null || least > mostCents) {
                return ready.poll();
            }
            strands.remove();
            step(strand, sieve);
        }
    }

    /** Takes the first strand a step further: to its next rig that is wanted, to its judgement, or to its rig's price. */
    private void step(Strand strand, Sieve sieve) {
        if (!wanted(strand, sieve)) {
            return;
        }
        if (strand.judged) {
            Priced one = priced(strand, array(strand));
            if (one != null && one.cents() <= mostCents) {
                ready.add(one);
            }
            if (advance(strand)) {
                strands.add(strand);
            }
        } else if (judge(strand)) {
            strands.add(strand);
        }
    }

    /**
     * Moves on to the first wanted rig; false where there is none. What is dearer may be refused as well now: it would be refused
     * later too.
     */
    private boolean wanted(Strand strand, Sieve sieve) {
        long queuedCents = leastCents(strand);
        if (!sieve.wantsAny(strand, queuedCents)) {
            return false;
        }
        do {
            long least = leastCents(strand);
            if (least > mostCents) {
                // Kept in the queue, so that it is counted with what is over the budget.
                strands.add(strand);
                return false;
            }
            if (suits(strand) && sieve.wants(strand, array(strand), least)) {
                if (least > queuedCents) {
                    strands.add(strand);
                    return false;
                }
                return true;
            }
        } while (advance(strand));
        return false;
    }

    private boolean suits(Strand strand) {
        Array array = array(strand);
        return array == null || strand.suits.get(array.place());
    }

    /** Asks what panels make no difference to; the cables that a start's current flows through are chosen for it. */
    private boolean judge(Strand strand) {
        strand.judged = true;
        Build build = bench.wire(strand.bare);
        Set<String> failed = failures(RuleBook.partFindings(strand.bare, site));
        failed.addAll(failures(RuleBook.loadFindings(build.rig(), loads)));
        failed.addAll(failures(build.findings()));
        if (!failed.isEmpty()) {
            strand.fell = true;
            reject(failed, strand.rigs());
            return false;
        }
        Price price = shelf.owned().price(build, loads, allowances, terms);
        strand.cents += price.besidePartsCents();
        return true;
    }

    /** A rig judged and priced whatever it costs; null where it breaks a rule. */
    @Nullable
    Priced priced(Strand strand, @Nullable Array array) {
        if (strand.fell || (!strand.judged && !judge(strand))) {
            return null;
        }
        return known.computeIfAbsent(strand.number(array), number -> Optional.ofNullable(price(strand, array)))
                .orElse(null);
    }

    private @Nullable Priced price(Strand strand, @Nullable Array array) {
        Rig rig = Shelf.assembled(Shelf.with(strand.bare.chosen(), array));
        Set<String> failed = failures(RuleBook.partFindings(rig, site));
        Build build = bench.wire(rig);
        failed.addAll(failures(build.findings()));
        if (!failed.isEmpty()) {
            reject(failed, 1);
            return null;
        }
        Price price = shelf.owned().price(build, loads, allowances, terms);
        long leastCents = strand.cents + (array == null ? 0 : array.cents());
        if (price.totalCents() < leastCents) {
            throw new IllegalStateException(rig.id() + " costs less than its bound");
        }
        if (price.totalCents() > mostCents) {
            overBudget++;
            leastOverBudgetCents = Math.min(leastOverBudgetCents, price.totalCents());
        } else {
            priced++;
        }
        return new Priced(strand.number(array), build.rig(), price);
    }

    /** Rigs that fell to each rule, as far as they have been asked. */
    Map<String, Long> rejected() {
        return rejected;
    }

    /** Rigs that fell to any rule, as far as rules have been asked. */
    long fell() {
        return fell;
    }

    /** Rigs within the budget, as far as is known, that nobody has come to yet. */
    long notReached() {
        long all = 0;
        for (Strand strand : strands) {
            all += leastCents(strand) > mostCents ? 0 : left(strand);
        }
        return all;
    }

    /** Rigs judged, wired, priced and within the budget. */
    long priced() {
        return priced;
    }

    /** Rigs over the budget, or whose main parts are. */
    long overBudget() {
        long all = overBudget;
        for (Strand strand : strands) {
            all += leastCents(strand) > mostCents ? left(strand) : 0;
        }
        return all;
    }

    /** Rigs of a strand that nobody has come to and that were not priced before. */
    long left(Strand strand) {
        long left = strand.at < 0 && !isPriced(strand, null) ? 1 : 0;
        List<Array> arrays = shelf.arraysByPrice();
        for (int i = Math.max(0, strand.at); i < arrays.size(); i++) {
            Array array = arrays.get(i);
            left += strand.suits.get(array.place()) && !isPriced(strand, array) ? 1 : 0;
        }
        return left;
    }

    boolean isPriced(Strand strand, @Nullable Array array) {
        return known.containsKey(strand.number(array));
    }

    /** The cheapest rig over the budget, of the first so many strands looked into; empty where none is found among them. */
    OptionalLong leastOverBudgetCents() {
        for (int looks = 0; looks < MOST_LOOKS && !strands.isEmpty(); looks++) {
            if (leastCents(strands.element()) >= leastOverBudgetCents) {
                break;
            }
            Strand strand = strands.remove();
            if (suits(strand)) {
                if (!strand.judged && !judge(strand)) {
                    continue;
                }
                priced(strand, array(strand));
            }
            if (advance(strand)) {
                strands.add(strand);
            }
        }
        return leastOverBudgetCents == Long.MAX_VALUE ? OptionalLong.empty() : OptionalLong.of(leastOverBudgetCents);
    }

    private void reject(Set<String> rules, long rigs) {
        fell += rigs;
        rules.forEach(rule -> rejected.merge(rule, rigs, Long::sum));
    }

    private static Set<String> failures(List<Finding> findings) {
        Set<String> rules = new TreeSet<>();
        for (Finding finding : findings) {
            if (finding.verdict() == Verdict.FAIL) {
                rules.add(finding.rule());
            }
        }
        return rules;
    }
}
