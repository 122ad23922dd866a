package tideover.app.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import tideover.engine.answer.Answer;
import tideover.engine.answer.ProvenRig;
import tideover.engine.answer.Question;
import tideover.engine.load.ColdLoad;
import tideover.engine.load.Load;
import tideover.engine.load.Need;
import tideover.engine.load.PitLoad;
import tideover.engine.outage.Outage;
import tideover.engine.outage.Storm;
import tideover.engine.proof.Lift;
import tideover.engine.proof.Proof;
import tideover.engine.proof.StormProof;
import tideover.engine.quantity.PlainNumber;
import tideover.engine.why.Basis;
import tideover.engine.why.MarginNote;

/** What is owed to people, how it fared, what storms do and what costs nothing, in words that text, page and JSON share. */
final class KeptWords {
    /** Of a load, the figures that its keeping hangs on, as the margin notes name them. */
    private static final List<String> TELLING = List.of(
            "draws", "food", "medicine", "full", "ice", "walls", "pumps", "usual inflow", "home cools with", "need");

    private static final double LEAST_SHOWN_SHARE = 0.0005;
    private static final double LEAST_SHOWN_HOURS = 0.05;

    private static final String IN_STORM = " (storm starts)";

    private KeptWords() {}

    /** What a load is owed and when it may run. */
    static String owed(Load load) {
        return load.owed() + duty(load);
    }

    private static String duty(Load load) {
        if (!(load instanceof ColdLoad cold)) {
            return "";
        }
        return cold.plugged() ? "; runs " + cold.duty().words() : "; lives on its ice";
    }

    /** Such as "92 W"; of what switches itself while it runs, of a box the most. */
    static String watts(Load load) {
        if (!load.plugged()) {
            return "no plug";
        }
        if (!load.keeps()) {
            return PlainNumber.of(load.runningW()) + " W";
        }
        return load instanceof ColdLoad
                ? String.format(Locale.ROOT, "at most %.0f W while it runs", Math.ceil(load.runningW() - 1e-9))
                : PlainNumber.of(load.runningW()) + " W while it runs";
    }

    /** How its figures are known, such as "draws: maker's figure; need: published"; empty where no note tells. */
    static String known(Load load, List<MarginNote> notes) {
        List<String> known = new ArrayList<>();
        for (String figure : TELLING) {
            notes.stream()
                    .filter(note -> note.name().equals(load.name() + ": " + figure))
                    .findFirst()
                    .ifPresent(note -> known.add(figure + ": " + note.basis().words()));
        }
        return String.join("; ", known);
    }

    /** What stands near the top beside the share: nothing bought, what is not known, and storms. */
    static List<Page.Fact> top(Answer answer, ProvenRig rig) {
        List<Page.Fact> facts = new ArrayList<>();
        if (answer.medical()) {
            return facts;
        }
        String bare = bare(answer.question(), rig.proof());
        if (!bare.isEmpty()) {
            facts.add(new Page.Fact("Nothing bought", bare));
        }
        facts.add(new Page.Fact(
                "Not known", DoubtWords.together(rig.doubts(), rig.proof().storm() != null)));
        return facts;
    }

    /** How much is carried without any rig; empty where a need follows the clock. */
    static String bare(Question question, Proof proof) {
        if (Double.isNaN(proof.bareShare())) {
            return "";
        }
        List<ColdLoad> boxes = question.loads().stream()
                .filter(ColdLoad.class::isInstance)
                .map(ColdLoad.class::cast)
                .toList();
        String doors = boxes.isEmpty()
                ? ""
                : boxes.stream().allMatch(load -> load.box().openingsPerDay() == 0)
                        ? " and the doors shut"
                        : " and the doors opened no more than the plan says";
        String words = "With nothing bought" + doors + " " + Words.of100(proof.bareShare()) + " outages are carried.";
        if (proof.bareShare() < question.outage().targetShare()) {
            return words;
        }
        if (proof.storm() != null) {
            return words + " That meets the target but for storms, which were not tried without power.";
        }
        if (boxes.stream().anyMatch(load -> load.need() instanceof Need.Band)) {
            return words + " That meets the target; of medicine ask the pharmacist before you rely on it.";
        }
        return words + " That meets the target: nothing need be bought."
                + (boxes.isEmpty() ? "" : " Put a thermometer in the box, and read below what is said of food.");
    }

    /** Against what a rig that met the target is tried again. */
    static String tried(Question question) {
        boolean stormy = question.isStormy();
        String years = "on the confirming years";
        if (!stormy) {
            return years;
        }
        return question.weather().canDrawAgain() ? "on storm starts or " + years : "on storm starts";
    }

    /** Such as "; on storm starts 82.0 of 100"; empty where storms only take the grid. */
    static String onStorms(Proof proof) {
        StormProof storm = proof.storm();
        return storm == null
                ? ""
                : "; on storm starts " + Words.of100(storm.share().share());
    }

    /** What a storm does and whether it is borne; empty where storms only take the grid. */
    static String storm(Answer answer, Proof proof) {
        StormProof storm = proof.storm();
        if (storm == null) {
            return "";
        }
        String does = stormDoes(answer.question());
        if (answer.medical()) {
            return does + ".";
        }
        double target = answer.question().asked().targetShare();
        return does + ". Starts on the darkest and the coldest days with all that: "
                + Words.share(storm.share(), proof.years()) + ", which "
                + (storm.share().share() >= target ? "meets" : "misses") + " the target of " + Words.percent(target)
                + ".";
    }

