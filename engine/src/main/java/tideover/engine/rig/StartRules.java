package tideover.engine.rig;

import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import tideover.engine.load.Load;
import tideover.engine.load.Start;
import tideover.engine.part.InverterRating;
import tideover.engine.part.PlainStore;
import tideover.engine.part.RatedStore;
import tideover.engine.part.Surge;
import tideover.engine.rig.StartVerdict.Kind;
import tideover.engine.rig.StartVerdict.Link;
import tideover.engine.why.Basis;
import tideover.engine.why.Finding;
import tideover.engine.why.Verdict;

/**
 * Whether every start that may come holds from a full and warm store. What charge and cold take from that is for the walk;
 * here it is only told.
 */
final class StartRules {
    private static final double FULL = 1;
    private static final double WARM_DEG_C = 25;
    private static final double COLD_DEG_C = 0;

    private final Rig rig;
    private final List<Judged> judged;
    private final List<Finding> found;

    private StartRules(Rig rig, List<Judged> judged, List<Finding> found) {
        this.rig = rig;
        this.judged = judged;
        this.found = found;
    }

    private record Judged(StartEvent event, StartVerdict verdict) {
        Optional<Link> link(Kind kind) {
            return verdict.link(kind);
        }

        double ratio(Kind kind) {
            return link(kind).map(Link::ratio).orElse(Double.POSITIVE_INFINITY);
        }
    }

    static void find(Rig rig, List<Load> loads, List<Finding> found) {
        List<Judged> judged = StartChain.events(rig, loads).stream()
                .map(event -> new Judged(event, StartChain.judge(rig, event, FULL, WARM_DEG_C)))
                .toList();
        if (judged.isEmpty()) {
            return;
        }
        StartRules rules = new StartRules(rig, judged, found);
        for (boolean essential : new boolean[] {true, false}) {
            rules.surge(essential);
            rules.time(Kind.INVERTER_SECONDS, "The inverter's surge", essential);
            rules.time(Kind.STORE_SECONDS, "The store's surge current", essential);
            rules.current(essential);
            rules.sag(essential);
        }
        rules.hotRestart();
    }

    private Optional<Judged> worst(Kind kind, boolean essential) {
        return judged.stream()
                .filter(one -> one.event().essential() == essential)
                .filter(one -> one.link(kind).isPresent())
                .min(Comparator.comparingDouble(one -> one.ratio(kind)));
    }

    /** With what is nice to have, only a start that breaks is told, as a caution: it takes the essential loads down with it. */
    private void add(
            String rule, Judged one, Link link, Basis basis, String source, String pattern, Object... figures) {
        boolean essential = one.event().essential();
        if (!essential && link.verdict() == Verdict.PASS) {
            return;
        }
        found.add(new Finding(
                rule,
                essential ? link.verdict() : Verdict.CAUTION,
                link.value(),
                link.limit(),
                link.margin(),
                link.unit(),
                essential
                        ? pattern
                        : pattern + " What is nice to have takes part in this; it takes the essential loads down too.",
                List.of(figures),
                basis,
                source));
    }

    private void surge(boolean essential) {
        worst(Kind.INVERTER_VA, essential).ifPresent(one -> {
            Link link = one.link(Kind.INVERTER_VA).orElseThrow();
            add(
                    "start-surge",
                    one,
                    link,
                    link.told() ? Basis.MAKER : Basis.GUESS,
                    link.told() ? "inverter surge in the parts file" : "no surge told: taken as the rating",
                    "Starting %s takes %.0f VA, what else may run counted; the inverter gives %.0f VA%s.",
                    one.event().words(),
                    link.value(),
                    link.limit(),
                    link.told() ? " for a moment" : ", its rating, for its maker tells no surge");
        });
    }

    private void time(Kind kind, String what, boolean essential) {
        worst(kind, essential).ifPresent(one -> {
            Link link = one.link(kind).orElseThrow();
            String lasts = link.told()
                    ? String.format(Locale.ROOT, "lasts %.1f s", link.limit())
                    : "lasts nobody tells how long";
            add(
                    "start-time",
                    one,
                    link,
                    link.told() ? Basis.MAKER : Basis.GUESS,
                    link.told() ? "seconds of the surge in the parts file" : "not told in the parts file",
                    "%s %s; starting %s takes %.1f s.",
                    what,
                    lasts,
                    one.event().words(),
                    link.value());
        });
    }

