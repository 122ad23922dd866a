package tideover.engine.wiring;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import tideover.engine.electronics.ConductorSize;
import tideover.engine.load.Load;
import tideover.engine.part.BatterySwitch;
import tideover.engine.part.Breaker;
import tideover.engine.part.Busbar;
import tideover.engine.part.Cable;
import tideover.engine.part.ChargeController;
import tideover.engine.part.Charger;
import tideover.engine.part.ControllerRating;
import tideover.engine.part.Cord;
import tideover.engine.part.Enclosure;
import tideover.engine.part.Fitting;
import tideover.engine.part.Fuse;
import tideover.engine.part.FuseHolder;
import tideover.engine.part.Inverter;
import tideover.engine.part.InverterRating;
import tideover.engine.part.Lug;
import tideover.engine.part.Outlet;
import tideover.engine.part.Panel;
import tideover.engine.part.PanelBranch;
import tideover.engine.part.PanelLead;
import tideover.engine.part.Part;
import tideover.engine.part.RatedStore;
import tideover.engine.part.SmallPart;
import tideover.engine.part.SocketBoard;
import tideover.engine.part.Tool;
import tideover.engine.rig.Chosen;
import tideover.engine.rig.Rig;
import tideover.engine.rig.Route;
import tideover.engine.rig.StartChain;
import tideover.engine.rig.StartEvent;
import tideover.engine.why.Finding;
import tideover.engine.why.Stated;
import tideover.engine.why.Verdict;

/**
 * Judges a wired rig from outside: every current is reckoned anew from the parts, every ampacity from the tables, every count
 * from the rig. Dumb on purpose: no choosing, no memory, one plain question after another.
 */
@SuppressWarnings("NullAway") // what is not there fails the test by itself
final class CircuitChecker {
    private static final double ROUNDING = 1e-6;
    private static final Allowances NOTHING = new Allowances(0, 0, 0);

    private final Rig rig;
    private final List<Load> loads;
    private final Laying laying;
    private final double coldDegC;
    private final Build build;
    private final List<String> faults = new ArrayList<>();

    private CircuitChecker(Build build, List<Load> loads, Laying laying, double coldDegC) {
        this.rig = build.rig();
        this.loads = loads;
        this.laying = laying;
        this.coldDegC = coldDegC;
        this.build = build;
    }

    /** Plain words for each fault; empty where there is none. */
    static List<String> faults(Build build, List<Load> loads, Laying laying, double coldDegC) {
        CircuitChecker checker = new CircuitChecker(build, loads, laying, coldDegC);
        for (WiredRun wired : build.circuit().runs()) {
            switch (wired.run().kind()) {
                case CORD, ENGINE -> checker.cord(wired);
                case PANELS -> checker.panels(wired);
                case SERIES -> checker.row(wired);
                default -> checker.protectedRun(wired);
            }
            checker.noneFails(wired);
        }
        checker.nothingForgotten();
        checker.graph();
        checker.partsList();
        checker.leads();
        return checker.faults;
    }

    private void ask(boolean good, String pattern, Object... figures) {
        if (!good) {
            faults.add(String.format(Locale.ROOT, pattern, figures));
        }
    }

    private static boolean atMost(double value, double most) {
        return value <= most * (1 + ROUNDING) + ROUNDING;
    }

    private static boolean same(double one, double other) {
        return Math.abs(one - other) <= ROUNDING * Math.max(1, Math.abs(other));
    }

    // What flows.

    private double lowestV() {
        if (rig.inverter() == null) {
            return .875 * rig.store().nominalV();
        }
        double told = rig.inverter().window().cutOffV();
        return told > 0 ? told : .875 * rig.inverter().inputV();
    }

    private double inverterA(InverterRating inverter) {
        double acW = inverter.ratedW();
        double takenW = acW
                + inverter.loss().standingW()
                + inverter.loss().share() * acW
                + inverter.loss().perW() * acW * acW;
        return takenW / lowestV();
    }

    private double outletsA(List<Outlet> outlets) {
        double amps = 0;
        for (Outlet outlet : outlets) {
            if (outlet.supply().hertz() == 0) {
                amps += outlet.maxW() / outlet.efficiency() / rig.store().nominalV();
            }
        }
        return amps;
    }

    private static double controllerA(@Nullable ControllerRating controller) {
        return controller == null ? 0 : controller.maxOutputA();
    }

