package tideover.app.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.StringJoiner;
import tideover.engine.answer.Answer;
import tideover.engine.answer.MedicalNote;
import tideover.engine.answer.ProvenRig;
import tideover.engine.answer.Question;
import tideover.engine.load.Load;
import tideover.engine.outage.Outage;
import tideover.engine.proof.CarriedShare;
import tideover.engine.proof.StormProof;
import tideover.engine.site.Place;
import tideover.engine.why.Basis;
import tideover.engine.why.Finding;
import tideover.engine.why.MarginNote;
import tideover.engine.why.Verdict;

/**
 * An answer as one HTML page that needs nothing else: style and drawings are inside, there is no script, and nothing is
 * fetched. Everything that came from a person is escaped.
 */
public final class HtmlReport {
    private HtmlReport() {}

    public static String of(Answer answer, String version) {
        return Templates.render("answer.jte", page(answer, version, ""));
    }

    /**
     * What the page shows, for other pages that show the same.
     *
     * @param pick what a rig's id is put behind to make an address under which it can be looked at; empty where there is none
     */
    public static Page page(Answer answer, String version, String pick) {
        Question question = answer.question();
        return new Page(
                question.title(),
                question.about(),
                place(question.place()),
                verdict(answer),
                answer.meets() && !answer.medical(),
                failings(answer),
                Words.sentence(answer),
                MedicalWords.blocks(answer),
                answer.medical() ? MedicalNote.MIND : "",
                answer.weather(),
                answer.cautions(),
                BesideWords.facts(answer),
                answer.rig() == null ? null : ProvenSection.of(answer, answer.rig()),
                answer.shortlist() == null ? null : SearchedSection.of(answer, answer.shortlist(), pick),
                loads(question, answer.notes()),
                asked(question),
                inputs(answer.notes()),
                inputsOf(answer.notes()),
                foot(answer, version));
    }

    private static String place(Place place) {
        return String.format(
                Locale.ROOT,
                "%s, %.2f° %s %.2f° %s, %.0f m",
                place.name(),
                Math.abs(place.latDeg()),
                place.latDeg() < 0 ? "S" : "N",
                Math.abs(place.lonDeg()),
                place.lonDeg() < 0 ? "W" : "E",
                place.elevM());
    }

    private static String verdict(Answer answer) {
        if (answer.medical()) {
            return MedicalWords.verdict(answer);
        }
        String target = Words.of100(answer.question().outage().targetShare());
        if (answer.meets()) {
            return "Meets the target: " + target;
        }
        return answer.rig() == null ? "Nothing meets the target: " + target : "Does not meet the target: " + target;
    }

    private static List<String> failings(Answer answer) {
        if (answer.medical()) {
            return MedicalWords.failings(answer);
        }
        List<String> failings = new ArrayList<>();
        ProvenRig rig = answer.rig();
        double target = answer.question().outage().targetShare();
        if (rig == null || answer.meets()) {
            return failings;
        }
        if (rig.proof().share().share() < target) {
            failings.add("It carries " + Words.of100(rig.proof().share().share()) + "; asked are " + Words.of100(target)
                    + ".");
        }
        StormProof storm = rig.proof().storm();
        if (storm != null && storm.share().share() < target) {
            failings.add(
                    "Of storm starts it carries " + Words.of100(storm.share().share()) + ".");
        }
        CarriedShare confirmed = rig.confirmed();
        if (confirmed != null && confirmed.share() < target) {
            failings.add("On " + Counted.of(answer.options().confirmYears(), "other year") + " it carries "
                    + Words.of100(confirmed.share()) + ".");
        }
        for (Finding finding : rig.findings()) {
            if (finding.verdict() == Verdict.FAIL) {
                failings.add("It breaks a rule: " + finding.sentence());
            }
        }
        return failings;
    }

    private static Table loads(Question question, List<MarginNote> notes) {
        Table.Builder table = Table.titled("What must stay on")
                .words("load")
                .figures("runs\u00a0at")
                .figures("wants a\u00a0day")
                .words("kind")
                .words("owed")
                .words("plugs into")
                .words("known from");
        for (Load load : question.loads()) {
            table.row(
                    load.name(),
                    KeptWords.watts(load),
                    String.format(Locale.ROOT, "%,.0f Wh", load.wantedWhPerDay()),
                    load.essential() ? "essential" : "nice to have",
                    KeptWords.owed(load),
                    load.plugged() ? load.supply().words() : "nothing",
                    KeptWords.known(load, notes));
        }
        return table.done();
    }

    private static String asked(Question question) {
        Outage outage = question.outage();
        String budget = question.budgetCents().isPresent()
                ? ", for at most " + Words.money(question.budgetCents().getAsLong(), question.currency())
                : "";
        return String.format(
                Locale.ROOT,
                "To carry %s %s%s.%s The store is %s %% full when the grid fails; panels are out after %d h.",
                Words.of100(outage.targetShare()),
                Words.outages(question),
                budget,
                question.medical()
                        ? " Somebody's health hangs on a load, so rigs were asked to carry every outage walked."
                        : "",
                Words.percent(outage.chargeAtStart()),
                outage.panelsOutAfterHours());
    }

    private static Table inputs(List<MarginNote> notes) {
        Table.Builder table =
                Table.titled("Every input").words("input").words("value").words("known from");
        for (MarginNote note : notes) {
            table.row(note.name(), note.value(), note.basis().words() + ": " + note.source());
        }
        return table.done();
    }

    private static String inputsOf(List<MarginNote> notes) {
        StringJoiner kinds = new StringJoiner("; ");
        for (Basis basis : Basis.values()) {
            long count = notes.stream().filter(note -> note.basis() == basis).count();
            if (count > 0) {
                kinds.add(basis.words() + " " + count);
            }
        }
        return "How each of " + Counted.of(notes.size(), "input") + " is known: " + kinds + ".";
    }

    private static String foot(Answer answer, String version) {
        return String.format(
                Locale.ROOT,
                "Seed %d, %s, confirmed on seed %d and %s. Simulation step %.4g min.%s",
                answer.options().seed(),
                Counted.of(answer.years(), "weather year"),
                answer.options().confirmSeed(),
                Counted.of(answer.options().confirmYears(), "year"),
                60.0 / answer.options().stepsPerHour(),
                version.isEmpty() ? "" : " Tideover " + version + ".");
    }
}
