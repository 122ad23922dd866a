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
import org.jspecify.annotations.Nullable;
import tideover.engine.load.Load;
import tideover.engine.part.Battery;
import tideover.engine.part.ChargeController;
import tideover.engine.part.Charger;
import tideover.engine.part.ControllerRating;
import tideover.engine.part.Enclosure;
import tideover.engine.part.Inverter;
import tideover.engine.part.Panel;
import tideover.engine.part.Part;
import tideover.engine.part.ReadyBox;
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
            OptionalLong budgetCents) {
        Judge judge = new Judge(loads, site, bench, allowances, budgetCents);
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
        private final OptionalLong budgetCents;
        private final List<Priced> kept = new ArrayList<>();
        private final Map<String, Integer> rejected = new TreeMap<>();
        private final Map<List<Chosen>, Set<String>> failedWithLoads = new HashMap<>();
        private int looked;
        private int overBudget;
        private OptionalLong leastOverBudgetCents = OptionalLong.empty();

        Judge(List<Load> loads, Site site, Bench bench, Allowances allowances, OptionalLong budgetCents) {
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
            Price price = Price.of(build, loads, allowances);
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
        for (ReadyBox box : kind(parts, ReadyBox.class)) {
            addSun(parts, grammar, List.of(new Chosen(box, 1)), box.controller(), use);
        }
        for (Battery battery : kind(parts, Battery.class)) {
            int most = Math.min(grammar.mostBatteries(), atHand(battery));
            for (int count = 1; count <= most; count++) {
                Chosen bank = new Chosen(battery, count);
                for (Enclosure enclosure : kind(parts, Enclosure.class)) {
                    List<Chosen> chosen = List.of(new Chosen(enclosure, 1), bank);
                    addSun(parts, grammar, chosen, enclosure.controller(), use);
                    if (enclosure.inverter() == null) {
                        for (Inverter inverter : kind(parts, Inverter.class)) {
                            addSun(parts, grammar, with(chosen, inverter, 1), enclosure.controller(), use);
                        }
                    }
                }
                addInverters(parts, grammar, List.of(bank), use);
                for (SocketBoard board : kind(parts, SocketBoard.class)) {
                    addInverters(parts, grammar, with(List.of(bank), board, 1), use);
                }
            }
        }
    }

    private static void addInverters(
            List<Part> parts, Grammar grammar, List<Chosen> chosen, Consumer<List<Chosen>> use) {
        addSun(parts, grammar, chosen, null, use);
        for (Inverter inverter : kind(parts, Inverter.class)) {
            addSun(parts, grammar, with(chosen, inverter, 1), null, use);
        }
    }

    /** The choice as it is, then with every separate controller where none is built in, each with every array. */
    private static void addSun(
            List<Part> parts,
            Grammar grammar,
            List<Chosen> chosen,
            @Nullable ControllerRating builtIn,
            Consumer<List<Chosen>> use) {
        if (grammar.chargers() && chosen.stream().noneMatch(one -> one.part() instanceof Charger)) {
            for (Charger charger : kind(parts, Charger.class)) {
                addSun(parts, grammar, with(chosen, charger, 1), builtIn, use);
            }
        }
        use.accept(chosen);
        if (builtIn != null) {
            addPanels(parts, grammar, chosen, use);
            return;
        }
        for (ChargeController controller : kind(parts, ChargeController.class)) {
            List<Chosen> controlled = with(chosen, controller, 1);
            if (!controller.outlets().isEmpty()) {
                use.accept(controlled);
            }
            addPanels(parts, grammar, controlled, use);
        }
    }

    private static void addPanels(List<Part> parts, Grammar grammar, List<Chosen> chosen, Consumer<List<Chosen>> use) {
        for (Panel panel : kind(parts, Panel.class)) {
            for (int count = 1; count <= Math.min(grammar.mostPanels(), atHand(panel)); count++) {
                use.accept(with(chosen, panel, count));
            }
        }
    }

    private static int atHand(Part part) {
        return part.listing().atHand();
    }

    private static List<Chosen> with(List<Chosen> chosen, Part part, int count) {
        List<Chosen> more = new ArrayList<>(chosen);
        more.add(new Chosen(part, count));
        return more;
    }

    private static <T> List<T> kind(List<Part> parts, Class<T> kind) {
        return parts.stream().filter(kind::isInstance).map(kind::cast).toList();
    }
}
