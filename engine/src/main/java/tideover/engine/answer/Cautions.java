package tideover.engine.answer;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import tideover.engine.load.ColdLoad;
import tideover.engine.load.Load;
import tideover.engine.load.Need;
import tideover.engine.outage.Outage;
import tideover.engine.part.Battery;
import tideover.engine.part.Condition;
import tideover.engine.part.Cooler;
import tideover.engine.part.Engine;
import tideover.engine.part.Fitting;
import tideover.engine.part.Jug;
import tideover.engine.part.PlainStore;
import tideover.engine.part.StandIn;
import tideover.engine.quantity.PlainNumber;
import tideover.engine.rig.Chosen;
import tideover.engine.rig.Rig;
import tideover.engine.search.Grammar;
import tideover.engine.site.Room;
import tideover.engine.site.Weather;
import tideover.engine.why.Finding;
import tideover.engine.why.Verdict;

/** What must be minded beside any answer, and beside this one. */
final class Cautions {
    /** A name that speaks of a cold box, of a load that is not one. */
    private static final Pattern COLD_BOX = Pattern.compile("(?i)fridge|refrigerat|freezer|cool(er|box)");

    /** A name that speaks of something that spins up. */
    private static final Pattern MOTOR =
            Pattern.compile("(?i)fridge|refrigerat|freezer|cool(er|box)|compressor|pump|\\bfans?\\b|"
                    + "\\w+fan\\b|blower|ventilator|motor|furnace|air.?condition|dehumidif|washer|washing|drill|saw\\b|grinder|"
                    + "vacuum|blender|mixer|sewing|garage door|opener");

    private static final String DOOR_SHUT =
            "With the door shut a refrigerator is safe for 4 h without power, a full freezer for 48 h, a half-full one"
                    + " for 24 h (USDA, FDA, CDC).";

    private static final String LOOK =
            "past that only a thermometer in the warmest food, or ice crystals in it, count.";

    /** Beside every way with an engine or a vehicle in it. 20 ft: US Consumer Product Safety Commission, health departments. */
    static final List<String> OF_ENGINES = List.of(
            "Exhaust kills within minutes, without a smell: engines and idling vehicles run outdoors only, at least 6.1 m (20 ft) from"
                    + " doors, windows and vents, exhaust pointing away, never in a garage, on a porch or under a carport, open doors or"
                    + " not, and with a carbon monoxide alarm on batteries indoors and where people sleep.",
            "Never plug an engine or an inverter into a wall outlet: it kills who works on the line. Loads are plugged into it by cords,"
                    + " house circuits only through a listed transfer device.",
            "Fill an engine switched off and cold, outdoors, nothing burning near. Keep fuel in cans made for it, outside living rooms;"
                    + " local codes and insurers limit how much.",
            "Keep rain and snow off it, run it under load every month, and use its fuel up before it is too old: an engine that stood for"
                    + " a year may not start on the night.");

    private static final String OF_VEHICLES =
            "A vehicle idles outdoors only, brake on, out of gear, its exhaust clear of snow, somebody by; enough stays in its tank for the"
                    + " way to the pump, and its own starting battery is not run down with the engine off.";

    private Cautions() {}