    /** Of each kind of run by the parts; and, under LINK, of all together by the rows. */
    private Map<Run.Kind, Double> lastingA() {
        Map<Run.Kind, Double> amps = new LinkedHashMap<>();
        if (rig.route() == Route.READY_BOX) {
            return amps;
        }
        double out = 0;
        double in = 0;
        for (Chosen chosen : rig.chosen()) {
            Part part = chosen.part();
            if (part instanceof Enclosure box) {
                double drawn = (box.inverter() == null ? 0 : inverterA(box.inverter())) + outletsA(box.outlets());
                if (!bringsLeads()) {
                    amps.put(Run.Kind.MAIN, Math.max(drawn, controllerA(box.controller())));
                }
                out += drawn;
                in += controllerA(box.controller());
            }
            if (part instanceof Inverter inverter) {
                amps.put(Run.Kind.INVERTER, inverterA(inverter.rating()));
                out += inverterA(inverter.rating());
            }
            if (part instanceof ChargeController controller) {
                double drawn = outletsA(controller.outlets());
                amps.put(Run.Kind.CONTROLLER, Math.max(drawn, controllerA(controller.rating())));
                out += drawn;
                in += controllerA(controller.rating());
            }
            if (part instanceof Charger charger) {
                amps.put(Run.Kind.CHARGER, charger.maxOutputA());
                in += charger.maxOutputA();
            }
            if (part instanceof SocketBoard sockets) {
                amps.put(Run.Kind.SOCKETS, outletsA(sockets.outlets()));
                out += outletsA(sockets.outlets());
            }
        }
        if (batteries() > 1) {
            amps.put(Run.Kind.LINK, Math.max(in, out) / rows());
        }
        if (rig.storesInSeries() > 1) {
            amps.put(Run.Kind.SERIES, Math.max(in, out) / rows());
        }
        amps.values().removeIf(value -> value == 0);
        return amps;
    }

    private boolean bringsLeads() {
        return rig.chosen().stream()
                .anyMatch(one ->
                        one.part() instanceof Enclosure box && box.housing().bringsLeads() == Stated.YES);
    }

    /** The hardest start: all that may be drawn by alternating or direct current at once, at the lowest volts. */
    private double momentA(Run.Kind kind) {
        double hardestW = 0;
        for (StartEvent event : StartChain.events(rig, loads)) {
            hardestW = Math.max(hardestW, event.dcW());
        }
        boolean outletsAtController = false;
        for (Chosen chosen : rig.chosen()) {
            outletsAtController |=
                    chosen.part() instanceof ChargeController controller && outletsA(controller.outlets()) > 0;
        }
        return switch (kind) {
            case MAIN, INVERTER, SOCKETS -> hardestW / lowestV();
            case CONTROLLER -> outletsAtController ? hardestW / lowestV() : 0;
            case LINK, SERIES -> hardestW / lowestV() / rows();
            default -> 0;
        };
    }

    private int rows() {
        int batteries = 1;
        for (Chosen chosen : rig.chosen()) {
            batteries = chosen.part() instanceof tideover.engine.part.Battery ? chosen.count() : batteries;
        }
        return batteries / rig.storesInSeries();
    }

    private int batteries() {
        return rows() * rig.storesInSeries();
    }

    private double mostV() {
        if (rig.store() instanceof RatedStore bank) {
            var traits = bank.chemistry().traits();
            double cells = Math.round(bank.nominalV() / traits.cellV());
            return cells * (traits.absorbV() - 25 * traits.chargeVPerK());
        }
        return 1.25 * rig.store().nominalV();
    }

    /** Full, through a third of the ohms that are usual at the least; or the maker's own. */
    private double bankFaultA() {
        double volts = rig.store().nominalV();
        if (rig.store() instanceof RatedStore bank) {
            var traits = bank.chemistry().traits();
            double cells = Math.round(volts / traits.cellV());
            double least = (bank.chemistry().isLithium() ? .3 : .7) * traits.leastOhmAh();
            double ohm = bank.innerOhm() > 0
                    ? bank.innerOhm() * traits.ohmTimesByFill().at(1)
                    : least * cells / bank.capacity().ratedAh();
            return cells * traits.openVByFill().at(1) / ohm;
        }
        double ah = rig.store().usableWh() / volts;
        return 1.15 * volts / (.3 * .12 * 4 * volts / 12 / ah);
    }

    // Runs with copper of their own.

