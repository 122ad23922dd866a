package tideover.app.report;

import java.util.List;
import java.util.Locale;
import tideover.engine.answer.Way;
import tideover.engine.rig.Chosen;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.JsonNodeFactory;
import tools.jackson.databind.node.ObjectNode;

/** The ways side by side. A figure that does not apply or is not told is null. */
final class JsonWays {
    private JsonWays() {}

    static ArrayNode of(List<Way> ways, boolean counted) {
        ArrayNode all = JsonNodeFactory.instance.arrayNode();
        for (Way way : ways) {
            ObjectNode one = all.addObject();
            one.put("way", way.kind().name().toLowerCase(Locale.ROOT));
            one.put("meets_target", way.meets());
            Json.number(one, "share", way.share());
            ArrayNode parts = one.putArray("parts");
            for (Chosen chosen : way.chosen()) {
                ObjectNode part = parts.addObject();
                part.put("id", chosen.part().listing().id());
                part.put("name", chosen.part().listing().name());
                part.put("count", chosen.count());
                part.put("condition", chosen.part().listing().condition().name().toLowerCase(Locale.ROOT));
            }
            one.put("parts_cents", way.price().partsCents());
            JsonWiring.price(one, way.price(), counted);
            one.put("total_cents", way.price().totalCents());
            Way.Figures figures = way.figures();
            Json.number(one, "price_cents_per_kwh", figures.centsPerUsableKWh());
            Json.number(one, "standby_cents_per_year", figures.standbyCentsPerYear());
            Json.number(one, "mass_kg", figures.massKg());
            Json.number(one, "fuel_l", figures.fuelL());
            Json.number(one, "noise_dba", figures.noiseDbA());
            one.put("fumes", figures.fumes());
            Json.number(one, "without_power_s", figures.gapSeconds());
            Json.number(one, "expected_loss_cents", way.expectedLossCents());
            ArrayNode acts = one.putArray("somebody_must");
            figures.acts().forEach(act -> acts.add(act.words()));
        }
        return all;
    }
}
