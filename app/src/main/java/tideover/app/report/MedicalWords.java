package tideover.app.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import tideover.engine.answer.Answer;
import tideover.engine.answer.MedicalNote;
import tideover.engine.answer.ProvenRig;
import tideover.engine.answer.WorstCase;
import tideover.engine.load.Load;
import tideover.engine.load.Medical;
import tideover.engine.proof.CarriedShare;
import tideover.engine.quantity.PlainTime;
import tideover.engine.rig.Gap;
import tideover.engine.rig.RuleBook;
import tideover.engine.search.Shortlist;
import tideover.engine.why.Finding;
import tideover.engine.why.Verdict;

/**
 * How an answer speaks where somebody's health hangs on a load: never of a target met, nor of so many outages of a hundred, but
 * of the worst that was found and of the plan without the rig.
 */
final class MedicalWords {
    private MedicalWords() {}

    /** The headline. */
    static String verdict(Answer answer) {
        if (answer.rig() == null) {
            return "No: nothing on the parts list is good enough for " + names(answer);
        }
        return answer.meets()
                ? "Does not replace the second plan for " + names(answer)
                : "No: this rig is not good enough for " + names(answer);
    }

    /** The whole answer in a few words. */
    static String sentence(Answer answer) {
        ProvenRig rig = answer.rig();
        if (rig == null) {
            return nothing(answer);
        }
        String price = Words.money(rig.price().totalCents(), answer.question().currency());
        String parts = rig.rig().words();
        if (!answer.meets()) {
            return "No: " + parts + " for " + price + " is not good enough for " + names(answer)
                    + ", on which somebody's health hangs. Do not rely on it. " + instead(answer);
        }
        return "Somebody's health hangs on " + names(answer) + ": no rig replaces the second plan. The "
                + (answer.shortlist() == null ? "one asked about" : "cheapest that failed in nothing we tried")
                + " costs " + price + ": " + parts + ". It lasted through every one of the "
                + String.format(Locale.ROOT, "%,d ", rig.proof().share().outages())
                + Words.outages(answer.question()) + " walked in " + Counted.of(answer.years(), "weather year")
                + (rig.confirmed() == null
                        ? ""
                        : " and through every one in "
                                + Counted.of(answer.options().confirmYears(), "other year"))
                + ", which is no promise.";
    }

    private static String nothing(Answer answer) {
        String words = "No: nothing on the parts list is good enough for " + names(answer)
                + ", on which somebody's health"
                + " hangs. Every outage of those walked must be carried, and every rule kept. " + instead(answer);
        Shortlist list = answer.shortlist();
        if (list == null || list.counts().priced() > 0 || isUnarranged(answer)) {
            return words;
        }
        return words
                + (list.counts().leastOverBudgetCents().isPresent()
                        ? " The cheapest rig that keeps every rule costs "
                                + Words.money(
                                        list.counts().leastOverBudgetCents().getAsLong(),
                                        answer.question().currency())
                                + "."
                        : " No rig of these parts keeps the rules; the counts by rule say why.");
    }

    /** What there is where no rig will do. */
    private static String instead(Answer answer) {
        return isUnarranged(answer)
                ? "No better rig mends that: first arrange what is missing, as told below."
                : "The second plan is the plan.";
    }

    /** Whether alarm, somebody able or second plan is missing, which no rig makes good. */
    private static boolean isUnarranged(Answer answer) {
        return RuleBook.medicalFindings(answer.question().loads()).stream()
                .anyMatch(finding -> finding.verdict() == Verdict.FAIL);
    }

    /** Why the rig, or every rig, will not do; empty where nothing speaks against it but that it is a rig. */
    static List<String> failings(Answer answer) {
        ProvenRig rig = answer.rig();
        List<Finding> findings =
                rig == null ? RuleBook.medicalFindings(answer.question().loads()) : rig.findings();
        List<String> failings = new ArrayList<>(findings.stream()
                .filter(finding -> finding.verdict() == Verdict.FAIL)
                .map(Finding::sentence)
                .toList());
        if (rig != null && !rig.medical().isEmpty()) {
            WorstCase worst = rig.medical().get(0).worst();
            failed(failings, "", worst.outages());
            failed(failings, " begun on the darkest days", worst.darkest());
            failed(failings, " begun on the coldest days", worst.coldest());
            String other = " in " + Counted.of(worst.confirmYears(), "other year");
            failed(failings, other, worst.confirmed());
            failed(failings, " begun on storm days" + other, worst.stormConfirmed());
        }
        return failings;
    }

