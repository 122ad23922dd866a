package tideover.app.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Collectors;
import tideover.engine.answer.Answer;
import tideover.engine.answer.ProvenRig;
import tideover.engine.answer.Question;
import tideover.engine.answer.Way;
import tideover.engine.proof.CarriedShare;
import tideover.engine.proof.Ending;
import tideover.engine.proof.Lift;
import tideover.engine.proof.Proof;
import tideover.engine.proof.TideLine;
import tideover.engine.proof.Trace;
import tideover.engine.quantity.ModelYear;
import tideover.engine.search.Rated;
import tideover.engine.search.Shortlist;
import tideover.engine.why.Verdict;

/** The phrasing that text, JSON and page share. */
public final class Words {
    private static final double LEAST_SHOWN_HOURS = 0.05;

    private Words() {}

    /** The whole answer in one sentence with its number and interval. */
    public static String sentence(Answer answer) {
        if (answer.medical()) {
            return MedicalWords.sentence(answer);
        }
        Question question = answer.question();
        Way other = answer.cheaperWithoutRig();
        if (other != null) {
            return WayWords.sentence(answer, other);
        }
        if (answer.rig() == null) {
            return nothing(answer) + WayWords.loss(answer);
        }
        String price = money(answer.rig().price().totalCents(), question.currency());
        String lead;
        if (answer.shortlist() != null) {
            lead = "The least that will do costs " + price + " and carries ";
        } else {
            lead = "This rig costs " + price + given(answer, answer.rig());
        }
        return lead + share(answer.rig().proof().share(), answer.years()) + " " + outages(question) + confirmed(answer)
                + KeptWords.onStorms(answer.rig().proof())
                + ": " + answer.rig().rig().words() + "." + WayWords.loss(answer);
    }

    /** A share of outages must never hide a broken rule: a load without an outlet, say, is not in the share. */
    private static String given(Answer answer, ProvenRig rig) {
        List<String> broken = rig.findings().stream()
                .filter(finding -> finding.verdict() == Verdict.FAIL)
                .map(finding -> finding.rule().replace('-', ' '))
                .distinct()
                .toList();
        if (broken.isEmpty()) {
            return (answer.meets() ? "" : ", misses the target") + " and carries ";
        }
        return ", breaks " + (broken.size() == 1 ? "a rule (" : "rules (") + String.join(", ", broken)
                + ") and so will not do; what it can feed it carries through ";
    }

    private static String nothing(Answer answer) {
        Question question = answer.question();
        String within = question.budgetCents().isPresent()
                ? " within " + money(question.budgetCents().getAsLong(), question.currency())
                : "";
        String miss = "";
        Shortlist list = answer.shortlist();
        if (list != null && !list.unconfirmed().isEmpty()) {
            Rated best = list.unconfirmed().get(0);
            miss = " The nearest, " + best.rig().words() + " for "
                    + money(best.price().totalCents(), question.currency()) + ", carries " + of100(best.share())
                    + " on the first weather years and fewer than asked " + KeptWords.tried(question) + ".";
        } else if (list != null && !list.misses().isEmpty()) {
            Rated best = list.misses().get(0);
            miss = " The nearest, " + best.rig().words() + " for "
                    + money(best.price().totalCents(), question.currency()) + ", carries " + of100(best.share()) + ".";
        } else if (list != null) {
            miss = list.counts().leastOverBudgetCents().isPresent()
                    ? " The cheapest rig that keeps every rule costs "
                            + money(list.counts().leastOverBudgetCents().getAsLong(), question.currency()) + "."
                    : " No rig of these parts keeps the rules; the counts by rule say why.";
        }
        if (list != null
                && !list.misses().isEmpty()
                && list.counts().leastOverBudgetCents().isPresent()) {
            miss += String.format(
                    Locale.ROOT,
                    " %,d more cost from %s on: try a higher budget.",
                    list.counts().overBudget(),
                    money(list.counts().leastOverBudgetCents().getAsLong(), question.currency()));
        }
        return "Nothing on the parts list carries " + of100(question.outage().targetShare()) + " " + outages(question)
                + within + "." + miss;
    }

