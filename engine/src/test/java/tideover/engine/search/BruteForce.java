package tideover.engine.search;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.jspecify.annotations.Nullable;
import tideover.engine.Invented;
import tideover.engine.load.Load;
import tideover.engine.outage.Outage;
import tideover.engine.part.Battery;
import tideover.engine.part.ChargeController;
import tideover.engine.part.Charger;
import tideover.engine.part.Cooler;
import tideover.engine.part.Enclosure;
import tideover.engine.part.Engine;
import tideover.engine.part.Inverter;
import tideover.engine.part.Jug;
import tideover.engine.part.Panel;
import tideover.engine.part.Part;
import tideover.engine.part.ReadyBox;
import tideover.engine.part.SocketBoard;
import tideover.engine.part.StandIn;
import tideover.engine.proof.ArraySun;
import tideover.engine.proof.BusDemand;
import tideover.engine.proof.Drawdown;
import tideover.engine.proof.KeptBound;
import tideover.engine.proof.NetGains;
import tideover.engine.proof.RigFigures;
import tideover.engine.proof.UnmergedShare;
import tideover.engine.rig.Aids;
import tideover.engine.rig.Assembly;
import tideover.engine.rig.Chosen;
import tideover.engine.rig.Rig;
import tideover.engine.rig.RuleBook;
import tideover.engine.why.Finding;
import tideover.engine.why.Verdict;
import tideover.engine.wiring.Build;
import tideover.engine.wiring.Price;

/**
 * Every rig of the grammar as docs/models.md writes it, wired on a bench of its own, judged, priced and walked from every
 * start. Its loops are its own: nothing of what the search enumerates, prices or remembers is called.
 */
final class BruteForce {
    /** Cheapest first; ties by share, mass and id. */
    static final Comparator<Way> ORDER = Comparator.comparingLong(Way::cents)
            .thenComparing(Comparator.comparingDouble(Way::share).reversed())
            .thenComparingDouble(way -> way.rig().massKg())
            .thenComparing(way -> way.rig().id());

    /** Room for rounding, as the screening leaves it. */
    private static final double BREATH_WH = 1e-7;

    private BruteForce() {}

    /** A rig that keeps every rule and the budget. */
    record Way(Rig rig, long cents, double share) {}

    /** A step of the front: the share is more than that of all that costs no more. */
    record Step(long cents, double share) {}

    /** All that keep the rules and the budget, in {@link #ORDER}. */
    static List<Way> ways(SmallCase one) {
        List<Way> ways = new ArrayList<>();
        for (List<Chosen> chosen : written(one)) {
            Rig bare = Assembly.of(chosen).rig();
            if (bare == null) {
                continue;
            }
            Build build = one.bench().wire(bare);
            List<Finding> findings = new ArrayList<>(RuleBook.findings(build.rig(), one.loads(), one.site()));
            findings.addAll(build.findings());
            if (findings.stream().anyMatch(finding -> finding.verdict() == Verdict.FAIL)) {
                continue;
            }
            long cents =
                    Price.of(build, one.loads(), one.allowances(), one.terms()).totalCents();
            if (one.budgetCents().isPresent() && cents > one.budgetCents().getAsLong()) {
                continue;
            }
            UnmergedShare walked = new UnmergedShare(
                    one.weather(), one.plane(), one.weather().airDegC(), SmallCase.NOON, one.stepsPerHour());
            ways.add(new Way(build.rig(), cents, walked.of(build.rig(), one.loads(), one.outage())));
        }
        ways.sort(ORDER);
        return ways;
    }

    /** The first that carries the target; null where none does. */
    static @Nullable Way answer(List<Way> ways, double target) {
        return ways.stream().filter(way -> way.share() >= target).findFirst().orElse(null);
    }

    static List<Step> front(List<Way> ways) {
        List<Step> front = new ArrayList<>();
        double best = -1;
        for (Way way : ways) {
            if (way.share() > best) {
                front.add(new Step(way.cents(), way.share()));
                best = way.share();
            }
        }
        return front;
    }