    private double allowedA(WiredRun wired, double designA) {
        Cable cable = (Cable) wired.conductor();
        int wires = Math.max(laying.sideBySide(), 2 * wired.pieces());
        return wired.pieces()
                * Ampacity.allowedA(
                        cable.size(), cable.insulationDegC(), laying.hottestDegC(), wires, designA <= 100 ? 60 : 75);
    }

    private double lengthM(Run.Kind kind) {
        return switch (kind) {
            case MAIN, INVERTER -> laying.inverterM();
            case CONTROLLER -> laying.controllerM();
            case CHARGER -> laying.chargerM();
            case SOCKETS -> laying.socketsM();
            case LINK -> Math.max(laying.linkM(), laying.linkOtherM());
            case SERIES -> Math.max(laying.linkM(), laying.linkOtherM()) / 2;
            case PANELS -> laying.panelsM();
            case ENGINE -> laying.engineM();
            case CORD -> 0;
        };
    }

    private static double pairOhm(ConductorSize size, double oneWayM) {
        return 2 * oneWayM * size.ohmPerM(75);
    }

    private double cable(WiredRun wired, int alike, double lastingA) {
        String words = wired.run().words();
        Cable cable = (Cable) wired.conductor();
        double lengthM = lengthM(wired.run().kind());
        ask(cable.metal() == Cable.Metal.COPPER, "%s is not of copper", words);
        ask(wired.pieces() == 1 || cable.size().areaMm2() > 53, "%s: thin cables side by side", words);
        double ohm = pairOhm(cable.size(), lengthM) / wired.pieces();
        ask(atMost(ohm * lastingA, .03 * rig.store().nominalV()), "%s loses %.3f V", words, ohm * lastingA);
        ask(same(wired.dropV(), ohm * lastingA), "%s: drop told as %.4f V", words, wired.dropV());
        double metres = 1.1 * 2 * lengthM * alike * wired.pieces();
        ask(same(needed(wired, Cable.class), metres), "%s: %.3f m of cable are wanted", words, metres);
        double momentA = momentA(wired.run().kind());
        ask(same(wired.run().amps().moment(), momentA), "%s: a start takes %.1f A", words, momentA);
        ask(same(wired.sagV(), momentA * wired.ohm()), "%s: sag told as %.4f V", words, wired.sagV());
        ask(
                atMost(momentA * wired.ohm(), .10 * rig.store().nominalV()),
                "%s loses %.2f V at the start",
                words,
                momentA * wired.ohm());
        return ohm;
    }

    private static double needed(WiredRun wired, Class<? extends SmallPart> kind) {
        double sum = 0;
        for (Map.Entry<SmallPart, Double> need : wired.needs().entrySet()) {
            sum += kind.isInstance(need.getKey()) ? need.getValue() : 0;
        }
        return sum;
    }

    private void lugs(WiredRun wired, int alike, int ends) {
        double wanted = alike * wired.pieces() * ends;
        ask(
                same(needed(wired, Lug.class), wanted),
                "%s: %.0f lugs are wanted",
                wired.run().words(),
                wanted);
        for (SmallPart part : wired.needs().keySet()) {
            ask(
                    !(part instanceof Lug lug) || lug.size().equals(wired.size()),
                    "%s: lugs of another size",
                    wired.run().words());
        }
    }

