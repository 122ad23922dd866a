package tideover.app.report;

import java.util.List;
import org.jspecify.annotations.Nullable;
import tideover.engine.answer.Answer;
import tideover.engine.answer.Beside;
import tideover.engine.answer.Choice;
import tideover.engine.answer.NextStep;
import tideover.engine.answer.Steadiness;
import tideover.engine.proof.CarriedShare;
import tideover.engine.search.Rated;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.ObjectNode;

/** What stands beside the winner, as JSON. */
final class JsonBeside {
    private JsonBeside() {}

    static void put(ObjectNode root, Answer answer) {
        Beside beside = answer.beside();
        ObjectNode node = root.putObject("beside");
        choice(node, beside.choice());
        steadiness(node, beside.steadiness());
        lean(node, beside.lean());
        step(node, beside.nextStep());
        List<Rated> massFront = beside.massFront();
        if (massFront != null) {
            ArrayNode front = node.putArray("mass_share_front");
            massFront.forEach(rated -> JsonAnswer.rated(front.addObject(), rated));
        }
    }

    private static void choice(ObjectNode node, @Nullable Choice choice) {
        if (choice == null) {
            node.putNull("safer");
            node.putNull("lighter");
            return;
        }
        picked(node.putObject("safer"), choice.safer(), choice.saferWhy(), choice.winnerIsSafer());
        picked(node.putObject("lighter"), choice.lighter(), choice.lighterWhy(), choice.winnerIsLighter());
    }

    private static void picked(ObjectNode node, Rated rated, String why, boolean winner) {
        JsonAnswer.rated(node, rated);
        node.put("why", why);
        node.put("is_the_winner", winner);
    }

    private static void steadiness(ObjectNode node, @Nullable Steadiness steadiness) {
        if (steadiness == null) {
            node.putNull("other_draws_of_weather");
            return;
        }
        ObjectNode all = node.putObject("other_draws_of_weather");
        all.put("weather_years", steadiness.years());
        all.put("rigs_asked", steadiness.asked());
        ArrayNode draws = all.putArray("draws");
        for (Steadiness.Draw draw : steadiness.draws()) {
            ObjectNode one = draws.addObject();
            one.put("seed", draw.seed());
            Rated cheapest = draw.cheapest();
            if (cheapest == null) {
                one.putNull("cheapest_of_those");
            } else {
                JsonAnswer.rated(one.putObject("cheapest_of_those"), cheapest);
            }
        }
        ArrayNode winners = all.putArray("wins");
        for (Rated winner : steadiness.winners()) {
            ObjectNode one = winners.addObject();
            one.put("number", winner.number());
            one.put("id", winner.rig().id());
            one.put("draws_won", steadiness.wins(winner));
        }
        all.put("draws_without", steadiness.without());
    }

    private static void lean(ObjectNode node, @Nullable CarriedShare lean) {
        if (lean == null) {
            node.putNull("with_less_sun_and_store");
            return;
        }
        ObjectNode one = node.putObject("with_less_sun_and_store");
        Json.number(one, "sun_left_share", Beside.LEAN_TIMES);
        Json.number(one, "store_left_share", Beside.LEAN_TIMES);
        one.set("carried_share", JsonAnswer.share(lean));
    }

    private static void step(ObjectNode node, @Nullable NextStep step) {
        if (step == null) {
            node.putNull("next_step");
            return;
        }
        ObjectNode one = node.putObject("next_step");
        one.put("from_id", step.from().id());
        one.put("from_cents", step.fromCents());
        Json.number(one, "from_share", step.fromShare());
        Json.number(one, "goal_share", step.goalShare());
        one.put("changes_tried", step.tried());
        one.put("followed_to_the_end", step.followed());
        NextStep.Change found = step.found();
        if (found == null) {
            one.putNull("change");
            return;
        }
        ObjectNode change = one.putObject("change");
        change.put("words", found.words());
        change.put("id", found.rig().id());
        change.put("total_cents", found.price().totalCents());
        change.put("more_cents", found.price().totalCents() - step.fromCents());
        Json.number(change, "share", found.share());
        change.put("over_budget", found.overBudget());
    }
}
