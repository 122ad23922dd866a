package tideover.engine.search;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Consumer;
import org.jspecify.annotations.Nullable;
import tideover.engine.part.Battery;
import tideover.engine.part.Charger;
import tideover.engine.part.ControllerRating;
import tideover.engine.part.Enclosure;
import tideover.engine.part.Engine;
import tideover.engine.part.Inverter;
import tideover.engine.part.Part;
import tideover.engine.part.ReadyBox;
import tideover.engine.part.SocketBoard;
import tideover.engine.rig.Chosen;

/**
 * The grammar of rigs, all but a separate charge controller and panels: a ready-made box, or an enclosure with batteries, or
 * batteries with what serves their loads. What is not built in may be added, and an engine or a vehicle beside a charger; each set
 * of aids may stand in front. {@link Shelf} says what may follow.
 */
final class Cores {
    private final List<Part> parts;
    private final Grammar grammar;
    private final Consumer<Core> use;

    /** That stand in front of every core now. */
    private List<Chosen> aids = List.of();

    private Cores(List<Part> parts, Grammar grammar, Consumer<Core> use) {
        this.parts = parts;
        this.grammar = grammar;
        this.use = use;
    }

    /**
     * A rig without a separate controller and without panels; already a rig by itself.
     *
     * @param builtIn the controller that it brings; else a separate one may be added
     */
    record Core(List<Chosen> chosen, @Nullable ControllerRating builtIn) {}

    /** Goes through every core that the grammar makes of the parts, always in the same order. */
    static void forEach(List<Part> parts, Grammar grammar, Consumer<Core> use) {
        new Cores(parts, grammar, use).all();
    }

    private void all() {
        for (List<Chosen> set : grammar.aids()) {
            aids = set;
            allWithThese();
        }
    }

    private void allWithThese() {
        for (ReadyBox box : kind(parts, ReadyBox.class)) {
            addSun(List.of(new Chosen(box, 1)), box.controller());
        }
        for (Battery battery : kind(parts, Battery.class)) {
            int most = Math.min(grammar.mostBatteries(), battery.listing().atHand());
            for (int count = 1; count <= most; count++) {
                withBank(new Chosen(battery, count));
            }
        }
    }

    private void withBank(Chosen bank) {
        for (Enclosure enclosure : kind(parts, Enclosure.class)) {
            List<Chosen> chosen = List.of(new Chosen(enclosure, 1), bank);
            addSun(chosen, enclosure.controller());
            if (enclosure.inverter() == null) {
                for (Inverter inverter : kind(parts, Inverter.class)) {
                    addSun(with(chosen, inverter), enclosure.controller());
                }
            }
        }
        addInverters(List.of(bank));
        for (SocketBoard board : kind(parts, SocketBoard.class)) {
            addInverters(with(List.of(bank), board));
        }
    }

    private void addInverters(List<Chosen> chosen) {
        addSun(chosen, null);
        for (Inverter inverter : kind(parts, Inverter.class)) {
            addSun(with(chosen, inverter), null);
        }
    }

    private void addSun(List<Chosen> chosen, @Nullable ControllerRating builtIn) {
        if (chosen.stream().noneMatch(one -> one.part() instanceof Charger || one.part() instanceof Engine)) {
            addChargers(chosen, builtIn);
        }
        List<Chosen> all = chosen;
        if (!aids.isEmpty()) {
            all = new ArrayList<>(aids);
            all.addAll(chosen);
        }
        use.accept(new Core(List.copyOf(all), builtIn));
    }

    /**
     * With every charger that something of the plan may feed, with every pair of a charger and an engine or vehicle, and a box
     * that has its own charger with every engine.
     */
    private void addChargers(List<Chosen> chosen, @Nullable ControllerRating builtIn) {
        List<Engine> engines = kind(parts, Engine.class);
        for (Charger charger : kind(parts, Charger.class)) {
            List<Chosen> charged = with(chosen, charger);
            if (grammar.chargers() && !charger.isDirect()) {
                addSun(charged, builtIn);
            }
            for (Engine engine : engines) {
                // A vehicle has sockets of direct current alone, an engine none.
                if (engine.vehicle() == charger.isDirect()) {
                    addSun(with(charged, engine), builtIn);
                }
            }
        }
        boolean ownCharger =
                chosen.stream().anyMatch(one -> one.part() instanceof ReadyBox box && box.mainsChargeW() > 0);
        for (Engine engine : engines) {
            if (ownCharger && !engine.vehicle()) {
                addSun(with(chosen, engine), builtIn);
            }
        }
    }

    static List<Chosen> with(List<Chosen> chosen, Part part) {
        List<Chosen> more = new ArrayList<>(chosen);
        more.add(new Chosen(part, 1));
        return List.copyOf(more);
    }

    static <T> List<T> kind(List<Part> parts, Class<T> kind) {
        return parts.stream().filter(kind::isInstance).map(kind::cast).toList();
    }
}