    /** @param ways that stand beside the rig in the answer */
    static List<String> of(Question question, @Nullable ProvenRig proven, Weather weather, List<Way> ways) {
        List<String> cautions = new ArrayList<>();
        cautions.add(
                "This advises and does not certify. Local codes, licensed practice and the makers' instructions come"
                        + " first. Never feed a house circuit except through a listed transfer device.");
        cautions.add(
                "A load that someone's health depends on needs a second plan that does not use this rig: a share of"
                        + " outages is not good enough for it.");
        motors(question, cautions);
        cautions.add(
                "A battery can burn and cannot be switched off: follow its maker for place, air and charging, fuse it at its"
                        + " post, and keep tools and rings off the terminals.");
        cold(question.loads(), cautions);
        ofEngines(proven, ways, cautions);
        if (proven != null) {
            for (Finding finding : proven.findings()) {
                if (finding.verdict() != Verdict.PASS) {
                    cautions.add(finding.sentence());
                }
            }
            boolean used = proven.rig().chosen().stream()
                    .anyMatch(c -> c.part().listing().condition() == Condition.USED);
            if (used) {
                cautions.add("Used parts are taken at the figures in the parts file: measure before relying on them.");
            }
            if (proven.price().smallPartsCents() == 0) {
                cautions.add("The price holds no wire, fuses, terminals or tools: the plan allows nothing for them.");
            }
        }
        double coldest = Room.extremes(
                        Room.degC(question.batteryRoom(), weather),
                        question.outage().months())
                .lowestDegC();
        if (coldest < 0 && (proven == null || proven.rig().store() instanceof PlainStore)) {
            cautions.add(String.format(
                    Locale.ROOT,
                    "The store's room (%s) falls to %.0f degC in these weather years. A plain store knows no cold, but real"
                            + " batteries give less, and lithium must not be charged below 0 degC unless its maker says that"
                            + " its electronics see to that.",
                    question.batteryRoom().words(),
                    Math.floor(coldest)));
        }
        Outage outage = question.outage();
        if (outage.panelsOutAfterHours() >= outage.hours()) {
            cautions.add("The panels are out after " + outage.panelsOutAfterHours() + " h of an outage of "
                    + outage.hours() + " h: they give nothing while it lasts.");
        }
        if (proven != null) {
            ofTheProof(question, proven, cautions);
        }
        if (weather.years() < 10) {
            cautions.add("Only " + weather.years() + (weather.years() == 1 ? " year" : " years")
                    + " of weather: rare spells are missing, and the interval says so.");
        }
        cautions.addAll(question.cautions());
        return cautions;
    }

    /** Of the rig and of all that stands beside it. */
    private static void ofEngines(@Nullable ProvenRig proven, List<Way> ways, List<String> cautions) {
        List<Way.Kind> kinds = new ArrayList<>();
        Stream.concat(
                        proven == null ? Stream.of() : proven.rig().chosen().stream(),
                        ways.stream().flatMap(way -> way.chosen().stream()))
                .forEach(one -> {
                    if (one.part() instanceof Engine engine) {
                        kinds.add(engine.vehicle() ? Way.Kind.VEHICLE : Way.Kind.ENGINE_ALONE);
                    }
                });
        cautions.addAll(ofEngines(kinds));
    }

    /** Of ways among which an engine or a vehicle may be. */
    static List<String> ofEngines(List<Way.Kind> kinds) {
        List<String> cautions = new ArrayList<>();
        boolean vehicle = kinds.contains(Way.Kind.VEHICLE);
        if (vehicle || kinds.contains(Way.Kind.ENGINE_ALONE) || kinds.contains(Way.Kind.ENGINE_AND_BATTERY)) {
            cautions.addAll(OF_ENGINES);
        }
        if (vehicle) {
            cautions.add(OF_VEHICLES);
        }
        return cautions;
    }

    /** What helps without power, by the ways and the rig that use it. */
    static List<String> ofAids(Question question, List<Chosen> aids) {
        List<String> cautions = new ArrayList<>();
        boolean priced = question.smallParts().stream()
                .anyMatch(part -> part instanceof Fitting fitting && fitting.use() == Fitting.Use.THERMOMETER);
        if (!priced && aids.stream().anyMatch(one -> !(one.part() instanceof StandIn))) {
            cautions.add(
                    "A thermometer for each cold box belongs to it and is in no price: no small part of the plan is one.");
        }
        if (aids.stream().anyMatch(one -> one.part() instanceof Jug)) {
            cautions.add(
                    "Jugs count as frozen through when the outage begins: freeze them days ahead, leave room for the ice"
                            + " to swell, and do not open the box to see.");
        }
        if (aids.stream().anyMatch(one -> one.part() instanceof Cooler)) {
            cautions.add(
                    "The agencies tell no hours for a cooler: there the food's temperature alone was reckoned. Keep a"
                            + " thermometer in its warmest food; what has been above 40 degF (4.4 degC) for longer than the plan"
                            + " allows is thrown out. Ice has to be at hand when the power goes.");
        }
        if (aids.stream().anyMatch(one -> one.part() instanceof StandIn)) {
            cautions.add(
                    "What stands in for a load counts for the hours that the parts file tells, and no outage longer than"
                            + " these is carried: try it for an evening.");
        }
        return cautions;
    }

