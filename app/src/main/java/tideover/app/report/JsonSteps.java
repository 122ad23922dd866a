package tideover.app.report;

import java.util.Locale;
import org.jspecify.annotations.Nullable;
import tideover.engine.answer.Steps;
import tideover.engine.rig.Chosen;
import tideover.engine.wiring.Price;
import tools.jackson.databind.json.JsonMapper;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.JsonNodeFactory;
import tools.jackson.databind.node.ObjectNode;

/** Buying in steps as one JSON document; names as in {@link JsonAnswer}. */
public final class JsonSteps {
    private static final JsonNodeFactory NODES = JsonNodeFactory.instance;

    private JsonSteps() {}

    public static String of(Steps steps, String version) {
        ObjectNode root = NODES.objectNode();
        root.put("program", "tideover");
        root.put("version", version);
        root.put("seed", steps.options().seed());
        root.put("weather_years", steps.years());
        root.put("confirm_seed", steps.options().confirmSeed());
        root.put("confirm_weather_years", steps.options().confirmYears());
        Json.number(root, "step_minutes", 60.0 / steps.options().stepsPerHour());
        root.put("weather_source", steps.weather());
        root.put("answer", StepsWords.sentence(steps));
        root.put("currency", steps.question().currency());
        root.put("now_cents", steps.nowCents());
        root.put("later_cents", steps.laterCents());
        if (steps.medical()) {
            root.putNull("target_first_met");
        } else {
            root.put("target_first_met", steps.firstMet().name().toLowerCase(Locale.ROOT));
        }
        root.set("first_step", step(steps.first(), null));
        root.set("second_step", step(steps.second(), steps.first()));
        Steps.Whole whole = steps.together();
        if (whole == null) {
            root.putNull("in_one_step");
        } else {
            ObjectNode one = root.putObject("in_one_step");
            one.put("id", whole.rig().rig().id());
            one.put("rig", whole.rig().rig().words());
            one.put("total_cents", whole.rig().price().totalCents());
            one.set("carried_share", JsonAnswer.share(whole.share()));
            one.set(
                    "carried_share_confirmed",
                    whole.confirmed() == null ? NODES.nullNode() : JsonAnswer.share(whole.confirmed()));
        }
        Json.number(root, "lost_to_steps_share", steps.lostToSteps());
        root.put("how_reckoned", StepsWords.OWNED);
        ArrayNode cautions = root.putArray("cautions");
        steps.cautions().forEach(cautions::add);
        return JsonMapper.builder().build().writerWithDefaultPrettyPrinter().writeValueAsString(root) + "\n";
    }

    private static tools.jackson.databind.JsonNode step(Steps.@Nullable Step step, Steps.@Nullable Step before) {
        if (step == null) {
            return NODES.nullNode();
        }
        ObjectNode node = NODES.objectNode();
        node.put("id", step.rig().rig().id());
        ArrayNode added = node.putArray("parts_added");
        for (Chosen chosen : StepsWords.added(step, before)) {
            ObjectNode one = added.addObject();
            one.put("id", chosen.part().listing().id());
            one.put("name", chosen.part().listing().name());
            one.put("count", chosen.count());
        }
        Price paid = step.paid();
        ObjectNode price = node.putObject("paid");
        price.put("parts_cents", paid.partsCents());
        price.put("small_parts_cents", paid.smallPartsCents());
        price.put("tools_cents", paid.toolsCents());
        price.put("hard_wired_cents", paid.hardWiredCents());
        price.put("tax_cents", paid.taxCents());
        price.put("shipping_cents", paid.shippingCents());
        price.put("total_cents", paid.totalCents());
        Json.number(node, "mass_kg", step.rig().rig().massKg());
        node.set("carried_share", JsonAnswer.share(step.rig().proof().share()));
        node.set(
                "carried_share_confirmed",
                step.rig().confirmed() == null
                        ? NODES.nullNode()
                        : JsonAnswer.share(step.rig().confirmed()));
        Json.number(node, "worst_h", step.rig().proof().worstHours());
        Json.number(node, "median_h", step.rig().proof().medianHours());
        node.put("binds", Words.binds(step.rig().proof()));
        return node;
    }
}
