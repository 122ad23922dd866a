package tideover.app.report;

import java.util.Locale;
import tideover.engine.answer.StandbyCost;
import tideover.engine.part.RatedStore;
import tideover.engine.proof.Proof;
import tideover.engine.quantity.PlainNumber;
import tideover.engine.why.Basis;

/** What a battery known by its data sheet is, and what it costs, in words. */
final class BatteryWords {
    static final Basis COST_BASIS = Basis.COMMON_PRACTICE;

    private BatteryWords() {}

    /** Inner resistance, or the usual one of its chemistry and size, ohm. */
    static double innerOhm(RatedStore store) {
        return Double.isNaN(store.innerOhm())
                ? store.chemistry()
                        .traits()
                        .innerOhm(store.nominalV(), store.capacity().ratedAh())
                : store.innerOhm();
    }

    /** What it is, what its label is taken as worth, and how far it is used. */
    static String what(RatedStore store) {
        return String.format(
                Locale.ROOT,
                "%s, %s Ah at %s V; %.0f %% of its label counted on (%.0f %% likely), used to a depth of %.0f %%",
                store.chemistry().words(),
                PlainNumber.of(store.capacity().ratedAh()),
                PlainNumber.of(store.nominalV()),
                100 * store.worth().least(),
                100 * store.worth().likely(),
                100 * store.depth());
    }

    /** How cold and how warm it gets. */
    static String warmth(RatedStore store, Proof proof) {
        String heater = store.heater().watts() > 0
                ? String.format(
                        Locale.ROOT,
                        ", with its heater of %.0f W",
                        store.heater().watts())
                : "";
        return String.format(
                Locale.ROOT,
                "%s to %s degC in the asked months%s",
                degrees(Math.floor(proof.battery().lowestDegC())),
                degrees(Math.ceil(proof.battery().highestDegC())),
                heater);
    }

    /** Whole degrees, nought without a sign. */
    static String degrees(double degC) {
        return String.format(Locale.ROOT, "%.0f", degC == 0 ? 0.0 : degC);
    }

    /** What it costs a year, and by the kilowatt-hour. */
    static String cost(StandbyCost cost, String currency) {
        return String.format(
                Locale.ROOT,
                "%s a year standing by (lasts %.1f years); cycled to its depth every day (%.1f years) %s per kWh given;"
                        + " %s%s",
                Words.money(Math.round(cost.centsPerStandbyYear()), currency),
                cost.standbyYears(),
                cost.dailyYears(),
                Words.money(Math.round(cost.centsPerKwh()), currency),
                COST_BASIS.words(),
                cost.allNew() ? "" : ", and of new ones: one that is not new has lived part of it");
    }
}