    private void protectedRun(WiredRun wired) {
        Run.Kind kind = wired.run().kind();
        String words = wired.run().words();
        double lasting = lastingA().getOrDefault(kind, Double.NaN);
        int alike = kind == Run.Kind.LINK ? rows() : 1;
        ask(wired.run().count() == alike, "%s: there are %d", words, alike);
        Protection protection = wired.protection();
        if (protection == null) {
            faults.add(words + " has no protection");
            return;
        }
        double rated = protection.ratedA();
        ask(atMost(1.25 * lasting, rated), "%s: %.1f A protect %.1f A lasting", words, rated, lasting);
        ask(atMost(momentA(kind) / 2, rated), "%s: %.1f A protect a start of %.1f A", words, rated, momentA(kind));
        double allowed = allowedA(wired, 1.25 * lasting);
        ask(atMost(rated, allowed), "%s: %.1f A protect a wire for %.1f A", words, rated, allowed);
        ask(same(wired.allowedA(), allowed), "%s: told to bear %.1f A", words, wired.allowedA());
        ask(atMost(mostV(), protection.mostDcV()), "%s: %.1f V are not parted", words, mostV());
        double fault = kind == Run.Kind.LINK ? bankFaultA() / rows() * Math.max(1, rows() - 1) : bankFaultA();
        ask(atMost(fault, protection.interruptingA()), "%s: %.0f A are not interrupted", words, fault);
        double ohm = cable(wired, alike, lasting);
        // Battery plus, both sides of the protection, battery minus; what is not clamped by screws; both sides of a
        // switch.
        boolean bolted = kind == Run.Kind.MAIN || kind == Run.Kind.INVERTER || kind == Run.Kind.LINK;
        int ends = 4 + (bolted ? 2 : 0) + (wired.parting() == null ? 0 : 2);
        lugs(wired, alike, ends);
        ask(same(wired.ohm(), ohm + .07 / rated + .0001 * ends), "%s: told as %.6f ohm", words, wired.ohm());
        if (protection.device() instanceof Breaker breaker) {
            ask(
                    kind == Run.Kind.INVERTER || kind == Run.Kind.SOCKETS || breaker.polarised() == Stated.NO,
                    "%s: a breaker for one direction",
                    words);
            ask(needed(wired, Breaker.class) == alike, "%s: breakers", words);
        } else {
            FuseHolder holder = protection.holder();
            ask(needed(wired, Fuse.class) == alike, "%s: fuses", words);
            ask(needed(wired, FuseHolder.class) == alike, "%s: holders", words);
            Fuse fuse = (Fuse) protection.device();
            ask(
                    holder != null && holder.format().equalsIgnoreCase(fuse.format()) && holder.mostA() >= rated,
                    "%s: the fuse's holder",
                    words);
        }
        parting(wired);
        if (wired.parting() instanceof BatterySwitch hand) {
            ask(kind == Run.Kind.INVERTER && protection.holder() != null, "%s: a switch that nobody wants", words);
            ask(needed(wired, BatterySwitch.class) == 1, "%s: switches", words);
            ask(hand.ratedA() >= 1.25 * lasting * (1 - ROUNDING) && hand.mostDcV() >= mostV(), "%s: switch", words);
        }
    }

    /** An inverter's cable that neither a switch nor a breaker parts is told, and nothing else is. */
    private void parting(WiredRun wired) {
        boolean parted = wired.parting() != null || wired.protection().device() instanceof Breaker;
        List<Verdict> told = wired.findings().stream()
                .filter(finding -> finding.rule().equals("battery-switch"))
                .map(Finding::verdict)
                .toList();
        List<Verdict> wanted =
                wired.run().kind() == Run.Kind.INVERTER ? List.of(parted ? Verdict.PASS : Verdict.CAUTION) : List.of();
        ask(told.equals(wanted), "%s: told of its switch %s", wired.run().words(), told);
    }

    /** Its own fuse protects a row, at the bars; what flows by design must be borne even where none could be had. */
    private void row(WiredRun wired) {
        String words = wired.run().words();
        double lasting = lastingA().getOrDefault(Run.Kind.SERIES, Double.NaN);
        WiredRun link = build.circuit().of(Run.Kind.LINK);
        ask(link != null || !complete(), "%s: no fuse protects the row", words);
        double behindA = link == null || link.protection() == null
                ? 1.25 * lasting
                : Math.max(1.25 * lasting, link.protection().ratedA());
        int gaps = rows() * (rig.storesInSeries() - 1);
        ask(wired.run().count() == gaps, "%s: there are %d", words, gaps);
        ask(wired.protection() == null, "%s: a second fuse in the row", words);
        double allowed = allowedA(wired, 1.25 * lasting);
        ask(atMost(behindA, allowed), "%s: %.1f A protect a wire for %.1f A", words, behindA, allowed);
        ask(same(wired.allowedA(), allowed), "%s: told to bear %.1f A", words, wired.allowedA());
        double ohm = cable(wired, gaps, lasting);
        lugs(wired, gaps, 2);
        ask(same(wired.ohm(), ohm + .0002), "%s: told as %.6f ohm", words, wired.ohm());
    }

    // Panels and cords.

