package tideover.engine.wiring;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import tideover.engine.load.Load;
import tideover.engine.part.Battery;
import tideover.engine.part.ChargeController;
import tideover.engine.part.Charger;
import tideover.engine.part.Enclosure;
import tideover.engine.part.Inverter;
import tideover.engine.part.Outlet;
import tideover.engine.part.Part;
import tideover.engine.part.ReadyBox;
import tideover.engine.part.SocketBoard;
import tideover.engine.rig.Chosen;
import tideover.engine.rig.Rig;
import tideover.engine.rig.Sockets;

/**
 * The one-line diagram of a rig as a graph: what stands there, and each run of cable between two of them.
 *
 * @param nodes in the order in which current flows, sources first
 * @param edges in the same order
 */
public record OneLine(List<Node> nodes, List<Edge> edges) {
    public OneLine {
        nodes = List.copyOf(nodes);
        edges = List.copyOf(edges);
    }

    /** What a node stands for. */
    public enum Kind {
        PANELS,
        ENGINE,
        BATTERY,
        BARS,
        CONTROLLER,
        CHARGER,
        INVERTER,
        SOCKETS,
        ENCLOSURE,
        BOX,
        LOAD
    }

    /** @param id short and unique, such as "battery-2" */
    public record Node(String id, Kind kind, String words) {}

    /**
     * One pair of conductors.
     *
     * @param from id of the node at the end where protection sits
     * @param run  null for what brings its cable: a load, the charger of a box, an enclosure with leads
     */
    public record Edge(String from, String to, @Nullable WiredRun run) {}

    /** Of a rig with all that is plugged into it. */
    public static OneLine of(Build build, List<Load> loads) {
        Drawing drawing = new Drawing(build);
        drawing.parts();
        drawing.runs();
        drawing.chargerOfBox();
        drawing.leadsOfEnclosure();
        drawing.loads(loads);
        return new OneLine(new ArrayList<>(drawing.nodes.values()), drawing.edges);
    }

    private static final class Drawing {
        private static final String PANELS = "panels";
        private static final String BARS = "bars";
        private static final String ENGINE = "engine";

        private final Rig rig;
        private final Circuit circuit;
        private final Map<String, Node> nodes = new LinkedHashMap<>();
        private final List<Edge> edges = new ArrayList<>();
        private String source = "battery-1";

        Drawing(Build build) {
            rig = build.rig();
            circuit = build.circuit();
        }

        private void node(String id, Kind kind, String words) {
            nodes.put(id, new Node(id, kind, words));
        }

        void parts() {
            if (rig.panel() != null) {
                String inRow = rig.panelsInSeries() == 1 ? "" : ", " + rig.panelsInSeries() + " in a row";
                node(
                        PANELS,
                        Kind.PANELS,
                        rig.panelCount() + " x " + rig.panel().listing().name() + inRow);
            }
            if (circuit.of(Run.Kind.ENGINE) != null) {
                String name =
                        rig.engine() == null ? "engine" : rig.engine().listing().name();
                node(ENGINE, Kind.ENGINE, name + ", outdoors");
            }
            for (Chosen chosen : rig.chosen()) {
                part(chosen.part());
            }
        }

        private void part(Part part) {
            String name = part.listing().name();
            if (part instanceof Battery) {
                batteries(name);
            } else if (part instanceof ReadyBox) {
                node("box", Kind.BOX, name);
            } else if (part instanceof Enclosure) {
                node("enclosure", Kind.ENCLOSURE, name);
            } else if (part instanceof ChargeController) {
                node("controller", Kind.CONTROLLER, name);
            } else if (part instanceof Inverter) {
                node("inverter", Kind.INVERTER, name);
            } else if (part instanceof Charger) {
                node("charger", Kind.CHARGER, name);
            } else if (part instanceof SocketBoard) {
                node("sockets", Kind.SOCKETS, name);
            }
        }

