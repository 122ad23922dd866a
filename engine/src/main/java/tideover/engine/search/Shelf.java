package tideover.engine.search;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.jspecify.annotations.Nullable;
import tideover.engine.load.Load;
import tideover.engine.part.ChargeController;
import tideover.engine.part.Panel;
import tideover.engine.part.Part;
import tideover.engine.part.SocketBoard;
import tideover.engine.rig.Assembly;
import tideover.engine.rig.Chosen;
import tideover.engine.rig.Rig;

/**
 * Every rig that the grammar allows over some parts: a core as it is; with panels of one kind where a controller is built in;
 * else with each separate controller, by itself where it has sockets, and with panels of one kind. Rigs are numbered from 1 in that
 * order, panels in the order of the parts, the fewer first; none is made before it is asked for.
 */
public final class Shelf {
    private final List<Cores.Core> cores = new ArrayList<>();
    private final List<ChargeController> controllers;
    private final List<Array> arrays = new ArrayList<>();
    private final List<Array> byPrice;
    private long rigs;

    /**
     * Panels of one kind.
     *
     * @param place among all, from 0, in the grammar's order
     */
    record Array(Panel panel, int count, int place, long cents) {
        Chosen chosen() {
            return new Chosen(panel, count);
        }
    }

    private final Owned owned;

    private Shelf(List<Part> parts, Grammar grammar, Owned owned) {
        this.owned = owned;
        controllers = Cores.kind(parts, ChargeController.class);
        for (Panel panel : Cores.kind(parts, Panel.class)) {
            int most = Math.min(grammar.mostPanels(), panel.listing().atHand());
            for (int count = 1; count <= most; count++) {
                arrays.add(new Array(panel, count, arrays.size(), owned.leastCents(new Chosen(panel, count))));
            }
        }
        byPrice = arrays.stream()
                .sorted(Comparator.comparingLong(Array::cents).thenComparingInt(Array::place))
                .toList();
        Cores.forEach(parts, grammar, core -> {
            cores.add(core);
            rigs += rigsOf(core);
        });
    }

    /** Of the parts that can serve some of the loads: sockets by themselves do not where no load takes direct current. */
    public static Shelf of(List<Part> parts, Grammar grammar, List<Load> loads) {
        return of(parts, grammar, loads, Owned.NOTHING);
    }

    /** Of the parts beside what is owned; its numbers are not those of all parts. Rigs without what is owned are no offers. */
    public static Shelf of(List<Part> parts, Grammar grammar, List<Load> loads, Owned owned) {
        boolean direct =
                loads.stream().anyMatch(load -> load.plugged() && !load.supply().isAc());
        List<Part> fitting = owned.fitting(parts);
        return new Shelf(
                direct
                        ? fitting
                        : fitting.stream()
                                .filter(part -> !(part instanceof SocketBoard))
                                .toList(),
                grammar,
                owned);
    }

    /** How many rigs can be put together. */
    public long rigs() {
        return rigs;
    }

    /** The rig with a number, from 1 to {@link #rigs()}; its parts may not suit each other. */
    public Rig rig(long number) {
        long before = 0;
        for (Cores.Core core : cores) {
            long here = rigsOf(core);
            if (number <= before + here) {
                return assembled(chosen(core, (int) (number - before - 1)));
            }
            before += here;
        }
        throw new IllegalArgumentException("rig " + number + " of " + rigs);
    }

    private List<Chosen> chosen(Cores.Core core, int place) {
        int left = place;
        if (core.builtIn() != null) {
            return left == 0 ? core.chosen() : with(core.chosen(), arrays.get(left - 1));
        }
        if (left-- == 0) {
            return core.chosen();
        }
        for (ChargeController controller : controllers) {
            List<Chosen> controlled = Cores.with(core.chosen(), controller);
            if (standsAlone(controller) && left-- == 0) {
                return controlled;
            }
            if (left < arrays.size()) {
                return with(controlled, arrays.get(left));
            }
            left -= arrays.size();
        }
        throw new IllegalStateException("place " + place);
    }

    Owned owned() {
        return owned;
    }

    List<Cores.Core> cores() {
        return cores;
    }

    List<ChargeController> controllers() {
        return controllers;
    }

    List<Array> arrays() {
        return arrays;
    }

    /** Cheapest first. */
    List<Array> arraysByPrice() {
        return byPrice;
    }

    long rigsOf(Cores.Core core) {
        if (core.builtIn() != null) {
            return 1 + arrays.size();
        }
        long all = 1;
        for (ChargeController controller : controllers) {
            all += rigsOf(controller);
        }
        return all;
    }

    /** How many rigs one core becomes with a separate controller. */
    long rigsOf(ChargeController controller) {
        return (standsAlone(controller) ? 1 : 0) + arrays.size();
    }

    static boolean standsAlone(ChargeController controller) {
        return !controller.outlets().isEmpty();
    }

    static List<Chosen> with(List<Chosen> chosen, @Nullable Array array) {
        if (array == null) {
            return chosen;
        }
        List<Chosen> more = new ArrayList<>(chosen);
        more.add(array.chosen());
        return more;
    }

    static Rig assembled(List<Chosen> chosen) {
        Assembly.Result result = Assembly.of(chosen);
        if (result.rig() == null) {
            throw new IllegalStateException("the grammar made no rig: " + result.faults());
        }
        return result.rig();
    }
}