    private void panels(WiredRun wired) {
        String words = wired.run().words();
        Panel panel = rig.panel();
        PanelLead lead = (PanelLead) wired.conductor();
        int strings = rig.panelCount() / rig.panelsInSeries();
        double shortA = panel.sheet().shortCircuitA();
        double all = strings * shortA;
        ask(atMost(1.25 * all, lead.ratedA()), "%s: plugs for %.1f A", words, lead.ratedA());
        int column = lead.insulationDegC() >= 90 ? 90 : lead.insulationDegC() >= 75 ? 75 : 60;
        double air = laying.hottestDegC() + (laying.leadsOnRoof() ? 33 : 0);
        double hotA = Ampacity.columnA(lead.size(), column)
                * Ampacity.ambientFactor(column, air)
                * Ampacity.bundleFactor(laying.sideBySide());
        ask(atMost(1.25 * all, hotA), "%s: %.1f A where it bears %.1f A hot", words, 1.25 * all, hotA);
        double cool = Math.min(
                Ampacity.columnA(lead.size(), 1.5625 * all <= 100 ? 60 : 75), Ampacity.smallWireCapA(lead.size()));
        ask(atMost(1.5625 * all, cool), "%s: %.1f A where it bears %.1f A", words, 1.5625 * all, cool);
        double lyingM = wired.pieces() * lead.lengthM();
        ask(atMost(laying.panelsM(), lyingM), "%s: too short", words);
        double drop = pairOhm(lead.size(), lyingM) * all;
        double bestV = rig.panelsInSeries() * panel.sheet().bestV();
        ask(atMost(drop, .10 * bestV), "%s loses %.2f V", words, drop);
        ask(
                same(rig.leads().sunLoss(), drop / bestV),
                "%s: the proof counts %.4f lost",
                words,
                rig.leads().sunLoss());
        ask(needed(wired, PanelLead.class) == wired.pieces(), "%s: leads", words);
        ask(needed(wired, PanelBranch.class) == strings - 1, "%s: forks", words);
        String make = panel.tail().connector();
        boolean any = lead.connector().equals(PanelLead.ANY_MAKE);
        ask(any || make.isEmpty() || make.equalsIgnoreCase(lead.connector()), "%s: plugs of two makes", words);
        for (SmallPart part : wired.needs().keySet()) {
            ask(
                    !(part instanceof PanelBranch fork)
                            || any
                            || fork.connector().equals(PanelLead.ANY_MAKE)
                            || fork.connector().equalsIgnoreCase(lead.connector()),
                    "%s: a fork of another make",
                    words);
        }
        double fed = 1.25 * (strings - 1) * shortA;
        double mostFuse = panel.tail().mostFuseA();
        boolean wanted = strings > 1 && (mostFuse > 0 ? fed > mostFuse : strings > 2);
        ask(!wanted || wired.protection() != null, "%s: strings without fuses", words);
        if (wired.protection() != null) {
            double rated = wired.protection().ratedA();
            double coldV = rig.panelsInSeries() * panel.openCircuitV(coldDegC);
            ask(atMost(1.5625 * shortA, rated) && !(rated > mostFuse), "%s: string fuse of %.0f A", words, rated);
            ask(wired.protection().mostDcV() >= coldV, "%s: string fuse for %.0f V", words, coldV);
            ask(needed(wired, Fuse.class) == strings, "%s: string fuses", words);
            ask(needed(wired, FuseHolder.class) == strings, "%s: their holders", words);
        }
    }

    private void cord(WiredRun wired) {
        String words = wired.run().words();
        Cord cord = (Cord) wired.conductor();
        double amps = wired.run().amps().lasting();
        double volts = wired.run().systemV();
        double wantedM = laying.engineM();
        if (wired.run().kind() == Run.Kind.CORD) {
            Load load = loads.stream()
                    .filter(one -> one.name().equals(wired.run().what()))
                    .findFirst()
                    .orElseThrow();
            wantedM = laying.cordM().getOrDefault(load.name(), 0.0);
            volts = load.supply().volts();
            amps = load.runningW() / load.nature().powerFactor() / volts;
            double startVa =
                    load.nature().start() == null ? 0 : load.nature().start().va(load.runningVa());
            double sag = startVa / volts * pairOhm(cord.size(), cord.lengthM());
            ask(atMost(sag, .10 * volts), "%s: %.1f V lost at the start", words, sag);
        }
        ask(atMost(amps, cord.ratedA()), "%s: %.1f A", words, amps);
        ask(atMost(wantedM, cord.lengthM()), "%s: too short", words);
        double drop = amps * pairOhm(cord.size(), cord.lengthM());
        ask(atMost(drop, .03 * volts), "%s loses %.1f V", words, drop);
    }

