package tideover.engine.wiring;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;
import tideover.engine.load.Coincidence;
import tideover.engine.load.Load;
import tideover.engine.load.Supply;
import tideover.engine.outage.Help;
import tideover.engine.outage.Outage;
import tideover.engine.part.Charger;
import tideover.engine.part.Cord;
import tideover.engine.part.Panel;
import tideover.engine.part.SmallPart;
import tideover.engine.rig.Alone;
import tideover.engine.rig.Chosen;
import tideover.engine.rig.FuelUse;
import tideover.engine.rig.Lifting;
import tideover.engine.rig.Rig;
import tideover.engine.rig.Route;
import tideover.engine.rig.Sockets;
import tideover.engine.rig.StartChain;
import tideover.engine.rig.StartEvent;
import tideover.engine.why.Basis;
import tideover.engine.why.Finding;
import tideover.engine.why.Verdict;

/**
 * Where a household wires its rigs: with its stock of small parts, its lengths and its loads. Wires one rig after another and
 * remembers what was chosen for runs alike, so it is not for several threads at once.
 */
public final class Bench {
    private static final double USUAL_AC_V = 120;
    private static final double USUAL_HERTZ = 60;
    private static final double ROUNDING = 1e-9;

    private final Stock stock;
    private final Laying laying;
    private final List<Load> loads;
    private final List<Help.Engine> engines;
    private final @Nullable Outage outage;
    private final double coldDegC;
    private final Picker picker;
    private final SunPicker sunPicker;
    private final CordPicker cordPicker;
    private final Map<List<Object>, Picker.Pick> picked = new HashMap<>();
    private List<Chosen> lastElectronics = List.of();
    private List<Run> lastRuns = List.of();

    /**
     * @param outage   what is asked: what helps a rig wants cords, and an engine of a rig's own burns fuel in it
     * @param coldDegC lowest outdoor temperature that the panels' volts are designed for
     */
    public Bench(Stock stock, Laying laying, List<Load> loads, Outage outage, double coldDegC) {
        this(stock, laying, loads, outage.help(), outage, coldDegC);
    }

    /** Where nobody asks what an engine of a rig's own burns. */
    public Bench(Stock stock, Laying laying, List<Load> loads, List<Help> help, double coldDegC) {
        this(stock, laying, loads, help, null, coldDegC);
    }

    private Bench(
            Stock stock, Laying laying, List<Load> loads, List<Help> help, @Nullable Outage outage, double coldDegC) {
        this.outage = outage;
        this.stock = stock;
        this.laying = laying;
        this.loads = List.copyOf(loads);
        this.engines = help.stream()
                .filter(Help.Engine.class::isInstance)
                .map(Help.Engine.class::cast)
                .toList();
        this.coldDegC = coldDegC;
        picker = new Picker(stock, laying);
        sunPicker = new SunPicker(stock, laying);
        cordPicker = new CordPicker(stock);
    }

    /** A rig as its parts and lengths demand. */
    public Build wire(Rig rig) {
        Work work = new Work();
        List<Run> atBattery = runsAtBattery(rig);
        Run row = atBattery.stream()
                .filter(run -> run.kind() == Run.Kind.SERIES)
                .findFirst()
                .orElse(null);
        double rowA = 0;
        for (Run run : atBattery) {
            if (run.kind() == Run.Kind.SERIES) {
                double behindA = Math.max(run.amps().design(), rowA);
                work.take(run, List.of(run, behindA), gone -> picker.pickSeries(run, behindA, gone));
                continue;
            }
            Run behind = run.kind() == Run.Kind.LINK ? row : null;
            List<Object> alike = behind == null ? List.of(run) : List.of(run, behind);
            WiredRun wired = work.take(run, alike, gone -> picker.pick(run, behind, gone));
            if (run.kind() == Run.Kind.LINK && wired != null && wired.protection() != null) {
                rowA = wired.protection().ratedA();
            }
        }
        Run panels = Runs.ofPanels(rig, laying, coldDegC);
        if (panels != null && rig.panel() != null && rig.controller() != null) {
            List<Object> key = List.of(
                    panels,
                    rig.panel().listing().id(),
                    rig.panelCount(),
                    rig.panelsInSeries(),
                    rig.route() == Route.SEPARATE_PARTS,
                    rig.controller().input().plug());
            work.take(panels, key, gone -> sunPicker.pick(rig, panels, gone));
        }
        cords(rig, work);
        work.findings.addAll(whole(rig));
        Circuit circuit = new Circuit(work.runs, work.findings, leads(rig, work.runs));
        boolean wheels = Lifting.needsWheels(rig);
        boolean engine = !engines.isEmpty() || rig.engine() != null;
        PartsList list = PartsList.of(circuit, Fixings.of(rig, circuit, loads, engine, wheels, stock));
        FuelUse fuel = outage == null ? null : FuelUse.of(rig, outage);
        return new Build(rig.wired(circuit.leads()), circuit, list, stock.priced(), fuel);
    }

