package tideover.app.report;

import java.util.Locale;
import java.util.function.ToDoubleFunction;
import tideover.engine.answer.JudgedStart;
import tideover.engine.answer.ProvenRig;
import tideover.engine.load.DayWindow;
import tideover.engine.load.Load;
import tideover.engine.rig.StartVerdict.Link;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.ObjectNode;

/** Every start of motors that may come, and what each link of the chain says to it. */
final class JsonStarts {
    private JsonStarts() {}

    static void put(ObjectNode rig, ProvenRig proven) {
        ArrayNode all = rig.putArray("start");
        for (JudgedStart start : proven.starts()) {
            put(all.addObject(), start);
        }
        rig.put(
                "hardest_start",
                proven.hardestStart().map(start -> start.event().words()).orElse(null));
        fillNeeded(rig, "fill_needed_25c_share", proven, JudgedStart::fillNeededWarm);
        fillNeeded(rig, "fill_needed_0c_share", proven, JudgedStart::fillNeededCold);
    }

    private static void put(ObjectNode node, JudgedStart start) {
        node.put("starting", start.event().words());
        ArrayNode beside = node.putArray("beside");
        start.event().beside().stream().map(Load::name).forEach(beside::add);
        ArrayNode when = node.putArray("when");
        for (DayWindow window : start.event().when()) {
            ObjectNode one = when.addObject();
            Json.number(one, "from_h", window.fromHour());
            Json.number(one, "to_h", window.toHour());
        }
        node.put("essential", start.event().essential());
        Json.number(node, "surge_va", start.event().surgeVa());
        Json.number(node, "from_the_store_w", start.event().dcW());
        Json.number(node, "lasts_s", start.event().seconds());
        node.put("holds_full_at_25c", start.verdict().holds());
        node.put("weakest", start.weakest().map(link -> link.kind().words()).orElse(null));
        Json.number(node, "left_at_the_inverter_v", start.verdict().endV());
        Json.number(node, "fill_needed_25c_share", start.fillNeededWarm());
        Json.number(node, "fill_needed_0c_share", start.fillNeededCold());
        ArrayNode links = node.putArray("links");
        for (Link link : start.verdict().links()) {
            ObjectNode one = links.addObject();
            one.put("link", link.kind().words());
            one.put("unit", link.unit());
            Json.number(one, "value", link.value());
            Json.number(one, "limit", link.limit());
            Json.number(one, "limit_to_value_ratio", link.ratio());
            one.put("limit_told", link.told());
            one.put("verdict", link.verdict().name().toLowerCase(Locale.ROOT));
        }
    }

    /** Of all starts the highest; null where there is none, or where one holds at no charge. */
    private static void fillNeeded(
            ObjectNode rig, String name, ProvenRig proven, ToDoubleFunction<JudgedStart> needed) {
        Json.number(
                rig, name, proven.starts().stream().mapToDouble(needed).max().orElse(Double.NaN));
    }
}