    private void noneFails(WiredRun wired) {
        wired.findings()
                .forEach(finding -> ask(
                        finding.verdict() != Verdict.FAIL,
                        "%s breaks %s",
                        wired.run().words(),
                        finding.rule()));
    }

    // The whole.

    private boolean complete() {
        return build.findings().stream()
                .noneMatch(finding ->
                        finding.verdict() == Verdict.FAIL && finding.rule().startsWith("no-"));
    }

    private void nothingForgotten() {
        if (!complete()) {
            return;
        }
        lastingA().keySet().forEach(kind -> ask(build.circuit().of(kind) != null, "nothing lies at %s", kind));
        ask(rig.panel() == null || build.circuit().of(Run.Kind.PANELS) != null, "nothing lies at the panels");
    }

    private void graph() {
        OneLine line = OneLine.of(build, loads);
        Set<String> ids = new HashSet<>();
        line.nodes().forEach(node -> ask(ids.add(node.id()), "two nodes are %s", node.id()));
        Map<WiredRun, Integer> drawn = new java.util.IdentityHashMap<>();
        for (OneLine.Edge edge : line.edges()) {
            ask(ids.contains(edge.from()) && ids.contains(edge.to()), "an edge from or to nowhere");
            if (edge.run() != null) {
                drawn.merge(edge.run(), 1, Integer::sum);
            } else {
                boolean ownCord = edge.to().startsWith("load-");
                boolean ownPlug = edge.from().equals("charger") && edge.to().equals("box");
                boolean ownLeads = bringsLeads() && edge.to().equals("enclosure");
                ask(ownCord || ownPlug || ownLeads, "%s to %s has no run", edge.from(), edge.to());
            }
        }
        for (WiredRun wired : build.circuit().runs()) {
            int times = drawn.getOrDefault(wired, 0);
            int rowsOf = wired.run().kind() == Run.Kind.LINK || wired.run().kind() == Run.Kind.SERIES ? rows() : 1;
            ask(times == rowsOf, "%s is drawn %d times", wired.run().words(), times);
            drawn.remove(wired);
        }
        ask(drawn.isEmpty(), "the drawing has runs that are not in the circuit");
        if (complete()) {
            Set<String> reached = new HashSet<>(Set.of(rig.route() == Route.READY_BOX ? "box" : "battery-1"));
            boolean grown = true;
            while (grown) {
                grown = false;
                for (OneLine.Edge edge : line.edges()) {
                    if (reached.contains(edge.from()) || reached.contains(edge.to())) {
                        grown |= reached.add(edge.from()) | reached.add(edge.to());
                    }
                }
            }
            ids.removeAll(reached);
            ask(ids.isEmpty(), "nothing leads to %s", ids);
        }
    }

