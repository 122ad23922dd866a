package tideover.engine.proof;

import java.util.ArrayList;
import java.util.List;
import tideover.engine.battery.CapacityRating;
import tideover.engine.battery.CellTraits;
import tideover.engine.battery.Peukert;
import tideover.engine.battery.TwoWells;
import tideover.engine.battery.WellFit;
import tideover.engine.part.RatedStore;
import tideover.engine.quantity.Curve;

/**
 * A bank of batteries made ready for a walk: what its data sheet says, and its chemistry's usual figures for the rest.
 *
 * <p>Content is counted as energy at the open terminals: ampere-hours times the mean open volts. That a full cell gives
 * its charge at more volts than an empty one shifts the state of charge by a hundredth or two; neglected.
 *
 * @param wells      kinetics
 * @param fullWh     content of both wells when full, at what the label is worth
 * @param openV      volts of the bank without current by the filling of the first well
 * @param innerOhm   half full, 25 degC
 * @param cutOffV    of the bank, at which it lets go
 * @param mostChargeV highest volts it is charged with in any cold
 */
record CellBank(
        RatedStore store,
        CellTraits traits,
        TwoWells wells,
        double fullWh,
        Curve openV,
        double innerOhm,
        double cutOffV,
        double mostChargeV) {
    /** Rate of the stand-in for a second rating of a lead battery. */
    private static final double FAST_H = 5;

    /** Colder than any battery is charged. */
    private static final double COLDEST_CHARGE_DEG_C = -40;

    static CellBank of(RatedStore store) {
        CellTraits traits = store.chemistry().traits();
        WellFit fit = TwoWells.fit(ratings(store), traits.fallback());
        int cells = traits.cells(store.nominalV());
        Curve openV = traits.openVByFill().times(cells);
        double innerOhm = store.ohm();
        double cutOffV = Double.isNaN(store.guard().cutOffV())
                ? cells * traits.cutOffV()
                : store.guard().cutOffV();
        return new CellBank(
                store,
                traits,
                fit.wells(),
                fit.wholeAh() * store.worth().least() * openV.mean(),
                openV,
                innerOhm,
                cutOffV,
                cells * traits.absorbV(COLDEST_CHARGE_DEG_C));
    }

    private static List<CapacityRating> ratings(RatedStore store) {
        RatedStore.Capacity capacity = store.capacity();
        List<CapacityRating> ratings = new ArrayList<>();
        CapacityRating rated = new CapacityRating(capacity.ratedHours(), capacity.ratedAh());
        ratings.add(rated);
        if (!Double.isNaN(capacity.fastAh())) {
            ratings.add(new CapacityRating(capacity.fastHours(), capacity.fastAh()));
        } else if (store.chemistry().isLead() && capacity.ratedHours() > FAST_H) {
            ratings.add(Peukert.over(FAST_H, rated, Peukert.exponent(store.chemistry())));
        }
        return ratings;
    }

    /** Energy that may be taken out of a full bank, kept to its depth, Wh. */
    double usableWh() {
        return fullWh * store.depth();
    }
}
