package tideover.engine.part;

import tideover.engine.quantity.Require;

/**
 * A store known only by its label: a tank of energy with constant losses on the way in and on the way out.
 *
 * @param usableWh            between empty and full, counted inside the store: it gives {@code usableWh * dischargeEfficiency}
 * @param chargeEfficiency    stored per delivered to it, 0..1
 * @param dischargeEfficiency given per taken out of it, 0..1
 * @param nominalV            volts of its terminals, taken as constant
 * @param maxChargeA          most current into it
 * @param maxDischargeA       most current out of it
 */
public record PlainStore(
        double usableWh,
        double chargeEfficiency,
        double dischargeEfficiency,
        double nominalV,
        double maxChargeA,
        double maxDischargeA)
        implements Store {
    public PlainStore {
        Require.above(0, "usableWh", usableWh, "Wh");
        Require.within(0.1, 1, "chargeEfficiency", chargeEfficiency, "");
        Require.within(0.1, 1, "dischargeEfficiency", dischargeEfficiency, "");
        Require.above(0, "nominalV", nominalV, "V");
        Require.above(0, "maxChargeA", maxChargeA, "A");
        Require.above(0, "maxDischargeA", maxDischargeA, "A");
    }

    /** The same of another size. */
    public PlainStore times(double factor) {
        return new PlainStore(
                usableWh * factor, chargeEfficiency, dischargeEfficiency, nominalV, maxChargeA, maxDischargeA);
    }

    @Override
    public PlainStore bank(int series, int parallel) {
        return new PlainStore(
                usableWh * series * parallel,
                chargeEfficiency,
                dischargeEfficiency,
                nominalV * series,
                maxChargeA * parallel,
                maxDischargeA * parallel);
    }
}
