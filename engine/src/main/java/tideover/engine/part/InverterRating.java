package tideover.engine.part;

import tideover.engine.quantity.Require;

/**
 * An inverter by its label.
 *
 * @param ratedW     AC watts it gives for hours
 * @param efficiency AC out per DC in while it carries a load, standing draw apart, 0..1
 * @param standingW  DC draw whenever it is switched on, loaded or not
 * @param inputV     nominal DC volts it wants
 */
public record InverterRating(double ratedW, double efficiency, double standingW, double inputV) {
    public InverterRating {
        Require.above(0, "ratedW", ratedW, "W");
        Require.within(0.1, 1, "efficiency", efficiency, "");
        Require.atLeast(0, "standingW", standingW, "W");
        Require.above(0, "inputV", inputV, "V");
    }
}