    /** The grammar's sentences, each with every set of aids in front of it. */
    private static List<List<Chosen>> written(SmallCase one) {
        List<List<Chosen>> all = new ArrayList<>();
        for (List<Chosen> aids : aids(one)) {
            for (List<Chosen> rest : withoutAids(one)) {
                List<Chosen> chosen = new ArrayList<>(aids);
                chosen.addAll(rest);
                all.add(chosen);
            }
        }
        return all;
    }

    /**
     * No jugs or some of one kind; no cooler or one; any of the stand-ins, as many of each as last. Each has to find something to
     * do, and something essential must be left to the rig.
     */
    private static List<List<Chosen>> aids(SmallCase one) {
        List<List<Chosen>> all = new ArrayList<>(List.of(List.of()));
        for (Part part : one.parts()) {
            for (int count = 1; part instanceof Jug && count <= one.grammar().mostJugs(); count++) {
                all.add(List.of(new Chosen(part, count)));
            }
        }
        for (List<Chosen> before : List.copyOf(all)) {
            for (Part part : one.parts()) {
                if (part instanceof Cooler) {
                    all.add(and(before, part, 1));
                }
            }
        }
        for (Part part : one.parts()) {
            if (part instanceof StandIn standIn) {
                int lasting = 1;
                while (lasting * standIn.lastsHours() < one.outage().hours()) {
                    lasting++;
                }
                for (List<Chosen> before : List.copyOf(all)) {
                    all.add(and(before, part, lasting));
                }
            }
        }
        all.removeIf(set -> !set.isEmpty() && !isOfUse(one, set));
        return all;
    }

    private static boolean isOfUse(SmallCase one, List<Chosen> set) {
        for (Finding finding : Aids.findings(set, one.loads(), one.outage().hours())) {
            if (finding.verdict() == Verdict.FAIL) {
                return false;
            }
        }
        for (Load load : Aids.served(set, one.loads())) {
            if (load.essential() && load.plugged()) {
                return true;
            }
        }
        return false;
    }

    /**
     * A box; or batteries of one kind, in an enclosure, by themselves, or by themselves with a board of sockets where a load takes
     * direct current; then an inverter, what charges, and a controller, each or none and only where none is built in; panels of one
     * kind where there is a controller.
     */
    private static List<List<Chosen>> withoutAids(SmallCase one) {
        List<List<Chosen>> all = new ArrayList<>();
        for (Part part : one.parts()) {
            if (part instanceof ReadyBox box) {
                electronics(one, List.of(new Chosen(box, 1)), false, box.controller() != null, all);
            }
            if (!(part instanceof Battery battery)) {
                continue;
            }
            for (int count = 1; count <= one.grammar().mostBatteries(); count++) {
                if (count > battery.listing().atHand()) {
                    break;
                }
                Chosen bank = new Chosen(battery, count);
                electronics(one, List.of(bank), true, false, all);
                for (Part home : one.parts()) {
                    if (home instanceof Enclosure box) {
                        electronics(
                                one,
                                List.of(new Chosen(box, 1), bank),
                                box.inverter() == null,
                                box.controller() != null,
                                all);
                    } else if (home instanceof SocketBoard && takesDirectCurrent(one.loads())) {
                        electronics(one, List.of(bank, new Chosen(home, 1)), true, false, all);
                    }
                }
            }
        }
        return all;
    }

    private static boolean takesDirectCurrent(List<Load> loads) {
        for (Load load : loads) {
            if (load.plugged() && !load.supply().isAc()) {
                return true;
            }
        }
        return false;
    }

    private static void electronics(
            SmallCase one, List<Chosen> store, boolean mayInvert, boolean controls, List<List<Chosen>> all) {
        for (List<Chosen> inverted : withOrWithout(store, mayInvert ? one.parts() : List.of(), Inverter.class)) {
            for (List<Chosen> charged : charged(one, inverted)) {
                for (List<Chosen> controlled :
                        withOrWithout(charged, controls ? List.of() : one.parts(), ChargeController.class)) {
                    all.add(controlled);
                    if (controls || controlled.size() > charged.size()) {
                        panels(one, controlled, all);
                    }
                }
            }
        }
    }

