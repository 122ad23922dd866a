package tideover.engine.search;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import tideover.engine.part.Aid;
import tideover.engine.part.Battery;
import tideover.engine.part.ChargeController;
import tideover.engine.part.Charger;
import tideover.engine.part.Enclosure;
import tideover.engine.part.Engine;
import tideover.engine.part.Inverter;
import tideover.engine.part.Panel;
import tideover.engine.part.Part;
import tideover.engine.part.ReadyBox;
import tideover.engine.part.SocketBoard;
import tideover.engine.rig.Chosen;

/**
 * Everything that is one change away from a choice of parts: one more or one less of what may be several; one kind of part in
 * the place of another, where what may be several may be as many as the grammar allows; a kind added; a kind left out. One more than
 * the grammar's most is tried as well. What helps without power stays as it is. Whether a rig comes of it is not asked here.
 */
public final class Changes {
    private final List<Chosen> chosen;
    private final List<Part> parts;
    private final Grammar grammar;
    private final List<Change> changes = new ArrayList<>();

    private Changes(List<Chosen> chosen, List<Part> parts, Grammar grammar) {
        this.chosen = chosen;
        this.parts = parts;
        this.grammar = grammar;
    }

    /**
     * @param chosen what is there afterwards, in the order in which the grammar puts parts together
     * @param words  the change, such as "one more Foo panel, 2 in all"
     */
    public record Change(List<Chosen> chosen, String words) {
        public Change {
            chosen = List.copyOf(chosen);
        }
    }

    public static List<Change> of(List<Chosen> chosen, List<Part> parts, Grammar grammar) {
        Changes all = new Changes(chosen, parts, grammar);
        chosen.stream().filter(one -> !(one.part() instanceof Aid)).forEach(all::fewerMoreOrOther);
        parts.stream().filter(part -> !(part instanceof Aid)).forEach(all::added);
        return List.copyOf(all.changes);
    }

    private void fewerMoreOrOther(Chosen one) {
        Part part = one.part();
        String name = part.listing().name();
        if (many(part) && one.count() < part.listing().atHand() && one.count() <= most(part)) {
            put(one, new Chosen(part, one.count() + 1), "one more " + name + ", " + (one.count() + 1) + " in all");
        }
        if (one.count() > 1) {
            put(one, new Chosen(part, one.count() - 1), "one less " + name + ", " + (one.count() - 1) + " in all");
        }
        List<Chosen> rest = without(one);
        if (!rest.isEmpty()) {
            changes.add(new Change(rest, "leaving out " + one.words()));
        }
        for (Part other : parts) {
            if (!other.kind().equals(part.kind())
                    || other.listing().id().equals(part.listing().id())) {
                continue;
            }
            int most = Math.min(other.listing().atHand(), many(other) ? Math.max(one.count(), most(other)) : 1);
            for (int count = 1; count <= most; count++) {
                Chosen in = new Chosen(other, count);
                put(one, in, "instead of " + one.words() + ": " + in.words());
            }
        }
    }

    private void added(Part part) {
        if (chosen.stream().anyMatch(one -> one.part().kind().equals(part.kind()))) {
            return;
        }
        int most = Math.min(part.listing().atHand(), many(part) ? most(part) : 1);
        for (int count = 1; count <= most; count++) {
            List<Chosen> more = new ArrayList<>(chosen);
            Chosen in = new Chosen(part, count);
            more.add(in);
            changes.add(new Change(inOrder(more), "adding " + in.words()));
        }
    }

    private void put(Chosen out, Chosen in, String words) {
        List<Chosen> changed = without(out);
        changed.add(in);
        changes.add(new Change(inOrder(changed), words));
    }

    private List<Chosen> without(Chosen out) {
        List<Chosen> rest = new ArrayList<>(chosen);
        rest.remove(out);
        return rest;
    }

    private static boolean many(Part part) {
        return part instanceof Battery || part instanceof Panel;
    }

    private int most(Part part) {
        return part instanceof Battery ? grammar.mostBatteries() : grammar.mostPanels();
    }

    private static List<Chosen> inOrder(List<Chosen> some) {
        return some.stream()
                .sorted(Comparator.comparingInt(one -> place(one.part())))
                .toList();
    }

    /** The order of {@link Cores}, so that the same parts get the same id. */
    private static int place(Part part) {
        List<Class<? extends Part>> order = List.of(
                Aid.class,
                ReadyBox.class,
                Enclosure.class,
                Battery.class,
                SocketBoard.class,
                Inverter.class,
                Charger.class,
                Engine.class,
                ChargeController.class,
                Panel.class);
        return order.indexOf(part.getClass());
    }
}
