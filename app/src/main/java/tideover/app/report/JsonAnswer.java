package tideover.app.report;

import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.function.ToDoubleFunction;
import tideover.engine.answer.Answer;
import tideover.engine.answer.ProvenRig;
import tideover.engine.answer.Question;
import tideover.engine.load.Load;
import tideover.engine.outage.Outage;
import tideover.engine.proof.CarriedShare;
import tideover.engine.proof.Ending;
import tideover.engine.proof.Ledger;
import tideover.engine.proof.Lift;
import tideover.engine.proof.Proof;
import tideover.engine.proof.StormProof;
import tideover.engine.proof.TideLine;
import tideover.engine.proof.Trace;
import tideover.engine.proof.TraceStep;
import tideover.engine.quantity.ModelYear;
import tideover.engine.quantity.Series;
import tideover.engine.rig.Chosen;
import tideover.engine.search.Rated;
import tideover.engine.search.Shortlist;
import tideover.engine.why.Finding;
import tideover.engine.why.MarginNote;
import tools.jackson.databind.json.JsonMapper;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.JsonNodeFactory;
import tools.jackson.databind.node.ObjectNode;

/**
 * An answer as one JSON document. Field names carry their unit; figures are cut to ten digits, so that the last bits of
 * an arithmetic do not show; what does not change a figure, such as the number of threads, is not in it.
 */
public final class JsonAnswer {
    private static final JsonNodeFactory NODES = JsonNodeFactory.instance;

    private JsonAnswer() {}

    public static String of(Answer answer, String version) {
        ObjectNode root = NODES.objectNode();
        root.put("program", "tideover");
        root.put("version", version);
        root.put("seed", answer.options().seed());
        root.put("weather_years", answer.years());
        root.put("confirm_seed", answer.options().confirmSeed());
        root.put("confirm_weather_years", answer.options().confirmYears());
        Json.number(root, "step_minutes", 60.0 / answer.options().stepsPerHour());
        root.put("weather_source", answer.weather());
        root.set("question", question(answer.question()));
        root.put("answer", Words.sentence(answer));
        if (answer.medical()) {
            root.putNull("meets_target");
        } else {
            root.put("meets_target", answer.meets());
        }
        Json.number(root, "asked_of_rigs_share", answer.question().asked().targetShare());
        JsonMedical.put(root, answer);
        root.set("rig", answer.rig() == null ? NODES.nullNode() : proven(answer, answer.rig(), answer.question()));
        JsonBeside.put(root, answer);
        if (answer.shortlist() != null) {
            Shortlist list = answer.shortlist();
            root.set(
                    "by_way_of_building",
                    JsonWiring.byRoute(
                            list.byRoute(), !answer.question().smallParts().isEmpty()));
            root.set(
                    "ways",
                    JsonWays.of(answer.ways(), !answer.question().smallParts().isEmpty()));
            root.set("near_ties", rated(list.nearTies()));
            root.set("price_share_front", rated(list.front()));
            root.set("nearest_misses", rated(list.misses()));
            root.set("missed_on_confirming_years", rated(list.unconfirmed()));
            root.set("search", search(list));
        }
        ArrayNode cautions = root.putArray("cautions");
        answer.cautions().forEach(cautions::add);
        ArrayNode notes = root.putArray("inputs");
        for (MarginNote note : answer.notes()) {
            ObjectNode one = notes.addObject();
            one.put("name", note.name());
            one.put("value", note.value());
            one.put("basis", note.basis().words());
            one.put("source", note.source());
        }
        return JsonMapper.builder().build().writerWithDefaultPrettyPrinter().writeValueAsString(root) + "\n";
    }

