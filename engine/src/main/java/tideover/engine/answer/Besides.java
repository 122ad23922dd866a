package tideover.engine.answer;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.function.Predicate;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import tideover.engine.outage.Outage;
import tideover.engine.proof.CarriedShare;
import tideover.engine.proof.KeptBound;
import tideover.engine.proof.Prover;
import tideover.engine.quantity.Workers;
import tideover.engine.rig.Rig;
import tideover.engine.rig.RuleBook;
import tideover.engine.rig.Site;
import tideover.engine.search.Changes;
import tideover.engine.search.Priced;
import tideover.engine.search.Pricing;
import tideover.engine.search.Rated;
import tideover.engine.search.Screen;
import tideover.engine.search.Shortlist;
import tideover.engine.why.Finding;
import tideover.engine.why.Verdict;
import tideover.engine.wiring.Bench;

/** Works out what stands beside the winner. Everything here asks few rigs, so that it costs little beside the search. */
final class Besides {
    /** Other draws of the weather that are tried. */
    static final int DRAWS = 10;

    /** A hundredth is the least that is worth changing a rig for. */
    static final double LEAST_STEP = 0.01;

    /** So many of each list are asked in other draws. */
    private static final int ASKED_OF_EACH = 6;

    /** So many changed rigs that the screening can only bound are walked. */
    private static final int STEP_WALKS = 24;

    private static final int ROUND = 8;

    private final Question question;
    private final Options options;
    private final Workers workers;
    private final Drawing drawing;
    private final Bench bench;
    private final Site site;
    private final Outage outage;
    private final double target;

    /**
     * Draws weather and walks through it.
     *
     * @param first the question's own years
     */
    interface Drawing {
        Advisor.Sky first();

        Advisor.Sky sky(long seed);

        /** Walks in the first years. */
        Prover prover();

        /** The least that the loads which switch themselves need in a prover's years, whatever stands beside a rig. */
        KeptBound kept(Prover by);

        /** Walks in any years, one thing after the other. */
        Prover alone(Advisor.Sky sky);
    }

    /** @param site what the rules ask of the place, temperatures of the store's room included */
    Besides(Question question, Options options, Workers workers, Drawing drawing, Bench bench, Site site) {
        this.question = question;
        this.options = options;
        this.workers = workers;
        this.drawing = drawing;
        this.bench = bench;
        this.site = site;
        this.outage = question.asked();
        this.target = outage.targetShare();
    }

    /** The safer and the lighter among the winner and its near ties. */
    @Nullable
    Choice choice(Shortlist list) {
        Rated winner = list.winner();
        if (winner == null || list.nearTies().isEmpty()) {
            return null;
        }
        List<Rated> all =
                Stream.concat(Stream.of(winner), list.nearTies().stream()).toList();
        // One after the other: the bench remembers what it wired.
        return Choice.of(
                all.stream().map(one -> new Choice.Judged(one, safety(one))).toList());
    }

    private Safety safety(Rated rated) {
        List<Finding> findings = new ArrayList<>(RuleBook.findings(rated.rig(), question.loads(), site));
        findings.addAll(bench.wire(rated.rig()).findings());
        return Safety.of(rated, findings);
    }

    /** Who wins in other draws of the weather. */
    @Nullable
    Steadiness steadiness(Shortlist list) {
        Rated winner = list.winner();
        if (winner == null || !question.weather().canDrawAgain()) {
            return null;
        }
        List<Rated> asked = close(winner, list);
        Steadiness.Draw[] draws = new Steadiness.Draw[DRAWS];
        workers.forEach(DRAWS, number -> {
            // The first seed found the winner, the second confirmed it.
            long seed = options.confirmSeed() + 1 + number;
            draws[number] = new Steadiness.Draw(seed, cheapest(asked, drawing.sky(seed)));
        });
        return new Steadiness(drawing.first().weather().years(), asked.size(), List.of(draws));
    }

    /** By price. */
    private static List<Rated> close(Rated winner, Shortlist list) {
        Map<String, Rated> byId = new LinkedHashMap<>();
        byId.put(winner.rig().id(), winner);
        for (List<Rated> some : List.of(list.nearTies(), list.unconfirmed(), list.misses())) {
            some.stream()
                    .limit(ASKED_OF_EACH)
                    .forEach(one -> byId.putIfAbsent(one.rig().id(), one));
        }
        return byId.values().stream().sorted(Choice.BY_PRICE).toList();
    }

