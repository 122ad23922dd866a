package tideover.engine.proof;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import tideover.engine.load.Load;
import tideover.engine.outage.Outage;
import tideover.engine.part.RatedStore;
import tideover.engine.rig.Rig;

/** Lifts each limit of a rig in turn and walks everything again. */
final class Lifts {
    /** A figure a quarter larger: enough to see a gain, small enough to be bought. */
    private static final double QUARTER_MORE = 1.25;

    private static final double WARM_DEG_C = 20;

    private final Prover prover;
    private final Setup base;
    private final int capHours;
    private final double[] before;
    private final List<Lift> lifts = new ArrayList<>();

    private Lifts(Prover prover, Setup base, int capHours) {
        this.prover = prover;
        this.base = base;
        this.capHours = capHours;
        this.before = prover.score(base, capHours);
    }

    /**
     * Greatest gain first.
     *
     * @param capHours how far hours are followed: to the asked length, or beyond it where no outage fails
     */
    static List<Lift> of(
            Prover prover, Rig rig, List<Load> loads, Setup base, double noonHour, int stepsPerHour, int capHours) {
        Lifts lifts = new Lifts(prover, base, capHours);
        Outage outage = base.outage();
        lifts.store();
        lifts.add("charge at the start", "a full store at the start", base.with(outage.fullAtStart()));
        if (base.figures().arrayRatedW() > 0) {
            lifts.sun();
            lifts.add("hours until the panels are out", "panels out at once", base.with(outage.panelsOutAtOnce()));
        }
        if (base.inverterLeftOn() && rig.inverter() != null && rig.inverter().standingW() > 0) {
            lifts.add(
                    "inverter standing draw",
                    "no standing draw of the inverter",
                    base.with(BusDemand.withoutStanding(rig, loads, noonHour, stepsPerHour))
                            .with(base.kept().withoutStanding()));
        }
        lifts.lifts.sort(Comparator.comparingDouble(Lift::shareGain)
                .thenComparingDouble(Lift::meanHoursGain)
                .reversed());
        return lifts.lifts;
    }

    private void store() {
        Setup.Cells cells = base.cells();
        RigFigures figures = base.figures();
        Setup larger = base.with(figures.withCapacityWh(figures.capacityWh() * QUARTER_MORE));
        if (cells == null) {
            add("store size", "a store a quarter larger", larger);
            return;
        }
        RatedStore store = cells.bank().store();
        add("store size", "a store a quarter larger", larger.with(cells.with(CellBank.of(store.times(QUARTER_MORE)))));
        if (cells.climate().degC().least() < WARM_DEG_C) {
            add("the battery's cold", "a battery kept at 20 degC", base.with(cells.at(WARM_DEG_C)));
        }
        RatedStore.Worth worth = store.worth();
        if (worth.likely() > worth.least()) {
            RatedStore asLabelled = store.withWorth(new RatedStore.Worth(worth.likely(), worth.likely()));
            add(
                    "what the label is worth",
                    "a battery measured to hold what such a label usually means",
                    base.with(cells.with(CellBank.of(asLabelled))));
        }
        if (store.depth() < 1) {
            add(
                    "depth it may be used to",
                    "a battery emptied to the end, at the cost of its life",
                    base.with(cells.with(CellBank.of(store.withDepth(1)))));
        }
        if (cells.starts() != null) {
            add("starting motors", "motors that start without a surge", base.with(cells.withoutStarts()));
        }
    }

    private void sun() {
        RigFigures figures = base.figures();
        Setup.Cells cells = base.cells();
        HeldArray held = cells == null ? null : cells.held();
        Setup morePanel = base.with(figures.withArrayRatedW(figures.arrayRatedW() * QUARTER_MORE));
        Setup freeController = base.with(figures.withControllerMaxW(Double.MAX_VALUE));
        Setup freeCharge = base.with(figures.withMaxChargeW(Double.MAX_VALUE));
        if (cells != null) {
            morePanel = morePanel.with(held == null ? cells : cells.with(held.times(QUARTER_MORE)));
            freeController = freeController.with(cells.withControllerMaxA(Double.MAX_VALUE));
            freeCharge = freeCharge.with(cells.with(cells.climate().withoutChargeLimit()));
        }
        add("winter sun on the panels", "a quarter more panel", morePanel);
        add("controller current", "no limit on the controller's output current", freeController);
        add("charging current of the store", "no limit on the store's charging current", freeCharge);
    }

    private void add(String limit, String words, Setup lifted) {
        double[] after = prover.score(lifted, capHours);
        lifts.add(new Lift(limit, words, after[0] - before[0], after[1] - before[1]));
    }
}
