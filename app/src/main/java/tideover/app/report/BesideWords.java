package tideover.app.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import tideover.engine.answer.Answer;
import tideover.engine.answer.Beside;
import tideover.engine.answer.Choice;
import tideover.engine.answer.NextStep;
import tideover.engine.answer.ProvenRig;
import tideover.engine.answer.Steadiness;
import tideover.engine.proof.CarriedShare;
import tideover.engine.search.Rated;

/** What stands beside the winner, in words. */
final class BesideWords {
    /** Heading of what {@code --by-mass} asks for. */
    static final String MASS_FRONT = "Mass against share: nothing lighter carries more";

    private final Answer answer;
    private final Beside beside;
    private final String currency;

    private BesideWords(Answer answer) {
        this.answer = answer;
        this.beside = answer.beside();
        this.currency = answer.question().currency();
    }

    /** One for each thing that stands there; none where nothing does. */
    static List<Page.Fact> facts(Answer answer) {
        BesideWords words = new BesideWords(answer);
        List<Page.Fact> facts = new ArrayList<>();
        Choice choice = answer.beside().choice();
        if (choice != null) {
            facts.add(new Page.Fact("The safer one", words.safer(choice)));
            facts.add(new Page.Fact("The lighter one", words.lighter(choice)));
        }
        words.steadiness(facts);
        CarriedShare lean = answer.beside().lean();
        if (lean != null) {
            facts.add(new Page.Fact("A fifth less", words.lean(lean), Reasons.lean(answer, lean)));
        }
        NextStep step = answer.beside().nextStep();
        if (step != null) {
            facts.add(new Page.Fact("Next step", words.step(step)));
        }
        return facts;
    }

    private String safer(Choice choice) {
        return choice.winnerIsSafer()
                ? "this one: " + choice.saferWhy() + "."
                : other(choice.safer(), choice) + choice.saferWhy() + ".";
    }

    private String lighter(Choice choice) {
        return choice.winnerIsLighter()
                ? "this one: " + choice.lighterWhy() + "."
                : other(choice.lighter(), choice) + choice.lighterWhy() + ".";
    }

    /** Such as "#12 for 20.00 USD more (Foo box): ". */
    private String other(Rated other, Choice choice) {
        return "#" + other.number() + " for "
                + more(other.price().totalCents() - choice.winner().price().totalCents()) + " ("
                + other.rig().words()
                + "): ";
    }

    private String more(long cents) {
        return cents == 0 ? "the same price" : Words.money(Math.abs(cents), currency) + (cents > 0 ? " more" : " less");
    }

    private void steadiness(List<Page.Fact> facts) {
        Steadiness steadiness = beside.steadiness();
        ProvenRig rig = answer.rig();
        if (rig == null || answer.shortlist() == null) {
            return;
        }
        if (steadiness == null) {
            facts.add(new Page.Fact(
                    "Other weather",
                    "these years cannot be drawn again, so nobody can tell how steady the winner is."));
            return;
        }
        List<String> wins = new ArrayList<>();
        for (Rated one : steadiness.winners()) {
            boolean winner = one.rig().id().equals(rig.rig().id());
            wins.add((winner ? "this one" : "#" + one.number() + " (" + money(one) + ")") + " "
                    + times(steadiness.wins(one)));
        }
        if (steadiness.winners().stream()
                .noneMatch(one -> one.rig().id().equals(rig.rig().id()))) {
            wins.add("this one never");
        }
        if (steadiness.without() > 0) {
            wins.add("none of them " + times(steadiness.without()));
        }
        facts.add(new Page.Fact(
                "Other weather",
                String.format(
                        Locale.ROOT,
                        "in %d other draws of %s, cheapest to carry %s: %s. Asked were %s, those nearest in price and"
                                + " share; what was far off here may do better there.",
                        steadiness.draws().size(),
                        Counted.of(steadiness.years(), "year"),
                        answer.medical() ? "every outage walked" : "what is asked",
                        String.join(", ", wins),
                        Counted.of(steadiness.asked(), "rig"))));
    }

    private static String times(int count) {
        return count == 1 ? "once" : count == 2 ? "twice" : count + " times";
    }

    private String money(Rated one) {
        return Words.money(one.price().totalCents(), currency);
    }

    private String lean(CarriedShare lean) {
        String with = "with 20 % less sun and a store 20 % smaller, both at once, ";
        if (answer.medical()) {
            return with
                    + String.format(
                            Locale.ROOT,
                            "%,d of the %,d outages walked end it before their time.",
                            lean.outages() - lean.carried(),
                            lean.outages());
        }
        ProvenRig rig = answer.rig();
        String planned = rig == null
                ? ""
                : "; as planned " + Words.of100(rig.proof().share().share());
        CarriedShare confirmed = rig == null ? null : rig.confirmed();
        String others = confirmed == null
                ? ""
                : ", on " + Counted.of(answer.options().confirmYears(), "other year") + " "
                        + Words.of100(confirmed.share());
        return with + "it carries " + Words.share(lean, answer.years()) + planned + others + ".";
    }

    private String step(NextStep step) {
        NextStep.Change found = step.found();
        String from =
                answer.rig() == null ? "of the nearest miss, " + step.from().words() + ": " : "";
        if (found == null) {
            return from
                    + (step.followed()
                            ? "no single change on the parts list, of " + step.tried() + " that keep every rule, "
                                    + goal(step) + "."
                            : "none was found that " + goal(step) + " before the looking was given up; of "
                                    + step.tried()
                                    + " single changes that keep every rule the dearer ones were not walked.");
        }
        return from + found.words() + "; " + more(found.price().totalCents() - step.fromCents())
                + (found.overBudget() ? ", which is over the budget" : "") + ". Then " + carries(step, found)
                + ". It is the cheapest single change that " + goal(step) + ".";
    }

    private String carries(NextStep step, NextStep.Change found) {
        if (answer.medical()) {
            return found.share() >= 1 ? "it carries every outage walked" : "fewer outages end it";
        }
        return "it carries " + Words.of100(found.share()) + " in the place of " + Words.of100(step.fromShare());
    }

    private String goal(NextStep step) {
        if (step.goalShare() >= 1) {
            return "carries every outage walked";
        }
        return step.isBeyondTarget(answer.question().asked().targetShare()) && answer.meets()
                ? "carries at least " + Words.of100(step.goalShare())
                : "reaches the " + Words.of100(step.goalShare()) + " asked"
                        + (answer.question().weather().canDrawAgain() ? ", on other years too" : "");
    }
}
