package tideover.app.report;

import java.util.List;
import java.util.Locale;
import org.jspecify.annotations.Nullable;
import tideover.engine.load.Load;
import tideover.engine.part.Cable;
import tideover.engine.part.Listing;
import tideover.engine.part.SmallPart;
import tideover.engine.search.OfRoute;
import tideover.engine.search.Rated;
import tideover.engine.wiring.Build;
import tideover.engine.wiring.OneLine;
import tideover.engine.wiring.PartsList;
import tideover.engine.wiring.Price;
import tideover.engine.wiring.Protection;
import tideover.engine.wiring.Run;
import tideover.engine.wiring.WiredRun;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.JsonNodeFactory;
import tools.jackson.databind.node.ObjectNode;

/** How a rig is wired, and what that takes. Runs are numbered from 1 as in the other forms. */
final class JsonWiring {
    private JsonWiring() {}

    /** The cheapest of each way of building, with what its price is made of. */
    static ArrayNode byRoute(List<OfRoute> ways, boolean counted) {
        ArrayNode all = JsonNodeFactory.instance.arrayNode();
        for (OfRoute way : ways) {
            Rated rated = way.rated();
            ObjectNode one = all.addObject();
            one.put("meets_target", way.meets());
            one.put("way", rated.rig().route().name().toLowerCase(Locale.ROOT));
            one.put("parts_cents", rated.price().partsCents());
            price(one, rated.price(), counted);
            JsonAnswer.rated(one, rated);
        }
        return all;
    }

    /** What stands beside the main parts: counted, or the allowance. */
    static void price(ObjectNode node, Price price, boolean counted) {
        if (counted) {
            node.put("small_parts_cents", price.smallPartsCents());
            node.put("tools_cents", price.toolsCents());
        } else {
            node.put("small_parts_allowance_cents", price.smallPartsCents());
        }
        node.put("hard_wired_loads_allowance_cents", price.hardWiredCents());
        if (price.taxCents() > 0) {
            node.put("tax_cents", price.taxCents());
        }
        if (price.shippingCents() > 0) {
            node.put("shipping_cents", price.shippingCents());
        }
    }

    /** What each costs, and of whom and how many where that is worth telling. */
    static void bought(ObjectNode node, Listing listing, int count) {
        int bought = listing.boughtFor(count);
        if (bought != count) {
            node.put("bought_count", bought);
        }
        node.put("price_each_cents", listing.eachCents(bought));
        if (!listing.selling().seller().isEmpty()) {
            node.put("seller", listing.selling().seller());
        }
        if (!listing.selling().readAt().isEmpty()) {
            node.put("price_read_at", listing.selling().readAt());
        }
    }

    static void put(ObjectNode rig, Build build, List<Load> loads) {
        ObjectNode node = rig.putObject("wiring");
        node.put("small_parts_counted", build.counted());
        Json.number(node, "lead_ohm", build.circuit().leads().ohm());
        Json.number(node, "sun_loss_pct", 100 * build.circuit().leads().sunLoss());
        List<WiredRun> runs = build.circuit().runs();
        ArrayNode all = node.putArray("runs");
        for (WiredRun wired : runs) {
            run(all.addObject(), build, wired);
        }
        oneLine(node.putObject("one_line"), OneLine.of(build, loads), runs);
        ArrayNode lines = node.putArray("small_parts");
        build.partsList().lines().forEach(line -> line(lines.addObject(), line, build.counted()));
        ArrayNode missing = node.putArray("missing_small_parts");
        build.partsList().missing().forEach((what, pieces) -> {
            ObjectNode one = missing.addObject();
            one.put("what", what);
            one.put("pieces", pieces);
        });
    }

    private static void run(ObjectNode node, Build build, WiredRun wired) {
        Run run = wired.run();
        node.put("number", WireSchedule.number(build.circuit().runs(), wired));
        node.put("kind", run.kind().name().toLowerCase(Locale.ROOT));
        node.put("words", WireSchedule.words(build, run));
        node.put("count", run.count());
        Json.number(node, "one_way_m", run.oneWayM());
        Json.number(node, "system_v", run.systemV());
        Json.number(node, "must_part_v", run.mostV());
        Json.number(node, "lasting_a", run.amps().lasting());
        Json.number(node, "design_a", run.amps().design());
        Json.number(node, "moment_a", run.amps().moment());
        Json.number(node, "fault_a", run.amps().fault());
        ObjectNode conductor = part(node, "conductor", wired.conductor());
        conductor.put("size", wired.size().words());
        Json.number(conductor, "each_m", WireSchedule.eachM(wired));
        conductor.put("pieces", wired.pieces());
        Json.number(node, "allowed_a", wired.allowedA());
        protection(node, wired.protection(), build.counted());
        if (wired.parting() == null) {
            node.putNull("parting");
        } else {
            part(node, "parting", wired.parting());
        }
        Json.number(node, "drop_v", wired.dropV());
        Json.number(node, "drop_pct", 100 * wired.dropShare());
        Json.number(node, "sag_v", wired.sagV());
        Json.number(node, "ohm", wired.ohm());
    }

    /** What a standard size can part is nobody's figure: it is to be bought so that it can. */
    private static void protection(ObjectNode node, @Nullable Protection protection, boolean counted) {
        if (protection == null) {
            node.putNull("protection");
            return;
        }
        ObjectNode one = part(node, "protection", protection.device());
        one.put("words", protection.words());
        one.put(
                "holder_id",
                protection.holder() == null
                        ? null
                        : protection.holder().listing().id());
        Json.number(one, "rated_a", protection.ratedA());
        Json.number(one, "most_dc_v", counted ? protection.mostDcV() : Double.NaN);
        Json.number(one, "interrupting_a", counted ? protection.interruptingA() : Double.NaN);
    }

    private static ObjectNode part(ObjectNode node, String name, SmallPart part) {
        ObjectNode one = node.putObject(name);
        one.put("id", part.listing().id());
        one.put("kind", part.kind());
        one.put("name", part.listing().name());
        return one;
    }

    private static void oneLine(ObjectNode node, OneLine graph, List<WiredRun> runs) {
        ArrayNode nodes = node.putArray("nodes");
        for (OneLine.Node one : graph.nodes()) {
            ObjectNode told = nodes.addObject();
            told.put("id", one.id());
            told.put("kind", one.kind().name().toLowerCase(Locale.ROOT));
            told.put("words", one.words());
        }
        ArrayNode edges = node.putArray("edges");
        for (OneLine.Edge edge : graph.edges()) {
            ObjectNode told = edges.addObject();
            told.put("from", edge.from());
            told.put("to", edge.to());
            if (edge.run() == null) {
                told.putNull("run_number");
            } else {
                told.put("run_number", WireSchedule.number(runs, edge.run()));
            }
        }
    }

    private static void line(ObjectNode node, PartsList.Line line, boolean counted) {
        node.put("id", line.part().listing().id());
        node.put("kind", line.part().kind());
        node.put("name", line.part().listing().name());
        node.put("tool", line.isTool());
        Json.number(node, line.part() instanceof Cable ? "needed_m" : "needed_pieces", line.needed());
        if (counted) {
            node.put("owned", line.owned());
            node.put("bought_packs", line.bought());
            bought(node, line.part().listing(), line.bought());
            node.put("price_cents", line.cents());
            node.put("priced_on", line.part().listing().pricedOn().toString());
        }
    }
}
