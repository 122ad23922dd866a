package tideover.engine.rig;

import static tideover.engine.why.Finding.atMost;
import static tideover.engine.why.Finding.inWords;

import java.util.List;
import tideover.engine.load.Load;
import tideover.engine.load.Medical;
import tideover.engine.quantity.PlainTime;
import tideover.engine.why.Basis;
import tideover.engine.why.Finding;
import tideover.engine.why.Verdict;

/**
 * What must be arranged around a load that somebody's health hangs on before any rig is worth looking at: something that
 * tells when it stops, somebody who then acts, a plan without the rig, and no longer without power than the person can be.
 * What is not told counts as not there. How long that is, is for the maker and the care team to say, not for a program.
 */
final class MedicalRules {
    private MedicalRules() {}

    static void find(Rig rig, List<Load> loads, List<Finding> found) {
        for (Load load : loads) {
            Medical medical = load.nature().medical();
            if (medical != null && load.plugged()) {
                gap(load, medical, Gap.of(rig, load, medical), found);
            }
        }
        arrangements(loads, found);
    }

    /** What depends on the plan alone. */
    static void arrangements(List<Load> loads, List<Finding> found) {
        for (Load load : loads) {
            Medical medical = load.nature().medical();
            if (medical != null) {
                essential(load, found);
                alarm(load.name(), medical, found);
                nobody(load.name(), medical, found);
                secondPlan(load.name(), medical, found);
            }
        }
    }

    private static void gap(Load load, Medical medical, Gap gap, List<Finding> found) {
        String rule = "medical-gap";
        String bridge = medical.bridgeSeconds() == 0
                ? "The person cannot be without it at all"
                : "The person can be without it for " + PlainTime.words(medical.bridgeSeconds());
        if (gap.way() == Gap.Way.NOBODY) {
            found.add(inWords(
                    rule,
                    Verdict.FAIL,
                    gap.way().basis(),
                    gap.way().source(),
                    "When the grid fails %s goes off and stays off: it is not told that this rig takes over by itself, and"
                            + " nobody is named who is always there and able to plug it over. %s.",
                    load.name(),
                    bridge));
            return;
        }
        boolean itself = gap.way() == Gap.Way.BY_ITSELF;
        boolean tooLong = gap.seconds() > medical.bridgeSeconds();
        String how = itself
                ? "the rig takes over by itself if it stands plugged into the wall, charged and switched on, and %2$s is"
                        + " plugged into it all the time"
                : "it is not told that this rig takes over by itself, so %4$s must notice, go there and plug it over";
        String then = !tooLong
                ? ""
                : itself
                        ? " It needs a battery of its own, or a rig that takes over faster: ask its maker."
                        : " It needs a battery of its own, or a rig that takes over by itself.";
        found.add(atMost(
                rule,
                Verdict.FAIL,
                gap.seconds(),
                medical.bridgeSeconds(),
                "s",
                gap.way().basis(),
                gap.way().source(),
                "Each time the grid fails %2$s is without power for about %1$s: " + how + ". %3$s.%5$s",
                PlainTime.words(gap.seconds()),
                load.name(),
                bridge,
                medical.whoActs(),
                then));
    }

    /** No outage is judged by what is nice to have, so nothing is known of it. */
    private static void essential(Load load, List<Finding> found) {
        if (!load.essential()) {
            found.add(inWords(
                    "medical-nice-to-have",
                    Verdict.FAIL,
                    Basis.YOURS,
                    "the plan",
                    "%s is down as nice to have, and somebody's health hangs on it: no outage is judged by what is nice to"
                            + " have. Make it essential.",
                    load.name()));
        }
    }

    private static void alarm(String name, Medical medical, List<Finding> found) {
        found.add(inWords(
                "medical-alarm",
                medical.hasAlarm() ? Verdict.PASS : Verdict.FAIL,
                Basis.YOURS,
                "the plan",
                medical.hasAlarm()
                        ? "What tells that %1$s has stopped: %2$s. Try it with the plug pulled, at night and from the bed of"
                                + " whoever must hear it."
                        : "Nothing is named that tells when %1$s has stopped: with everybody asleep it could stay off for"
                                + " hours. Ask its maker for an alarm that works without the mains, and name it in the plan.",
                name,
                medical.alarm()));
    }

    private static void nobody(String name, Medical medical, List<Finding> found) {
        boolean named = !medical.whoActs().isBlank();
        found.add(inWords(
                "medical-nobody",
                medical.someoneAble() ? Verdict.PASS : Verdict.FAIL,
                Basis.YOURS,
                "the plan",
                medical.someoneAble()
                        ? "Who acts when %1$s stops: %2$s. Let them do it once, in the dark, before it is needed."
                        : named
                                ? "%2$s is named to act when %1$s stops, but is not always there and able to. Find somebody who"
                                        + " is, or agree with the care team where to go before the storm."
                                : "Nobody is named who acts when %1$s stops. Find somebody who is always there and able to, or"
                                        + " agree with the care team where to go before the storm.",
                name,
                medical.whoActs()));
    }

    private static void secondPlan(String name, Medical medical, List<Finding> found) {
        found.add(inWords(
                "medical-second-plan",
                medical.hasSecondPlan() ? Verdict.PASS : Verdict.FAIL,
                Basis.YOURS,
                "the plan",
                medical.hasSecondPlan()
                        ? "What is done without this rig if %1$s stays off: %2$s. Keep it ready however good the rig is."
                        : "No second plan is named for %1$s. Every rig can fail: agree with the care team what is done without"
                                + " it, such as a spare that needs no power or a place to go to, and name it in the plan.",
                name,
                medical.secondPlan()));
    }
}
