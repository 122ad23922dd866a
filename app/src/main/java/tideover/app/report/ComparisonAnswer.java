package tideover.app.report;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import tideover.engine.answer.Answer;
import tideover.engine.answer.Comparison;
import tideover.engine.answer.MedicalNote;
import tideover.engine.answer.ProvenRig;
import tideover.engine.load.Load;
import tideover.engine.rig.Chosen;
import tideover.engine.why.MarginNote;
import tools.jackson.databind.json.JsonMapper;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.JsonNodeFactory;
import tools.jackson.databind.node.ObjectNode;

/** Two plans side by side, as text and as JSON. */
public final class ComparisonAnswer {
    private static final String NONE = "-";

    private ComparisonAnswer() {}

    /** One thing that both have, perhaps differently. */
    private record Pair(String name, String first, String second) {
        boolean differs() {
            return !first.equals(second);
        }
    }

    public static String text(Comparison comparison, String version) {
        StringBuilder out = new StringBuilder();
        wrapped(out, "First: ", Words.sentence(comparison.first()));
        wrapped(out, "Second: ", Words.sentence(comparison.second()));
        section(out, "What differs in the question", asked(comparison));
        section(out, "What differs in the answer", answered(comparison));
        out.append("\nThe rig of each under the other plan\n");
        wrapped(out, "  First's rig: ", under(comparison.first(), comparison.firstUnderSecond()));
        wrapped(out, "  Second's rig: ", under(comparison.second(), comparison.secondUnderFirst()));
        if (comparison.first().medical() || comparison.second().medical()) {
            wrapped(out, "", MedicalNote.MIND);
        }
        out.append('\n')
                .append(String.format(
                        Locale.ROOT,
                        "seed %d, step %.0f min, Tideover %s%n",
                        comparison.first().options().seed(),
                        60.0 / comparison.first().options().stepsPerHour(),
                        version));
        return out.toString();
    }

    public static String json(Comparison comparison, String version) {
        ObjectNode root = JsonNodeFactory.instance.objectNode();
        root.put("program", "tideover");
        root.put("version", version);
        root.put("seed", comparison.first().options().seed());
        root.put("first", Words.sentence(comparison.first()));
        root.put("second", Words.sentence(comparison.second()));
        root.put("share_intervals_overlap", comparison.intervalsOverlap());
        pairs(root.putArray("question_differs"), asked(comparison));
        pairs(root.putArray("answer_differs"), answered(comparison));
        root.put("first_rig_under_second_plan", under(comparison.first(), comparison.firstUnderSecond()));
        root.put("second_rig_under_first_plan", under(comparison.second(), comparison.secondUnderFirst()));
        return JsonMapper.builder().build().writerWithDefaultPrettyPrinter().writeValueAsString(root) + "\n";
    }

    private static void pairs(ArrayNode rows, List<Pair> pairs) {
        for (Pair pair : pairs) {
            ObjectNode one = rows.addObject();
            one.put("name", pair.name());
            one.put("first", pair.first());
            one.put("second", pair.second());
        }
    }

    private static void section(StringBuilder out, String heading, List<Pair> pairs) {
        out.append('\n').append(heading).append('\n');
        if (pairs.isEmpty()) {
            out.append("  nothing\n");
            return;
        }
        Table.Builder table = Table.titled("").words("").words("First").words("Second");
        pairs.forEach(pair -> table.row(pair.name(), pair.first(), pair.second()));
        TextTable.of(table.done(), TextAnswer.WIDTH)
                .forEach(line -> out.append(line).append('\n'));
    }

    /** Every figure of the plans that is not the same, by its name. */
    private static List<Pair> asked(Comparison comparison) {
        Map<String, String> one = figures(comparison.first());
        Map<String, String> other = figures(comparison.second());
        Set<String> names = new LinkedHashSet<>(one.keySet());
        names.addAll(other.keySet());
        return names.stream()
                .map(name -> new Pair(name, one.getOrDefault(name, NONE), other.getOrDefault(name, NONE)))
                .filter(Pair::differs)
                .toList();
    }

    private static Map<String, String> figures(Answer answer) {
        Map<String, String> figures = new LinkedHashMap<>();
        figures.put("Place", answer.question().place().name());
        figures.put("Outages", Words.outages(answer.question()));
        figures.put("Target", Words.of100(answer.question().asked().targetShare()));
        for (Load load : answer.question().loads()) {
            figures.put(load.name(), KeptWords.watts(load) + (load.essential() ? "" : ", nice to have"));
        }
        for (MarginNote note : answer.question().notes()) {
            figures.merge(note.name(), note.value(), (before, now) -> before.equals(now) ? now : before + "; " + now);
        }
        return figures;
    }

    private static List<Pair> answered(Comparison comparison) {
        Map<String, String> one = result(comparison.first());
        Map<String, String> other = result(comparison.second());
        List<Pair> pairs = new ArrayList<>();
        Set<String> names = new LinkedHashSet<>(one.keySet());
        names.addAll(other.keySet());
        for (String name : names) {
            Pair pair = new Pair(name, one.getOrDefault(name, NONE), other.getOrDefault(name, NONE));
            if (pair.differs()) {
                pairs.add(pair);
            }
            if (name.equals("Carries") && !one.isEmpty() && !other.isEmpty()) {
                String overlap = comparison.intervalsOverlap() ? "overlap: these shares may be the same" : "lie apart";
                pairs.add(new Pair("Intervals", overlap, ""));
            }
        }
        return pairs;
    }

    private static Map<String, String> result(Answer answer) {
        Map<String, String> result = new LinkedHashMap<>();
        ProvenRig rig = answer.rig();
        if (rig == null) {
            return result;
        }
        result.put(
                "Price", Words.money(rig.price().totalCents(), answer.question().currency()));
        if (!answer.medical()) {
            result.put("Carries", Words.share(rig.proof().share(), answer.years()));
        }
        if (rig.proof().storm() != null) {
            result.put("In a storm", KeptWords.storm(answer, rig.proof()));
        }
        result.put("What binds", Words.binds(rig.proof()));
        result.put("Mass", String.format(Locale.ROOT, "%.1f kg", rig.rig().massKg()));
        for (Chosen chosen : rig.rig().chosen()) {
            result.put("Part " + chosen.part().listing().id(), chosen.words());
        }
        return result;
    }

    private static String under(Answer own, @Nullable Answer there) {
        if (own.rig() == null) {
            return "there is none.";
        }
        return there == null ? "not all its parts are on the other list." : Words.sentence(there);
    }

    private static void wrapped(StringBuilder out, String lead, String text) {
        List<String> lines = TextAnswer.wrap(text, TextAnswer.WIDTH - lead.length());
        for (int i = 0; i < lines.size(); i++) {
            out.append(i == 0 ? lead : " ".repeat(lead.length()))
                    .append(lines.get(i))
                    .append('\n');
        }
    }
}