    /**
     * Nothing; a charger for the mains where something of the plan could feed it; any charger with an engine for it, a vehicle where
     * it is for direct current; an engine alone for a box that has its own charger.
     */
    private static List<List<Chosen>> charged(SmallCase one, List<Chosen> rest) {
        List<List<Chosen>> all = new ArrayList<>(List.of(rest));
        boolean ownCharger = rest.get(0).part() instanceof ReadyBox box && box.mainsChargeW() > 0;
        for (Part part : one.parts()) {
            if (part instanceof Charger charger
                    && charger.fedBy() != Invented.SOCKET
                    && one.grammar().chargers()) {
                all.add(and(rest, part, 1));
            }
            if (part instanceof Engine engine && !engine.vehicle() && ownCharger) {
                all.add(and(rest, part, 1));
            }
            for (Part other : one.parts()) {
                if (part instanceof Charger charger
                        && other instanceof Engine engine
                        && engine.vehicle() == (charger.fedBy() == Invented.SOCKET)) {
                    all.add(and(and(rest, part, 1), other, 1));
                }
            }
        }
        return all;
    }

    private static void panels(SmallCase one, List<Chosen> rest, List<List<Chosen>> all) {
        for (Part part : one.parts()) {
            for (int count = 1; part instanceof Panel && count <= one.grammar().mostPanels(); count++) {
                if (count <= part.listing().atHand()) {
                    all.add(and(rest, part, count));
                }
            }
        }
    }

    private static List<List<Chosen>> withOrWithout(List<Chosen> rest, List<Part> parts, Class<? extends Part> kind) {
        List<List<Chosen>> both = new ArrayList<>(List.of(rest));
        for (Part part : parts) {
            if (kind.isInstance(part)) {
                both.add(and(rest, part, 1));
            }
        }
        return both;
    }

    private static List<Chosen> and(List<Chosen> rest, Part part, int count) {
        List<Chosen> more = new ArrayList<>(rest);
        more.add(new Chosen(part, count));
        return more;
    }

    /** The share that the optimistic screening allows a rig, each by itself. */
    static double bound(SmallCase one, Rig rig) {
        Outage outage = one.outage();
        List<Load> loads = rig.served(one.loads());
        KeptBound kept = KeptBound.of(loads, one.weather(), outage.months(), outage.hours());
        if (outage.unhelpedHours() == 0) {
            return 1;
        }
        Outage first = outage.first(outage.unhelpedHours());
        Outage screened = kept.isNothing() ? first : first.fullAtStart();
        RigFigures figures =
                kept.isNothing() ? RigFigures.of(rig) : RigFigures.of(rig).pooledWith(kept.storeWh());
        List<Load> byTheClock = loads.stream().filter(load -> !load.keeps()).toList();
        int[] carried = {0};
        int[] asked = {0};
        NetGains.visit(
                ArraySun.of(rig).wattsPerRatedW(one.plane()),
                NetGains.Starts.all(screened, one.weather().years()),
                figures,
                BusDemand.of(rig, byTheClock, SmallCase.NOON, one.stepsPerHour())
                        .essentialLessEngineW(rig, outage),
                kept.needW(),
                one.stepsPerHour(),
                (sunnyWh, darkDayWh, starts) -> {
                    double[] needed = Drawdown.neededWh(
                            darkDayWh,
                            sunnyWh,
                            starts,
                            one.stepsPerHour(),
                            screened.panelsOutAfterHours(),
                            screened.hours(),
                            screened.chargeAtStart());
                    asked[0] += starts;
                    for (double wh : needed) {
                        carried[0] += wh <= figures.capacityWh() + BREATH_WH ? 1 : 0;
                    }
                });
        return (double) carried[0] / asked[0];
    }
}