    /** Food and medicine: what the agencies and the makers say goes before what was reckoned here. */
    private static void cold(List<Load> loads, List<String> cautions) {
        List<String> hours = new ArrayList<>();
        List<String> medicine = new ArrayList<>();
        List<String> byName = new ArrayList<>();
        for (Load load : loads) {
            if (load instanceof ColdLoad cold) {
                if (cold.need() instanceof Need.Band) {
                    medicine.add(cold.name());
                } else if (!Double.isInfinite(cold.agencyHours())) {
                    hours.add(cold.name() + " " + PlainNumber.of(Math.floor(cold.agencyHours())) + " h");
                }
            } else if (COLD_BOX.matcher(load.name()).find()) {
                byName.add(load.name());
            }
        }
        if (!hours.isEmpty()) {
            cautions.add(DOOR_SHUT + " Here: " + String.join(", ", hours)
                    + ". What was reckoned may shorten these hours, never lengthen them: " + LOOK
                    + " What thawed and froze again is not counted as kept.");
        }
        if (!medicine.isEmpty()) {
            cautions.add(String.join(", ", medicine)
                    + ": the maker's band comes first. Freezing spoils medicine as warmth does."
                    + " Keep a thermometer beside it, and ask the pharmacist now what to do with what left its band.");
        }
        if (!byName.isEmpty()) {
            cautions.add(String.join(", ", byName)
                    + ": food is not judged there, only power. Write it as a cold box ('runs: cold box') and its food is followed. "
                    + DOOR_SHUT + " The rig makes that no longer by being there: "
                    + LOOK
                    + " A compressor's watts are not drawn all the time: a meter tells how long.");
        }
    }

    /** Loads with a motor, or that sound like one, whose start the plan does not tell. */
    private static void motors(Question question, List<String> cautions) {
        List<String> untold = question.loads().stream()
                .filter(load -> load.nature().start() == null
                        && load.plugged()
                        && (load.keeps() || MOTOR.matcher(load.name()).find()))
                .map(Load::name)
                .toList();
        if (!untold.isEmpty()) {
            cautions.add(
                    "Not judged is the start of " + String.join(", ", untold) + ": a motor or compressor draws several"
                            + " times its running watts for a moment. If there is one inside, state 'start' in the plan or measure it,"
                            + " and try it on the rig, with the store low and cold, before it is needed.");
        }
    }

    /** What the figures of the proof say between the lines. */
    private static void ofTheProof(Question question, ProvenRig proven, List<String> cautions) {
        Rig rig = proven.rig();
        if (rig.panelCount() == 0) {
            cautions.add(
                    "No panels: once the store is empty it stays empty until the grid is back, and a second outage soon"
                            + " after finds it so. Sun and weather make no difference to this rig.");
        }
        Grammar grammar = question.grammar();
        int batteries = rig.chosen().stream()
                .filter(chosen -> chosen.part() instanceof Battery)
                .mapToInt(Chosen::count)
                .sum();
        if (rig.panelCount() == grammar.mostPanels() && grammar.mostPanels() > 0) {
            cautions.add("The rig has as many panels as the plan looks at (" + grammar.mostPanels()
                    + "): more may do better; raise 'most panels'.");
        }
        if (batteries == grammar.mostBatteries()) {
            cautions.add("The rig has as many batteries as the plan looks at (" + grammar.mostBatteries()
                    + "): more may do better; raise 'most batteries'.");
        }
        double wantedWh = proven.proof().energy().wantedNiceWh();
        double servedWh = proven.proof().energy().servedNiceWh();
        if (wantedWh > 0 && servedWh < wantedWh / 2) {
            cautions.add(String.format(
                    Locale.ROOT,
                    "What is nice to have gets %.0f of 100 Wh it wants: it lives on sun that the store has no room for. Lower"
                            + " 'keep back' in the plan to let it draw on the store, and see what that costs.",
                    Math.floor(100 * servedWh / wantedWh)));
        }
    }
}