    private @Nullable Rated cheapest(List<Rated> byPrice, Advisor.Sky sky) {
        Prover prover = drawing.alone(sky);
        Screen screen = screen(sky, prover);
        for (Rated one : byPrice) {
            if (share(one.rig(), target, screen, prover).isPresent()) {
                return one;
            }
        }
        return null;
    }

    private Screen screen(Advisor.Sky sky, Prover prover) {
        return new Screen(
                sky.plane(),
                sky.weather().years(),
                question.place().meanSolarNoonHour(),
                options.stepsPerHour(),
                outage,
                drawing.kept(prover),
                question.loads());
    }

    /** Where it reaches a threshold. */
    private OptionalDouble share(Rig rig, double threshold, Screen screen, Prover prover) {
        double atMost = screen.atMost(rig);
        if (atMost < threshold) {
            return OptionalDouble.empty();
        }
        return screen.isExact(rig)
                ? OptionalDouble.of(atMost)
                : prover.shareFrom(threshold, rig, question.loads(), outage);
    }

    /** With less sun and a smaller store at once. */
    CarriedShare lean(Rig rig) {
        return drawing.prover().share(rig, question.loads(), outage, Beside.LEAN_TIMES, Beside.LEAN_TIMES);
    }

    /**
     * What lifts a rig that keeps every rule.
     *
     * @param from      its price, and its share of the first years
     * @param meets     whether it meets the target, on other years too
     * @param dearer    whether only what costs more is to be tried: all that is cheaper has been searched
     * @param holds     has the last word where a missed target is to be met
     */
    @Nullable
    NextStep nextStep(Rated from, boolean meets, boolean dearer, Predicate<Rig> holds) {
        double goal = meets ? Math.min(1, from.share() + Math.max(LEAST_STEP, (1 - from.share()) / 2)) : target;
        if (meets && from.share() >= 1) {
            return null;
        }
        List<Tried> tried = changed(from, dearer);
        Screen screen = screen(drawing.first(), drawing.prover());
        double[] atMost = new double[tried.size()];
        int walks = 0;
        for (int at = 0; at < tried.size(); at++) {
            if (at % ROUND == 0) {
                int begin = at;
                workers.forEach(
                        Math.min(ROUND, tried.size() - begin),
                        number -> atMost[begin + number] =
                                screen.atMost(tried.get(begin + number).priced().rig()));
            }
            if (atMost[at] < goal) {
                continue;
            }
            Rig rig = tried.get(at).priced().rig();
            boolean exact = screen.isExact(rig);
            if (!exact && ++walks > STEP_WALKS) {
                return step(from, goal, tried.size(), null, false);
            }
            OptionalDouble share = exact
                    ? OptionalDouble.of(atMost[at])
                    : drawing.prover().shareFrom(goal, rig, question.loads(), outage);
            if (share.isPresent() && (meets || holds.test(rig))) {
                return step(from, goal, tried.size(), found(tried.get(at), share.getAsDouble()), true);
            }
        }
        return tried.isEmpty() ? null : step(from, goal, tried.size(), null, true);
    }

    private record Tried(String words, Priced priced) {}

    /** Cheapest first; ties by mass, then id. */
    private List<Tried> changed(Rated from, boolean dearer) {
        List<Changes.Change> changes = Changes.of(from.rig().chosen(), question.parts(), question.rigs());
        Pricing pricing = new Pricing(question.loads(), site, bench, question.allowances(), question.terms());
        List<Tried> tried = new ArrayList<>();
        for (Changes.Change change : changes) {
            Priced one = pricing.of(change.chosen());
            if (one != null
                    && (!dearer || one.price().totalCents() > from.price().totalCents())) {
                tried.add(new Tried(change.words(), one));
            }
        }
        tried.sort(Comparator.<Tried>comparingLong(one -> one.priced().price().totalCents())
                .thenComparingDouble(one -> one.priced().rig().massKg())
                .thenComparing(one -> one.priced().rig().id()));
        return tried;
    }

    private NextStep.Change found(Tried tried, double share) {
        long cents = tried.priced().price().totalCents();
        return new NextStep.Change(
                tried.words(),
                tried.priced().rig(),
                tried.priced().price(),
                share,
                question.budgetCents().isPresent()
                        && cents > question.budgetCents().getAsLong());
    }

    private static NextStep step(
            Rated from, double goal, int tried, NextStep.@Nullable Change found, boolean followed) {
        return new NextStep(from.rig(), from.price().totalCents(), from.share(), goal, tried, found, followed);
    }

    /** Whether a proven rig keeps every rule, so that a change of it can. */
    static boolean keepsRules(ProvenRig rig) {
        return rig.findings().stream().noneMatch(finding -> finding.verdict() == Verdict.FAIL);
    }
}
