package tideover.engine.rig;

/** How a rig works, a step finer than how it is built: what people tell apart when they choose. */
public enum Manner {
    READY_BOX,
    ENCLOSURE,
    SEPARATE_PARTS,
    DIRECT_CURRENT_ONLY,
    ENGINE_AND_BATTERY;

    public static Manner of(Rig rig) {
        if (rig.engine() != null) {
            return ENGINE_AND_BATTERY;
        }
        if (rig.inverter() == null) {
            return DIRECT_CURRENT_ONLY;
        }
        return switch (rig.route()) {
            case READY_BOX -> READY_BOX;
            case ENCLOSURE -> ENCLOSURE;
            case SEPARATE_PARTS -> SEPARATE_PARTS;
        };
    }
}