    private static void failed(List<String> failings, String which, @Nullable CarriedShare share) {
        int failed = WorstCase.failed(share);
        if (share != null && failed > 0) {
            failings.add(String.format(
                    Locale.ROOT,
                    "Of %,d outages walked%s, it did not last through %,d.",
                    share.outages(),
                    which,
                    failed));
        }
    }

    /** One for each load that somebody's health hangs on. */
    static List<Page.Health> blocks(Answer answer) {
        List<Page.Health> blocks = new ArrayList<>();
        if (answer.rig() != null) {
            for (MedicalNote note : answer.rig().medical()) {
                blocks.add(block(note.load(), note.medical(), note));
            }
            return blocks;
        }
        for (Load load : answer.question().loads()) {
            Medical medical = load.nature().medical();
            if (medical != null) {
                blocks.add(block(load.name(), medical, null));
            }
        }
        return blocks;
    }

    private static Page.Health block(String name, Medical medical, @Nullable MedicalNote note) {
        List<Page.Fact> facts = new ArrayList<>();
        facts.add(new Page.Fact(
                "Second plan",
                medical.hasSecondPlan() ? medical.secondPlan() : "none is named. This comes before any rig"));
        if (note != null) {
            facts.add(new Page.Fact("Worst found", note.verdict()));
            facts.add(new Page.Fact("Storm starts", storms(note.worst())));
            facts.add(new Page.Fact("Other years", otherYears(note.worst())));
            facts.add(new Page.Fact("Without power", withoutPower(note.gap())));
        }
        facts.add(new Page.Fact("Person can bridge", bridge(medical)));
        facts.add(new Page.Fact("Alarm", medical.hasAlarm() ? medical.alarm() : "none is named"));
        facts.add(new Page.Fact("Who acts", whoActs(medical)));
        return new Page.Health("Someone's health hangs on: " + name, facts);
    }

    private static String storms(WorstCase worst) {
        String words = "begun on the darkest twentieth of days " + lasted(worst.darkest()) + "; on the coldest "
                + lasted(worst.coldest());
        return Double.isNaN(worst.stormHours()) ? words : words + ", with all that storms do";
    }

    private static String otherYears(WorstCase worst) {
        if (worst.confirmed() == null) {
            return "this weather cannot be drawn again, so nothing confirms it";
        }
        String storm = worst.stormConfirmed() == null ? "" : "; on storm days " + lasted(worst.stormConfirmed());
        return "in " + Counted.of(worst.confirmYears(), "other year") + " " + lasted(worst.confirmed()) + storm;
    }

    private static String lasted(CarriedShare share) {
        int failed = WorstCase.failed(share);
        return failed == 0
                ? String.format(Locale.ROOT, "it lasted through all %,d walked", share.outages())
                : String.format(Locale.ROOT, "it failed in %,d of %,d", failed, share.outages());
    }

    private static String withoutPower(Gap gap) {
        String how = gap.way().words() + " (" + gap.way().basis().words() + ": "
                + gap.way().source() + ")";
        return switch (gap.way()) {
            case BY_ITSELF, BY_HAND -> "about " + PlainTime.words(gap.seconds()) + " each time the grid fails: " + how;
            case NOBODY -> "until the grid is back: " + how;
            case UNPLUGGED -> "never: " + how;
        };
    }

    private static String bridge(Medical medical) {
        return medical.bridgeSeconds() == 0
                ? "nothing: no moment without it"
                : PlainTime.words(medical.bridgeSeconds()) + " without it, by what the plan says";
    }

    private static String whoActs(Medical medical) {
        if (medical.whoActs().isBlank()) {
            return "nobody is named";
        }
        return medical.whoActs()
                + (medical.ableToAct() ? ", always there and able to" : ", but not always there and able to");
    }

    private static String names(Answer answer) {
        return answer.question().loads().stream()
                .filter(load -> load.nature().medical() != null)
                .map(Load::name)
                .collect(Collectors.joining(", "));
    }
}