    private static String confirmed(Answer answer) {
        CarriedShare confirmed = answer.rig() == null ? null : answer.rig().confirmed();
        return confirmed == null
                ? ""
                : "; on " + Counted.of(answer.options().confirmYears(), "other year") + " " + of100(confirmed.share());
    }

    /** Such as "97.3 of 100 (90 % interval 96.1 to 98.0)". */
    public static String share(CarriedShare share, int years) {
        String interval = "90 % interval " + percent(share.low()) + " to " + percentUp(share.high());
        return share.carried() == share.outages()
                ? String.format(Locale.ROOT, "100 of 100 (%,d walked, none failed; %s)", share.outages(), interval)
                : of100(share.share()) + " (" + interval + ")";
    }

    /** Such as "outages of 72 h that begin in nov, dec, jan". */
    public static String outages(Question question) {
        return "outages of " + question.outage().hours() + " h that begin in "
                + months(question.outage().months());
    }

    /** Month names, or "any month". */
    public static String months(List<Integer> months) {
        return months.size() == 12 ? "any month" : String.join(", ", winterFirst(months));
    }

    /** Names of the months, a winter read from its autumn on: begun after the longest run of months not asked. */
    static List<String> winterFirst(List<Integer> months) {
        int first = 0;
        int longest = -1;
        for (int i = 0; i < months.size(); i++) {
            int before = months.get((i + months.size() - 1) % months.size());
            int gap = Math.floorMod(months.get(i) - before - 1, 12);
            if (gap > longest) {
                longest = gap;
                first = i;
            }
        }
        List<String> names = new ArrayList<>();
        for (int i = 0; i < months.size(); i++) {
            names.add(ModelYear.monthName(months.get((first + i) % months.size())));
        }
        return names;
    }

    /** Worst, 1 in 20 and median hours of the asked months. */
    public static String hoursCarried(Proof proof) {
        TideLine tide = proof.tideLine();
        return "worst " + hours(proof.worstHours(), tide) + ", 1 in 20 " + hours(proof.oneIn20Hours(), tide)
                + ", median " + hours(proof.medianHours(), tide) + "; asked " + tide.askedHours() + " h";
    }

    /** Hours carried on the store alone. */
    public static String noSun(Proof proof) {
        double least = Double.POSITIVE_INFINITY;
        double most = 0;
        for (int hour = 0; hour < proof.noSunHours().length(); hour++) {
            least = Math.min(least, proof.noSunHours().at(hour));
            most = Math.max(most, proof.noSunHours().at(hour));
        }
        return Math.floor(least) == Math.floor(most)
                ? String.format(Locale.ROOT, "%.0f h", Math.floor(least))
                : String.format(
                        Locale.ROOT,
                        "%.0f to %.0f h, by the hour in which it begins",
                        Math.floor(least),
                        Math.floor(most));
    }

    /** Why the outages that failed did, most frequent first; empty where none failed. */
    static String endings(Proof proof) {
        int failed = proof.endings().values().stream().mapToInt(count -> count).sum();
        return mostFrequent(proof.endings()).stream()
                .map(ending -> String.format(
                        Locale.ROOT,
                        "%s (%s)",
                        ending.getKey().words(),
                        ending.getValue() == failed
                                ? "all " + String.format(Locale.ROOT, "%,d", failed)
                                : String.format(Locale.ROOT, "%,d of %,d", ending.getValue(), failed)))
                .collect(Collectors.joining("; "));
    }

    /** Why an outage failed, such as ", because a motor could not be started"; empty where it did not. */
    static String because(Trace trace) {
        return trace.ending() == null ? "" : ", because " + trace.ending().words();
    }

