package tideover.app.report;

import java.util.List;
import java.util.Locale;
import org.jspecify.annotations.Nullable;
import tideover.engine.answer.MedicalNote;
import tideover.engine.answer.Question;
import tideover.engine.answer.Steps;
import tideover.engine.rig.Chosen;

/** Buying in steps as plain text for a terminal. */
public final class TextSteps {
    private final StringBuilder out = new StringBuilder();
    private final Steps steps;

    private TextSteps(Steps steps) {
        this.steps = steps;
    }

    public static String of(Steps steps, String version) {
        TextSteps text = new TextSteps(steps);
        text.write(version);
        return text.out.toString();
    }

    private void write(String version) {
        Question question = steps.question();
        line(question.title() + ", " + question.place().name());
        if (!question.about().isEmpty()) {
            wrapped("", question.about());
        }
        line("");
        wrapped("", StepsWords.sentence(steps));
        step("Now, for at most " + StepsWords.money(steps, steps.nowCents()), steps.first(), null);
        step(
                "Later, for at most " + StepsWords.money(steps, steps.laterCents()) + " more",
                steps.second(),
                steps.first());
        together(steps.together());
        heading("How it is reckoned");
        wrapped("  ", StepsWords.OWNED);
        heading("Weather");
        wrapped("  ", steps.weather());
        heading("Mind");
        steps.cautions().forEach(caution -> wrapped("  - ", caution));
        if (steps.medical()) {
            wrapped("  - ", MedicalNote.MIND);
        }
        line("");
        line(String.format(
                Locale.ROOT,
                "seed %d, %s, step %.0f min, Tideover %s",
                steps.options().seed(),
                Counted.of(steps.years(), "weather year"),
                60.0 / steps.options().stepsPerHour(),
                version));
    }

    private void step(String heading, Steps.@Nullable Step step, Steps.@Nullable Step before) {
        if (step == null) {
            return;
        }
        heading(heading);
        List<Chosen> added = StepsWords.added(step, before);
        added.forEach(
                one -> wrapped("  + ", one.words() + " (" + one.part().listing().id() + ")"));
        if (added.isEmpty()) {
            wrapped("  ", "Nothing: no addition within this sum is better.");
            return;
        }
        StepsWords.facts(steps, step).forEach(fact -> row(fact.name(), fact.words()));
        row("In full", "tideover prove PLAN --rig " + step.rig().rig().id());
    }

    private void together(Steps.@Nullable Whole whole) {
        if (whole == null) {
            return;
        }
        heading("Both sums in one step, " + StepsWords.money(steps, steps.nowCents() + steps.laterCents())
                + " at most");
        row("Rig", whole.rig().rig().words());
        row("Price", StepsWords.money(steps, whole.rig().price().totalCents()));
        if (!steps.medical()) {
            row("Carries", Words.share(whole.share(), steps.years()));
        }
        row("Other years", StepsWords.otherYears(steps, whole.confirmed()));
        row("In full", "tideover prove PLAN --rig " + whole.rig().rig().id());
    }

    private void row(String name, String value) {
        List<String> lines = TextAnswer.wrap(value, TextAnswer.WIDTH - 21);
        for (int i = 0; i < lines.size(); i++) {
            line(String.format(Locale.ROOT, "  %-18s %s", i == 0 ? name : "", lines.get(i)));
        }
    }

    private void heading(String text) {
        line("");
        line(text);
    }

    private void wrapped(String lead, String text) {
        List<String> lines = TextAnswer.wrap(text, TextAnswer.WIDTH - lead.length());
        for (int i = 0; i < lines.size(); i++) {
            line((i == 0 ? lead : " ".repeat(lead.length())) + lines.get(i));
        }
    }

    private void line(String text) {
        out.append(text).append('\n');
    }
}
