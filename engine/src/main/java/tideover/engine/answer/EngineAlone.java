package tideover.engine.answer;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import tideover.engine.load.Load;
import tideover.engine.load.Medical;
import tideover.engine.outage.Outage;
import tideover.engine.part.Engine;
import tideover.engine.part.Inverter;
import tideover.engine.part.Part;
import tideover.engine.rig.Alone;
import tideover.engine.rig.FuelUse;
import tideover.engine.rig.Gap;
import tideover.engine.rig.Rig;
import tideover.engine.rig.RuleBook;
import tideover.engine.rig.RunOfDay;
import tideover.engine.rig.Site;
import tideover.engine.why.Finding;
import tideover.engine.why.Stated;
import tideover.engine.why.Verdict;
import tideover.engine.wiring.Bench;
import tideover.engine.wiring.Build;
import tideover.engine.wiring.Price;

/**
 * Every engine by itself, and every vehicle with every inverter, without a battery: outlets and plugs, hertz, watts and volt-amperes of
 * all that can run together, the hardest start, and fuel.
 *
 * <p>It runs while an essential load wants power, by day and by night ({@link RunOfDay}); that somebody is there all that time to
 * start, stop and fill it is taken for granted and told among the acts. The plan's engine hours are for engines beside a battery.
 *
 * <p>The carried share: the outages that a store without end would carry with these outlets, walked like any rig, so that cold boxes
 * and homes are followed through the weather; of these, those that begin at an hour from which the fuel lasts. Where it lasts from some
 * hours only, the least that both shares leave is told. Left out: the minutes before it bears load and while it is filled
 * cold, which only {@code gapSeconds} and loads that somebody's health hangs on know of; engines that do not start; that fuel burnt
 * depends on the weather through cold boxes (taken at a usual day) and homes (taken at their most).
 *
 * @param ways    those that keep the rules, in the order of the parts
 * @param looked  how many engines, and pairs of a vehicle and an inverter, there were
 * @param refused how many fell to each rule; one may fall to several
 */
public record EngineAlone(List<Way> ways, int looked, Map<String, Integer> refused) {
    /** Until an engine has cooled down enough to be filled. Common practice, no source. */
    static final double COOLING_SECONDS = 900;

    static final String MEDICAL_GAP = "medical-gap";
    static final String FUEL = "engine-fuel";

    private static final double WH_PER_KWH = 1000;

    public EngineAlone {
        ways = List.copyOf(ways);
        refused = Collections.unmodifiableMap(new TreeMap<>(refused));
    }

    /** Simulates rigs in full. */
    interface Walks {
        /** Carried share on the weather years. */
        double share(Rig rig);

        /** Whether it meets the target, in storms and on other years too. */
        boolean holds(Rig rig);
    }

    static EngineAlone of(Question question, Bench bench, Site site, int stepsPerHour, Walks walks) {
        Judging judging = new Judging(question, bench, site, stepsPerHour, walks);
        for (Part part : question.parts()) {
            if (part instanceof Engine engine && !engine.vehicle()) {
                judging.take(engine, Alone.of(engine));
            } else if (part instanceof Engine vehicle) {
                for (Part other : question.parts()) {
                    if (other instanceof Inverter inverter) {
                        judging.take(vehicle, Alone.of(vehicle, inverter));
                    }
                }
            }
        }
        return new EngineAlone(judging.ways, judging.looked, judging.refused);
    }

    /** What must be minded beside them; empty where there are none. */
    public List<String> cautions() {
        return Cautions.ofEngines(ways.stream().map(Way::kind).toList());
    }

    /** Seconds without power as an outage begins, on an engine by itself. */
    static double gapSeconds(Engine engine) {
        double untilLoad = engine.habits().untilLoadSeconds();
        return engine.habits().startsItself() == Stated.YES ? untilLoad : Gap.BY_HAND_SECONDS + untilLoad;
    }

