package tideover.engine.wiring;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;
import tideover.engine.part.BatterySwitch;
import tideover.engine.part.ControllerRating.PanelInput;
import tideover.engine.part.Fuse;
import tideover.engine.part.FuseHolder;
import tideover.engine.part.Panel;
import tideover.engine.part.PanelBranch;
import tideover.engine.part.PanelLead;
import tideover.engine.part.SmallPart;
import tideover.engine.rig.Rig;
import tideover.engine.rig.Route;
import tideover.engine.why.Finding;

/**
 * Chooses what lies between panels and their controller: leads, forks that put strings side by side, string fuses, and a
 * switch where the volts ask for one. Panels limit their own current, so the leads must bear all that they give.
 */
final class SunPicker {
    /** Format of fuses that sit in a panel's cable. */
    static final String PANEL_INLINE = "panel inline";

    /**
     * Wires less than 23 mm above a sunlit roof are hotter than the air by this: NFPA 70 310.15(B)(2), from memory; check the
     * edition in force.
     */
    static final double SUNLIT_ROOF_K = 33;

    /** Above it plugs within reach must open by a tool alone: NFPA 70 690.33, from memory. Then a switch is counted. */
    static final double PLUG_V = 30;

    private final Stock stock;
    private final Laying laying;

    SunPicker(Stock stock, Laying laying) {
        this.stock = stock;
        this.laying = laying;
    }

    /** Null where the rig has no panels. */
    Picker.@Nullable Pick pick(Rig rig, Run run, Set<SmallPart> gone) {
        Panel panel = rig.panel();
        if (panel == null || rig.controller() == null) {
            return null;
        }
        int strings = rig.panelStrings();
        double shortA = panel.sheet().shortCircuitA();
        double mostFuseA = panel.tail().mostFuseA();
        boolean fused = WireRules.needsStringFuses(strings, mostFuseA, shortA);
        Protection stringFuse = fused ? stringFuse(run, strings, shortA, mostFuseA, gone) : null;
        if (fused && stringFuse == null) {
            return new Picker.Pick(
                    null, Picker.missing("no-string-fuse", run, "no fuse for strings of panels suits", Map.of()));
        }
        if (strings > 1 && branch(run, panel.tail().connector(), gone) == null) {
            return new Picker.Pick(
                    null, Picker.missing("no-panel-branch", run, "no fork for strings of panels suits", Map.of()));
        }
        return lead(rig, run, panel, stringFuse, gone);
    }

    private Picker.Pick lead(Rig rig, Run run, Panel panel, @Nullable Protection stringFuse, Set<SmallPart> gone) {
        PanelInput input =
                rig.controller() == null ? PanelInput.UNKNOWN : rig.controller().input();
        boolean switched = rig.route() == Route.SEPARATE_PARTS && run.mostV() > PLUG_V;
        BatterySwitch hand = switched ? parting(run, gone) : null;
        Map<String, Integer> refused = new TreeMap<>();
        WiredRun best = null;
        double bestCents = Double.POSITIVE_INFINITY;
        for (PanelLead lead : stock.of(PanelLead.class)) {
            boolean reaches = lead.lengthM() >= run.oneWayM() || joins(lead);
            PanelBranch branch = rig.panelStrings() > 1 ? branch(run, plugOf(panel, lead), gone) : null;
            boolean forked = rig.panelStrings() <= 1 || branch != null;
            if (gone.contains(lead) || !reaches || !forked) {
                refused.merge(!reaches ? "length" : !forked ? "no fork of its make" : "used up", 1, Integer::sum);
                continue;
            }
            WiredRun wired = wired(rig, run, panel, input, lead, stringFuse, branch, hand);
            Finding broken = Picker.firstBroken(wired.findings());
            if (broken != null) {
                refused.merge(broken.rule(), 1, Integer::sum);
                continue;
            }
            double forksCents = branch == null ? 0 : (rig.panelStrings() - 1) * Picker.unitCents(branch);
            double cents = wired.pieces() * Picker.unitCents(lead) + forksCents;
            if (best == null || better(wired, cents, best, bestCents)) {
                best = wired;
                bestCents = cents;
            }
        }
        return best == null
                ? new Picker.Pick(null, Picker.missing("no-panel-lead", run, "no panel lead suits", refused))
                : new Picker.Pick(best, null);
    }

    /** The cheapest that loses little; where none does, the one that loses least. */
    private static boolean better(WiredRun one, double cents, WiredRun best, double bestCents) {
        boolean little = one.dropShare() <= WireRules.MOST_DROP_SHARE;
        if (little != best.dropShare() <= WireRules.MOST_DROP_SHARE) {
            return little;
        }
        if (!little && one.dropShare() != best.dropShare()) {
            return one.dropShare() < best.dropShare();
        }
        return cents < bestCents || (cents == bestCents && simpler(one, best));
    }

    /** Whether it may be plugged into another of its kind. */
    private static boolean joins(PanelLead lead) {
        return lead.connector().equals(PanelLead.ANY_MAKE) || lead.connector().equalsIgnoreCase(lead.farEnd());
    }

    /** Make of what a fork is plugged into: the panels, or the lead where theirs is not told; empty where nothing is known. */
    private static String plugOf(Panel panel, PanelLead lead) {
        String told = panel.tail().connector();
        String other = lead.connector().equals(PanelLead.ANY_MAKE) ? "" : lead.connector();
        return told.isEmpty() ? other : told;
    }