    private void current(boolean essential) {
        worst(Kind.STORE_AMPS, essential).ifPresent(one -> {
            Link link = one.link(Kind.STORE_AMPS).orElseThrow();
            add(
                    "start-current",
                    one,
                    link,
                    link.told() ? Basis.MAKER : Basis.GUESS,
                    link.told() ? "store's current in the parts file" : "no surge told: taken as the lasting current",
                    "Starting %s takes %.0f A from the store, full and warm; it gives %.0f A%s.",
                    one.event().words(),
                    link.value(),
                    link.limit(),
                    link.told() ? "" : ", its lasting current, for its maker tells no surge");
        });
    }

    private void sag(boolean essential) {
        if (rig.store() instanceof PlainStore) {
            boolean first = judged.get(0).event().essential() == essential;
            if (first) {
                found.add(Finding.inWords(
                        "start-sag",
                        Verdict.CAUTION,
                        Basis.GUESS,
                        "the store is known by its label alone",
                        "How far the volts fall while %s starts could not be judged: the store's chemistry and resistance are"
                                + " not known. Try the start before trusting it, with the store low and cold.",
                        judged.get(0).event().words()));
            }
            return;
        }
        RatedStore bank = (RatedStore) rig.store();
        worst(Kind.SAG, essential).ifPresent(one -> {
            StartEvent event = one.event();
            Link link = one.link(Kind.SAG).orElseThrow();
            SagPath path = StartChain.path(rig, bank, event);
            double warm = path.fillNeeded(event.dcW(), Double.POSITIVE_INFINITY, WARM_DEG_C);
            double cold = path.fillNeeded(event.dcW(), Double.POSITIVE_INFINITY, COLD_DEG_C);
            boolean always = Math.max(warm, cold) <= 1 - bank.depth();
            Link judgedLink = link.verdict() == Verdict.PASS && !always
                    ? new Link(link.kind(), link.value(), link.limit(), link.unit(), link.told(), Verdict.CAUTION)
                    : link;
            double offV = Math.max(path.endOffV(), path.postOffV());
            add(
                    "start-sag",
                    one,
                    judgedLink,
                    Double.isNaN(bank.innerOhm()) ? Basis.COMMON_PRACTICE : Basis.MAKER,
                    Double.isNaN(bank.innerOhm())
                            ? "inner resistance not told: usual of its chemistry, the high end for a label worth little; leads and"
                                    + " cut-off volts"
                            : "inner resistance in the parts file, leads and cut-off volts",
                    "Starting %s takes %.0f W from the store, which full and warm can give up to %.0f W before the volts fall"
                            + " to %.1f V%s. It holds %s at 25 degC and %s at 0 degC.",
                    event.words(),
                    link.value(),
                    link.limit(),
                    offV,
                    Double.isNaN(one.verdict().endV())
                            ? ""
                            : String.format(
                                    Locale.ROOT,
                                    ", and %.1f V are left",
                                    one.verdict().endV()),
                    from(warm),
                    from(cold));
        });
    }

    private static String from(double fill) {
        if (fill == 0) {
            return "at any charge";
        }
        return Double.isInfinite(fill)
                ? "at no charge"
                : String.format(Locale.ROOT, "down to a charge of %.0f %%", Math.ceil(100 * fill));
    }

    /** Power that fails and comes back soon makes a warm compressor start against its pressure. */
    private void hotRestart() {
        InverterRating inverter = rig.inverter();
        for (Judged one : judged) {
            StartEvent event = one.event();
            double seconds = Start.HOT_TIMES * event.seconds();
            if (inverter != null && event.startsAc() && event.surgeVa() > inverter.ratedW()) {
                if (hotRestart(event, seconds, inverter.surge(), "The inverter's surge")) {
                    return;
                }
            }
            if (rig.store() instanceof RatedStore bank
                    && one.link(Kind.STORE_AMPS).orElseThrow().value() > bank.maxDischargeA()
                    && hotRestart(event, seconds, bank.guard().surge(), "The store's surge current")) {
                return;
            }
        }
    }

    private boolean hotRestart(StartEvent event, double seconds, Surge surge, String what) {
        // Surge or seconds that nobody tells have had their own finding.
        if (!surge.known() || !(surge.seconds() < seconds)) {
            return false;
        }
        found.add(Finding.atMost(
                "hot-restart",
                Verdict.CAUTION,
                seconds,
                surge.seconds(),
                "s",
                Basis.COMMON_PRACTICE,
                "a compressor restarted against its own pressure takes three times as long",
                "%s lasts %.1f s; restarted while still warm, %s may take %.1f s. After a trip wait ten minutes before switching"
                        + " it on again.",
                what,
                surge.seconds(),
                event.words(),
                seconds));
        return true;
    }
}