    /**
     * What helps without any rig.
     *
     * @param missing what belongs to it and is not in the household's list, so not in the price, with how many
     */
    public record Bare(Price price, Map<String, Integer> missing) {}

    /** Aids by themselves, with a thermometer for each cold box; where small parts have no prices, without its price. */
    public Bare withoutRig(List<Chosen> aids, Terms terms) {
        PartsList list = PartsList.of(Fixings.thermometers(loads, stock));
        return stock.priced()
                ? new Bare(Price.withoutRig(aids, list, terms), list.missing())
                : new Bare(Price.withoutRig(aids, PartsList.NONE, terms), list.missing());
    }

    /** Panels make no difference to these, and rigs that differ in panels alone come one after another. */
    private List<Run> runsAtBattery(Rig rig) {
        List<Chosen> electronics = rig.chosen().stream()
                .filter(one -> !(one.part() instanceof Panel))
                .toList();
        if (!same(electronics, lastElectronics)) {
            lastElectronics = electronics;
            lastRuns = Runs.atBattery(rig, laying, loads);
        }
        return lastRuns;
    }

    /** By identity of the parts: to compare all their figures would take longer than to reckon anew. */
    private static boolean same(List<Chosen> one, List<Chosen> other) {
        boolean same = one.size() == other.size();
        for (int i = 0; same && i < one.size(); i++) {
            same = one.get(i).part() == other.get(i).part()
                    && one.get(i).count() == other.get(i).count();
        }
        return same;
    }

    /** What is left of the stock while one rig is wired. */
    private final class Work {
        private final List<WiredRun> runs = new ArrayList<>();
        private final List<Finding> findings = new ArrayList<>();
        private final Map<SmallPart, Double> used = new LinkedHashMap<>();

        /** Chooses; and again without what there is too little of, until it can be had. */
        @Nullable
        WiredRun take(Run run, List<Object> key, Function<Set<SmallPart>, Picker.@Nullable Pick> choose) {
            Set<SmallPart> gone = new HashSet<>();
            while (true) {
                List<Object> whole = gone.isEmpty() ? key : List.of(key, Set.copyOf(gone));
                Picker.Pick pick = picked.get(whole);
                if (pick == null) {
                    pick = choose.apply(Set.copyOf(gone));
                    if (pick == null) {
                        return null;
                    }
                    picked.put(whole, pick);
                }
                WiredRun wired = pick.wired();
                if (wired == null) {
                    if (pick.missing() != null) {
                        findings.add(pick.missing());
                    }
                    return null;
                }
                Set<SmallPart> scarce = tooLittle(wired);
                if (scarce.isEmpty()) {
                    wired.needs().forEach((part, pieces) -> used.merge(part, pieces, Double::sum));
                    runs.add(wired);
                    return wired;
                }
                gone.addAll(scarce);
            }
        }

        private Set<SmallPart> tooLittle(WiredRun wired) {
            Set<SmallPart> little = new HashSet<>();
            wired.needs().forEach((part, pieces) -> {
                double there = part.listing().atHand() * part.perPrice();
                if (used.getOrDefault(part, 0.0) + pieces > there + ROUNDING) {
                    little.add(part);
                }
            });
            return little;
        }
    }

    private void cords(Rig rig, Work work) {
        for (Sockets.Plugged plugged : Sockets.of(rig, loads).plugged()) {
            Load load = plugged.load();
            double lengthM = laying.cordM().getOrDefault(load.name(), 0.0);
            if (lengthM > 0 && plugged.outlet() != null) {
                Run run = CordPicker.run(load, lengthM);
                String plug = load.supply().plug();
                work.take(run, List.of(run, plug), gone -> cordPicker.pick(run, plug, gone));
            }
        }
        Charger charger = rig.chosen().stream()
                .filter(one -> one.part() instanceof Charger)
                .map(one -> (Charger) one.part())
                .findFirst()
                .orElse(null);
        Rig.MainsCharge charge = rig.mainsCharge();
        if (charge != null && rig.engine() != null) {
            engineCord(charge, rig.engine().ratedW(), fedBy(charger), work);
        } else if (Alone.is(rig)) {
            houseCord(rig, work);
        } else if (charge != null && charger != null && charge.fromMains() && !engines.isEmpty()) {
            engineCord(charge, engines.get(0).watts(), fedBy(charger), work);
        }
    }

