package tideover.app.report;

import java.util.Locale;
import org.jspecify.annotations.Nullable;
import tideover.engine.answer.ProvenRig;
import tideover.engine.answer.StandbyCost;
import tideover.engine.part.PlainStore;
import tideover.engine.part.RatedStore;
import tideover.engine.proof.Proof;
import tools.jackson.databind.node.ObjectNode;

/** What holds the energy, and what it costs over the years. */
final class JsonBattery {
    private JsonBattery() {}

    static void put(ObjectNode rig, ProvenRig proven) {
        ObjectNode node = rig.putObject("battery");
        Proof proof = proven.proof();
        if (proven.rig().store() instanceof RatedStore store) {
            rated(node, store, proof);
        } else {
            plain(node, (PlainStore) proven.rig().store());
        }
        Json.number(node, "lowest_in_asked_months_degc", proof.battery().lowestDegC());
        Json.number(node, "highest_in_asked_months_degc", proof.battery().highestDegC());
        cost(node, proven.cost());
    }

    private static void plain(ObjectNode node, PlainStore store) {
        node.put("chemistry", "plain");
        Json.number(node, "nominal_v", store.nominalV());
        Json.number(node, "usable_wh", store.usableWh());
        Json.number(node, "charge_efficiency_share", store.chargeEfficiency());
        Json.number(node, "discharge_efficiency_share", store.dischargeEfficiency());
        Json.number(node, "max_charge_a", store.maxChargeA());
        Json.number(node, "max_discharge_a", store.maxDischargeA());
    }

    private static void rated(ObjectNode node, RatedStore store, Proof proof) {
        node.put("chemistry", store.chemistry().words());
        Json.number(node, "nominal_v", store.nominalV());
        Json.number(node, "rated_ah", store.capacity().ratedAh());
        Json.number(node, "rated_over_h", store.capacity().ratedHours());
        Json.number(node, "full_wh", proof.worst().capacityWh());
        Json.number(node, "usable_wh", proof.figures().capacityWh());
        Json.number(node, "depth_share", store.depth());
        Json.number(node, "label_worth_least_share", store.worth().least());
        Json.number(node, "label_worth_likely_share", store.worth().likely());
        Json.number(node, "inner_ohm", BatteryWords.innerOhm(store));
        node.put("inner_ohm_is_usual", Double.isNaN(store.innerOhm()));
        Json.number(node, "walked_with_inner_ohm", store.ohm());
        Json.number(node, "max_charge_a", store.maxChargeA());
        Json.number(node, "max_discharge_a", store.maxDischargeA());
        node.put("cold_lock_out", store.guard().coldLockOut().name().toLowerCase(Locale.ROOT));
        Json.number(node, "heater_w", store.heater().watts());
    }

    private static void cost(ObjectNode node, @Nullable StandbyCost cost) {
        if (cost == null) {
            node.putNull("cost_over_the_years");
            return;
        }
        ObjectNode one = node.putObject("cost_over_the_years");
        one.put("basis", BatteryWords.COST_BASIS.words());
        one.put("price_cents", cost.priceCents());
        Json.number(one, "mean_room_degc", cost.meanDegC());
        Json.number(one, "standby_years", cost.standbyYears());
        Json.number(one, "standby_cents_per_year", cost.centsPerStandbyYear());
        Json.number(one, "given_per_cycle_kwh", cost.kwhPerCycle());
        Json.number(one, "cycled_daily_years", cost.dailyYears());
        Json.number(one, "cycled_daily_cents_per_kwh", cost.centsPerKwh());
        one.put("all_new", cost.allNew());
    }
}
