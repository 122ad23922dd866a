package tideover.engine.search;

import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalLong;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.function.Consumer;
import tideover.engine.load.Load;
import tideover.engine.part.Panel;
import tideover.engine.part.Part;
import tideover.engine.part.SocketBoard;
import tideover.engine.rig.Assembly;
import tideover.engine.rig.Chosen;
import tideover.engine.rig.Rig;
import tideover.engine.rig.RuleBook;
import tideover.engine.rig.Site;
import tideover.engine.why.Finding;
import tideover.engine.why.Verdict;
import tideover.engine.wiring.Allowances;
import tideover.engine.wiring.Bench;
import tideover.engine.wiring.Build;
import tideover.engine.wiring.Price;
import tideover.engine.wiring.Terms;

/**
 * Every rig that the grammar allows over the parts: a ready-made box, or an enclosure with batteries, or batteries with
 * a separate inverter and controller; with no panel or some of one kind. What is not built in may be added. Each is put
 * before the rule book; a rejected one is counted under every rule it fails. What keeps these is wired, and may fall to the
 * rules of wiring.
 *
 * @param kept       rigs that pass every rule and the budget, cheapest first; ties by mass, then id. The place in this
 *                   list, from 1, is a rig's number
 * @param looked     how many rigs the grammar gave
 * @param rejected   how many fell to each rule; one rig may fall to several
 * @param overBudget how many fell to the budget alone
 * @param leastOverBudgetCents the cheapest of those; empty where there is none
 */
public record Candidates(
        List<Priced> kept,
        int looked,
        Map<String, Integer> rejected,
        int overBudget,
        OptionalLong leastOverBudgetCents) {
    public Candidates {
        kept = List.copyOf(kept);
        rejected = Collections.unmodifiableMap(new TreeMap<>(rejected));
    }

    /** A rig and its price. */
    public record Priced(Rig rig, Price price) {
        private static final Comparator<Priced> BY_PRICE = Comparator.comparingLong(
                        (Priced one) -> one.price().totalCents())
                .thenComparingDouble(one -> one.rig().massKg())
                .thenComparing(one -> one.rig().id());
    }

    /**
     * @param site  what the rules ask of the place
     * @param bench where each is wired before its price is known
     */
    public static Candidates of(
            List<Part> parts,
            Grammar grammar,
            List<Load> loads,
            Site site,
            Bench bench,
            Allowances allowances,
            Terms terms,
            OptionalLong budgetCents) {
        Judge judge = new Judge(loads, site, bench, allowances, terms, budgetCents);
        forEach(usable(parts, loads), grammar, judge);
        judge.kept.sort(Priced.BY_PRICE);
        return new Candidates(judge.kept, judge.looked, judge.rejected, judge.overBudget, judge.leastOverBudgetCents);
    }

    /** Sockets by themselves serve nothing where no load takes direct current. */
    private static List<Part> usable(List<Part> parts, List<Load> loads) {
        boolean direct =
                loads.stream().anyMatch(load -> load.plugged() && !load.supply().isAc());
        return direct
                ? parts
                : parts.stream().filter(part -> !(part instanceof SocketBoard)).toList();
    }

    /** Puts rigs before the rule book; what concerns loads is judged once for all arrays on the same electronics. */
    private static final class Judge implements Consumer<List<Chosen>> {
        private final List<Load> loads;
        private final Site site;
        private final Bench bench;
        private final Allowances allowances;
        private final Terms terms;
        private final OptionalLong budgetCents;
        private final List<Priced> kept = new ArrayList<>();
        private final Map<String, Integer> rejected = new TreeMap<>();
        private final Map<List<Chosen>, Set<String>> failedWithLoads = new HashMap<>();
        private int looked;
        private int overBudget;
        private OptionalLong leastOverBudgetCents = OptionalLong.empty();

        Judge(List<Load> loads, Site site, Bench bench, Allowances allowances, Terms terms, OptionalLong budgetCents) {
            this.terms = terms;
            this.loads = loads;
            this.site = site;
            this.bench = bench;
            this.allowances = allowances;
            this.budgetCents = budgetCents;
        }

        @Override
        public void accept(List<Chosen> chosen) {
            Rig rig = Assembly.of(chosen).rig();
            if (rig == null) {
                return;
            }
            looked++;
            List<Chosen> electronics = chosen.stream()
                    .filter(one -> !(one.part() instanceof Panel))
                    .toList();
            Set<String> failed =
                    new TreeSet<>(failedWithLoads.computeIfAbsent(electronics, key -> failures(loadFindings(rig))));
            failed.addAll(failures(RuleBook.partFindings(rig, site)));
            if (failed.isEmpty()) {
                Build build = bench.wire(rig);
                failed.addAll(failures(build.findings()));
                if (failed.isEmpty()) {
                    keep(build);
                    return;
                }
            }
            failed.forEach(rule -> rejected.merge(rule, 1, Integer::sum));
        }

        /** Panels make no difference to the cables that a start's current flows through. */
        private List<Finding> loadFindings(Rig rig) {
            return RuleBook.loadFindings(bench.wire(rig).rig(), loads);
        }

        private void keep(Build build) {
            Price price = Price.of(build, loads, allowances, terms);
            if (budgetCents.isPresent() && price.totalCents() > budgetCents.getAsLong()) {
                overBudget++;
                leastOverBudgetCents =
                        OptionalLong.of(Math.min(price.totalCents(), leastOverBudgetCents.orElse(Long.MAX_VALUE)));
            } else {
                kept.add(new Priced(build.rig(), price));
            }
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

    private static void forEach(List<Part> parts, Grammar grammar, Consumer<List<Chosen>> use) {
        List<Panel> panels = Cores.kind(parts, Panel.class);
        Cores.forEach(parts, grammar, core -> {
            if (core.alone()) {
                use.accept(core.chosen());
            }
            if (core.sunny()) {
                addPanels(panels, grammar, core.chosen(), use);
            }
        });
    }

    private static void addPanels(
            List<Panel> panels, Grammar grammar, List<Chosen> chosen, Consumer<List<Chosen>> use) {
        for (Panel panel : panels) {
            int most = Math.min(grammar.mostPanels(), panel.listing().atHand());
            for (int count = 1; count <= most; count++) {
                List<Chosen> more = new ArrayList<>(chosen);
                more.add(new Chosen(panel, count));
                use.accept(more);
            }
        }
    }
}