    private static ObjectNode question(Question question) {
        ObjectNode node = NODES.objectNode();
        node.put("title", question.title());
        node.put("about", question.about());
        ObjectNode place = node.putObject("place");
        place.put("name", question.place().name());
        Json.number(place, "latitude_deg", question.place().latDeg());
        Json.number(place, "longitude_deg", question.place().lonDeg());
        Json.number(place, "height_m", question.place().elevM());
        Json.number(place, "zone_h", question.place().zoneH());
        Outage outage = question.outage();
        ObjectNode asked = node.putObject("outage");
        ArrayNode months = asked.putArray("months");
        Words.winterFirst(outage.months()).forEach(months::add);
        asked.put("hours", outage.hours());
        Json.number(asked, "target_share", outage.targetShare());
        Json.number(asked, "charge_at_start_share", outage.chargeAtStart());
        asked.put("panels_out_after_h", outage.panelsOutAfterHours());
        Json.number(asked, "keep_back_share", outage.keepBack());
        JsonKept.storm(asked, question);
        ArrayNode engineHours = asked.putArray("engine_hours_of_day");
        outage.tending().engineHours().forEach(window -> engineHours.add(window.words()));
        Json.number(asked, "fuel_stored_l", outage.tending().storedL());
        Json.number(node, "panel_tilt_deg", question.mount().tiltDeg());
        Json.number(node, "panel_azimuth_deg", question.mount().azimuthDeg());
        ArrayNode loads = node.putArray("loads");
        for (Load load : question.loads()) {
            ObjectNode one = loads.addObject();
            one.put("name", load.name());
            one.put("supply", load.supply().words());
            Json.number(one, "running_w", load.runningW());
            Json.number(one, "wanted_wh_per_day", load.wantedWhPerDay());
            one.put("essential", load.essential());
            one.put("need", load.owed());
            JsonKept.load(one, load, question.notes());
        }
        return node;
    }

    private static ObjectNode proven(Answer answer, ProvenRig rig, Question question) {
        ObjectNode node = NODES.objectNode();
        node.put("id", rig.rig().id());
        node.put("route", rig.rig().route().words());
        ArrayNode parts = node.putArray("parts");
        for (Chosen chosen : rig.rig().chosen()) {
            ObjectNode part = parts.addObject();
            part.put("id", chosen.part().listing().id());
            part.put("kind", chosen.part().kind());
            part.put("name", chosen.part().listing().name());
            part.put("count", chosen.count());
            JsonWiring.bought(part, chosen.part().listing(), chosen.count());
            part.put("priced_on", chosen.part().listing().pricedOn().toString());
        }
        ObjectNode price = node.putObject("price");
        price.put("currency", question.currency());
        price.put("parts_cents", rig.price().partsCents());
        JsonWiring.price(price, rig.price(), rig.build().counted());
        price.put("total_cents", rig.price().totalCents());
        Json.number(node, "mass_kg", rig.rig().massKg());
        Json.number(node, "usable_wh", rig.proof().figures().capacityWh());
        Json.number(node, "array_rated_w", rig.proof().figures().arrayRatedW());
        Json.number(node, "controller_limit_w", rig.proof().figures().controllerMaxW());
        JsonBattery.put(node, rig);
        EngineWords.put(node, rig);
        JsonStarts.put(node, rig);
        JsonWiring.put(node, rig.build(), question.loads());
        findings(node, rig.findings());
        proof(node, rig.proof());
        JsonKept.proven(node, answer, rig);
        node.set("carried_share_confirmed", rig.confirmed() == null ? NODES.nullNode() : share(rig.confirmed()));
        return node;
    }

    private static void findings(ObjectNode node, List<Finding> findings) {
        ArrayNode all = node.putArray("findings");
        for (Finding finding : findings) {
            ObjectNode one = all.addObject();
            one.put("rule", finding.rule());
            one.put("verdict", finding.verdict().name().toLowerCase(Locale.ROOT));
            one.put("unit", finding.unit());
            Json.number(one, "value", finding.value());
            Json.number(one, "limit", finding.limit());
            Json.number(one, "margin", finding.margin());
            one.put("sentence", finding.sentence());
            one.put("basis", finding.basis().words());
            one.put("source", finding.source());
        }
    }

