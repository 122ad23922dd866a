package tideover.app.report;

import java.util.List;
import tideover.engine.answer.Answer;
import tideover.engine.answer.ProvenRig;
import tideover.engine.answer.Question;
import tideover.engine.load.ColdLoad;
import tideover.engine.load.HeatLoad;
import tideover.engine.load.Load;
import tideover.engine.load.PitLoad;
import tideover.engine.outage.Storm;
import tideover.engine.proof.Doubts;
import tideover.engine.proof.Lift;
import tideover.engine.proof.Trace;
import tideover.engine.proof.TraceStep;
import tideover.engine.why.MarginNote;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.ObjectNode;

/** What is kept, what storms do, what costs nothing and what is not known. */
final class JsonKept {
    private JsonKept() {}

    /** What storms do beside taking the grid. */
    static void storm(ObjectNode outage, Question question) {
        Storm storm = question.outage().storm();
        if (storm == null) {
            outage.putNull("storm");
            return;
        }
        ObjectNode node = outage.putObject("storm");
        node.put("panels_stowed_h", storm.panelsStowedHours());
        node.put("known_a_day_ahead", storm.forecast());
    }

    /** What a load owes and keeps, beside what every load has. */
    static void load(ObjectNode node, Load load, List<MarginNote> notes) {
        node.put("known_from", KeptWords.known(load, notes));
        if (load instanceof ColdLoad cold) {
            node.put("box", cold.box().kind().words());
            node.put("duty", cold.duty().words());
            Json.number(node, "agencies_allow_h", cold.agencyHours());
            Json.number(node, "set_to_degc", cold.box().setDegC());
            Json.number(node, "cooled_before_a_storm_to_degc", cold.chilledToDegC());
            Json.number(node, "holds_l", cold.box().litres());
            Json.number(node, "food_kg", cold.box().food().kg());
        } else if (load instanceof PitLoad pit) {
            Json.number(node, "pump_on_at_l", pit.pit().onL());
            Json.number(node, "brim_l", pit.pit().brimL());
            Json.number(node, "pumps_l_per_h", pit.pumpedLPerH());
            Json.number(node, "usual_inflow_l_per_h", pit.inflow().usualLPerH());
            Json.number(node, "storm_peak_l_per_h", pit.inflow().peakLPerH());
            Json.number(node, "storm_peak_after_h", pit.inflow().peakHour());
            Json.number(node, "storm_ebbs_within_h", pit.inflow().ebbHours());
        } else if (load instanceof HeatLoad heat) {
            Json.number(node, "set_to_degc", heat.home().setDegC());
            Json.number(node, "cools_with_h", heat.home().tauHours());
        }
    }

    /** Beside a rig's proof. */
    static void proven(ObjectNode node, Answer answer, ProvenRig rig) {
        Json.number(node, "nothing_bought_share", rig.proof().bareShare());
        node.put("nothing_bought", KeptWords.bare(answer.question(), rig.proof()));
        node.put("storm", KeptWords.storm(answer, rig.proof()));
        ArrayNode habits = node.putArray("for_nothing");
        for (Lift habit : rig.proof().habits()) {
            ObjectNode one = habits.addObject();
            one.put("what", KeptWords.habit(habit));
            Json.number(one, "share_gain", habit.shareGain());
            Json.number(one, "mean_hours_gain_h", habit.meanHoursGain());
            one.put("counted_on_storm_starts_alone", KeptWords.onlyInStorm(habit));
        }
        doubts(node.putObject("not_known"), rig.doubts());
    }

    private static void doubts(ObjectNode node, Doubts doubts) {
        Json.number(node, "low_share", doubts.low());
        Json.number(node, "high_share", doubts.high());
        ArrayNode ranked = node.putArray("measure_first");
        for (Doubts.Effect effect : doubts.ranked()) {
            ObjectNode one = ranked.addObject();
            one.put("figure", effect.doubt().what());
            one.put("load", effect.doubt().load());
            Json.number(one, "least_ratio", effect.doubt().leastTimes());
            Json.number(one, "most_ratio", effect.doubt().mostTimes());
            Json.number(one, "at_least_share", effect.shareAtLeast());
            Json.number(one, "at_most_share", effect.shareAtMost());
            Json.number(one, "hours_between_h", effect.hoursBetween());
            one.put("how", effect.doubt().measure());
        }
    }

    /** What switches itself in a walked outage, step by step. */
    static void trace(ObjectNode node, Trace trace) {
        ArrayNode all = node.putArray("kept");
        List<KeptFate> fates = KeptFate.of(trace);
        for (int number = 0; number < fates.size(); number++) {
            KeptFate fate = fates.get(number);
            ObjectNode one = all.addObject();
            boolean pit = fate.load() instanceof PitLoad;
            one.put("name", fate.load().name());
            one.put("words", fate.words());
            one.put("kept_to_the_end", fate.isKept());
            Json.number(one, "kept_until_h", fate.keptH());
            Json.number(one, pit ? "least_l" : "coldest_degc", fate.least());
            Json.number(one, pit ? "most_l" : "warmest_degc", fate.most());
            Json.number(one, "longest_without_power_h", fate.stretchDarkH());
            Json.number(one, "all_without_power_h", fate.allDarkH());
            ArrayNode kept = one.putArray(pit ? "water_l" : "kept_degc");
            ArrayNode air = fate.load() instanceof ColdLoad ? one.putArray("air_degc") : null;
            ArrayNode plug = one.putArray("plug_w");
            ArrayNode dark = one.putArray("without_power_h");
            ArrayNode whole = one.putArray("need_kept");
            for (TraceStep step : trace.steps()) {
                TraceStep.KeptStep now = step.kept().get(number);
                kept.add(Json.cut(now.kept()));
                if (air != null) {
                    air.add(Json.cut(now.airDegC()));
                }
                plug.add(Json.cut(now.plugW()));
                dark.add(Json.cut(now.darkH()));
                whole.add(now.whole());
            }
        }
    }
}
