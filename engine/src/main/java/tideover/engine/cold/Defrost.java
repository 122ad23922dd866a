package tideover.engine.cold;

import tideover.engine.quantity.Require;

/**
 * The heater of a frost-free box, run by a clock that counts only while there is power. The compressor stands still
 * meanwhile.
 *
 * @param heaterW    300 to 600 W is usual; common practice, no source
 * @param minutes    each time
 * @param everyHours from one to the next
 */
public record Defrost(double heaterW, double minutes, double everyHours) {
    /** Share of its heat that warms the box; the rest goes off with the melt water. Common practice, no source. */
    public static final double INTO_BOX = 0.4;

    /** Common practice, no source. */
    public static final Defrost USUAL = new Defrost(450, 15, 12);

    public Defrost {
        Require.above(0, "heaterW", heaterW, "W");
        Require.within(1, 120, "minutes", minutes, "min");
        Require.within(4, 96, "everyHours", everyHours, "h");
    }

    public double meanW() {
        return heaterW * minutes / 60 / everyHours;
    }
}
