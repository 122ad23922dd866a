package tideover.engine.answer;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import tideover.engine.load.Load;
import tideover.engine.load.Medical;
import tideover.engine.rig.Gap;
import tideover.engine.rig.Rig;
import tideover.engine.rig.Sockets;

/**
 * What there is to say of one load that somebody's health hangs on, on one rig. Never that it is met.
 *
 * @param load   its name
 * @param gap    how long it is without power each time the grid fails
 * @param fed    whether the rig has an outlet for it
 * @param worst  the worst that was found
 */
public record MedicalNote(String load, Medical medical, Gap gap, boolean fed, WorstCase worst) {
    /** What stands beside every such answer. Common knowledge; the maker, the care team and the utility know better. */
    public static final String MIND =
            "Where somebody is in danger call for help at once, and do not wait for the battery to run down. The maker of the"
                    + " device and the care team decide what will do, not this program: show them this page, and let them say"
                    + " how to try the change-over safely. Call them before the storm season, and ask the power company"
                    + " whether it keeps a list of homes where somebody's health hangs on power; being on it does not keep the"
                    + " power on.";

    /** One for each such load, in the loads' order. */
    static List<MedicalNote> of(Question question, Rig rig, WorstCase worst) {
        List<MedicalNote> notes = new ArrayList<>();
        for (Load load : question.loads()) {
            Medical medical = load.nature().medical();
            if (medical != null) {
                notes.add(new MedicalNote(load.name(), medical, Gap.of(rig, load, medical), isFed(rig, load), worst));
            }
        }
        return notes;
    }

    private static boolean isFed(Rig rig, Load load) {
        return Sockets.of(rig, List.of(load)).plugged().stream()
                .allMatch(one -> one.direct() || one.throughInverter(rig));
    }

    /** What the walks found, in plain sentences. */
    public String verdict() {
        if (!fed) {
            return "No: this rig has no outlet that feeds " + load + ". It is off from the first moment on.";
        }
        String shortest = String.format(
                Locale.ROOT,
                "No share of outages is good enough. In %,d weather %s walked hour by hour the shortest this rig lasted was %s.",
                worst.years(),
                worst.years() == 1 ? "year" : "years",
                worst.shortestWords());
        if (!worst.nothingEndedIt()) {
            return shortest + otherYears()
                    + " It can end while the grid is still out, so the second plan must be ready from the first hour.";
        }
        return shortest + worst.spareWords()
                + " Nothing walked ended it sooner than asked, which is no promise: weather can be worse, outages longer, and"
                + " any part can fail. It does not replace the second plan.";
    }

    /** Empty where other years found nothing. */
    private String otherYears() {
        int ended = WorstCase.failed(worst.confirmed()) + WorstCase.failed(worst.stormConfirmed());
        return ended == 0
                ? ""
                : String.format(
                        Locale.ROOT,
                        " On %,d other %s it ended sooner than asked in %,d of the outages walked.",
                        worst.confirmYears(),
                        worst.confirmYears() == 1 ? "year" : "years",
                        ended);
    }
}