    private static boolean simpler(WiredRun one, WiredRun other) {
        int bySize = one.size().compareTo(other.size());
        return bySize < 0 || (bySize == 0 && one.pieces() < other.pieces());
    }

    private WiredRun wired(
            Rig rig,
            Run run,
            Panel panel,
            PanelInput input,
            PanelLead lead,
            @Nullable Protection stringFuse,
            @Nullable PanelBranch branch,
            @Nullable BatterySwitch hand) {
        int strings = rig.panelStrings();
        int pieces = (int) Math.max(1, Math.ceil(run.oneWayM() / lead.lengthM()));
        double wireM = Math.max(run.oneWayM(), pieces * lead.lengthM());
        double ohm = Resistance.ofPair(lead.size(), wireM);
        double dropV = run.amps().lasting() * ohm;
        double mayA = allowedA(lead, run);
        Fuse fuse = stringFuse == null ? null : (Fuse) stringFuse.device();
        List<Finding> findings = new ArrayList<>();
        findings.add(WireRules.connectors(run, panel.tail().connector(), input.plug(), lead));
        findings.add(WireRules.ampacity(run, lead.listing().name(), run.amps().design(), mayA));
        findings.add(WireRules.plugAmps(run, lead));
        findings.add(WireRules.drop(run, dropV));
        findings.add(WireRules.stringFuse(
                run, strings, panel.tail().mostFuseA(), panel.sheet().shortCircuitA(), fuse));
        if (rig.route() == Route.SEPARATE_PARTS && run.mostV() > PLUG_V) {
            findings.add(WireRules.panelSwitch(run, hand));
        }
        Map<SmallPart, Double> needs = new LinkedHashMap<>();
        needs.put(lead, (double) pieces);
        if (branch != null) {
            needs.put(branch, strings - 1.0);
        }
        if (stringFuse != null && stringFuse.holder() != null) {
            needs.put(stringFuse.device(), (double) strings);
            needs.put(stringFuse.holder(), (double) strings);
        }
        if (hand != null) {
            needs.put(hand, 1.0);
        }
        return new WiredRun(run, lead, lead.size(), pieces, mayA, stringFuse, hand, dropV, 0, ohm, needs, findings);
    }

    /**
     * What the lead may carry of the design current. The code asks for both: the terminals and the cap bear 1.25 times what
     * panels give in bright light; and that itself is borne where the lead lies hot.
     */
    private double allowedA(PanelLead lead, Run run) {
        int column = Ampacity.columnFor(lead.insulationDegC());
        if (column == 0) {
            return 0;
        }
        double terminalA =
                Ampacity.columnA(lead.size(), Ampacity.terminalColumn(run.amps().design()));
        double coolA = Math.min(Ampacity.smallWireCapA(lead.size()), Double.isNaN(terminalA) ? 0 : terminalA);
        double hottestDegC = laying.hottestDegC() + (laying.leadsOnRoof() ? SUNLIT_ROOF_K : 0);
        double hotA = Ampacity.columnA(lead.size(), column)
                * Ampacity.ambientFactor(column, hottestDegC)
                * Ampacity.bundleFactor(laying.sideBySide());
        return Double.isNaN(hotA) ? 0 : Math.min(coolA, Runs.LASTING_TIMES * hotA);
    }

    private @Nullable Protection stringFuse(
            Run run, int strings, double shortA, double mostFuseA, Set<SmallPart> gone) {
        double leastA = Runs.LASTING_TIMES * Runs.BRIGHT_TIMES * shortA;
        List<FuseHolder> holders = stock.of(FuseHolder.class);
        Protection best = null;
        double bestCents = Double.POSITIVE_INFINITY;
        for (Fuse fuse : stock.of(Fuse.class)) {
            boolean format = fuse.format().equalsIgnoreCase(PANEL_INLINE) || !stock.priced();
            boolean amps = fuse.ratedA() >= leastA && !(fuse.ratedA() > mostFuseA);
            FuseHolder holder = holders.stream()
                    .filter(one -> WireRules.holds(one, fuse) && !gone.contains(one))
                    .min(Comparator.comparingDouble(Picker::unitCents))
                    .orElse(null);
            if (!format || !amps || !(fuse.mostDcV() >= run.mostV()) || holder == null || gone.contains(fuse)) {
                continue;
            }
            double cents = strings * (Picker.unitCents(fuse) + Picker.unitCents(holder));
            if (cents < bestCents) {
                best = new Protection(fuse, holder);
                bestCents = cents;
            }
        }
        return best;
    }

    private @Nullable PanelBranch branch(Run run, String connector, Set<SmallPart> gone) {
        return stock.of(PanelBranch.class).stream()
                .filter(one -> one.ratedA() >= Runs.LASTING_TIMES * run.amps().lasting())
                .filter(one -> connector.isEmpty()
                        || one.connector().equals(PanelLead.ANY_MAKE)
                        || one.connector().equalsIgnoreCase(connector))
                .filter(one -> !gone.contains(one))
                .min(Comparator.comparingDouble(Picker::unitCents))
                .orElse(null);
    }

    private @Nullable BatterySwitch parting(Run run, Set<SmallPart> gone) {
        return stock.of(BatterySwitch.class).stream()
                .filter(one -> WireRules.parts(one, run) && !gone.contains(one))
                .min(Comparator.comparingDouble(Picker::unitCents))
                .orElse(null);
    }
}
