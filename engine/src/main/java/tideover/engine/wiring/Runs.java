package tideover.engine.wiring;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.jspecify.annotations.Nullable;
import tideover.engine.battery.CellTraits;
import tideover.engine.load.Load;
import tideover.engine.part.ChargeController;
import tideover.engine.part.Charger;
import tideover.engine.part.ControllerRating;
import tideover.engine.part.Enclosure;
import tideover.engine.part.Inverter;
import tideover.engine.part.InverterRating;
import tideover.engine.part.Outlet;
import tideover.engine.part.Panel;
import tideover.engine.part.Part;
import tideover.engine.part.RatedStore;
import tideover.engine.part.SocketBoard;
import tideover.engine.rig.Chosen;
import tideover.engine.rig.Rig;
import tideover.engine.rig.Route;
import tideover.engine.rig.StartChain;
import tideover.engine.rig.StartEvent;
import tideover.engine.why.Stated;

/**
 * The runs of cable that a rig needs and what each has to bear. What is inside a ready-made box, or between the parts of an
 * enclosure, is its maker's.
 *
 * <p>Every run that begins at the battery has a fuse or breaker of its own there. Several batteries meet at bars, each row
 * through a fuse of its own, which protects the cables within the row too; runs then begin at the bars.
 */
final class Runs {
    /** NFPA 70 210.19, 215.2, 690.8(B): conductors and protection for 1.25 times what flows for three hours and more. */
    static final double LASTING_TIMES = 1.25;

    /** NFPA 70 690.8(A): and panels in bright light give 1.25 times their rated short-circuit current. */
    static final double BRIGHT_TIMES = 1.25;

    /** Highest volts of a store against its nominal ones, where its chemistry is not known. Common practice, no source. */
    private static final double UNKNOWN_MOST_SHARE = 1.25;

    private static final double COLDEST_CHARGE_DEG_C = 0;

    private final Rig rig;
    private final Laying laying;
    private final ProspectiveFault fault;
    private final double mostV;
    private final double momentW;

    private Runs(Rig rig, Laying laying, List<Load> loads) {
        this.rig = rig;
        this.laying = laying;
        this.fault = ProspectiveFault.of(rig);
        this.mostV = mostV(rig);
        this.momentW = StartChain.events(rig, loads).stream()
                .map(StartEvent::dcW)
                .max(Comparator.naturalOrder())
                .orElse(0.0);
    }

    /** Those between the battery and what hangs on it; empty for a ready-made box. */
    static List<Run> atBattery(Rig rig, Laying laying, List<Load> loads) {
        return rig.route() == Route.READY_BOX ? List.of() : new Runs(rig, laying, loads).atBattery();
    }

    /** Whether its enclosure comes with leads for the battery and a fuse in them. */
    static boolean bringsLeads(Rig rig) {
        return rig.chosen().stream()
                .anyMatch(one -> one.part() instanceof Enclosure enclosure
                        && enclosure.housing().bringsLeads() == Stated.YES);
    }

    private static double mostV(Rig rig) {
        if (rig.store() instanceof RatedStore bank) {
            CellTraits traits = bank.chemistry().traits();
            return traits.cells(bank.nominalV()) * traits.absorbV(COLDEST_CHARGE_DEG_C);
        }
        return UNKNOWN_MOST_SHARE * rig.busV();
    }

    private List<Run> atBattery() {
        List<Run> runs = new ArrayList<>();
        Enclosure enclosure = chosen(Enclosure.class);
        if (enclosure != null && !bringsLeads(rig)) {
            double drawnA = inverterA(enclosure.inverter()) + outletsA(enclosure.outlets());
            add(runs, Run.Kind.MAIN, laying.inverterM(), Math.max(drawnA, controllerA(enclosure.controller())), true);
        }
        Inverter inverter = chosen(Inverter.class);
        if (inverter != null) {
            add(runs, Run.Kind.INVERTER, laying.inverterM(), inverterA(inverter.rating()), true);
        }
        ChargeController controller = chosen(ChargeController.class);
        if (controller != null) {
            double outA = Math.max(controllerA(controller.rating()), outletsA(controller.outlets()));
            add(runs, Run.Kind.CONTROLLER, laying.controllerM(), outA, outletsA(controller.outlets()) > 0);
        }
        Charger charger = chosen(Charger.class);
        if (charger != null) {
            add(runs, Run.Kind.CHARGER, laying.chargerM(), charger.maxOutputA(), false);
        }
        SocketBoard sockets = chosen(SocketBoard.class);
        if (sockets != null) {
            add(runs, Run.Kind.SOCKETS, laying.socketsM(), outletsA(sockets.outlets()), true);
        }
        joinRows(runs);
        return runs;
    }