    private void partsList() {
        Map<SmallPart, Double> wanted = new LinkedHashMap<>();
        double lugs = 0;
        for (WiredRun wired : build.circuit().runs()) {
            wired.needs().forEach((part, pieces) -> wanted.merge(part, pieces, Double::sum));
            lugs += needed(wired, Lug.class);
        }
        wanted.values().removeIf(pieces -> pieces == 0);
        Map<SmallPart, Double> listed = new LinkedHashMap<>();
        long cents = 0;
        long tools = 0;
        // One fuse more of each kind, where there is one more.
        wanted.replaceAll((part, pieces) ->
                part instanceof Fuse fuse && pieces < fuse.listing().atHand() * fuse.perPrice() ? pieces + 1 : pieces);
        double shrinks = build.partsList().missing().getOrDefault("heat shrink", 0);
        for (PartsList.Line line : build.partsList().lines()) {
            SmallPart part = line.part();
            listed.merge(part, line.needed(), Double::sum);
            double packs = line.needed() / part.perPrice();
            ask(
                    line.bought() >= packs - ROUNDING && line.bought() < packs + 1 - ROUNDING / 10,
                    "%d packs of %s for %.3f",
                    line.bought(),
                    part.listing().id(),
                    packs);
            ask(
                    line.bought() <= part.listing().atHand(),
                    "more %s than there are",
                    part.listing().id());
            cents += part instanceof Tool ? 0 : line.bought() * part.listing().priceCents();
            tools += part instanceof Tool ? line.bought() * part.listing().priceCents() : 0;
            shrinks += part instanceof Fitting fitting && fitting.use() == Fitting.Use.HEAT_SHRINK ? line.needed() : 0;
        }
        wanted.forEach((part, pieces) -> ask(
                same(listed.getOrDefault(part, 0.0), pieces),
                "%.3f of %s are wanted, %.3f listed",
                pieces,
                part.listing().id(),
                listed.getOrDefault(part, 0.0)));
        for (SmallPart part : listed.keySet()) {
            boolean beside = part instanceof Fitting || part instanceof Tool || part instanceof Busbar;
            ask(
                    beside || wanted.containsKey(part),
                    "nobody wants %s",
                    part.listing().id());
        }
        ask(same(shrinks, lugs), "%.0f shrinks for %.0f lugs", shrinks, lugs);
        boolean heavy = wanted.keySet().stream()
                .anyMatch(part -> part instanceof Lug lug && lug.size().areaMm2() > 6);
        for (Tool.Job job : List.of(Tool.Job.HEAVY_CRIMPER, Tool.Job.TORQUE_WRENCH)) {
            int counted = build.partsList().missing().getOrDefault(job.words(), 0);
            for (SmallPart part : listed.keySet()) {
                counted += part instanceof Tool tool && tool.job() == job ? 1 : 0;
            }
            ask(counted == (heavy ? 1 : 0), "%d of %s", counted, job.words());
        }
        bars(listed);
        Price price = Price.of(build, loads, NOTHING, Terms.NONE);
        if (build.counted()) {
            ask(price.smallPartsCents() == cents, "small parts cost %d", cents);
            ask(price.toolsCents() == tools, "tools cost %d", tools);
        }
        long main = 0;
        for (Chosen chosen : rig.chosen()) {
            main += chosen.count() * chosen.part().listing().priceCents();
        }
        ask(price.totalCents() == main + (build.counted() ? cents + tools : 0), "the total is %d", price.totalCents());
    }

    /** Two wherever there is more than one battery, for all that flows through them. */
    private void bars(Map<SmallPart, Double> listed) {
        double counted = build.partsList().missing().getOrDefault("busbar", 0);
        double allA = 1.25 * rows() * lastingA().getOrDefault(Run.Kind.LINK, 0.0);
        for (Map.Entry<SmallPart, Double> one : listed.entrySet()) {
            if (one.getKey() instanceof Busbar bar) {
                counted += one.getValue();
                ask(atMost(allA, bar.ratedA()), "a bar of %.0f A for %.1f A", bar.ratedA(), allA);
            }
        }
        int wanted = build.circuit().of(Run.Kind.LINK) == null ? 0 : 2;
        ask(counted == wanted, "%.0f bars", counted);
    }

    private void leads() {
        ask(
                build.circuit().of(Run.Kind.PANELS) != null || rig.leads().sunLoss() == 0,
                "the proof counts %.4f lost on no leads",
                rig.leads().sunLoss());
        ask(
                rig.controller() == null
                        || same(
                                rig.sunEfficiency(),
                                rig.controller().efficiency() * (1 - rig.leads().sunLoss())),
                "the proof counts %.4f of the sun",
                rig.sunEfficiency());
        ask(rig.leads().equals(build.circuit().leads()), "two resistances of the leads");
        leadOhm();
    }

    /** Through the rows side by side, their gaps, and the run that carries most, unless that may also be the charger's. */
    private void leadOhm() {
        if (rig.route() == Route.READY_BOX || !complete()) {
            return;
        }
        double most = -1;
        double ohm = 0;
        double shared = 0;
        for (Map.Entry<Run.Kind, Double> one : lastingA().entrySet()) {
            WiredRun wired = build.circuit().of(one.getKey());
            if (wired == null) {
                continue;
            }
            switch (one.getKey()) {
                case LINK -> shared += wired.ohm() / rows();
                case SERIES -> shared += wired.ohm() * (batteries() / rows() - 1) / rows();
                case CHARGER -> {}
                default -> {
                    if (one.getValue() > most) {
                        most = one.getValue();
                        ohm = wired.ohm();
                    }
                }
            }
        }
        // What an enclosure brings counts as is usual, unless something else has more.
        ohm = bringsLeads() ? Math.max(ohm, rig.route().guessedLeadOhm()) : ohm;
        ask(same(rig.leadOhm(), ohm + shared), "leads of %.6f ohm", rig.leadOhm());
    }
}
