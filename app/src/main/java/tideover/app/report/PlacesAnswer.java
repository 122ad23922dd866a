package tideover.app.report;

import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import tideover.engine.answer.MedicalNote;
import tideover.engine.answer.Places;
import tideover.engine.answer.Question;
import tideover.engine.proof.CarriedShare;
import tideover.engine.proof.Proof;
import tools.jackson.databind.json.JsonMapper;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.JsonNodeFactory;
import tools.jackson.databind.node.ObjectNode;

/** One rig in several places, as text and as JSON. */
public final class PlacesAnswer {
    private static final String KEPT =
            "The place's own are weather, sun and clock, the coldest to design for (the coldest hour of the"
                    + " station's data less 12 K) and, unless the plan says it, snow. Kept as in the plan are loads, outages, months, storms"
                    + " and help, the panels' tilt and facing, shade, the store's room and the electricity's volts: a tilt that suits one"
                    + " latitude costs another some of its winter sun.";

    private PlacesAnswer() {}

    static String sentence(Places places) {
        Comparator<Places.At> byShare =
                Comparator.comparingDouble(one -> one.proof().share().share());
        Places.At worst = places.rows().stream().min(byShare).orElseThrow();
        Places.At best = places.rows().stream().max(byShare).orElseThrow();
        long broken =
                places.rows().stream().filter(one -> !one.broken().isEmpty()).count();
        Question question = places.question();
        String range = question.medical()
                ? ""
                : " carries from "
                        + Words.of100(worst.proof().share().share()) + " ("
                        + worst.station().label() + ") to "
                        + Words.of100(best.proof().share().share()) + " ("
                        + best.station().label() + ") " + Words.outages(question);
        return "In " + Counted.of(places.rows().size(), "place") + " "
                + places.rig().words()
                + (range.isEmpty() ? " was walked through " + Words.outages(question) : range)
                + (broken == 0 ? "." : "; in " + broken + " of them it breaks a rule and so will not do.");
    }

    public static String text(Places places, String version) {
        Question question = places.question();
        StringBuilder out = new StringBuilder();
        out.append(question.title())
                .append(", ")
                .append(question.place().name())
                .append("\n\n");
        wrapped(out, sentence(places));
        out.append('\n');
        Table.Builder table = Table.titled("")
                .words("Place")
                .figures(question.medical() ? "carried" : "of 100")
                .figures(question.medical() ? "walked" : "90 % interval")
                .figures("darkest starts")
                .figures("worst h")
                .figures("median h")
                .words("What binds");
        for (Places.At row : places.rows()) {
            Proof proof = row.proof();
            CarriedShare share = proof.share();
            table.row(
                    row.station().label(),
                    question.medical()
                            ? String.format(Locale.ROOT, "%,.0f", (double) share.carried())
                            : Words.percent(share.share()),
                    question.medical()
                            ? String.format(Locale.ROOT, "%,.0f", (double) share.outages())
                            : Words.percent(share.low()) + "-" + Words.percentUp(share.high()),
                    question.medical() ? "" : Words.percent(proof.darkest().share()),
                    String.format(Locale.ROOT, "%.0f", Math.floor(proof.worstHours())),
                    String.format(Locale.ROOT, "%.0f", Math.floor(proof.medianHours())),
                    row.broken().isEmpty() ? proof.binding().limit() : "breaks " + String.join(", ", row.broken()));
        }
        TextTable.of(table.done(), TextAnswer.WIDTH)
                .forEach(line -> out.append(line).append('\n'));
        out.append('\n');
        wrapped(out, KEPT);
        if (question.medical()) {
            wrapped(out, MedicalNote.MIND);
        }
        out.append('\n')
                .append(String.format(
                        Locale.ROOT,
                        "seed %d, %s, step %.0f min, Tideover %s%n",
                        places.options().seed(),
                        Counted.of(places.options().years(), "weather year"),
                        60.0 / places.options().stepsPerHour(),
                        version));
        return out.toString();
    }

    public static String json(Places places, String version) {
        ObjectNode root = JsonNodeFactory.instance.objectNode();
        root.put("program", "tideover");
        root.put("version", version);
        root.put("seed", places.options().seed());
        root.put("weather_years", places.options().years());
        Json.number(root, "step_minutes", 60.0 / places.options().stepsPerHour());
        root.put("answer", sentence(places));
        root.put("rig", places.rig().id());
        root.put("what_is_carried_over", KEPT);
        ArrayNode rows = root.putArray("places");
        for (Places.At row : places.rows()) {
            ObjectNode one = rows.addObject();
            one.put("station", row.station().id());
            one.put("name", row.station().label());
            Json.number(one, "latitude_deg", row.station().place().latDeg());
            Json.number(one, "longitude_deg", row.station().place().lonDeg());
            Json.number(one, "lowest_designed_for_degc", row.lowestDegC());
            one.put("snow_may_lie", row.snow());
            one.set("carried_share", JsonAnswer.share(row.proof().share()));
            one.set("carried_share_darkest_days", JsonAnswer.share(row.proof().darkest()));
            Json.number(one, "worst_h", row.proof().worstHours());
            Json.number(one, "median_h", row.proof().medianHours());
            one.put("binds", Words.binds(row.proof()));
            ArrayNode broken = one.putArray("rules_broken");
            row.broken().forEach(broken::add);
        }
        return JsonMapper.builder().build().writerWithDefaultPrettyPrinter().writeValueAsString(root) + "\n";
    }

    private static void wrapped(StringBuilder out, String text) {
        List<String> lines = TextAnswer.wrap(text, TextAnswer.WIDTH);
        lines.forEach(line -> out.append(line).append('\n'));
    }
}
