package tideover.app.report;

import java.util.List;
import tideover.engine.load.Start;
import tideover.engine.load.Usual;
import tools.jackson.databind.json.JsonMapper;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.JsonNodeFactory;
import tools.jackson.databind.node.ObjectNode;

/** Usual loads as one JSON document; field names carry their unit. */
public final class JsonLoads {
    private JsonLoads() {}

    public static String of(List<Usual> loads) {
        ObjectNode root = JsonNodeFactory.instance.objectNode();
        ArrayNode all = root.putArray("usual_loads");
        for (Usual usual : loads) {
            ObjectNode one = all.addObject();
            one.put("word", usual.word());
            ArrayNode others = one.putArray("also_called");
            usual.alsoCalled().forEach(others::add);
            one.put("least_w", usual.leastW());
            one.put("usual_w", usual.usualW());
            one.put("most_w", usual.mostW());
            one.put("reckoned_w", usual.reckonedW());
            one.put("power_factor_ratio", usual.powerFactor());
            Start start = usual.start();
            if (start == null) {
                one.putNull("start");
            } else {
                ObjectNode first = one.putObject("start");
                Json.number(first, "start_va", start.va(usual.usualVa()));
                first.put("power_factor_ratio", start.powerFactor());
                first.put("lasts_s", start.seconds());
            }
            one.put("needs_sine_wave", usual.needsSine());
            one.put("hard_wired", usual.hardWired());
            one.put("may_sense_flame", usual.sensesFlame());
            one.put("health_may_hang_on_it", usual.medical());
            one.put("runs", usual.hours());
            one.put("basis", usual.basis().words());
            one.put("source", usual.source());
            one.put("measure", usual.measure());
            ArrayNode ask = one.putArray("ask");
            usual.ask().forEach(ask::add);
        }
        return JsonMapper.builder().build().writerWithDefaultPrettyPrinter().writeValueAsString(root) + "\n";
    }
}
