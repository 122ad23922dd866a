package tideover.app.report;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import tideover.engine.part.Cable;
import tideover.engine.part.Cord;
import tideover.engine.quantity.PlainNumber;
import tideover.engine.wiring.OneLine;
import tideover.engine.wiring.Protection;
import tideover.engine.wiring.Run;
import tideover.engine.wiring.WiredRun;

/** The one-line diagram as branches, from the panels on where there are any, each node once. */
final class OneLineTree {
    private static final List<OneLine.Kind> FROM_FIRST = List.of(
            OneLine.Kind.PANELS, OneLine.Kind.BARS, OneLine.Kind.BATTERY, OneLine.Kind.BOX, OneLine.Kind.ENGINE);

    private final OneLine graph;
    private final List<WiredRun> runs;
    private final Map<String, OneLine.Node> nodes = new LinkedHashMap<>();
    private final Set<String> told = new LinkedHashSet<>();

    private OneLineTree(OneLine graph, List<WiredRun> runs) {
        this.graph = graph;
        this.runs = runs;
        graph.nodes().forEach(node -> nodes.put(node.id(), node));
    }

    /** One for each part of the diagram that hangs together. */
    static List<Page.Branch> of(OneLine graph, List<WiredRun> runs) {
        OneLineTree tree = new OneLineTree(graph, runs);
        List<Page.Branch> roots = new ArrayList<>();
        for (OneLine.Kind kind : FROM_FIRST) {
            tree.nodes.values().stream()
                    .filter(node -> node.kind() == kind && !tree.told.contains(node.id()))
                    .toList()
                    .forEach(node -> tree.root(node, roots));
        }
        graph.nodes().forEach(node -> tree.root(node, roots));
        return roots;
    }

    private void root(OneLine.Node node, List<Page.Branch> roots) {
        if (!told.contains(node.id())) {
            roots.add(branch(node, "", 1));
        }
    }

    private Page.Branch branch(OneLine.Node node, String by, int alike) {
        told.add(node.id());
        // Rows of batteries alike on runs alike are one branch.
        Map<List<Object>, List<OneLine.Node>> next = new LinkedHashMap<>();
        Map<List<Object>, OneLine.Edge> ways = new LinkedHashMap<>();
        for (OneLine.Edge edge : graph.edges()) {
            OneLine.Node other = otherEnd(edge, node);
            if (other == null || told.contains(other.id())) {
                continue;
            }
            boolean row = other.kind() == OneLine.Kind.BATTERY;
            List<Object> key = List.of(row ? OneLine.Kind.BATTERY : other.id(), other.words());
            next.computeIfAbsent(key, one -> new ArrayList<>()).add(other);
            ways.putIfAbsent(key, edge);
        }
        List<Page.Branch> branches = new ArrayList<>();
        next.forEach((key, alikes) -> {
            alikes.forEach(one -> told.add(one.id()));
            OneLine.Edge way = Objects.requireNonNull(ways.get(key));
            branches.add(branch(alikes.get(0), by(way), alikes.size()));
        });
        return new Page.Branch((alike > 1 ? alike + " x " : "") + node.words() + row(node), by, branches);
    }

    private OneLine.@Nullable Node otherEnd(OneLine.Edge edge, OneLine.Node node) {
        if (edge.from().equals(edge.to())) {
            return null;
        }
        return edge.from().equals(node.id())
                ? nodes.get(edge.to())
                : edge.to().equals(node.id()) ? nodes.get(edge.from()) : null;
    }

    /** Batteries in a row are one node; the run between them starts and ends there. */
    private String row(OneLine.Node node) {
        for (OneLine.Edge edge : graph.edges()) {
            if (edge.from().equals(node.id()) && edge.to().equals(node.id()) && edge.run() != null) {
                return " (run " + number(edge.run()) + " from each to the next)";
            }
        }
        return "";
    }

    private String by(OneLine.Edge edge) {
        WiredRun wired = edge.run();
        if (wired == null) {
            return kindOf(edge.to()) == OneLine.Kind.LOAD ? "own cord" : "own plug";
        }
        String conductor = wired.conductor() instanceof Cord
                ? "cord " + wired.size().words()
                : wired.conductor() instanceof Cable
                        ? wired.size().words()
                        : "leads " + wired.size().words();
        String each = wired.run().kind() == Run.Kind.LINK ? "each " : "";
        String by = "run " + number(wired) + ", " + each + conductor;
        Protection protection = wired.protection();
        return protection == null
                ? by
                : by + ", " + PlainNumber.of(protection.ratedA()) + " A "
                        + (protection.isBreaker() ? "breaker" : "fuse");
    }

    private OneLine.@Nullable Kind kindOf(String id) {
        OneLine.Node node = nodes.get(id);
        return node == null ? null : node.kind();
    }

    private int number(WiredRun wired) {
        return WireSchedule.number(runs, wired);
    }
}