    /** Those that are equally frequent stay in the engine's order. */
    static List<Map.Entry<Ending, Integer>> mostFrequent(Map<Ending, Integer> endings) {
        return endings.entrySet().stream()
                .sorted(Map.Entry.<Ending, Integer>comparingByValue().reversed())
                .toList();
    }

    /** Which limit binds, and what lifting it gains. */
    public static String binds(Proof proof) {
        Lift lift = proof.binding();
        if (lift.shareGain() > 0) {
            return String.format(
                    Locale.ROOT,
                    "%s: %s would carry %.1f more of 100",
                    lift.limit(),
                    lift.words(),
                    100 * lift.shareGain());
        }
        if (lift.meanHoursGain() < LEAST_SHOWN_HOURS) {
            return "nothing, in the years simulated";
        }
        boolean allCarried = proof.share().carried() == proof.share().outages();
        return String.format(
                Locale.ROOT,
                "%s %s: %s would give %.1f h more on average",
                allCarried
                        ? "nothing within the hours asked; beyond them"
                        : "no single step carries one more outage to its end;",
                lift.limit(),
                lift.words(),
                lift.meanHoursGain());
    }

    /** Months in whose starts no outage failed, or a phrase for none. */
    public static String monthsWithoutFailure(Proof proof) {
        String months = ModelYear.monthNames().stream()
                .filter(name -> proof.starts()
                        .monthWithoutFailure(ModelYear.monthNames().indexOf(name)))
                .collect(Collectors.joining(", "));
        return months.isEmpty() ? "no month" : months;
    }

    /** A share as "97.3 of 100", cut off and not rounded up, so that 100 means all. */
    public static String of100(double share) {
        return percent(share) + " of 100";
    }

    /** A share in hundredths with one decimal, cut off; 0 and 100 stand alone. */
    public static String percent(double share) {
        return tenths(Math.floor(share * 1000 + 1e-9));
    }

    /** The same, taken up to the next tenth, for the upper end of an interval. */
    public static String percentUp(double share) {
        return tenths(Math.ceil(share * 1000 - 1e-9));
    }

    private static String tenths(double tenths) {
        return tenths == 0 || tenths == 1000
                ? String.format(Locale.ROOT, "%.0f", tenths / 10)
                : String.format(Locale.ROOT, "%.1f", tenths / 10);
    }

    /** Hours, those at the cap as "144 h or more". */
    public static String hours(double hours, TideLine line) {
        return hours >= line.capHours()
                ? line.capHours() + " h or more"
                : String.format(Locale.ROOT, "%.0f h", Math.floor(hours));
    }

    /** Whole cents as "412.00 USD". */
    public static String money(long cents, String currency) {
        return String.format(Locale.ROOT, "%,d.%02d %s", cents / 100, cents % 100, currency);
    }

