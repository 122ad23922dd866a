package tideover.engine.wiring;

import tideover.engine.electronics.ConductorSize;

/** Ohms of what is bolted or pressed together. Common practice, no source; a milliohm meter is better. */
final class Resistance {
    /** Conductors are reckoned as warm as their terminals may get, degC. */
    static final double WARM_DEG_C = 75;

    /** A pressed lug with its bolt. */
    static final double JOINT_OHM = .0001;

    /** A fuse or breaker loses about this at its rated current, V. */
    static final double PROTECTION_V = .07;

    private Resistance() {}

    static double ofPair(ConductorSize size, double oneWayM) {
        return VoltageDrop.volts(size, oneWayM, 1, WARM_DEG_C);
    }

    static double of(Protection protection) {
        return PROTECTION_V / protection.ratedA();
    }
}
