package tideover.engine.search;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.OptionalLong;
import java.util.TreeMap;
import java.util.function.Consumer;
import org.jspecify.annotations.Nullable;
import tideover.engine.load.Load;
import tideover.engine.part.Battery;
import tideover.engine.part.ChargeController;
import tideover.engine.part.ControllerRating;
import tideover.engine.part.Enclosure;
import tideover.engine.part.Inverter;
import tideover.engine.part.Panel;
import tideover.engine.part.Part;
import tideover.engine.part.ReadyBox;
import tideover.engine.rig.Assembly;
import tideover.engine.rig.Chosen;
import tideover.engine.rig.Rig;
import tideover.engine.rig.RuleBook;
import tideover.engine.why.Finding;
import tideover.engine.why.Verdict;
import tideover.engine.wiring.Allowances;
import tideover.engine.wiring.Price;

/**
 * Every rig that the grammar allows over the parts: a ready-made box, or an enclosure with batteries, or batteries with
 * a separate inverter and controller; with no panel or some of one kind. What is not built in may be added. Each is put
 * before the rule book; a rejected one is counted under every rule it fails.
 *
 * @param kept           rigs that pass every rule and the budget
 * @param looked         how many rigs the grammar gave
 * @param rejected       how many fell to each rule; one rig may fall to several
 * @param overBudget     how many fell to the budget alone
 */
record Candidates(List<Priced> kept, int looked, Map<String, Integer> rejected, int overBudget) {
    Candidates {
        kept = List.copyOf(kept);
    }

    /** A rig and its price. */
    record Priced(Rig rig, Price price) {}

    static Candidates of(
            List<Part> parts,
            Grammar grammar,
            List<Load> loads,
            double lowestDegC,
            Allowances allowances,
            OptionalLong budgetCents) {
        List<Priced> kept = new ArrayList<>();
        Map<String, Integer> rejected = new TreeMap<>();
        int[] counts = new int[2];
        forEach(parts, grammar, chosen -> {
            Rig rig = Assembly.of(chosen).rig();
            if (rig == null) {
                return;
            }
            counts[0]++;
            boolean passes = true;
            List<String> failed = new ArrayList<>();
            for (Finding finding : RuleBook.findings(rig, loads, lowestDegC)) {
                if (finding.verdict() == Verdict.FAIL) {
                    passes = false;
                    if (!failed.contains(finding.rule())) {
                        failed.add(finding.rule());
                        rejected.merge(finding.rule(), 1, Integer::sum);
                    }
                }
            }
            Price price = Price.of(rig, allowances);
            if (passes && budgetCents.isPresent() && price.totalCents() > budgetCents.getAsLong()) {
                counts[1]++;
                passes = false;
            }
            if (passes) {
                kept.add(new Priced(rig, price));
            }
        });
        return new Candidates(kept, counts[0], rejected, counts[1]);
    }

    private static void forEach(List<Part> parts, Grammar grammar, Consumer<List<Chosen>> use) {
        for (ReadyBox box : kind(parts, ReadyBox.class)) {
            addSun(parts, grammar, List.of(new Chosen(box, 1)), box.controller(), use);
        }
        for (Battery battery : kind(parts, Battery.class)) {
            int most = Math.min(grammar.mostBatteries(), battery.mostInParallel());
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
                addSun(parts, grammar, List.of(bank), null, use);
                for (Inverter inverter : kind(parts, Inverter.class)) {
                    addSun(parts, grammar, with(List.of(bank), inverter, 1), null, use);
                }
            }
        }
    }

    /** The choice as it is, then with every separate controller where none is built in, each with every array. */
    private static void addSun(
            List<Part> parts,
            Grammar grammar,
            List<Chosen> chosen,
            @Nullable ControllerRating builtIn,
            Consumer<List<Chosen>> use) {
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
            for (int count = 1; count <= grammar.mostPanels(); count++) {
                use.accept(with(chosen, panel, count));
            }
        }
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
