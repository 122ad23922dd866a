package tideover.engine.proof;

import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;
import tideover.engine.cold.ColdBox;
import tideover.engine.cold.Compressor;
import tideover.engine.cold.Contents;
import tideover.engine.load.ColdLoad;
import tideover.engine.load.HeatLoad;
import tideover.engine.load.Load;
import tideover.engine.load.Need;
import tideover.engine.load.PitLoad;
import tideover.engine.quantity.Series;
import tideover.engine.site.Room;
import tideover.engine.site.Weather;

/**
 * The least that loads which switch themselves can live on, whatever the rig: what leaks in at the warmest allowed
 * temperature, at the best efficiency of the asked months, with all the cold they may hold at the start pooled into one store. Doors, defrost
 * heaters and converters are left out. So what this cannot carry no rig carries.
 *
 * <p>Hours in which a cold room cools the box, or a warm day the home, fill the pool again: a warm afternoon keeps a heavy
 * home through the night. The air of a box may for a while be warmer than its food, so that less leaks in and ice takes more; it can
 * be so no longer than until the food has warmed, and that much is added to the pool.
 *
 * @param needW   hour by hour, as electric watts; below 0 where the outside does the work
 * @param storeWh pooled, as electric energy
 */
public record KeptBound(Series needW, double storeWh) {
    /** Of each of them. */
    private record Share(double[] needW, double storeWh) {}

    /** @param months counted from 0, in which outages may start */
    public static KeptBound of(List<Load> loads, Weather weather, List<Integer> months) {
        double[] needW = new double[weather.hours()];
        double storeWh = 0;
        for (Load load : loads) {
            if (!load.keeps()) {
                continue;
            }
            Share share = load instanceof ColdLoad cold
                    ? cold(cold, weather, months)
                    : load instanceof HeatLoad heat
                            ? heat(heat, weather, months)
                            : pit((PitLoad) load, weather.hours());
            for (int hour = 0; hour < needW.length; hour++) {
                needW[hour] += share.needW()[hour];
            }
            storeWh += share.storeWh();
        }
        return new KeptBound(Series.owning(needW), storeWh);
    }

    public static KeptBound none(int hours) {
        return new KeptBound(Series.constant(hours, 0), 0);
    }

    public boolean isNothing() {
        return storeWh == 0;
    }

    private static Share cold(ColdLoad load, Weather weather, List<Integer> months) {
        ColdBox box = load.box();
        Series roomDegC = Room.degC(load.room(), weather);
        Room.Extremes room = Room.extremes(roomDegC, reached(months));
        double warmest = room.highestDegC();
        double limitDegC = limitDegC(load);
        double coldestDegC = Math.min(box.setDegC() - box.bandK(), load.chilledToDegC());
        coldestDegC = Double.isNaN(coldestDegC) ? box.setDegC() - box.bandK() : coldestDegC;
        coldestDegC = Math.min(coldestDegC, room.lowestDegC());
        double heatWh = box.airWhPerK() * Math.max(0, warmest - coldestDegC);
        double besideFoodWPerK = box.wallWPerK();
        for (Contents lump : box.contents()) {
            heatWh += lump.heatWh(limitDegC) - lump.heatWh(coldestDegC);
            besideFoodWPerK += lump == box.food() ? 0 : lump.airWPerK();
        }
        double foodWh = box.food().heatWh(limitDegC) - box.food().heatWh(coldestDegC);
        heatWh += foodWh * besideFoodWPerK / box.food().airWPerK();
        if (load.need() instanceof Need.HoursAbove above) {
            double leakW = (box.wallWPerK() + besideFoodWPerK) * Math.max(0, warmest - limitDegC);
            heatWh += leakW * above.hours();
        }
        double movedPerW = box.compressor() == null ? 1 : Compressor.movedPerW(room.lowestDegC(), box.setDegC());
        double[] needW = new double[weather.hours()];
        for (int hour = 0; hour < needW.length && box.compressor() != null; hour++) {
            needW[hour] = box.wallWPerK() * (roomDegC.at(hour) - limitDegC) / movedPerW;
        }
        return new Share(needW, heatWh / movedPerW);
    }

    /** The asked months with the one before, which a box remembers, and those that outages reach into. */
    private static List<Integer> reached(List<Integer> months) {
        return IntStream.range(0, 12)
                .filter(month -> IntStream.rangeClosed(-2, 1).anyMatch(off -> months.contains((month + off + 12) % 12)))
                .boxed()
                .toList();
    }

    private static double limitDegC(ColdLoad load) {
        Need need = load.need();
        if (need instanceof Need.Below below) {
            // Frozen food has failed once it begins to thaw.
            return Math.min(below.limitDegC(), load.box().food().food().freezingDegC() - 1e-9);
        }
        return need instanceof Need.Band band ? band.mostDegC() : ((Need.HoursAbove) need).limitDegC();
    }

    private static Share heat(HeatLoad load, Weather weather, List<Integer> months) {
        HeatLoad.Home home = load.home();
        double perK = load.runningW() / home.liftK();
        double[] needW = new double[weather.hours()];
        for (int hour = 0; hour < needW.length; hour++) {
            double lackK = load.limit().limitDegC()
                    - HeatLoad.Home.GAIN_K
                    - weather.airDegC().at(hour);
            needW[hour] = perK * lackK;
        }
        double warmest = Math.max(
                home.setDegC() + home.bandK(),
                Room.extremes(weather.airDegC(), reached(months)).highestDegC() + HeatLoad.Home.GAIN_K);
        return new Share(needW, perK * home.tauHours() * (warmest - load.limit().limitDegC()));
    }

    private static Share pit(PitLoad load, int hours) {
        double perL = load.runningW() / load.pumpedLPerH();
        double[] needW = new double[hours];
        Arrays.fill(needW, perL * load.inflow().usualLPerH());
        return new Share(needW, perL * load.pit().brimL());
    }
}
