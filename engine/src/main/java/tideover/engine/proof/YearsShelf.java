package tideover.engine.proof;

import java.util.HashMap;
import java.util.Map;
import tideover.engine.battery.BatteryWarmth;
import tideover.engine.battery.Chemistry;
import tideover.engine.part.RatedStore;
import tideover.engine.quantity.Series;
import tideover.engine.rig.Rig;

/**
 * What the weather years make of panels and batteries, worked out once for all rigs that share it. Not for several threads at
 * once.
 */
final class YearsShelf {
    private final PlaneWeather plane;
    private final Series roomDegC;
    private final Map<ArraySun, Series> suns = new HashMap<>();
    private final Map<Warmed, BatteryWarmth> warmths = new HashMap<>();

    /** @param roomDegC temperature of the store's room, hour by hour */
    YearsShelf(PlaneWeather plane, Series roomDegC) {
        this.plane = plane;
        this.roomDegC = roomDegC;
    }

    /** All that the temperature of one battery depends on. */
    private record Warmed(Chemistry chemistry, double unitKg, double heaterW, double holdsDegC) {}

    PlaneWeather plane() {
        return plane;
    }

    Series roomDegC() {
        return roomDegC;
    }

    Series wattsPerRatedW(Rig rig) {
        return suns.computeIfAbsent(ArraySun.of(rig), sun -> sun.wattsPerRatedW(plane));
    }

    /**
     * Of a bank: each battery is as warm as it would be alone, and all their heaters draw together.
     *
     * @param batteries in the bank
     */
    BatteryWarmth warmth(RatedStore store, int batteries) {
        RatedStore.Heater heater = store.heater();
        Warmed alone = new Warmed(store.chemistry(), store.unitKg(), heater.watts() / batteries, heater.holdsDegC());
        BatteryWarmth one = warmths.computeIfAbsent(
                alone,
                key -> BatteryWarmth.of(roomDegC, key.unitKg(), key.chemistry(), key.heaterW(), key.holdsDegC()));
        return batteries == 1 || heater.watts() == 0
                ? one
                : new BatteryWarmth(one.degC(), one.heaterW().times(batteries));
    }
}
