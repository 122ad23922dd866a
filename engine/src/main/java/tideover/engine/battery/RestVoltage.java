package tideover.engine.battery;

import tideover.engine.quantity.Curve;

/**
 * How full a lead battery is by its volts after hours of rest, told as a range because the published tables disagree.
 *
 * <p>Three tables (12 V, about 26.7 degC, all read on public pages): a battery maker's, a trade magazine's, a third page's.
 * They differ by up to .09 V below three quarters, which is a tenth of the charge. Pages correct by .024 V for each 10
 * degF from 80 degF, down when colder, as a hydrometer is corrected; the volts of the acid itself move less and the other
 * way. So both readings, with and without, stay inside the range. Valid after some 4 to 24 h of rest (common practice, no
 * source); not for lithium, whose volts tell nothing between its ends. Neglected: stratified acid, age, the .1 to .2 V more
 * of gel and AGM, by which those read too full.
 */
public final class RestVoltage {
    static final Curve MAKER = CellTraits.LEAD_12V_BY_FILL;

    /** Its table ends at a quarter with 12.15 V; the empty end is its last slope carried on. */
    static final Curve MAGAZINE = Curve.of(0, 12.00, .25, 12.15, .50, 12.30, .75, 12.45, 1, 12.66);

    static final Curve THIRD = Curve.of(0, 11.85, .25, 11.95, 1, 12.60);

    static final double TABLE_DEG_C = 26.7;

    /** .024 V for 10 degF of a 12 V battery (two pages), V/K. */
    static final double VOLTS_PER_K = .024 / 10 * 1.8;

    private RestVoltage() {}

    /** State of charge 0..1, the least and the most that the tables make of a reading. */
    public record Reading(double least, double most) {}

    /**
     * What the tables make of a reading.
     *
     * @param volts12 of a rested 12 V battery; half the volts of a 24 V one
     * @param degC    the battery's own temperature
     */
    public static Reading fill(double volts12, double degC) {
        double corrected = volts12 + VOLTS_PER_K * (degC - TABLE_DEG_C);
        double low = Math.min(volts12, corrected);
        double high = Math.max(volts12, corrected);
        double least = 1;
        double most = 0;
        for (Curve table : new Curve[] {MAKER, MAGAZINE, THIRD}) {
            least = Math.min(least, fill(table, low));
            most = Math.max(most, fill(table, high));
        }
        return new Reading(least, most);
    }

    static double fill(Curve table, double volts12) {
        return Math.min(1, table.whereRisesTo(volts12));
    }
}