    /** From an engine without a battery to the house, for all that can run together and the hardest start among it. */
    private void houseCord(Rig rig, Work work) {
        List<Load> fed = Sockets.of(rig, loads).plugged().stream()
                .filter(plugged -> plugged.throughInverter(rig))
                .map(Sockets.Plugged::load)
                .toList();
        if (fed.isEmpty()) {
            return;
        }
        Supply mains = fed.get(0).supply();
        double lastingA = Coincidence.peakW(fed, Load::runningVa) / mains.volts();
        double momentA = StartChain.events(rig, fed).stream()
                        .mapToDouble(StartEvent::surgeVa)
                        .max()
                        .orElse(0)
                / mains.volts();
        Run run = new Run(
                Run.Kind.ENGINE,
                "",
                1,
                laying.engineM(),
                mains.volts(),
                mains.volts(),
                new Amps(lastingA, lastingA, momentA, 0));
        work.take(run, List.of(run, mains.plug()), gone -> cordPicker.pick(run, mains.plug(), gone));
    }

    private void engineCord(Rig.MainsCharge charge, double engineW, Supply fedBy, Work work) {
        double volts = fedBy.volts();
        double amps = Math.min(charge.drawnW(), engineW) / volts;
        Run run = new Run(Run.Kind.ENGINE, "", 1, laying.engineM(), volts, volts, new Amps(amps, amps, 0, 0));
        String plug = fedBy.plug();
        work.take(run, List.of(run, plug), gone -> cordPicker.pick(run, plug, gone));
    }

    /** What the charger is plugged into: as its maker tells, else the household's mains. */
    private Supply fedBy(@Nullable Charger charger) {
        return charger != null && charger.fedBy() != null ? charger.fedBy() : mains();
    }

    /** As the first load that takes them; where no load tells, whatever a cord has. */
    private Supply mains() {
        return loads.stream()
                .map(Load::supply)
                .filter(Supply::isAc)
                .findFirst()
                .orElse(Supply.ac(USUAL_AC_V, USUAL_HERTZ, Cord.ANY_PLUG));
    }

    private List<Finding> whole(Rig rig) {
        List<Finding> found = new ArrayList<>();
        if (rig.storeRows() > 1) {
            found.add(WireRules.links(laying));
        }
        if (rig.inverter() != null) {
            found.add(Finding.inWords(
                    "grounding",
                    Verdict.CAUTION,
                    Basis.COMMON_PRACTICE,
                    "the inverter maker's instruction; NFPA 70 article 250; check the edition in force",
                    "Whether neutral and ground are joined, and where, is for the maker's instruction and a licensed electrician"
                            + " alone: nothing here is to be added by hand. On an output that floats a ground-fault outlet may"
                            + " not trip."));
        }
        return found;
    }

    private static Rig.Leads leads(Rig rig, List<WiredRun> runs) {
        double sunLoss = runs.stream()
                .filter(wired -> wired.run().kind() == Run.Kind.PANELS)
                .mapToDouble(WiredRun::dropShare)
                .sum();
        return new Rig.Leads(leadOhm(rig, runs), sunLoss);
    }

    /**
     * On the way to what draws most: the links to the bars side by side, those in a row, then the run itself. What an
     * enclosure brings is not known and counts as is usual, unless another run has more.
     */
    private static double leadOhm(Rig rig, List<WiredRun> runs) {
        if (rig.route() == Route.READY_BOX || runs.isEmpty()) {
            return rig.leadOhm();
        }
        double ohm = 0;
        WiredRun drawn = null;
        for (WiredRun wired : runs) {
            switch (wired.run().kind()) {
                case LINK -> ohm += wired.ohm() / rig.storeRows();
                case SERIES -> ohm += wired.ohm() * (rig.storesInSeries() - 1) / rig.storeRows();
                case MAIN, INVERTER, SOCKETS, CONTROLLER -> drawn = drawsMore(wired, drawn) ? wired : drawn;
                default -> {}
            }
        }
        double drawnOhm = drawn == null ? 0 : drawn.ohm();
        return ohm + (Runs.bringsLeads(rig) ? Math.max(drawnOhm, rig.route().guessedLeadOhm()) : drawnOhm);
    }

    private static boolean drawsMore(WiredRun one, @Nullable WiredRun other) {
        return other == null || one.run().amps().lasting() > other.run().amps().lasting();
    }
}
