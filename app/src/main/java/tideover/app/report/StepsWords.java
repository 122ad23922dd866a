package tideover.app.report;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import tideover.engine.answer.Question;
import tideover.engine.answer.Steps;
import tideover.engine.proof.CarriedShare;
import tideover.engine.rig.Chosen;

/** What text and JSON say of buying in steps. */
final class StepsWords {
    static final String OWNED =
            "The first step's main parts, small parts and tools serve again and are paid once. Small parts are"
                    + " counted kind by kind, metre by metre: cable that was cut for the first step may be too short for a new run.";

    private StepsWords() {}

    static String sentence(Steps steps) {
        Question question = steps.question();
        Steps.Step first = steps.first();
        Steps.Step second = steps.second();
        if (first == null || second == null) {
            return "No rig within " + money(steps, steps.nowCents())
                    + " keeps every rule and carries a single one of the " + Words.outages(question)
                    + ": better wait for the second sum." + together(steps, " One step for both, ", ".");
        }
        String added = steps.addsNothing()
                ? "nothing that " + money(steps, steps.laterCents()) + " more would add is better"
                : money(steps, second.paid().totalCents()) + " later makes it "
                        + Words.of100(second.rig().proof().share().share());
        return money(steps, first.paid().totalCents()) + " now carries "
                + Words.share(first.rig().proof().share(), steps.years()) + " " + Words.outages(question) + "; " + added
                + ". " + met(steps) + together(steps, " Both sums in one step would carry ", ".");
    }

    private static String together(Steps steps, String lead, String tail) {
        Steps.Whole whole = steps.together();
        return whole == null ? "" : lead + Words.of100(whole.share().share()) + tail;
    }

    /** Where somebody's health hangs on it no target is called met. */
    static String met(Steps steps) {
        if (steps.medical()) {
            return steps.firstMet() == Steps.Met.NEVER
                    ? "Neither step carries every outage that was tried, and somebody's health hangs on it."
                    : "Nothing was found that what is there "
                            + (steps.firstMet() == Steps.Met.AT_ONCE ? "after the first step" : "after the second step")
                            + " fails; that is no promise, and somebody's health hangs on it.";
        }
        String target = "The target, " + Words.of100(steps.question().outage().targetShare()) + ", is ";
        return switch (steps.firstMet()) {
            case AT_ONCE -> target + "met from the first step on.";
            case LATER -> target + "met with the second step, not before.";
            case NEVER -> target + "met by neither step.";
        };
    }

    static String money(Steps steps, long cents) {
        return Words.money(cents, steps.question().currency());
    }

    /** Share, other years, hours, what binds, of what is there after a step. */
    static List<Page.Fact> facts(Steps steps, Steps.Step step) {
        List<Page.Fact> facts = new ArrayList<>();
        facts.add(new Page.Fact("Carries", share(steps, step.rig().proof().share())));
        facts.add(new Page.Fact("Other years", otherYears(steps, step.rig().confirmed())));
        if (step.rig().proof().storm() != null) {
            facts.add(new Page.Fact(
                    "In a storm", share(steps, step.rig().proof().storm().share())));
        }
        facts.add(new Page.Fact("Hours carried", Words.hoursCarried(step.rig().proof())));
        facts.add(new Page.Fact("What binds", Words.binds(step.rig().proof())));
        facts.add(new Page.Fact(
                "Paid in this step",
                money(steps, step.paid().totalCents()) + ": parts "
                        + money(steps, step.paid().partsCents()) + ", small parts "
                        + money(steps, step.paid().smallPartsCents()) + ", tools "
                        + money(steps, step.paid().toolsCents())
                        + (step.paid().hardWiredCents() > 0
                                ? ", joining " + money(steps, step.paid().hardWiredCents())
                                : "")
                        + (step.paid().taxCents() + step.paid().shippingCents() > 0
                                ? ", tax and shipping "
                                        + money(
                                                steps,
                                                step.paid().taxCents()
                                                        + step.paid().shippingCents())
                                : "")));
        return facts;
    }

    /** Where somebody's health hangs on it counts, and no share. */
    private static String share(Steps steps, CarriedShare share) {
        return steps.medical()
                ? share.carried() + " of " + share.outages() + " outages that were tried"
                : Words.share(share, steps.years());
    }

    static String otherYears(Steps steps, @Nullable CarriedShare confirmed) {
        return confirmed == null
                ? "the weather cannot be drawn again"
                : share(steps, confirmed) + " on " + Counted.of(steps.options().confirmYears(), "other year");
    }

    /** Main parts that a step adds to what was there. */
    static List<Chosen> added(Steps.Step step, Steps.@Nullable Step before) {
        List<Chosen> added = new ArrayList<>();
        for (Chosen one : step.rig().rig().chosen()) {
            int there = before == null
                    ? 0
                    : before.rig().rig().chosen().stream()
                            .filter(owned -> owned.part()
                                    .listing()
                                    .id()
                                    .equals(one.part().listing().id()))
                            .mapToInt(Chosen::count)
                            .sum();
            if (one.count() > there) {
                added.add(new Chosen(one.part(), one.count() - there));
            }
        }
        return added;
    }
}
