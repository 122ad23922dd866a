package tideover.engine.proof;

import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;
import tideover.engine.cold.ColdBox;
import tideover.engine.cold.Contents;
import tideover.engine.load.ColdLoad;
import tideover.engine.load.HeatLoad;
import tideover.engine.load.Load;
import tideover.engine.load.Need;
import tideover.engine.load.PitLoad;
import tideover.engine.quantity.ModelYear;
import tideover.engine.quantity.Series;
import tideover.engine.site.Room;
import tideover.engine.site.Weather;

/**
 * The least that loads which switch themselves can live on, whatever the rig: what leaks in at the warmest allowed
 * temperature, moved in the coolest hour that an outage may hold, with all the cold they may hold at the start pooled into one store. Doors, defrost
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

    /**
     * @param months      counted from 0, in which outages may start
     * @param outageHours how long they last
     */
    public static KeptBound of(List<Load> loads, Weather weather, List<Integer> months, int outageHours) {
        double[] needW = new double[weather.hours()];
        double storeWh = 0;
        for (Load load : loads) {
            if (!load.keeps()) {
                continue;
            }
            Share share = load instanceof ColdLoad cold
                    ? cold(cold, weather, months, outageHours)
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

    /** What none of several needs less than, hour by hour, and starts with more than. */
    public static KeptBound easiest(List<KeptBound> bounds) {
        if (bounds.size() == 1) {
            return bounds.get(0);
        }
        double[] needW = new double[bounds.get(0).needW().length()];
        Arrays.fill(needW, Double.POSITIVE_INFINITY);
        double storeWh = 0;
        for (KeptBound bound : bounds) {
            for (int hour = 0; hour < needW.length; hour++) {
                needW[hour] = Math.min(needW[hour], bound.needW().at(hour));
            }
            storeWh = Math.max(storeWh, bound.storeWh());
        }
        return new KeptBound(Series.owning(needW), storeWh);
    }

    public boolean isNothing() {
        return storeWh == 0;
    }

    private static Share cold(ColdLoad load, Weather weather, List<Integer> months, int outageHours) {
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
            // A hair above: what thaws at the very limit may be thawed there.
            double startsDegC = lump == box.food() ? coldestDegC : Math.min(coldestDegC, box.iceStartsDegC());
            heatWh += lump.heatWh(Math.nextUp(limitDegC)) - lump.heatWh(startsDegC);
            besideFoodWPerK += lump == box.food() ? 0 : lump.airWPerK();
        }
        double foodWh = box.food().heatWh(limitDegC) - box.food().heatWh(coldestDegC);
        heatWh += foodWh * besideFoodWPerK / box.food().airWPerK();
        if (load.need() instanceof Need.HoursAbove above) {
            double leakW = (box.wallWPerK() + besideFoodWPerK) * Math.max(0, warmest - limitDegC);
            heatWh += leakW * above.hours();
        }
        double[] needW = new double[weather.hours()];
        if (box.compressor() == null) {
            return new Share(needW, heatWh);
        }
        // All that an outage needs is moved in its hours, at best in the coolest. Each hour's leak is counted at the
        // best of
        // all outages that hold it; the cold at the start, and what leaks out, at the worst of those bests.
        double[] coolestDegC = coolestAhead(roomDegC, outageHours);
        double leastOfBest = Double.POSITIVE_INFINITY;
        for (int hour = 0; hour < needW.length; hour++) {
            if (months.contains(ModelYear.monthOfDay(hour / 24 % ModelYear.DAYS))) {
                leastOfBest = Math.min(leastOfBest, box.movedPerW(coolestDegC[hour]));
            }
        }
        for (int hour = 0; hour < needW.length; hour++) {
            double leakW = box.wallWPerK() * (roomDegC.at(hour) - limitDegC);
            double coolest = Math.min(coolestDegC[hour], coolestDegC[Math.floorMod(hour - outageHours, needW.length)]);
            needW[hour] = leakW / (leakW > 0 ? box.movedPerW(coolest) : leastOfBest);
        }
        return new Share(needW, heatWh / leastOfBest);
    }

    /** The lowest of each hour and of those that an outage begun then reaches, round the years. */
    private static double[] coolestAhead(Series degC, int outageHours) {
        int hours = degC.length();
        double[] coolest = new double[hours];
        // A sliding window's minimum: a queue whose values rise from its head on.
        int[] queue = new int[hours + outageHours + 1];
        int head = 0;
        int tail = 0;
        for (int at = hours + outageHours; at >= 0; at--) {
            while (tail > head && degC.at(queue[tail - 1] % hours) >= degC.at(at % hours)) {
                tail--;
            }
            queue[tail++] = at;
            while (queue[head] > at + outageHours) {
                head++;
            }
            if (at < hours) {
                coolest[at] = degC.at(queue[head] % hours);
            }
        }
        return coolest;
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
