package tideover.engine.sun;

import tideover.engine.quantity.Require;
import tideover.engine.quantity.Series;

/**
 * How the panels stand.
 *
 * @param tiltDeg     from the horizontal, 0 flat, 90 upright
 * @param azimuthDeg  the way they face, from north through east: 90 east, 180 south
 * @param soiling     share of light lost to dirt, 0..1
 * @param albedo      share of light the ground in front throws back, 0..1
 * @param shadeByHour 24 shares 0..1 of the light lost to trees, roofs and hills, from 00:00 local standard time on, the same all
 *                    year; taken off beam and sky light alike. A shadow that covers part of a string costs more than its share.
 */
public record PanelMount(double tiltDeg, double azimuthDeg, double soiling, double albedo, Series shadeByHour) {
    /** No shade at any hour. */
    public static final Series NO_SHADE = Series.of(new double[24]);

    public PanelMount {
        Require.within(0, 90, "tiltDeg", tiltDeg, "deg");
        Require.within(0, 360, "azimuthDeg", azimuthDeg, "deg");
        Require.within(0, 0.9, "soiling", soiling, "");
        Require.within(0, 1, "albedo", albedo, "");
        Require.within(24, 24, "hours of shadeByHour", shadeByHour.length());
        for (int hour = 0; hour < 24; hour++) {
            Require.within(0, 1, "shadeByHour " + hour, shadeByHour.at(hour), "");
        }
    }

    /** In the open. */
    public PanelMount(double tiltDeg, double azimuthDeg, double soiling, double albedo) {
        this(tiltDeg, azimuthDeg, soiling, albedo, NO_SHADE);
    }

    /** Share of the light on the plane that passes shade and dirt in a clock hour, 0..23. */
    public double reachingShare(int hourOfDay) {
        return (1 - soiling) * (1 - shadeByHour.at(hourOfDay));
    }
}
