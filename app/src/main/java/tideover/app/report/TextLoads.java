package tideover.app.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import tideover.engine.load.Start;
import tideover.engine.load.Usual;
import tideover.engine.why.Basis;

/** Usual loads as a table for a terminal; below each its words: when it runs, where its figures are from, what to ask. */
public final class TextLoads {
    private static final String INDENT = "    ";

    private TextLoads() {}

    public static String of(List<Usual> loads) {
        StringBuilder out = new StringBuilder();
        out.append("usual load                                        least   usual    most   start\n");
        out.append("                                                      W       W       W      VA\n");
        for (Usual usual : loads) {
            Start start = usual.start();
            out.append(String.format(
                    Locale.ROOT,
                    "%-48s %6.0f  %6.0f  %6.0f  %6s\n",
                    usual.word(),
                    usual.leastW(),
                    usual.usualW(),
                    usual.mostW(),
                    start == null ? "-" : String.format(Locale.ROOT, "%.0f", start.va(usual.usualVa()))));
            if (!usual.alsoCalled().isEmpty()) {
                wrapped(out, "Or: ", String.join("; ", usual.alsoCalled()));
            }
            wrapped(out, "In use: ", usual.hours() + ".");
            if (!traits(usual).isEmpty()) {
                wrapped(out, "Traits: ", traits(usual) + ".");
            }
            // A source that is memory says so itself.
            String basis = usual.basis() == Basis.FROM_MEMORY
                    ? ""
                    : " (" + usual.basis().words() + ")";
            wrapped(out, "From: ", usual.source() + basis + ".");
            wrapped(out, "Measure: ", usual.measure());
            usual.ask().forEach(sentence -> wrapped(out, "Ask: ", sentence));
            out.append('\n');
        }
        return out.toString();
    }

    /** Such as "Power factor 0.65; needs a sine wave; hard-wired."; empty of a plain one. */
    private static String traits(Usual usual) {
        List<String> traits = new ArrayList<>();
        if (usual.powerFactor() < 1) {
            traits.add(String.format(Locale.ROOT, "power factor %.2f", usual.powerFactor()));
        }
        if (usual.needsSine()) {
            traits.add("needs a sine wave");
        }
        if (usual.hardWired()) {
            traits.add("hard-wired");
        }
        if (usual.sensesFlame()) {
            traits.add("may sense its flame");
        }
        return String.join("; ", traits);
    }

    private static void wrapped(StringBuilder out, String lead, String text) {
        List<String> lines = TextAnswer.wrap(text, TextAnswer.WIDTH - INDENT.length() - lead.length());
        for (int i = 0; i < lines.size(); i++) {
            out.append(INDENT)
                    .append(i == 0 ? lead : " ".repeat(lead.length()))
                    .append(lines.get(i))
                    .append('\n');
        }
    }
}