    static String stormDoes(Question question) {
        Outage outage = question.outage().inStorm();
        List<String> does = new ArrayList<>();
        does.add("panels come out after " + outage.panelsOutAfterHours() + " h");
        for (Load load : question.loads()) {
            if (load instanceof PitLoad pit && pit.inflow().swells()) {
                does.add(String.format(
                        Locale.ROOT,
                        "%s: water rises to %s L/h after %s h and ebbs within %s h",
                        load.name(),
                        PlainNumber.of(pit.inflow().peakLPerH()),
                        PlainNumber.of(pit.inflow().peakHour()),
                        PlainNumber.of(pit.inflow().ebbHours())));
            }
        }
        Storm storm = question.outage().storm();
        List<String> chilled = question.loads().stream()
                .filter(ColdLoad.class::isInstance)
                .map(ColdLoad.class::cast)
                .filter(load -> !Double.isNaN(load.chilledToDegC()))
                .map(load -> load.name() + " is cooled to " + PlainNumber.of(load.chilledToDegC()) + " degC")
                .toList();
        if (storm != null && storm.forecast()) {
            does.add("it is known a day ahead" + (chilled.isEmpty() ? "" : " and " + String.join(", ", chilled)));
        } else if (storm != null) {
            does.add("nobody knows a day ahead");
        }
        return String.join("; ", does);
    }

    /**
     * One load that keeps something.
     *
     * @param owed    what it is owed, and when it may run
     * @param worst   how it fared in the worst outage
     * @param inStorm in the worst storm start; empty where storms only take the grid
     * @param guessed which of its figures nobody measured, read or chose; may be empty
     */
    record Fared(String name, String owed, String worst, String inStorm, String guessed) {}

    static List<Fared> needs(Answer answer, ProvenRig rig) {
        Proof proof = rig.proof();
        StormProof storm = proof.storm();
        List<KeptFate> worst = KeptFate.of(proof.worst());
        List<KeptFate> inStorm = storm == null ? List.of() : KeptFate.of(storm.worst());
        List<Fared> all = new ArrayList<>();
        for (int i = 0; i < worst.size(); i++) {
            Load load = worst.get(i).load();
            all.add(new Fared(
                    load.name(),
                    owed(load) + agency(load),
                    worst.get(i).words(),
                    inStorm.isEmpty() ? "" : inStorm.get(i).words(),
                    guessed(load, answer.notes())));
        }
        return all;
    }

    /** As a table; null where nothing keeps anything. */
    static @Nullable Table needs(List<Fared> all) {
        if (all.isEmpty()) {
            return null;
        }
        boolean stormy = all.stream().anyMatch(one -> !one.inStorm().isEmpty());
        Table.Builder table = Table.titled("How each fared at its worst")
                .words("load")
                .words("owed")
                .words("in the worst outage");
        if (stormy) {
            table.words("in the worst storm start");
        }
        for (Fared one : all) {
            if (stormy) {
                table.row(one.name(), one.owed(), one.worst(), one.inStorm());
            } else {
                table.row(one.name(), one.owed(), one.worst());
            }
        }
        return table.done();
    }

    private static String guessed(Load load, List<MarginNote> notes) {
        return TELLING.stream()
                .filter(figure -> notes.stream()
                        .anyMatch(note -> note.name().equals(load.name() + ": " + figure)
                                && (note.basis() == Basis.GUESS
                                        || note.basis() == Basis.COMMON_PRACTICE
                                        || note.basis() == Basis.FROM_MEMORY)))
                .collect(Collectors.joining(", "));
    }

    private static String agency(Load load) {
        return load instanceof ColdLoad cold && !Double.isInfinite(cold.agencyHours())
                ? String.format(
                        Locale.ROOT,
                        "; the agencies allow %.0f h without power, %s",
                        Math.floor(cold.agencyHours()),
                        cold.box().kind().freezes()
                                ? "counted anew only once its food is cold again"
                                : "all such hours together")
                : "";
    }

    /** What came of a habit, such as "gains 3.1 of 100 and 4.2 h on average". */
    static String gain(Lift habit) {
        String share = change(100 * habit.shareGain(), 100 * LEAST_SHOWN_SHARE, " of 100");
        String hours = change(habit.meanHoursGain(), LEAST_SHOWN_HOURS, " h on average");
        if (share.isEmpty() && hours.isEmpty()) {
            return "changes nothing";
        }
        if (share.isEmpty() || hours.isEmpty()) {
            return share + hours;
        }
        boolean alike = habit.shareGain() > 0 == habit.meanHoursGain() > 0;
        return share + (alike ? " and " + hours.substring(hours.indexOf(' ') + 1) : ", " + hours);
    }

    private static String change(double by, double least, String unit) {
        return Math.abs(by) < least
                ? ""
                : String.format(Locale.ROOT, "%s %.1f%s", by > 0 ? "gains" : "loses", Math.abs(by), unit);
    }

    static boolean onlyInStorm(Lift habit) {
        return habit.words().endsWith(IN_STORM);
    }

    /** What is done, by whom it is done to: "Chest freezer: its door never opened". */
    static String habit(Lift habit) {
        int colon = habit.limit().lastIndexOf(": ");
        return (colon < 0 ? habit.limit() : habit.limit().substring(0, colon)) + ": " + habit.words();
    }

    /** What the owner could do otherwise. */
    static Table habits(List<Lift> habits) {
        Table.Builder table = Table.titled("What you could do for nothing, each by itself")
                .words("what")
                .words("what it does")
                .words("counted on");
        for (Lift habit : habits) {
            table.row(
                    habit(habit).replace(IN_STORM, ""),
                    gain(habit),
                    onlyInStorm(habit) ? "storm starts alone" : "every start");
        }
        return table.done();
    }
}
