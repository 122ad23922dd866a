package tideover.engine.proof;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import tideover.engine.battery.BatteryWarmth;
import tideover.engine.battery.Chemistry;
import tideover.engine.load.ColdLoad;
import tideover.engine.load.Duty;
import tideover.engine.load.HeatLoad;
import tideover.engine.load.Load;
import tideover.engine.outage.Outage;
import tideover.engine.part.Panel;
import tideover.engine.part.RatedStore;
import tideover.engine.quantity.Series;
import tideover.engine.rig.Rig;
import tideover.engine.site.Room;
import tideover.engine.site.RoomKind;
import tideover.engine.site.Weather;

/**
 * What the weather years make of panels and batteries, worked out once for all rigs that share it. Not for several threads at
 * once.
 */
final class YearsShelf {
    private final PlaneWeather plane;
    private final Series roomDegC;
    private final Weather weather;
    private final Map<RoomKind, Series> rooms = new HashMap<>();
    private final Map<Held, HeldArray> arrays = new HashMap<>();
    private final Map<Lived, GridLife> lives = new HashMap<>();
    private final Map<Bounded, KeptBound> bounds = new HashMap<>();
    private final Map<ArraySun, Series> suns = new HashMap<>();
    private final Map<Warmed, BatteryWarmth> warmths = new HashMap<>();

    /** @param roomDegC temperature of the store's room, hour by hour */
    YearsShelf(Weather weather, PlaneWeather plane, Series roomDegC) {
        this.weather = weather;
        this.plane = plane;
        this.roomDegC = roomDegC;
    }

    /** Shares what does not depend on loads; lives learnt there are forgotten with it. */
    YearsShelf passing() {
        YearsShelf shelf = new YearsShelf(weather, plane, roomDegC);
        shelf.rooms.putAll(rooms);
        shelf.suns.putAll(suns);
        shelf.warmths.putAll(warmths);
        shelf.lives.putAll(lives);
        shelf.arrays.putAll(arrays);
        return shelf;
    }

    /** All that the amps of a held array depend on. */
    private record Held(Panel panel, int inSeries, int strings, double leastV, double mostV) {}

    /** As {@link HeldArray#of}. */
    HeldArray held(Panel panel, int inSeries, int strings, double leastV, double mostV) {
        return arrays.computeIfAbsent(
                new Held(panel, inSeries, strings, leastV, mostV),
                key -> HeldArray.of(plane, panel, inSeries, strings, leastV, mostV));
    }

    /** All that the temperature of one battery depends on. */
    private record Warmed(Chemistry chemistry, double unitKg, double heaterW, double holdsDegC) {}

    private record Lived(Load load, int stepsPerHour) {}

    /** Of any room, hour by hour. */
    Series roomDegC(RoomKind kind) {
        return rooms.computeIfAbsent(kind, key -> Room.degC(key, weather));
    }

    Series outdoorDegC() {
        return weather.airDegC();
    }

    /** What loads that switch themselves need at least. */
    KeptBound keptBound(List<Load> loads, Outage outage) {
        return bounds.computeIfAbsent(
                new Bounded(loads, outage.months(), outage.hours()),
                key -> KeptBound.of(loads, weather, outage.months(), outage.hours()));
    }

    private record Bounded(List<Load> loads, List<Integer> months, int hours) {}

    /** A cold box on the grid; what its owner means to do in an outage plays no part. */
    GridLife life(ColdLoad load, int stepsPerHour) {
        ColdLoad usual = load.with(Duty.AS_IT_NEEDS).chilledTo(Double.NaN);
        Series room = roomDegC(load.room());
        return lives.computeIfAbsent(
                new Lived(usual, stepsPerHour),
                key -> GridLife.of(
                        life -> new ColdKeeper(usual, room, life, stepsPerHour, false), weather.hours(), stepsPerHour));
    }

    GridLife life(HeatLoad load, int stepsPerHour) {
        return lives.computeIfAbsent(
                new Lived(load, stepsPerHour),
                key -> GridLife.of(
                        life -> new HomeKeeper(load, outdoorDegC(), life, stepsPerHour),
                        weather.hours(),
                        stepsPerHour));
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