    /** What a rule asks, in a few plain words. */
    public static String rule(String id) {
        return switch (id) {
            case "no-outlet" -> "an essential load finds no outlet with its volts, hertz and plug";
            case "no-inverter" -> "a load wants AC and there is no inverter";
            case "inverter-load" -> "AC loads that can run together are more than the inverter gives";
            case "outlet-load" -> "loads on one kind of outlet are more than it gives";
            case "store-current" -> "loads take more current than the store gives";
            case "bus-voltage" -> "store, controller, inverter or enclosure want different volts";
            case "panel-voltage" -> "a cold panel's volts are more than the controller takes";
            case "panel-voltage-low" -> "a panel has too few volts to charge the store";
            case "parallel-limit" -> "more batteries side by side than their maker allows";
            case "series-limit" -> "more batteries in a row than their maker allows";
            case "apparent-load" -> "AC loads that can run together are more volt-amperes than the inverter gives";
            case "wave" -> "a load needs a sine wave and the inverter gives none";
            case "sleeps" -> "the inverter falls asleep under a load that nobody watches";
            case "start-surge" -> "starting motors take more volt-amperes than the inverter gives for a moment";
            case "start-time" -> "a motor starts longer than the surge lasts";
            case "start-current" -> "starting motors take more current than the store gives";
            case "start-sag" -> "starting motors pull the volts below the cut-off, even from a full store";
            case "inverter-window" -> "the store's volts leave the range in which the inverter works";
            case "slept-in" -> "used lithium cells of the livelier kinds where people sleep";
            case "panel-start-volts" -> "a panel has too few volts for the controller to begin";
            case "panel-input-amps" -> "the panels' short-circuit amps are more than the controller takes";
            case "chemistry-charge" -> "controller or charger have no programme for the battery's chemistry";
            case "charger-volts" -> "the charger is for other volts than the store's";
            case "charger-current" -> "the charger gives more current than the store takes";
            case "fits-inside" -> "the batteries are larger than the room in the enclosure";
            case "fits-terminals" -> "the enclosure's leads do not take the battery's terminals";
            case "fits-mass" -> "the batteries weigh more than the enclosure holds";
            case "ventilation" -> "a lead battery gets too little air in its enclosure, or nobody tells how much";
            case "flooded-slept-in" -> "flooded lead where people sleep";
            case "socket-volts" -> "sockets without a converter on a battery of other volts";
            case "car-socket-hours" -> "more than a car socket carries for hours";
            case "engine-plug" -> "no outlet of the engine or vehicle fits the charger";
            case "engine-watts" -> "the charger draws more than the engine or vehicle gives it";
            case "engine-fuel" -> "an outage burns more fuel than the tank holds and the plan stores";
            case "medical-engine" -> "somebody's health hangs on an engine that nobody able is named to start";
            case "at-hand" -> "more pieces than there are to be had";
            case "medical-gap" ->
                "a load that somebody's health hangs on is without power for longer than the person can be";
            case "medical-alarm" -> "nothing tells when a load has stopped that somebody's health hangs on";
            case "medical-nobody" -> "nobody able is named who acts when such a load stops";
            case "medical-second-plan" -> "no second plan is named for such a load";
            case "medical-nice-to-have" -> "such a load is down as nice to have";
            case "room-warmth" -> "the store stands too warm or too cold";
            case "engine-outdoors" -> "an engine runs outdoors only, far from doors and windows";
            default -> RuleWords.ofWiring(id);
        };
    }

    /** What became of the rigs that fell to no rule. */
    static List<String> searched(Shortlist.Counts counts) {
        List<String> sentences = new ArrayList<>();
        long byStore = counts.ruledOutByDemand();
        long byPanels = counts.ruledOutByArray() + counts.ruledOutBySort();
        if (byStore + byPanels > 0) {
            sentences.add(String.format(
                    Locale.ROOT,
                    "%,d could not have met the target, or been better than what is cheaper, with the best of everything else: %,d"
                            + " for their store and what it is asked for, %,d for their store and panels. Of these the rules of"
                            + " loads and wiring were not asked.",
                    byStore + byPanels,
                    byStore,
                    byPanels));
        }
        if (counts.notReached() > 0) {
            sentences.add(String.format(
                    Locale.ROOT, "%,d cost more than anything that was looked for.", counts.notReached()));
        }
        sentences.add(String.format(
                Locale.ROOT,
                "%,d kept every rule and were wired and priced; %,d of them were followed in full, step by step.",
                counts.priced(),
                counts.walked()));
        return sentences;
    }

    /** An hour of the weather years as "year 17, 14 dec, 18:00". */
    public static String moment(int weatherHour) {
        int year = weatherHour / ModelYear.HOURS + 1;
        int day = weatherHour / 24 % ModelYear.DAYS;
        return String.format(Locale.ROOT, "year %d, %s, %02d:00", year, ModelYear.dayName(day), weatherHour % 24);
    }

    /**
     * Heading of the misses. A real battery is given up in its walk once it can enter no list, so that one with a better
     * share may be missing here.
     */
    static String misses(Shortlist list) {
        return list.counts().walked() == 0
                ? "Nearest below the target"
                : "Nearest below the target, of those followed to the end";
    }
}
