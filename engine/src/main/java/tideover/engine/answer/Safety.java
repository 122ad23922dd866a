package tideover.engine.answer;

import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import tideover.engine.part.Battery;
import tideover.engine.part.Condition;
import tideover.engine.part.RatedStore;
import tideover.engine.part.ReadyBox;
import tideover.engine.rig.Rig;
import tideover.engine.search.Rated;
import tideover.engine.why.Finding;
import tideover.engine.why.Verdict;

/**
 * How safe a rig is beside others that keep all the same rules, in this order; what comes later counts only where all before is
 * equal. Smaller is safer. The order is ours (common practice, no source); it is written down on the models page.
 *
 * @param hurting      cautions about what may burn, gas, shock or strain somebody, or ruin a battery
 * @param unknownStore 0 for a new battery by its data sheet; 1 where one of the two is not so, 2 where neither is
 * @param others       all other cautions
 * @param failing      of a hundred outages, those not carried, whole
 * @param heaviestKg   the heaviest thing that must be moved
 * @param cents        its price
 */
record Safety(Set<String> hurting, int unknownStore, Set<String> others, int failing, double heaviestKg, long cents)
        implements Comparable<Safety> {
    /** Rules whose cautions are about people and fire. A rule that is not here counts among the others. */
    static final Set<String> HURTING = Set.of(
            "battery-switch",
            "breaker-polarity",
            "car-socket-hours",
            "charge-current",
            "chemistry-charge",
            "cold-charge",
            "engine-outdoors",
            "flame-sensing",
            "flooded-slept-in",
            "grounding",
            "hard-wired",
            "lift",
            "panel-input-amps",
            "panel-switch",
            "rain",
            "slept-in",
            "ventilation");

    private static final Comparator<Safety> ORDER = Comparator.<Safety>comparingInt(one -> one.hurting.size())
            .thenComparingInt(Safety::unknownStore)
            .thenComparingInt(one -> one.others.size())
            .thenComparingInt(Safety::failing)
            .thenComparingDouble(Safety::heaviestKg)
            .thenComparingLong(Safety::cents);

    static Safety of(Rated rated, List<Finding> findings) {
        Set<String> hurting = new TreeSet<>();
        Set<String> others = new TreeSet<>();
        for (Finding finding : findings) {
            if (finding.verdict() == Verdict.CAUTION) {
                (HURTING.contains(finding.rule()) ? hurting : others).add(finding.rule());
            }
        }
        return new Safety(
                hurting,
                unknown(rated.rig()),
                others,
                100 - (int) Math.floor(100 * rated.share() + 1e-9),
                rated.rig().heaviestMovedKg(),
                rated.price().totalCents());
    }

    private static int unknown(Rig rig) {
        boolean isNew = rig.chosen().stream()
                .filter(one -> one.part() instanceof Battery || one.part() instanceof ReadyBox)
                .allMatch(one -> one.part().listing().condition() == Condition.NEW);
        return (rig.store() instanceof RatedStore ? 0 : 1) + (isNew ? 0 : 1);
    }

    /** Why this one is safer than another: the first thing in which they differ. */
    String against(Safety other) {
        if (hurting.size() != other.hurting.size()) {
            Set<String> gone = new TreeSet<>(other.hurting);
            gone.removeAll(hurting);
            return "fewer cautions about what may hurt people or ruin a battery (" + hurting.size() + " against "
                    + other.hurting.size() + "; gone: " + named(gone) + ")";
        }
        if (unknownStore != other.unknownStore) {
            return unknownStore == 0
                    ? "its battery is new and known by its data sheet"
                    : "less of its battery is unknown: new, or known by its data sheet, where the other is neither";
        }
        if (others.size() != other.others.size()) {
            Set<String> gone = new TreeSet<>(other.others);
            gone.removeAll(others);
            return "fewer cautions (" + others.size() + " against " + other.others.size() + "; gone: " + named(gone)
                    + ")";
        }
        if (failing != other.failing) {
            return "no more cautions, and of 100 outages " + failing + " fail against " + other.failing;
        }
        if (heaviestKg < other.heaviestKg) {
            return String.format(
                    Locale.ROOT,
                    "no more cautions, and less to lift: %.1f kg at once against %.1f kg",
                    heaviestKg,
                    other.heaviestKg);
        }
        return "as safe, and cheaper";
    }

    private static String named(Set<String> rules) {
        return rules.stream().map(rule -> rule.replace('-', ' ')).collect(Collectors.joining(", "));
    }

    @Override
    public int compareTo(Safety other) {
        return ORDER.compare(this, other);
    }
}
