package tideover.engine.cold;

import tideover.engine.quantity.Require;
import tideover.engine.quantity.Units;

/**
 * Draws more in a warm room and moves less heat there. The heat it moves for each watt is a steady share of what Carnot
 * allows between an evaporator {@link #EVAPORATOR_K} colder than the box and a condenser {@link #CONDENSER_K} warmer than the room.
 *
 * <p>The share is the one of a freezer that moves 1.3 watts a watt in the test room of 32.2 degC. All three figures are common
 * practice, no source; where a box is known by its label they cancel in its use and matter only in how well its walls
 * hold. In a pull-down a warm box gives more than told here: the safe side.
 *
 * @param runningW   draw while it runs
 * @param atRoomDegC in a room so warm
 */
public record Compressor(double runningW, double atRoomDegC) {
    static final double EVAPORATOR_K = 10;
    static final double CONDENSER_K = 12;
    static final double CARNOT_SHARE = 0.381;

    /** Draw rises by so much of itself for each kelvin of the room; common practice, no source. */
    static final double MORE_PER_K = 0.008;

    /** The draw is held between these rooms. */
    static final double COLDEST_ROOM_DEG_C = 0;

    static final double WARMEST_ROOM_DEG_C = 43;

    public Compressor {
        Require.above(0, "runningW", runningW, "W");
        Require.within(-20, 60, "atRoomDegC", atRoomDegC, "degC");
    }

    /**
     * What one of that kind and size draws where nothing is told of it; common practice, no source. A reading at the plug
     * while it runs is far better.
     */
    public static Compressor usual(BoxKind kind, double litres) {
        double watts = switch (kind) {
            case CHEST_FREEZER -> 60 + 0.12 * litres;
            case UPRIGHT_FREEZER -> 80 + 0.15 * litres;
            case REFRIGERATOR -> 60 + 0.15 * litres;
            case MEDICINE_FRIDGE -> 60 + 0.1 * litres;
            case COOLER -> throw new IllegalArgumentException("a cooler has no compressor");
        };
        return new Compressor(watts, ColdBox.LABEL_ROOM_DEG_C);
    }

    Compressor times(double times) {
        return new Compressor(runningW * times, atRoomDegC);
    }

    public double watts(double roomDegC) {
        return runningW * (1 + MORE_PER_K * (held(roomDegC) - held(atRoomDegC)));
    }

    /** Heat moved per watt from a box held at a temperature. */
    public static double movedPerW(double roomDegC, double boxDegC) {
        double coldK = boxDegC - EVAPORATOR_K + Units.ZERO_CELSIUS_K;
        double warmK = held(roomDegC) + CONDENSER_K + Units.ZERO_CELSIUS_K;
        return CARNOT_SHARE * coldK / Math.max(warmK - coldK, 1);
    }

    /** The most it draws in any room. */
    public double mostW() {
        return watts(WARMEST_ROOM_DEG_C);
    }

    private static double held(double roomDegC) {
        return Math.max(COLDEST_ROOM_DEG_C, Math.min(WARMEST_ROOM_DEG_C, roomDegC));
    }
}
