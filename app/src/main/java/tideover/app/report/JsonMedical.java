package tideover.app.report;

import org.jspecify.annotations.Nullable;
import tideover.engine.answer.Answer;
import tideover.engine.answer.MedicalNote;
import tideover.engine.answer.WorstCase;
import tideover.engine.load.Load;
import tideover.engine.load.Medical;
import tideover.engine.proof.CarriedShare;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.ObjectNode;

/** The loads that somebody's health hangs on, of which no target is ever called met. */
final class JsonMedical {
    private JsonMedical() {}

    static void put(ObjectNode root, Answer answer) {
        root.put("someones_health_hangs_on_it", answer.medical());
        if (!answer.medical()) {
            return;
        }
        root.put("nothing_walked_failed", answer.meets());
        ArrayNode why = root.putArray("why_not");
        MedicalWords.failings(answer).forEach(why::add);
        root.put("medical_mind", MedicalNote.MIND);
        ArrayNode loads = root.putArray("medical_loads");
        if (answer.rig() != null) {
            for (MedicalNote note : answer.rig().medical()) {
                ObjectNode node = loads.addObject();
                arrangement(node, note.load(), note.medical());
                onRig(node, note);
            }
            return;
        }
        for (Load load : answer.question().loads()) {
            Medical medical = load.nature().medical();
            if (medical != null) {
                arrangement(loads.addObject(), load.name(), medical);
            }
        }
    }

    private static void arrangement(ObjectNode node, String name, Medical medical) {
        node.put("name", name);
        Json.number(node, "person_bridges_s", medical.bridgeSeconds());
        node.put("alarm", medical.alarm());
        node.put("who_acts", medical.whoActs());
        node.put("always_there_and_able", medical.ableToAct());
        node.put("second_plan", medical.secondPlan());
    }

    private static void onRig(ObjectNode node, MedicalNote note) {
        node.put("has_an_outlet", note.fed());
        Json.number(node, "without_power_s", note.gap().seconds());
        node.put("gets_power_back", note.gap().way().words());
        node.put("without_power_basis", note.gap().way().basis().words());
        node.put("without_power_source", note.gap().way().source());
        node.put("verdict", note.verdict());
        WorstCase worst = note.worst();
        ObjectNode found = node.putObject("worst_found");
        found.put("weather_years", worst.years());
        found.put("asked_h", worst.askedHours());
        found.put("cap_h", worst.capHours());
        Json.number(found, "shortest_h", worst.shortestHours());
        Json.number(found, "shortest_storm_start_h", worst.stormHours());
        counts(found, "every_start", worst.outages());
        counts(found, "darkest_days", worst.darkest());
        counts(found, "coldest_days", worst.coldest());
        counts(found, "confirming_years", worst.confirmed());
        counts(found, "confirming_years_storm_starts", worst.stormConfirmed());
    }

    /** Null of what was not walked. */
    private static void counts(ObjectNode node, String name, @Nullable CarriedShare share) {
        if (share == null) {
            node.putNull(name);
            return;
        }
        ObjectNode one = node.putObject(name);
        one.put("outages", share.outages());
        one.put("not_carried", WorstCase.failed(share));
    }
}