    private static void proof(ObjectNode node, Proof proof) {
        node.set("carried_share", share(proof.share()));
        node.set("carried_share_darkest_days", share(proof.darkest()));
        node.set("carried_share_coldest_days", share(proof.coldest()));
        TideLine tide = proof.tideLine();
        ObjectNode carried = node.putObject("hours_carried");
        Json.number(carried, "worst_h", proof.worstHours());
        Json.number(carried, "one_in_20_h", proof.oneIn20Hours());
        Json.number(carried, "median_h", proof.medianHours());
        carried.put("asked_h", tide.askedHours());
        carried.put("cap_h", tide.capHours());
        ObjectNode line = node.putObject("tide_line_by_week");
        line.set("worst_h", numbers(tide.worstHours()));
        line.set("one_in_20_h", numbers(tide.oneIn20Hours()));
        line.set("median_h", numbers(tide.medianHours()));
        node.set("no_sun_hours_by_start_hour_h", numbers(proof.noSunHours()));
        ArrayNode without = node.putArray("months_without_failure_in_simulated_years");
        ArrayNode starts = node.putArray("starts_by_month_and_hour");
        for (int month = 0; month < 12; month++) {
            if (proof.starts().monthWithoutFailure(month)) {
                without.add(ModelYear.monthName(month));
            }
            ObjectNode one = starts.addObject();
            one.put("month", ModelYear.monthName(month));
            ArrayNode walked = one.putArray("walked");
            ArrayNode kept = one.putArray("carried");
            for (int hour = 0; hour < 24; hour++) {
                walked.add(proof.starts().walked(month, hour));
                kept.add(proof.starts().carried(month, hour));
            }
        }
        endings(node.putArray("endings"), proof);
        node.set("energy_per_outage", energy(proof.energy(), proof.share().outages()));
        ObjectNode binding = node.putObject("binding_limit");
        lift(binding, proof.binding());
        ArrayNode lifts = node.putArray("limits_lifted_in_turn");
        proof.lifts().forEach(one -> lift(lifts.addObject(), one));
        node.set("worst_outage", trace(proof.worst()));
        node.set("median_outage", trace(proof.median()));
        StormProof storm = proof.storm();
        node.set("carried_share_storm_starts", storm == null ? NODES.nullNode() : share(storm.share()));
        node.set("worst_storm_outage", storm == null ? NODES.nullNode() : trace(storm.worst()));
    }

    private static void endings(ArrayNode node, Proof proof) {
        for (Map.Entry<Ending, Integer> ending : Words.mostFrequent(proof.endings())) {
            ObjectNode one = node.addObject();
            one.put("reason", reason(ending.getKey()));
            one.put("words", ending.getKey().words());
            one.put("outages", ending.getValue());
        }
    }

    /** Names that programs may rely on. */
    private static String reason(Ending ending) {
        return switch (ending) {
            case EMPTY -> "empty";
            case VOLTS -> "volts_under_cut_off";
            case CURRENT -> "over_current_limit";
            case START -> "start_not_given";
            case FROZEN -> "frozen";
            case CHARGED_COLD -> "charged_below_freezing";
            case THAWED -> "thawed";
            case TOO_WARM -> "too_warm";
            case TOO_COLD -> "too_cold";
            case AGENCY_HOURS -> "past_agency_hours";
            case FLOODED -> "flooded";
            case ROOM_COLD -> "room_cold";
        };
    }

    private static void lift(ObjectNode node, Lift lift) {
        node.put("limit", lift.limit());
        node.put("change", lift.words());
        Json.number(node, "share_gain", lift.shareGain());
        Json.number(node, "mean_hours_gain_h", lift.meanHoursGain());
    }

    private static ObjectNode energy(Ledger sum, double count) {
        ObjectNode node = NODES.objectNode();
        Json.number(node, "panels_could_give_wh", sum.inWh() / count);
        Json.number(node, "help_wh", sum.helpInWh() / count);
        Json.number(node, "controller_gives_wh", sum.onBusWh() / count);
        Json.number(node, "served_essential_wh", sum.servedEssentialWh() / count);
        Json.number(node, "unserved_essential_wh", sum.unservedEssentialWh() / count);
        Json.number(node, "served_nice_to_have_wh", sum.servedNiceWh() / count);
        Json.number(node, "wanted_nice_to_have_wh", sum.wantedNiceWh() / count);
        Json.number(node, "controller_loss_wh", sum.controllerLossWh() / count);
        Json.number(node, "controller_current_limit_wh", sum.controllerLimitWh() / count);
        Json.number(node, "store_charge_limit_wh", sum.chargeLimitWh() / count);
        Json.number(node, "no_room_in_store_wh", sum.noRoomWh() / count);
        Json.number(node, "heater_wh", sum.heaterWh() / count);
        Json.number(node, "self_discharge_wh", sum.selfDischargeWh() / count);
        Json.number(node, "charge_loss_wh", sum.chargeLossWh() / count);
        Json.number(node, "discharge_loss_wh", sum.dischargeLossWh() / count);
        Json.number(node, "inverter_loss_wh", sum.inverterLossWh() / count);
        Json.number(node, "inverter_standing_wh", sum.standingWh() / count);
        Json.number(node, "outlet_loss_wh", sum.outletLossWh() / count);
        Json.number(node, "served_by_returned_grid_wh", sum.gridServedWh() / count);
        Json.number(node, "store_at_start_wh", sum.startWh() / count);
        Json.number(node, "store_at_end_wh", sum.endWh() / count);
        return node;
    }

