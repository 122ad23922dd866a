package tideover.engine.sun;

import tideover.engine.quantity.Require;

/**
 * How the panels stand.
 *
 * @param tiltDeg    from the horizontal, 0 flat, 90 upright
 * @param azimuthDeg the way they face, from north through east: 90 east, 180 south
 * @param soiling    share of light lost to dirt, 0..1
 * @param albedo     share of light the ground in front throws back, 0..1
 */
public record PanelMount(double tiltDeg, double azimuthDeg, double soiling, double albedo) {
    public PanelMount {
        Require.within(0, 90, "tiltDeg", tiltDeg, "deg");
        Require.within(0, 360, "azimuthDeg", azimuthDeg, "deg");
        Require.within(0, 0.9, "soiling", soiling, "");
        Require.within(0, 1, "albedo", albedo, "");
    }
}
