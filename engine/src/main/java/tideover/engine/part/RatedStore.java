package tideover.engine.part;

import tideover.engine.battery.CellTraits;
import tideover.engine.battery.Chemistry;
import tideover.engine.quantity.Require;
import tideover.engine.why.Stated;

/**
 * A battery by its data sheet: rated figures only. How full or warm it is belongs to the simulation. NaN stands for what
 * the sheet does not give; a stated fallback of its chemistry takes its place.
 *
 * @param nominalV of the whole, such as 12 or 12.8
 * @param innerOhm of the whole at its terminals, half full, 25 degC; NaN where unknown
 * @param guard    what its electronics do, or that it has none
 * @param heater   that keeps it from freezing
 * @param depth    share of its capacity that its owner is willing to use: a choice, paid for in life
 * @param worth    what the label is worth
 * @param unitKg   mass of one battery: it decides how fast it takes the room's temperature
 */
public record RatedStore(
        Chemistry chemistry,
        Capacity capacity,
        double nominalV,
        double innerOhm,
        double maxChargeA,
        double maxDischargeA,
        Guard guard,
        Heater heater,
        double depth,
        Worth worth,
        double unitKg)
        implements Store {
    public RatedStore {
        Require.above(0, "nominalV", nominalV, "V");
        if (!Double.isNaN(innerOhm)) {
            Require.within(0, 10, "innerOhm", innerOhm, "ohm");
        }
        Require.above(0, "maxChargeA", maxChargeA, "A");
        Require.above(0, "maxDischargeA", maxDischargeA, "A");
        Require.above(0, "depth", depth, "");
        Require.within(0, 1, "depth", depth, "");
        Require.above(0, "unitKg", unitKg, "kg");
    }

    /**
     * Charge delivered at a steady current.
     *
     * @param ratedAh    over {@code ratedHours}
     * @param ratedHours such as 20
     * @param fastAh     over fewer hours; NaN where the sheet gives one rate only
     * @param fastHours  NaN likewise
     */
    public record Capacity(double ratedAh, double ratedHours, double fastAh, double fastHours) {
        public Capacity {
            Require.above(0, "ratedAh", ratedAh, "Ah");
            Require.above(0, "ratedHours", ratedHours, "h");
            if (!Double.isNaN(fastAh)) {
                Require.above(0, "fastAh", fastAh, "Ah");
                Require.within(0, ratedAh, "fastAh", fastAh, "Ah");
                Require.above(0, "fastHours", fastHours, "h");
                Require.within(0, Math.nextDown(ratedHours), "fastHours", fastHours, "h");
            }
        }

        public static Capacity of(double ratedAh, double ratedHours) {
            return new Capacity(ratedAh, ratedHours, Double.NaN, Double.NaN);
        }

        Capacity times(int count) {
            return new Capacity(ratedAh * count, ratedHours, fastAh * count, fastHours);
        }
    }

    /**
     * What watches over the cells.
     *
     * @param surge       amperes before it trips; unknown: no more than the lasting current
     * @param cutOffV     volts of the whole at which it lets go; NaN: the chemistry's usual
     * @param coldLockOut whether it keeps charge out below 0 degC; unknown counts as no
     */
    public record Guard(Surge surge, double cutOffV, Stated coldLockOut) {
        public static final Guard UNKNOWN = new Guard(Surge.UNKNOWN, Double.NaN, Stated.UNKNOWN);

        Guard bank(int series, int parallel) {
            return new Guard(new Surge(surge.most() * parallel, surge.seconds()), cutOffV * series, coldLockOut);
        }
    }

    /**
     * Heats the battery from its own terminals.
     *
     * @param watts       0 where there is none
     * @param holdsDegC   temperature it does not let the battery fall below, as far as its watts go
     */
    public record Heater(double watts, double holdsDegC) {
        public static final Heater NONE = new Heater(0, 0);

        public Heater {
            Require.atLeast(0, "watts", watts, "W");
            Require.within(-20, 30, "holdsDegC", holdsDegC, "degC");
        }
    }

    /**
     * What a label is worth: share of the rated capacity that is really there.
     *
     * @param least  what one can count on; the proof uses this
     * @param likely the middle of what is seen
     */
    public record Worth(double least, double likely) {
        /** Measured by a full discharge, to a few per cent. */
        public static final double MEASURED_LEAST = 0.97;

        public Worth {
            Require.above(0, "least", least, "");
            Require.within(0, 1.2, "likely", likely, "");
            Require.within(0, likely, "least", least, "");
        }

        public static Worth measured(double share) {
            return new Worth(MEASURED_LEAST * share, share);
        }
    }

    /** A label worth less than this is that of a worn or doubtful battery. Common practice, no source. */
    private static final double SOUND_WORTH = 0.9;

    /**
     * Resistance to reckon with, half full at 25 degC, ohm: the sheet's; else the chemistry's usual one, and the high end of
     * what is met with for a label that is not worth much, since resistance grows as capacity goes.
     */
    public double ohm() {
        if (!Double.isNaN(innerOhm)) {
            return innerOhm;
        }
        CellTraits traits = chemistry.traits();
        double times = worth.least() < SOUND_WORTH ? traits.mostOhmAh() / traits.ohmAh() : 1;
        return times * traits.innerOhm(nominalV, capacity.ratedAh());
    }

    @Override
    public double usableWh() {
        return capacity.ratedAh() * nominalV * worth.least() * depth;
    }

    @Override
    public RatedStore bank(int series, int parallel) {
        return new RatedStore(
                chemistry,
                capacity.times(parallel),
                nominalV * series,
                innerOhm * series / parallel,
                maxChargeA * parallel,
                maxDischargeA * parallel,
                guard.bank(series, parallel),
                new Heater(heater.watts() * series * parallel, heater.holdsDegC()),
                depth,
                worth,
                unitKg);
    }

    /** The same of another size. */
    public RatedStore times(double factor) {
        Capacity larger = new Capacity(
                capacity.ratedAh() * factor, capacity.ratedHours(), capacity.fastAh() * factor, capacity.fastHours());
        return with(larger, innerOhm / factor, depth, worth);
    }

    public RatedStore withDepth(double changed) {
        return with(capacity, innerOhm, changed, worth);
    }

    public RatedStore withWorth(Worth changed) {
        return with(capacity, innerOhm, depth, changed);
    }

    private RatedStore with(Capacity newCapacity, double newOhm, double newDepth, Worth newWorth) {
        return new RatedStore(
                chemistry,
                newCapacity,
                nominalV,
                newOhm,
                maxChargeA,
                maxDischargeA,
                guard,
                heater,
                newDepth,
                newWorth,
                unitKg);
    }
}