    private static final class Judging {
        private final Question question;
        private final Bench bench;
        private final Site site;
        private final int stepsPerHour;
        private final Walks walks;
        private final List<Way> ways = new ArrayList<>();
        private final Map<String, Integer> refused = new TreeMap<>();
        private int looked;

        Judging(Question question, Bench bench, Site site, int stepsPerHour, Walks walks) {
            this.question = question;
            this.bench = bench;
            this.site = site;
            this.stepsPerHour = stepsPerHour;
            this.walks = walks;
        }

        void take(Engine engine, Rig rig) {
            looked++;
            Outage outage = question.asked();
            RunOfDay day =
                    RunOfDay.of(rig, engine, question.loads(), question.place().meanSolarNoonHour(), stepsPerHour);
            double hours = day.mostHours(outage.hours());
            double litres = day.mostLitres(outage.hours());
            double wh = day.mostWh(outage.hours());
            FuelUse use = FuelUse.of(engine, hours, hours == 0 ? 0 : wh / hours, litres);
            Build wired = bench.wire(rig);
            Set<String> failed = failures(RuleBook.loadFindings(wired.rig(), question.loads()));
            failed.addAll(failures(RuleBook.partFindings(rig, site)));
            failed.addAll(failures(wired.findings()));
            if (isTooLongWithout(engine, use)) {
                failed.add(MEDICAL_GAP);
            }
            double lasting = day.lastingShare(
                    outage.hours(), engine.fuel().tankL() + outage.tending().storedL());
            if (lasting == 0) {
                failed.add(FUEL);
            }
            if (!failed.isEmpty()) {
                failed.forEach(rule -> refused.merge(rule, 1, Integer::sum));
                return;
            }
            Build build = wired.with(use);
            // Which outages fail in the walk may be those for which fuel is short, or others: the least that both
            // leave.
            double share = Math.max(0, walks.share(build.rig()) + lasting - 1);
            boolean meets = lasting == 1 && share >= outage.targetShare() && walks.holds(build.rig());
            Price price = Price.of(build, question.loads(), question.allowances(), question.terms());
            ways.add(new Way(
                    engine.vehicle() ? Way.Kind.VEHICLE : Way.Kind.ENGINE_ALONE,
                    rig.chosen(),
                    price,
                    share,
                    meets,
                    figures(engine, rig, use, price, wh)));
        }

        private static Way.Figures figures(Engine engine, Rig rig, FuelUse use, Price price, double wh) {
            List<Way.Act> acts = new ArrayList<>();
            if (engine.habits().startsItself() != Stated.YES) {
                acts.add(Way.Act.START_ENGINE);
                acts.add(Way.Act.PLUG_OVER);
            }
            if (use.refills() > 0) {
                acts.add(Way.Act.REFUEL);
            }
            return new Way.Figures(
                    wh == 0 ? Double.NaN : price.totalCents() / (wh / WH_PER_KWH),
                    EngineStandby.centsPerYear(engine, use.litres()),
                    rig.massKg(),
                    use.litres(),
                    engine.habits().noiseDbA(),
                    true,
                    gapSeconds(engine),
                    acts);
        }

        /** Whether somebody's health hangs on a load that waits longer than the person can: at the start, or while it is filled. */
        private boolean isTooLongWithout(Engine engine, FuelUse use) {
            double seconds = Math.max(gapSeconds(engine), use.refills() > 0 ? COOLING_SECONDS : 0);
            for (Load load : question.loads()) {
                Medical medical = load.nature().medical();
                if (medical != null && load.plugged() && seconds > medical.bridgeSeconds()) {
                    return true;
                }
            }
            return false;
        }

        private static Set<String> failures(List<Finding> findings) {
            Set<String> rules = new TreeSet<>();
            for (Finding finding : findings) {
                if (finding.verdict() == Verdict.FAIL) {
                    rules.add(finding.rule());
                }
            }
            return rules;
        }
    }
}
