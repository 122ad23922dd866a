package tideover.engine.rig;

import org.jspecify.annotations.Nullable;
import tideover.engine.site.Room;
import tideover.engine.site.RoomKind;

/**
 * What the rules ask of the place where a rig will stand.
 *
 * @param lowestDegC lowest outdoor temperature to design for; NaN where unknown, then the coldest band of NFPA 70 table
 *     690.7(A) stands in
 * @param sleptIn    whether people sleep in the room or home where the store stands
 * @param storeRoom  where the store stands
 * @param storeDegC  the coldest and the warmest that it gets there in any month; null before the weather is known. Only
 *     cautions hang on it
 * @param engine     whether an engine comes to the rig's help
 */
public record Site(
        double lowestDegC, boolean sleptIn, RoomKind storeRoom, Room.@Nullable Extremes storeDegC, boolean engine) {
    private static final double COLD_WHERE_UNKNOWN_DEG_C = -40;

    /** Indoors, no engine, the weather not known. */
    public Site(double lowestDegC, boolean sleptIn) {
        this(lowestDegC, sleptIn, RoomKind.INDOORS, null, false);
    }

    /** With what the weather makes of the store's room. */
    public Site with(Room.Extremes degC) {
        return new Site(lowestDegC, sleptIn, storeRoom, degC, engine);
    }

    /** The cold that panels must stand. */
    public double coldDegC() {
        return Double.isNaN(lowestDegC) ? COLD_WHERE_UNKNOWN_DEG_C : lowestDegC;
    }
}
