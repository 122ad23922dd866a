package tideover.engine.wiring;

import tideover.engine.battery.CellTraits;
import tideover.engine.part.RatedStore;
import tideover.engine.part.Store;
import tideover.engine.rig.Rig;

/**
 * The current that flows where the two poles of a bank touch, by its rows of batteries: full, its electronics failed shut.
 *
 * <p>What a maker gives as inner resistance counts as it is. Where none is given, a bolted fault meets less than the low end
 * of what is usual: of lithium the bare cells alone, since their electronics are no part of a path that has failed.
 *
 * @param rowA of one row
 * @param rows side by side
 */
record ProspectiveFault(double rowA, int rows) {
    /**
     * Of the low end of a lithium battery's usual resistance: bare iron phosphate cells of 100 Ah are near half a milliohm
     * each, links as much again for the four, where the low end with electronics is ten. Common practice, no source.
     */
    private static final double BARE_LITHIUM_SHARE = .3;

    /** Of the low end of a lead battery's. Common practice, no source. */
    private static final double LEAD_SHARE = .7;

    /** A store known by its label alone may be of the liveliest kind: mixed-oxide lithium, ohm Ah of a whole of 12 V. */
    private static final double UNKNOWN_OHM_AH_12V = .12 * 4 * BARE_LITHIUM_SHARE;

    /** Rested volts of a full battery against its nominal ones: lead 12.65 for 12, iron phosphate 13.6 for 12.8, others 4.2 for 3.65. */
    private static final double UNKNOWN_FULL_SHARE = 1.15;

    private static final double NOMINAL_12_V = 12;

    static ProspectiveFault of(Rig rig) {
        int rows = rig.storeRows();
        return new ProspectiveFault(bankA(rig.store()) / rows, rows);
    }

    private static double bankA(Store store) {
        if (!(store instanceof RatedStore bank)) {
            double ratedAh = store.usableWh() / store.nominalV();
            double ohm = UNKNOWN_OHM_AH_12V * (store.nominalV() / NOMINAL_12_V) / ratedAh;
            return ShortCircuit.boltedA(UNKNOWN_FULL_SHARE * store.nominalV(), ohm);
        }
        CellTraits traits = bank.chemistry().traits();
        int cells = traits.cells(bank.nominalV());
        double share = bank.chemistry().isLithium() ? BARE_LITHIUM_SHARE : LEAD_SHARE;
        double ohm = Double.isNaN(bank.innerOhm())
                ? share * cells * traits.leastOhmAh() / bank.capacity().ratedAh()
                : bank.innerOhm() * traits.ohmTimesByFill().at(1);
        return ShortCircuit.boltedA(cells * traits.openVByFill().at(1), ohm);
    }

    double bankA() {
        return rows * rowA;
    }

    /** At the fuse of one row: its own battery behind it, or all the others before it. */
    double atRowFuseA() {
        return Math.max(1, rows - 1) * rowA;
    }
}