    /** Whatever flows to or from the bars is shared out over the rows. */
    private void joinRows(List<Run> runs) {
        double inA = 0;
        double outA = 0;
        for (Chosen chosen : rig.chosen()) {
            Part part = chosen.part();
            if (part instanceof Enclosure enclosure) {
                inA += controllerA(enclosure.controller());
                outA += inverterA(enclosure.inverter()) + outletsA(enclosure.outlets());
            } else if (part instanceof ChargeController controller) {
                inA += controllerA(controller.rating());
                outA += outletsA(controller.outlets());
            } else if (part instanceof Inverter inverter) {
                outA += inverterA(inverter.rating());
            } else if (part instanceof Charger charger) {
                inA += charger.maxOutputA();
            } else if (part instanceof SocketBoard sockets) {
                outA += outletsA(sockets.outlets());
            }
        }
        int rows = rig.storeRows();
        double lastingA = Math.max(inA, outA) / rows;
        double momentA = momentA() / rows;
        double linkM = Math.max(laying.linkM(), laying.linkOtherM());
        if (rows > 1 || rig.storesInSeries() > 1) {
            Amps amps = new Amps(lastingA, LASTING_TIMES * lastingA, momentA, fault.atRowFuseA());
            runs.add(new Run(Run.Kind.LINK, "", rows, linkM, rig.busV(), mostV, amps));
        }
        int gaps = rows * (rig.storesInSeries() - 1);
        if (gaps > 0) {
            Amps amps = new Amps(lastingA, LASTING_TIMES * lastingA, momentA, 0);
            runs.add(new Run(Run.Kind.SERIES, "", gaps, linkM / 2, rig.busV(), mostV, amps));
        }
    }

    private void add(List<Run> runs, Run.Kind kind, double oneWayM, double lastingA, boolean starts) {
        if (lastingA > 0) {
            Amps amps = new Amps(lastingA, LASTING_TIMES * lastingA, starts ? momentA() : 0, fault.bankA());
            runs.add(new Run(kind, "", 1, oneWayM, rig.busV(), mostV, amps));
        }
    }

    /** The hardest start at the lowest volts at which it may come. */
    private double momentA() {
        return momentW / lowestV();
    }

    private double lowestV() {
        return rig.inverterOffV() > 0 ? rig.inverterOffV() : Rig.USUAL_OFF_SHARE * rig.busV();
    }

    /** NFPA 70 690.8(A): an inverter's input at its lasting output and its lowest volts. */
    private double inverterA(@Nullable InverterRating inverter) {
        return inverter == null ? 0 : inverter.loss().dcW(inverter.ratedW()) / lowestV();
    }

    private static double controllerA(@Nullable ControllerRating controller) {
        return controller == null ? 0 : controller.maxOutputA();
    }

    private double outletsA(List<Outlet> outlets) {
        double watts = 0;
        for (Outlet outlet : outlets) {
            watts += outlet.supply().isAc() ? 0 : outlet.maxW() / outlet.efficiency();
        }
        return watts / rig.busV();
    }

    private <T> @Nullable T chosen(Class<T> kind) {
        return rig.chosen().stream()
                .map(one -> one.part())
                .filter(kind::isInstance)
                .map(kind::cast)
                .findFirst()
                .orElse(null);
    }

    /** From the array to its controller; null without panels. */
    static @Nullable Run ofPanels(Rig rig, Laying laying, double coldDegC) {
        Panel panel = rig.panel();
        if (panel == null) {
            return null;
        }
        double shortA = panel.sheet().shortCircuitA() * rig.panelStrings();
        double coldV = rig.panelsInSeries() * panel.openCircuitV(coldDegC);
        Amps amps = new Amps(shortA, LASTING_TIMES * BRIGHT_TIMES * shortA, 0, 0);
        return new Run(
                Run.Kind.PANELS,
                "",
                1,
                laying.panelsM(),
                rig.panelsInSeries() * panel.sheet().bestV(),
                coldV,
                amps);
    }
}
