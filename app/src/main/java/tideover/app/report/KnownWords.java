package tideover.app.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.jspecify.annotations.Nullable;
import tideover.engine.answer.Known;
import tideover.engine.answer.Options;
import tideover.engine.answer.Question;
import tideover.engine.search.Find;
import tideover.engine.search.Rated;
import tools.jackson.databind.json.JsonMapper;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.JsonNodeFactory;
import tools.jackson.databind.node.ObjectNode;

/** What is known of an answer before it is out: a line as it is found, and all of it where the work was stopped. */
public final class KnownWords {
    private KnownWords() {}

    /** One line for something found on the way. */
    public static String found(Find find, String currency) {
        String what = switch (find.kind()) {
            case STEP -> "front";
            case MEETS -> "meets it";
            case CONFIRMED -> "confirmed";
            case NOT_CONFIRMED -> "not confirmed";
        };
        return String.format(Locale.ROOT, "%-13s %s", what, line(find.rated(), currency));
    }

    private static String line(Rated one, String currency) {
        return String.format(
                Locale.ROOT,
                "%7s %12s  %5s of 100 %6.1f kg  %s",
                "#" + one.number(),
                Words.money(one.price().totalCents(), currency),
                Words.percent(one.share()),
                one.rig().massKg(),
                one.rig().id());
    }

    /** Everything, as text for a terminal. */
    public static String text(Known known, Question question, Options options) {
        String currency = question.currency();
        List<String> lines = new ArrayList<>();
        lines.add("Stopped before the answer was out. " + stage(known));
        lines.add("");
        if (question.medical()) {
            lines.add("Somebody's health hangs on a load. Nothing below is an answer to that: go by the second plan.");
        }
        Rated winner = known.winner();
        Rated confirming = known.confirming();
        if (winner != null) {
            lines.add("The least that will do, confirmed on "
                    + (question.weather().canDrawAgain()
                            ? Counted.of(options.confirmYears(), "other year")
                            : "no other years, for there are none")
                    + " and not yet proven in full:");
            lines.add(line(winner, currency));
        } else if (confirming != null) {
            lines.add("The cheapest that carries " + target(question)
                    + " on the first weather years, not yet confirmed:");
            lines.add(line(confirming, currency));
        } else {
            lines.add("No rig judged so far carries " + target(question) + " and holds on other years.");
        }
        if (winner == null && known.judgedBelowCents() > 0) {
            lines.add("Every rig cheaper than " + Words.money(known.judgedBelowCents(), currency)
                    + " has been judged: the answer costs at least that.");
        }
        section(lines, "Met the target, and missed it on other years", known.notConfirmed(), currency);
        section(lines, "Price against share so far: nothing cheaper carries more", known.front(), currency);
        lines.add("");
        lines.add("Ask again without stopping for the proof; until then none of these is one.");
        return String.join("\n", lines) + "\n";
    }

    private static String target(Question question) {
        return Words.of100(question.asked().targetShare());
    }

    private static String stage(Known known) {
        return known.stage().isEmpty()
                ? "Nothing had been begun."
                : String.format(
                        Locale.ROOT, "It was at: %s, %.0f %%.", known.stage(), Math.floor(100 * known.stageShare()));
    }

    private static void section(List<String> lines, String heading, List<Rated> rigs, String currency) {
        if (!rigs.isEmpty()) {
            lines.add("");
            lines.add(heading);
            rigs.forEach(one -> lines.add(line(one, currency)));
        }
    }

    /** Everything, as one JSON document. */
    public static String json(Known known, Question question, Options options, String version) {
        JsonNodeFactory nodes = JsonNodeFactory.instance;
        ObjectNode root = nodes.objectNode();
        root.put("program", "tideover");
        root.put("version", version);
        root.put("seed", options.seed());
        root.put("stopped_before_the_answer", true);
        root.put("stage", known.stage());
        Json.number(root, "stage_done_share", known.stageShare());
        Json.number(root, "asked_of_rigs_share", question.asked().targetShare());
        root.put("currency", question.currency());
        root.put("rigs_judged_below_cents", known.judgedBelowCents());
        one(root, "confirmed", known.winner());
        one(root, "not_yet_confirmed", known.confirming());
        root.set("missed_on_confirming_years", all(known.notConfirmed()));
        root.set("price_share_front", all(known.front()));
        return JsonMapper.builder().build().writerWithDefaultPrettyPrinter().writeValueAsString(root) + "\n";
    }

    private static void one(ObjectNode root, String name, @Nullable Rated rated) {
        if (rated == null) {
            root.putNull(name);
        } else {
            JsonAnswer.rated(root.putObject(name), rated);
        }
    }

    private static ArrayNode all(List<Rated> rigs) {
        ArrayNode array = JsonNodeFactory.instance.arrayNode();
        rigs.forEach(rated -> JsonAnswer.rated(array.addObject(), rated));
        return array;
    }
}
