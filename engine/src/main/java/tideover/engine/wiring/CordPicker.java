package tideover.engine.wiring;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import tideover.engine.load.Load;
import tideover.engine.load.Start;
import tideover.engine.part.Cord;
import tideover.engine.part.SmallPart;
import tideover.engine.why.Finding;

/** Chooses a cord for a load that stands away from the rig. One cord, long enough: cords are not put one into another. */
final class CordPicker {
    private final List<Cord> cords;

    CordPicker(Stock stock) {
        cords = stock.of(Cord.class);
    }

    static Run run(Load load, double lengthM) {
        double volts = load.supply().volts();
        double lastingA = load.runningVa() / volts;
        Start start = load.nature().start();
        double momentA = start == null ? 0 : Math.max(lastingA, start.va(load.runningVa()) / volts);
        return new Run(Run.Kind.CORD, load.name(), 1, lengthM, volts, volts, new Amps(lastingA, lastingA, momentA, 0));
    }

    Picker.Pick pick(Run run, String plug, Set<SmallPart> gone) {
        Map<String, Integer> refused = new TreeMap<>();
        WiredRun best = null;
        double bestCents = Double.POSITIVE_INFINITY;
        for (Cord cord : cords) {
            boolean fits = cord.plug().equals(Cord.ANY_PLUG)
                    || (cord.plug().equalsIgnoreCase(plug)
                            && Math.abs(cord.volts() - run.systemV()) <= VOLT_SHARE * run.systemV());
            String other = !fits ? "plug or volts" : cord.lengthM() < run.oneWayM() ? "length" : "";
            if (!other.isEmpty() || gone.contains(cord)) {
                refused.merge(other.isEmpty() ? "used up" : other, 1, Integer::sum);
                continue;
            }
            WiredRun wired = wired(run, cord);
            Finding broken = Picker.firstBroken(wired.findings());
            if (broken != null) {
                refused.merge(broken.rule(), 1, Integer::sum);
                continue;
            }
            double cents = Picker.unitCents(cord);
            if (best == null || cents < bestCents) {
                best = wired;
                bestCents = cents;
            }
        }
        return best == null
                ? new Picker.Pick(null, Picker.missing("no-cord", run, "no cord suits", refused))
                : new Picker.Pick(best, null);
    }

    /** Cords are made for a class of volts: 110, 115 and 120 are one. Common practice, no source. */
    private static final double VOLT_SHARE = .10;

    private static WiredRun wired(Run run, Cord cord) {
        double ohm = Resistance.ofPair(cord.size(), cord.lengthM());
        double dropV = run.amps().lasting() * ohm;
        double sagV = run.amps().moment() * ohm;
        List<Finding> findings = new ArrayList<>();
        findings.add(WireRules.cordAmps(run, cord));
        findings.add(WireRules.drop(run, dropV));
        if (run.amps().moment() > 0) {
            findings.add(WireRules.sag(run, sagV));
        }
        Map<SmallPart, Double> needs = new LinkedHashMap<>();
        needs.put(cord, 1.0);
        return new WiredRun(run, cord, cord.size(), 1, cord.ratedA(), null, null, dropV, sagV, ohm, needs, findings);
    }
}
