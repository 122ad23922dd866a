package tideover.engine.wiring;

import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import tideover.engine.electronics.ConductorSize;
import tideover.engine.load.ColdLoad;
import tideover.engine.load.Load;
import tideover.engine.part.Busbar;
import tideover.engine.part.Fitting;
import tideover.engine.part.Lug;
import tideover.engine.part.SmallPart;
import tideover.engine.part.Tool;
import tideover.engine.rig.Rig;
import tideover.engine.rig.Route;

/**
 * What belongs to a circuit without carrying its current, and the tools that put it together. How many of each is common
 * practice, no source: heat shrink for each pressed end, a cover for each battery post, a strap for each battery, a label for
 * each run and one for the whole; a board, or a hand truck for what one person should not lift; a meter for the battery; a
 * thermometer for each cold box; an alarm for carbon monoxide where an engine runs; a torque wrench where lugs are heavy.
 */
final class Fixings {
    /** Pressed by hand up to here; thicker lugs want a long lever or a hydraulic press. 10 AWG is 5.3 mm2, 6 mm2 the metric like. */
    private static final double HAND_PRESSED_MM2 = 6;

    private final Map<Fitting.Use, Integer> uses = new EnumMap<>(Fitting.Use.class);
    private final Map<Tool.Job, Integer> jobs = new EnumMap<>(Tool.Job.class);
    private int bars;
    private double barA;

    private Fixings() {}

    /**
     * @param lines   what is bought or taken from the shelf
     * @param missing what the list lacks, with how many
     */
    record Needs(List<PartsList.Line> lines, Map<String, Integer> missing) {}

    static Needs of(Rig rig, Circuit circuit, List<Load> loads, boolean engine, boolean wheels, Stock stock) {
        Fixings fixings = new Fixings();
        fixings.count(rig, circuit, loads, engine, wheels);
        return fixings.from(stock);
    }

    /** A thermometer for each cold box, where there is no rig. */
    static Needs thermometers(List<Load> loads, Stock stock) {
        Fixings fixings = new Fixings();
        fixings.countThermometers(loads);
        return fixings.from(stock);
    }

    private void countThermometers(List<Load> loads) {
        int colds = (int) loads.stream().filter(ColdLoad.class::isInstance).count();
        if (colds > 0) {
            uses.put(Fitting.Use.THERMOMETER, colds);
        }
    }

    private void count(Rig rig, Circuit circuit, List<Load> loads, boolean engine, boolean wheels) {
        if (rig.route() != Route.READY_BOX) {
            bench(rig, circuit);
        }
        if (rig.panel() != null) {
            jobs.put(Tool.Job.WIRE_STRIPPER, 1);
            jobs.put(Tool.Job.MULTIMETER, 1);
        }
        if (wheels) {
            uses.put(Fitting.Use.HAND_TRUCK, 1);
        }
        countThermometers(loads);
        if (engine) {
            uses.put(Fitting.Use.CARBON_MONOXIDE_ALARM, 1);
        }
    }

    /** What is wired at a bench. */
    private void bench(Rig rig, Circuit circuit) {
        int lugs = 0;
        for (WiredRun wired : circuit.runs()) {
            for (Map.Entry<SmallPart, Double> need : wired.needs().entrySet()) {
                if (need.getKey() instanceof Lug lug) {
                    lugs += (int) Math.round(need.getValue());
                    jobs.put(crimperFor(lug.size()), 1);
                    if (crimperFor(lug.size()) == Tool.Job.HEAVY_CRIMPER) {
                        jobs.put(Tool.Job.TORQUE_WRENCH, 1);
                    }
                }
            }
            if (wired.run().kind() == Run.Kind.LINK) {
                bars = 2;
                barA = wired.run().count() * wired.run().amps().design();
            }
        }
        int batteries = rig.storeRows() * rig.storesInSeries();
        uses.put(Fitting.Use.HEAT_SHRINK, lugs);
        uses.put(Fitting.Use.TERMINAL_COVER, 2 * batteries);
        uses.put(Fitting.Use.STRAP, batteries);
        uses.put(Fitting.Use.LABEL, circuit.runs().size() + 1);
        uses.put(Fitting.Use.BATTERY_METER, 1);
        if (rig.route() == Route.SEPARATE_PARTS) {
            uses.put(Fitting.Use.BOARD, 1);
        }
        for (Tool.Job job : List.of(
                Tool.Job.CABLE_CUTTER,
                Tool.Job.WIRE_STRIPPER,
                Tool.Job.HEAT_GUN,
                Tool.Job.INSULATED_SPANNER,
                Tool.Job.MULTIMETER,
                Tool.Job.EYE_PROTECTION)) {
            jobs.put(job, 1);
        }
    }

    static Tool.Job crimperFor(ConductorSize size) {
        return size.areaMm2() <= HAND_PRESSED_MM2 ? Tool.Job.LIGHT_CRIMPER : Tool.Job.HEAVY_CRIMPER;
    }

    private Needs from(Stock stock) {
        List<PartsList.Line> lines = new ArrayList<>();
        Map<String, Integer> missing = new TreeMap<>();
        if (bars > 0) {
            take(
                    stock.of(Busbar.class).stream()
                            .filter(bar -> bar.ratedA() >= barA)
                            .toList(),
                    bars,
                    "busbar",
                    lines,
                    missing);
        }
        uses.forEach((use, count) -> take(
                stock.of(Fitting.class).stream()
                        .filter(fitting -> fitting.use() == use)
                        .toList(),
                count,
                use.words(),
                lines,
                missing));
        jobs.forEach((job, count) -> take(
                stock.of(Tool.class).stream().filter(tool -> tool.job() == job).toList(),
                count,
                job.words(),
                lines,
                missing));
        return new Needs(lines, missing);
    }

    /** What is on the shelf first, then the cheapest for the rest. */
    private static void take(
            List<? extends SmallPart> able,
            int wanted,
            String what,
            List<PartsList.Line> lines,
            Map<String, Integer> missing) {
        List<SmallPart> others = new ArrayList<>(able);
        int left = wanted;
        while (left > 0 && !others.isEmpty()) {
            int rest = left;
            SmallPart part = Collections.min(
                    others,
                    Comparator.comparingDouble((SmallPart one) -> cents(one, rest))
                            .thenComparing(one -> one.listing().id()));
            others.remove(part);
            int there = (int) Math.min(left, part.listing().atHand() * part.perPrice());
            if (there > 0) {
                lines.add(PartsList.Line.of(part, there));
                left -= there;
            }
        }
        if (left > 0) {
            missing.put(what, left);
        }
    }

    private static double cents(SmallPart part, int wanted) {
        return part.listing().costCents((int) Math.ceil(wanted / part.perPrice()));
    }
}