        private void batteries(String name) {
            String inRow = rig.storesInSeries() == 1 ? "" : ", " + rig.storesInSeries() + " in a row";
            for (int row = 1; row <= rig.storeRows(); row++) {
                node("battery-" + row, Kind.BATTERY, name + inRow);
            }
            if (circuit.of(Run.Kind.LINK) != null || rig.storeRows() > 1) {
                node(BARS, Kind.BARS, "plus and minus bars");
                source = BARS;
            }
        }

        void runs() {
            for (WiredRun wired : circuit.runs()) {
                switch (wired.run().kind()) {
                    case LINK -> {
                        for (int row = 1; row <= rig.storeRows(); row++) {
                            edges.add(new Edge("battery-" + row, BARS, wired));
                        }
                    }
                    case SERIES -> {
                        for (int row = 1; row <= rig.storeRows(); row++) {
                            edges.add(new Edge("battery-" + row, "battery-" + row, wired));
                        }
                    }
                    case MAIN -> edges.add(new Edge(source, "enclosure", wired));
                    case INVERTER -> edges.add(new Edge(source, "inverter", wired));
                    case CONTROLLER -> edges.add(new Edge(source, "controller", wired));
                    case CHARGER -> edges.add(new Edge(source, "charger", wired));
                    case SOCKETS -> edges.add(new Edge(source, "sockets", wired));
                    case PANELS -> edges.add(new Edge(PANELS, controllerNode(), wired));
                    case ENGINE -> edges.add(new Edge(ENGINE, nodes.containsKey("charger") ? "charger" : "box", wired));
                    case CORD -> {} // drawn with its load
                }
            }
        }

        /** A charger beside a ready-made box feeds its input by the charger's own plug. */
        void chargerOfBox() {
            if (nodes.containsKey("box") && nodes.containsKey("charger")) {
                edges.add(new Edge("charger", "box", null));
            }
        }

        /** An enclosure that brings its leads needs no run of its own. */
        void leadsOfEnclosure() {
            if (nodes.containsKey("enclosure") && Runs.bringsLeads(rig)) {
                edges.add(new Edge(source, "enclosure", null));
            }
        }

        /** Built in, or by itself. */
        private String controllerNode() {
            return nodes.containsKey("controller") ? "controller" : nodes.containsKey("box") ? "box" : "enclosure";
        }

        void loads(List<Load> loads) {
            int number = 1;
            for (Sockets.Plugged plugged : Sockets.of(rig, loads).plugged()) {
                if (plugged.outlet() != null) {
                    String id = "load-" + number++;
                    String name = plugged.load().name();
                    node(id, Kind.LOAD, name);
                    edges.add(new Edge(holder(plugged.outlet()), id, cord(name)));
                }
            }
        }

        private @Nullable WiredRun cord(String load) {
            return circuit.runs().stream()
                    .filter(wired -> wired.run().kind() == Run.Kind.CORD
                            && wired.run().what().equals(load))
                    .findFirst()
                    .orElse(null);
        }

        /** The node of the part on which an outlet sits. */
        private String holder(Outlet outlet) {
            for (Chosen chosen : rig.chosen()) {
                Part part = chosen.part();
                if (part instanceof ReadyBox box && has(box.outlets(), outlet)) {
                    return "box";
                }
                if (part instanceof Enclosure enclosure && has(enclosure.outlets(), outlet)) {
                    return "enclosure";
                }
                if (part instanceof Inverter inverter && has(inverter.outlets(), outlet)) {
                    return "inverter";
                }
                if (part instanceof ChargeController controller && has(controller.outlets(), outlet)) {
                    return "controller";
                }
                if (part instanceof SocketBoard board && has(board.outlets(), outlet)) {
                    return "sockets";
                }
            }
            throw new IllegalStateException("an outlet of no part: " + outlet);
        }

        /** By identity: two parts may have outlets alike. */
        private static boolean has(List<Outlet> outlets, Outlet one) {
            return outlets.stream().anyMatch(outlet -> outlet == one);
        }
    }
}
