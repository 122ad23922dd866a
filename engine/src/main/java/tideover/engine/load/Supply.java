package tideover.engine.load;

import tideover.engine.quantity.PlainNumber;
import tideover.engine.quantity.Require;

/**
 * What a load is fed with, or what an outlet gives.
 *
 * @param current alternating or direct
 * @param volts   nominal
 * @param hertz   0 for direct current
 * @param plug    form of the plug or socket by its standard's name, such as {@code NEMA 5-15} or {@code USB-C}
 */
public record Supply(Current current, double volts, double hertz, String plug) {
    /** Alternating or direct current. */
    public enum Current {
        AC,
        DC
    }

    public Supply {
        Require.above(0, "volts", volts, "V");
        Require.text("plug", plug);
        if (current == Current.AC) {
            Require.within(16, 400, "hertz", hertz, "Hz");
        } else {
            Require.within(0, 0, "hertz of direct current", hertz, "Hz");
        }
    }

    /** Of what needs no plug. */
    public static final Supply NONE = dc(12, "none");

    public static Supply ac(double volts, double hertz, String plug) {
        return new Supply(Current.AC, volts, hertz, plug);
    }

    public static Supply dc(double volts, String plug) {
        return new Supply(Current.DC, volts, 0, plug);
    }

    public boolean isAc() {
        return current == Current.AC;
    }

    /** Such as "120 V AC 60 Hz, NEMA 5-15". */
    public String words() {
        String current = isAc() ? " V AC " + PlainNumber.of(hertz) + " Hz, " : " V DC, ";
        return PlainNumber.of(volts) + current + plug;
    }
}