    private static ObjectNode trace(Trace trace) {
        ObjectNode node = NODES.objectNode();
        node.put("began", Words.moment(trace.startHour()));
        node.put("start_hour_of_weather_years", trace.startHour());
        Json.number(node, "hours_carried_h", trace.hoursCarried());
        node.put("ending", trace.ending() == null ? null : reason(trace.ending()));
        Json.number(node, "step_h", trace.stepHours());
        Json.number(node, "capacity_wh", trace.capacityWh());
        column(node, "air_degc", trace, TraceStep::airDegC);
        column(node, "battery_degc", trace, TraceStep::batteryDegC);
        column(node, "panels_could_give_w", trace, TraceStep::arrayW);
        column(node, "help_w", trace, TraceStep::helpW);
        column(node, "essential_served_w", trace, TraceStep::essentialServedW);
        column(node, "essential_unserved_w", trace, TraceStep::essentialUnservedW);
        column(node, "nice_to_have_served_w", trace, TraceStep::niceServedW);
        column(node, "heater_w", trace, TraceStep::heaterW);
        column(node, "self_discharge_w", trace, TraceStep::selfW);
        column(node, "stored_wh", trace, TraceStep::storedWh);
        JsonKept.trace(node, trace);
        return node;
    }

    private static void column(ObjectNode node, String name, Trace trace, ToDoubleFunction<TraceStep> figure) {
        ArrayNode column = node.putArray(name);
        trace.steps().forEach(step -> column.add(Json.cut(figure.applyAsDouble(step))));
    }

    static ObjectNode share(CarriedShare share) {
        ObjectNode node = NODES.objectNode();
        node.put("outages", share.outages());
        node.put("carried", share.carried());
        Json.number(node, "share", share.share());
        Json.number(node, "interval_90_low", share.low());
        Json.number(node, "interval_90_high", share.high());
        node.put("interval_basis", share.interval().words());
        return node;
    }

    private static ArrayNode rated(List<Rated> rigs) {
        ArrayNode all = NODES.arrayNode();
        rigs.forEach(rated -> rated(all.addObject(), rated));
        return all;
    }

    static void rated(ObjectNode one, Rated rated) {
        one.put("number", rated.number());
        one.put("id", rated.rig().id());
        one.put("rig", rated.rig().words());
        one.put("total_cents", rated.price().totalCents());
        Json.number(one, "share", rated.share());
        Json.number(one, "mass_kg", rated.rig().massKg());
    }

    private static ObjectNode search(Shortlist list) {
        ObjectNode node = NODES.objectNode();
        Shortlist.Counts counts = list.counts();
        node.put("rigs_looked_at", counts.looked());
        node.put("rigs_ruled_out_by_demand_bound", counts.ruledOutByDemand());
        node.put("rigs_ruled_out_by_array_bound", counts.ruledOutByArray());
        node.put("rigs_ruled_out_by_sort_bound", counts.ruledOutBySort());
        node.put("rigs_not_reached", counts.notReached());
        node.put("rigs_fallen_to_rules", counts.fell());
        node.put("rigs_priced", counts.priced());
        node.put("rigs_ruled_out_by_series_bound", counts.ruledOutBySeries());
        node.put("rigs_screened_exactly", counts.screened());
        node.put("rigs_walked", counts.walked());
        node.put("rigs_walked_in_vain", counts.walkedInVain());
        node.put("net_gain_series", counts.series());
        node.put("rigs_over_budget", counts.overBudget());
        if (counts.leastOverBudgetCents().isPresent()) {
            node.put("cheapest_over_budget_cents", counts.leastOverBudgetCents().getAsLong());
        }
        ObjectNode rejected = node.putObject("rejected_by_rule");
        counts.rejected().forEach(rejected::put);
        return node;
    }

    private static ArrayNode numbers(Series series) {
        ArrayNode all = NODES.arrayNode();
        for (int i = 0; i < series.length(); i++) {
            all.add(Json.cut(series.at(i)));
        }
        return all;
    }
}
