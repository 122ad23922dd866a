package tideover.engine.rig;

import org.jspecify.annotations.Nullable;
import tideover.engine.outage.Outage;
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
 * @param engine     whether an engine comes to the rig's help that is not its own
 * @param outage     what is asked, to know what an engine of its own burns; null where nobody asks that
 */
public record Site(
        double lowestDegC,
        boolean sleptIn,
        RoomKind storeRoom,
        Room.@Nullable Extremes storeDegC,
        boolean engine,
        @Nullable Outage outage) {
    private static final double COLD_WHERE_UNKNOWN_DEG_C = -40;

    /** Of which no outage is told. */
    public Site(
            double lowestDegC, boolean sleptIn, RoomKind storeRoom, Room.@Nullable Extremes storeDegC, boolean engine) {
        this(lowestDegC, sleptIn, storeRoom, storeDegC, engine, null);
    }

    /** Indoors, no engine, the weather not known. */
    public Site(double lowestDegC, boolean sleptIn) {
        this(lowestDegC, sleptIn, RoomKind.INDOORS, null, false);
    }

    /** With what the weather makes of the store's room. */
    public Site with(Room.Extremes degC) {
        return new Site(lowestDegC, sleptIn, storeRoom, degC, engine, outage);
    }

    /** The cold that panels must stand. */
    public double coldDegC() {
        return Double.isNaN(lowestDegC) ? COLD_WHERE_UNKNOWN_DEG_C : lowestDegC;
    }
}
